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
    /** A factor is exchanged for another value of the same kind. */
    WRONG_WHOLE {
        @Override
        Optional<Distractor> make(Step step, Working working) {
            return find(definition(step), term -> isOperation(term, Arithmetic.PRODUCT))
                    .flatMap(product -> ((Applied) product)
                            .inputs().stream().filter(Mistake::isWhole).findFirst())
                    .flatMap(right -> other((Step) right, step, working)
                            .map(wrong -> new Distractor(
                                    this, exchange(definition(step), right, wrong.value()), List.of(wrong, (Step)
                                            right))));
        }
    },
    /** A percentage is used as if it were the plain number: 2.5 % as 2.5. */
    PERCENT_AS_NUMBER {
        @Override
        Optional<Distractor> make(Step step, Working working) {
            return find(
                            definition(step),
                            term -> term instanceof Step s && s.symbol().kind() == Kind.SHARE)
                    .map(share ->
                            exchange(definition(step), share, share.value().times(100)))
                    .map(this::with);
        }
    },
    /** The decimal point is one place too far to the right. */
    POINT_TO_THE_RIGHT {
        @Override
        Optional<Distractor> make(Step step, Working working) {
            return Optional.of(with(step.value().times(10)));
        }
    },
    /** The decimal point is one place too far to the left. */
    POINT_TO_THE_LEFT {
        @Override
        Optional<Distractor> make(Step step, Working working) {
            return Optional.of(with(step.value().dividedBy(10)));
        }
    },
    /** The divisor is divided by the dividend. */
    INVERTED_QUOTIENT {
        @Override
        Optional<Distractor> make(Step step, Working working) {
            return exchanged(step, Arithmetic.QUOTIENT, inputs -> inputs.get(1).dividedBy(inputs.get(0)));
        }
    },
    /** Multiplied where division was asked for. */
    MULTIPLIED {
        @Override
        Optional<Distractor> make(Step step, Working working) {
            return exchanged(step, Arithmetic.QUOTIENT, inputs -> inputs.get(0).times(inputs.get(1)));
        }
    },
    /** Added where subtraction was asked for. */
    ADDED {
        @Override
        Optional<Distractor> make(Step step, Working working) {
            return exchanged(
                    step, Arithmetic.DIFFERENCE, inputs -> inputs.get(0).plus(inputs.get(1)));
        }
    },
    /** The last term of a sum is left out. */
    LEFT_OUT {
        @Override
        Optional<Distractor> make(Step step, Working working) {
            return exchanged(
                    step,
                    Arithmetic.SUM,
                    inputs -> inputs.subList(0, inputs.size() - 1).stream().reduce(Ratio.ZERO, Ratio::plus));
        }
    },
    /** A value half way between two steps is rounded up, where it goes to the even step. */
    HALF_UP {
        @Override
        Optional<Distractor> make(Step step, Working working) {
            return rounding(
                    step,
                    rounding -> rounding.mode() == RoundingMode.HALF_EVEN,
                    (rounding, value) -> rounding.with(RoundingMode.HALF_UP).apply(value));
        }
    },
    /** Rounded to the nearest step, where always down or always up was asked for. */
    NEAREST {
        @Override
        Optional<Distractor> make(Step step, Working working) {
            return rounding(
                    step,
                    rounding -> !isToNearest(rounding),
                    (rounding, value) -> rounding.with(RoundingMode.HALF_EVEN).apply(value));
        }
    },
    /** The digits beyond the grid are cut off. */
    TRUNCATED {
        @Override
        Optional<Distractor> make(Step step, Working working) {
            return rounding(
                    step,
                    rounding -> true,
                    (rounding, value) -> rounding.with(RoundingMode.DOWN).apply(value));
        }
    },
    /** Rounded up whatever the digits are. */
    ALWAYS_UP {
        @Override
        Optional<Distractor> make(Step step, Working working) {
            return rounding(
                    step,
                    rounding -> true,
                    (rounding, value) -> rounding.with(RoundingMode.UP).apply(value));
        }
    },
    /** Rounded to a tenth of the grid first, and the outcome once more. */
    ROUNDED_TWICE {
        @Override
        Optional<Distractor> make(Step step, Working working) {
            return rounding(step, Mistake::isToNearest, (rounding, value) -> {
                Rounding finer = Rounding.toMultipleOf(rounding.stepFor(value).dividedBy(10))
                        .with(RoundingMode.HALF_UP);
                return rounding.with(RoundingMode.HALF_UP).apply(finer.apply(value));
            });
        }
    };

    interface Exchange {
        Ratio of(List<Ratio> inputs);
    }

    interface Rounder {
        Ratio round(Rounding rounding, Ratio value);
    }

    /** What a computed step comes to with this mistake in it; empty if the step offers no place for it. */
    abstract Optional<Distractor> make(Step step, Working working);

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

    Distractor with(Ratio value) {
        return new Distractor(this, value, List.of());
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

    private static boolean isToNearest(Rounding rounding) {
        return switch (rounding.mode()) {
            case HALF_EVEN, HALF_UP, HALF_DOWN -> true;
            default -> false;
        };
    }

    Optional<Distractor> exchanged(Step step, Arithmetic operation, Exchange exchange) {
        return find(definition(step), term -> isOperation(term, operation)).map(found -> {
            List<Ratio> inputs =
                    ((Applied) found).inputs().stream().map(Term::value).toList();
            return with(exchange(definition(step), found, exchange.of(inputs)));
        });
    }

    /** A rounding made another way: in the step itself, or in one whose value it uses. */
    Optional<Distractor> rounding(Step step, Predicate<Rounding> wanted, Rounder rounder) {
        return find(definition(step), term -> rounds(term, wanted))
                .or(() -> find(
                        definition(step), term -> term instanceof Step before && rounds(definition(before), wanted)))
                .map(found -> {
                    Applied applied = (Applied) (found instanceof Step before ? definition(before) : found);
                    Rounding rounding = ((RoundingOperation) applied.operation()).rounding();
                    Ratio input = applied.inputs().get(0).value();
                    return with(exchange(definition(step), found, rounder.round(rounding, input)));
                });
    }

    private static boolean rounds(Term term, Predicate<Rounding> wanted) {
        return term instanceof Applied applied
                && applied.operation() instanceof RoundingOperation r
                && r.rounding().stepFor(Ratio.ONE).signum() > 0
                && wanted.test(r.rounding());
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
