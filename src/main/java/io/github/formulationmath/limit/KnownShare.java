package io.github.formulationmath.limit;

import io.github.formulationmath.limit.LimitKind.End;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.Interval;
import io.github.formulationmath.reckoning.Kind;
import io.github.formulationmath.reckoning.Reckoning;
import io.github.formulationmath.reckoning.Source;
import io.github.formulationmath.reckoning.Subject;
import io.github.formulationmath.reckoning.Symbol;
import io.github.formulationmath.weighing.MadeShare;
import javax.measure.quantity.Dimensionless;

/** What is known of a share that is held against a limit; a value without uncertainty is its own ends. */
sealed interface KnownShare {

    <V> V value(Reckoning<V> r);

    /** The same as numbers that are reckoned once, for decisions that nobody asks the working of. */
    default KnownShare plainly() {
        return this;
    }

    default <V> V lowest(Reckoning<V> r) {
        return value(r);
    }

    default <V> V highest(Reckoning<V> r) {
        return value(r);
    }

    default <V> V variance(Reckoning<V> r) {
        return r.literal(0);
    }

    /**
     * The share as the formula has it.
     *
     * @param tally what is counted
     * @param end whether what is not known counts for nothing, or for as much as it can
     */
    record Written(Tally tally, End end) implements KnownShare {

        @Override
        public <V> V value(Reckoning<V> r) {
            return tally.share(r, end);
        }

        @Override
        public KnownShare plainly() {
            Ratio share = value(Reckoning.plain());
            return new Numbers(share, share, share, Ratio.ZERO);
        }
    }

    /**
     * The share as weighed.
     *
     * @param share the share with its errors
     */
    record Made(MadeShare share) implements KnownShare {

        @Override
        public <V> V value(Reckoning<V> r) {
            return r.known(share);
        }

        @Override
        public <V> V lowest(Reckoning<V> r) {
            return r.known(share.bounds().least());
        }

        @Override
        public <V> V highest(Reckoning<V> r) {
            return r.known(share.highest());
        }

        @Override
        public <V> V variance(Reckoning<V> r) {
            return r.known(share.variance());
        }
    }

    /**
     * The share as weighed, in part as a portion of what was mixed before.
     *
     * @param subject what is counted
     * @param share the share as the masses one by one tell it: its estimate, and a variance that is not too small
     * @param bounds where it is sure to lie
     */
    record Mixed(Subject subject, MadeShare share, Interval<Amount<Dimensionless>> bounds) implements KnownShare {

        private static final Symbol LEAST = Symbol.of("y_lo", "least-mixed-share", Kind.SHARE);
        private static final Symbol GREATEST = Symbol.of("y_hi", "greatest-mixed-share", Kind.SHARE);

        @Override
        public <V> V value(Reckoning<V> r) {
            return r.known(share);
        }

        @Override
        public <V> V lowest(Reckoning<V> r) {
            return r.given(LEAST, subject, bounds.least().canonical(), Source.user());
        }

        @Override
        public <V> V highest(Reckoning<V> r) {
            return r.given(GREATEST, subject, bounds.greatest().canonical(), Source.user());
        }

        @Override
        public <V> V variance(Reckoning<V> r) {
            return r.known(share.variance());
        }
    }

    /**
     * Numbers from elsewhere, of which nothing is told but the decision.
     *
     * @param share the estimate
     * @param least the lower end
     * @param greatest the upper end
     * @param squared the square of the standard uncertainty
     */
    record Numbers(Ratio share, Ratio least, Ratio greatest, Ratio squared) implements KnownShare {

        /** A number that has no uncertainty. */
        static Numbers of(Ratio value) {
            return new Numbers(value, value, value, Ratio.ZERO);
        }

        @Override
        public <V> V value(Reckoning<V> r) {
            return r.literal(share);
        }

        @Override
        public <V> V lowest(Reckoning<V> r) {
            return r.literal(least);
        }

        @Override
        public <V> V highest(Reckoning<V> r) {
            return r.literal(greatest);
        }

        @Override
        public <V> V variance(Reckoning<V> r) {
            return r.literal(squared);
        }
    }
}
