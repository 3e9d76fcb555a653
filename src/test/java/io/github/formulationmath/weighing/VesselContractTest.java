package io.github.formulationmath.weighing;

import io.github.formulationmath.support.ValueContract;
import java.util.List;

/** Two vessels are equal if name, mass and volumes are. */
class VesselContractTest implements ValueContract<Vessel> {

    private static List<Vessel> vessels() {
        return List.of(
                Vessel.none(),
                Vessel.of("beaker", "214 g"),
                Vessel.of("pot", "214 g"),
                Vessel.of("beaker", "215 g"),
                Vessel.of("beaker", "214 g").holding("600 mL", "450 mL"),
                Vessel.of("beaker", "214 g").holding("700 mL", "450 mL"),
                Vessel.of("beaker", "214 g").holding("600 mL", "500 mL"));
    }

    @Override
    public List<Vessel> different() {
        return vessels();
    }

    @Override
    public List<Vessel> same() {
        return vessels();
    }
}
