package io.github.formulationmath.record;

import io.github.formulationmath.number.LinearProgram;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.number.StepProgram;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.working.Explained;
import io.github.formulationmath.working.Kind;
import io.github.formulationmath.working.Phrase;
import io.github.formulationmath.working.Reckoning;
import io.github.formulationmath.working.Source;
import io.github.formulationmath.working.Subject;
import io.github.formulationmath.working.Symbol;
import java.io.Serial;
import java.io.Serializable;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import javax.measure.quantity.Mass;
import org.jspecify.annotations.Nullable;

/**
 * Additions in whole steps of the display, checked exactly against what the correction has to reach.
 *
 * <p>Example: 2.76… g on a display of 0.1 g become 2.8 g; 2.7 g would leave the line outside.
 *
 * <p>Immutable and thread-safe.
 */
public final class DisplayedAdditions implements Explained, Serializable {

    @Serial
    private static final long serialVersionUID = 1L;

    private static final Symbol STEPS = Symbol.of("n", "addition-steps", Kind.NUMBER);
    private static final Symbol STEP = Symbol.of("d", "readability", Kind.MASS);
    private static final Symbol SHOWN = Symbol.of("x", "displayed-addition", Kind.MASS);
    private static final Symbol TOTAL = Symbol.of("X", "total-addition", Kind.MASS);

    /** How good the additions are. */
    public enum Quality {
        /** Within all tolerances and caps, and no smaller ones in whole steps are. */
        SMALLEST,
        /** Within all tolerances and caps; smaller ones may be, they were not searched for or could not be ruled out. */
        WITHIN,
        /** Not within, and no additions in whole steps are. */
        NONE_WITHIN,
        /** Not within; others may be: they were not searched for, or the search was broken off. */
        NOT_WITHIN
    }

    private final MadeBatch made;
    private final CorrectionRules rules;
    /** Whole multiples of the steps of the displays. */
    private final List<Ratio> grams;

    private final Quality quality;

    private DisplayedAdditions(MadeBatch made, CorrectionRules rules, List<Ratio> grams, Quality quality) {
        this.made = made;
        this.rules = rules;
        this.grams = List.copyOf(grams);
        this.quality = quality;
    }

    /** The smallest additions in steps, if there are any and they are found; else the nearest to exact ones. */
    static DisplayedAdditions smallest(MadeBatch made, CorrectionRules rules, List<Ratio> grams) {
        StepProgram program = new StepProgram(rows(made, rules), steps(made));
        StepProgram.Answer answer = program.solve(rules.roomFor(made).minus(made.result()));
        if (answer.values().isPresent()) {
            Quality quality = answer.isCertain() ? Quality.SMALLEST : Quality.WITHIN;
            return new DisplayedAdditions(made, rules, answer.values().get(), quality);
        }
        DisplayedAdditions nearest = nearest(made, rules, grams);
        return answer.isCertain() ? new DisplayedAdditions(made, rules, nearest.grams, Quality.NONE_WITHIN) : nearest;
    }

    /**
     * Each addition rounded to the nearest step, half to even; where that would be more than there is of it, or than there
     * is room for, to the step below, those first that were rounded up most.
     */
    static DisplayedAdditions nearest(MadeBatch made, CorrectionRules rules, List<Ratio> exact) {
        List<Ratio> steps = steps(made);
        List<Ratio> shown = new ArrayList<>();
        for (int j = 0; j < exact.size(); j++) {
            shown.add(steps.get(j).times(exact.get(j).dividedBy(steps.get(j)).toWhole(RoundingMode.HALF_EVEN)));
        }
        for (LinearProgram.Row row :
                CorrectionPlan.program(made, PotConditions.ofBench(made, rules)).rows()) {
            lower(row, shown, exact, steps);
        }
        boolean within = rows(made, rules).stream().allMatch(row -> row.isKeptBy(shown));
        return new DisplayedAdditions(made, rules, shown, within ? Quality.WITHIN : Quality.NOT_WITHIN);
    }

