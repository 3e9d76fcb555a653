package io.github.formulationmath.size;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.reckoning.Kind;
import io.github.formulationmath.reckoning.Phrase;
import io.github.formulationmath.reckoning.Reckoning;
import io.github.formulationmath.reckoning.Subject;
import io.github.formulationmath.reckoning.Symbol;
import java.util.Optional;
import java.util.function.Supplier;

/**
 * One thing that is asked of a size.
 *
 * @param named what it is called; asked only when somebody reads it, which most searches do not
 * @param search the sizes that meet it
 * @param proof what shows that they do
 */
record Part(Supplier<Phrase> named, SizeSearch search, Proof proof) implements WindowBound {

    @Override
    public Phrase name() {
        return named.get();
    }

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

    /** The relations that lead to a size, and show that it passes and what binds it. Equal ones prove the same sizes. */
    interface Proof {

        /** What a proof of a smallest size is called. */
        Symbol LEAST = Symbol.of("M", "least-batch", Kind.MASS);

        /** The index of it. */
        Subject MIN = Subject.of("min", "");

        /** The relation that leads to the smallest size. */
        <V> V smallest(Reckoning<V> r, Landing smallest);

        /**
         * The relation that leads to a size at which a search came to rest: the line or total that stopped it there, from
         * below or from above, and that what is asked is met there.
         */
        default <V> V edge(Reckoning<V> r, Landing at, boolean fromBelow) {
            return smallest(r, at);
        }
    }
}
