package io.github.formulationmath.reckoning;

import io.github.formulationmath.number.Ratio;

/** A unit as printed, and how much of the canonical unit it is. */
record Measure(String text, Ratio size) {

    static final Measure PLAIN = new Measure("", Ratio.ONE);

    static final Measure PERCENT = new Measure("%", Ratio.of(1, 100));

    /** A unit made up of canonical units, for a term of no named kind: {@code g²/mL}. */
    static Measure composed(Dimension d) {
        StringBuilder above = new StringBuilder();
        StringBuilder below = new StringBuilder();
        factor("g", d.mass(), above, below);
        factor("mL", d.volume(), above, below);
        factor("mol", d.substance(), above, below);
        factor("°C", d.temperature(), above, below);
        return new Measure(above + (below.isEmpty() ? "" : "/" + below), Ratio.ONE);
    }

    private static void factor(String unit, int power, StringBuilder above, StringBuilder below) {
        if (power != 0) {
            StringBuilder place = power > 0 ? above : below;
            place.append(place.isEmpty() ? "" : "·").append(unit).append(raised(Math.abs(power)));
        }
    }

    /** The power as a superscript; the first goes without saying. */
    static String raised(int power) {
        return power == 1
                ? ""
                : Integer.toString(power)
                        .replace('0', '⁰')
                        .replace('1', '¹')
                        .replace('2', '²')
                        .replace('3', '³')
                        .replace('4', '⁴')
                        .replace('5', '⁵')
                        .replace('6', '⁶')
                        .replace('7', '⁷')
                        .replace('8', '⁸')
                        .replace('9', '⁹');
    }
}
