package io.github.formulationmath.reckoning;

import io.github.formulationmath.number.Ratio;
import java.util.LinkedHashMap;
import java.util.Map;

/** A unit as printed, and how much of the canonical unit it is. */
record Measure(String text, Ratio size) {

    static final Measure PLAIN = new Measure("", Ratio.ONE);

    static final Measure PERCENT = new Measure("%", Ratio.of(1, 100));

    /** A unit made up of those that are chosen, for a term of no named kind: {@code g²/mL}. */
    static Measure composed(Dimension d, UnitChoice units) {
        Measure mass = units.of(Kind.MASS);
        Measure volume = units.of(Kind.VOLUME);
        Map<String, Integer> powers = new LinkedHashMap<>();
        powers.put(mass.text(), d.mass());
        powers.put(volume.text(), d.volume());
        powers.put("mol", d.substance());
        powers.put("°C", d.temperature());
        return new Measure(
                InUnit.product(powers), power(mass.size(), d.mass()).times(power(volume.size(), d.volume())));
    }

    private static Ratio power(Ratio size, int power) {
        Ratio product = Ratio.ONE;
        for (int i = 0; i < Math.abs(power); i++) {
            product = product.times(size);
        }
        return power < 0 ? product.reciprocal() : product;
    }
}
