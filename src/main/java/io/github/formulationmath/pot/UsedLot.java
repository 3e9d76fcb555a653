package io.github.formulationmath.pot;

import io.github.formulationmath.quantity.Amount;
import java.io.Serial;
import java.io.Serializable;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import javax.measure.quantity.Mass;
import org.jspecify.annotations.Nullable;

/**
 * A lot of a material that went into a line, and how much of it, if that was noted.
 *
 * <p>Example: {@code UsedLot.of("G-17", "9 g")}.
 *
 * <p>Immutable and thread-safe.
 */
public final class UsedLot implements Serializable {

    @Serial
    private static final long serialVersionUID = 1L;

    private final String code;
    private final @Nullable Amount<Mass> mass;

    private UsedLot(String code, @Nullable Amount<Mass> mass) {
        this.code = code;
        this.mass = mass;
    }

    /**
     * A lot of which it was not noted how much was taken.
     *
     * @param code what stands on it
     * @return the lot
     * @throws IllegalArgumentException if the text is blank or longer than 500 characters
     */
    public static UsedLot of(String code) {
        return new UsedLot(ReadingNotes.required("code", code, ReadingNotes.LONGEST_NAME), null);
    }

    /**
     * A lot and how much was taken of it.
     *
     * @param code what stands on it
     * @param mass how much of it, above 0
     * @return the lot
     * @throws IllegalArgumentException if the text is blank or longer than 500 characters, or the mass not above 0
     */
    public static UsedLot of(String code, Amount<Mass> mass) {
        Amount.requirePositive("mass", Objects.requireNonNull(mass, "mass"));
        return new UsedLot(of(code).code, mass.withoutWorking());
    }

    /**
     * A lot and how much was taken of it, as text.
     *
     * @param code what stands on it
     * @param mass how much of it, for example {@code "9 g"}
     * @return the lot
     * @throws IllegalArgumentException as {@link #of(String, Amount)}, or if the text is no mass
     */
    public static UsedLot of(String code, String mass) {
        return of(code, Amount.mass(mass));
    }

    /**
     * What stands on the lot.
     *
     * @return the code as noted
     */
    public String code() {
        return code;
    }

    /**
     * How much of it was taken.
     *
     * @return the mass; empty if that was not noted
     */
    public Optional<Amount<Mass>> mass() {
        return Optional.ofNullable(mass);
    }

    /**
     * Each lot once, with all that was taken of it.
     *
     * @param lots the lots, some of them several times
     * @return an unmodifiable list in the order in which they first come; of a lot of which it was once not noted how much was taken nobody
     *     knows how much it is in all
     */
    public static List<UsedLot> together(List<UsedLot> lots) {
        Map<String, UsedLot> byCode = new LinkedHashMap<>();
        Objects.requireNonNull(lots, "lots").forEach(lot -> byCode.merge(lot.code, lot, UsedLot::plus));
        return List.copyOf(byCode.values());
    }

    private UsedLot plus(UsedLot more) {
        return mass == null || more.mass == null ? new UsedLot(code, null) : new UsedLot(code, mass.plus(more.mass));
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof UsedLot that && code.equals(that.code) && Objects.equals(mass, that.mass);
    }

    @Override
    public int hashCode() {
        return Objects.hash(code, mass);
    }

    /** {@code G-17} or {@code G-17: 9 g}. */
    @Override
    public String toString() {
        return mass == null ? code : code + ": " + mass;
    }
}
