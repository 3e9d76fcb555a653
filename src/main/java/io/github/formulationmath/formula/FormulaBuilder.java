package io.github.formulationmath.formula;

import io.github.formulationmath.number.Excerpt;
import io.github.formulationmath.number.NumberTextException;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.AmountFormat;
import io.github.formulationmath.quantity.MassFraction;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Volume;

/**
 * Lines of a formula being written down, phase by phase, all in percent, all in parts or all in masses, as it was started by
 * {@link Formula#inPercent}, {@link Formula#inParts} or {@link Formula#inMasses}. A line belongs to the phase opened last; a
 * formula without phases of its own has the single phase {@value #ONLY_PHASE}.
 *
 * <p>Percentages must add up to 100 %, or leave something for a q.s. line. Parts and masses are shares of their own sum,
 * exactly: 1 : 1 : 1 is three times 1/3. Masses beside a q.s. line are shares of the mass to make, {@link #buildToMake}.
 *
 * <p>Not thread-safe; every call returns this object.
 */
public final class FormulaBuilder {

    /** The name of the phase when none is opened. */
    public static final String ONLY_PHASE = "A";

    private final String name;
    private final Shares.Rule rule;
    private final List<Shares.Written> lines = new ArrayList<>();
    private final Map<String, String> phases = new HashMap<>();
    private final Map<String, Ingredient> namesInPhase = new HashMap<>();
    private String phase = "";
    private boolean hasQuantitySufficient;
    private AmountFormat format = AmountFormat.standard();

    FormulaBuilder(String name, Shares.Rule rule) {
        this.name = SubstanceName.require("name", name);
        this.rule = rule;
    }

    /**
     * Has the amounts that follow read as the people of a locale write them, 3,33 % in German. Only
     * the decimal mark differs; the formula that is built is the same.
     *
     * @param locale the locale
     * @return this
     */
    public FormulaBuilder inLocale(Locale locale) {
        format = AmountFormat.forLocale(Objects.requireNonNull(locale, "locale"));
        return this;
    }

    /**
     * Opens a phase; the lines that follow belong to it.
     *
     * @param phaseName its name, not used before in this formula in any spelling that {@link SubstanceName} forgives
     * @return this
     * @throws IllegalArgumentException if the phase before it has no line, or the name was used before
     */
    public FormulaBuilder phase(String phaseName) {
        SubstanceName.require("phaseName", phaseName);
        requireLinesInPhase();
        String before = phases.putIfAbsent(SubstanceName.normalise(phaseName), phaseName);
        if (before != null) {
            String written = before.equals(phaseName) ? "" : ", as \"" + Excerpt.of(before) + "\"";
            throw new IllegalArgumentException("phaseName is \"" + Excerpt.of(phaseName)
                    + "\", and so is an earlier phase" + written + ": give each its own name");
        }
        phase = phaseName;
        namesInPhase.clear();
        return this;
    }

    /**
     * Adds a line.
     *
     * @param ingredient the ingredient, not yet in this phase
     * @param amount a share in a formula in percent, parts in one in parts, a mass in one in masses, above 0; or q.s.
     * @return this
     * @throws IllegalArgumentException if the amount is of another kind or not above 0, if the ingredient stands in this
     *     phase already, or as {@link #quantitySufficient(Ingredient)}
     */
    public FormulaBuilder line(Ingredient ingredient, LineAmount amount) {
        Objects.requireNonNull(ingredient, "ingredient");
        if (Objects.requireNonNull(amount, "amount") instanceof LineAmount.QuantitySufficient) {
            return quantitySufficient(ingredient);
        }
        if (!rule.takes(amount)) {
            throw new IllegalArgumentException("the amount of " + Excerpt.of(ingredient) + " is " + Excerpt.of(amount)
                    + ": this formula is written in " + rule.words() + ", so write it like " + rule.example()
                    + ", or start the formula with Formula.inPercent, inParts or inMasses, whichever its amounts are");
        }
        if (Shares.number(amount).signum() <= 0) {
            throw new IllegalArgumentException("the amount of " + Excerpt.of(ingredient) + " is " + Excerpt.of(amount)
                    + ": it must be above 0, or the line left out");
        }
        return add(ingredient, amount);
    }

    /**
     * Adds a line of a formula in percent.
     *
     * @param ingredient the ingredient, not yet in this phase
     * @param share its mass fraction, above 0
     * @return this
     * @throws IllegalArgumentException as {@link #line(Ingredient, LineAmount)}
     */
    public FormulaBuilder line(Ingredient ingredient, MassFraction share) {
        return line(ingredient, new LineAmount.Share(share));
    }

