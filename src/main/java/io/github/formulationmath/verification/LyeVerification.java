package io.github.formulationmath.verification;

import io.github.formulationmath.batch.Batch;
import io.github.formulationmath.batch.BatchSize;
import io.github.formulationmath.document.Document;
import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.plan.ExpectedProduct;
import io.github.formulationmath.plan.WeighingPlan;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.reckoning.Wording;
import io.github.formulationmath.soap.AlkaliBalance;
import io.github.formulationmath.verification.FigureCheck.Agreement;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.weighing.WeighingMethod;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import javax.measure.quantity.Mass;

/**
 * Somebody else's figures of a lye against ours: whether each agrees, which slips would explain them, and what would be left of
 * hydroxide if they were weighed.
 *
 * <p>A slip is told only if it reproduces every figure within its own rounding; only where no single one does are two looked for. Several
 * are told together, as the figures cannot tell them apart; of two slips at once that is a hint and no proof.
 *
 * <p>Example: 1000 g of a fat of 190 mg KOH/g take 135.451 g of NaOH; {@code "190.0 g"} is the value read as mg NaOH/g.
 *
 * <p>A figure that agrees is not thereby without danger: {@link #judged} tells what it leaves for every lot.
 */
public final class LyeVerification {

    /** Beyond it a list of causes tells nothing any more. */
    private static final int MOST_CAUSES = 12;

    private final LyeClaim claim;
    private final List<LyeFigure> figures;
    private final List<LyeCause> causes;

    /**
     * One figure against ours.
     *
     * @param name what it is of
     * @param figure as it was shown
     * @param expected ours, in grams
     * @param agreement whether it agrees
     */
    public record LyeFigure(String name, Figure figure, Amount<Mass> expected, Agreement agreement) {

        /** The figure beside ours. */
        @Override
        public String toString() {
            return name + " " + figure + ", ours " + expected.told() + ": " + agreement;
        }
    }

    private LyeVerification(LyeClaim claim) {
        this.claim = claim;
        LyeFigures right = LyeFigures.of(claim.lye());
        Map<String, Ratio> grams = right.grams();
        List<LyeFigure> all = new ArrayList<>();
        claim.figures().forEach((name, figure) -> {
            Ratio ours = Objects.requireNonNull(grams.get(name), name);
            all.add(new LyeFigure(
                    name,
                    figure,
                    figure.massInUnit(ours),
                    Agreement.of(figure, ours.dividedBy(figure.unitSize()), figure.ownStep())));
        });
        this.figures = List.copyOf(all);
        this.causes = any(Agreement.DISAGREES) ? causes(right) : List.of();
    }

    /**
     * Holds a claim against our figures.
     *
     * @param claim the figures shown, at least one
     * @return the verification
     * @throws IllegalArgumentException if there is no figure
     */
    public static LyeVerification of(LyeClaim claim) {
        if (Objects.requireNonNull(claim, "claim").figures().isEmpty()) {
            throw new IllegalArgumentException("claim has no figure: add one with withFigure(…)");
        }
        return new LyeVerification(claim);
    }

    private List<LyeCause> causes(LyeFigures right) {
        Set<LyeCause> one = new LinkedHashSet<>();
        for (LyeSlip slip : LyeSlip.values()) {
            slip.ways(right)
                    .filter(way -> reproduces(way.figures()))
                    .forEach(way -> one.add(new LyeCause(List.of(slip), List.of(way.detail()))));
        }
        return List.copyOf(one.isEmpty() ? two(right) : one);
    }

    private Set<LyeCause> two(LyeFigures right) {
        Set<LyeCause> found = new LinkedHashSet<>();
        for (LyeSlip first : LyeSlip.values()) {
            first.ways(right).forEach(way -> {
                for (LyeSlip second : LyeSlip.values()) {
                    if (second.compareTo(first) > 0) {
                        second.ways(way.figures())
                                .filter(both -> reproduces(both.figures()))
                                .forEach(both -> found.add(
                                        new LyeCause(List.of(first, second), List.of(way.detail(), both.detail()))));
                    }
                }
            });
        }
        return found;
    }

    private boolean reproduces(LyeFigures figures) {
        Map<String, Ratio> grams = figures.grams();
        return claim.figures().entrySet().stream().allMatch(each -> {
            Figure figure = each.getValue();
            Ratio theirs = Objects.requireNonNull(grams.get(each.getKey())).dividedBy(figure.unitSize());
            return theirs.signum() >= 0
                    && Hypothesis.Display.NEAREST.mayShow(theirs, figure.ownStep(), figure.number());
        });
    }

    /**
     * The claim.
     *
     * @return the figures shown, and the soap
     */
    public LyeClaim claim() {
        return claim;
    }

    /**
     * The figures against ours.
     *
     * @return an unmodifiable list in the order given
     */
    public List<LyeFigure> figures() {
        return figures;
    }

