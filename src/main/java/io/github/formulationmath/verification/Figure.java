package io.github.formulationmath.verification;

import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.FormulationUnits;
import java.io.Serial;
import java.io.Serializable;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.measure.Unit;
import org.jspecify.annotations.Nullable;

/**
 * A mass or volume as somebody's calculator showed it. Its last digit tells how finely it was rounded: {@code 12.0 g} to
 * 0.1 g, {@code 12 g} to 1 g.
 *
 * <p>Immutable and thread-safe.
 */
public final class Figure implements Serializable {

    @Serial
    private static final long serialVersionUID = 1L;

    private static final Pattern SHAPE = Pattern.compile("([0-9]{1,100})(?:\\.([0-9]{1,100}))? ([^ ].{0,20})");

    private final String written;
    private final Ratio number;
    private final Ratio lastDigit;
    private final Amount<?> amount;
    private final boolean volume;

    private Figure(String written, Ratio number, Ratio lastDigit, Amount<?> amount, boolean volume) {
        this.written = written;
        this.number = number;
        this.lastDigit = lastDigit;
        this.amount = amount;
        this.volume = volume;
    }

    /**
     * Reads a figure.
     *
     * @param text a plain decimal, a space, and a unit of mass or volume, for example {@code 12.0 g}
     * @return the figure
     * @throws IllegalArgumentException if the text is anything else
     */
    public static Figure parse(String text) {
        Matcher shape = SHAPE.matcher(Objects.requireNonNull(text, "text"));
        if (!shape.matches()) {
            throw new IllegalArgumentException(
                    "figure is \"" + text + "\": write a plain decimal, a space and a unit, like 12.0 g");
        }
        int places = shape.group(2) == null ? 0 : shape.group(2).length();
        Ratio lastDigit = Ratio.parse("1e-" + places);
        Ratio number = Ratio.parse(text.substring(0, text.indexOf(' ')));
        Amount<?> mass = massOrNull(text);
        return mass == null
                ? new Figure(text, number, lastDigit, Amount.volume(text), true)
                : new Figure(text, number, lastDigit, mass, false);
    }

    private static @Nullable Amount<?> massOrNull(String text) {
        try {
            return Amount.mass(text);
        } catch (IllegalArgumentException e) {
            // Not a mass: then it is read as a volume, whose exception names what is wrong with it.
            return null;
        }
    }

    /**
     * The figure as written.
     *
     * @return the text
     */
    public String written() {
        return written;
    }

    /**
     * The number before the unit.
     *
     * @return the exact number
     */
    public Ratio number() {
        return number;
    }

    /**
     * The unit after the number.
     *
     * @return a unit of mass or of volume
     */
    public Unit<?> unit() {
        return amount.getUnit();
    }

    /**
     * Whether the figure is a volume.
     *
     * @return false for a mass
     */
    public boolean isVolume() {
        return volume;
    }

    /**
     * What one in the last digit is worth.
     *
     * @return 0.1 for {@code 12.0 g}, in the unit of the figure
     */
    public Ratio lastDigit() {
        return lastDigit;
    }

    /** How many grams or millilitres one of the unit is. */
    Ratio unitSize() {
        return FormulationUnits.factorOf(unit());
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Figure that && written.equals(that.written);
    }

    @Override
    public int hashCode() {
        return written.hashCode();
    }

    @Override
    public String toString() {
        return written;
    }
}