    private static void lower(LinearProgram.Row row, List<Ratio> shown, List<Ratio> exact, List<Ratio> steps) {
        List<Integer> roundedUp = IntStream.range(0, exact.size())
                .boxed()
                .filter(j -> !row.coefficients().get(j).isZero())
                .filter(j -> shown.get(j).compareTo(exact.get(j)) > 0)
                .sorted(Comparator.comparing((Integer j) -> exact.get(j).minus(shown.get(j))))
                .toList();
        for (int j : roundedUp) {
            if (row.isKeptBy(shown)) {
                return;
            }
            shown.set(j, shown.get(j).minus(steps.get(j)));
        }
    }

    /** The step of the display on which each line is added. */
    private static List<Ratio> steps(MadeBatch made) {
        return Collections.nCopies(
                made.lines().size(), made.plan().bench().balance().gramsPerDivision());
    }

    /** What additions in grams have to keep. */
    private static List<LinearProgram.Row> rows(MadeBatch made, CorrectionRules rules) {
        List<PotCondition> conditions =
                PotConditions.of(made, rules, CorrectionPlan.allowances(rules), rules.numberedCaps());
        return CorrectionPlan.program(made, conditions).rows();
    }

    /**
     * How good the additions are.
     *
     * @return the quality
     */
    public Quality quality() {
        return quality;
    }

    /**
     * Whether every line is within its tolerance and every cap kept after them, the readings taken as they are.
     *
     * @return true if so
     */
    public boolean isWithin() {
        return quality == Quality.SMALLEST || quality == Quality.WITHIN;
    }

    /**
     * What the display must read for each addition, tared before it.
     *
     * @return the additions above 0, in the unit of the balance
     */
    public List<LineAddition> additions() {
        Balance balance = made.plan().bench().balance();
        List<LineAddition> additions = new ArrayList<>();
        for (int i = 0; i < grams.size(); i++) {
            if (!grams.get(i).isZero()) {
                Amount<Mass> shown = balance.readability().times(grams.get(i).dividedBy(balance.gramsPerDivision()));
                additions.add(LineAddition.of(made.lines().get(i).line(), shown));
            }
        }
        return List.copyOf(additions);
    }

    /**
     * The mass of all additions.
     *
     * @return the total in the unit of the balance
     */
    public Amount<Mass> total() {
        Balance balance = made.plan().bench().balance();
        Ratio total = grams.stream().reduce(Ratio.ZERO, Ratio::plus);
        return balance.readability().times(total.dividedBy(balance.gramsPerDivision()));
    }

    /**
     * The pot after the additions.
     *
     * @return what will be in the pot
     */
    public MadeBatch after() {
        return made.plus(additions());
    }

    /**
     * The line that is furthest off after the additions, for its tolerance.
     *
     * @return its check; empty if all lines are within
     */
    public Optional<LineCheck> furthestOutside() {
        @Nullable LineCheck worst = null;
        for (LineCheck check : after().check(rules.tolerances())) {
            boolean outside = !check.allowed().contains(check.line().share().fraction());
            if (outside
                    && (worst == null
                            || check.deviation()
                                            .abs()
                                            .compareTo(worst.deviation().abs())
                                    > 0)) {
                worst = check;
            }
        }
        return Optional.ofNullable(worst);
    }

    @Override
    public Phrase question() {
        return Phrase.of("question.displayed-addition");
    }

    @Override
    public Ratio result() {
        return derive(Reckoning.plain());
    }

    @Override
    public <V> V derive(Reckoning<V> r) {
        Ratio grid = made.plan().bench().balance().gramsPerDivision();
        V step = r.given(STEP, grid, Source.user());
        List<V> shown = new ArrayList<>();
        for (int i : IntStream.range(0, grams.size()).toArray()) {
            if (!grams.get(i).isZero()) {
                Subject line = made.lines().get(i).line();
                Ratio count = grams.get(i).dividedBy(grid);
                shown.add(r.named(SHOWN, line, r.product(r.given(STEPS, line, count, Source.user()), step)));
            }
        }
        return r.named(TOTAL, shown.isEmpty() ? r.product(r.literal(0), step) : r.sum(shown));
    }

    @Override
    public String toString() {
        return quality + " " + additions();
    }
}
