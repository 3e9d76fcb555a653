package io.github.formulationmath.exercise;

import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.number.Rounding;
import io.github.formulationmath.reckoning.Kind;
import io.github.formulationmath.reckoning.Operation;
import io.github.formulationmath.reckoning.Operation.Arithmetic;
import io.github.formulationmath.reckoning.Step;
import io.github.formulationmath.reckoning.Term;
import io.github.formulationmath.reckoning.Working;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.function.Predicate;

/**
 * The classic mistakes of bench arithmetic. Each is made in the same relation as the right answer: one operation or one
 * number of the step is exchanged, and the rest is worked as it should be.
 */
public enum Mistake {
    /** The plain mean, as if there were as much of each. */
    PLAIN_MEAN((step, working) -> exchanged(step, Mistake::isWeightedMean, Mistake::plainMean)),
    /** A factor is exchanged for another value of the same kind. */
    WRONG_WHOLE((step, working) -> exchangedInput(step, working, Arithmetic.PRODUCT, Mistake::isWhole)),
    /** A percentage is used as if it were the plain number: 2.5 % as 2.5. */
    PERCENT_AS_NUMBER((step, working) ->
            exchanged(step, Mistake::isShare, share -> share.value().times(100))),
    /** A percentage is read as the number of grams: 2.5 % as 2.5 g. */
    PERCENT_AS_UNITS((step, working) -> exchanged(
            step, Mistake::isShareOfWhole, product -> factors(product).share().times(100))),
    /** The whole is divided by the percentage. */
    DIVIDED_BY_PERCENT((step, working) -> exchanged(
            step,
            Mistake::isShareOfWhole,
            product ->
                    factors(product).whole().dividedBy(factors(product).share().times(100)))),
    /** The percentage is taken of the others, not of the whole. */
    OF_THE_OTHERS((step, working) -> exchanged(
            step,
            Mistake::isShareOfWhole,
            product ->
                    product.value().dividedBy(Ratio.ONE.minus(factors(product).share())))),
    /** The share of another line is taken. */
    OTHER_SHARE((step, working) -> exchangedInput(step, working, Arithmetic.PRODUCT, Mistake::isShare)),
    /** The sum is not taken from the whole. */
    NOT_TAKEN_FROM_WHOLE((step, working) ->
            exchanged(step, Mistake::isRest, rest -> inputs(rest).get(1).value())),
    /** The divisor is exchanged for another value of the same kind. */
    WRONG_DIVISOR((step, working) -> exchangedDivisor(step, working)),
    /** The smallest is taken where the largest was asked for, or the other way round. */
    OTHER_END((step, working) -> exchanged(step, Mistake::isEnd, Mistake::otherEnd)),
    /** Divided where multiplication was asked for. */
    DIVIDED((step, working) -> exchanged(
            step,
            Mistake::isProductOfWholes,
            product -> inputs(product)
                    .get(0)
                    .value()
                    .dividedBy(inputs(product).get(1).value()))),
    /** The last factor is left out. */
    FACTOR_LEFT_OUT((step, working) -> exchanged(
            step, Mistake::isProductOfWholes, product -> inputs(product).get(0).value())),
    /** The decimal point is one place too far to the right. */
    POINT_TO_THE_RIGHT((step, working) -> Optional.of(Wrong.of(step.value().times(10)))),
    /** The decimal point is one place too far to the left. */
    POINT_TO_THE_LEFT((step, working) -> Optional.of(Wrong.of(step.value().dividedBy(10)))),
    /** The divisor is divided by the dividend. */
    INVERTED_QUOTIENT(exchanging(Arithmetic.QUOTIENT, inputs -> inputs.get(1).dividedBy(inputs.get(0)))),
    /** Multiplied where division was asked for. */
    MULTIPLIED(exchanging(Arithmetic.QUOTIENT, inputs -> inputs.get(0).times(inputs.get(1)))),
    /** Added where subtraction was asked for. */
    ADDED(exchanging(Arithmetic.DIFFERENCE, inputs -> inputs.get(0).plus(inputs.get(1)))),
    /** The last term of a sum is left out. */
    LEFT_OUT(exchanging(Arithmetic.SUM, inputs -> Arithmetic.SUM.apply(inputs.subList(0, inputs.size() - 1)))),
    /** A value half way between two steps is rounded up, where it goes to the even step. */
    HALF_UP(rounding(rounding -> rounding.mode() == RoundingMode.HALF_EVEN, by(RoundingMode.HALF_UP))),
    /** Rounded to the nearest step, where always down or always up was asked for. */
    NEAREST(rounding(rounding -> !isToNearest(rounding), by(RoundingMode.HALF_EVEN))),
    /** The digits beyond the grid are cut off. */
    TRUNCATED(rounding(rounding -> true, by(RoundingMode.DOWN))),
    /** Rounded up whatever the digits are. */
    ALWAYS_UP(rounding(rounding -> true, by(RoundingMode.UP))),
    /** Rounded to a tenth of the grid first, and the outcome once more. */
    ROUNDED_TWICE(rounding(Mistake::isToNearest, Mistake::twice)),
    /** Rounded to ten times the grid. */
    ROUNDED_COARSER(rounding(Mistake::isToNearest, Mistake::coarser)),
    /** A value that goes on to the next step is rounded to two digits before. */
    ROUNDED_EARLY(
            (step, working) -> isRounded(step) ? Optional.empty() : Optional.of(Wrong.of(inTwoDigits(step.value())))),
    /** What is impure is weighed as if it were pure: the division by its share is left out. */
    PURITY_LEFT_OUT((step, working) -> exchanged(
            step, Mistake::isDividedByShare, quotient -> inputs(quotient).get(0).value())),
    /** One molar mass is taken for another, that of KOH for that of NaOH. */
    WRONG_MOLAR_MASS(Mistake::wrongMolarMass),
    /** What is to be taken off, such as an alkali shortfall, is not taken off. */
    REDUCTION_LEFT_OUT((step, working) -> exchanged(step, Mistake::isReduction, rest -> Ratio.ONE)),
    /** The share of one is taken for that of the other. */
    OTHER_PART((step, working) -> otherPart(step));

