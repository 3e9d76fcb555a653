package io.github.formulationmath.quantity;

import javax.measure.Unit;
import tech.units.indriya.AbstractUnit;
import tech.units.indriya.unit.Units;

/** What a unit measures, and the unit in which this library counts it. */
enum Kind {
    MASS("g", 1000),
    VOLUME("mL", 1_000_000),
    NUMBER("1", 1),
    TEMPERATURE("K", 1),
    OTHER("SI", 1);

    private final String countingSymbol;
    private final long countedPerSystemUnit;

    Kind(String countingSymbol, long countedPerSystemUnit) {
        this.countingSymbol = countingSymbol;
        this.countedPerSystemUnit = countedPerSystemUnit;
    }

    static Kind of(Unit<?> unit) {
        if (unit.isCompatible(Units.KILOGRAM)) {
            return MASS;
        }
        if (unit.isCompatible(Units.CUBIC_METRE)) {
            return VOLUME;
        }
        if (unit.isCompatible(AbstractUnit.ONE)) {
            return NUMBER;
        }
        return unit.isCompatible(Units.KELVIN) ? TEMPERATURE : OTHER;
    }

    String countingSymbol() {
        return countingSymbol;
    }

    long countedPerSystemUnit() {
        return countedPerSystemUnit;
    }
}
