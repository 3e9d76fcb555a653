package io.github.formulationmath.annex;

import io.github.formulationmath.quantity.MassFraction;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;

/**
 * An entry of Annex IV of Regulation (EC) No 1223/2009, the list of colorants allowed in cosmetic products.
 *
 * <p>Example: entry 135, {@code Iron Oxide red}, CI 77491, in every product.
 *
 * @param number the reference number
 * @param printed the entry as printed
 * @param colourIndexNumbers its colour index numbers, for example {@code 77491}; empty if it has none
 * @param colour the colour as printed
 * @param field in which products it is allowed
 * @param most the highest share by mass in the product ready for use, if one is printed
 * @param fieldAsPrinted the field of use as printed; empty for every product
 * @param limitAsPrinted the highest share as printed
 * @param conditions other conditions as printed, for example on purity
 * @param casNumbers the CAS numbers it prints
 * @param names the names it prints besides the colour index numbers
 * @param amendingAct the act that the database gives for it
 * @param updated the day that the database gives for it
 */
public record ColorantEntry(
        String number,
        String printed,
        List<String> colourIndexNumbers,
        String colour,
        Field field,
        Optional<MassFraction> most,
        String fieldAsPrinted,
        String limitAsPrinted,
        String conditions,
        List<String> casNumbers,
        List<String> names,
        String amendingAct,
        LocalDate updated) {

    /** In which products a colorant is allowed. */
    public enum Field {
        /** In every product. */
        ALL,
        /** Not in eye products. */
        NOT_EYES,
        /** Not in products applied on mucous membranes. */
        NOT_MUCOUS_MEMBRANES,
        /** In rinse-off products only. */
        RINSE_OFF,
        /** What is printed is for lip products. */
        LIPS;

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
     * @param colourIndexNumbers its colour index numbers
     * @param colour the colour
     * @param field the field of use
     * @param most the highest share
     * @param fieldAsPrinted the field as printed
     * @param limitAsPrinted the highest share as printed
     * @param conditions other conditions
     * @param casNumbers the CAS numbers
     * @param names the names
     * @param amendingAct the act
     * @param updated the day
     */
    public ColorantEntry {
        Objects.requireNonNull(number, "number");
        Objects.requireNonNull(printed, "printed");
        colourIndexNumbers = List.copyOf(Objects.requireNonNull(colourIndexNumbers, "colourIndexNumbers"));
        Objects.requireNonNull(colour, "colour");
        Objects.requireNonNull(field, "field");
        Objects.requireNonNull(most, "most");
        Objects.requireNonNull(fieldAsPrinted, "fieldAsPrinted");
        Objects.requireNonNull(limitAsPrinted, "limitAsPrinted");
        Objects.requireNonNull(conditions, "conditions");
        casNumbers = List.copyOf(Objects.requireNonNull(casNumbers, "casNumbers"));
        names = List.copyOf(Objects.requireNonNull(names, "names"));
        Objects.requireNonNull(amendingAct, "amendingAct");
        Objects.requireNonNull(updated, "updated");
    }

    /** Where it stands and what it says. */
    @Override
    public String toString() {
        String index = colourIndexNumbers.isEmpty() ? "" : ", CI " + String.join(", CI ", colourIndexNumbers);
        return "Annex IV, entry " + number + " (" + printed + index + ")";
    }
}
