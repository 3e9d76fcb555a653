package io.github.formulationmath.size;

import io.github.formulationmath.number.Ratio;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * For which sizes u does every line have a whole number of divisions within its tolerance? Line i at size u is {@code
 * x = w·u} divisions; it passes if a whole n ≥ 1 lies in its {@link Band}.
 *
 * <p>A whole number in the band is the same as the <em>displayed</em> number in the band. The display shows the whole
 * number nearest to x; no whole number is nearer, and at a tie the two neighbours are equally far, so if any n has {@code
 * |n − x| ≤ τ·x}, the displayed one has, whichever way ties go. And for τ &lt; 1 it is not 0: {@code |0 − x| = x > τ·x}.
 *
 * <p>Searching up: at size u let {@code n = ⌈(1 − τ)·w·u⌉} be the least whole number not below the band. If it is above
 * the band, no size passes before the upper end of the band reaches it, at {@code n / ((1 + τ)·w)}: go there. The lower
 * end only rises, so no passing size is ever jumped over, and a size at which no line jumps is the smallest that passes.
 * Searching down mirrors this.
 *
 * <p>Lines with τ = 0 pass together at the multiples of one number, the least common multiple of their 1/w, and count as
 * one band.
 */
final class Bands implements SizeSearch {

    private final List<Band> bands;

    /** What a size must be a multiple of, if lines must be exact. */
    private final Optional<Ratio> period;

    private Bands(List<Band> bands, Optional<Ratio> period) {
        this.bands = List.copyOf(bands);
        this.period = period;
    }

    /** Bands of lines for sizes in divisions of the display. */
    static Bands of(List<Ratio> shares, List<Ratio> tolerances) {
        return of(0, shares, tolerances, Ratio.ONE);
    }

    /**
     * Bands of lines for sizes in grams.
     *
     * @param first the index of the first of the lines; the others follow it
     * @param shares their shares, above 0, at least one
     * @param tolerances their tolerances, at least 0 and below 1
     * @param step the step of the display in grams
     */
    static Bands of(int first, List<Ratio> shares, List<Ratio> tolerances, Ratio step) {
        List<Band> bands = new ArrayList<>(shares.size());
        List<Ratio> exact = new ArrayList<>();
        OptionalInt exactLine = OptionalInt.empty();
        Factors factors = Factors.of(tolerances.get(0), step);
        for (int i = 0; i < shares.size(); i++) {
            factors = factors.of(tolerances.get(i));
            if (factors.tolerance().isZero()) {
                exactLine = exactLine.isPresent() ? exactLine : OptionalInt.of(first + i);
                exact.add(shares.get(i).dividedBy(step));
            } else {
                bands.add(Band.of(first + i, shares.get(i), factors.under(), factors.over()));
            }
        }
        Optional<Ratio> period = Optional.empty();
        if (exactLine.isPresent()) {
            Ratio common = Multiples.commonPeriod(exact);
            period = Optional.of(common);
            bands.add(Band.of(exactLine.getAsInt(), common.reciprocal(), Ratio.ONE, Ratio.ONE));
        }
        // The line with the widest gaps first: it makes the largest jumps.
        bands.sort((one, other) -> one.up().compareSlope(other.up()));
        return new Bands(bands, period);
    }

    /** What the share of a line is multiplied with at the two ends of its band; most lines have the tolerance of the one before. */
    private record Factors(Ratio tolerance, Ratio step, Ratio under, Ratio over) {

        static Factors of(Ratio tolerance, Ratio step) {
            return new Factors(
                    tolerance,
                    step,
                    Ratio.ONE.minus(tolerance).dividedBy(step),
                    Ratio.ONE.plus(tolerance).dividedBy(step));
        }

        Factors of(Ratio other) {
            return tolerance.equals(other) ? this : of(other, step);
        }
    }

    @Override
    public Landing first() {
        Band first = bands.get(0);
        return Landing.by(first.line(), first.reached(Ratio.ONE));
    }

    @Override
    public @Nullable Landing push(Ratio size, boolean up, SearchMeter meter) {
        for (int i = 0; i < bands.size(); i++) {
            Band band = bands.get(i);
            Ratio low = band.least(size);
            if (!band.holds(low, size)) {
                Landing next = Landing.by(band.line(), up ? band.reached(low) : band.left(band.most(size)));
                meter.count(next.at());
                return next;
            }
            meter.count(size);
        }
        return null;
    }

    /** The size from which on every size passes; none if some line must be exact. */
    @Override
    public Optional<Ratio> allFrom() {
        return period().isPresent() ? Optional.empty() : Optional.of(last(Band::rayStart));
    }

    @Override
    public Optional<Ratio> period() {
        return period;
    }

    @Override
    public Ratio startAround(Ratio passing) {
        return last(band -> band.startAround(passing));
    }

    private Ratio last(Function<Band, Ratio> start) {
        return bands.stream().map(start).reduce(Ratio::max).orElseThrow();
    }

    @Override
    public Optional<Ratio> endAround(Ratio passing, SearchMeter meter) {
        if (allFrom().filter(start -> passing.compareTo(start) >= 0).isPresent()) {
            return Optional.empty();
        }
        // Windows of one line may touch: where one ends the next may have begun.
        Ratio end = passing;
        for (Ratio next = windowEnd(end, meter); !next.equals(end); next = windowEnd(end, meter)) {
            end = next;
        }
        return Optional.of(end);
    }

    /** How far the windows that hold a size reach: the nearest of their ends. */
    private Ratio windowEnd(Ratio size, SearchMeter meter) {
        bands.forEach(band -> meter.count(size));
        return bands.stream()
                .map(band -> band.left(band.most(size)))
                .reduce(Ratio::min)
                .orElseThrow();
    }

    @Override
    public Ratio after(Ratio end, SearchMeter meter) {
        Ratio next = end;
        for (Band band : bands) {
            meter.count(end);
            Ratio most = band.most(end);
            if (band.left(most).equals(end)) {
                next = next.max(band.reached(most.plus(Ratio.ONE)));
            }
        }
        return atLeast(next, meter).at();
    }
}
