package io.github.formulationmath.size;

import io.github.formulationmath.number.Ratio;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * The batches of N whole divisions for which there are whole readings, together N, that keep every line within tolerance.
 * There are exactly if every line's least reading is no more than its largest, and N lies between the sum of the least and
 * the sum of the largest readings; any readings between those ends that add up to N will do.
 *
 * <p>Searching up from N: a line whose least reading is above its largest cannot pass before its largest reaches that
 * least, for the least only rises with N; the sum of the least readings, if above N, is itself a bound, for the same
 * reason; a sum of largest readings below N leaves N + 1. No jump passes over an N that is feasible. Searching down
 * mirrors this. Lines with τ = 0 need N to be a multiple of their common period.
 */
final class ClosedBands implements SizeSearch {

    private final List<Band> bands;
    private final Ratio division;
    private final Ratio period;
    private final boolean everyWhole;

    /** Below, the line with the widest gaps has no reading at all: the ends of its band have crossed before anything is rounded. */
    private final Ratio open;

    private final boolean fitsLongs;

    private ClosedBands(List<Band> bands, Ratio division, Ratio period, Ratio open) {
        this.bands = List.copyOf(bands);
        this.division = division;
        this.period = period;
        this.everyWhole = period.equals(Ratio.ONE);
        this.open = aligned(open, true);
        this.fitsLongs = bands.stream().allMatch(Band::fitsLongs);
    }

    /** Of lines with shares above 0 and tolerances; the error of a reading in divisions, the division in grams. */
    static ClosedBands of(List<Ratio> weights, List<Ratio> tolerances, Ratio error, Ratio division) {
        List<Band> bands = new ArrayList<>(weights.size());
        List<Ratio> exact = new ArrayList<>();
        for (int i = 0; i < weights.size(); i++) {
            bands.add(Band.closed(i, weights.get(i), tolerances.get(i), error, weights.size()));
            if (tolerances.get(i).isZero()) {
                exact.add(weights.get(i));
            }
        }
        // The line with the widest gaps first: it makes the largest jumps.
        bands.sort((one, other) -> one.up().compareSlope(other.up()));
        Ratio period = exact.isEmpty()
                ? Ratio.ONE
                : Ratio.of(Multiples.commonPeriod(exact).numerator());
        boolean crossed = !error.isZero() && !bands.get(0).isExact();
        return new ClosedBands(bands, division, period, crossed ? bands.get(0).asWideAs(Ratio.ZERO) : Ratio.ZERO);
    }

    /** A line that passes at no N, if there is one. */
    OptionalInt hopelessLine() {
        return bands.stream().filter(Band::isHopeless).mapToInt(Band::line).findFirst();
    }

    @Override
    public Optional<Ratio> period() {
        return Optional.of(period.times(division));
    }

    @Override
    public Landing first() {
        return Landing.resting(division);
    }

    @Override
    public boolean passes(Ratio grams) {
        return SizeSearch.super.passes(grams.dividedBy(division));
    }

    /** The search itself is one of numbers of divisions. */
    @Override
    public Optional<Landing> next(Ratio grams, boolean up, SearchMeter meter) {
        return SizeSearch.super
                .next(grams.dividedBy(division), up, meter)
                .map(total -> new Landing(total.at().times(division), total.line()));
    }

    /** The nearest multiple of the period that does not lie before a number. */
    private Ratio aligned(Ratio from, boolean up) {
        if (everyWhole && from.isInteger()) {
            return from;
        }
        Ratio multiples = from.dividedBy(period);
        return (up ? multiples.ceil() : multiples.floor()).times(period);
    }

    @Override
    public @Nullable Landing push(Ratio total, boolean up, SearchMeter meter) {
        Ratio onPeriod = aligned(total, up);
        if (!onPeriod.equals(total)) {
            return Landing.resting(onPeriod);
        }
        if (open.compareTo(total) > 0) {
            // The jumps by whole numbers lead there too, but there are hundreds of them.
            return up ? Landing.by(bands.get(0).line(), open) : Landing.resting(Ratio.ZERO);
        }
        Ratio least = Ratio.ZERO;
        Ratio most = Ratio.ZERO;
        for (int i = 0; i < bands.size(); i++) {
            Band band = bands.get(i);
            Ratio low = band.least(total);
            Ratio high = band.most(total);
            if (low.compareTo(high) > 0) {
                Ratio next = aligned(up ? band.reaches(low) : band.stillAllows(high), up);
                return counted(Landing.by(band.line(), next), i + 1, meter);
            }
            least = least.plus(low);
            most = most.plus(high);
        }
        boolean tooMuch = least.compareTo(total) > 0;
        if (!tooMuch && most.compareTo(total) >= 0) {
            return null;
        }
        Ratio next = up ? (tooMuch ? least : total.plus(Ratio.ONE)) : (tooMuch ? total.minus(Ratio.ONE) : most);
        return counted(Landing.resting(aligned(next, up)), bands.size(), meter);
    }

    private Landing counted(Landing to, int checks, SearchMeter meter) {
        meter.count(checks, to.at(), division, fitsLongs);
        return to;
    }

    /**
     * A batch from which on, for certain, every whole number of divisions is feasible: each band is a division wide, and the
     * sums of the ends, which rounding moves by less than one a line, enclose N. Not always the first such N.
     */
    @Override
    public Optional<Ratio> allFrom() {
        if (bands.stream().anyMatch(Band::isExact)) {
            return Optional.empty();
        }
        Ratio lines = Ratio.of(bands.size());
        Ratio leastShift = lines.plus(sum(band -> band.low().shift()));
        Ratio mostShift = lines.minus(sum(band -> band.up().shift()));
        Ratio from = bands.stream().map(Band::alwaysFrom).reduce(Ratio.ONE, Ratio::max);
        from = from.max(
                leastShift.dividedBy(Ratio.ONE.minus(sum(band -> band.low().slope()))));
        from = from.max(mostShift.dividedBy(sum(band -> band.up().slope()).minus(Ratio.ONE)));
        return Optional.of(from.ceil().times(division));
    }

    private Ratio sum(Function<Band, Ratio> part) {
        return bands.stream().map(part).reduce(Ratio.ZERO, Ratio::plus);
    }

    @Override
    public Ratio after(Ratio end, SearchMeter meter) {
        return atLeast(end.plus(division), meter).at();
    }
}
