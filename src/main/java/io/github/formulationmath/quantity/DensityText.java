package io.github.formulationmath.quantity;

import io.github.formulationmath.number.NumberTextException;
import java.util.Set;

/** Densities as text. */
final class DensityText {

    static final String AT = " at ";

    private static final Set<String> UNITS = Set.of("g/mL", "g/ml", "g/cm³", "g/cm3", "kg/L", "kg/l");

    private DensityText() {}

    static Density parse(String text) {
        int at = text.indexOf(AT);
        AmountText.NumberAndRest parts = AmountText.NumberAndRest.split(at < 0 ? text : text.substring(0, at), '.');
        if (!UNITS.contains(parts.rest())) {
            throw new NumberTextException(
                    text, "\"" + parts.rest() + "\" is not a unit of density that is read here: g/mL, g/cm³ or kg/L");
        }
        Density density = Density.ofGramsPerMillilitre(parts.number());
        return at < 0 ? density : density.at(Amount.temperature(text.substring(at + AT.length())));
    }
}