    /**
     * Adds a line of a formula in parts.
     *
     * @param ingredient the ingredient, not yet in this phase
     * @param parts the number of parts, above 0
     * @return this
     * @throws IllegalArgumentException as {@link #line(Ingredient, LineAmount)}
     */
    public FormulaBuilder line(Ingredient ingredient, Ratio parts) {
        return line(ingredient, new LineAmount.Parts(parts));
    }

    /**
     * Adds a line of a formula in masses.
     *
     * @param ingredient the ingredient, not yet in this phase
     * @param mass its mass, above 0
     * @return this
     * @throws IllegalArgumentException as {@link #line(Ingredient, LineAmount)}
     */
    public FormulaBuilder line(Ingredient ingredient, Amount<Mass> mass) {
        return line(ingredient, new LineAmount.Weight(mass));
    }

    /**
     * Adds a line with its amount as text. In a formula in masses a volume, {@code "2 US tbsp"}, is taken as the mass that it
     * comes to by the density of the ingredient.
     *
     * @param ingredient the ingredient, not yet in this phase
     * @param amount the amount as this formula is written: {@code "2.50 %"}, {@code "1/2"} parts or {@code "12.5 g"}
     * @return this
     * @throws IllegalArgumentException as {@link #line(Ingredient, LineAmount)}, if the text is no such amount, or if it is a
     *     volume and the density of the ingredient is not known
     */
    public FormulaBuilder line(Ingredient ingredient, String amount) {
        Objects.requireNonNull(ingredient, "ingredient");
        LineAmount written = read(ingredient.name(), amount, text -> amount(ingredient, text));
        return line(ingredient, written);
    }

    private Optional<Amount<Volume>> volume(String text) {
        try {
            return Optional.of(format.parseVolume(text));
        } catch (NumberTextException e) {
            return Optional.empty();
        }
    }

    private LineAmount amount(Ingredient ingredient, String text) {
        try {
            return rule.read(text, format);
        } catch (NumberTextException e) {
            Optional<Amount<Volume>> volume = rule.isOfMasses() ? volume(text) : Optional.empty();
            Amount<Volume> poured = volume.orElseThrow(() -> e);
            return new LineAmount.Weight(ingredient
                    .density()
                    .orElseThrow(() -> new IllegalArgumentException(Excerpt.of(text)
                            + " is a volume, and the density of " + Excerpt.of(ingredient)
                            + " is not known: weigh it, or give it, Ingredient.of(\"…\").withDensity(\"0.92 g/mL\")"))
                    .massOf(poured));
        }
    }

    /**
     * Adds the lines of another formula, in their order and phases, with other amounts or of other materials. A phase none of
     * whose lines is taken is left out.
     *
     * @param formula the other formula
     * @param material what is weighed on each line that is taken
     * @param amount how much, as {@link #line(Ingredient, LineAmount)} takes it; empty for a line that is left out
     * @return this
     * @throws IllegalArgumentException as {@link #line(Ingredient, LineAmount)} and {@link #phase}
     */
    public FormulaBuilder linesOf(
            Formula formula,
            Function<FormulaLine, Ingredient> material,
            Function<FormulaLine, Optional<LineAmount>> amount) {
        Objects.requireNonNull(material, "material");
        Objects.requireNonNull(amount, "amount");
        String open = "";
        for (FormulaLine line : Objects.requireNonNull(formula, "formula").lines()) {
            Optional<LineAmount> taken = amount.apply(line);
            if (taken.isPresent()) {
                if (!line.phase().equals(open)) {
                    open = line.phase();
                    phase(open);
                }
                line(material.apply(line), taken.get());
            }
        }
        return this;
    }

    /**
     * Adds a line for a single substance by name.
     *
     * @param ingredientName the name of the ingredient and its substance
     * @param amount the amount as this formula is written: {@code "2.50 %"}, {@code "1/2"} parts or {@code "12.5 g"}
     * @return this
     * @throws IllegalArgumentException as {@link #line(Ingredient, LineAmount)}, or if the text is no such amount
     */
    public FormulaBuilder line(String ingredientName, String amount) {
        return line(Ingredient.of(ingredientName), amount);
    }

