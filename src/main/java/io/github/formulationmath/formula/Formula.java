package io.github.formulationmath.formula;

import io.github.formulationmath.number.Excerpt;
import io.github.formulationmath.quantity.Amount;
import java.io.Serial;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import javax.measure.quantity.Mass;
import org.jspecify.annotations.Nullable;

/**
 * What a product is made of: lines in phases, each with its exact share of the whole, together exactly 100 %.
 *
 * <p>Written in percent ({@link #inPercent}), in parts ({@link #inParts}) or in masses ({@link #inMasses}); one line may
 * take as much as suffices (q.s.). Percentages that do not add up are refused, never adjusted; normalising them is a call
 * of its own ({@link FormulaBuilder#buildNormalised()}).
 *
 * <p>Example:
 *
 * <pre>{@code
 * Formula lotion = Formula.inPercent("Oat lotion")
 *         .phase("water").quantitySufficient("Aqua").line("Glycerin", "3 %")
 *         .phase("oil").line("Avena Sativa Kernel Oil", "12 %").line("Glyceryl Stearate SE", "5 %")
 *         .build();                                   // Aqua takes 80 %
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 */
public final class Formula implements Lines<FormulaLine>, Serializable {

    @Serial
    private static final long serialVersionUID = 1L;

    private final String name;
    private final List<FormulaLine> lines;
    /** Parted when somebody first asks. */
    private transient volatile @Nullable List<Phase> phases;
    /** Worked out again after a serializer that calls no constructor. */
    private transient volatile @Nullable Sameness sameness;
    /** Worked out when somebody first asks. */
    private transient volatile @Nullable Composition composition;
    /** By the normalised name of the ingredient, then by phase; looked up when somebody first asks. */
    private transient volatile @Nullable Map<String, Map<String, FormulaLine>> byName;

    Formula(String name, List<FormulaLine> lines) {
        this.name = name;
        this.lines = List.copyOf(lines);
        this.sameness = Sameness.of(name, this.lines);
    }

    /**
     * Starts a formula in percent by weight, with or without a q.s. line.
     *
     * @param name the name of the product
     * @return a builder that takes shares
     */
    public static FormulaBuilder inPercent(String name) {
        return new FormulaBuilder(name, Shares.Rule.PERCENT);
    }

    /**
     * Starts a formula in parts by weight.
     *
     * @param name the name of the product
     * @return a builder that takes parts
     */
    public static FormulaBuilder inParts(String name) {
        return new FormulaBuilder(name, Shares.Rule.PARTS);
    }

    /**
     * Starts a formula in masses, as a batch once made is noted down.
     *
     * @param name the name of the product
     * @return a builder that takes masses
     */
    public static FormulaBuilder inMasses(String name) {
        return new FormulaBuilder(name, Shares.Rule.MASSES);
    }

    private Map<String, Map<String, FormulaLine>> byName() {
        Map<String, Map<String, FormulaLine>> known = byName;
        if (known == null) {
            known = byName(lines);
            byName = known;
        }
        return known;
    }

    private static Map<String, Map<String, FormulaLine>> byName(List<FormulaLine> lines) {
        Map<String, Map<String, FormulaLine>> all = new HashMap<>();
        for (FormulaLine line : lines) {
            all.computeIfAbsent(line.ingredient().normalName(), n -> new LinkedHashMap<>(2))
                    .put(SubstanceName.normalise(line.phase()), line);
        }
        return all;
    }

    private static List<Phase> phasesOf(List<FormulaLine> lines) {
        Map<String, List<FormulaLine>> byPhase = new LinkedHashMap<>();
        lines.forEach(line ->
                byPhase.computeIfAbsent(line.phase(), p -> new ArrayList<>()).add(line));
        return byPhase.entrySet().stream()
                .map(e -> new Phase(e.getKey(), e.getValue()))
                .toList();
    }

    /**
     * The name of the product.
     *
     * @return the name
     */
    public String name() {
        return name;
    }

    /** This formula itself. */
    @Override
    public Formula formula() {
        return this;
    }

    @Override
    public List<FormulaLine> lines() {
        return lines;
    }

    /**
     * The phases in order.
     *
     * @return an unmodifiable list of at least one phase
     */
    public List<Phase> phases() {
        List<Phase> known = phases;
        if (known == null) {
            known = phasesOf(lines);
            phases = known;
        }
        return known;
    }

    int indexOf(String ingredientName) {
        Map<String, FormulaLine> found = named(ingredientName);
        if (found.size() > 1) {
            throw new IllegalArgumentException(Excerpt.of(ingredientName) + " stands in several phases ("
                    + Excerpt.ofAll(
                            found.values().stream().map(FormulaLine::phase).toList())
                    + "): say which with line(phase, ingredient)");
        }
        return found.values().iterator().next().index();
    }

