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
    WRONG_WHOLE(Mistake::wrongWhole),
    /** A percentage is used as if it were the plain number: 2.5 % as 2.5. */
    PERCENT_AS_NUMBER((step, working) ->
            exchanged(step, Mistake::isShare, share -> share.value().times(100))),
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

    private static Optional<Wrong> wrongWhole(Step step, Working working) {
        return find(definition(step), term -> isOperation(term, Arithmetic.PRODUCT))
                .flatMap(product -> ((Term.Applied) product)
                        .inputs().stream().filter(Mistake::isWhole).findFirst())
                .flatMap(right -> other((Step) right, step, working)
                        .map(wrong -> new Wrong(
                                exchange(definition(step), right, wrong.value()), List.of(wrong, (Step) right))));
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
        return isOperation(term, Arithmetic.DIFFERENCE)
                && inputs(term).get(0) instanceof Term.Literal one
                && one.value().equals(Ratio.ONE)
                && isShare(inputs(term).get(1));
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
