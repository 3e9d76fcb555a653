package io.github.formulationmath.reckoning;

import java.io.Serial;
import java.io.Serializable;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * Where a given value comes from: the caller, perhaps with the digits as written, or a publication.
 *
 * <p>Example: {@code Source.published("JCGM 100:2008", "F.2.2.1")}; {@code Source.written("2.50 %")} keeps the zero that
 * the exact number 1/40 cannot.
 *
 * <p>Immutable and thread-safe.
 */
public final class Source implements Serializable {

    @Serial
    private static final long serialVersionUID = 1L;

    private static final Source USER = new Source("", "", "");

    private final String title;
    private final String locator;
    private final String written;

    private Source(String title, String locator, String written) {
        this.title = title;
        this.locator = locator;
        this.written = written;
    }

    /**
     * The caller gave the value, and nothing more is known of it.
     *
     * @return the source
     */
    public static Source user() {
        return USER;
    }

    /**
     * The caller gave the value as a text.
     *
     * @param text the value as written, with all its digits
     * @return the source
     */
    public static Source written(String text) {
        return new Source("", "", Objects.requireNonNull(text, "text"));
    }

    /**
     * The value stands in a publication.
     *
     * @param title the publication with its edition or date
     * @param locator the clause, table or page; may be empty
     * @return the source
     * @throws IllegalArgumentException if the title is blank
     */
    public static Source published(String title, String locator) {
        if (Objects.requireNonNull(title, "title").isBlank()) {
            throw new IllegalArgumentException("title is blank: a publication needs a title");
        }
        return new Source(title, Objects.requireNonNull(locator, "locator"), "");
    }

    /**
     * The publication with its edition or date.
     *
     * @return its title; empty if the value is the caller's own
     */
    public String title() {
        return title;
    }

    /**
     * The clause, table or page.
     *
     * @return the place in the publication; empty if none is named
     */
    public String locator() {
        return locator;
    }

    /**
     * The publication and the place in it.
     *
     * @return for example {@code JCGM 100:2008, F.2.2.1}; empty if the value is the caller's own
     */
    public String citation() {
        return locator.isEmpty() ? title : title + ", " + locator;
    }

    /**
     * The value as the caller wrote it.
     *
     * @return the text; empty if it was not given as text
     */
    public String writtenText() {
        return written;
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Source that
                && title.equals(that.title)
                && locator.equals(that.locator)
                && written.equals(that.written);
    }

    @Override
    public int hashCode() {
        return Objects.hash(title, locator, written);
    }

    @Override
    public String toString() {
        return title.isEmpty() ? written.isEmpty() ? "given" : "given as " + written : citation();
    }
}
