package io.github.formulationmath.working;

import io.github.formulationmath.number.Ratio;
import java.util.EnumMap;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * The units in which a reader wants to see the numbers of a working: one for each {@link Kind}, so that no working mixes
 * two units for the same kind of quantity.
 *
 * <p>Numbers are converted exactly. With masses in avoirdupois ounces ({@code 1 oz = 28.349523125 g} exactly), 56.69904625
 * g is printed as 2 oz and 100 g as 160000000/45359237 oz ≈ 3.52740 oz. Squares of masses and money per mass follow the
 * unit of mass unless they are chosen themselves.
 *
 * <p>Immutable and thread-safe.
 */
public final class UnitChoice {

    private static final int LONGEST = 24;

    private static final UnitChoice CANONICAL = new UnitChoice(new EnumMap<>(Kind.class));

    private final Map<Kind, Measure> chosen;

    private UnitChoice(Map<Kind, Measure> chosen) {
        this.chosen = chosen;
    }

    /**
     * Each kind in its canonical unit: g, mL, g/mL, % …
     *
     * @return the choice
     */
    public static UnitChoice canonical() {
        return CANONICAL;
    }

    /**
     * The same choice with another unit for one kind.
     *
     * @param kind the kind
     * @param unit the unit as printed, for example {@code oz}; for money the name of the currency
     * @param size how much of the canonical unit one of it is, above 0: 28.349523125 for the ounce
     * @return the choice
     * @throws IllegalArgumentException if the unit is blank, holds spaces or digits or is longer than 24 characters, or if
     *     the size is 0 or negative
     */
    public UnitChoice with(Kind kind, String unit, Ratio size) {
        Objects.requireNonNull(kind, "kind");
        if (unit.isEmpty() || unit.length() > LONGEST || !unit.codePoints().allMatch(UnitChoice::mayStandInUnit)) {
            throw new IllegalArgumentException("unit is \"" + unit + "\": it must be 1 to " + LONGEST
                    + " characters long, without spaces, digits or control characters");
        }
        if (size.signum() <= 0) {
            throw new IllegalArgumentException("size of the unit " + unit + " is " + size + ": it must be above 0");
        }
        Map<Kind, Measure> changed = new EnumMap<>(chosen.isEmpty() ? new EnumMap<>(Kind.class) : chosen);
        changed.put(kind, new Measure(unit, size));
        return new UnitChoice(changed);
    }

    private static boolean mayStandInUnit(int c) {
        return !Character.isWhitespace(c)
                && !Character.isSpaceChar(c)
                && !Character.isDigit(c)
                && !Character.isISOControl(c)
                && Character.getType(c) != Character.FORMAT
                && Character.getType(c) != Character.SURROGATE;
    }

    /** The unit of a kind. */
    Measure of(Kind kind) {
        Measure own = chosen.get(kind);
        if (own != null) {
            return own;
        }
        return switch (kind) {
            case SHARE -> Measure.PERCENT;
            case ALKALI_NUMBER -> new Measure(kind.canonicalUnit(), Ratio.of(1, 1000));
            case MASS_SQUARED ->
                mass().map(m -> new Measure(m.text() + "²", m.size().times(m.size())))
                        .orElseGet(() -> canonical(kind));
            case MONEY_PER_MASS -> moneyPerMass();
            default -> canonical(kind);
        };
    }

    private Measure moneyPerMass() {
        Measure money = of(Kind.MONEY);
        Measure mass = of(Kind.MASS);
        return new Measure(money.text() + "/" + mass.text(), money.size().dividedBy(mass.size()));
    }

    private Optional<Measure> mass() {
        @Nullable Measure mass = chosen.get(Kind.MASS);
        return Optional.ofNullable(mass);
    }

    private static Measure canonical(Kind kind) {
        return new Measure(kind.canonicalUnit(), Ratio.ONE);
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof UnitChoice that && chosen.equals(that.chosen);
    }

    @Override
    public int hashCode() {
        return chosen.hashCode();
    }

    /** The units that differ from the canonical ones: {@code {MASS=oz}}. */
    @Override
    public String toString() {
        Map<Kind, String> units = new EnumMap<>(Kind.class);
        chosen.forEach((kind, measure) -> units.put(kind, measure.text()));
        return units.toString();
    }
}
