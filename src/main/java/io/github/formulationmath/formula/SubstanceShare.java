package io.github.formulationmath.formula;

import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.MassFraction;
import io.github.formulationmath.working.Explained;
import io.github.formulationmath.working.Kind;
import io.github.formulationmath.working.Phrase;
import io.github.formulationmath.working.Reckoning;
import io.github.formulationmath.working.Source;
import io.github.formulationmath.working.Subject;
import io.github.formulationmath.working.Symbol;
import java.io.Serial;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * How much of a whole formula one substance makes up: {@code s = Σ w_i · c_i} over the lines that bring it in, with
 * {@code c_i} its strength in the material of the line.
 *
 * <p>Immutable and thread-safe.
 */
public final class SubstanceShare implements Subject, Explained, Serializable {

    @Serial
    private static final long serialVersionUID = 2L;

    private static final Symbol STRENGTH = Symbol.of("c", "strength", Kind.SHARE);
    private static final Symbol TOTAL = Symbol.of("s", "substance-share", Kind.SHARE);

    private final Substance substance;
    private final List<FormulaLine> lines;
    private final List<Strength> strengths;
    private final Ratio fraction;

    /** What one part of one line's material brings in. */
    private record Strength(FormulaLine line, Subject subject, Ratio strength) implements Serializable {}

    SubstanceShare(OneSubstance one) {
        this.substance = one.substance();
        this.lines = one.lines();
        this.strengths = List.copyOf(strengths(one));
        this.fraction = derive(Reckoning.plain());
    }

    private static List<Strength> strengths(OneSubstance one) {
        List<Strength> all = new ArrayList<>();
        for (FormulaLine line : one.lines()) {
            int before = all.size();
            line.ingredient().parts().forEach((part, strength) -> {
                int place = all.size() - before;
                Subject subject = place == 0
                        ? line
                        : Subject.of(line.subscript() + "." + place, part.name() + " in " + line.name());
                if (one.includes(part)) {
                    all.add(new Strength(line, subject, strength.fraction()));
                }
            });
        }
        return all;
    }

    /**
     * The substance.
     *
     * @return the substance as the formula first names it, with its CAS number where any line gives one
     */
    public Substance substance() {
        return substance;
    }

    /**
     * The lines that bring the substance in.
     *
     * @return an unmodifiable list of at least one line
     */
    public List<FormulaLine> lines() {
        return lines;
    }

    /**
     * The share of the whole.
     *
     * @return the mass fraction, above 0, exact
     */
    public MassFraction share() {
        return MassFraction.of(fraction);
    }

    @Override
    public Phrase question() {
        return Phrase.of("question.substance-share", name());
    }

    @Override
    public Ratio result() {
        return fraction;
    }

    @Override
    public <V> V derive(Reckoning<V> r) {
        List<V> contributions = new ArrayList<>(strengths.size());
        for (Strength each : strengths) {
            V share = r.known(each.line());
            contributions.add(
                    each.strength().equals(Ratio.ONE)
                            ? share
                            : r.product(share, r.given(STRENGTH, each.subject(), each.strength(), Source.user())));
        }
        V total = contributions.size() == 1 ? contributions.get(0) : r.sum(contributions);
        return r.named(TOTAL, this, total);
    }

    @Override
    public String subscript() {
        return "";
    }

    @Override
    public String name() {
        return substance.name();
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof SubstanceShare that && substance.equals(that.substance) && lines.equals(that.lines);
    }

    @Override
    public int hashCode() {
        return Objects.hash(substance, lines);
    }

    @Override
    public String toString() {
        return substance + " " + share();
    }
}
