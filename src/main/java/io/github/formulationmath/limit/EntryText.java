package io.github.formulationmath.limit;

import java.io.Serializable;
import java.util.Objects;

/**
 * What an entry says in words. Conditions that are not numbers (age, pH, inhalation, purity) are only here: show them,
 * always.
 *
 * @param scope the products it is for, as printed
 * @param limit the concentration, as printed
 * @param conditions other conditions
 * @param warnings wording of conditions and warnings for the label
 * @param basis the words of the entry for the basis, for example {@code as acid}
 * @param humanReading why a person had to read the entry; empty if a machine reads the same
 * @param note a remark of the transcriber, no part of the source
 */
public record EntryText(
        String scope, String limit, String conditions, String warnings, String basis, String humanReading, String note)
        implements Serializable {

    /** No words. */
    public static final EntryText NONE = new EntryText("", "", "", "", "", "", "");

    /**
     * Checks.
     *
     * @param scope the products it is for, as printed
     * @param limit the concentration, as printed
     * @param conditions other conditions
     * @param warnings wording of conditions and warnings
     * @param basis the words for the basis
     * @param humanReading why a person had to read the entry
     * @param note a remark
     */
    public EntryText {
        Objects.requireNonNull(scope, "scope");
        Objects.requireNonNull(limit, "limit");
        Objects.requireNonNull(conditions, "conditions");
        Objects.requireNonNull(warnings, "warnings");
        Objects.requireNonNull(basis, "basis");
        Objects.requireNonNull(humanReading, "humanReading");
        Objects.requireNonNull(note, "note");
    }

    /**
     * Conditions alone.
     *
     * @param text the conditions in the words of the source
     * @return the text
     */
    public static EntryText conditions(String text) {
        return new EntryText("", "", text, "", "", "", "");
    }
}