    /** How a mistake is made; empty if a step offers no place for it. */
    private interface Way {
        Optional<Wrong> make(Step step, Working working);
    }

    /** A wrong value, and which value was taken for which. */
    private record Wrong(Ratio value, List<Step> exchanged) {
        static Wrong of(Ratio value) {
            return new Wrong(value, List.of());
        }
    }

    private final transient Way way;

    Mistake(Way way) {
        this.way = way;
    }

    /** What a computed step comes to with this mistake in it; empty if the step offers no place for it. */
    Optional<Distractor> make(Step step, Working working) {
        return way.make(step, working).map(wrong -> new Distractor(this, wrong.value(), wrong.exchanged()));
    }

    /** The key of its name in the wording. */
    String key() {
        return "mistake." + name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    private static Term definition(Step step) {
        return step.definition().orElse(step);
    }

    private static boolean isOperation(Term term, Operation operation) {
        return term instanceof Term.Applied applied && applied.operation() == operation;
    }

    private static boolean isShare(Term term) {
        return term instanceof Step step && step.symbol().kind() == Kind.SHARE;
    }

    private static boolean isWhole(Term term) {
        return term instanceof Step step
                && step.symbol().kind() != Kind.SHARE
                && step.symbol().kind() != Kind.NUMBER;
    }

    /** Another value of the same kind to take by mistake, a given one first. */
    private static Optional<Step> other(Step right, Step step, Working working) {
        List<Step> others = working.steps().stream()
                .filter(other -> other != step
                        && other != right
                        && other.symbol().kind() == right.symbol().kind())
                .toList();
        return others.stream()
                .filter(other -> other.definition().isEmpty())
                .findFirst()
                .or(() -> others.stream().findFirst());
    }

    /** A share and what it is taken of. */
    private record Factors(Ratio share, Ratio whole) {}

    private static boolean isShareOfWhole(Term term) {
        return isOperation(term, Arithmetic.PRODUCT)
                && inputs(term).size() == 2
                && inputs(term).stream().filter(Mistake::isShare).count() == 1
                && inputs(term).stream().filter(Mistake::isWhole).count() == 1;
    }

    private static Factors factors(Term product) {
        boolean first = isShare(inputs(product).get(0));
        return new Factors(
                inputs(product).get(first ? 0 : 1).value(),
                inputs(product).get(first ? 1 : 0).value());
    }

    private static boolean isProductOfWholes(Term term) {
        return isOperation(term, Arithmetic.PRODUCT)
                && inputs(term).size() == 2
                && inputs(term).stream().noneMatch(Mistake::isShare)
                && inputs(term).stream().allMatch(input -> input instanceof Step);
    }

    private static boolean isRest(Term term) {
        return isTakenFromOne(term, taken -> isOperation(taken, Arithmetic.SUM));
    }

    private static boolean isTakenFromOne(Term term, Predicate<Term> taken) {
        return isOperation(term, Arithmetic.DIFFERENCE)
                && inputs(term).get(0) instanceof Term.Literal one
                && one.value().equals(Ratio.ONE)
                && taken.test(inputs(term).get(1));
    }

    private static boolean isEnd(Term term) {
        return isOperation(term, Arithmetic.MINIMUM) || isOperation(term, Arithmetic.MAXIMUM);
    }

    private static Ratio otherEnd(Term end) {
        Arithmetic other = isOperation(end, Arithmetic.MINIMUM) ? Arithmetic.MAXIMUM : Arithmetic.MINIMUM;
        return other.apply(inputs(end).stream().map(Term::value).toList());
    }

    /** The first input of a kind exchanged for another value of that kind. */
    private static Optional<Wrong> exchangedInput(
            Step step, Working working, Arithmetic operation, Predicate<Term> kind) {
        return find(definition(step), term -> isOperation(term, operation))
                .flatMap(found -> inputs(found).stream().filter(kind).findFirst())
                .flatMap(right -> wrong((Step) right, step, working));
    }

    private static Optional<Wrong> exchangedDivisor(Step step, Working working) {
        return find(
                        definition(step),
                        term -> isOperation(term, Arithmetic.QUOTIENT)
                                && isWhole(inputs(term).get(1)))
                .flatMap(found -> wrong((Step) inputs(found).get(1), step, working));
    }

    private static Optional<Wrong> wrong(Step right, Step step, Working working) {
        return other(right, step, working)
                .map(wrong -> new Wrong(exchange(definition(step), right, wrong.value()), List.of(wrong, right)));
    }

    private static List<Term> inputs(Term term) {
        return term instanceof Term.Applied applied ? applied.inputs() : List.of();
    }

    private static boolean isDividedByShare(Term term) {
        return isOperation(term, Arithmetic.QUOTIENT) && isShare(inputs(term).get(1));
    }

    private static Optional<Wrong> wrongMolarMass(Step step, Working working) {
        return find(definition(step), Mistake::isMolarMass)
                .flatMap(right -> working.steps().stream()
                        .filter(other ->
                                other != right && other.symbol().equals(((Step) right).symbol()) && isMolarMass(other))
                        .findFirst()
                        .map(wrong -> new Wrong(
                                exchange(definition(step), right, wrong.value()), List.of(wrong, (Step) right))));
    }

    /** Of a substance, not of an atom. */
    private static boolean isMolarMass(Term term) {
        return term instanceof Step step
                && step.symbol().kind() == Kind.MOLAR_MASS
                && step.definition().isPresent();
    }

    private static boolean isReduction(Term term) {
        return isTakenFromOne(term, Mistake::isShare);
    }

    /** A share that is a quotient, or a quotient of two differences as an alligation is, taken from 1. */
    private static Optional<Wrong> otherPart(Step step) {
        return isShare(step) && isOperation(definition(step), Arithmetic.QUOTIENT)
                ? Optional.of(Wrong.of(Ratio.ONE.minus(step.value())))
                : exchanged(step, Mistake::isAlligation, part -> Ratio.ONE.minus(part.value()));
    }

    private static boolean isAlligation(Term term) {
        return isOperation(term, Arithmetic.QUOTIENT)
                && inputs(term).stream().allMatch(input -> isOperation(input, Arithmetic.DIFFERENCE));
    }

    private static boolean isWeightedMean(Term term) {
        return isOperation(term, Arithmetic.QUOTIENT)
                && inputs(term).stream().allMatch(input -> isOperation(input, Arithmetic.SUM))
                && inputs(inputs(term).get(0)).stream().allMatch(input -> isOperation(input, Arithmetic.PRODUCT));
    }

    private static Ratio plainMean(Term mean) {
        List<Ratio> values = inputs(inputs(mean).get(0)).stream()
                .map(product -> inputs(product).get(1).value())
                .toList();
        return Arithmetic.SUM.apply(values).dividedBy(values.size());
    }

    private static boolean isToNearest(Rounding rounding) {
        return switch (rounding.mode()) {
            case HALF_EVEN, HALF_UP, HALF_DOWN -> true;
            default -> false;
        };
    }

    private static Way exchanging(Arithmetic operation, Function<List<Ratio>, Ratio> wrong) {
        return (step, working) -> exchanged(
                step,
                term -> isOperation(term, operation),
                found -> wrong.apply(((Term.Applied) found)
                        .inputs().stream().map(Term::value).toList()));
    }

    private static Optional<Wrong> exchanged(Step step, Predicate<Term> wanted, Function<Term, Ratio> wrong) {
        return find(definition(step), wanted)
                .map(found -> Wrong.of(exchange(definition(step), found, wrong.apply(found))));
    }

    private static BiFunction<Rounding, Ratio, Ratio> by(RoundingMode mode) {
        return (rounding, value) -> rounding.with(mode).apply(value);
    }

    private static Ratio twice(Rounding rounding, Ratio value) {
        Rounding finer =
                Rounding.toMultipleOf(rounding.stepFor(value).dividedBy(10)).with(RoundingMode.HALF_UP);
        return rounding.with(RoundingMode.HALF_UP).apply(finer.apply(value));
    }

    private static Ratio coarser(Rounding rounding, Ratio value) {
        return Rounding.toMultipleOf(rounding.stepFor(value).times(10))
                .with(RoundingMode.HALF_UP)
                .apply(value);
    }

    private static Ratio inTwoDigits(Ratio value) {
        return Rounding.toSignificantDigits(2).with(RoundingMode.HALF_UP).apply(value);
    }

    /** Whether a step rounds, or is given: then nothing is rounded before. */
    private static boolean isRounded(Step step) {
        return step.definition().isEmpty()
                || find(definition(step), term -> rounds(term, rounding -> true))
                        .isPresent();
    }

    /** A rounding made another way: in the step itself, or in one whose value it uses. */
    private static Way rounding(Predicate<Rounding> wanted, BiFunction<Rounding, Ratio, Ratio> wrong) {
        return (step, working) -> find(definition(step), term -> rounds(term, wanted))
                .or(() -> find(
                        definition(step), term -> term instanceof Step before && rounds(definition(before), wanted)))
                .map(found -> {
                    Term.Applied applied = (Term.Applied) (found instanceof Step before ? definition(before) : found);
                    Rounding rounding = ((Operation.Rounded) applied.operation()).rounding();
                    Ratio value = applied.inputs().get(0).value();
                    return Wrong.of(exchange(definition(step), found, wrong.apply(rounding, value)));
                });
    }

    private static boolean rounds(Term term, Predicate<Rounding> wanted) {
        return term instanceof Term.Applied applied
                && applied.operation() instanceof Operation.Rounded r
                && r.rounding().stepFor(Ratio.ONE).signum() > 0
                && wanted.test(r.rounding());
    }

    /** The first term that will do, the whole before its parts. */
    private static Optional<Term> find(Term term, Predicate<Term> wanted) {
        if (wanted.test(term)) {
            return Optional.of(term);
        }
        return term instanceof Term.Applied applied
                ? applied.inputs().stream()
                        .flatMap(input -> find(input, wanted).stream())
                        .findFirst()
                : Optional.empty();
    }

    /** A term worked again with one of its parts exchanged. */
    private static Ratio exchange(Term term, Term part, Ratio value) {
        if (term == part) {
            return value;
        }
        if (!(term instanceof Term.Applied applied)) {
            return term.value();
        }
        List<Ratio> inputs = new ArrayList<>();
        applied.inputs().forEach(input -> inputs.add(exchange(input, part, value)));
        return applied.operation().apply(inputs);
    }
}
