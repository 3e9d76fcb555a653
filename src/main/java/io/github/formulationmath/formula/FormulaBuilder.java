package io.github.formulationmath.formula;

import io.github.formulationmath.number.Excerpt;
import io.github.formulationmath.number.NumberTextException;
import io.github.formulationmath.number.Ratio;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Function;

/**
 * Lines of a formula being written down, phase by phase. A line belongs to the phase opened last; a formula without
 * phases of its own has the single phase {@value #ONLY_PHASE}. Not thread-safe; every call returns this object.
 *
 * @param <B> the builder itself
 */
public abstract sealed class FormulaBuilder<B extends FormulaBuilder<B>>
        permits PercentFormulaBuilder, PartsFormulaBuilder, MassFormulaBuilder {

    /** The name of the phase when none is opened. */
    public static final String ONLY_PHASE = "A";

    private final String name;
    private final List<DraftLine> lines = new ArrayList<>();
    private final Map<String, String> phases = new HashMap<>();
    private final Map<String, Ingredient> namesInPhase = new HashMap<>();
    private String phase = "";
    private boolean hasQuantitySufficient;

    FormulaBuilder(String name) {
        this.name = Names.require("name", name);
    }

    /**
     * Opens a phase; the lines that follow belong to it.
     *
     * @param phaseName its name, not used before in this formula in any spelling that {@link SubstanceName} forgives
     * @return this
     * @throws IllegalArgumentException if the phase before it has no line, or the name was used before
     */
    public B phase(String phaseName) {
        Names.require("phaseName", phaseName);
        requireLinesInPhase();
        String before = phases.putIfAbsent(SubstanceName.normalise(phaseName), phaseName);
        if (before != null) {
            String written = before.equals(phaseName) ? "" : ", as \"" + Excerpt.of(before) + "\"";
            throw new IllegalArgumentException("phaseName is \"" + Excerpt.of(phaseName)
                    + "\", and so is an earlier phase" + written + ": give each its own name");
        }
        phase = phaseName;
        namesInPhase.clear();
        return self();
    }

    /**
     * Adds the line that takes as much as suffices to make up the whole.
     *
     * @param ingredient the ingredient
     * @return this
     * @throws IllegalArgumentException if there is such a line already, or the ingredient stands in this phase already
     */
    public B quantitySufficient(Ingredient ingredient) {
        if (hasQuantitySufficient) {
            throw new IllegalArgumentException(
                    Excerpt.of(ingredient) + " would be a second q.s. line: only one line can take what is left");
        }
        add(ingredient, new LineAmount.QuantitySufficient());
        hasQuantitySufficient = true;
        return self();
    }

    /**
     * Adds by name the line that takes as much as suffices to make up the whole.
     *
     * @param ingredientName the name of the ingredient, a single substance of that name
     * @return this
     * @throws IllegalArgumentException as {@link #quantitySufficient(Ingredient)}
     */
    public B quantitySufficient(String ingredientName) {
        return quantitySufficient(Ingredient.of(ingredientName));
    }

    /**
     * Ends the formula.
     *
     * @return the formula
     * @throws IllegalArgumentException if there is no line, or the last phase is empty
     * @throws FormulaTotalException if the lines do not make up the whole
     */
    public abstract Formula build();

    abstract B self();

    final void add(Ingredient ingredient, LineAmount amount) {
        Objects.requireNonNull(ingredient, "ingredient");
        if (phase.isEmpty()) {
            phase(ONLY_PHASE);
        }
        Ingredient before = namesInPhase.putIfAbsent(ingredient.normalName(), ingredient);
        if (before != null) {
            String written =
                    before.name().equals(ingredient.name()) ? "" : ", the first time as \"" + Excerpt.of(before) + "\"";
            throw new IllegalArgumentException(Excerpt.of(ingredient) + " stands twice in phase " + Excerpt.of(phase)
                    + written + ": add the two lines up, or put one into another phase");
        }
        lines.add(new DraftLine(lines.size() + 1, phase, ingredient, amount));
    }

    /** The amount of a line read from text; what cannot be read is refused with the name of the line. */
    static <T> T read(Ingredient ingredient, String text, Function<String, T> reader) {
        Objects.requireNonNull(ingredient, "ingredient");
        return read(ingredient.name(), text, reader);
    }

    /** As {@link #read(Ingredient, String, Function)}, for a line or a part by name. */
    static <T> T read(String name, String text, Function<String, T> reader) {
        String place = "the amount of " + Excerpt.of(name);
        try {
            return reader.apply(text);
        } catch (NumberTextException e) {
            throw e.at(place);
        } catch (IllegalArgumentException e) {
            throw new IllegalArgumentException(place + ": " + e.getMessage(), e);
        }
    }

    final void requirePositive(Ingredient ingredient, int sign, Object amount) {
        Objects.requireNonNull(ingredient, "ingredient");
        if (sign <= 0) {
            throw new IllegalArgumentException("the amount of " + Excerpt.of(ingredient) + " is " + Excerpt.of(amount)
                    + ": it must be above 0, or the line left out");
        }
    }

    final boolean hasQuantitySufficient() {
        return hasQuantitySufficient;
    }

    final Formula build(WholeRule rule, Ratio toMake) {
        if (lines.isEmpty()) {
            throw new IllegalArgumentException("the formula \"" + name + "\" has no lines: add at least one");
        }
        requireLinesInPhase();
        return Formula.resolve(name, new Shares(List.copyOf(lines), rule, toMake));
    }

    /** The name, and how far the formula is; not the formula itself, which {@link #build()} makes. */
    @Override
    public String toString() {
        return name + ", not built yet: " + lines;
    }

    private void requireLinesInPhase() {
        if (!phase.isEmpty() && namesInPhase.isEmpty()) {
            throw new IllegalArgumentException(
                    "phase \"" + Excerpt.of(phase) + "\" has no lines: add one or leave the phase out");
        }
    }
}
