package io.github.formulationmath.size;

import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.reckoning.Kind;
import io.github.formulationmath.reckoning.Phrase;
import io.github.formulationmath.reckoning.Reckoning;
import io.github.formulationmath.reckoning.Source;
import io.github.formulationmath.reckoning.Symbol;
import javax.measure.quantity.Mass;

/** What is asked of a size for no other reason than that somebody wishes it; given, not derived. In grams. */
sealed interface Wish extends Part.Proof {

    /** The size is at least so much. */
    static Part atLeast(Amount<Mass> size) {
        Ratio grams = size.canonical();
        return new Part(
                () -> Phrase.of("criterion.least-size", size.toString()),
                new SizeSearch.Ray(Landing.resting(grams)),
                new Least(size));
    }

    /** The size is a whole multiple of a step. */
    static Part inStepsOf(Amount<Mass> step) {
        Ratio grams = step.canonical();
        return new Part(
                () -> Phrase.of("criterion.in-steps", step.toString()),
                new SizeSearch.Multiples(grams),
                new Step(step));
    }

    /** At least a size. */
    record Least(Amount<Mass> size) implements Wish {

        private static final Symbol WISHED = Symbol.of("W", "least-size-wished", Kind.MASS);

        @Override
        public <V> V smallest(Reckoning<V> r, Landing smallest) {
            return r.given(WISHED, size, Source.user());
        }
    }

    /** A multiple of a step. */
    record Step(Amount<Mass> step) implements Wish {

        private static final Symbol STEP = Symbol.of("s", "size-step", Kind.MASS);

        @Override
        public <V> V smallest(Reckoning<V> r, Landing smallest) {
            return r.given(STEP, step, Source.user());
        }

        @Override
        public <V> V edge(Reckoning<V> r, Landing at, boolean fromBelow) {
            return r.product(r.literal(at.at().dividedBy(step.canonical())), smallest(r, at));
        }
    }
}
