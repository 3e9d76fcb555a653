package io.github.formulationmath.soap;

import io.github.formulationmath.quantity.Amount;
import java.util.Comparator;
import java.util.Objects;
import javax.measure.quantity.Mass;

/**
 * How much one input widens the interval of the hydroxide that is left.
 *
 * @param kind what about the line is not known better
 * @param line the name of the line
 * @param width how far apart the ends of the interval are for its sake alone, in grams of hydroxide
 */
public record InputWidth(Kind kind, String line, Amount<Mass> width) {

    static final Comparator<InputWidth> WIDEST_FIRST =
            Comparator.comparing(InputWidth::width).reversed();

    /** What about a line is not known better. */
    public enum Kind {
        /** The saponification value, the acid value of a wax and inert matter. */
        FAT,
        /** Assay and carbonate of the alkali. */
        GRADE,
        /** The assay of an acid. */
        ACID,
        /** The weighing of the line. */
        WEIGHING
    }

    /**
     * Checks presence.
     *
     * @param kind what about the line is not known better
     * @param line the name of the line
     * @param width how far apart the ends are for its sake alone
     */
    public InputWidth {
        Objects.requireNonNull(kind, "kind");
        Objects.requireNonNull(line, "line");
        Objects.requireNonNull(width, "width");
    }

    /** What is not known better, and how far it reaches. */
    @Override
    public String toString() {
        return kind + " " + line + ": " + width.told();
    }
}
