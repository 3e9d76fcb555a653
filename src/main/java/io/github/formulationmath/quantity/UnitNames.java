package io.github.formulationmath.quantity;

import io.github.formulationmath.number.NumberTextException;
import java.util.HashMap;
import java.util.Map;
import java.util.stream.Collectors;

/** The spellings of units that are read, and those that are refused because they could mean several. */
final class UnitNames {

    private static final String FLUID_OUNCES = "US fl oz (29.57 mL), imp fl oz (28.41 mL), or oz for a weight";
    private static final String CUPS = "US cup (236.6 mL) or metric cup (250 mL)";
    private static final String TABLESPOONS = "US tbsp (14.79 mL) or metric tbsp (15 mL)";
    private static final String TEASPOONS = "US tsp (4.93 mL) or metric tsp (5 mL)";

    private static final Map<String, String> AMBIGUOUS = Map.ofEntries(
            Map.entry("fl oz", FLUID_OUNCES),
            Map.entry("oz fl", FLUID_OUNCES),
            Map.entry("floz", FLUID_OUNCES),
            Map.entry("fl. oz.", FLUID_OUNCES),
            Map.entry("cup", CUPS),
            Map.entry("cups", CUPS),
            Map.entry("tbsp", TABLESPOONS),
            Map.entry("tablespoon", TABLESPOONS),
            Map.entry("tablespoons", TABLESPOONS),
            Map.entry("tsp", TEASPOONS),
            Map.entry("teaspoon", TEASPOONS),
            Map.entry("teaspoons", TEASPOONS));

    private static final Map<String, UnitScale> NAMES = names();

    private UnitNames() {}

    private static Map<String, UnitScale> names() {
        Map<String, UnitScale> names = new HashMap<>();
        KnownUnits.all().forEach(scale -> names.put(scale.symbol(), scale));
        // A bare number could be a fraction or a percentage, so the number one has no name here.
        names.remove("");
        alias(names, "µg", "\u03bcg", "ug", "mcg");
        alias(names, "mL", "ml");
        alias(names, "L", "l");
        alias(names, "cm³", "cm3");
        return Map.copyOf(names);
    }

    private static void alias(Map<String, UnitScale> names, String symbol, String... others) {
        for (String other : others) {
            names.put(other, KnownUnits.bySymbol(symbol));
        }
    }

    static UnitScale find(String text, String name) {
        UnitScale scale = NAMES.get(name);
        if (scale != null) {
            return scale;
        }
        String choices = AMBIGUOUS.get(name);
        throw new NumberTextException(
                text,
                choices != null
                        ? "\"" + name + "\" stands for several units: write " + choices
                        : "\"" + name + "\" is not a unit that is read here: " + allSymbols());
    }

    private static String allSymbols() {
        return KnownUnits.all().stream()
                .map(UnitScale::symbol)
                .filter(symbol -> !symbol.isEmpty())
                .collect(Collectors.joining(", "));
    }
}
