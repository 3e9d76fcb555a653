package io.github.formulationmath.formula;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * A formula rolled up to substances, each once, whatever spellings its lines use. Substances are the same if they share a
 * name ({@link SubstanceName}), a synonym or a CAS number, directly or through others: where one line has {@code
 * Phenoxyethanol (CAS 122-99-6)}, {@code PHENOXYETHANOL} and {@code PE 90 (CAS 122-99-6)} on other lines are it as well.
 * What is counted, capped, limited or listed is counted by these groups. Their shares add up to exactly 100 %.
 *
 * <p>Example: 10 % of a 30 % solution and 70 % of water as a line of its own make 3 % active matter and 77 % water, if
 * the rest of the solution is water.
 *
 * <p>Sameness is worked out for the formula as a whole, from what its lines say; no list of substances is consulted. Got
 * from {@link Formula#composition()}. Immutable and thread-safe.
 */
public final class Composition {

    private final List<SubstanceShare> shares;
    private final Sameness sameness;
    /** For each line what its material is made of. */
    private final List<List<SubstanceShare>> byLine;

    Composition(Sameness sameness, List<FormulaLine> lines) {
        this.sameness = sameness;
        List<SubstanceShare> all = new ArrayList<>();
        sameness.groups().forEach(group -> all.add(new SubstanceShare(group)));
        this.shares = Collections.unmodifiableList(all);
        this.byLine = new ArrayList<>(lines.size());
        int mention = 0;
        for (FormulaLine line : lines) {
            int parts = line.ingredient().parts().size();
            byLine.add(parts == 1 ? List.of(shares.get(sameness.groupOf(mention))) : sharesFrom(mention, parts));
            mention += parts;
        }
    }

    private List<SubstanceShare> sharesFrom(int first, int count) {
        List<SubstanceShare> found = new ArrayList<>(count);
        for (int i = 0; i < count; i++) {
            found.add(shares.get(sameness.groupOf(first + i)));
        }
        return Collections.unmodifiableList(found);
    }

    /** The substances of a material by itself. */
    static Composition of(Ingredient material) {
        Sameness sameness = new Sameness("\"" + material.name() + "\"");
        sameness.addAll(material, null, "the material");
        return new Composition(sameness, List.of());
    }

    /**
     * The substances with their shares, in the order in which the formula first names them.
     *
     * @return an unmodifiable list; the shares add up to 100 %
     */
    public List<SubstanceShare> shares() {
        return shares;
    }

    /**
     * What a line is made of: one substance for each part of its material, in the order of the parts. Found once.
     *
     * @param line a line of the formula
     * @return an unmodifiable list as long as the {@link Ingredient#parts() parts} of the material; two parts may be one
     *     substance
     * @throws IndexOutOfBoundsException if the formula has no line at that place
     */
    public List<SubstanceShare> sharesIn(FormulaLine line) {
        return byLine.get(Objects.requireNonNull(line, "line").index());
    }

    /**
     * The substance that is meant, with its share: everything that is the same taken together. What is asked for may itself
     * join lines that nothing else joins: a name with a CAS number finds both the lines with the name and those with the
     * number.
     *
     * @param substance the substance, in any spelling
     * @return its share; empty if no material contains it
     * @throws IllegalArgumentException if what is asked for and what the formula has of it would be one substance with two
     *     CAS numbers
     */
    public Optional<SubstanceShare> shareOf(Substance substance) {
        List<SubstanceShare> found = new ArrayList<>(1);
        for (String key : Objects.requireNonNull(substance, "substance").keys()) {
            int group = sameness.groupWith(key);
            if (group >= 0 && !found.contains(shares.get(group))) {
                found.add(shares.get(group));
            }
        }
        if (found.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(
                found.size() == 1 && found.get(0).allowsNumberOf(substance) ? found.get(0) : joined(found, substance));
    }

    /** Several as one, in the order of the formula; or why they cannot be one. */
    private SubstanceShare joined(List<SubstanceShare> found, Substance asked) {
        Sameness together = new Sameness(sameness.whole());
        List<Sameness.Mention> mentions = found.stream()
                .flatMap(one -> one.mentions().stream())
                .sorted(Comparator.comparing(
                        mention -> mention.line() == null ? -1 : mention.line().index()))
                .toList();
        mentions.forEach(together::add);
        together.add(new Sameness.Mention(asked, null, "the question"));
        together.groups();
        return new SubstanceShare(mentions);
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Composition that && shares.equals(that.shares);
    }

    @Override
    public int hashCode() {
        return shares.hashCode();
    }

    @Override
    public String toString() {
        return shares.toString();
    }
}
