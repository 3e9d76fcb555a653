package io.github.formulationmath.annex;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Objects;

/**
 * An entry of Annex II of Regulation (EC) No 1223/2009, the list of substances prohibited in cosmetic products.
 *
 * <p>Example: entry 375, {@code Tretinoin (INN) (retinoic acid and its salts)}.
 *
 * @param number the reference number
 * @param printed the entry as printed
 * @param condition when it holds
 * @param letsThrough the words of the entry that let something through; empty if there are none
 * @param isGroup whether it speaks of more than it names, for example of salts
 * @param casNumbers the CAS numbers it prints
 * @param names the names it prints, and the chemical names that the database gives for it
 * @param listed names of ingredients that the database lists under it
 * @param amendingAct the act that the database gives for it
 * @param updated the day that the database gives for it
 */
public record ProhibitedEntry(
        String number,
        String printed,
        Condition condition,
        String letsThrough,
        boolean isGroup,
        List<String> casNumbers,
        List<String> names,
        List<String> listed,
        String amendingAct,
        LocalDate updated) {

    /** When an entry holds. */
    public enum Condition {
        /** Always; if it has an exception, the exception is for other substances than the one it names. */
        ALWAYS,
        /** When used as a substance in hair dye products. */
        HAIR_DYE,
        /** In all products but those for nails, for which it lets something through. */
        NAILS,
        /** When used as a fragrance ingredient. */
        FRAGRANCE,
        /** If it contains too much of another substance. */
        CONTENT,
        /** With an exception that may be for the substance itself. */
        EXCEPTION,
        /** The entry was moved or deleted; only what the database still lists under it is known. */
        MOVED;

        /** The word for it in the file. */
        String code() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    /**
     * Copies.
     *
     * @param number the reference number
     * @param printed the entry as printed
     * @param condition when it holds
     * @param letsThrough what it lets through
     * @param isGroup whether it speaks of more than it names
     * @param casNumbers the CAS numbers
     * @param names the names
     * @param listed the names of ingredients
     * @param amendingAct the act
     * @param updated the day
     */
    public ProhibitedEntry {
        Objects.requireNonNull(number, "number");
        Objects.requireNonNull(printed, "printed");
        Objects.requireNonNull(condition, "condition");
        Objects.requireNonNull(letsThrough, "letsThrough");
        casNumbers = List.copyOf(Objects.requireNonNull(casNumbers, "casNumbers"));
        names = List.copyOf(Objects.requireNonNull(names, "names"));
        listed = List.copyOf(Objects.requireNonNull(listed, "listed"));
        Objects.requireNonNull(amendingAct, "amendingAct");
        Objects.requireNonNull(updated, "updated");
    }

    /** Where it stands and what it says. */
    @Override
    public String toString() {
        return "Annex II, entry " + number + " (" + printed + ")";
    }
}
