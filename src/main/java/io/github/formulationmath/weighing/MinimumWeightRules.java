package io.github.formulationmath.weighing;

import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.working.Kind;
import io.github.formulationmath.working.Phrase;
import io.github.formulationmath.working.Reckoning;
import io.github.formulationmath.working.Source;
import io.github.formulationmath.working.Symbol;
import java.util.List;

/** The relations behind {@link MinimumWeight}. */
final class MinimumWeightRules {

    private static final Symbol LEAST = Symbol.of("mmin", "minimum-weight", Kind.MASS);
    private static final Symbol TOLERANCE = Symbol.of("τ", "permitted-error", Kind.SHARE);
    private static final Symbol FACTOR = Symbol.of("k", "coverage-factor", Kind.NUMBER);
    private static final Symbol FLOOR = Symbol.of("s0", "least-repeatability", Kind.MASS);
    private static final Symbol SENSITIVITY = Symbol.of("SR", "sensitivity-requirement", Kind.MASS);
    private static final Symbol CONSTANT = Symbol.of("α", "uncertainty-constant", Kind.MASS);
    private static final Symbol SLOPE = Symbol.of("β", "uncertainty-slope", Kind.NUMBER);
    private static final Symbol SAFETY = Symbol.of("SF", "safety-factor", Kind.NUMBER);
    private static final Source USP = Source.published("USP general chapter 41, 1 August 2019", "");

    private MinimumWeightRules() {}

    /** k · max(s, 0.41 d) / τ. */
    record Repeatability(Ratio deviation, Ratio step, Ratio tolerance, Ratio factor) implements Relation {

        @Override
        public <V> V in(Reckoning<V> r) {
            V s = r.given(ErrorTerm.REPEATABILITY, deviation, Source.user());
            V d = r.given(ErrorTerm.READABILITY, step, Source.user());
            V floor = r.named(FLOOR, r.product(r.literal(Ratio.of(41, 100)), d));
            r.note(() -> Phrase.of("note.repeatability-floor", USP.citation()));
            V spread = r.maximum(List.of(s, floor));
            V k = r.given(FACTOR, factor, Source.user());
            return r.named(LEAST, r.quotient(r.product(k, spread), permitted(r, tolerance)));
        }
    }

    /** SR / τ. */
    record Sensitivity(Ratio requirement, Ratio error) implements Relation {

        @Override
        public <V> V in(Reckoning<V> r) {
            V given = r.given(SENSITIVITY, requirement, Source.user());
            return r.named(LEAST, r.quotient(given, permitted(r, error)));
        }
    }

    /** α · SF / (τ − β · SF). */
    record Uncertainty(Ratio constant, Ratio slope, Ratio tolerance, Ratio safety) implements Relation {

        @Override
        public <V> V in(Reckoning<V> r) {
            V factor = r.given(SAFETY, safety, Source.user());
            V above = r.product(r.given(CONSTANT, constant, Source.user()), factor);
            V below = r.difference(permitted(r, tolerance), r.product(r.given(SLOPE, slope, Source.user()), factor));
            return r.named(LEAST, r.quotient(above, below));
        }
    }

    private static <V> V permitted(Reckoning<V> r, Ratio value) {
        return r.given(TOLERANCE, value, Source.user());
    }
}
