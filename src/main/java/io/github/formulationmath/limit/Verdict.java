package io.github.formulationmath.limit;

import io.github.formulationmath.amendment.LegalChange;
import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.formula.Substance;
import io.github.formulationmath.number.Bounds;
import io.github.formulationmath.number.Excerpt;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.number.Rounding;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.reckoning.Explained;
import io.github.formulationmath.reckoning.Origin;
import io.github.formulationmath.reckoning.Phrase;
import io.github.formulationmath.reckoning.Reckoning;
import io.github.formulationmath.reckoning.Wording;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Mass;
import org.jspecify.annotations.Nullable;

/**
 * What one limit says of one formula, plan or batch: the share that it counts, the interval and the probability behind
 * it, the verdict, and how much room is left.
 *
 * <p>The share is on the basis of the limit: {@code y = Σ w_i · c_i · F_i}, over the lines with share w that hold the
 * counted substances in strength c, each converted by its factor F. Of a weighed batch the shares are those made.
 *
 * <p>Example: 0.5 % sodium benzoate counts as 0.5 % · 0.84746 = 0.4237 % benzoic acid; with a cap of 0.5 % as acid the
 * headroom is 0.0763 %.
 *
 * <p>Where it is not known how much of a substance counts, the share is an interval: from what is known alone to what is
 * known and all the rest at the greatest content possible. {@link #share()} is its lower end; it lies from {@link
 * #lowest()} to {@link #highest()}, with the error of the balance at both ends; a verdict that holds at both ends holds, otherwise it cannot be
 * assessed. (By a guard band on a weighed batch, two lines or more of unknown content cannot be assessed where one of
 * them is so little that the band exceeds it.)
 *
 * <p>An entry that allows a substance in other products only is a verdict as well: {@link Conformity#PROHIBITED}, on the
 * limit of that entry with nothing left of it.
 *
 * <p>Every verdict defers to the law in force, the supplier's documents and a qualified safety assessor; {@link
 * #cautions()} say so and belong wherever a verdict is shown. Immutable and thread-safe.
 */
public final class Verdict implements Explained {

    private final LimitChecker checker;
    private final Tally tally;
    private final Assessment assessment;
    private final Ratio share;
    private final Conformity conformity;
    private final Ratio used;

    Verdict(LimitChecker checker, Tally tally) {
        this.checker = checker;
        this.tally = tally;
        this.assessment = new Assessment(tally, checker.rule());
        this.share = assessment.share();
        this.used = assessment.used();
        this.conformity = assessment.decide();
    }

    /**
     * The formula that the verdict is on.
     *
     * @return the formula as written
     */
    public Formula formula() {
        return tally.formula();
    }

    /**
     * The limit.
     *
     * @return the limit; of an entry that does not allow the substance here, its limit with a highest share of 0
     */
    public UsageLimit limit() {
        return tally.limit();
    }

    /**
     * What is counted.
     *
     * @return the group, or the one substance of it that this verdict is about
     */
    public String counted() {
        return tally.name();
    }

    /**
     * Whether the limit is meant for the product.
     *
     * @return whether it applies, or may; out of scope only where that is what forbids the substance
     */
    public Applicability applicability() {
        return tally.applicability();
    }

    /**
     * The verdict.
     *
     * @return what the decision rule says
     */
    public Conformity conformity() {
        return conformity;
    }

    /**
     * The rule that led to the verdict.
     *
     * @return the decision rule
     */
    public DecisionRule rule() {
        return checker.rule();
    }

    /**
     * The share as it is written or most likely is.
     *
     * @return percent of the whole on the basis of the limit, exact, with its working; above 100 % only in a sum of ratios;
     *     where contents are unknown, the part that is known
     */
    public Amount<Dimensionless> share() {
        return percent(share).withWorking(Verdict::shareQuestion, this, Verdict::shareIn);
    }

    private Phrase shareQuestion() {
        return Phrase.of("question.counted-share", counted(), limit().id());
    }

    private <V> V shareIn(Reckoning<V> r) {
        return assessment.known().value(r);
    }

    /** The working of the {@link #share() share}. */
    @Override
    public Origin origin() {
        return share().origin();
    }

    /**
     * The least that the share can be.
     *
     * @return percent of the whole on the basis of the limit; the share itself if nothing was weighed
     */
    public Amount<Dimensionless> lowest() {
        return percent(bounds().lower().orElseThrow());
    }

    /**
     * The most that the share can be.
     *
     * @return percent of the whole on the basis of the limit; the share itself if nothing was weighed and everything is
     *     known; empty if there is no end to it: the formula does not have the phase, or a member of a sum of ratios has no
     *     limit of its own
     */
    public Optional<Amount<Dimensionless>> highest() {
        return bounds().upper().map(Verdict::percent);
    }

    /** Where the share is sure to lie, as fractions of one. */
    Bounds bounds() {
        return assessment.bounds();
    }

