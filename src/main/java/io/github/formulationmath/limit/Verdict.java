package io.github.formulationmath.limit;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.formula.Substance;
import io.github.formulationmath.number.Bounds;
import io.github.formulationmath.number.Excerpt;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.weighing.MadeShare;
import io.github.formulationmath.working.Explained;
import io.github.formulationmath.working.Phrase;
import io.github.formulationmath.working.Reckoning;
import io.github.formulationmath.working.Wording;
import io.github.formulationmath.working.Working;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
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
 * known and all the rest at the greatest content possible. {@link #share()} is its lower end, {@link #bounds()} the whole
 * of it, with the error of the balance at both ends; a verdict that holds at both ends holds, otherwise it cannot be
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
    private final @Nullable MadeShares masses;
    private final Assessment assessment;
    private final VerdictRelations relations;
    private final Ratio share;
    private final Conformity conformity;
    private final Ratio used;

    Verdict(LimitChecker checker, Tally tally, @Nullable MadeShares masses) {
        this.checker = checker;
        this.tally = tally;
        this.masses = masses;
        this.assessment = new Assessment(tally, checker.rule(), masses);
        this.relations = assessment.known();
        this.share = relations.value(Reckoning.plain());
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
        return tally.slot().limit();
    }

    /**
     * What is counted.
     *
     * @return the group, or the one substance of it that this verdict is about
     */
    public String counted() {
        return tally.slot().counted();
    }

    /**
     * Whether the limit is meant for the product.
     *
     * @return whether it applies, or may; out of scope only where that is what forbids the substance
     */
    public Applicability applicability() {
        return tally.slot().applicability();
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
     * @return a fraction of the whole on the basis of the limit, exact; above 1 only in a sum of ratios; where contents are
     *     unknown, the part that is known
     */
    public Ratio share() {
        return share;
    }

    /**
     * Where the share is sure to lie.
     *
     * @return the guaranteed interval, as fractions of one on the basis of the limit; a single point if nothing was
     *     weighed and everything is known; without an upper end if the formula does not have the phase, or a member of a
     *     sum of ratios has no limit of its own
     */
    public Bounds bounds() {
        return assessment.bounds();
    }

    /**
     * The standard uncertainty of the share.
     *
     * @return u, a plain fraction; empty if nothing was weighed
     */
    public OptionalDouble standardUncertainty() {
        return relations.evidence() instanceof MadeEvidence made
                ? OptionalDouble.of(made.share().uncertainty().canonical().doubleValue())
                : OptionalDouble.empty();
    }

    /**
     * The probability that the limit is kept, the share taken as normal (JCGM 106:2012, 7.3).
     *
     * @return from 0 to 1; empty if nothing was weighed or the weighing has no uncertainty
     */
    public OptionalDouble probability() {
        return hasProbability()
                ? OptionalDouble.of(relations.probability(Reckoning.plain()).doubleValue())
                : OptionalDouble.empty();
    }

    /**
     * How {@link #probability()} comes about.
     *
     * @return the working, if there is a probability
     */
    public Optional<Working> probabilityWorking() {
        return hasProbability()
                ? Optional.of(Working.of(
                        Phrase.of("question.limit-probability", counted()),
                        relations.probability(Reckoning.plain()),
                        relations::probability))
                : Optional.empty();
    }

    private boolean hasProbability() {
        return tally.isAssessable()
                && conformity != Conformity.PROHIBITED
                && !relations.evidence().variance(Reckoning.plain()).isZero();
    }

    /**
     * How much room the rule leaves: what is left between the limit and the share, its guard band or its interval.
     *
     * @return a fraction of the whole, negative if the share is not within; what is unknown is counted as it does the most
     *     harm, and left out if there is no end to it
     */
    public Ratio headroom() {
        return assessment.harmful().headroom(Reckoning.plain());
    }

    /**
     * How {@link #headroom()} and the verdict come about.
     *
     * @return the working, with the comparisons that decided
     */
    public Working headroomWorking() {
        return Working.of(Phrase.of("question.headroom", counted(), limit().id()), headroom(), this::decided);
    }

    private <V> V decided(Reckoning<V> r) {
        if (conformity != Conformity.NOT_ASSESSABLE) {
            assessment.harmful().decide(r);
        }
        r.note(() -> Phrase.of("caution.limit-short"));
        r.note(() -> checker.table().shortCaution());
        return assessment.harmful().headroom(r);
    }

    /**
     * The furthest share that is within under the rule: the largest one for a highest share, the smallest for a lowest
     * effective one. For a weighed batch: if what is counted is scaled and the batch keeps its size and its weighings.
     *
     * @return a fraction of the whole on the basis of the limit; empty if no target is within on this balance
     */
    public Optional<Ratio> acceptableTarget() {
        AcceptableTarget target = target();
        if (target == null) {
            return Optional.of(limit().share().fraction());
        }
        return Optional.of(target)
                .filter(AcceptableTarget::isReachable)
                .map(found -> found.derive(Reckoning.plain()))
                .filter(share -> share.signum() >= 0);
    }

    /**
     * How {@link #acceptableTarget()} comes about.
     *
     * @return the working; empty if there is no such target, or it is the limit itself
     */
    public Optional<Working> acceptableTargetWorking() {
        AcceptableTarget target = target();
        return target == null
                ? Optional.empty()
                : acceptableTarget()
                        .map(share -> Working.of(
                                Phrase.of("question.acceptable-target", counted(), limit().id()),
                                share,
                                target::derive));
    }

    private @Nullable AcceptableTarget target() {
        MadeShares made = masses;
        if (made == null || rule().isSimple() || !tally.isAssessable()) {
            return null;
        }
        return new AcceptableTarget(tally, made.of(tally.whole()), rule());
    }

    /**
     * The share that a line may have at most (or must have at least) for the written formula to keep the limit, all other
     * lines that are counted staying as they are.
     *
     * @param line a line that is counted
     * @return a fraction of the product; empty if the other lines alone are beyond the limit
     * @throws IllegalArgumentException if the line is not counted, or is not a line of {@link #formula()}
     */
    public Optional<Ratio> limitingShareOf(FormulaLine line) {
        Objects.requireNonNull(line, "line");
        if (!tally.formula().lines().contains(line)) {
            throw new IllegalArgumentException("line is " + line + ", which is not a line of \""
                    + Excerpt.of(tally.formula().name()) + "\" as the verdict has it: take it from formula()");
        }
        Ratio own = tally.strengths(List.of(line)).get(0);
        if (own.isZero() || tally.outsideWhole().contains(line)) {
            throw new IllegalArgumentException(Excerpt.of(line) + " is not counted by " + Excerpt.of(limit().id()));
        }
        return relations.limitingShare(line, own);
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
     * conditions, wording or remarks, or it is of one phase and something of what it counts stands in another.
     *
     * @return true if there is something to read
     */
    public boolean leavesOpen() {
        EntryText text = limit().text();
        return applicability() == Applicability.MAY_APPLY
                || !text.conditions().isEmpty()
                || !text.warnings().isEmpty()
                || !text.note().isEmpty()
                || !tally.outsideWhole().isEmpty();
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

    /** How much of the limit is used up: y/T, or T/y for a lowest share. */
    Ratio used() {
        return used;
    }

    /** The share that was or is to be weighed. */
    Optional<MadeShare> made() {
        return relations.evidence() instanceof MadeEvidence made ? Optional.of(made.share()) : Optional.empty();
    }

    @Override
    public Phrase question() {
        return Phrase.of("question.counted-share", counted(), limit().id());
    }

    @Override
    public Ratio result() {
        return share;
    }

    @Override
    public <V> V derive(Reckoning<V> r) {
        return relations.value(r);
    }

    /** In short: what is counted, its share, the limit, and the verdict. */
    @Override
    public String toString() {
        return VerdictText.brief(this);
    }
}
