package io.github.formulationmath.planning;

import io.github.formulationmath.number.Ratio;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
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
final class Bands {

    private final List<Band> bands;

    private Bands(List<Band> bands) {
        this.bands = List.copyOf(bands);
    }

    /** Bands of lines with weights above 0 (divisions per unit of size) and tolerances at least 0 and below 1. */
    static Bands of(List<Ratio> weights, List<Ratio> tolerances) {
        List<Band> bands = new ArrayList<>(weights.size());
        List<Ratio> exact = new ArrayList<>();
        int exactLine = Landing.NO_LINE;
        for (int i = 0; i < weights.size(); i++) {
            if (tolerances.get(i).isZero()) {
                exactLine = exact.isEmpty() ? i : exactLine;
                exact.add(weights.get(i));
            } else {
                bands.add(Band.of(i, weights.get(i), tolerances.get(i)));
            }
        }
        if (!exact.isEmpty()) {
            bands.add(Band.of(exactLine, CommonPeriod.of(exact).reciprocal(), Ratio.ZERO));
        }
        // The line with the widest gaps first: it makes the largest jumps.
        bands.sort(Band.BY_SLOPE);
        return new Bands(bands);
    }

    /** The smallest size at which every line passes. */
    Landing smallest(SearchMeter meter) {
        Band first = bands.get(0);
        Landing found = atLeast(first.upSlope().reciprocal(), meter);
        return found.line() == Landing.NO_LINE ? new Landing(found.at(), first.line) : found;
    }

    /** The smallest passing size that is not below a size above 0. */
    Landing atLeast(Ratio from, SearchMeter meter) {
        SizeCursor cursor = new SizeCursor(from);
        for (int place = 0; place < bands.size(); place++) {
            if (cursor.jumpsFor(bands.get(place))) {
                place = -1;
            }
            if (meter.isPauseDue(cursor.isSmall())) {
                meter.pause(cursor.at());
            }
        }
        return cursor.landing();
    }

    /** The largest passing size that is not above a size, if there is one. */
    Optional<Landing> atMost(Ratio from, SearchMeter meter) {
        return from.signum() <= 0 ? Optional.empty() : Optional.ofNullable(fall(from, meter));
    }

    private @Nullable Landing fall(Ratio from, SearchMeter meter) {
        Ratio at = from;
        int line = Landing.NO_LINE;
        for (int place = 0; place < bands.size(); place++) {
            Band band = bands.get(place);
            count(meter, at);
            Ratio most = band.most(at);
            if (most.isZero()) {
                return null;
            }
            if (most.compareTo(band.lowSlope().times(at)) < 0) {
                at = most.dividedBy(band.lowSlope());
                line = band.line;
                place = -1;
            }
        }
        return new Landing(at, line);
    }

    /** Whether every line passes at a size above 0. */
    boolean pass(Ratio size) {
        return bands.stream()
                .allMatch(band -> band.least(size).compareTo(band.upSlope().times(size)) <= 0);
    }

    /** The size from which on every size passes; none if some line must be exact. */
    Optional<Ratio> allFrom() {
        Ratio last = Ratio.ZERO;
        for (Band band : bands) {
            if (band.tolerance.isZero()) {
                return Optional.empty();
            }
            last = last.max(band.rayStart());
        }
        return Optional.of(last);
    }

    /** A size of which every passing size is a whole multiple, if some line must be exact. */
    Optional<Ratio> period() {
        return bands.stream()
                .filter(band -> band.tolerance.isZero())
                .map(band -> band.weight.reciprocal())
                .findFirst();
    }

    /** The start of the interval of passing sizes around a passing size. */
    Ratio startAround(Ratio passing) {
        return bands.stream()
                .map(band -> band.startAround(passing))
                .reduce(Ratio::max)
                .orElseThrow();
    }

    /** The end of the interval of passing sizes around a passing size; only for sizes below {@link #allFrom()}. */
    Ratio endAround(Ratio passing, SearchMeter meter) {
        Ratio end = passing;
        Ratio next = windowEnd(end, meter);
        while (!next.equals(end)) {
            end = next;
            next = windowEnd(end, meter);
        }
        return end;
    }

    /** How far the windows that hold a size reach: the nearest of their ends. */
    private Ratio windowEnd(Ratio size, SearchMeter meter) {
        List<Ratio> ends = new ArrayList<>(bands.size());
        for (Band band : bands) {
            count(meter, size);
            ends.add(band.most(size).dividedBy(band.lowSlope()));
        }
        return ends.stream().reduce(Ratio::min).orElseThrow();
    }

    /** The smallest passing size after the end of an interval. */
    Landing after(Ratio end, SearchMeter meter) {
        Ratio next = end;
        for (Band band : bands) {
            count(meter, end);
            Ratio most = band.most(end);
            if (most.dividedBy(band.lowSlope()).equals(end)) {
                next = next.max(most.plus(Ratio.ONE).dividedBy(band.upSlope()));
            }
        }
        return atLeast(next, meter);
    }

    private static void count(SearchMeter meter, Ratio reached) {
        if (meter.isPauseDue(reached.fitsLongs())) {
            meter.pause(reached);
        }
    }
}
