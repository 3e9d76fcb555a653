package io.github.formulationmath.quantity;

import java.io.Serial;
import java.util.Objects;
import java.util.Optional;
import javax.measure.UnconvertibleException;
import javax.measure.Unit;
import org.jspecify.annotations.Nullable;

/** Two units that cannot meet: they measure different kinds of things. Both are kept. */
public final class UnitMismatchException extends UnconvertibleException {

    @Serial
    private static final long serialVersionUID = 1L;

    private final transient @Nullable Unit<?> from;
    private final transient @Nullable Unit<?> to;

    /**
     * Makes the exception.
     *
     * @param from the unit of the value at hand
     * @param to the unit that it was to be converted to, or to meet
     */
    public UnitMismatchException(Unit<?> from, Unit<?> to) {
        super("unit " + shown(Objects.requireNonNull(from, "from")) + " cannot be converted to "
                + shown(Objects.requireNonNull(to, "to"))
                + ": they measure different things (between mass and volume, go through a Density)");
        this.from = from;
        this.to = to;
    }

    private static String shown(Unit<?> unit) {
        String symbol = FormulationUnits.symbolOf(unit);
        return symbol.isEmpty() ? "1 (a pure number)" : symbol;
    }

    /**
     * The unit of the value at hand.
     *
     * @return the unit; empty only in a copy of the exception that was sent through serialization
     */
    public Optional<Unit<?>> from() {
        return Optional.ofNullable(from);
    }

    /**
     * The unit that it was to be converted to, or to meet.
     *
     * @return the unit; empty only in a copy of the exception that was sent through serialization
     */
    public Optional<Unit<?>> to() {
        return Optional.ofNullable(to);
    }
}
