package io.github.formulationmath.verification;

import io.github.formulationmath.batch.Batch;
import io.github.formulationmath.document.Document;
import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.limit.LimitChecker;
import io.github.formulationmath.limit.LimitReport;
import io.github.formulationmath.number.Excerpt;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.number.Rounding;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.reckoning.Kind;
import io.github.formulationmath.reckoning.Phrase;
import io.github.formulationmath.reckoning.Reckoning;
import io.github.formulationmath.reckoning.Symbol;
import io.github.formulationmath.reckoning.Wording;
import io.github.formulationmath.verification.FigureCheck.Agreement;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import javax.measure.quantity.Mass;
import org.jspecify.annotations.Nullable;

/**
 * A claim held against our own calculation.
 *
 * <p>Example: of a lotion at 12 % oil phase and 400 g, a calculator that shows 1.9 g for 4 % of an oil took the 4 % of the
 * oil phase (48 g · 4 % = 1.92 g) instead of the batch (16 g); {@link #causes()} names {@link Slip#WRONG_WHOLE}.
 *
 * <p>Immutable and thread-safe.
 */
public final class Verification {

    private static final Phrase LARGEST_DEVIATION = Phrase.of("question.largest-claim-deviation");
    private static final Symbol LARGEST = Symbol.of("Δ_max", "largest-claim-deviation", Kind.MASS);

    private final Claim claim;
    private final Batch batch;
    private final List<FigureCheck> figures;
    private final Habits.@Nullable Found found;
    private final Diagnosis diagnosis;

    private Verification(Claim claim) {
        this.claim = claim;
        Shown shown = new Shown(claim);
        this.batch = shown.batch();
        this.found = Habits.of(shown).orElse(null);
        this.figures = shown.lines().stream().map(check -> check.under(habit())).toList();
        this.diagnosis = found == null ? Diagnosis.of(shown) : Diagnosis.NONE;
    }

    /**
     * Verifies a claim.
     *
     * @param claim the claim, with at least one figure
     * @return the outcome
     * @throws IllegalArgumentException if the claim has no figures
     */
    public static Verification of(Claim claim) {
        if (Objects.requireNonNull(claim, "claim").figures().isEmpty()) {
            throw new IllegalArgumentException(
                    "the claim about \"" + Excerpt.of(claim.formula().name()) + "\" has no figures: give at least one");
        }
        return new Verification(claim);
    }

    /**
     * The claim.
     *
     * @return what was verified
     */
    public Claim claim() {
        return claim;
    }

    /**
     * Our batch.
     *
     * @return the batch as it should be
     */
    public Batch batch() {
        return batch;
    }

    /**
     * The figures, one by one.
     *
     * @return an unmodifiable list in the order of the formula
     */
    public List<FigureCheck> figures() {
        return figures;
    }

    /**
     * What came of it: one answer over all lines, figures and the total.
     *
     * @return {@link Outcome#HOLDS} only if every line has a figure, each is ours, rounded, and so is the total, if shown
     */
    public Outcome outcome() {
        Set<Agreement> all = EnumSet.noneOf(Agreement.class);
        figures.forEach(check -> all.add(check.agreement()));
        totalAgreement().ifPresent(all::add);
        if (all.contains(Agreement.DISAGREES)) {
            return Outcome.DOES_NOT_HOLD;
        }
        if (all.contains(Agreement.SHOWS_NOTHING)) {
            return Outcome.SHOWS_NOTHING_FOR_SOME_LINES;
        }
        if (!isComplete()) {
            return Outcome.INCOMPLETE;
        }
        return habit().filter(RoundingHabit::isPlainRounding).isPresent() ? Outcome.HOLDS : Outcome.HOLDS_BY_HABIT;
    }

    /**
     * How the figures were rounded, if they are ours.
     *
     * @return the habit under which all of them agree; none if at least one disagrees
     */
    public Optional<RoundingHabit> habit() {
        return Optional.ofNullable(found).map(Habits.Found::habit);
    }

    /** How many significant digits, if that is the habit; else empty. */
    String habitDetail() {
        return found == null ? "" : found.detail();
    }

    /**
     * Whether figures that lie half-way went different ways, so that no one rule (up, down, to the even or to the odd digit)
     * gives them all. Each is right by itself.
     *
     * @return false if one rule gives them all, or figures disagree
     */
    public boolean mixesTies() {
        return found != null && found.mixedTies();
    }

    /**
     * The lines that no figure was given for.
     *
     * @return an unmodifiable list in the order of the formula
     */
    public List<FormulaLine> withoutFigure() {
        return claim.formula().lines().stream()
                .filter(line -> !claim.figures().containsKey(line.position()))
                .toList();
    }

    /**
     * The figure that is off the most.
     *
     * @return the check with the largest deviation in grams
     */
    public FigureCheck largestError() {
        return figures.stream()
                .max(Comparator.comparing(check -> check.excess().abs()))
                .orElseThrow(() -> new IllegalStateException("no figures"));
    }

