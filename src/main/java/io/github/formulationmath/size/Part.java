package io.github.formulationmath.size;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.reckoning.Phrase;
import io.github.formulationmath.reckoning.Reckoning;
import java.util.Optional;

/**
 * One thing that is asked of a size.
 *
 * @param name what it is called
 * @param search the sizes that meet it
 * @param proof what shows that they do
 */
record Part(Phrase name, SizeSearch search, Proof proof) implements WindowBound {

    /** The same relation proves both: they allow the same sizes. */
    boolean isLike(Part other) {
        return proof.equals(other.proof);
    }

    @Override
    public Optional<FormulaLine> line(Formula formula, Landing at) {
        return at.line().isPresent() ? Optional.of(formula.lines().get(at.line().getAsInt())) : Optional.empty();
    }

    @Override
    public <V> V shown(Reckoning<V> r, Landing at, boolean lower) {
        return proof.edge(r, at, lower);
    }
}
