package io.github.formulationmath.plan;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.formula.SubstanceName;
import io.github.formulationmath.number.Excerpt;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.Interval;
import io.github.formulationmath.quantity.MassFraction;
import io.github.formulationmath.reckoning.Kind;
import io.github.formulationmath.reckoning.Reckoning;
import io.github.formulationmath.reckoning.Source;
import io.github.formulationmath.reckoning.Symbol;
import io.github.formulationmath.reckoning.Wording;
import java.io.Serial;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import javax.measure.quantity.Dimensionless;
import org.jspecify.annotations.Nullable;

/**
 * How far each line may be off, as a share τ of the line's own amount: 5 % of a line at 2 % lets it lie between 1.9 % and
 * 2.1 %. One tolerance for all lines, others for a phase or a line.
 *
 * <p>0 % asks for exact amounts. 100 % or more is refused: a line could then be left out and still be within.
 *
 * <p>Example: {@code Tolerances.of("5 %").withPhase("oil", "3 %").withLine("Phenoxyethanol", "1 %")}.
 *
 * <p>Immutable and thread-safe.
 */
public final class Tolerances implements Serializable {

    @Serial
    private static final long serialVersionUID = 1L;

    private static final Symbol TOLERANCE = Symbol.of("τ", "tolerance", Kind.SHARE);
    private static final Symbol OWN_TOLERANCE = Symbol.of("τ", "own-tolerance", Kind.SHARE);

    private final MassFraction general;
    private final Map<String, MassFraction> byPhase;
    private final Map<String, MassFraction> byIngredient;
    /** Looked up again after a serializer that calls no constructor. */
    private transient volatile @Nullable Map<String, MassFraction> byNormalName;
    /** Likewise. */
    private transient volatile @Nullable Map<String, MassFraction> byNormalPhase;

    private Tolerances(MassFraction general, Map<String, MassFraction> phases, Map<String, MassFraction> ingredients) {
        this.general = general;
        this.byPhase = phases;
        this.byIngredient = ingredients;
        this.byNormalName = normal(ingredients);
        this.byNormalPhase = normal(phases);
    }

    private Map<String, MassFraction> byNormalName() {
        Map<String, MassFraction> known = byNormalName;
        if (known == null) {
            known = normal(byIngredient);
            byNormalName = known;
        }
        return known;
    }

    private Map<String, MassFraction> byNormalPhase() {
        Map<String, MassFraction> known = byNormalPhase;
        if (known == null) {
            known = normal(byPhase);
            byNormalPhase = known;
        }
        return known;
    }

    private static Map<String, MassFraction> normal(Map<String, MassFraction> asWritten) {
        Map<String, MassFraction> names = new HashMap<>();
        asWritten.forEach((name, own) -> names.put(SubstanceName.normalise(name), own));
        return names;
    }

    /**
     * One tolerance for every line.
     *
     * @param tolerance the share of its own amount by which a line may be off, at least 0 and below 100 %
     * @return the tolerances
     * @throws IllegalArgumentException if the tolerance is 100 %
     */
    public static Tolerances of(MassFraction tolerance) {
        return new Tolerances(requireBelowWhole(tolerance), Map.of(), Map.of());
    }

    /**
     * One tolerance for every line, as text.
     *
     * @param tolerance for example {@code "5 %"}
     * @return the tolerances
     * @throws IllegalArgumentException if the text is no share, or the tolerance 100 % or more
     */
    public static Tolerances of(String tolerance) {
        return of(MassFraction.parse(tolerance));
    }

    /**
     * The same with another tolerance for the lines of a phase.
     *
     * @param phaseName the name of the phase, in any spelling that {@link SubstanceName} forgives
     * @param tolerance for example {@code "3 %"}
     * @return the tolerances
     * @throws IllegalArgumentException if the text is no share, or the tolerance 100 % or more
     */
    public Tolerances withPhase(String phaseName, String tolerance) {
        Objects.requireNonNull(phaseName, "phaseName");
        return new Tolerances(general, with(without(byPhase, phaseName), phaseName, tolerance), byIngredient);
    }

