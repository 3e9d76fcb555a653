package io.github.formulationmath.verification;

import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.FormulationUnits;
import io.github.formulationmath.scaling.BatchSize;
import java.util.stream.Stream;

/** A batch given in US fluid ounces made as imperial ones, or the other way round. */
final class FluidOunceExchanged implements SlipModel {

    private static final Ratio US = FormulationUnits.factorOf(FormulationUnits.US_FLUID_OUNCE);
    private static final Ratio IMPERIAL = FormulationUnits.factorOf(FormulationUnits.IMPERIAL_FLUID_OUNCE);

    @Override
    public Stream<Hypothesis> figures(Shown shown) {
        if (!(shown.claim().size() instanceof BatchSize.OfVolume size)) {
            return Stream.empty();
        }
        Ratio unit = FormulationUnits.factorOf(size.volume().getUnit());
        if (unit.equals(US)) {
            return Stream.of(
                    Hypothesis.scaled(Slip.FLUID_OUNCE_EXCHANGED, "US → imp", shown.right(), IMPERIAL.dividedBy(US)));
        }
        return unit.equals(IMPERIAL)
                ? Stream.of(Hypothesis.scaled(
                        Slip.FLUID_OUNCE_EXCHANGED, "imp → US", shown.right(), US.dividedBy(IMPERIAL)))
                : Stream.empty();
    }
}
