package io.github.formulationmath.verification;

import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.FormulationUnits;
import io.github.formulationmath.scaling.BatchSize;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;
import javax.measure.Unit;

/**
 * One ounce for another where an ounce was asked for or shown: avoirdupois, troy, or a fluid ounce filled with water at 1
 * g/mL.
 */
final class OunceExchanged implements SlipModel {

    private static final Map<String, Ratio> GRAMS = Map.of(
            "oz", FormulationUnits.factorOf(FormulationUnits.OUNCE),
            "oz t", FormulationUnits.factorOf(FormulationUnits.TROY_OUNCE),
            "US fl oz", FormulationUnits.factorOf(FormulationUnits.US_FLUID_OUNCE),
            "imp fl oz", FormulationUnits.factorOf(FormulationUnits.IMPERIAL_FLUID_OUNCE));

    @Override
    public Stream<Hypothesis> figures(Shown shown) {
        List<Ratio> right = shown.right();
        Stream<Hypothesis> asked = meant(shown.claim())
                .flatMap(unit -> others(unit)
                        .map(other -> Hypothesis.scaled(
                                Slip.OUNCE_EXCHANGED,
                                unit + " → " + other,
                                right,
                                grams(other).dividedBy(grams(unit)))));
        Stream<Hypothesis> seen = shownIn(shown.claim())
                .flatMap(unit -> others(unit)
                        .map(other -> Hypothesis.scaled(
                                Slip.OUNCE_EXCHANGED,
                                other + " → " + unit,
                                right,
                                grams(unit).dividedBy(grams(other)))));
        return Stream.concat(asked, seen);
    }

    private static Ratio grams(String unit) {
        return Objects.requireNonNull(GRAMS.get(unit), unit);
    }

    private static Stream<String> others(String unit) {
        return GRAMS.keySet().stream().filter(other -> !other.equals(unit)).sorted();
    }

    /** The ounce the size was given in: a weight stays a weight, a volume is not its business. */
    private static Stream<String> meant(Claim claim) {
        if (claim.size() instanceof BatchSize.OfMass size) {
            return ounce(size.mass().getUnit());
        }
        return claim.size() instanceof BatchSize.OfPacks packs
                ? ounce(packs.fillMass().getUnit())
                : Stream.empty();
    }

    private static Stream<String> shownIn(Claim claim) {
        List<String> units = claim.figures().values().stream()
                .map(figure -> FormulationUnits.symbolOf(figure.unit()))
                .distinct()
                .toList();
        return units.size() == 1 ? units.stream().filter(GRAMS::containsKey) : Stream.empty();
    }

    private static Stream<String> ounce(Unit<?> unit) {
        return Stream.of(FormulationUnits.symbolOf(unit)).filter(GRAMS::containsKey);
    }
}