    /**
     * The standard uncertainty of the share.
     *
     * @return u in percent of the whole, to {@value io.github.formulationmath.reckoning.Operation.Root#DIGITS} digits; empty if nothing was weighed
     */
    public Optional<Amount<Dimensionless>> standardUncertainty() {
        Reckoning<Ratio> r = Reckoning.plain();
        return isMade() ? Optional.of(percent(r.root(assessment.known().variance(r)))) : Optional.empty();
    }

    /**
     * The probability that the limit is kept, the share taken as normal (JCGM 106:2012, 7.3).
     *
     * @return up to 100 %, with its working; empty if nothing was weighed or the weighing has no uncertainty
     */
    public Optional<Amount<Dimensionless>> probability() {
        return hasProbability()
                ? Optional.of(percent(assessment.probability(Reckoning.plain()))
                        .withWorking(
                                verdict -> Phrase.of("question.limit-probability", verdict.counted()),
                                this,
                                Verdict::probabilityIn))
                : Optional.empty();
    }

    private <V> V probabilityIn(Reckoning<V> r) {
        return assessment.probability(r);
    }

    private boolean hasProbability() {
        return tally.isAssessable()
                && conformity != Conformity.PROHIBITED
                && !assessment.known().variance(Reckoning.plain()).isZero();
    }

    /**
     * How much room the rule leaves: what is left between the limit and the share, its guard band or its interval.
     *
     * @return percent of the whole, negative if the share is not within, with the working that has the comparisons that
     *     decided; what is unknown is counted as it does the most harm, and left out if there is no end to it
     */
    public Amount<Dimensionless> headroom() {
        return percent(assessment.headroom(Reckoning.plain()))
                .withWorking(
                        verdict -> Phrase.of(
                                "question.headroom",
                                verdict.counted(),
                                verdict.limit().id()),
                        this,
                        Verdict::decided);
    }

    /**
     * The same room in grams of what was or is to be weighed.
     *
     * @return the mass on the basis of the limit, of the whole or the phase that the limit is a share of, rounded down to
     *     whole milligrams; negative if the share is not within; empty if nothing was weighed
     */
    public Optional<Amount<Mass>> headroomMass() {
        return tally.whole()
                .masses()
                .map(masses -> masses.total()
                        .times(headroom().canonical())
                        .rounded(Rounding.toDecimalPlaces(3).with(RoundingMode.FLOOR)));
    }

    private <V> V decided(Reckoning<V> r) {
        if (conformity != Conformity.NOT_ASSESSABLE) {
            assessment.decide(r);
        }
        r.note(() -> Phrase.of("caution.limit-short"));
        r.note(() -> checker.table().shortCaution());
        return assessment.headroom(r);
    }

    /**
     * The furthest share that is within under the rule: the largest one for a highest share, the smallest for a lowest
     * effective one. For a weighed batch: if what is counted is scaled and the batch keeps its size and its weighings.
     *
     * @return percent of the whole on the basis of the limit, with its working unless it is the limit itself; empty if no
     *     target is within on this balance
     */
    public Optional<Amount<Dimensionless>> acceptableTarget() {
        Optional<AcceptableTarget> target = target();
        return target.isEmpty()
                ? Optional.of(percent(limit().share().fraction()))
                : target.filter(AcceptableTarget::isReachable)
                        .map(found -> found.derive(Reckoning.plain()))
                        .filter(share -> share.signum() >= 0)
                        .map(share -> percent(share)
                                .withWorking(
                                        AcceptableTarget::question, target.orElseThrow(), AcceptableTarget::derive));
    }

    private Optional<AcceptableTarget> target() {
        return tally.whole()
                .masses()
                .filter(masses -> !rule().isSimple() && tally.isAssessable())
                .map(masses -> new AcceptableTarget(tally, masses, rule()));
    }

    /**
     * The share that a line may have at most (or must have at least) for the written formula to keep the limit, all other
     * lines that are counted staying as they are.
     *
     * @param line a line that is counted
     * @return percent of the product; empty if the other lines alone are beyond the limit
     * @throws IllegalArgumentException if the line is not counted, or is not a line of {@link #formula()}
     */
    public Optional<Amount<Dimensionless>> limitingShareOf(FormulaLine line) {
        Objects.requireNonNull(line, "line");
        if (!tally.formula().lines().contains(line)) {
            throw new IllegalArgumentException("line is " + line + ", which is not a line of \""
                    + Excerpt.of(tally.formula().name()) + "\" as the verdict has it: take it from formula()");
        }
        Ratio own = tally.strengths(List.of(line)).get(0);
        if (own.isZero() || tally.outsideWhole().contains(line)) {
            throw new IllegalArgumentException(Excerpt.of(line) + " is not counted by " + Excerpt.of(limit().id()));
        }
        return assessment.limitingShare(line, own).map(Verdict::percent);
    }