    /**
     * Whether every figure agrees.
     *
     * @return true if each is ours, exactly or as rounded; a figure in which no digit counts, like {@code 0 kg}, shows nothing and
     *     agrees with nothing
     */
    public boolean agrees() {
        return !any(Agreement.DISAGREES) && !any(Agreement.SHOWS_NOTHING);
    }

    private boolean any(Agreement agreement) {
        return figures.stream().anyMatch(each -> each.agreement() == agreement);
    }

    /**
     * What would explain figures that disagree.
     *
     * @return single slips, or if none does two at once; empty if no known slips explain the figures, or if nothing needs explaining
     */
    public List<LyeCause> causes() {
        return causes;
    }

    /**
     * What their figures leave of hydroxide, weighed on a balance; what they do not show is as we reckon it.
     *
     * @param balance the balance
     * @param method how it is weighed
     * @return the balance of alkali of their soap
     * @throws IllegalArgumentException if a figure is 0, the balance does not carry the batch, or it has errors without a bound
     */
    public AlkaliBalance judged(Balance balance, WeighingMethod method) {
        Formula formula = claim.lye().formula();
        Batch ours = Batch.of(formula, BatchSize.ofMass(claim.lye().mass()));
        Formula theirs = formula.withMasses(line -> mass(line, ours));
        Amount<Mass> whole = Amount.grams(formula.lines().stream()
                        .map(line -> mass(line, ours).canonical())
                        .reduce(Ratio.ZERO, Ratio::plus))
                .inUnitOf(ours.mass());
        Batch batch = Batch.of(theirs, BatchSize.ofMass(whole));
        return AlkaliBalance.of(
                claim.lye().soap().withFormula(theirs), ExpectedProduct.of(WeighingPlan.of(batch, balance), method));
    }

    private Amount<Mass> mass(FormulaLine line, Batch ours) {
        Figure figure = claim.figures().get(line.name());
        if (figure == null) {
            return ours.line(line).mass();
        }
        if (figure.number().isZero()) {
            throw new IllegalArgumentException("the figure of " + line.name() + " is " + figure.written()
                    + ": a soap needs more than 0; give the figure as it would be weighed");
        }
        return figure.massInUnit(figure.number().times(figure.unitSize()));
    }

    /**
     * The outcome in words, with the caution.
     *
     * @param wording the words
     * @return the report, to be printed in any format
     */
    public Document report(Wording wording) {
        return figures(Objects.requireNonNull(wording, "wording")).caution(wording.say("caution.soap"));
    }

    /**
     * The outcome in words, with what their figures leave of hydroxide.
     *
     * @param wording the words
     * @param judged the judgement on their figures, of {@link #judged}
     * @return the report, to be printed in any format
     */
    public Document report(Wording wording, AlkaliBalance judged) {
        Document theirs = Objects.requireNonNull(judged, "judged").document(wording);
        return figures(wording).heading(wording.say("lye.verification.left")).followedBy(theirs);
    }

    private Document figures(Wording wording) {
        List<List<String>> rows = figures.stream()
                .map(each -> List.of(
                        each.name(),
                        wording.number(each.figure().written()),
                        wording.number(each.expected().told()),
                        wording.say(key(each.agreement()))))
                .toList();
        Document document = Document.titled(
                        wording.say("verification.title", claim.lye().name()), wording.say("language"))
                .table(VerificationReport.columns(wording), rows)
                .heading(wording.say("verification.diagnosis"));
        if (!any(Agreement.DISAGREES)) {
            return document.paragraph(wording.say(agrees() ? "diagnosis.agrees" : "diagnosis.nothing-disagrees"));
        }
        if (causes.isEmpty()) {
            return document.paragraph(wording.say("diagnosis.none"));
        }
        Document all = document.paragraph(
                wording.say(causes.size() == 1 ? "lye.verification.one" : "lye.verification.several"));
        for (LyeCause cause : causes.subList(0, Math.min(MOST_CAUSES, causes.size()))) {
            all = all.paragraph(name(cause, wording));
        }
        return causes.size() > MOST_CAUSES
                ? all.paragraph(wording.say("lye.verification.more", String.valueOf(causes.size() - MOST_CAUSES)))
                : all;
    }

    private static String key(Agreement agreement) {
        return switch (agreement) {
            case DISAGREES -> "lye.verification.disagrees";
            case SHOWS_NOTHING -> "agreement.nothing";
            default -> "agreement.agrees";
        };
    }

    private static String name(LyeCause cause, Wording wording) {
        return IntStream.range(0, cause.slips().size())
                .mapToObj(i -> {
                    String slip = wording.say(cause.slips().get(i).key());
                    String detail = cause.slips().get(i).detail(cause.details().get(i), wording);
                    return detail.isEmpty() ? slip : slip + " (" + detail + ")";
                })
                .collect(Collectors.joining("; "));
    }

    /** The claim and what came of it. */
    @Override
    public String toString() {
        if (!any(Agreement.DISAGREES)) {
            return claim + (agrees() ? ": agrees" : ": none disagrees, but not every figure shows something");
        }
        return claim + ": " + (causes.isEmpty() ? "no known slip explains this" : causes.toString());
    }
}
