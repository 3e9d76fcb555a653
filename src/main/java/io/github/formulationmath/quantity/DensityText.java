package io.github.formulationmath.quantity;

import io.github.formulationmath.number.NumberTextException;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/** Densities as text. */
final class DensityText {

    static final String AT = " at ";

    private static final Set<String> UNITS = Set.of("g/mL", "g/ml", "g/cm³", "g/cm3", "kg/L", "kg/l");

    private static final TextReader<Density> READER =
            new TextReader<>(DensityText::read, DensityText::proposals, List.of("0.92 g/mL", "0.92 g/mL at 20 °C"));

    private DensityText() {}

    static Density parse(String text) {
        return READER.read(text);
    }

    private static Density read(String text) {
        int at = text.indexOf(AT);
        AmountText.NumberAndRest parts = numberAndUnit(text, at < 0 ? text : text.substring(0, at));
        if (!UNITS.contains(parts.rest())) {
            throw AmountText.refused(
                    text,
                    "refusal.text.no-density",
                    "{unit} is not a unit of density that is read here: g/mL, g/cm³ or kg/L",
                    "unit",
                    UnitNames.quoted(parts.rest()));
        }
        Density density = Density.ofGramsPerMillilitre(parts.number());
        return at < 0 ? density : density.at(Amount.temperature(text.substring(at + AT.length())));
    }

    private static AmountText.NumberAndRest numberAndUnit(String text, String density) {
        try {
            return AmountText.NumberAndRest.split(density, '.');
        } catch (NumberTextException e) {
            throw e.in(text);
        }
    }

    /** All units of density that are read here are the same, so that a missing one is no guess. */
    private static Stream<String> proposals(String text) {
        int at = text.indexOf(AT);
        if (at < 0) {
            return Repairs.of(text, '.').flatMap(density -> Stream.of(density, density + " g/mL"));
        }
        List<String> temperatures =
                Repairs.of(text.substring(at + AT.length()), '.').toList();
        return proposals(text.substring(0, at))
                .flatMap(density -> temperatures.stream().map(temperature -> density + AT + temperature));
    }
}
