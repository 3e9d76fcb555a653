package io.github.formulationmath.limit;

import io.github.formulationmath.chemistry.GravimetricFactor;
import io.github.formulationmath.chemistry.MolarMass;
import io.github.formulationmath.chemistry.MolecularFormula;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.working.Kind;
import io.github.formulationmath.working.Reckoning;
import io.github.formulationmath.working.Source;
import io.github.formulationmath.working.Subject;
import io.github.formulationmath.working.Symbol;
import java.io.Serializable;
import org.jspecify.annotations.Nullable;

/** What one gram of a counted substance counts as on the basis of a limit. */
@SuppressWarnings("ClassInitializationDeadlock") // the constants' classes are used here only
sealed interface Conversion extends Serializable {

    /** The substance counts as it is. */
    Conversion NONE = new AsItIs();

    /** The factor as a bare number; 1 if the substance counts as it is, the greatest possible if nothing says. */
    Ratio factor();

    /** The factor with its working. */
    <V> V in(Reckoning<V> r, Subject subject);

    /** How a limit converts a member of its group. What is counted as X and is X needs no conversion. */
    static Conversion of(UsageLimit limit, GroupMember member) {
        LimitBasis basis = limit.basis();
        if (!basis.isReference()) {
            return NONE;
        }
        GravimetricFactor computed = computed(basis, member);
        if (computed != null) {
            return new Computed(computed);
        }
        boolean itself =
                LimitNames.normalise(member.substance().name()).equals(LimitNames.normalise(basis.referenceName()));
        return itself ? NONE : new Unknown(greatest(limit));
    }

    private static @Nullable GravimetricFactor computed(LimitBasis basis, GroupMember member) {
        MolecularFormula reference = basis.reference().orElse(null);
        MolecularFormula formula = member.formula().orElse(null);
        return reference == null || formula == null
                ? null
                : GravimetricFactor.of(MolarMass.of(formula), MolarMass.of(reference), member.referenceUnits());
    }

    /**
     * The greatest content that is possible: a substance holds no more than its own mass; where the limit expresses a
     * member by more than that (lithium hydroxide as sodium hydroxide), as much as the member that counts most.
     */
    private static Ratio greatest(UsageLimit limit) {
        Ratio greatest = Ratio.ONE;
        for (GroupMember member : limit.group().members()) {
            GravimetricFactor factor = computed(limit.basis(), member);
            if (factor != null && factor.factor().compareTo(greatest) > 0) {
                greatest = factor.factor();
            }
        }
        return greatest;
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

    /** Anything from nothing to the greatest factor possible. */
    record Unknown(Ratio greatest) implements Conversion {

        private static final Symbol GREATEST = Symbol.of("qmax", "greatest-content", Kind.SHARE);

        @Override
        public Ratio factor() {
            return greatest;
        }

        @Override
        public <V> V in(Reckoning<V> r, Subject subject) {
            return greatest.equals(Ratio.ONE) ? r.literal(1) : r.given(GREATEST, subject, greatest, Source.user());
        }
    }
}
