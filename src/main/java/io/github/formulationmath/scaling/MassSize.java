package io.github.formulationmath.scaling;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.FormulationUnits;
import io.github.formulationmath.working.Reckoning;
import io.github.formulationmath.working.Source;
import java.io.Serial;
import java.util.Objects;
import javax.measure.quantity.Mass;
import org.jspecify.annotations.Nullable;

/**
 * A batch of a stated mass M. Made by {@link BatchSize#ofMass(Amount)}.
 *
 * <p>Immutable and thread-safe.
 */
public final class MassSize extends BatchSize {

    @Serial
    private static final long serialVersionUID = 1L;

    private final Amount<Mass> mass;

    MassSize(Amount<Mass> mass) {
        this.mass = mass;
    }

    @Override
    <V> V mass(Reckoning<V> r, Formula formula) {
        return r.given(BATCH_MASS, mass.in(FormulationUnits.GRAM), Source.user());
    }

    /**
     * The batch mass.
     *
     * @return the mass as given, above 0
     */
    public Amount<Mass> mass() {
        return mass;
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof MassSize that && mass.equals(that.mass);
    }

    @Override
    public int hashCode() {
        return Objects.hash(mass);
    }

    @Override
    public String toString() {
        return mass.toString();
    }
}
