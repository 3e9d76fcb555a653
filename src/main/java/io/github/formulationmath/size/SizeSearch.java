package io.github.formulationmath.size;

import io.github.formulationmath.number.Excerpt;
import io.github.formulationmath.number.Ratio;
import java.util.Optional;

/**
 * A set of sizes in grams, to be searched: {@link Bands} (islands, then a ray), {@link ClosedBands} (whole numbers of
 * divisions), {@link Ray}, {@link Multiples}, and what {@link RestLeft leaves a q.s. line something}. No set
 * is empty. Every size handed in is above 0.
 */
sealed interface SizeSearch permits Bands, ClosedBands, RestLeft, SizeSearch.Ray, SizeSearch.Multiples {

    /** Whether a size passes. */
    boolean passes(Ratio size);

    /** The smallest size that passes. */
    Landing smallest(SearchMeter meter);

    /** The smallest passing size not below a size. */
    Landing atLeast(Ratio from, SearchMeter meter);

    /** The largest passing size not above a size. */
    Optional<Landing> atMost(Ratio from, SearchMeter meter);

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
        public boolean passes(Ratio size) {
            return size.compareTo(start.at()) >= 0;
        }

        @Override
        public Landing smallest(SearchMeter meter) {
            return start;
        }

        @Override
        public Landing atLeast(Ratio from, SearchMeter meter) {
            return passes(from) ? Landing.resting(from) : start;
        }

        @Override
        public Optional<Landing> atMost(Ratio from, SearchMeter meter) {
            return passes(from) ? Optional.of(Landing.resting(from)) : Optional.empty();
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

        @Override
        public boolean passes(Ratio size) {
            return size.dividedBy(step).isInteger();
        }

        @Override
        public Landing smallest(SearchMeter meter) {
            return Landing.resting(step);
        }

        @Override
        public Landing atLeast(Ratio from, SearchMeter meter) {
            return Landing.resting(from.dividedBy(step).ceil().times(step));
        }

        @Override
        public Optional<Landing> atMost(Ratio from, SearchMeter meter) {
            Ratio multiple = from.dividedBy(step).floor();
            return multiple.isZero() ? Optional.empty() : Optional.of(Landing.resting(multiple.times(step)));
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
