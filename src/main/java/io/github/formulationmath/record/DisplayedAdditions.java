package io.github.formulationmath.record;

import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
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
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import javax.measure.quantity.Mass;
import org.jspecify.annotations.Nullable;

/**
 * Additions in whole steps of a display, each of the balance of its line ({@link MadeLine#balance()}) and weighed in one go,
 * checked exactly against what the correction has to reach.
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
    private final List<Ratio> steps;
    private final Quality quality;

    DisplayedAdditions(MadeBatch made, CorrectionRules rules, List<Ratio> steps, Quality quality) {
        this.made = made;
        this.rules = rules;
        this.steps = List.copyOf(steps);
        this.quality = quality;
    }

    /** Each addition rounded to the nearest step of the balance of its line, half to even. */
    static DisplayedAdditions nearest(MadeBatch made, CorrectionRules rules, List<Ratio> grams) {
        LineSteps lines = new LineSteps(made);
        List<Ratio> steps = IntStream.range(0, grams.size())
                .mapToObj(i -> lines.inSteps(i, grams.get(i), RoundingMode.HALF_EVEN))
                .toList();
        boolean within = isWithin(made, rules, steps);
        return new DisplayedAdditions(made, rules, steps, within ? Quality.WITHIN : Quality.NOT_WITHIN);
    }

    DisplayedAdditions with(Quality known) {
        return new DisplayedAdditions(made, rules, steps, known);
    }

    /** Whether additions in steps keep every condition, decided exactly. */
    static boolean isWithin(MadeBatch made, CorrectionRules rules, List<Ratio> steps) {
        List<Condition> conditions =
                AdditionConditions.of(made, rules, CorrectionPlan.allowances(rules), rules.numberedCaps());
        LineSteps lines = new LineSteps(made);
        List<Ratio> grams = lines.grams(steps);
        List<Ratio> ones = java.util.Collections.nCopies(grams.size(), Ratio.ONE);
        return lines.areCarried(steps)
                && LinearProof.program(conditions, ones).rows().stream()
                        .allMatch(row -> row.at(grams).compareTo(row.least()) >= 0);
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
     * What the display must read for each addition, tared before it, on the balance of its line ({@link MadeLine#balance()}).
     *
     * @return the additions above 0, each in the unit of its balance
     */
    public List<LineAddition> additions() {
        LineSteps lines = new LineSteps(made);
        List<LineAddition> additions = new ArrayList<>();
        for (int i = 0; i < steps.size(); i++) {
            if (!steps.get(i).isZero()) {
                additions.add(lines.shown(i, steps.get(i)));
            }
        }
        return List.copyOf(additions);
    }

    /**
     * The mass of all additions.
     *
     * @return the total in the unit of the balance of the bench
     */
    public Amount<Mass> total() {
        return new LineSteps(made).total(steps);
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
        LineSteps lines = new LineSteps(made);
        List<V> shown = new ArrayList<>();
        for (int i : IntStream.range(0, steps.size()).toArray()) {
            if (!steps.get(i).isZero()) {
                Subject line = made.lines().get(i).line();
                V count = r.given(STEPS, line, steps.get(i), Source.user());
                shown.add(r.named(SHOWN, line, r.product(count, step(r, lines, i))));
            }
        }
        return r.named(TOTAL, shown.isEmpty() ? r.product(r.literal(0), step(r, lines, 0)) : r.sum(shown));
    }

    /** One d for all, or one for each line where they differ. */
    private static <V> V step(Reckoning<V> r, LineSteps lines, int line) {
        return lines.areAllAlike()
                ? r.given(STEP, lines.step(line), Source.user())
                : r.given(STEP, lines.subject(line), lines.step(line), Source.user());
    }

    @Override
    public String toString() {
        return quality + " " + additions();
    }
}
