package io.github.formulationmath.size;

import io.github.formulationmath.number.Excerpt;
import io.github.formulationmath.number.Ratio;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * A set of sizes in grams, to be searched: {@link Bands} (islands, then a ray), {@link ClosedBands} (whole numbers of
 * divisions), {@link Ray}, {@link Multiples}, and what {@link RestLeft leaves a q.s. line something}. No set
 * is empty. Every size handed in is above 0.
 */
sealed interface SizeSearch permits Bands, ClosedBands, RestLeft, SizeSearch.Ray, SizeSearch.Multiples {

    /** The least size that the search begins with when it looks for the smallest: nothing below it passes. */
    Landing first();

    /**
     * Where a size that does not pass pushes the search on to, up or down: past sizes none of which passes. Null if it passes.
     *
     * @param size a size
     * @param up whether larger sizes are looked for, or smaller ones
     * @param meter what counts the work
     */
    @Nullable
    Landing push(Ratio size, boolean up, SearchMeter meter);

    /** The passing size nearest to a size above it or below, the size itself if it passes: goes on for as long as it is pushed. */
    default Optional<Landing> next(Ratio from, boolean up, SearchMeter meter) {
        Landing at = Landing.resting(from);
        for (Landing next = at; next != null; next = push(at.at(), up, meter)) {
            at = next;
            if (at.at().signum() <= 0) {
                return Optional.empty();
            }
        }
        return Optional.of(at);
    }

    /** Whether a size passes. */
    default boolean passes(Ratio size) {
        return push(size, true, SearchMeter.standard()) == null;
    }

    /** The smallest size that passes. */
    default Landing smallest(SearchMeter meter) {
        Landing first = first();
        Landing found = atLeast(first.at(), meter);
        return found.at().equals(first.at()) ? first : found;
    }

    /** The smallest passing size not below a size. */
    default Landing atLeast(Ratio from, SearchMeter meter) {
        return next(from, true, meter).orElseThrow();
    }

    /** The largest passing size not above a size. */
    default Optional<Landing> atMost(Ratio from, SearchMeter meter) {
        return next(from, false, meter);
    }

    /** A size from which on, for certain, every size (every whole number of divisions) passes; not always the first. */
    Optional<Ratio> allFrom();

    /** A size of which every passing size is a whole multiple, if there is one. */
    default Optional<Ratio> period() {
        return Optional.empty();
    }

    /** Where the interval of passing sizes around a passing size starts; the size itself if it stands alone. */
    default Ratio startAround(Ratio passing) {
        return passing;
    }

    /** Where that interval ends; empty if it never does. */
    default Optional<Ratio> endAround(Ratio passing, SearchMeter meter) {
        return Optional.of(passing);
    }

    /** The smallest passing size after an end found by {@link #endAround}. */
    default Ratio after(Ratio end, SearchMeter meter) {
        throw new IllegalStateException("no interval ends at " + Excerpt.of(end) + " g");
    }

    /** Every size from one on. */
    record Ray(Landing start) implements SizeSearch {

        @Override
        public Landing first() {
            return start;
        }

        @Override
        public @Nullable Landing push(Ratio size, boolean up, SearchMeter meter) {
            return size.compareTo(start.at()) >= 0 ? null : up ? start : Landing.resting(Ratio.ZERO);
        }

        @Override
        public Optional<Ratio> allFrom() {
            return Optional.of(start.at());
        }

        @Override
        public Ratio startAround(Ratio passing) {
            return start.at();
        }

        @Override
        public Optional<Ratio> endAround(Ratio passing, SearchMeter meter) {
            return Optional.empty();
        }
    }

    /** The whole multiples of a step. */
    record Multiples(Ratio step) implements SizeSearch {

        /** The smallest L > 0 at which w·L is whole for each of some weights above 0: the least common multiple of the numbers 1/w. */
        static Ratio commonPeriod(List<Ratio> weights) {
            return weights.stream()
                    .map(Ratio::reciprocal)
                    .reduce(Ratio::leastCommonMultiple)
                    .orElseThrow();
        }

        @Override
        public Landing first() {
            return Landing.resting(step);
        }

        @Override
        public @Nullable Landing push(Ratio size, boolean up, SearchMeter meter) {
            Ratio multiple = size.dividedBy(step);
            return multiple.isInteger() ? null : Landing.resting((up ? multiple.ceil() : multiple.floor()).times(step));
        }

        @Override
        public Optional<Ratio> allFrom() {
            return Optional.empty();
        }

        @Override
        public Optional<Ratio> period() {
            return Optional.of(step);
        }

        @Override
        public Ratio after(Ratio end, SearchMeter meter) {
            return end.plus(step);
        }
    }
}
