package io.github.formulationmath.formula;

import java.io.Serial;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * A formula rolled up to substances, each with its share of the whole ({@link SubstanceShare}). The shares add up to
 * exactly 100 %.
 *
 * <p>Example: 10 % of a 30 % solution and 70 % of water as a line of its own make 3 % active matter and 77 % water, if
 * the rest of the solution is water.
 *
 * <p>Immutable and thread-safe.
 */
public final class Composition implements Serializable {

    @Serial
    private static final long serialVersionUID = 1L;

    private final Map<Substance, SubstanceShare> shares;

    private Composition(Map<Substance, SubstanceShare> shares) {
        this.shares = shares;
    }

    /**
     * Rolls up a formula.
     *
     * @param formula the formula
     * @return its composition
     */
    public static Composition of(Formula formula) {
        Objects.requireNonNull(formula, "formula");
        Map<Substance, List<FormulaLine>> lines = new LinkedHashMap<>();
        for (FormulaLine line : formula.lines()) {
            for (Substance substance : line.ingredient().parts().keySet()) {
                lines.computeIfAbsent(substance, s -> new ArrayList<>()).add(line);
            }
        }
        Map<Substance, SubstanceShare> shares = new LinkedHashMap<>();
        lines.forEach((substance, from) -> shares.put(substance, new SubstanceShare(substance, from)));
        return new Composition(shares);
    }

    /**
     * The substances with their shares, in the order in which the formula first names them.
     *
     * @return an unmodifiable list; the shares add up to 100 %
     */
    public List<SubstanceShare> shares() {
        return List.copyOf(shares.values());
    }

    /**
     * The share of a substance.
     *
     * @param substance the substance
     * @return its share; empty if no material contains it
     */
    public Optional<SubstanceShare> shareOf(Substance substance) {
        return Optional.ofNullable(shares.get(Objects.requireNonNull(substance, "substance")));
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Composition that && shares.equals(that.shares);
    }

    @Override
    public int hashCode() {
        return shares.hashCode();
    }

    @Override
    public String toString() {
        return shares().toString();
    }
}
