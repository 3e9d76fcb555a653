package io.github.formulationmath.quantity;

import io.github.formulationmath.number.Refusal;
import io.github.formulationmath.number.Sentence;
import java.io.Serial;
import java.util.Objects;
import java.util.Optional;
import javax.measure.UnconvertibleException;
import javax.measure.Unit;
import org.jspecify.annotations.Nullable;

/** Two units that cannot meet: they measure different kinds of things. Both are kept. */
public final class UnitMismatchException extends UnconvertibleException implements Refusal {

    @Serial
    private static final long serialVersionUID = 2L;

    private final Sentence said;
    private final transient @Nullable Unit<?> from;
    private final transient @Nullable Unit<?> to;

    /**
     * Makes the exception.
     *
     * @param from the unit of the value at hand
     * @param to the unit that it was to be converted to, or to meet
     */
    public UnitMismatchException(Unit<?> from, Unit<?> to) {
        this(
                Sentence.of(
                        "refusal.units",
                        "unit {from} cannot be converted to {to}: they measure different things (between mass and volume,"
                                + " go through a Density)",
                        "from",
                        shown(Objects.requireNonNull(from, "from")),
                        "to",
                        shown(Objects.requireNonNull(to, "to"))),
                from,
                to);
    }

    /** Says no more than that it is unchecked, so that who may throw it does not load it before. */
    static RuntimeException between(UnitScale from, UnitScale to) {
        return new UnitMismatchException(from.unit(), to.unit());
    }

    private UnitMismatchException(Sentence said, Unit<?> from, Unit<?> to) {
        super(said.getMessage());
        this.said = said;
        this.from = from;
        this.to = to;
    }

    @Override
    public Sentence said() {
        return said;
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
