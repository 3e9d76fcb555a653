package io.github.formulationmath.reckoning;

import java.io.Serial;
import java.io.Serializable;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * The letter that stands for a quantity in a relation, with its meaning and kind. Local to a calculation; there is no
 * global list.
 *
 * <p>Example: {@code Symbol.of("m", "line-mass", Kind.MASS)} prints as {@code m_3} for the third line, with the meaning
 * "mass of Glycerin" that the {@link Wording} holds under {@code symbol.line-mass}.
 *
 * <p>Immutable and thread-safe.
 */
public final class Symbol implements Serializable {

    @Serial
    private static final long serialVersionUID = 1L;

    private final String letter;
    private final String meaningKey;
    private final Kind kind;

    private Symbol(String letter, String meaningKey, Kind kind) {
        this.letter = letter;
        this.meaningKey = meaningKey;
        this.kind = kind;
    }

    /**
     * A symbol.
     *
     * @param letter the letter or short word, for example {@code m}, {@code M} or {@code pH}; Greek letters as such. What stands
     *     behind an underscore is printed below: {@code φ_hi}
     * @param meaningKey the key of the meaning in the {@link Wording}, without the prefix {@code symbol.}
     * @param kind the kind of quantity
     * @return the symbol
     * @throws IllegalArgumentException if the letter is blank, or nothing stands before or behind its underscore
     */
    public static Symbol of(String letter, String meaningKey, Kind kind) {
        if (Objects.requireNonNull(letter, "letter").isBlank()) {
            throw new IllegalArgumentException("letter is blank: a symbol needs a letter");
        }
        if (letter.startsWith("_") || letter.endsWith("_")) {
            throw new IllegalArgumentException("letter is \"" + letter
                    + "\": an underscore stands between a letter and what is below it, as in φ_hi");
        }
        return new Symbol(
                letter, Objects.requireNonNull(meaningKey, "meaningKey"), Objects.requireNonNull(kind, "kind"));
    }

    /**
     * The letter without an index.
     *
     * @return the letter
     */
    public String letter() {
        return letter;
    }

    /**
     * The key of the meaning.
     *
     * @return the key without the prefix {@code symbol.}
     */
    public String meaningKey() {
        return meaningKey;
    }

    /**
     * The kind of quantity.
     *
     * @return the kind
     */
    public Kind kind() {
        return kind;
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Symbol that
                && letter.equals(that.letter)
                && meaningKey.equals(that.meaningKey)
                && kind == that.kind;
    }

    @Override
    public int hashCode() {
        return Objects.hash(letter, meaningKey, kind);
    }

    @Override
    public String toString() {
        return letter;
    }
}
