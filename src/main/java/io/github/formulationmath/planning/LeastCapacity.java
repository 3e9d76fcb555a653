package io.github.formulationmath.planning;

import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.FormulationUnits;
import io.github.formulationmath.scaling.Batch;
import io.github.formulationmath.weighing.Vessel;
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
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import javax.measure.quantity.Mass;

/**
 * The least capacity of a balance on which given batches can be made in a vessel: vessel and largest batch together.
 *
 * <p>Example: batches of 200 g and 500 g in a beaker of 214 g need 714 g.
 *
 * <p>Immutable and thread-safe.
 */
public final class LeastCapacity implements Explained, Serializable {

    @Serial
    private static final long serialVersionUID = 1L;

    private static final Symbol CAPACITY = Symbol.of("C", "least-capacity", Kind.MASS);
    private static final Symbol VESSEL = Symbol.of("V", "vessel-mass", Kind.MASS);
    private static final Symbol BATCH = Symbol.of("M", "batch-of-repertoire", Kind.MASS);

    private final List<Batch> batches;
    private final Vessel vessel;

    private LeastCapacity(List<Batch> batches, Vessel vessel) {
        this.batches = batches;
        this.vessel = vessel;
    }

    /**
     * For a repertoire.
     *
     * @param batches the batches, at least one
     * @param vessel what they are made in
     * @return the capacity
     * @throws IllegalArgumentException if there is no batch
     */
    public static LeastCapacity of(List<Batch> batches, Vessel vessel) {
        Objects.requireNonNull(vessel, "vessel");
        List<Batch> copy = Arguments.atLeastOne("batches", batches);
        return new LeastCapacity(copy, vessel);
    }

    /**
     * The least capacity.
     *
     * @return the mass in grams, exact
     */
    public Amount<Mass> capacity() {
        return Amount.grams(result());
    }

    /**
     * The batch that needs it.
     *
     * @return the largest batch; of equal ones, the first
     */
    public Batch bindingBatch() {
        return batches.stream()
                .max(Comparator.<Batch, Ratio>comparing(Batch::result).thenComparing(batch -> -batches.indexOf(batch)))
                .orElseThrow();
    }

    @Override
    public Phrase question() {
        return Phrase.of("question.least-capacity");
    }

    @Override
    public Ratio result() {
        return derive(Reckoning.plain());
    }

    @Override
    public <V> V derive(Reckoning<V> r) {
        List<V> masses = new ArrayList<>();
        for (int i = 0; i < batches.size(); i++) {
            Batch batch = batches.get(i);
            Subject subject =
                    Subject.of(Integer.toString(i + 1), batch.formula().name());
            masses.add(r.given(BATCH, subject, batch.result(), Source.user()));
        }
        V empty = r.given(VESSEL, vessel.mass().in(FormulationUnits.GRAM), Source.user());
        return r.named(CAPACITY, r.sum(empty, r.maximum(masses)));
    }

    @Override
    public String toString() {
        return "capacity at least " + capacity();
    }
}