    /**
     * The same with another tolerance for an ingredient, in whatever phases it stands; it goes before that of the phase.
     *
     * @param ingredientName the name of the ingredient, in any spelling that {@link SubstanceName} forgives
     * @param tolerance for example {@code "1 %"}
     * @return the tolerances
     * @throws IllegalArgumentException if the text is no share, or the tolerance 100 % or more
     */
    public Tolerances withLine(String ingredientName, String tolerance) {
        Objects.requireNonNull(ingredientName, "ingredientName");
        return new Tolerances(general, byPhase, with(without(byIngredient, ingredientName), ingredientName, tolerance));
    }

    /**
     * The tolerance of every line that has none of its own.
     *
     * @return the share of its own amount by which a line may be off
     */
    public MassFraction general() {
        return general;
    }

    /**
     * The tolerances set for phases.
     *
     * @return an unmodifiable map from the name of a phase to its tolerance, in the order set
     */
    public Map<String, MassFraction> byPhase() {
        return Collections.unmodifiableMap(byPhase);
    }

    /**
     * The tolerances set for ingredients.
     *
     * @return an unmodifiable map from the name of an ingredient to its tolerance, in the order set
     */
    public Map<String, MassFraction> byIngredient() {
        return Collections.unmodifiableMap(byIngredient);
    }

    /**
     * The tolerance of a line.
     *
     * @param line the line
     * @return the share of its own amount by which it may be off, at least 0 and below 1
     */
    public MassFraction forLine(FormulaLine line) {
        Objects.requireNonNull(line, "line");
        MassFraction own = byNormalName().get(line.ingredient().normalName());
        return own != null || byPhase.isEmpty()
                ? Objects.requireNonNullElse(own, general)
                : byNormalPhase().getOrDefault(SubstanceName.normalise(line.phase()), general);
    }

    /**
     * The same tolerances, once it is sure that every name in them is one of the formula.
     *
     * @param formula the formula
     * @return these tolerances
     * @throws IllegalArgumentException if a name is none of the formula
     */
    public Tolerances checkedFor(Formula formula) {
        Objects.requireNonNull(formula, "formula");
        return namesNothing() ? this : checkedFor(List.of(formula));
    }

    /**
     * The same tolerances, once it is sure that every name in them is one of some of the formulas.
     *
     * @param formulas the formulas
     * @return these tolerances
     * @throws IllegalArgumentException if a name is none of theirs
     */
    public Tolerances checkedFor(List<Formula> formulas) {
        if (Objects.requireNonNull(formulas, "formulas").stream().allMatch(Objects::nonNull) && namesNothing()) {
            return this;
        }
        String all = formulas.stream()
                .map(formula -> "\"" + formula.name() + "\"")
                .distinct()
                .collect(Collectors.joining(", "));
        Set<String> names = formulas.stream()
                .flatMap(formula -> formula.lines().stream())
                .map(line -> line.ingredient().normalName())
                .collect(Collectors.toSet());
        byIngredient.keySet().forEach(name -> {
            if (!names.contains(SubstanceName.normalise(name))) {
                throw new IllegalArgumentException("a tolerance is set for " + Excerpt.of(name)
                        + ", which is no line of " + all + ": name it as the formula does, or leave the tolerance out");
            }
        });
        byPhase.keySet().forEach(name -> {
            if (formulas.stream()
                    .flatMap(formula -> formula.phases().stream())
                    .noneMatch(phase -> SubstanceName.areAlike(phase.name(), name))) {
                throw new IllegalArgumentException(
                        "a tolerance is set for phase " + Excerpt.of(name) + ", which is no phase of " + all
                                + ": name it as the formula does, or leave the tolerance out");
            }
        });
        return this;
    }

    /**
     * The tolerance of a line, without the question where it stands.
     *
     * @param line the line
     * @return the tolerance as a fraction of the line
     */
    public Ratio fraction(FormulaLine line) {
        return namesNothing() ? general.fraction() : forLine(line).fraction();
    }

