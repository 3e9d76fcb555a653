package io.github.formulationmath.soap;

import io.github.formulationmath.number.Excerpt;
import io.github.formulationmath.number.NumberTextException;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.number.Sentence;
import io.github.formulationmath.quantity.Amount;
import java.io.Serial;
import java.io.Serializable;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import javax.measure.quantity.Mass;
import org.jspecify.annotations.Nullable;

/**
 * How much alkali one gram of a fat takes up, stated as potassium hydroxide: the form of saponification values, acid values
 * and ester values (ISO 3657, ISO 660: milligrams of KOH per gram).
 *
 * <p>The text always says which alkali is meant, for a saponification value that is read as sodium hydroxide makes 40 % too
 * much lye: {@code "192 mg KOH/g"} and {@code "0.1369 g NaOH/g"} are read, a bare number is refused. Sodium hydroxide is
 * turned into potassium hydroxide mole by mole.
 *
 * <p>{@code equals} means the same exact number. Immutable and thread-safe.
 */
public final class AlkaliNumber implements Comparable<AlkaliNumber>, Serializable {

    /** Takes up no alkali. */
    public static final AlkaliNumber ZERO = new AlkaliNumber(Ratio.ZERO);

    private static final Map<String, Ratio> UNITS = units();

    @Serial
    private static final long serialVersionUID = 1L;

    private final Ratio gramsPerGram;

    private AlkaliNumber(Ratio gramsPerGram) {
        this.gramsPerGram = gramsPerGram;
    }

    private static Map<String, Ratio> units() {
        Ratio potassium = Alkali.POTASSIUM_HYDROXIDE.gramsPerMole();
        Ratio sodium = potassium.dividedBy(Alkali.SODIUM_HYDROXIDE.gramsPerMole());
        Ratio milli = Ratio.of(1, 1000);
        return new TreeMap<>(
                Map.of("mg KOH/g", milli, "g KOH/g", Ratio.ONE, "mg NaOH/g", sodium.times(milli), "g NaOH/g", sodium));
    }

    /**
     * Reads a number and its unit.
     *
     * @param text such as {@code "192 mg KOH/g"}; also g KOH/g, mg NaOH/g and g NaOH/g
     * @return the number
     * @throws NumberTextException if the text is not a number and such a unit, or is below 0
     */
    public static AlkaliNumber parse(String text) {
        String plain = Objects.requireNonNull(text, "text").strip();
        int space = plain.indexOf(' ');
        Ratio unit = space < 0 ? null : UNITS.get(plain.substring(space + 1).strip());
        if (unit == null) {
            throw new NumberTextException(
                    text,
                    Sentence.of(
                            "refusal.text.alkali-unit",
                            "a saponification, acid or ester value needs its unit, which says the alkali: one of {units},"
                                    + " as in \"192 mg KOH/g\"",
                            "units",
                            String.join(", ", UNITS.keySet())));
        }
        Ratio number = Ratio.parse(plain.substring(0, space));
        if (number.signum() < 0) {
            throw new NumberTextException(
                    text,
                    Sentence.of(
                            "refusal.text.alkali-negative", "a fat takes up no less than no alkali: write 0 or more"));
        }
        return new AlkaliNumber(number.times(unit));
    }

    /**
     * The number of a fat that takes up a mass of potassium hydroxide.
     *
     * @param koh how much potassium hydroxide, 0 or more
     * @param fat how much fat takes it up, above 0
     * @return the number
     * @throws IllegalArgumentException if a mass is out of range
     */
    public static AlkaliNumber of(Amount<Mass> koh, Amount<Mass> fat) {
        return ofGramsPerGram(Amount.requireNotNegative("koh", koh).ratioTo(Amount.requirePositive("fat", fat)));
    }

    /** From grams of KOH per gram. */
    static AlkaliNumber ofGramsPerGram(Ratio value) {
        if (value.signum() < 0) {
            throw new IllegalArgumentException(
                    "alkali number is " + Excerpt.of(value.times(1000)) + " mg KOH/g: it must not be below 0");
        }
        return new AlkaliNumber(value);
    }

    /**
     * How many times as large as another: a number without a unit.
     *
     * @param other the other number, above 0
     * @return the quotient of the two
     * @throws IllegalArgumentException if the other is 0
     */
    public Ratio relativeTo(AlkaliNumber other) {
        if (Objects.requireNonNull(other, "other").gramsPerGram.isZero()) {
            throw new IllegalArgumentException("the other number is " + other + ": nothing is a multiple of it");
        }
        return gramsPerGram.dividedBy(other.gramsPerGram);
    }

    /** Grams of KOH per gram of fat. */
    Ratio gramsPerGram() {
        return gramsPerGram;
    }

    /** Moles of hydroxide per gram of fat. */
    Ratio molesPerGram() {
        return gramsPerGram.dividedBy(Alkali.POTASSIUM_HYDROXIDE.gramsPerMole());
    }

    @Override
    public int compareTo(AlkaliNumber other) {
        return gramsPerGram.compareTo(Objects.requireNonNull(other, "other").gramsPerGram);
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof AlkaliNumber that && gramsPerGram.equals(that.gramsPerGram);
    }

    @Override
    public int hashCode() {
        return gramsPerGram.hashCode();
    }

    /** The exact number in mg KOH/g, which {@link #parse} reads again. */
    @Override
    public String toString() {
        return gramsPerGram.times(1000) + " mg KOH/g";
    }
}
