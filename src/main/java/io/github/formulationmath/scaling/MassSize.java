package io.github.formulationmath.scaling;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.FormulationUnits;
import io.github.formulationmath.working.Reckoning;
import io.github.formulationmath.working.Source;
import java.io.Serial;
import javax.measure.quantity.Mass;

/** M as given. */
final class MassSize extends BatchSize {

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

    @Override
    public String toString() {
        return mass.toString();
    }
}