    /**
     * Whether a share that is sure to lie in an interval keeps the tolerance of its line.
     *
     * @param line the line
     * @param bounds where its share is sure to lie
     * @return within if all of the interval is, outside if none of it is; decided exactly
     */
    public ToleranceVerdict verdict(FormulaLine line, Interval<Amount<Dimensionless>> bounds) {
        Objects.requireNonNull(line, "line");
        Objects.requireNonNull(bounds, "bounds");
        return new LargestDeviation(line, bounds).decide(Reckoning.plain(), this);
    }

    private boolean namesNothing() {
        return byIngredient.isEmpty() && byPhase.isEmpty();
    }

    /**
     * The tolerance of a line, in any reckoning.
     *
     * @param r the arithmetic to use
     * @param line the line
     * @param <V> what a value is
     * @return τ as a given value
     */
    @SuppressWarnings("ReferenceEquality") // whether the line has the general tolerance, not merely an equal one
    public <V> V value(Reckoning<V> r, FormulaLine line) {
        MassFraction own = forLine(line);
        Source source = own.source();
        return own == general
                ? r.given(TOLERANCE, own.fraction(), source)
                : r.given(OWN_TOLERANCE, line, own.fraction(), source);
    }

    /**
     * 1 − τ: the least part of its amount that a line may come to.
     *
     * @param r the arithmetic to use
     * @param line the line
     * @param <V> what a value is
     * @return the least part
     */
    public <V> V least(Reckoning<V> r, FormulaLine line) {
        return r.difference(r.literal(1), value(r, line));
    }

    /**
     * 1 + τ: the most that a line may come to, as a part of its amount.
     *
     * @param r the arithmetic to use
     * @param line the line
     * @param <V> what a value is
     * @return the largest part
     */
    public <V> V most(Reckoning<V> r, FormulaLine line) {
        return r.sum(r.literal(1), value(r, line));
    }

    private static Map<String, MassFraction> with(Map<String, MassFraction> old, String name, String tolerance) {
        Map<String, MassFraction> all = new LinkedHashMap<>(old);
        all.put(name, requireBelowWhole(MassFraction.parse(tolerance)));
        return all;
    }

    /** The tolerances of other names: one that is set again, in whatever spelling, replaces the one before. */
    private static Map<String, MassFraction> without(Map<String, MassFraction> all, String again) {
        String replaced = SubstanceName.normalise(again);
        Map<String, MassFraction> others = new LinkedHashMap<>(all);
        others.keySet().removeIf(name -> SubstanceName.normalise(name).equals(replaced));
        return others;
    }

    @Serial
    private Object readResolve() {
        return new Tolerances(general, byPhase, byIngredient);
    }

    private static MassFraction requireBelowWhole(MassFraction tolerance) {
        if (Objects.requireNonNull(tolerance, "tolerance").equals(MassFraction.WHOLE)) {
            throw new IllegalArgumentException("tolerance is " + Excerpt.of(tolerance)
                    + ": it must be below 100 %, or a line left out would be within it");
        }
        return tolerance;
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Tolerances that
                && general.equals(that.general)
                && byPhase.equals(that.byPhase)
                && byIngredient.equals(that.byIngredient);
    }

    @Override
    public int hashCode() {
        return Objects.hash(general, byPhase, byIngredient);
    }

    /**
     * The tolerances in words.
     *
     * @param wording the words
     * @return {@code ± 2 %}, then each phase and ingredient that has one of its own
     */
    public String text(Wording wording) {
        List<String> all = new ArrayList<>();
        all.add(Objects.requireNonNull(wording, "wording").say("tolerance.general", general.toString()));
        byPhase.forEach((name, own) -> all.add(wording.say("tolerance.of-phase", name, own.toString())));
        byIngredient.forEach((name, own) -> all.add(wording.say("tolerance.of-line", name, own.toString())));
        return String.join(", ", all);
    }

    @Override
    public String toString() {
        StringBuilder text = new StringBuilder("± ").append(general);
        byPhase.forEach((name, own) ->
                text.append(", phase ").append(name).append(" ± ").append(own));
        byIngredient.forEach(
                (name, own) -> text.append(", ").append(name).append(" ± ").append(own));
        return text.toString();
    }
}
