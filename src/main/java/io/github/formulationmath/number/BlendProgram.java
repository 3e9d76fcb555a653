package io.github.formulationmath.number;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * Parts that are blended to a value: {@code Σ x = whole}, and {@code t ≤ (Σ a·x)/whole ≤ u} whatever each value a is within its
 * bounds, every x at least 0 and within bounds of its own. Strengths of solutions and values of emulsifiers are blended alike.
 *
 * <p>With two parts and one target the rule of alligation is all there is: {@link #share}.
 *
 * <p>Example, by hand: 10 of a value 30 from parts of 50 and 0 are 6 and 4.
 *
 * <p>Immutable and thread-safe.
 *
 * @param whole what all parts make together, above 0
 * @param parts what is blended
 * @param target the bounds of the blend's value, both present
 */
public record BlendProgram(Ratio whole, List<Part> parts, Bounds target) {

    /**
     * Something to blend.
     *
     * @param value the bounds of its value, both present
     * @param taken how much of it there may be, the lower bound at least 0 or absent
     */
    public record Part(Bounds value, Bounds taken) {

        /**
         * Checks presence.
         *
         * @param value the bounds of its value
         * @param taken how much of it there may be
         */
        public Part {
            Objects.requireNonNull(value, "value");
            Objects.requireNonNull(taken, "taken");
        }

        /** The same part as if its value were the middle of its bounds. */
        Part middle() {
            return new Part(Bounds.point(low(value).plus(high(value)).dividedBy(2)), taken);
        }
    }

    /**
     * Copies the parts.
     *
     * @param whole what all parts make together, above 0
     * @param parts what is blended
     * @param target the bounds of the blend's value
     */
    public BlendProgram {
        Objects.requireNonNull(whole, "whole");
        parts = List.copyOf(Objects.requireNonNull(parts, "parts"));
        Objects.requireNonNull(target, "target");
    }

    /**
     * The same question, each value taken as the middle of its bounds.
     *
     * @return the question of the middles
     */
    public BlendProgram withMiddles() {
        return new BlendProgram(whole, parts.stream().map(Part::middle).toList(), target);
    }

    /**
     * The cheapest blend.
     *
     * @param costs what one of each part costs, at least 0
     * @return the blend, or that there is none
     */
    public LinearProgram.Answer cheapest(List<Ratio> costs) {
        return new LinearProgram(costs, rows(target)).solve();
    }

    /**
     * How much of a part there may be in any blend that keeps the target.
     *
     * @param part its place, from 0
     * @return the least and the most; empty if no blend keeps the target
     */
    public Optional<Bounds> range(int part) {
        return cheapest(one(part)) instanceof LinearProgram.Answer.Optimal least
                        && cheapest(othersThan(part)) instanceof LinearProgram.Answer.Optimal rest
                ? Optional.of(Bounds.closed(least.cost(), whole.minus(rest.cost())))
                : Optional.empty();
    }

    /**
     * The values that blends of this whole can have, whatever the target is: the least value of the weakest to the greatest of the
     * strongest.
     *
     * @return the bounds; empty if the parts cannot make the whole
     */
    public Optional<Bounds> reachable() {
        Ratio top = parts.stream().map(part -> high(part.value())).reduce(Ratio.ZERO, Ratio::max);
        List<Ratio> values = parts.stream().map(part -> low(part.value())).toList();
        List<Ratio> shortfalls =
                parts.stream().map(part -> top.minus(high(part.value()))).toList();
        List<LinearProgram.Row> rows = rows(Bounds.all());
        return new LinearProgram(values, rows).solve() instanceof LinearProgram.Answer.Optimal least
                        && new LinearProgram(shortfalls, rows).solve() instanceof LinearProgram.Answer.Optimal most
                ? Optional.of(Bounds.closed(
                        least.cost().dividedBy(whole), top.minus(most.cost().dividedBy(whole))))
                : Optional.empty();
    }

    /**
     * A blend of whole steps that keeps the target.
     *
     * @param step such as the step of a display, above 0
     * @return the blend, if there is one and it was found
     */
    public StepProgram.Answer inSteps(Ratio step) {
        return new StepProgram(rows(target), Collections.nCopies(parts.size(), step)).solve(whole);
    }

    /**
     * Whether amounts keep the whole, the target and the bounds of every part.
     *
     * @param amounts one per part, at least 0
     * @return true if they do
     */
    public boolean isKeptBy(List<Ratio> amounts) {
        return rows(target).stream().allMatch(row -> row.isKeptBy(amounts));
    }

    /**
     * The value of a blend.
     *
     * @param amounts one per part, together the whole
     * @return its bounds over those of the parts
     */
    public Bounds valueOf(List<Ratio> amounts) {
        Ratio least = Ratio.ZERO;
        Ratio most = Ratio.ZERO;
        Ratio all = Ratio.ZERO;
        for (int i = 0; i < parts.size(); i++) {
            least = least.plus(amounts.get(i).times(low(parts.get(i).value())));
            most = most.plus(amounts.get(i).times(high(parts.get(i).value())));
            all = all.plus(amounts.get(i));
        }
        return Bounds.closed(least.dividedBy(all), most.dividedBy(all));
    }

    private List<LinearProgram.Row> rows(Bounds values) {
        List<LinearProgram.Row> rows = new ArrayList<>();
        List<Ratio> ones = Collections.nCopies(parts.size(), Ratio.ONE);
        rows.add(new LinearProgram.Row(ones, whole));
        rows.add(atMost(ones, whole));
        values.lower()
                .ifPresent(least -> rows.add(new LinearProgram.Row(
                        parts.stream().map(part -> low(part.value())).toList(), least.times(whole))));
        values.upper()
                .ifPresent(most -> rows.add(
                        atMost(parts.stream().map(part -> high(part.value())).toList(), most.times(whole))));
        for (int i = 0; i < parts.size(); i++) {
            List<Ratio> one = one(i);
            parts.get(i).taken().lower().ifPresent(least -> rows.add(new LinearProgram.Row(one, least)));
            parts.get(i).taken().upper().ifPresent(most -> rows.add(atMost(one, most)));
        }
        return rows;
    }

    private static LinearProgram.Row atMost(List<Ratio> coefficients, Ratio most) {
        return new LinearProgram.Row(
                coefficients.stream().map(Ratio::unaryMinus).toList(), most.unaryMinus());
    }

    private List<Ratio> one(int part) {
        return costs(part, Ratio.ONE, Ratio.ZERO);
    }

    private List<Ratio> othersThan(int part) {
        return costs(part, Ratio.ZERO, Ratio.ONE);
    }

    private List<Ratio> costs(int part, Ratio itself, Ratio others) {
        List<Ratio> costs = new ArrayList<>(Collections.nCopies(parts.size(), others));
        costs.set(part, itself);
        return costs;
    }

    /**
     * The rule of alligation: the share {@code (T − L)/(H − L)} of the stronger of two. It falls with both values and rises with the
     * target, so that the ends are corners as long as every weaker value lies at or below every target, and that at or below every
     * stronger value.
     *
     * @param weaker the bounds of L, both present
     * @param stronger the bounds of H, both present
     * @param target the bounds of T, both present
     * @return the bounds of the share; empty if some target is out of reach of some values, or all are one value
     */
    public static Optional<Bounds> share(Bounds weaker, Bounds stronger, Bounds target) {
        boolean always =
                high(Objects.requireNonNull(weaker, "weaker")).compareTo(low(Objects.requireNonNull(target, "target")))
                                <= 0
                        && high(target).compareTo(low(Objects.requireNonNull(stronger, "stronger"))) <= 0
                        && high(weaker).compareTo(low(stronger)) < 0;
        return always
                ? Optional.of(Bounds.closed(
                        share(high(weaker), high(stronger), low(target)),
                        share(low(weaker), low(stronger), high(target))))
                : Optional.empty();
    }

    private static Ratio share(Ratio weaker, Ratio stronger, Ratio target) {
        return target.minus(weaker).dividedBy(stronger.minus(weaker));
    }

    private static Ratio low(Bounds bounds) {
        return bounds.lower().orElseThrow();
    }

    private static Ratio high(Bounds bounds) {
        return bounds.upper().orElseThrow();
    }
}
