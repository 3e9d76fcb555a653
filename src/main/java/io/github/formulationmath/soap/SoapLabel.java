package io.github.formulationmath.soap;

import io.github.formulationmath.document.Document;
import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.label.IngredientList;
import io.github.formulationmath.label.Label;
import io.github.formulationmath.reckoning.Wording;
import java.util.List;
import java.util.Objects;

/**
 * The ingredient list of a soap in the two ways in use: as what was added, with the fats and the alkali, and as what is there when all
 * has reacted, with salts and glycerin. Which one the law where it is sold allows is for that law to say.
 *
 * <p>As saponified, the masses that set the order are those of the middles of all ranges, the fats taken to react alike: an order of the
 * trade (common practice, no published source), and no guarantee of what is there. Of the fat, its share that the alkali cannot take
 * stands under its own name; waxes stand as they are; carbonate of the alkali is an impurity and not listed.
 *
 * <p>Immutable and thread-safe.
 */
public final class SoapLabel {

    private final Soap soap;
    private final Formula saponified;

    private SoapLabel(Soap soap, Formula saponified) {
        this.soap = soap;
        this.saponified = saponified;
    }

    /**
     * The two lists of a soap.
     *
     * @param soap the formula with its lines declared, all of them
     * @param names what the salts are called
     * @return the lists, to be asked for by a label
     * @throws IllegalArgumentException if a line is undeclared, a fat or acid has no name of its salt, a wax is said to react, or there
     *     is more alkali than the middles of all ranges can take
     */
    public static SoapLabel of(Soap soap, SaltNames names) {
        Objects.requireNonNull(soap, "soap");
        return new SoapLabel(soap, new Saponified(soap, Objects.requireNonNull(names, "names")).formula());
    }

    /**
     * The ingredients as they were added.
     *
     * @param label the rule, with colorants and perfumes
     * @return the list
     */
    public IngredientList asAdded(Label label) {
        return Objects.requireNonNull(label, "label").list(soap.formula());
    }

    /**
     * The ingredients as they are when all has reacted.
     *
     * @param label the rule, with colorants and perfumes
     * @return the list
     */
    public IngredientList asSaponified(Label label) {
        return Objects.requireNonNull(label, "label").list(saponified);
    }

    /**
     * What is there when all has reacted, as a formula in grams, for one kilogram as weighed.
     *
     * @return salts, fat left, glycerin, water and the rest
     */
    public Formula saponified() {
        return saponified;
    }

    /**
     * Both lists in words, with what they rest on and the caution.
     *
     * @param label the rule, with colorants and perfumes
     * @param wording the words
     * @return the document, to be printed in any format
     */
    public Document document(Label label, Wording wording) {
        List<String> added = asAdded(label).describe(wording);
        List<String> reacted = asSaponified(label).describe(wording);
        Document document = Document.titled(soap.formula().name(), wording.say("language"))
                .heading(wording.say("soap.label.as-added"));
        for (String line : added.subList(0, added.size() - 1)) {
            document = document.paragraph(line);
        }
        document = document.heading(wording.say("soap.label.as-saponified"));
        for (String line : reacted.subList(0, reacted.size() - 1)) {
            document = document.paragraph(line);
        }
        return document.paragraph(wording.say("soap.label.note")).caution(added.get(added.size() - 1));
    }

    /** What is there when all has reacted. */
    @Override
    public String toString() {
        return saponified.toString();
    }
}
