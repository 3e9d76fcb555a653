package io.github.formulationmath.verification;

import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.FormulationUnits;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;

/**
 * One ounce for another where an ounce was asked for or shown: avoirdupois, troy, or a fluid ounce filled with water at 1
 * g/mL. A weight that was asked for stays a weight; a volume is not its business.
 */
final class OunceExchanged {

    private static final Map<String, Ratio> GRAMS = Map.of(
            "oz", FormulationUnits.factorOf(FormulationUnits.OUNCE),
            "oz t", FormulationUnits.factorOf(FormulationUnits.TROY_OUNCE),
            "US fl oz", FormulationUnits.factorOf(FormulationUnits.US_FLUID_OUNCE),
            "imp fl oz", FormulationUnits.factorOf(FormulationUnits.IMPERIAL_FLUID_OUNCE));

    private OunceExchanged() {}

    static Stream<Hypothesis> ways(Shown shown) {
        Stream<Hypothesis> asked = ounce(shown.claim().massUnit().stream().toList())
                .flatMap(unit -> others(unit).flatMap(other -> exchanged(shown, unit, other)));
        List<String> units = shown.lines().stream()
                .map(check -> check.figure().symbol())
                .distinct()
                .toList();
        Stream<Hypothesis> seen =
                ounce(units).flatMap(unit -> others(unit).flatMap(other -> exchanged(shown, other, unit)));
        return Stream.concat(asked, seen);
    }

    /** The one unit there is, if it is an ounce. */
    private static Stream<String> ounce(List<String> units) {
        return units.size() == 1 ? units.stream().filter(GRAMS::containsKey) : Stream.empty();
    }

    private static Stream<String> others(String unit) {
        return GRAMS.keySet().stream().filter(other -> !other.equals(unit)).sorted();
    }

    private static Stream<Hypothesis> exchanged(Shown shown, String from, String to) {
        return Hypothesis.scaled(shown, from + " → " + to, grams(to).dividedBy(grams(from)));
    }

    private static Ratio grams(String unit) {
        return Objects.requireNonNull(GRAMS.get(unit), unit);
    }
}
