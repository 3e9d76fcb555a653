package io.github.formulationmath.choice;

import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.Interval;
import io.github.formulationmath.size.Sizes;
import io.github.formulationmath.weighing.Balance;
import java.util.List;
import java.util.Optional;
import javax.measure.quantity.Mass;
import org.jspecify.annotations.Nullable;

/** The batch sizes at which one line can be weighed on one balance, within a range: closed windows in ascending order. */
final class SizeWindows {

    private final Sizes sizes;
    private final Ratio[] starts;
    private final Ratio[] ends;

    private SizeWindows(Sizes sizes, List<Interval<Amount<Mass>>> windows, Ratio least) {
        this.sizes = sizes;
        List<Interval<Amount<Mass>>> above = windows.stream()
                .filter(window -> window.greatest().canonical().compareTo(least) >= 0)
                .toList();
        this.starts = above.stream()
                .map(window -> window.least().canonical().max(least))
                .toArray(Ratio[]::new);
        this.ends = above.stream().map(window -> window.greatest().canonical()).toArray(Ratio[]::new);
    }

    /** Of a line on a balance; below the minimum load of the balance no size counts. */
    static SizeWindows of(Sizes sizes, FormulaLine line, Balance balance, Interval<Amount<Mass>> range) {
        Ratio least = balance.minimumLoad().canonical().dividedBy(line.fraction());
        List<Interval<Amount<Mass>>> windows = sizes.obstacle().isPresent() ? List.of() : sizes.within(range);
        return new SizeWindows(sizes, windows, least);
    }

    boolean isEmpty() {
        return starts.length == 0;
    }

    /** The least size of a window that is not below a size; null if all windows end below it. */
    @Nullable
    Ratio next(Ratio size) {
        int low = 0;
        int high = ends.length;
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (ends[middle].compareTo(size) < 0) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        return low == ends.length ? null : starts[low].max(size);
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
