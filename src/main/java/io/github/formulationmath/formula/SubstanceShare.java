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
    private static final long serialVersionUID = 1L;

    private static final Symbol STRENGTH = Symbol.of("c", "strength", Kind.SHARE);
    private static final Symbol TOTAL = Symbol.of("s", "substance-share", Kind.SHARE);

    private final Substance substance;
    private final List<FormulaLine> lines;
    private final Ratio fraction;

    SubstanceShare(Substance substance, List<FormulaLine> lines) {
        this.substance = substance;
        this.lines = List.copyOf(lines);
        this.fraction = derive(Reckoning.plain());
    }

    /**
     * The substance.
     *
     * @return the substance
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
        List<V> contributions = new ArrayList<>(lines.size());
        for (FormulaLine line : lines) {
            contributions.add(contribution(r, line));
        }
        V total = contributions.size() == 1 ? contributions.get(0) : r.sum(contributions);
        return r.named(TOTAL, this, total);
    }

    private <V> V contribution(Reckoning<V> r, FormulaLine line) {
        V share = r.known(line);
        Ratio strength = line.ingredient().strengthOf(substance).orElseThrow().fraction();
        return strength.equals(Ratio.ONE) ? share : r.product(share, r.given(STRENGTH, line, strength, Source.user()));
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
