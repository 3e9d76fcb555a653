package io.github.formulationmath.label;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.SubstanceName;
import io.github.formulationmath.limit.LimitReport;
import io.github.formulationmath.limit.Verdict;
import io.github.formulationmath.limit.WeighedLines;
import io.github.formulationmath.weighing.Weighed;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * What is needed besides the formula to make an ingredient list: the rule of order, which ingredients are colorants, which
 * materials are perfumes that are named by one word, and which substances have to be declared.
 *
 * <p>Names with a colour index number, like {@code CI 77891}, {@code CI77491} or {@code Iron Oxides (CI 77491)}, are colorants
 * without being told, and printed by that number. A mark for nanomaterials, however written, is printed "(nano)". A volatile oil
 * that is entered with its constituents is listed under its own name, and of those only what has to be declared.
 *
 * <p>Example: {@code Label.of(LabelRule.eu()).withPerfume("Lavender fragrance", "Parfum").declaring(report).list(formula)}.
 *
 * <p>Immutable and thread-safe.
 */
public final class Label {

    private final LabelRule rule;
    private final Set<String> colorants;
    private final Map<String, String> perfumes;
    private final Map<String, String> declared;
    private final List<String> mayContain;
    private final boolean capitals;
    private final @Nullable Formula declaredOf;

    private Label(
            LabelRule rule,
            Set<String> colorants,
            Map<String, String> perfumes,
            Map<String, String> declared,
            List<String> mayContain,
            boolean capitals,
            @Nullable Formula declaredOf) {
        this.rule = rule;
        this.colorants = Set.copyOf(colorants);
        this.perfumes = Map.copyOf(perfumes);
        this.declared = Map.copyOf(declared);
        this.mayContain = List.copyOf(mayContain);
        this.capitals = capitals;
        this.declaredOf = declaredOf;
    }

    /**
     * A label by a rule.
     *
     * @param rule the rule of order
     * @return the label, no colorants and perfumes named, nothing to be declared
     */
    public static Label of(LabelRule rule) {
        return new Label(Objects.requireNonNull(rule, "rule"), Set.of(), Map.of(), Map.of(), List.of(), false, null);
    }

    /**
     * The same label with ingredients that are colorants.
     *
     * @param names their INCI names
     * @return the label
     */
    public Label withColorants(String... names) {
        Set<String> more = new HashSet<>(colorants);
        for (String name : Objects.requireNonNull(names, "names")) {
            more.add(SubstanceName.normalise(Objects.requireNonNull(name, "names")));
        }
        return new Label(rule, more, perfumes, declared, mayContain, capitals, declaredOf);
    }

    /**
     * The same label with a material that is named by one word, whatever it holds; of its substances only those to be
     * declared are named beside it.
     *
     * @param material the name of the material in the formula
     * @param word for example {@code Parfum} or {@code Aroma}
     * @return the label
     */
    public Label withPerfume(String material, String word) {
        Map<String, String> more = new HashMap<>(perfumes);
        more.put(
                SubstanceName.normalise(Objects.requireNonNull(material, "material")),
                Objects.requireNonNull(word, "word"));
        return new Label(rule, colorants, more, declared, mayContain, capitals, declaredOf);
    }

    /**
     * The same label of a decorative product that is sold in several shades, with the colorants that the other shades have. They
     * stand at the end behind +/-, without those that the formula itself has. (Article 19(1)(g) of Regulation (EC) No 1223/2009
     * allows it for decorative products, and not for colorants that colour the hair.)
     *
     * @param names colour index numbers in any spelling, or INCI names
     * @return the label
     */
    public Label mayContain(String... names) {
        List<String> more = new ArrayList<>(mayContain);
        for (String name : Objects.requireNonNull(names, "names")) {
            more.add(Objects.requireNonNull(name, "names"));
        }
        return new Label(rule, colorants, perfumes, declared, more, capitals, declaredOf);
    }

    /**
     * The same label all in capitals. Without it names keep the letters they are written in, and those that are all in capitals
     * or all in small letters take the style of the rest: Linalool, BHT, PEG-40 Stearate.
     *
     * @return the label
     */
    public Label inCapitals() {
        return new Label(rule, colorants, perfumes, declared, mayContain, true, declaredOf);
    }

    /**
     * The same label with everything that a report says has to be declared, or may have to be.
     *
     * @param report the report on the same formula
     * @return the label
     */
    public Label declaring(LimitReport report) {
        requireReported(Objects.requireNonNull(report, "report").formula());
        Map<String, String> more = new HashMap<>(declared);
        for (Verdict verdict : report.declarations()) {
            String name = verdict.limit().declaredAs();
            verdict.substances()
                    .forEach(substance -> more.put(
                            SubstanceName.normalise(substance.name()), name.isEmpty() ? substance.name() : name));
        }
        return new Label(rule, colorants, perfumes, more, mayContain, capitals, report.formula());
    }

    /**
     * The ingredient list of a formula as written.
     *
     * @param formula the formula
     * @return the list
     */
    public IngredientList list(Formula formula) {
        requireReported(Objects.requireNonNull(formula, "formula"));
        return new LabelDraft(this, formula, null).list();
    }

    /**
     * The ingredient list of a formula as weighed.
     *
     * @param weighed what was weighed, with the formula it is of
     * @return the list
     * @throws IllegalArgumentException if the masses are not those of the lines of the formula
     */
    public IngredientList list(Weighed weighed) {
        WeighedLines own = WeighedLines.of(weighed);
        requireReported(own.formula());
        return new LabelDraft(this, own.formula(), own.masses()).list();
    }

    private void requireReported(Formula formula) {
        if (declaredOf != null && !declaredOf.equals(formula)) {
            throw new IllegalArgumentException(
                    "formula is \"" + formula.name() + "\", but what is to be declared was found in "
                            + (declaredOf.name().equals(formula.name())
                                    ? "another of that name"
                                    : "\"" + declaredOf.name() + "\"")
                            + ": check this formula and declare that report");
        }
    }

    LabelRule rule() {
        return rule;
    }

    Set<String> colorants() {
        return colorants;
    }

    Map<String, String> perfumes() {
        return perfumes;
    }

    Map<String, String> declared() {
        return declared;
    }

    List<String> mayContain() {
        return mayContain;
    }

    boolean capitals() {
        return capitals;
    }

    @Override
    public String toString() {
        return "label, " + rule;
    }
}
