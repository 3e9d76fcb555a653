package io.github.formulationmath.soap;

import io.github.formulationmath.csv.CsvRow;
import io.github.formulationmath.reckoning.Source;
import java.io.Serializable;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;

/**
 * Where a row of a table stands and where it was read, so that everybody can read it again.
 *
 * @param work the standard, regulation or book, with its edition
 * @param locator the table, clause or monograph in it
 * @param readAt the address or the file where the row was read
 * @param readOn the day on which it was read
 * @param reading whether the work itself was read
 */
public record Provenance(String work, String locator, String readAt, LocalDate readOn, Reading reading)
        implements Serializable {

    /** How a row came into a table. */
    public enum Reading {
        /** Read in the work, or in a public copy of it. */
        SEEN("SEEN"),
        /** Read where somebody quotes the work: a slip of the one who quotes is a slip of the row. */
        SECOND_HAND("SEEN-2ND");

        private final String tag;

        Reading(String tag) {
            this.tag = tag;
        }

        /**
         * The word in the table.
         *
         * @return {@code SEEN} or {@code SEEN-2ND}
         */
        public String tag() {
            return tag;
        }
    }

    /**
     * Checks nothing but presence.
     *
     * @param work the standard, regulation or book
     * @param locator the table, clause or monograph in it
     * @param readAt the address or the file
     * @param readOn the day
     * @param reading whether the work itself was read
     */
    public Provenance {
        Objects.requireNonNull(work, "work");
        Objects.requireNonNull(locator, "locator");
        Objects.requireNonNull(readAt, "readAt");
        Objects.requireNonNull(readOn, "readOn");
        Objects.requireNonNull(reading, "reading");
    }

    /** From the columns of a row, none of which may be empty. */
    static Provenance of(CsvRow row) {
        row.required("read_on");
        LocalDate day = row.date("read_on");
        return new Provenance(
                row.required("source"),
                row.required("locator"),
                row.required("read_at"),
                Objects.requireNonNull(day, "read_on"),
                row.choice("tag", List.of(Reading.values()), Reading::tag));
    }

    /**
     * The source that workings print, with the place where the row was read.
     *
     * @return the work; the locator says whether it was only quoted
     */
    public Source source() {
        String how = reading == Reading.SEEN ? "read at " : "as quoted at ";
        return Source.published(work, locator + "; " + how + readAt + " on " + readOn);
    }
}
