package io.github.formulationmath.weighing;

import io.github.formulationmath.number.Excerpt;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import javax.measure.quantity.Mass;
import org.jspecify.annotations.Nullable;

/**
 * The accuracy class of a verified balance, with its permissible errors. All are multiples of the verification scale
 * interval e, which stands on the balance and need not be the step d of its display.
 *
 * <table>
 * <caption>Maximum permissible error on initial verification, for a load m in units of e</caption>
 * <tr><th>class</th><th>±0.5 e</th><th>±1 e</th><th>±1.5 e</th></tr>
 * <tr><td>I</td><td>m ≤ 50 000</td><td>m ≤ 200 000</td><td>above</td></tr>
 * <tr><td>II</td><td>m ≤ 5 000</td><td>m ≤ 20 000</td><td>m ≤ 100 000</td></tr>
 * <tr><td>III</td><td>m ≤ 500</td><td>m ≤ 2 000</td><td>m ≤ 10 000</td></tr>
 * <tr><td>IIII</td><td>m ≤ 50</td><td>m ≤ 200</td><td>m ≤ 1 000</td></tr>
 * </table>
 *
 * <p>In service twice as much is permitted. One web text of the United Kingdom's regulations prints 20 000 for the first
 * band of class II; that contradicts its own next row, and 5 000 is right.
 *
 * <p>Example: class III, e = 1 g: 500 g may be shown wrong by 0.5 g on verification and by 1 g in service.
 *
 * <p>Source: OIML R 76-1:2006, tables 3 and 6; UK SI 1995/1907, schedule 2, paragraph 4. As of those editions; whether a
 * balance is lawful for a use is for the authority to say.
 */
public enum AccuracyClass {
    /** Special accuracy. */
    I(50_000, 200_000, 0),
    /** High accuracy. */
    II(5_000, 20_000, 100_000),
    /** Medium accuracy. */
    III(500, 2_000, 10_000),
    /** Ordinary accuracy. */
    IIII(50, 200, 1_000);

    private final Ratio firstBand;
    private final Ratio secondBand;
    private final @Nullable Ratio mostIntervals;

    AccuracyClass(long firstBand, long secondBand, long mostIntervals) {
        this.firstBand = Ratio.of(firstBand);
        this.secondBand = Ratio.of(secondBand);
        this.mostIntervals = mostIntervals == 0 ? null : Ratio.of(mostIntervals);
    }

    /**
     * The maximum permissible error on initial verification.
     *
     * @param load the load, from 0 up to what the class allows
     * @param interval the verification scale interval e, above 0
     * @return the error, permitted either way, in the unit of the interval
     * @throws IllegalArgumentException if an amount is out of range, or the load above 0 and below the interval
     */
    public Amount<Mass> permissibleError(Amount<Mass> load, Amount<Mass> interval) {
        Ratio loads = intervals("load", load, interval);
        if (mostIntervals != null && loads.compareTo(mostIntervals) > 0) {
            throw new IllegalArgumentException("load is " + Excerpt.of(load) + ", which is " + Excerpt.of(loads)
                    + " e: class " + this + " ends at " + mostIntervals + " e; is e given in the right unit?");
        }
        int halves = loads.compareTo(firstBand) <= 0 ? 1 : loads.compareTo(secondBand) <= 0 ? 2 : 3;
        return interval.times(Ratio.of(halves, 2));
    }

    /**
     * The maximum permissible error in service, twice that on verification.
     *
     * @param load the load, from 0 up to what the class allows
     * @param interval the verification scale interval e, above 0
     * @return the error, permitted either way, in the unit of the interval
     * @throws IllegalArgumentException if an amount is out of range, or the load above 0 and below the interval
     */
    public Amount<Mass> permissibleErrorInService(Amount<Mass> load, Amount<Mass> interval) {
        return permissibleError(load, interval).times(2);
    }

    /**
     * The least load for which the class is meant; below it the relative error is excessive.
     *
     * @param interval the verification scale interval e, above 0
     * @return the minimum capacity Min
     * @throws IllegalArgumentException if the interval is not above 0
     */
    public Amount<Mass> minimumCapacity(Amount<Mass> interval) {
        Ratio grams = grams(interval);
        return interval.times(
                switch (this) {
                    case I -> 100;
                    case II -> grams.compareTo(Ratio.of(5, 100)) <= 0 ? 20 : 50;
                    case III -> 20;
                    case IIII -> 10;
                });
    }

    /**
     * Whether a capacity and an interval may go together in this class (table 3).
     *
     * @param capacity the largest load Max, above 0
     * @param interval the verification scale interval e, above 0
     * @return true if e is in the range of the class and Max/e between its limits
     * @throws IllegalArgumentException if an amount is out of range, or the capacity above 0 and below the interval
     */
    public boolean allows(Amount<Mass> capacity, Amount<Mass> interval) {
        Ratio count = intervals("capacity", capacity, interval);
        Ratio e = grams(interval);
        Ratio least = Ratio.of(
                switch (this) {
                    case I -> 50_000;
                    case II -> e.compareTo(Ratio.of(5, 100)) <= 0 ? 100 : 5_000;
                    case III -> e.compareTo(Ratio.of(2)) <= 0 ? 100 : 500;
                    case IIII -> 100;
                });
        return e.compareTo(leastInterval()) >= 0
                && count.compareTo(least) >= 0
                && (mostIntervals == null || count.compareTo(mostIntervals) <= 0);
    }

    private Ratio leastInterval() {
        return switch (this) {
            case I, II -> Ratio.of(1, 1000);
            case III -> Ratio.of(1, 10);
            case IIII -> Ratio.of(5);
        };
    }

    /**
     * What a verified balance is known to keep: the permissible error of its largest load as the linearity of a net reading,
     * for the permissible errors apply to the net value with any tare (OIML R 76-1:2006, 3.5.3.3; from memory). It covers
     * the errors of the scale too, so no calibration is added.
     *
     * @param largestLoad the largest net load that will be weighed
     * @param interval the verification scale interval e, above 0
     * @param inService whether the balance is in use, and not fresh from verification
     * @return the errors
     * @throws IllegalArgumentException if an amount is out of range, or the load above 0 and below the interval
     */
    public ErrorModel errors(Amount<Mass> largestLoad, Amount<Mass> interval, boolean inService) {
        return ErrorModel.readabilityOnly()
                .withLinearityOfNetReading(
                        inService
                                ? permissibleErrorInService(largestLoad, interval)
                                : permissibleError(largestLoad, interval));
    }

    /** Below one interval there is nothing to permit: the least load of any class is 10 e. */
    private static Ratio intervals(String name, Amount<Mass> load, Amount<Mass> interval) {
        Ratio count = Amount.requireNotNegative(name, load).canonical().dividedBy(grams(interval));
        if (count.signum() > 0 && count.compareTo(Ratio.ONE) < 0) {
            throw new IllegalArgumentException(name + " is " + Excerpt.of(load) + ", less than one interval e ("
                    + Excerpt.of(interval) + "): the two may have been exchanged; the " + name + " comes first");
        }
        return count;
    }

    private static Ratio grams(Amount<Mass> interval) {
        return Amount.requirePositive("interval", interval).canonical();
    }
}
