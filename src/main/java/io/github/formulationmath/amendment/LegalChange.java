package io.github.formulationmath.amendment;

import io.github.formulationmath.formula.SubstanceName;
import java.io.Serializable;
import java.time.LocalDate;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;

/**
 * What one act changed of one thing.
 *
 * @param act its number, for example {@code (EU) 2024/996}
 * @param later whether it is later than the table, which does not have it; false for a transition that the table's own rows
 *     carry
 * @param kind what it did
 * @param tag how well its text was seen
 * @param placedUntil the last day on which what does not comply may be placed on the market
 * @param availableUntil the last day on which it may be made available
 * @param entries the entries that it touches, annex and number, for example {@code VI 18}
 * @param names names of the substances that it touches
 * @param casNumbers their CAS numbers, as far as they were seen
 * @param what what changed, in short
 */
public record LegalChange(
        String act,
        boolean later,
        Kind kind,
        Tag tag,
        LocalDate placedUntil,
        LocalDate availableUntil,
        Set<String> entries,
        List<String> names,
        List<String> casNumbers,
        String what)
        implements Serializable {

    /** What an act did. */
    public enum Kind {
        /** It prohibits. */
        BANNED("banned"),
        /** It restricts what was not restricted. */
        RESTRICTED("restricted"),
        /** It replaces an entry. */
        REPLACED("replaced"),
        /** It asks for words on the label. */
        LABEL("label"),
        /** It is published and does not apply yet; its figures are not carried. */
        COMING("coming"),
        /** It is in the rows already; its dates are told. */
        TRANSITION("transition");

        private final String code;

        Kind(String code) {
            this.code = code;
        }

        /**
         * The word for it in a file.
         *
         * @return for example {@code banned}
         */
        public String code() {
            return code;
        }
    }

    /** How well the text of an act was seen. Only the Official Journal is authentic. */
    public enum Tag {
        /** The text, or a verbatim quotation of it, was read in a stored copy. */
        SEEN("SEEN"),
        /** It is told by others; read the act before you rely on it. */
        SEEN_SECOND_HAND("SEEN-2ND");

        private final String code;

        Tag(String code) {
            this.code = code;
        }

        /**
         * The word for it in a table.
         *
         * @return {@code SEEN} or {@code SEEN-2ND}
         */
        public String code() {
            return code;
        }
    }

    /**
     * Copies.
     *
     * @param act its number
     * @param later whether it is later than the table
     * @param kind what it did
     * @param tag how well its text was seen
     * @param placedUntil the last day of placing
     * @param availableUntil the last day of making available
     * @param entries the entries
     * @param names names of the substances
     * @param casNumbers CAS numbers of the substances
     * @param what what changed
     * @throws IllegalArgumentException if it may be placed longer than made available, or touches nothing
     */
    public LegalChange {
        Objects.requireNonNull(act, "act");
        Objects.requireNonNull(kind, "kind");
        Objects.requireNonNull(tag, "tag");
        if (Objects.requireNonNull(availableUntil, "availableUntil")
                .isBefore(Objects.requireNonNull(placedUntil, "placedUntil"))) {
            throw new IllegalArgumentException("availableUntil is " + availableUntil + ", before placedUntil "
                    + placedUntil + ": what may be placed may be made available");
        }
        entries = Set.copyOf(Objects.requireNonNull(entries, "entries"));
        names = List.copyOf(Objects.requireNonNull(names, "names"));
        casNumbers = List.copyOf(Objects.requireNonNull(casNumbers, "casNumbers"));
        if (entries.isEmpty() && names.isEmpty() && casNumbers.isEmpty()) {
            throw new IllegalArgumentException("entries, names and casNumbers are empty: name what the act touches");
        }
        Objects.requireNonNull(what, "what");
    }

    /** Cheap, and telling enough. */
    @Override
    public int hashCode() {
        return act.hashCode() * 31 + what.hashCode();
    }

    /** The names in normal form, and the numbers. */
    Set<String> keys() {
        Set<String> keys = new HashSet<>(casNumbers);
        for (String name : names) {
            keys.add(SubstanceName.normalise(name));
        }
        return keys;
    }

    @Override
    public String toString() {
        return act + " [" + tag.code() + "], " + kind.code() + ": " + what;
    }
}