    int indexOf(String phaseName, String ingredientName) {
        Objects.requireNonNull(phaseName, "phaseName");
        Map<String, FormulaLine> found = named(ingredientName);
        FormulaLine line = found.get(SubstanceName.normalise(phaseName));
        if (line == null) {
            throw new IllegalArgumentException("phase \"" + Excerpt.of(phaseName) + "\" has no line for "
                    + Excerpt.of(ingredientName) + ", which stands in phase "
                    + Excerpt.of(found.values().iterator().next().phase()));
        }
        return line.index();
    }

    private Map<String, FormulaLine> named(String ingredientName) {
        Objects.requireNonNull(ingredientName, "ingredientName");
        Map<String, FormulaLine> found = byName().get(SubstanceName.normalise(ingredientName));
        if (found == null) {
            throw new IllegalArgumentException("\"" + Excerpt.of(name) + "\" has no line for "
                    + Excerpt.of(ingredientName) + ": it has "
                    + Excerpt.ofAll(lines.stream().map(FormulaLine::name).toList()));
        }
        return found;
    }

    /**
     * The line that takes what is left.
     *
     * @return the q.s. line, if there is one
     */
    public Optional<FormulaLine> quantitySufficientLine() {
        return lines.stream().filter(FormulaLine::isQuantitySufficient).findFirst();
    }

    /**
     * What the formula comes down to in substances, each once, whatever spellings the lines use.
     *
     * @return the composition
     */
    public Composition composition() {
        Composition known = composition;
        if (known == null) {
            Sameness sorted = sameness;
            if (sorted == null) {
                sorted = Sameness.of(name, lines);
                sameness = sorted;
            }
            known = new Composition(sorted, lines);
            composition = known;
        }
        return known;
    }

    /**
     * The same formula with one material replaced by another of other strength, so that a substance keeps its share. The
     * line needs {@code w · old strength / new strength} of the new material; what that is more or less is taken from or
     * given to another line.
     *
     * @param line the line to replace
     * @param replacement the material to put there
     * @param substance the substance whose share is kept; both materials contain it
     * @param balancing the line that takes the difference, usually the water
     * @return the formula in percent, with exact shares
     * @throws IllegalArgumentException if a material lacks the substance, the two lines are the same, or nothing would be
     *     left on the balancing line
     */
    public Formula replacing(FormulaLine line, Ingredient replacement, Substance substance, FormulaLine balancing) {
        return Replacement.of(this, line, replacement, substance, balancing);
    }

    /**
     * As {@link #replacing(FormulaLine, Ingredient, Substance, FormulaLine)}, with the q.s. line taking the difference.
     *
     * @param line the line to replace
     * @param replacement the material to put there
     * @param substance the substance whose share is kept
     * @return the formula in percent, with exact shares
     * @throws IllegalArgumentException as there, or if no line is q.s.
     */
    public Formula replacing(FormulaLine line, Ingredient replacement, Substance substance) {
        FormulaLine rest = quantitySufficientLine()
                .orElseThrow(() -> new IllegalArgumentException(
                        "no line of \"" + Excerpt.of(name) + "\" is q.s.: name the line that takes the difference"));
        return replacing(line, replacement, substance, rest);
    }

    /**
     * The place of a line of this formula in every list that has one entry a line.
     *
     * @param line the line
     * @return its place, counted from 0
     * @throws IllegalArgumentException if it is a line of another formula
     */
    public int indexOf(FormulaLine line) {
        if (!has(line)) {
            throw new IllegalArgumentException(Excerpt.of(line) + " is not a line of \"" + Excerpt.of(name)
                    + "\": take the line from this formula");
        }
        return line.index();
    }

    /**
     * Whether a line is one of this formula.
     *
     * @param line the line
     * @return true if an equal line stands at its place
     */
    public boolean has(FormulaLine line) {
        int index = Objects.requireNonNull(line, "line").index();
        return index < lines.size() && lines.get(index).equals(line);
    }

    /**
     * The same lines in the same phases, written in masses: what is in a batch, a pot or a claim, to be checked against
     * limits or made again. A line of which there is nothing is left out, and so is a phase without lines.
     *
     * @param mass what there is of a line; 0 or below for nothing
     * @return the formula in masses
     * @throws IllegalArgumentException if there is nothing of any line
     */
    public Formula withMasses(Function<FormulaLine, Amount<Mass>> mass) {
        Objects.requireNonNull(mass, "mass");
        return inMasses(name)
                .linesOf(
                        this,
                        FormulaLine::ingredient,
                        line -> Optional.of(mass.apply(line))
                                .filter(there -> there.signum() > 0)
                                .map(LineAmount.Weight::new))
                .build();
    }

    @Serial
    private Object readResolve() {
        Formula read = new Formula(name, lines);
        read.phases = phasesOf(read.lines);
        return read;
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other == this || other instanceof Formula that && name.equals(that.name) && lines.equals(that.lines);
    }

    @Override
    public int hashCode() {
        return Objects.hash(name, lines);
    }

    /** The name and the lines with their amounts as written. */
    @Override
    public String toString() {
        return name + ": "
                + String.join("; ", lines.stream().map(FormulaLine::toString).toList());
    }
}
