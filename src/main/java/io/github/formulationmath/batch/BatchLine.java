package io.github.formulationmath.batch;

import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.formula.Line;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.reckoning.Explained;
import io.github.formulationmath.reckoning.Kind;
import io.github.formulationmath.reckoning.Origin;
import io.github.formulationmath.reckoning.Phrase;
import io.github.formulationmath.reckoning.Reckoning;
import io.github.formulationmath.reckoning.Source;
import io.github.formulationmath.reckoning.Subject;
import io.github.formulationmath.reckoning.Symbol;
import java.io.Serial;
import java.io.Serializable;
import java.util.Objects;
import javax.measure.quantity.Mass;
import org.jspecify.annotations.Nullable;

/**
 * One line of a batch: its exact mass {@code m = w · M}.
 *
 * <p>Example: 2.5 % of 400 g is 10 g.
 *
 * <p>Immutable and thread-safe.
 */
public final class BatchLine implements Line, Explained, Serializable {

    @Serial
    private static final long serialVersionUID = 1L;

    private static final Symbol LINE_MASS = Symbol.of("m", "line-mass", Kind.MASS);

    private final Batch batch;
    private final FormulaLine line;
    private final Ratio grams;

    BatchLine(Batch batch, FormulaLine line) {
        this.batch = batch;
        this.line = line;
        this.grams = massIn(Reckoning.plain());
    }

    @Override
    public FormulaLine line() {
        return line;
    }

    /**
     * The exact mass.
     *
     * @return the mass with its working; in grams, or in ounces if the batch is in ounces or pounds
     */
    public Amount<Mass> mass() {
        Amount<Mass> mass = Amount.grams(grams);
        return batch.size()
                .statedMass()
                .map(unit -> mass.inUnitOf(unit.inSmallerUnit()))
                .orElse(mass)
                .withWorking(origin());
    }

    /** The exact mass. */
    @Override
    public Origin origin() {
        return Origin.of(BatchLine::question, grams, this, BatchLine::massIn);
    }

    private Phrase question() {
        return Phrase.of("question.line-mass", name());
    }

    /**
     * The mass as a given number of a working that is about the lines of several batches, whose symbols would meet.
     *
     * @param r the reckoning
     * @param subject what tells the line from those of the other batches
     * @param <V> the kind of number that is reckoned with
     * @return {@link #mass()}
     */
    public <V> V givenMass(Reckoning<V> r, Subject subject) {
        return Objects.requireNonNull(r, "r")
                .given(LINE_MASS, Objects.requireNonNull(subject, "subject"), mass(), Source.user());
    }

    private <V> V massIn(Reckoning<V> r) {
        return r.named(LINE_MASS, line, r.product(r.known(line), r.known(batch)));
    }

    /** Equal if batch and line are. */
    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof BatchLine that && line.equals(that.line) && batch.equals(that.batch);
    }

    @Override
    public int hashCode() {
        return Objects.hash(line, grams);
    }

    @Override
    public String toString() {
        return name() + " " + mass().toldExactly();
    }
}
