package io.github.formulationmath.exercise;

import io.github.formulationmath.number.NumberText;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.number.Rounding;
import io.github.formulationmath.reckoning.Step;
import io.github.formulationmath.reckoning.Working;
import java.util.Comparator;

/** Which wrong answers are worth offering: those that a look at the sheet does not rule out. */
final class Plausible {

    private static final int LONGEST = 12;
    private static final Rounding FEW_DIGITS = Rounding.toSignificantDigits(NumberText.DIGITS);

    private final Step step;
    private final Ratio grid;
    private final Ratio largest;

    Plausible(Step step, Working working) {
        this.step = step;
        this.grid = Working.gridOf(step);
        this.largest = working.steps().stream()
                .filter(other -> other.symbol().kind() == step.symbol().kind())
                .map(Step::value)
                .max(Comparator.naturalOrder())
                .orElse(step.value());
    }

    boolean test(Ratio wrong) {
        return wrong.signum() * step.value().signum() >= 0
                && isWrittenLikeTheRightOne(wrong)
                && (grid.isZero() || wrong.dividedBy(grid).isInteger())
                && !isMoreThanTheWhole(wrong);
    }

    /** Whether two values look the same on a sheet. */
    static boolean looksLike(Ratio a, Ratio b) {
        return FEW_DIGITS.apply(a).equals(FEW_DIGITS.apply(b));
    }

    /** Whether two values have the same digits, with the decimal point in another place. */
    static boolean isMoved(Ratio a, Ratio b) {
        return a.signum() == b.signum() && a.signum() != 0 && digits(a.abs()).equals(digits(b.abs()));
    }

    /** A value above 0 with its decimal point moved until it is not below 1 and below 10. */
    private static Ratio digits(Ratio value) {
        return value.dividedBy(Rounding.toSignificantDigits(1).stepFor(value));
    }

    /** A long number among short ones is seen to be wrong. */
    private boolean isWrittenLikeTheRightOne(Ratio wrong) {
        return !isShort(step.value()) || isShort(wrong);
    }

    private static boolean isShort(Ratio value) {
        return value.isDecimal() && value.toBigDecimal().stripTrailingZeros().precision() <= LONGEST;
    }

    /** More than the largest mass or volume of the sheet, as a part of it cannot be, or a share of more than everything. */
    private boolean isMoreThanTheWhole(Ratio wrong) {
        Ratio right = step.value();
        return switch (step.symbol().kind()) {
            case MASS, VOLUME -> right.compareTo(largest) < 0 && wrong.compareTo(largest) > 0;
            case SHARE -> right.compareTo(Ratio.ONE) <= 0 && wrong.compareTo(Ratio.ONE) > 0;
            default -> false;
        };
    }
}
