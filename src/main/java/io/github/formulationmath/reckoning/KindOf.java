package io.github.formulationmath.reckoning;

import io.github.formulationmath.reckoning.Operation.Arithmetic;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/** The kind of quantity behind a term, and so its unit, worked out from the kinds of the named steps in it. */
final class KindOf {

    private static final Map<Kind, Dimension> NAMED = new EnumMap<>(Kind.class);

    static {
        for (Kind kind : Kind.values()) {
            NAMED.put(kind, Dimension.of(kind));
        }
    }

    /** A dimension, and whether the number behind it is a share. */
    private record Nature(Dimension dimension, boolean share) {

        static final Nature PLAIN = new Nature(Dimension.NONE, false);

        boolean isPlain() {
            return equals(PLAIN);
        }
    }

    private KindOf() {}

    /** The unit to print a term in. */
    static Measure measure(Term term, UnitChoice units) {
        Nature nature = nature(term);
        if (nature.dimension().equals(Dimension.NONE)) {
            return nature.share() ? units.of(Kind.SHARE) : units.of(Kind.NUMBER);
        }
        return NAMED.entrySet().stream()
                .filter(e -> e.getValue().equals(nature.dimension()))
                .findFirst()
                .map(e -> units.of(e.getKey()))
                .orElseGet(() -> Measure.composed(nature.dimension(), units));
    }

    private static Nature nature(Term term) {
        if (term instanceof Step step) {
            Kind kind = step.symbol().kind();
            return new Nature(Dimension.of(kind), kind == Kind.SHARE || kind == Kind.SHARE_DIFFERENCE);
        }
        return term instanceof Term.Applied applied ? nature(applied) : Nature.PLAIN;
    }

    private static Nature nature(Term.Applied applied) {
        List<Term> inputs = applied.inputs();
        if (applied.operation() instanceof Operation.Statistic || applied.operation() instanceof Operation.Power) {
            return Nature.PLAIN;
        }
        if (applied.operation() == Arithmetic.PRODUCT) {
            Nature a = nature(inputs.get(0));
            Nature b = nature(inputs.get(1));
            return new Nature(a.dimension().times(b.dimension()), a.share() || b.share());
        }
        if (applied.operation() == Arithmetic.QUOTIENT) {
            Nature a = nature(inputs.get(0));
            Nature b = nature(inputs.get(1));
            return new Nature(a.dimension().dividedBy(b.dimension()), a.share() && b.isPlain());
        }
        if (applied.operation() instanceof Operation.Root) {
            Nature a = nature(inputs.get(0));
            return new Nature(a.dimension().root(), a.share());
        }
        return firstThatSays(inputs);
    }

    /** The operations left keep the unit; a literal among the inputs says nothing about it. */
    private static Nature firstThatSays(List<Term> inputs) {
        for (Term input : inputs) {
            Nature nature = nature(input);
            if (!nature.isPlain()) {
                return nature;
            }
        }
        return Nature.PLAIN;
    }
}
