package io.github.formulationmath.mend;

import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.pot.LineAddition;
import io.github.formulationmath.pot.MadeBatch;
import io.github.formulationmath.pot.MadeLine;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.reckoning.Explained;
import io.github.formulationmath.reckoning.Kind;
import io.github.formulationmath.reckoning.Origin;
import io.github.formulationmath.reckoning.Phrase;
import io.github.formulationmath.reckoning.Reckoning;
import io.github.formulationmath.reckoning.Symbol;
import io.github.formulationmath.reckoning.Working;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Mass;

/**
 * Additions that mend what is in the pot. Nothing can be taken out, so the batch grows.
 *
 * <p>{@link #smallest}: the smallest additions, in total mass, that bring every line within its tolerance and keep every cap;
 * where there are none, the additions that leave the caps exceeded by as small a part of themselves as possible and then the
 * worst line off as little as possible. They solve a linear program in exact arithmetic. The working of the total shows that
 * all conditions are kept, and multipliers that prove that nothing smaller keeps them.
 *
 * <p>{@link #restoring}: the formula restored exactly. The batch grows until the line that there is most of, for its share,
 * is right, {@code M_new = max z_i/w_i}, and every other line is made up to {@code w_i·M_new}.
 *
 * <p>Example: 80 + 20 g were planned within 5 %, 22 g of the second were poured. Its share may be 21 % at most, so the pot
 * has to grow to 22/0.21 = 104.76… g: 2.76… g of the first do. Restored exactly, 22/0.2 = 110 g is the new batch, which takes 88 g of
 * the first: 8 g more.
 *
 * <p>Immutable and thread-safe.
 */
public abstract sealed class Correction implements Explained permits SmallestCorrection, RestoringCorrection {

    /** The most lines that the smallest additions are worked out for. */
    public static final int MAX_LINES = 100;

    /** What comes of a correction. */
    public enum Outcome {
        /** Every line is within its tolerance as read, and every cap and condition is kept: there is nothing to do. */
        NOTHING_TO_DO,
        /** The additions bring every line within its tolerance and keep every cap and condition. */
        MENDED,
        /** No additions can; these are the best there are. */
        BEST_POSSIBLE,
        /** The additions would restore the formula, but {@link #obstacles()} tells what stands in the way. */
        OBSTRUCTED
    }

    static final Symbol TOTAL = Symbol.of("X", "total-addition", Kind.MASS);

    /** What was found: the additions in grams, one for each line, and what stands in the way of better ones. */
    record Findings(
            Outcome outcome,
            List<Ratio> grams,
            List<Obstacle> obstacles,
            List<ExceededCap> exceededCaps,
            List<Condition> brokenConditions) {

        Findings {
            grams = List.copyOf(grams);
            obstacles = List.copyOf(obstacles);
            exceededCaps = List.copyOf(exceededCaps);
            brokenConditions = List.copyOf(brokenConditions);
        }
    }

    private final MadeBatch made;
    private final CorrectionRules rules;
    private final Findings findings;

    Correction(MadeBatch made, CorrectionRules rules, Findings findings) {
        this.made = made;
        this.rules = rules;
        this.findings = findings;
    }

    /**
     * Works out the smallest additions.
     *
     * @param made what is in the pot
     * @param rules what to reach, and what stands in the way
     * @return the correction
     * @throws IllegalArgumentException if the rules name a line that is none of the formula or cap a substance that it does
     *     not contain, or the formula has more than {@value #MAX_LINES} lines (restoring it exactly has no such limit)
     */
    public static Correction smallest(MadeBatch made, CorrectionRules rules) {
        Objects.requireNonNull(made, "made");
        CorrectionRules checked = Objects.requireNonNull(rules, "rules").checkedFor(made);
        if (made.lines().size() > MAX_LINES) {
            throw new IllegalArgumentException("made has " + made.lines().size() + " lines, more than " + MAX_LINES
                    + ": restore the formula exactly, or mend one phase at a time");
        }
        return SmallestCorrection.of(made, checked);
    }

    /**
     * Works out the additions that restore the formula exactly, as long as it may be. The arithmetic is given in any case;
     * whether the additions can be made is told by {@link #outcome()} and {@link #obstacles()}.
     *
     * @param made what is in the pot
     * @param rules what stands in the way; tolerances do not matter here
     * @return the correction, with {@link Outcome#OBSTRUCTED} if a frozen line, a stock, the room or a cap that the formula
     *     itself exceeds stands in the way
     * @throws IllegalArgumentException if the rules name a line that is none of the formula or cap a substance that it does
     *     not contain
     */
    public static Correction restoring(MadeBatch made, CorrectionRules rules) {
        Objects.requireNonNull(made, "made");
        CorrectionRules checked = Objects.requireNonNull(rules, "rules").checkedFor(made);
        return RestoringCorrection.of(made, checked);
    }

