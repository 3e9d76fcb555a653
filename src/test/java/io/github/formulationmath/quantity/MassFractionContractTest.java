package io.github.formulationmath.quantity;

import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.support.ValueContract;
import java.util.List;

/** However it was written, a share is what it is worth. */
class MassFractionContractTest implements ValueContract<MassFraction> {

    @Override
    public List<MassFraction> different() {
        return List.of(
                MassFraction.ofPercent("0.5"), MassFraction.ofPercent("1"), MassFraction.ofPercent(Ratio.of(1, 3)));
    }

    @Override
    public List<MassFraction> same() {
        return List.of(
                MassFraction.parse("5 ‰"),
                MassFraction.ofPercent(Ratio.ONE),
                MassFraction.parse(MassFraction.ofPercent(Ratio.of(1, 3)).toString()));
    }
}
