package io.github.formulationmath.choice;

import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.Interval;
import io.github.formulationmath.size.Sizes;
import io.github.formulationmath.weighing.Balance;
import java.util.Collections;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;
import javax.measure.quantity.Mass;
import org.jspecify.annotations.Nullable;

/**
 * The batch sizes at which one line can be weighed on one balance, within a range: closed windows.
 *
 * @param sizes all sizes, whatever the range and the minimum load
 * @param starts where each window starts, by its end
 */
record SizeWindows(Sizes sizes, NavigableMap<Ratio, Ratio> starts) {

    /** Of a line on a balance; below the minimum load of the balance no size counts. */
    static SizeWindows of(Sizes sizes, FormulaLine line, Balance balance, Interval<Amount<Mass>> range) {
        Ratio least = balance.minimumLoad().canonical().dividedBy(line.fraction());
        NavigableMap<Ratio, Ratio> starts = new TreeMap<>();
        if (sizes.obstacle().isEmpty()) {
            sizes.within(range)
                    .forEach(window -> starts.put(
                            window.greatest().canonical(),
                            window.least().canonical().max(least)));
        }
        return new SizeWindows(sizes, Collections.unmodifiableNavigableMap(starts.tailMap(least, true)));
    }

    /** The least size of a window that is not below a size; null if all windows end below it. */
    @Nullable
    Ratio next(Ratio size) {
        Map.Entry<Ratio, Ratio> window = starts.ceilingEntry(size);
        return window == null ? null : window.getValue().max(size);
    }

    /** The size that a search was pushed on to, with what pushed it; empty if it was pushed by a minimum load. */
    Optional<Amount<Mass>> pushed(Ratio from, Ratio to) {
        return from.signum() <= 0
                ? sizes.smallest()
                        .flatMap(least ->
                                sizes.atLeast(least.times(Ratio.of(1, 2))).filter(size -> is(size, to)))
                : sizes.atLeast(Amount.grams(from)).filter(size -> is(size, to));
    }

    private static boolean is(Amount<Mass> size, Ratio grams) {
        return size.canonical().equals(grams);
    }
}
