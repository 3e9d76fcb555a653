package io.github.formulationmath.quantity;

import io.github.formulationmath.number.NumberTextException;
import io.github.formulationmath.number.Ratio;
import java.util.List;
import java.util.stream.Stream;

/** Densities as text, with a decimal mark. */
record DensityText(char decimalMark) {

    static final String AT = " at ";

    private static final List<String> EXAMPLES = List.of("0.92 g/mL", "0.92 g/mL at 20 °C");

    Density parse(String text) {
        return AmountText.orProposals(text, decimalMark, this::read, this::proposals, EXAMPLES);
    }

    private Density read(String text) {
        int at = text.indexOf(AT);
        AmountText.NumberAndRest parts = numberAndUnit(text, at < 0 ? text : text.substring(0, at));
        Ratio gramsPerMillilitre = PerVolume.gramsPerMillilitre(parts.rest(), decimalMark)
                .orElseThrow(() -> AmountText.refused(
                        text,
                        "refusal.text.no-density",
                        "{unit} is not a unit of density that is read here: g/mL, g/cm³, kg/L, g/L or kg/m³",
                        "unit",
                        UnitNames.quoted(parts.rest())));
        Density density = Density.ofGramsPerMillilitre(parts.number().times(gramsPerMillilitre));
        return at < 0
                ? density
                : density.at(AmountFormat.with(decimalMark).parseTemperature(text.substring(at + AT.length())));
    }

    private AmountText.NumberAndRest numberAndUnit(String text, String density) {
        try {
            return AmountText.NumberAndRest.split(density, decimalMark);
        } catch (NumberTextException e) {
            throw e.in(text);
        }
    }

    /** A missing unit is g/mL in nearly every document of a material; it is proposed, never read. */
    private Stream<String> proposals(String text) {
        int at = text.indexOf(AT);
        if (at < 0) {
            return Repairs.of(text, decimalMark).flatMap(density -> Stream.of(density, density + " g/mL"));
        }
        List<String> temperatures =
                Repairs.of(text.substring(at + AT.length()), decimalMark).toList();
        return proposals(text.substring(0, at))
                .flatMap(density -> temperatures.stream().map(temperature -> density + AT + temperature));
    }
}
