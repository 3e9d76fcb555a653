package io.github.formulationmath.quantity;

import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.support.ValueContract;
import java.util.List;

/** However it was written, a share is what it is worth. */
class VolumeFractionContractTest implements ValueContract<VolumeFraction> {

    @Override
    public List<VolumeFraction> different() {
        return List.of(
                VolumeFraction.ofPercent("0.5"),
                VolumeFraction.ofPercent("1"),
                VolumeFraction.ofPercent(Ratio.of(1, 3)));
    }

    @Override
    public List<VolumeFraction> same() {
        return List.of(
                VolumeFraction.parse("0.50 % v/v"),
                VolumeFraction.ofPercent(Ratio.ONE),
                VolumeFraction.parse(VolumeFraction.ofPercent(Ratio.of(1, 3)).toString()));
    }
}
