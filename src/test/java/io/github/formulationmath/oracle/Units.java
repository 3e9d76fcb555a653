package io.github.formulationmath.oracle;

import java.util.HashMap;
import java.util.Map;

/**
 * The units the oracle can read.
 *
 * <p>Metric prefixes: The International System of Units (SI Brochure), 9th edition, 2019, table 7. Avoirdupois pound
 * 453.59237 g, ounce 1/16 lb, grain 1/7000 lb, troy ounce 480 grains; US fluid ounce 29.5735295625 mL: NIST Handbook 44
 * (2024), appendix C. Imperial fluid ounce 28.4130625 mL: UK Units of Measurement Regulations 1995, schedule 1 (1 pint =
 * 0.56826125 dm³, 20 fluid ounces).
 */
final class Units {

    private static final String GRAM = "g";
    private static final String MILLILITRE = "mL";

    private final Map<String, Quantity> known = new HashMap<>();

    Units() {
        put("%", "0.01", Map.of());
        put("pp", "0.01", Map.of());
        put("‰", "0.001", Map.of());
        put("ppm", "0.000001", Map.of());
        put("g", "1", Map.of(GRAM, 1));
        put("mg", "0.001", Map.of(GRAM, 1));
        put("µg", "0.000001", Map.of(GRAM, 1));
        put("kg", "1000", Map.of(GRAM, 1));
        put("lb", "453.59237", Map.of(GRAM, 1));
        put("oz", "28.349523125", Map.of(GRAM, 1));
        put("ozt", "31.1034768", Map.of(GRAM, 1));
        put("grain", "0.06479891", Map.of(GRAM, 1));
        put("mL", "1", Map.of(MILLILITRE, 1));
        put("L", "1000", Map.of(MILLILITRE, 1));
        put("cm³", "1", Map.of(MILLILITRE, 1));
        put("fl_oz_us", "29.5735295625", Map.of(MILLILITRE, 1));
        put("fl_oz_imp", "28.4130625", Map.of(MILLILITRE, 1));
        put("mol", "1", Map.of("mol", 1));
        put("°C", "1", Map.of("°C", 1));
        put("EUR", "1", Map.of("EUR", 1));
        put("USD", "1", Map.of("USD", 1));
    }

    private void put(String unit, String size, Map<String, Integer> basic) {
        known.put(unit, new Quantity(Fraction.read(size), basic, true));
    }

    /** Units that are printed in several words, in one. */
    static String inOneWord(String text) {
        return text.replace("US fl oz", "fl_oz_us")
                .replace("imp fl oz", "fl_oz_imp")
                .replaceAll("oz t(?!o )", "ozt"); // "1 oz to a multiple of" is no troy ounce
    }

    /** One of a unit such as {@code g/mL}, {@code g²} or {@code /g}. */
    Quantity read(String unit) {
        Quantity whole = known.get(unit);
        if (whole != null) {
            return whole;
        }
        Quantity product = Quantity.plain(Fraction.whole(1));
        boolean below = false;
        for (String side : unit.split("/", -1)) {
            for (String factor : side.split("·")) {
                if (!factor.isEmpty()) {
                    Quantity one = factor(factor, unit);
                    product = below ? product.over(one) : product.times(one);
                }
            }
            below = true;
        }
        return product;
    }

    private Quantity factor(String factor, String unit) {
        int power = "¹²³".indexOf(factor.charAt(factor.length() - 1)) + 1;
        String base = power > 0 && !known.containsKey(factor) ? factor.substring(0, factor.length() - 1) : factor;
        Quantity one = known.get(base);
        if (one == null) {
            throw new OracleException("the oracle does not know the unit \"" + unit + "\"; teach it in oracle/Units");
        }
        Quantity result = one;
        for (int i = 1; i < power && !base.equals(factor); i++) {
            result = result.times(one);
        }
        return result;
    }
}
