package io.github.formulationmath.reckoning;

import io.github.formulationmath.number.Ratio;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * The units in which a reader wants to see the numbers of a working: one for each {@link Kind}, so that no working mixes
 * two units for the same kind of quantity. Squares of masses and money per mass follow the unit of mass unless they are chosen
 * themselves.
 */
final class UnitChoice {

    private static final int LONGEST = 24;

    private static final UnitChoice CANONICAL = new UnitChoice(new EnumMap<>(Kind.class));

    private final Map<Kind, Measure> chosen;

    private UnitChoice(Map<Kind, Measure> chosen) {
        this.chosen = chosen;
    }

    /** Each kind in its canonical unit: g, mL, g/mL, % … */
    static UnitChoice canonical() {
        return CANONICAL;
    }

    /** The same choice with another unit for one kind; checks what a unit may be. */
    UnitChoice with(Kind kind, String unit, Ratio size) {
        if (unit.isBlank()
                || !unit.equals(unit.strip())
                || unit.length() > LONGEST
                || !unit.codePoints().allMatch(UnitChoice::mayStandInUnit)) {
            throw new IllegalArgumentException("unit is \"" + unit + "\": it must be 1 to " + LONGEST
                    + " characters long, without digits, control characters or spaces at its ends");
        }
        if (size.signum() <= 0) {
            throw new IllegalArgumentException("size of the unit " + unit + " is " + size + ": it must be above 0");
        }
        return with(kind, new Measure(unit, size));
    }

    /** The same choice with the unit of an amount, if none is chosen for its kind; only masses and volumes come in many. */
    UnitChoice orElse(Kind kind, InUnit amount) {
        return kind != Kind.MASS && kind != Kind.VOLUME || chosen.containsKey(kind)
                ? this
                : with(kind, new Measure(amount.symbol(), amount.unitSize()));
    }

    /** The same choice, and another's where it has none. */
    UnitChoice orElse(UnitChoice other) {
        if (other.chosen.isEmpty()) {
            return this;
        }
        Map<Kind, Measure> all = new EnumMap<>(other.chosen);
        all.putAll(chosen);
        return new UnitChoice(all);
    }

    private UnitChoice with(Kind kind, Measure measure) {
        Map<Kind, Measure> changed = new EnumMap<>(Kind.class);
        changed.putAll(chosen);
        changed.put(kind, measure);
        return new UnitChoice(changed);
    }

    private static boolean mayStandInUnit(int c) {
        return c == ' '
                || !Character.isWhitespace(c)
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
            case SHARE_DIFFERENCE, IODINE_NUMBER -> new Measure(kind.canonicalUnit(), Ratio.of(1, 100));
            case ALKALI_NUMBER, SUBSTANCE_CONCENTRATION -> new Measure(kind.canonicalUnit(), Ratio.of(1, 1000));
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
}
