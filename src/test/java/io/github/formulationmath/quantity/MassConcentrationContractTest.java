package io.github.formulationmath.quantity;

import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.support.ValueContract;
import java.util.List;

/** However it was written, a share is what it is worth. */
class MassConcentrationContractTest implements ValueContract<MassConcentration> {

    @Override
    public List<MassConcentration> different() {
        return List.of(
                MassConcentration.ofPercent("0.5"),
                MassConcentration.ofPercent("1"),
                MassConcentration.ofPercent(Ratio.of(1, 3)));
    }

    @Override
    public List<MassConcentration> same() {
        return List.of(
                MassConcentration.parse("5 ‰ w/v"),
                MassConcentration.ofPercent(Ratio.ONE),
                MassConcentration.parse(
                        MassConcentration.ofPercent(Ratio.of(1, 3)).toString()));
    }
}
