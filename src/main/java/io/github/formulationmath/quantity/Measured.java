package io.github.formulationmath.quantity;

import io.github.formulationmath.number.Excerpt;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.reckoning.Kind;
import io.github.formulationmath.reckoning.Origin;
import io.github.formulationmath.reckoning.Source;
import io.github.formulationmath.reckoning.Subject;
import io.github.formulationmath.reckoning.Symbol;
import javax.measure.Unit;
import tech.units.indriya.AbstractUnit;
import tech.units.indriya.unit.Units;

/** What a unit measures, and the unit in which this library counts it. */
enum Measured {
    MASS("g", 1000, Kind.MASS),
    VOLUME("mL", 1_000_000, Kind.VOLUME),
    NUMBER("1", 1, Kind.NUMBER),
    TEMPERATURE("K", 1, Kind.TEMPERATURE),
    OTHER("SI", 1, Kind.NUMBER);

    private final String countingSymbol;
    private final long countedPerSystemUnit;
    private final Symbol given;

    Measured(String countingSymbol, long countedPerSystemUnit, Kind shown) {
        this.countingSymbol = countingSymbol;
        this.countedPerSystemUnit = countedPerSystemUnit;
        this.given = Symbol.of("x", "given-value", shown);
    }

    static Measured of(Unit<?> unit) {
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

    /** The origin of an amount that nobody derived. Workings show temperatures in degrees Celsius. */
    Origin given(Amount<?> amount) {
        if (this == OTHER) {
            throw new UnsupportedOperationException(
                    Excerpt.of(amount)
                            + " was given, and workings know no unit of its kind: they tell masses, volumes, numbers and temperatures");
        }
        Ratio counted = amount.canonical();
        return Origin.given(
                given,
                Subject.none(),
                this == TEMPERATURE ? counted.minus(KnownUnit.CELSIUS.offset()) : counted,
                Source.written(amount.toString()));
    }
}
