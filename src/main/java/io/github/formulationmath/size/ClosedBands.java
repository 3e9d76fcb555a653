package io.github.formulationmath.size;

import io.github.formulationmath.number.Ratio;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Function;

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
    private final boolean errorless;
    private final boolean fitsLongs;

    private ClosedBands(List<Band> bands, Ratio division, Ratio period, boolean errorless) {
        this.bands = List.copyOf(bands);
        this.division = division;
        this.period = period;
        this.errorless = errorless;
        this.everyWhole = period.equals(Ratio.ONE);
        this.fitsLongs = bands.stream().allMatch(Band::fitsLongs);
    }

    /** Of lines with shares above 0 and tolerances; the error of a reading in divisions, the division in grams. */
    static ClosedBands of(List<Ratio> weights, List<Ratio> tolerances, Ratio error, Ratio division) {
        List<Band> bands = new ArrayList<>(weights.size());
        List<Ratio> exact = new ArrayList<>();
        for (int i = 0; i < weights.size(); i++) {
            bands.add(Band.of(i, weights.get(i), tolerances.get(i), error, weights.size()));
            if (tolerances.get(i).isZero()) {
                exact.add(weights.get(i));
            }
        }
        // The line with the widest gaps first: it makes the largest jumps.
        bands.sort((one, other) -> one.most().compareSlope(other.most()));
        Ratio period =
                exact.isEmpty() ? Ratio.ONE : Ratio.of(CommonPeriod.of(exact).numerator());
        return new ClosedBands(bands, division, period, error.isZero());
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
    public boolean passes(Ratio grams) {
        Ratio total = grams.dividedBy(division);
        return total.dividedBy(period).isInteger()
                && push(Landing.resting(total), true, SearchMeter.standard()).isEmpty();
    }

    @Override
    public Landing smallest(SearchMeter meter) {
        return atLeast(division, meter);
    }

    @Override
    public Landing atLeast(Ratio grams, SearchMeter meter) {
        Landing at = opened(aligned(grams.dividedBy(division).max(Ratio.ONE), true));
        for (Optional<Landing> push = push(at, true, meter); push.isPresent(); push = push(at, true, meter)) {
            at = push.get();
        }
        return inGrams(at);
    }

    /**
     * Up to where the line with the widest gaps can have a reading at all: below, its ends have crossed before anything is rounded.
     * The same jumps lead there, but hundreds of them.
     */
    private Landing opened(Ratio from) {
        Band first = bands.get(0);
        if (errorless || first.isExact()) {
            return Landing.resting(from);
        }
        Ratio open = aligned(first.asWideAs(Ratio.ZERO).ceil(), true);
        return open.compareTo(from) > 0 ? Landing.by(first.line(), open) : Landing.resting(from);
    }

    @Override
    public Optional<Landing> atMost(Ratio grams, SearchMeter meter) {
        Landing at = Landing.resting(aligned(grams.dividedBy(division), false));
        while (at.at().signum() > 0) {
            Optional<Landing> push = push(at, false, meter);
            if (push.isEmpty()) {
                return Optional.of(inGrams(at));
            }
            at = push.get();
        }
        return Optional.empty();
    }

    private Landing inGrams(Landing total) {
        return new Landing(total.at().times(division), total.line());
    }

    /** The nearest multiple of the period that does not lie before a number. */
    private Ratio aligned(Ratio from, boolean up) {
        if (everyWhole && from.isInteger()) {
            return from;
        }
        Ratio multiples = from.dividedBy(period);
        return (up ? multiples.ceil() : multiples.floor()).times(period);
    }

    /** Where a total pushes the search on: to the next that can be feasible. Empty if it is feasible itself. */
    private Optional<Landing> push(Landing from, boolean up, SearchMeter meter) {
        Ratio total = from.at();
        Ratio least = Ratio.ZERO;
        Ratio most = Ratio.ZERO;
        for (int i = 0; i < bands.size(); i++) {
            Band band = bands.get(i);
            Ratio low = band.least(total);
            Ratio high = band.most(total);
            if (low.compareTo(high) > 0) {
                Ratio next = aligned(up ? band.reaches(low) : band.stillAllows(high), up);
                return Optional.of(counted(Landing.by(band.line(), next), i + 1, meter));
            }
            least = least.plus(low);
            most = most.plus(high);
        }
        if (least.compareTo(total) <= 0 && most.compareTo(total) >= 0) {
            return Optional.empty();
        }
        boolean tooMuch = least.compareTo(total) > 0;
        Ratio next = up ? (tooMuch ? least : total.plus(Ratio.ONE)) : (tooMuch ? total.minus(Ratio.ONE) : most);
        return Optional.of(counted(Landing.resting(aligned(next, up)), bands.size(), meter));
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
        Ratio leastShift = lines.plus(sum(band -> band.least().shift()));
        Ratio mostShift = lines.minus(sum(band -> band.most().shift()));
        Ratio from = bands.stream().map(Band::alwaysFrom).reduce(Ratio.ONE, Ratio::max);
        from = from.max(
                leastShift.dividedBy(Ratio.ONE.minus(sum(band -> band.least().slope()))));
        from = from.max(mostShift.dividedBy(sum(band -> band.most().slope()).minus(Ratio.ONE)));
        return Optional.of(from.ceil().times(division));
    }

    private Ratio sum(Function<Band, Ratio> part) {
        return bands.stream().map(part).reduce(Ratio.ZERO, Ratio::plus);
    }

    @Override
    public Ratio after(Ratio end, SearchMeter meter) {
        return atLeast(end.plus(division), meter).at();
    }

    /**
     * The readings of one line that keep it within tolerance when N divisions are made: from {@code ⌈w(1 − τ)(N + (k − 2)e) +
     * e⌉} to {@code ⌊w(1 + τ)(N − (k − 2)e) − e⌋}, for k lines and a reading error of ±e divisions. Both ends are linear in N.
     *
     * <p>Why: with true amounts n_j + δ_j, |δ_j| ≤ e, the share {@code (n_i + δ_i) / (N + Σδ)} rises with δ_i and falls with
     * every other δ_j. It is largest at δ_i = e and all others −e, {@code (n_i + e) / (N − (k − 2)e)}, and smallest the other
     * way round, {@code (n_i − e) / (N + (k − 2)e)}. The two must not leave {@code [w(1 − τ), w(1 + τ)]}.
     */
    record Band(int line, BandEnd least, BandEnd most) {

        static Band of(int line, Ratio weight, Ratio tolerance, Ratio error, int lines) {
            Ratio others = error.times(lines - 2L);
            return new Band(
                    line,
                    BandEnd.of(weight, Ratio.ONE.minus(tolerance), others, error),
                    BandEnd.of(weight, Ratio.ONE.plus(tolerance), others.unaryMinus(), error.unaryMinus()));
        }

        boolean fitsLongs() {
            return least.fitsLongs() && most.fitsLongs();
        }

        boolean isExact() {
            return least.compareSlope(most) == 0;
        }

        /** Whether no N at all lets the line pass: it must be exact, and its reading is not. */
        boolean isHopeless() {
            return isExact() && least.shift().compareTo(most.shift()) > 0;
        }

        Ratio least(Ratio total) {
            return least.at(total, RoundingMode.CEILING);
        }

        Ratio most(Ratio total) {
            return most.at(total, RoundingMode.FLOOR);
        }

        /** The smallest N whose largest reading reaches n. */
        Ratio reaches(Ratio n) {
            return most.meets(n, RoundingMode.CEILING);
        }

        /** The largest N whose smallest reading is still no more than n. */
        Ratio stillAllows(Ratio n) {
            return least.meets(n, RoundingMode.FLOOR);
        }

        /** From which N on the band is at least one division wide, so that it always holds a whole number. */
        Ratio alwaysFrom() {
            return asWideAs(Ratio.ONE);
        }

        /** From which N on its ends, not rounded, lie so many divisions apart. */
        Ratio asWideAs(Ratio divisions) {
            return divisions
                    .minus(most.shift().minus(least.shift()))
                    .dividedBy(most.slope().minus(least.slope()));
        }
    }
}
