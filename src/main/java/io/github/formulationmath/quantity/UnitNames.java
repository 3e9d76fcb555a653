package io.github.formulationmath.quantity;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * The spellings of units that are read, those that are refused because they could mean several, and those that are refused
 * and show what was meant.
 */
final class UnitNames {

    /** Longer names are not quoted whole. */
    private static final int LONGEST_QUOTE = 30;

    private static final Choice GRAINS = new Choice("grain", "g, the gram, or grain (0.0648 g)", List.of("g", "grain"));
    private static final Choice FLUID_OUNCES = new Choice(
            "fluid-ounce",
            "US fl oz (29.57 mL), imp fl oz (28.41 mL), or oz for a weight",
            List.of("US fl oz", "imp fl oz", "oz"));
    private static final Choice CUPS =
            new Choice("cup", "US cup (236.6 mL) or metric cup (250 mL)", List.of("US cup", "metric cup"));
    private static final Choice TABLESPOONS =
            new Choice("tablespoon", "US tbsp (14.79 mL) or metric tbsp (15 mL)", List.of("US tbsp", "metric tbsp"));
    private static final Choice TEASPOONS =
            new Choice("teaspoon", "US tsp (4.93 mL) or metric tsp (5 mL)", List.of("US tsp", "metric tsp"));

    /** By {@linkplain #plain plain form}, so that "Gr." and "fl. oz." are no way round. */
    private static final Map<String, Choice> AMBIGUOUS = Map.ofEntries(
            Map.entry("gr", GRAINS),
            Map.entry("grs", GRAINS),
            Map.entry("fl oz", FLUID_OUNCES),
            Map.entry("oz fl", FLUID_OUNCES),
            Map.entry("floz", FLUID_OUNCES),
            Map.entry("fluid ounce", FLUID_OUNCES),
            Map.entry("fluid ounces", FLUID_OUNCES),
            Map.entry("cup", CUPS),
            Map.entry("cups", CUPS),
            Map.entry("tbs", TABLESPOONS),
            Map.entry("tbsp", TABLESPOONS),
            Map.entry("tablespoon", TABLESPOONS),
            Map.entry("tablespoons", TABLESPOONS),
            Map.entry("tsp", TEASPOONS),
            Map.entry("teaspoon", TEASPOONS),
            Map.entry("teaspoons", TEASPOONS));

    /** Other words for one unit and no other; by plain form. */
    private static final Map<String, String> MEANT = meant();

    /** The megagram of the SI is no unit of a bench, and a slip of the shift key is not proposed as one. */
    private static final String MEGAGRAM = "Mg";

    private static final Map<String, UnitScale> NAMES = names();

    /** The same without regard to case; symbols and plain forms of them. */
    private static final Map<String, UnitScale> PLAIN_NAMES = plainNames();

    /** The units that one name stands for: the last part of the key, the words, and their symbols. */
    private record Choice(String key, String words, List<String> symbols) {}

    private UnitNames() {}

    private static Map<String, UnitScale> names() {
        Map<String, UnitScale> names = new HashMap<>();
        Stream.of(KnownUnit.values()).forEach(scale -> names.put(scale.symbol(), scale));
        // A bare number could be a fraction or a percentage, so the number one has no name here.
        names.remove("");
        alias(names, "µg", "\u03bcg", "ug", "mcg");
        alias(names, "mL", "ml");
        alias(names, "L", "l");
        alias(names, "cL", "cl");
        alias(names, "dL", "dl");
        alias(names, "cm³", "cm3");
        return Map.copyOf(names);
    }

    private static Map<String, UnitScale> plainNames() {
        Map<String, UnitScale> names = new HashMap<>(NAMES);
        NAMES.forEach((name, scale) -> names.putIfAbsent(plain(name), scale));
        return Map.copyOf(names);
    }

    private static void alias(Map<String, UnitScale> names, String symbol, String... others) {
        for (String other : others) {
            names.put(other, KnownUnit.bySymbol(symbol));
        }
    }

