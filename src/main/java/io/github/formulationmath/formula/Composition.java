package io.github.formulationmath.formula;

import java.io.Serial;
import java.io.Serializable;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * A formula rolled up to substances, each once ({@link Substances}) with its share of the whole ({@link SubstanceShare}).
 * The shares add up to exactly 100 %.
 *
 * <p>Example: 10 % of a 30 % solution and 70 % of water as a line of its own make 3 % active matter and 77 % water, if
 * the rest of the solution is water.
 *
 * <p>Immutable and thread-safe.
 */
public final class Composition implements Serializable {

    @Serial
    private static final long serialVersionUID = 2L;

    private final Formula formula;
    private final List<SubstanceShare> shares;

    private Composition(Formula formula) {
        this.formula = formula;
        this.shares =
                formula.substances().all().stream().map(SubstanceShare::new).toList();
    }

    /**
     * Rolls up a formula.
     *
     * @param formula the formula
     * @return its composition
     */
    public static Composition of(Formula formula) {
        return new Composition(Objects.requireNonNull(formula, "formula"));
    }

    /**
     * The substances with their shares, in the order in which the formula first names them.
     *
     * @return an unmodifiable list; the shares add up to 100 %
     */
    public List<SubstanceShare> shares() {
        return shares;
    }

    /**
     * The share of a substance, all spellings of it taken together.
     *
     * @param substance the substance, in any spelling
     * @return its share; empty if no material contains it
     * @throws IllegalArgumentException if what is asked for and what the formula has of it would be one substance with two
     *     CAS numbers
     */
    public Optional<SubstanceShare> shareOf(Substance substance) {
        return formula.substances()
                .find(Objects.requireNonNull(substance, "substance"))
                .map(SubstanceShare::new);
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