    /**
     * What the figures add up to.
     *
     * @return the sum; volumes count by the densities of their ingredients
     */
    public Amount<Mass> sum() {
        return Amount.grams(figures.stream().map(FigureCheck::claimed).reduce(Ratio.ZERO, Ratio::plus))
                .inUnitOf(batch.mass());
    }

    /**
     * Whether the figures add up to the batch that was asked for, exactly; only a claim with a figure for each line can.
     *
     * @return true if they do
     */
    public boolean closes() {
        return isComplete() && sum().equals(batch.mass());
    }

    /**
     * Whether each line of the formula has a figure.
     *
     * @return true if none is missing
     */
    public boolean isComplete() {
        return figures.size() == batch.lines().size();
    }

    /**
     * How the total that was shown stands to the batch, to its last digit, or by the habit of the figures.
     *
     * @return nothing if no total was shown
     */
    public Optional<Agreement> totalAgreement() {
        return claim.total().map(this::agreementOf);
    }

    private Agreement agreementOf(Figure total) {
        Agreement byItself = Agreement.of(total, batch.mass().canonical().dividedBy(total.unitSize()), total.ownStep());
        if (found == null) {
            return byItself;
        }
        // By whichever habit: a total is one figure, and no remainders are shared out in it.
        return found.totalAgrees() ? byItself.under(RoundingHabit.COARSER_WHEN_LARGER, total) : Agreement.DISAGREES;
    }

    /**
     * What would explain figures that disagree: the slips that reproduce every figure within its own rounding. Several are
     * told together, since these figures cannot tell them apart. Whether the figures tell a cause, or only allow it, {@link
     * Cause#isTold()} says.
     *
     * @return the closest first; empty if no known slip explains the figures, or if nothing needs explaining
     */
    public List<Cause> causes() {
        return diagnosis.causes();
    }

    /**
     * The next best: the slip that comes closest among those that do not reproduce every figure. One that leaves more than
     * half of the wrong figures unexplained is not told.
     *
     * @return the slip, if one explains at least half of what there is to explain
     */
    public Optional<Cause> runnerUp() {
        return diagnosis.runnerUp();
    }

    /**
     * Checks limits against their figures, as if they had been weighed out so. The result defers to the law in force and a
     * qualified safety assessment.
     *
     * @param checker the limits and the kind of product
     * @return the report on the masses claimed
     * @throws IllegalStateException if a line has no figure or a figure of 0, so that their product is not known
     */
    public LimitReport limits(LimitChecker checker) {
        return Objects.requireNonNull(checker, "checker").check(asClaimed());
    }

    private Formula asClaimed() {
        if (!isComplete()) {
            throw new IllegalStateException("the claim has " + figures.size() + " figures for "
                    + batch.lines().size() + " lines: limits need them all");
        }
        return claim.formula().withMasses(line -> {
            FigureCheck check = figures.get(line.index());
            if (check.figure().number().isZero()) {
                throw new IllegalStateException(Excerpt.of(line.name()) + " has the figure "
                        + Excerpt.of(check.figure()) + ": limits need more than 0");
            }
            return check.figure().massInUnit(check.claimed());
        });
    }

    /**
     * The outcome in words: a summary that can be sent as it is, every figure, what would explain them, and the caution
     * that a figure which agrees is not thereby safe.
     *
     * @param wording the words
     * @return the report, to be printed in any format
     */
    public Document report(Wording wording) {
        return new VerificationReport(this, Objects.requireNonNull(wording, "wording"))
                .document()
                .caution(wording.say("caution.verification"));
    }

    /**
     * The outcome in words, with limits under their figures; the caution is that of the limits.
     *
     * @param wording the words
     * @param limits what {@link #limits(LimitChecker)} found
     * @return the report, to be printed in any format
     * @throws IllegalArgumentException if the limits were checked against other figures than theirs
     */
    public Document report(Wording wording, LimitReport limits) {
        Objects.requireNonNull(limits, "limits");
        if (!isComplete() || !limits.formula().equals(asClaimed())) {
            throw new IllegalArgumentException(
                    "limits is a report on \"" + limits.formula().name()
                            + "\" with other figures than those of the claim: take it from limits(checker)");
        }
        return new VerificationReport(this, Objects.requireNonNull(wording, "wording"))
                .document()
                .heading(wording.say("verification.limits"))
                .followedBy(limits.document(wording));
    }

    /**
     * By how much the figure that is off the most is off.
     *
     * @return the largest deviation without its sign, in the unit of its figure, or in grams if that is a volume
     */
    public Amount<Mass> largestDeviation() {
        return Amount.grams(largestError().excess().abs())
                .withWorking(any -> LARGEST_DEVIATION, this, Verification::largestIn)
                .inUnitOf(largestError().deviation());
    }

    private <V> V largestIn(Reckoning<V> r) {
        List<V> sizes = figures.stream()
                .map(check -> r.absolute(r.known(check.deviation())))
                .toList();
        return r.named(LARGEST, r.maximum(sizes));
    }

    /** The claim, what came of it, and the diagnosis if there is something to explain. */
    @Override
    public String toString() {
        String said = causes().isEmpty() ? "no known slip explains this" : causes().toString();
        return claim + ": " + outcome().inWords() + (found == null ? "; " + said : "");
    }

