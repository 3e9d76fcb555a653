package io.github.formulationmath.limit;

import io.github.formulationmath.formula.SubstanceName;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * An entry of the source that a table does not transcribe. The substances it speaks of are not free of limits: the printed
 * entry has to be read.
 *
 * <p>Example: Annex III, entry 31, sodium fluoride, left out because it is about oral products only.
 *
 * @param annex where it stands
 * @param number the reference number
 * @param name the entry as printed
 * @param reason why it was not transcribed
 * @param names names of the substances it speaks of, as far as the data have them
 * @param casNumbers their CAS numbers, as far as the data have them
 * @param text what the entry says, as far as the data have it
 */
public record OmittedEntry(
        String annex,
        String number,
        String name,
        String reason,
        List<String> names,
        List<String> casNumbers,
        EntryText text)
        implements Serializable {

    /**
     * Copies.
     *
     * @param annex where it stands
     * @param number the reference number
     * @param name the entry as printed
     * @param reason why it was not transcribed
     * @param names names of the substances
     * @param casNumbers their CAS numbers
     * @param text what the entry says
     */
    public OmittedEntry {
        Objects.requireNonNull(annex, "annex");
        Objects.requireNonNull(number, "number");
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(reason, "reason");
        names = List.copyOf(Objects.requireNonNull(names, "names"));
        casNumbers = List.copyOf(Objects.requireNonNull(casNumbers, "casNumbers"));
        Objects.requireNonNull(text, "text");
    }

    /** The names in normal form, and the numbers. */
    List<String> keys() {
        List<String> keys = new ArrayList<>(names.size() + casNumbers.size());
        for (String one : names) {
            keys.add(SubstanceName.normalise(one));
        }
        keys.addAll(casNumbers);
        return keys;
    }

    /** For which products, how much, and on which conditions, as printed; wording for the label is not repeated. */
    String said() {
        return Stream.of(text.scope(), text.limit(), text.conditions())
                .filter(part -> !part.isEmpty())
                .collect(Collectors.joining("; "));
    }

    /** Where it stands and what it is. */
    @Override
    public String toString() {
        return "Annex " + annex + ", entry " + number + " (" + name + ")";
    }
}
