package io.github.formulationmath.verification;

import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.weighing.Balance;
import java.util.Collection;
import org.jspecify.annotations.Nullable;

/**
 * How finely the figures of a claim were rounded: to their last digit; on a balance that every figure fits, to the step of
 * its display, whatever zeros were left out behind the point.
 */
final class Steps {

    private final @Nullable Ratio display;

    private Steps(@Nullable Ratio display) {
        this.display = display;
    }

    static Steps of(Claim claim) {
        Collection<Figure> figures = claim.figures().values();
        return new Steps(
                claim.balance().map(balance -> display(figures, balance)).orElse(null));
    }

    /** The step of the display in grams, or none if it is not the display of these figures. */
    private static @Nullable Ratio display(Collection<Figure> figures, Balance balance) {
        Ratio step = balance.gramsPerDivision();
        if (figures.isEmpty() || !figures.stream().allMatch(figure -> liesOn(figure, step))) {
            return null;
        }
        Ratio finest = figures.stream()
                .map(figure -> figure.lastDigit().times(figure.unitSize()))
                .reduce(Ratio::min)
                .orElse(step);
        return step.max(finest);
    }

    private static boolean liesOn(Figure figure, Ratio grams) {
        return !figure.isVolume()
                && figure.number().times(figure.unitSize()).dividedBy(grams).isInteger();
    }

    /** In the unit of the figure. */
    Ratio of(Figure figure) {
        return display == null ? figure.ownStep() : display.dividedBy(figure.unitSize());
    }
}
