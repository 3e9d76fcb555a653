package io.github.formulationmath.limit;

import io.github.formulationmath.chemistry.GravimetricFactor;
import io.github.formulationmath.chemistry.MolarMass;
import io.github.formulationmath.chemistry.MolecularFormula;
import io.github.formulationmath.formula.SubstanceName;
import io.github.formulationmath.limit.LimitKind.End;
import io.github.formulationmath.number.Bounds;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.reckoning.Kind;
import io.github.formulationmath.reckoning.Reckoning;
import io.github.formulationmath.reckoning.Source;
import io.github.formulationmath.reckoning.Subject;
import io.github.formulationmath.reckoning.Symbol;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What one gram of a counted substance counts as on the basis of a limit. */
@SuppressWarnings("ClassInitializationDeadlock") // the constants' classes are used here only
sealed interface Conversion {

    /** The substance counts as it is. */
    Conversion NONE = new AsItIs();

    /** The factor as a bare number; 1 if the substance counts as it is, the greatest possible if nothing says. */
    Ratio factor();

    /** The factor as it surely is at least, or at most. */
    default Ratio factorAt(End end) {
        return factor();
    }

    /** Whether the factor is known no better than atomic masses are. */
    default boolean isRounded() {
        return !factorAt(End.LOWEST).equals(factorAt(End.HIGHEST));
    }

    /** The factor with its working. */
    <V> V in(Reckoning<V> r, Subject subject);

    /**
     * How a limit converts the members of its group, in their order. What is counted as X and is X needs no conversion.
     * Where nothing says, the greatest content that is possible is that of a substance that holds no more than its own
     * mass; or, where the limit expresses a member by more than that (lithium hydroxide as sodium hydroxide), as much as
     * the member that counts most.
     */
    static List<Conversion> ofMembers(UsageLimit limit) {
        LimitBasis basis = limit.basis();
        List<GroupMember> members = limit.group().members();
        if (!basis.isReference()) {
            return Collections.nCopies(members.size(), NONE);
        }
        List<@Nullable GravimetricFactor> factors = new ArrayList<>(members.size());
        Ratio greatest = Ratio.ONE;
        for (GroupMember member : members) {
            GravimetricFactor factor = computed(basis, member);
            factors.add(factor);
            greatest = factor == null || factor.factor().compareTo(greatest) < 0 ? greatest : factor.factor();
        }
        String reference = SubstanceName.normalise(basis.referenceName());
        List<Conversion> conversions = new ArrayList<>(members.size());
        for (int i = 0; i < members.size(); i++) {
            GravimetricFactor factor = factors.get(i);
            boolean itself = members.get(i).substance().keys().get(0).equals(reference);
            conversions.add(factor != null ? Computed.of(factor) : itself ? NONE : new Unknown(greatest));
        }
        return conversions;
    }

    private static @Nullable GravimetricFactor computed(LimitBasis basis, GroupMember member) {
        MolecularFormula reference = basis.reference().orElse(null);
        MolecularFormula formula = member.formula().orElse(null);
        return reference == null || formula == null
                ? null
                : GravimetricFactor.of(MolarMass.of(formula), MolarMass.of(reference), member.referenceUnits());
    }

    default boolean isKnown() {
        return !(this instanceof Unknown || this instanceof Unstated);
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
    record Computed(GravimetricFactor gravimetric, Ratio least, Ratio greatest) implements Conversion {

        static Computed of(GravimetricFactor gravimetric) {
            Bounds bounds = gravimetric.bounds();
            return new Computed(
                    gravimetric, bounds.lower().orElseThrow(), bounds.upper().orElseThrow());
        }

        @Override
        public Ratio factorAt(End end) {
            return end == End.LOWEST ? least : greatest;
        }

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

    /** One of the names of a blend written as one: as much of it as the whole line, or next to nothing. */
    record Unstated(Ratio factor) implements Conversion {

        /** What is said of it; the report says it once, beside the names. */
        static final String PROBLEM = "problem.blend";

        private static final Symbol GREATEST = Symbol.of("qmax", "greatest-content", Kind.SHARE);

        @Override
        public <V> V in(Reckoning<V> r, Subject subject) {
            return factor.equals(Ratio.ONE) ? r.literal(1) : r.given(GREATEST, subject, factor, Source.user());
        }
    }

    /** Anything from nothing to the greatest factor possible. */
    record Unknown(Ratio greatest) implements Conversion {

        private static final Symbol GREATEST = Symbol.of("q_max", "greatest-content", Kind.SHARE);

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
