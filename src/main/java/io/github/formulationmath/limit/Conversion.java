package io.github.formulationmath.limit;

import io.github.formulationmath.chemistry.GravimetricFactor;
import io.github.formulationmath.chemistry.MolarMass;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.working.Kind;
import io.github.formulationmath.working.Reckoning;
import io.github.formulationmath.working.Source;
import io.github.formulationmath.working.Subject;
import io.github.formulationmath.working.Symbol;
import java.io.Serializable;

/** What one gram of a counted substance counts as on the basis of a limit. */
@SuppressWarnings("ClassInitializationDeadlock") // the constants' classes are used here only
sealed interface Conversion extends Serializable {

    /** The substance counts as it is. */
    Conversion NONE = new AsItIs();

    /** It would have to be converted, and nothing says how. */
    Conversion UNKNOWN = new Unknown();

    /** The factor as a bare number; 1 if the substance counts as it is. */
    Ratio factor();

    /** The factor with its working. */
    <V> V in(Reckoning<V> r, Subject subject);

    /** How a limit converts a member of its group. */
    static Conversion of(LimitBasis basis, GroupMember member) {
        if (!basis.isReference()) {
            return NONE;
        }
        return basis.reference()
                .flatMap(reference -> member.formula()
                        .map(formula -> GravimetricFactor.of(
                                MolarMass.of(formula), MolarMass.of(reference), member.referenceUnits())))
                .<Conversion>map(Computed::new)
                .orElse(UNKNOWN);
    }

    default boolean isKnown() {
        return !(this instanceof Unknown);
    }

    default boolean isIdentity() {
        return this instanceof AsItIs;
    }

    /** Factor 1. */
    record AsItIs() implements Conversion {

        @Override
        public Ratio factor() {
            return Ratio.ONE;
        }

        @Override
        public <V> V in(Reckoning<V> r, Subject subject) {
            return r.literal(1);
        }
    }

    /** Through molar masses. */
    record Computed(GravimetricFactor gravimetric) implements Conversion {

        @Override
        public Ratio factor() {
            return gravimetric.factor();
        }

        @Override
        public <V> V in(Reckoning<V> r, Subject subject) {
            return r.known(gravimetric);
        }
    }

    /** From the supplier's documents. */
    record Stated(Ratio factor, Source source) implements Conversion {

        private static final Symbol CONTENT = Symbol.of("q", "stated-content", Kind.SHARE);

        @Override
        public <V> V in(Reckoning<V> r, Subject subject) {
            return r.given(CONTENT, subject, factor, source);
        }
    }

    /** No factor; its value is never used. */
    record Unknown() implements Conversion {

        @Override
        public Ratio factor() {
            return Ratio.ONE;
        }

        @Override
        public <V> V in(Reckoning<V> r, Subject subject) {
            return r.literal(1);
        }
    }
}
