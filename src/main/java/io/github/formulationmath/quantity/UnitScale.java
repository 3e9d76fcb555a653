package io.github.formulationmath.quantity;

import io.github.formulationmath.number.Ratio;
import java.io.Serializable;
import java.util.Optional;
import javax.measure.Unit;
import org.jspecify.annotations.Nullable;

/**
 * What the library knows of a unit: what it measures, and the exact line {@code counted = factor · value + offset} to the
 * unit that such things are counted in. The units of the bench are {@link KnownUnit}s, which know that without their
 * {@link Unit} objects; equal scales are the same unit.
 */
sealed interface UnitScale extends Serializable permits KnownUnit, ForeignUnit {

    static UnitScale of(Unit<?> unit) {
        KnownUnit known = FormulationUnits.find(unit);
        if (known != null) {
            return known;
        }
        ForeignUnit foreign = ForeignUnit.of(unit);
        KnownUnit same = KnownUnit.findSame(foreign);
        return same != null ? same : foreign;
    }

    /** The unit itself; the first time anybody asks, the reference implementation starts. */
    Unit<?> unit();

    Measured kind();

    /** How many counting units make one. */
    Ratio factor();

    /** Where its zero lies, in counting units. */
    Ratio offset();

    /** The symbol it is printed with. */
    String symbol();

    /** A foreign unit is never the same as a known one: it would have been taken for it. */
    boolean isSameAs(UnitScale other);

    default boolean isShifted() {
        return !offset().isZero();
    }

    /** Whether it is the counting unit itself: most amounts are in grams, and every relation asks. */
    boolean isCounting();

    default Ratio toCounted(Ratio value) {
        return isCounting() ? value : value.times(factor()).plus(offset());
    }

    default Ratio fromCounted(Ratio counted) {
        return isCounting() ? counted : counted.minus(offset()).dividedBy(factor());
    }

    /** Whether two units measure the same kind of thing, so that amounts in them can meet. */
    default boolean meets(UnitScale other) {
        return kind() == other.kind() && (kind() != Measured.OTHER || unit().isCompatible(other.unit()));
    }

    /** A name for messages, which never fails. */
    static String nameOf(Unit<?> unit) {
        return name(unit).orElseGet(() -> unit.getClass().getSimpleName());
    }

    static Optional<String> name(Unit<?> unit) {
        return text(unit.getSymbol()).or(() -> text(unit.getName()));
    }

    private static Optional<String> text(@Nullable String text) {
        return Optional.ofNullable(text).filter(t -> !t.isBlank());
    }
}
