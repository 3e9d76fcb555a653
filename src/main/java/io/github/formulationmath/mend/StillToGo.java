package io.github.formulationmath.mend;

import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.number.NumberText;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.plan.PlannedLine;
import io.github.formulationmath.plan.Tolerances;
import io.github.formulationmath.pot.LineAddition;
import io.github.formulationmath.pot.LineCheck;
import io.github.formulationmath.pot.MadeBatch;
import io.github.formulationmath.pot.Reading;
import io.github.formulationmath.pot.Readings;
import io.github.formulationmath.weighing.WeighingMethod;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;

/**
 * A batch in the middle of which something went wrong: what comes of it if the rest is poured as planned, and what to pour
 * instead. Additions to lines that are still to come are all of them; additions to lines that are in are more of them.
 *
 * <p>Example: {@code StillToGo.of(Readings.upTo(plan, "Glycerin", "3.2 g"), Tolerances.of("5 %"))}.
 *
 * <p>Immutable and thread-safe.
 */
public final class StillToGo {

    private final Readings begun;
    private final CorrectionRules rules;

    private StillToGo(Readings begun, CorrectionRules rules) {
        this.begun = begun;
        this.rules = rules;
    }

    /**
     * What to do about a batch that is begun.
     *
     * @param begun the readings so far
     * @param tolerances how far each line may be off in the end
     * @return the answers
     */
    public static StillToGo of(Readings begun, Tolerances tolerances) {
        return of(begun, CorrectionRules.within(tolerances));
    }

    /**
     * What to do about a batch that is begun, with caps, stocks, or lines that nothing can be added to.
     *
     * @param begun the readings so far
     * @param rules what to reach, and what stands in the way
     * @return the answers
     */
    public static StillToGo of(Readings begun, CorrectionRules rules) {
        return new StillToGo(Objects.requireNonNull(begun, "begun"), Objects.requireNonNull(rules, "rules"));
    }

    /**
     * What is in the pot so far.
     *
     * @return the pot; lines still to come have a mass of 0
     * @throws IllegalArgumentException if nothing is in it yet
     */
    public MadeBatch soFar() {
        return MadeBatch.of(begun);
    }

    /**
     * The pot in the end, if every line that is still to come reads what was planned for it.
     *
     * @return what will be in the pot
     * @throws IllegalArgumentException if nothing is in it yet
     */
    public MadeBatch asPlanned() {
        return soFar().plus(begun.toCome().stream()
                .map(line -> LineAddition.of(line, begun.plan().line(line).reading()))
                .toList());
    }

    /**
     * Whether it is enough to go on as planned: every line is then within its tolerance as read, and every cap and condition
     * is kept.
     *
     * @return true if nothing has to be changed
     * @throws IllegalArgumentException as {@link Correction#smallest}
     */
    public boolean isFineAsPlanned() {
        return Correction.smallest(asPlanned(), rules).outcome() == Correction.Outcome.NOTHING_TO_DO;
    }

    /**
     * The least to pour, on the display of each line, that brings every line within its tolerance.
     *
     * @return additions to what is in the pot so far
     * @throws IllegalArgumentException as {@link Correction#smallest}
     */
    public DisplayedAdditions smallest() {
        return Correction.smallest(soFar(), rules).onDisplay();
    }

    /**
     * What restores the formula: the batch grows until the line that there is most of is right.
     *
     * @return the correction of what is in the pot so far
     * @throws IllegalArgumentException as {@link Correction#restoring}
     */
    public Correction restoring() {
        return Correction.restoring(soFar(), rules);
    }

    /** What was read otherwise than planned, what comes of it as planned, and what else can be done. */
    @Override
    public String toString() {
        List<String> said = new ArrayList<>();
        begun.taken().stream().filter(this::isOff).map(this::slip).forEach(said::add);
        said.add(
                "still to go: " + begun.toCome().stream().map(FormulaLine::name).collect(Collectors.joining(", ")));
        if (isFineAsPlanned()) {
            said.add("go on as planned: every line is then within " + rules.tolerances());
            return String.join("\n", said);
        }
        String outside = asPlanned().check(rules.tolerances()).stream()
                .filter(check -> !check.allowed().contains(check.line().share()))
                .map(StillToGo::off)
                .collect(Collectors.joining(", "));
        said.add("going on as planned: " + (outside.isEmpty() ? "not all rules are kept" : outside));
        DisplayedAdditions least = smallest();
        said.add((least.isWithin() ? "within " + rules.tolerances() + ": " : "as near as can be: ")
                + poured(least.additions()) + "; " + mass(least.after()) + " in the pot then");
        DisplayedAdditions whole = restoring().onDisplay();
        said.add("as the formula has it: " + poured(whole.additions()) + "; " + mass(whole.after())
                + " in the pot then");
        return String.join("\n", said);
    }

    private boolean isOff(Reading reading) {
        return reading.shown().isPresent() && !missed(reading).isZero();
    }

    /** By how much its display read otherwise than planned; on top of others, by how much the line did. */
    private Ratio missed(Reading reading) {
        PlannedLine planned = begun.plan().line(reading.line());
        boolean onTop = begun.method() == WeighingMethod.CUMULATIVE && planned.isOnBench();
        Ratio own = onTop
                ? soFar().line(reading.line()).mass().canonical()
                : reading.shown().orElseThrow().canonical();
        return own.minus(planned.reading().canonical());
    }

    private String slip(Reading reading) {
        PlannedLine planned = begun.plan().line(reading.line());
        Ratio off = missed(reading).dividedBy(planned.balance().readability().canonical());
        return reading.line().name() + ": " + (off.signum() > 0 ? "too much by " : "too little by ")
                + planned.balance().readability().times(off.abs()) + ", planned " + planned.reading();
    }

    private static String off(LineCheck check) {
        return check.line().name() + " comes to "
                + NumberText.percent(check.line().share().fraction())
                + " instead of " + NumberText.percent(check.line().line().fraction());
    }

    private String poured(List<LineAddition> additions) {
        List<FormulaLine> toCome = begun.toCome();
        return additions.stream()
                .map(each -> (toCome.contains(each.line()) ? "" : "another ") + each)
                .collect(Collectors.joining(", "));
    }

    private static String mass(MadeBatch made) {
        return made.mass().told();
    }
}
