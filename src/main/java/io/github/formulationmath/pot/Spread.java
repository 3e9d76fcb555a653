package io.github.formulationmath.pot;

import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.weighing.AdditionError;
import io.github.formulationmath.weighing.ErrorModel;
import io.github.formulationmath.weighing.ErrorSource;
import io.github.formulationmath.weighing.WeighingMethod;

/**
 * How uncertain the mass of a line is once it is to stand by itself: in no sum with other lines less than the weighings
 * behind them were together. An error that enters n masses is taken for n independent ones, each of n times its variance:
 * (g_1 + … + g_n)² ≤ n · (g_1² + … + g_n²).
 *
 * @param variance of all errors but the calibrations, in g²
 * @param reach how far repeatability goes at a coverage factor of 1, in grams
 * @param scale how far the calibrations go at a coverage factor of 1, in grams; all lines may have them in common
 */
record Spread(Ratio variance, Ratio reach, Ratio scale) {

    static final Spread NONE = new Spread(Ratio.ZERO, Ratio.ZERO, Ratio.ZERO);

    private static final int DIGITS = 15;

    /** More than a root of so many digits was rounded down by. */
    private static final Ratio UPWARDS = Ratio.ONE.plus(Ratio.of(1, 100_000_000_000_000L));

    /** One weighing, as it is in its sequence. */
    static Spread of(AdditionError error) {
        ErrorModel model = error.addition().balance().errors();
        Ratio whole = error.variance().origin().number();
        Ratio own = model.calibration().isZero()
                ? whole
                : whole.times(Ratio.ONE.minus(error.budget().share(ErrorSource.CALIBRATION)));
        // An indication ends one addition and begins the next: it enters two.
        Ratio all = error.addition().method() == WeighingMethod.CUMULATIVE ? own.times(Ratio.of(2)) : own;
        return new Spread(
                all,
                model.repeatability().canonical(),
                model.calibration().times(error.addition().reading().canonical()));
    }

    /** Whether an error in it has no bound. */
    boolean isUnbounded() {
        return !reach.isZero() || !scale.isZero();
    }

    /** Of the sum of two masses. */
    Spread plus(Spread other) {
        return new Spread(variance.plus(other.variance), reach.plus(other.reach), scale.plus(other.scale));
    }

    /** The same with errors that enter another line as well. */
    Spread twice() {
        return new Spread(variance.times(Ratio.of(2)), reach, scale);
    }

    /** The same with an error that lies between bounds of its own, and enters so many lines. */
    Spread withBounded(Ratio halfWidth, int lines) {
        return new Spread(variance.plus(uniform(halfWidth).times(Ratio.of(lines))), reach, scale);
    }

    /**
     * The standard deviation that is wanting in a line which is known to lie within a half-width, every value alike.
     *
     * @param halfWidth the half-width in grams
     * @param lines how many lines may have a calibration in common
     * @return a standard deviation in grams, not less than is wanting
     */
    Ratio beyond(Ratio halfWidth, int lines) {
        Ratio wanting = variance.plus(scale.times(scale).times(Ratio.of(lines)))
                .minus(uniform(halfWidth))
                .max(Ratio.ZERO);
        return wanting.sqrt(DIGITS).times(UPWARDS).max(reach.plus(scale));
    }

    private static Ratio uniform(Ratio halfWidth) {
        return halfWidth.times(halfWidth).dividedBy(3);
    }
}