    /**
     * The lines that are counted.
     *
     * @return an unmodifiable list in the order of the formula, each line once
     */
    public List<FormulaLine> lines() {
        return tally.contributions().stream().map(Contribution::line).distinct().toList();
    }

    /**
     * The substances that are counted.
     *
     * @return an unmodifiable list in the order of the formula, each once
     */
    public List<Substance> substances() {
        return tally.contributions().stream()
                .map(Contribution::substance)
                .distinct()
                .toList();
    }

    /**
     * How much of every line of the whole is counted: c·F, 0 for lines that are not.
     *
     * @return one number for each of {@link #wholeLines()}
     */
    public List<Ratio> strengths() {
        return tally.strengths(wholeLines());
    }

    /**
     * The lines of which the limit is a share: all, or those of a phase.
     *
     * @return an unmodifiable list; empty if the formula does not have the phase
     */
    public List<FormulaLine> wholeLines() {
        return tally.whole().lines();
    }

    /**
     * What the verdict is about, in the words of the label and of the formula: the name to declare; or the substance as
     * the formula has it, if there is only one; or else {@link #counted()}.
     *
     * @return the short name
     */
    public String shortName() {
        if (!limit().declaredAs().isEmpty()) {
            return limit().declaredAs();
        }
        List<Substance> substances = substances();
        return substances.size() == 1 ? substances.get(0).name() : counted();
    }

    /**
     * Whether the limit says anything that no number settles: it may not be meant for the product, it comes with
     * conditions, wording or remarks, its entry was changed by a later act that binds (or no day was given), or it is of
     * one phase and something of what it counts stands in another.
     *
     * @return true if there is something to read
     */
    public boolean leavesOpen() {
        EntryText text = limit().text();
        return applicability() == Applicability.MAY_APPLY
                || amendments().stream().anyMatch(this::matters)
                || !text.conditions().isEmpty()
                || !text.warnings().isEmpty()
                || !text.note().isEmpty()
                || !tally.outsideWhole().isEmpty();
    }

    /**
     * What is known to have been changed of the entry beside the table, with act and tag: by acts later than the table, and
     * by transitions that its rows carry.
     *
     * @return an unmodifiable list
     */
    public List<LegalChange> amendments() {
        return checker.table().amendments().touching(limit().place());
    }

    private boolean matters(LegalChange amendment) {
        return amendment.later()
                && checker.asOf().map(day -> day.isBoundBy(amendment)).orElse(true);
    }

    /**
     * What keeps the verdict from being simple: a figure that is missing, a form that was not stated, a scope that may not
     * fit.
     *
     * @return an unmodifiable list of remarks
     */
    public List<Phrase> remarks() {
        return VerdictText.remarks(this);
    }

    /**
     * What has to be said with the verdict.
     *
     * @return at least one caution
     */
    public List<Phrase> cautions() {
        return List.of(Phrase.of("caution.limit"), checker.table().caution());
    }

    /**
     * The verdict in words: share, limit, verdict, conditions of the entry, remarks and cautions.
     *
     * @param wording the words
     * @return the lines; the cautions are always among them
     */
    public List<String> describe(Wording wording) {
        List<String> lines = new ArrayList<>(describeAlone(wording));
        cautions().forEach(caution -> lines.add(wording.text(caution)));
        return List.copyOf(lines);
    }

    /** The same without cautions, which a report tells once. */
    List<String> describeAlone(Wording wording) {
        return new VerdictText(this, Objects.requireNonNull(wording, "wording")).lines();
    }

    Tally tally() {
        return tally;
    }

    LimitChecker checker() {
        return checker;
    }

    /**
     * Whether the share is at the limit as closely as anybody can say: converted through molar masses it is on one side or
     * the other, depending on the last digits of atomic masses. Such a share is neither shown to be within nor to exceed.
     *
     * @return true for example for 0.59 % of sodium benzoate under 0.5 % as benzoic acid
     */
    public boolean isTie() {
        return conformity == Conformity.NOT_SHOWN_WITHIN && assessment.isTie();
    }

    /** How much of the limit is used up: y/T, or T/y for a lowest share. */
    Ratio used() {
        return used;
    }

    /** Whether something was or is to be weighed. */
    boolean isMade() {
        return tally.whole().masses().isPresent();
    }

    private static Amount<Dimensionless> percent(Ratio fraction) {
        return Amount.percent(fraction.times(100));
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Verdict that
                && checker.equals(that.checker)
                && formula().equals(that.formula())
                && limit().equals(that.limit())
                && counted().equals(that.counted())
                && conformity == that.conformity
                && share.equals(that.share)
                && bounds().equals(that.bounds());
    }

    @Override
    public int hashCode() {
        return Objects.hash(limit().id(), counted(), share);
    }

    /** In short: what is counted, its share, the limit, and the verdict. */
    @Override
    public String toString() {
        return VerdictText.brief(this);
    }
}
