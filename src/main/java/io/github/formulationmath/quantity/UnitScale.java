package io.github.formulationmath.quantity;

import io.github.formulationmath.number.Ratio;
import java.util.Optional;
import javax.measure.Unit;
import org.jspecify.annotations.Nullable;

/**
 * What the library knows of a unit: its kind, and the exact line {@code counted = factor · value + offset} to the unit
 * its kind is counted in. One object per known unit; equal scales are the same unit.
 *
 * @param unit the unit; of two that measure the same, the known one
 * @param kind what the unit measures
 * @param factor how many counting units make one
 * @param offset where its zero lies, in counting units
 * @param symbol the symbol it is printed with
 * @param known whether it is one of {@link FormulationUnits}
 */
record UnitScale(Unit<?> unit, Kind kind, Ratio factor, Ratio offset, String symbol, boolean known) {

    static UnitScale of(Unit<?> unit) {
        UnitScale known = KnownUnits.find(unit);
        if (known != null) {
            return known;
        }
        UnitScale foreign = walk(unit, "", false);
        UnitScale same = KnownUnits.findSame(foreign);
        return same != null ? same : foreign.with(symbolOf(foreign));
    }

    static UnitScale known(Unit<?> unit, String symbol) {
        return walk(unit, symbol, true);
    }

    private static UnitScale walk(Unit<?> unit, String symbol, boolean known) {
        Kind kind = Kind.of(unit);
        ConverterWalk walk = ConverterWalk.of(unit);
        return new UnitScale(
                unit,
                kind,
                walk.factor().times(kind.countedPerSystemUnit()),
                walk.offset().times(kind.countedPerSystemUnit()),
                symbol,
                known);
    }

    private UnitScale with(String newSymbol) {
        return new UnitScale(unit, kind, factor, offset, newSymbol, known);
    }

    boolean isShifted() {
        return !offset.isZero();
    }

    Ratio toCounted(Ratio value) {
        return value.times(factor).plus(offset);
    }

    Ratio fromCounted(Ratio counted) {
        return counted.minus(offset).dividedBy(factor);
    }

    /** Whether two units measure the same kind of thing, so that amounts in them can meet. */
    boolean meets(UnitScale other) {
        return kind == other.kind && (kind != Kind.OTHER || unit.isCompatible(other.unit));
    }

    /** A foreign unit is never the same as a known one: it would have been taken for it. */
    boolean isSameAs(UnitScale other) {
        if (known || other.known) {
            return known && other.known && symbol.equals(other.symbol);
        }
        return factor.equals(other.factor) && offset.equals(other.offset) && meets(other);
    }

    /** A name for messages, which never fails. */
    static String nameOf(Unit<?> unit) {
        return name(unit).orElseGet(() -> unit.getClass().getSimpleName());
    }

    private static Optional<String> name(Unit<?> unit) {
        return text(unit.getSymbol()).or(() -> text(unit.getName()));
    }

    private static Optional<String> text(@Nullable String text) {
        return Optional.ofNullable(text).filter(t -> !t.isBlank());
    }

    private static String symbolOf(UnitScale foreign) {
        return name(foreign.unit).orElseGet(() -> "(× " + foreign.factor + " " + foreign.kind.countingSymbol() + ")");
    }
}
