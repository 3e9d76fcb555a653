package io.github.formulationmath.planning;

import io.github.formulationmath.number.Ratio;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * For which whole totals N are there whole readings, together N, that keep every line within tolerance? Exactly if every
 * line's least reading is no more than its largest, and N lies between the sum of the least and the sum of the largest
 * readings; any readings between those ends that add up to N will do.
 *
 * <p>Searching up from N: a line whose least reading is above its largest cannot pass before its largest reaches that
 * least, for the least only rises with N; the sum of the least readings, if above N, is itself a bound, for the same
 * reason; a sum of largest readings below N leaves N + 1. No jump passes over an N that is feasible. Searching down
 * mirrors this. Lines with τ = 0 need N to be a multiple of their common period.
 */
final class ClosedSearch {

    private final List<ClosedBand> bands;
    private final Ratio period;

    ClosedSearch(List<Ratio> weights, List<Ratio> tolerances, Ratio error) {
        List<ClosedBand> all = new ArrayList<>(weights.size());
        List<Ratio> exact = new ArrayList<>();
        for (int i = 0; i < weights.size(); i++) {
            all.add(new ClosedBand(i, weights.get(i), tolerances.get(i), error, weights.size()));
            if (tolerances.get(i).isZero()) {
                exact.add(weights.get(i));
            }
        }
        // The line with the widest gaps first: it makes the largest jumps.
        all.sort(Comparator.comparing(band -> band.upSlope));
        this.bands = List.copyOf(all);
        this.period =
                exact.isEmpty() ? Ratio.ONE : Ratio.of(CommonPeriod.of(exact).numerator());
    }

    /** A line that passes at no N, if there is one. */
    Optional<Integer> hopelessLine() {
        return bands.stream()
                .filter(ClosedBand::isHopeless)
                .map(band -> band.line)
                .findFirst();
    }

    /** A number of which every feasible N is a whole multiple. */
    Ratio period() {
        return period;
    }

    /** The least or the largest reading of every line at N, in the order of the formula. */
    List<Ratio> ends(Ratio total, boolean largest) {
        Ratio[] ends = new Ratio[bands.size()];
        for (ClosedBand band : bands) {
            ends[band.line] = Ratio.of(largest ? band.most(total.numerator()) : band.least(total.numerator()));
        }
        return List.of(ends);
    }

    /** The smallest feasible N that is at least a number. */
    Landing atLeast(Ratio from, SearchMeter meter) {
        TotalCursor cursor = new TotalCursor(bands, from.max(Ratio.ONE).ceil(), true);
        cursor.alignTo(period);
        while (cursor.moves()) {
            cursor.alignTo(period);
            count(cursor, meter);
        }
        return cursor.landing();
    }

    /** The largest feasible N that is at most a number. */
    Optional<Landing> atMost(Ratio from, SearchMeter meter) {
        TotalCursor cursor = new TotalCursor(bands, from.floor(), false);
        cursor.alignTo(period);
        while (cursor.at().signum() > 0) {
            if (!cursor.moves()) {
                return Optional.of(cursor.landing());
            }
            cursor.alignTo(period);
            count(cursor, meter);
        }
        return Optional.empty();
    }

    /**
     * An N from which on, for certain, every N is feasible: each band is a division wide, and the sums of the ends, which
     * rounding moves by less than one a line, enclose N. Not always the first such N.
     */
    Optional<Ratio> allFrom() {
        Ratio from = Ratio.ONE;
        Ratio least = Ratio.ZERO;
        Ratio leastShift = Ratio.of(bands.size());
        Ratio most = Ratio.ZERO;
        Ratio mostShift = Ratio.of(-bands.size());
        for (ClosedBand band : bands) {
            if (band.lowSlope.equals(band.upSlope)) {
                return Optional.empty();
            }
            from = from.max(band.alwaysFrom());
            least = least.plus(band.lowSlope);
            leastShift = leastShift.plus(band.lowShift);
            most = most.plus(band.upSlope);
            mostShift = mostShift.plus(band.upShift);
        }
        from = from.max(leastShift.dividedBy(Ratio.ONE.minus(least)));
        from = from.max(mostShift.unaryMinus().dividedBy(most.minus(Ratio.ONE)));
        return Optional.of(from.ceil());
    }

    private static void count(TotalCursor cursor, SearchMeter meter) {
        for (int i = 0; i < cursor.checks(); i++) {
            if (meter.isPauseDue(cursor.isSmall())) {
                meter.pause(cursor.at());
            }
        }
    }
}
