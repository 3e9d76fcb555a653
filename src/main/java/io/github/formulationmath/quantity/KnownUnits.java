package io.github.formulationmath.quantity;

import java.util.IdentityHashMap;
import java.util.List;
import javax.measure.Unit;
import org.jspecify.annotations.Nullable;

/** The units of {@link FormulationUnits} with their symbols: a fixed table, filled once and never changed. */
final class KnownUnits {

    // Of two units that measure the same (mL, cm³), a foreign unit is taken for the one that stands first.
    private static final List<UnitScale> ALL = List.of(
            UnitScale.known(FormulationUnits.GRAM, "g"),
            UnitScale.known(FormulationUnits.KILOGRAM, "kg"),
            UnitScale.known(FormulationUnits.MILLIGRAM, "mg"),
            UnitScale.known(FormulationUnits.MICROGRAM, "µg"),
            UnitScale.known(FormulationUnits.OUNCE, "oz"),
            UnitScale.known(FormulationUnits.POUND, "lb"),
            UnitScale.known(FormulationUnits.GRAIN, "grain"),
            UnitScale.known(FormulationUnits.TROY_OUNCE, "oz t"),
            UnitScale.known(FormulationUnits.MILLILITRE, "mL"),
            UnitScale.known(FormulationUnits.CUBIC_CENTIMETRE, "cm³"),
            UnitScale.known(FormulationUnits.LITRE, "L"),
            UnitScale.known(FormulationUnits.US_FLUID_OUNCE, "US fl oz"),
            UnitScale.known(FormulationUnits.IMPERIAL_FLUID_OUNCE, "imp fl oz"),
            UnitScale.known(FormulationUnits.US_CUP, "US cup"),
            UnitScale.known(FormulationUnits.US_TABLESPOON, "US tbsp"),
            UnitScale.known(FormulationUnits.US_TEASPOON, "US tsp"),
            UnitScale.known(FormulationUnits.METRIC_CUP, "metric cup"),
            UnitScale.known(FormulationUnits.METRIC_TABLESPOON, "metric tbsp"),
            UnitScale.known(FormulationUnits.METRIC_TEASPOON, "metric tsp"),
            UnitScale.known(FormulationUnits.ONE, ""),
            UnitScale.known(FormulationUnits.PERCENT, "%"),
            UnitScale.known(FormulationUnits.PER_MILLE, "‰"),
            UnitScale.known(FormulationUnits.PPM, "ppm"),
            UnitScale.known(FormulationUnits.CELSIUS, "°C"),
            UnitScale.known(FormulationUnits.KELVIN, "K"),
            UnitScale.known(FormulationUnits.FAHRENHEIT, "°F"));

    private static final IdentityHashMap<Unit<?>, UnitScale> BY_IDENTITY = byIdentity();

    private KnownUnits() {}

    private static IdentityHashMap<Unit<?>, UnitScale> byIdentity() {
        IdentityHashMap<Unit<?>, UnitScale> map = new IdentityHashMap<>();
        ALL.forEach(scale -> map.put(scale.unit(), scale));
        return map;
    }

    static List<UnitScale> all() {
        return ALL;
    }

    /** The known unit that a unit is, or is equal to. */
    static @Nullable UnitScale find(Unit<?> unit) {
        UnitScale same = BY_IDENTITY.get(unit);
        return same != null
                ? same
                : ALL.stream()
                        .filter(scale -> scale.unit().equals(unit))
                        .findFirst()
                        .orElse(null);
    }

    /** The known unit that measures exactly the same as a foreign one. */
    static @Nullable UnitScale findSame(UnitScale foreign) {
        return ALL.stream()
                .filter(scale -> scale.kind() == foreign.kind()
                        && scale.factor().equals(foreign.factor())
                        && scale.offset().equals(foreign.offset()))
                .findFirst()
                .orElse(null);
    }

    static UnitScale bySymbol(String symbol) {
        return ALL.stream()
                .filter(scale -> scale.symbol().equals(symbol))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no unit has the symbol \"" + symbol + "\""));
    }
}