    /**
     * What comes of it.
     *
     * @return the outcome
     */
    public Outcome outcome() {
        return findings.outcome();
    }

    /**
     * What to add.
     *
     * @return the additions above 0, in the order of the formula
     */
    public List<LineAddition> additions() {
        return made.lines().stream()
                .filter(line -> !grams().get(line.index()).isZero())
                .map(line -> LineAddition.of(line, mass(line)))
                .toList();
    }

    /**
     * What to add of one line.
     *
     * @param line the line
     * @return the mass in the unit of its display, at least 0, with its working: that of a restoration, or the proof that nothing smaller does
     * @throws IllegalArgumentException if the line is none of the formula
     */
    public final Amount<Mass> addition(FormulaLine line) {
        Part part = new Part(this, made.line(line));
        return mass(part.line()).withWorking(Part::question, part, Part::grams);
    }

    /** In the unit of the display of the line. */
    private Amount<Mass> mass(MadeLine line) {
        return Amount.grams(grams().get(line.index())).inUnitOf(line.mass());
    }

    /** What one line is made up by. */
    private record Part(Correction of, MadeLine line) {

        Phrase question() {
            return Phrase.of("question.addition", line.name());
        }

        <V> V grams(Reckoning<V> r) {
            return of.addition(r, line);
        }
    }

    abstract <V> V addition(Reckoning<V> r, MadeLine line);

    /**
     * What will be in the pot.
     *
     * @return the mass there and all additions, in the unit of the display of the bench
     */
    public Amount<Mass> newMass() {
        return Amount.grams(made.mass().canonical().plus(totalGrams())).inUnitOf(made.mass());
    }

    /**
     * The line that there is most of for its share; it needs no addition and sets the size of all others.
     *
     * @return the line; only of a restoration
     */
    public Optional<FormulaLine> bindingLine() {
        return Optional.empty();
    }

    /**
     * The mass of all additions.
     *
     * @return the total in the unit of the display of the bench, with its working
     */
    public Amount<Mass> total() {
        return Amount.grams(totalGrams())
                .withWorking(correction -> Phrase.of("question.total-addition"), this, Correction::total)
                .inUnitOf(made.mass());
    }

    /** Where the {@link #total()} comes from. */
    @Override
    public Origin origin() {
        return total().origin();
    }

    /** As {@link #total()}, told in its unit. */
    @Override
    public Working working() {
        return total().working();
    }

    abstract Ratio totalGrams();

    abstract <V> V total(Reckoning<V> r);

    /**
     * What stands in the way. If the lines cannot all be brought within their tolerances: conditions that contradict each
     * other. Of a restoration: everything, each with the mass that is missing where that can be said.
     *
     * @return the obstacles; none unless the outcome is {@link Outcome#BEST_POSSIBLE} or {@link Outcome#OBSTRUCTED}
     */
    public List<Obstacle> obstacles() {
        return findings.obstacles();
    }

    /**
     * How far the worst line is off after the best additions.
     *
     * @return the least possible worst deviation in percent of the line's own share, with the proof that no additions leave
     *     the worst line less far off; only with {@link Outcome#BEST_POSSIBLE}
     */
    public Optional<Amount<Dimensionless>> worstDeviation() {
        return Optional.empty();
    }

    /**
     * The caps that stay exceeded after the best additions. What is made small is the excess relative to the cap: the worst
     * first, then the worst of the others, so that a cap that can be kept is kept. Of a restoration: the caps that the formula
     * itself exceeds.
     *
     * @return the caps, in the order of the rules, each with the least share that can be reached, or that of the formula; none
     *     if all caps are kept
     */
    public List<ExceededCap> exceededCaps() {
        return findings.exceededCaps();
    }

    /**
     * The conditions of the rules that stay broken after the best additions, each as little as can be, those before it first.
     * Of a restoration: those that the formula itself breaks.
     *
     * @return the conditions, in the order of the rules; none if all are kept
     */
    public List<Condition> brokenConditions() {
        return findings.brokenConditions();
    }

    /**
     * The pot after the additions, as if they could be weighed exactly.
     *
     * @return what would be in the pot
     */
    public MadeBatch after() {
        return made.plus(additions());
    }

    /**
     * Additions that a display can show: the smallest that still bring every line within its tolerance, if there are any
     * and they are found; else, and of a restoration, the nearest that stock and room allow, with what comes of them.
     *
     * @return whole steps of the display of the bench
     */
    public DisplayedAdditions onDisplay() {
        return DisplayedAdditions.nearest(made, rules, grams());
    }

    MadeBatch made() {
        return made;
    }

    CorrectionRules rules() {
        return rules;
    }

    List<Ratio> grams() {
        return findings.grams();
    }

    @Override
    public String toString() {
        return outcome() + " " + additions();
    }
}