    /**
     * Adds the line that takes as much as suffices to make up the whole: 100 %, or the mass to make.
     *
     * @param ingredient the ingredient
     * @return this
     * @throws IllegalArgumentException if there is such a line already, the ingredient stands in this phase already, or the
     *     formula is in parts, which have no whole to fill up to
     */
    public FormulaBuilder quantitySufficient(Ingredient ingredient) {
        Objects.requireNonNull(ingredient, "ingredient");
        if (rule == Shares.Rule.PARTS) {
            throw new IllegalArgumentException(
                    Excerpt.of(ingredient)
                            + " cannot be q.s. in a formula in parts: parts have no whole to fill up to; give it its own parts");
        }
        if (hasQuantitySufficient) {
            throw new IllegalArgumentException(
                    Excerpt.of(ingredient) + " would be a second q.s. line: only one line can take what is left");
        }
        add(ingredient, new LineAmount.QuantitySufficient());
        hasQuantitySufficient = true;
        return this;
    }

    /**
     * Adds by name the line that takes as much as suffices to make up the whole.
     *
     * @param ingredientName the name of the ingredient, a single substance of that name
     * @return this
     * @throws IllegalArgumentException as {@link #quantitySufficient(Ingredient)}
     */
    public FormulaBuilder quantitySufficient(String ingredientName) {
        return quantitySufficient(Ingredient.of(ingredientName));
    }

    /**
     * Ends the formula. Percentages must add up to exactly 100 %, or leave something for the q.s. line; parts and masses are
     * shares of their sum.
     *
     * @return the formula
     * @throws FormulaTotalException if percentages do not; the message gives the sum and the difference
     * @throws IllegalArgumentException if there is no line, the last phase is empty, or a q.s. line stands among masses: say
     *     with {@link #buildToMake} what it fills up to
     */
    public Formula build() {
        if (rule == Shares.Rule.MASSES && hasQuantitySufficient) {
            throw new IllegalArgumentException(
                    "a q.s. line among masses needs the mass to make: call buildToMake(mass) instead of build()");
        }
        return build(rule, Ratio.ONE);
    }

    /**
     * Ends a formula in percent and divides every line by the sum of all, so that they make up 100 % whatever they add up to.
     *
     * @return the formula
     * @throws IllegalArgumentException if there is no line, the last phase is empty, or there is a q.s. line, which leaves
     *     nothing to normalise; or if the formula is in parts or masses, which are shares of their sum in any case
     */
    public Formula buildNormalised() {
        requireRule(Shares.Rule.PERCENT, "buildNormalised()");
        if (hasQuantitySufficient) {
            throw new IllegalArgumentException(
                    "a formula with a q.s. line makes up 100 % by itself: call build(), or give the line a share");
        }
        return build(Shares.Rule.NORMALISED, Ratio.ONE);
    }

    /**
     * Ends a formula in masses whose q.s. line fills up to a stated mass.
     *
     * @param whole the mass to make, above what the other lines add up to
     * @return the formula
     * @throws FormulaTotalException if nothing is left for the q.s. line
     * @throws IllegalArgumentException if the last phase is empty, no line is q.s., or the formula is in percent or parts
     */
    public Formula buildToMake(Amount<Mass> whole) {
        Objects.requireNonNull(whole, "whole");
        requireRule(Shares.Rule.MASSES, "buildToMake(" + Excerpt.of(whole) + ")");
        if (!hasQuantitySufficient) {
            throw new IllegalArgumentException(
                    "no line is q.s., so nothing can fill up to " + Excerpt.of(whole) + ": call build()");
        }
        if (whole.signum() <= 0) {
            throw new IllegalArgumentException("whole is " + Excerpt.of(whole) + ": it must be above 0");
        }
        return build(Shares.Rule.MASSES_TO_MAKE, whole.canonical());
    }

    private void requireRule(Shares.Rule needed, String call) {
        if (rule != needed) {
            throw new IllegalArgumentException(call + " is for a formula in " + needed.words() + ", and \""
                    + Excerpt.of(name) + "\" is one in " + rule.words() + ": call build()");
        }
    }

    private FormulaBuilder add(Ingredient ingredient, LineAmount amount) {
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
        lines.add(new Shares.Written(lines.size(), phase, ingredient, amount));
        return this;
    }

    /** The amount of a line or part read from text; what cannot be read is refused with the name of the line. */
    static <T> T read(String name, String text, Function<String, T> reader) {
        try {
            return reader.apply(text);
        } catch (NumberTextException e) {
            throw e.at(place(name));
        } catch (IllegalArgumentException e) {
            throw new IllegalArgumentException(place(name) + ": " + e.getMessage(), e);
        }
    }

    private static String place(String name) {
        return "the amount of " + Excerpt.of(name);
    }

    private Formula build(Shares.Rule whole, Ratio toMake) {
        if (lines.isEmpty()) {
            throw new IllegalArgumentException("the formula \"" + name + "\" has no lines: add at least one");
        }
        requireLinesInPhase();
        return new Formula(name, Shares.of(lines, whole, toMake).resolved(name));
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