    /**
     * What came of verifying a claim, the gravest finding first: {@link #DOES_NOT_HOLD}, then {@link
     * #SHOWS_NOTHING_FOR_SOME_LINES}, {@link #INCOMPLETE}, {@link #HOLDS_BY_HABIT}. Only {@link #HOLDS} says that every line
     * has a figure and every figure is ours, rounded. None says that the product is safe.
     */
    public enum Outcome {
        /** Every line has a figure with digits that count; all are ours, rounded, or a closed set of ours; so is the total. */
        HOLDS,
        /** As {@link #HOLDS}, but only by another habit of showing figures, which {@link Verification#habit()} names. */
        HOLDS_BY_HABIT,
        /** What was shown agrees, but some lines have no figure. */
        INCOMPLETE,
        /** No figure disagrees, but some are 0 where ours are more. */
        SHOWS_NOTHING_FOR_SOME_LINES,
        /** At least one figure, or the total, is another number than ours. */
        DOES_NOT_HOLD;

        String inWords() {
            return name().toLowerCase(Locale.ROOT).replace('_', ' ');
        }
    }

    /**
     * How figures that agree were rounded, as one set. The first three are roundings of the exact masses; the others are habits
     * of the trade (common practice, no published source) that can leave a figure farther off than half its last digit.
     */
    public enum RoundingHabit {
        /** Each figure to its nearest step. */
        EACH_TO_NEAREST,
        /** The q.s. line as the batch less the other figures, and these to their nearest steps. */
        QS_TAKES_REST,
        /** Each figure down or up to a step, up where most was left over, so that together they make the batch. */
        LARGEST_REMAINDERS,
        /** As {@link #QS_TAKES_REST}, but with the line that has the largest mass. */
        LARGEST_LINE_TAKES_REST,
        /** As {@link #QS_TAKES_REST}, but with the last line. */
        LAST_LINE_TAKES_REST,
        /** The ounce taken as 28.35 g. */
        OUNCE_OF_28_35_GRAMS,
        /** To the nearest half gram. */
        HALF_GRAMS,
        /** To a number of significant digits, two at least. */
        SIGNIFICANT_DIGITS,
        /** Figures, or the total, with more digits before the point to fewer places behind it, and never to more. */
        COARSER_WHEN_LARGER;

        /** Whether the figures are the exact masses rounded, and no more than that. */
        boolean isPlainRounding() {
            return this == EACH_TO_NEAREST || this == QS_TAKES_REST || this == LARGEST_REMAINDERS;
        }

        /** The key of its name in the wording. */
        String key() {
            return "habit." + name().toLowerCase(Locale.ROOT).replace('_', '-');
        }
    }

    /**
     * A slip, how well it explains the figures, and how much speaks for it.
     *
     * @param slip the slip
     * @param detail what exactly went wrong, in a name or a number; may be empty
     * @param restFollows whether the q.s. line took what the slip left, so that its figure follows from the others
     * @param missed the lines whose figures it does not reproduce within their own rounding
     * @param worst the largest distance between a figure and the slip's, in steps of the figure
     * @param figures how many wrong figures speak for it: those it reproduces, but for 0 and for a q.s. line that follows
     * @param digits how many digits count in them together
     */
    public record Cause(
            Slip slip,
            String detail,
            boolean restFollows,
            List<FormulaLine> missed,
            Ratio worst,
            int figures,
            int digits) {

        private static final Rounding STEPS = Rounding.toSignificantDigits(2);

        /** A single digit is met by chance too often: many numbers become the same one. */
        private static final int DIGITS_THAT_TELL = 2;

        /**
         * Copies.
         *
         * @param slip the slip
         * @param detail what exactly went wrong
         * @param restFollows whether the q.s. line follows
         * @param missed the lines it does not reproduce
         * @param worst the largest distance in steps
         * @param figures how many wrong figures speak for it
         * @param digits how many digits count in them
         */
        public Cause {
            Objects.requireNonNull(slip, "slip");
            Objects.requireNonNull(detail, "detail");
            Objects.requireNonNull(worst, "worst");
            missed = List.copyOf(Objects.requireNonNull(missed, "missed"));
        }

        /**
         * Whether the slip reproduces every figure.
         *
         * @return true if no line is missed
         */
        public boolean explainsAll() {
            return missed.isEmpty();
        }

        /**
         * Whether the figures tell it, and do not merely allow it: it reproduces every figure, and at least two digits count in
         * the wrong ones.
         *
         * @return false if it would fit, and so might much else
         */
        public boolean isTold() {
            return explainsAll() && digits >= DIGITS_THAT_TELL;
        }

        /** The slip with its detail, how many figures it leaves unexplained, and how far off the farthest figure is. */
        @Override
        public String toString() {
            String name = slip + (detail.isEmpty() ? "" : " (" + detail + ")");
            String reach = missed.isEmpty()
                    ? "explains every figure"
                    : "misses " + missed.stream().map(FormulaLine::name).collect(Collectors.joining(", "));
            return name + ": " + reach + ", at most " + STEPS.format(worst) + " steps of the display away";
        }
    }
}