    private static Map<String, String> meant() {
        Map<String, String> meant = new HashMap<>();
        Map.of(
                        "g", "gm gms gram grams gramm gramme grammes",
                        "kg", "kgs kilo kilos kilogram kilograms",
                        "mg", "mgs milligram milligrams",
                        "oz", "ozs ounce ounces",
                        "lb", "lbs pound pounds",
                        "grain", "grains",
                        "mL", "mls millilitre millilitres milliliter milliliters",
                        "L", "ltr litre litres liter liters",
                        "%", "percent pct",
                        "g/mL", "g/cc gm/ml")
                .forEach((symbol, names) -> Stream.of(names.split(" ")).forEach(name -> meant.put(name, symbol)));
        Stream.of("centilitre", "centilitres", "centiliter", "centiliters").forEach(name -> meant.put(name, "cL"));
        Stream.of("decilitre", "decilitres", "deciliter", "deciliters").forEach(name -> meant.put(name, "dL"));
        Stream.of("ozt", "troy ounce", "troy ounces").forEach(name -> meant.put(name, "oz t"));
        Stream.of("US cup", "US tbsp", "US tsp", "metric cup", "metric tbsp", "metric tsp")
                .forEach(symbol -> meant.put(plain(symbol + "s"), symbol));
        meant.put("cc", "cm³");
        meant.put("c", "°C");
        meant.put("f", "°F");
        return Map.copyOf(meant);
    }

    /** The unit that a name means for certain. */
    static Optional<UnitScale> known(String name) {
        UnitScale scale = NAMES.get(name);
        if (scale == null && !name.equals(MEGAGRAM)) {
            String plain = plain(name);
            scale = PLAIN_NAMES.get(MEANT.getOrDefault(plain, plain));
        }
        return Optional.ofNullable(scale);
    }

    /** The unit of a name, whatever it measures. */
    static UnitScale find(String text, String name, @Nullable Measured wanted) {
        Optional<UnitScale> known = known(name);
        if (known.isPresent()) {
            return known.get();
        }
        Choice choice = AMBIGUOUS.get(plain(name));
        if (choice == null && CompoundUnit.mayBe(name)) {
            return CompoundUnit.find(text, name);
        }
        throw choice == null
                ? AmountText.refused(
                        text,
                        "refusal.text.unknown-unit",
                        "{unit} is not a unit that is read here: {units}",
                        "unit",
                        quoted(name),
                        "units",
                        symbols(wanted))
                : AmountText.refused(
                        text,
                        "refusal.text.which-" + choice.key(),
                        "{unit} stands for several units: " + choice.words(),
                        "unit",
                        quoted(name));
    }

    /** The symbols that a name may have meant, likeliest first; the name itself among them. */
    static Stream<String> meantBy(String name) {
        Optional<UnitScale> certain = known(name);
        if (certain.isPresent()) {
            return Stream.of(certain.get().symbol());
        }
        String plain = plain(name);
        Choice choice = AMBIGUOUS.get(plain);
        String meant = MEANT.get(plain);
        return Stream.of(
                        Stream.of(name, name.replace(" ", "")),
                        choice == null ? Stream.<String>empty() : choice.symbols().stream(),
                        Stream.ofNullable(meant))
                .flatMap(names -> names)
                .distinct();
    }

    /** A name as it is quoted in a message: long ones shortened, with their length. */
    static String quoted(String name) {
        return name.length() <= LONGEST_QUOTE
                ? "\"" + name + "\""
                : "\"" + name.substring(0, LONGEST_QUOTE - 3) + "...\" (" + name.length() + " characters)";
    }

    /** Without regard to letter case, full stops and repeated spaces. */
    static String plain(String name) {
        return name.toLowerCase(Locale.ROOT)
                .replace(".", " ")
                .replaceAll(" ++", " ")
                .strip();
    }

    private static String symbols(@Nullable Measured wanted) {
        return Stream.of(KnownUnit.values())
                .filter(scale -> !scale.symbol().isEmpty() && (wanted == null || scale.kind() == wanted))
                .map(UnitScale::symbol)
                .collect(Collectors.joining(", "));
    }
}
