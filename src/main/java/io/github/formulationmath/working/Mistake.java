package io.github.formulationmath.working;

import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.number.Rounding;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * The classic mistakes of bench arithmetic. Each is made in the same relation as the right answer: one operation or one
 * number of the step is exchanged, and the rest is worked as it should be.
 */
public enum Mistake {
    /** A share is taken of another quantity of the same kind than the one meant. */
    WRONG_WHOLE {
        @Override
        Optional<Ratio> make(Step step, Working working) {
            Optional<Term> whole = find(definition(step), term -> isOperation(term, Arithmetic.PRODUCT))
                    .flatMap(product -> ((Applied) product)
                            .inputs().stream()
                                    .filter(input -> input instanceof Step s
                                            && s.symbol().kind() != Kind.SHARE
                                            && s.symbol().kind() != Kind.NUMBER)
                                    .findFirst());
            return whole.flatMap(right -> working.steps().stream()
                    .filter(other -> other != step
                            && other != right
                            && other.symbol().kind() == ((Step) right).symbol().kind())
                    .findFirst()
                    .map(wrong -> exchange(definition(step), right, wrong.value())));
        }
    },
    /** A percentage is used as if it were the plain number: 2.5 % as 2.5. */
    PERCENT_AS_NUMBER {
        @Override
        Optional<Ratio> make(Step step, Working working) {
            return find(
                            definition(step),
                            term -> term instanceof Step s && s.symbol().kind() == Kind.SHARE)
                    .map(share ->
                            exchange(definition(step), share, share.value().times(100)));
        }
    },
    /** The decimal point is one place off. */
    MOVED_POINT {
        @Override
        Optional<Ratio> make(Step step, Working working) {
            return Optional.of(step.value().times(10));
        }
    },
    /** The divisor is divided by the dividend. */
    INVERTED_QUOTIENT {
        @Override
        Optional<Ratio> make(Step step, Working working) {
            return exchanged(step, Arithmetic.QUOTIENT, inputs -> inputs.get(1).dividedBy(inputs.get(0)));
        }
    },
    /** Multiplied where division was asked for. */
    MULTIPLIED {
        @Override
        Optional<Ratio> make(Step step, Working working) {
            return exchanged(step, Arithmetic.QUOTIENT, inputs -> inputs.get(0).times(inputs.get(1)));
        }
    },
    /** Added where subtraction was asked for. */
    ADDED {
        @Override
        Optional<Ratio> make(Step step, Working working) {
            return exchanged(
                    step, Arithmetic.DIFFERENCE, inputs -> inputs.get(0).plus(inputs.get(1)));
        }
    },
    /** The last term of a sum is left out. */
    LEFT_OUT {
        @Override
        Optional<Ratio> make(Step step, Working working) {
            return exchanged(
                    step,
                    Arithmetic.SUM,
                    inputs -> inputs.subList(0, inputs.size() - 1).stream().reduce(Ratio.ZERO, Ratio::plus));
        }
    },
    /** The digits beyond the grid are cut off. */
    TRUNCATED {
        @Override
        Optional<Ratio> make(Step step, Working working) {
            return rounding(
                    step, (rounding, value) -> rounding.with(RoundingMode.DOWN).apply(value));
        }
    },
    /** Rounded up whatever the digits are. */
    ALWAYS_UP {
        @Override
        Optional<Ratio> make(Step step, Working working) {
            return rounding(
                    step, (rounding, value) -> rounding.with(RoundingMode.UP).apply(value));
        }
    },
    /** Rounded to a tenth of the grid first, and the outcome once more. */
    ROUNDED_TWICE {
        @Override
        Optional<Ratio> make(Step step, Working working) {
            return rounding(step, (rounding, value) -> {
                Rounding finer = Rounding.toMultipleOf(rounding.stepFor(value).dividedBy(10))
                        .with(RoundingMode.HALF_UP);
                return rounding.with(RoundingMode.HALF_UP).apply(finer.apply(value));
            });
        }
    };

    private interface Exchange {
        Ratio of(List<Ratio> inputs);
    }

    private interface Rounder {
        Ratio round(Rounding rounding, Ratio value);
    }

    /** The value of a computed step with this mistake in it; empty if the step offers no place for it. */
    abstract Optional<Ratio> make(Step step, Working working);

    /** The key of its name in the wording. */
    String key() {
        return "mistake." + name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    private static Term definition(Step step) {
        return step.definition().orElse(step);
    }

    private static boolean isOperation(Term term, Operation operation) {
        return term instanceof Applied applied && applied.operation() == operation;
    }

    private static Optional<Ratio> exchanged(Step step, Arithmetic operation, Exchange exchange) {
        return find(definition(step), term -> isOperation(term, operation)).map(found -> {
            List<Ratio> inputs =
                    ((Applied) found).inputs().stream().map(Term::value).toList();
            return exchange(definition(step), found, exchange.of(inputs));
        });
    }

    private static Optional<Ratio> rounding(Step step, Rounder rounder) {
        Predicate<Term> rounds = term -> term instanceof Applied applied
                && applied.operation() instanceof RoundingOperation r
                && r.rounding().stepFor(Ratio.ONE).signum() > 0;
        return find(definition(step), rounds).map(found -> {
            Applied applied = (Applied) found;
            Rounding rounding = ((RoundingOperation) applied.operation()).rounding();
            return exchange(
                    definition(step),
                    found,
                    rounder.round(rounding, applied.inputs().get(0).value()));
        });
    }

    /** The first term that will do, the whole before its parts. */
    private static Optional<Term> find(Term term, Predicate<Term> wanted) {
        if (wanted.test(term)) {
            return Optional.of(term);
        }
        return term instanceof Applied applied
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
        if (!(term instanceof Applied applied)) {
            return term.value();
        }
        List<Ratio> inputs = new ArrayList<>();
        applied.inputs().forEach(input -> inputs.add(exchange(input, part, value)));
        return applied.operation().apply(inputs);
    }
}
