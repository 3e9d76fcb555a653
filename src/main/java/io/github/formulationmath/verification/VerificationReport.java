package io.github.formulationmath.verification;

import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.limit.LimitReport;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.number.Rounding;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.FormulationUnits;
import io.github.formulationmath.working.Phrase;
import io.github.formulationmath.working.Report;
import io.github.formulationmath.working.Wording;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.measure.quantity.Mass;

/** Puts the outcome of a verification into words. */
final class VerificationReport {

    private static final Rounding FEW = Rounding.toSignificantDigits(6);

    private final Verification verification;
    private final Wording wording;

    VerificationReport(Verification verification, Wording wording) {
        this.verification = verification;
        this.wording = wording;
    }

    Report report() {
        Report report = Report.titled(
                        say("verification.title", verification.claim().formula().name()))
                .paragraph(headline() + " " + sum());
        if (verification.claim().total().isPresent()) {
            report = report.paragraph(total(verification.claim().total().orElseThrow()));
        }
        report = report.table(columns(), rows()).paragraph(largest()).heading(say("verification.diagnosis"));
        for (String line : diagnosis()) {
            report = report.paragraph(line);
        }
        return report;
    }

    /** How many figures hold, which do not, and which lines nothing is shown of: what a reviewer sends first. */
    private String headline() {
        List<FigureCheck> wrong = with(Agreement.DISAGREES);
        List<FigureCheck> nothing = with(Agreement.SHOWS_NOTHING);
        List<FormulaLine> without = verification.withoutFigure();
        List<String> sentences = new ArrayList<>();
        sentences.add(held(wrong, nothing.size() + without.size()));
        if (!nothing.isEmpty()) {
            sentences.add(say("verification.nothing-shown", listed(nothing)));
        }
        if (!without.isEmpty()) {
            sentences.add(say(
                    "verification.no-figure",
                    without.stream().map(FormulaLine::name).collect(Collectors.joining(", "))));
        }
        if (verification.mixesTies()) {
            sentences.add(say("verification.mixed-ties"));
        }
        return String.join(" ", sentences);
    }

    private String held(List<FigureCheck> wrong, int silent) {
        int figures = verification.figures().size();
        int agreeing = figures - wrong.size() - with(Agreement.SHOWS_NOTHING).size();
        String holding = String.valueOf(agreeing);
        if (!wrong.isEmpty()) {
            return say("verification.some-hold", holding, String.valueOf(figures), listed(wrong));
        }
        RoundingHabit habit = verification.habit().orElse(RoundingHabit.EACH_TO_NEAREST);
        String lines = String.valueOf(figures + verification.withoutFigure().size());
        if (!habit.isPlainRounding()) {
            return say("verification.hold-by-habit", holding, lines, habit(habit));
        }
        return silent == 0 ? say("verification.all-hold", holding) : say("verification.given-hold", holding, lines);
    }

    private String habit(RoundingHabit habit) {
        return verification.habitDetail().isEmpty() ? say(habit.key()) : say(habit.key(), verification.habitDetail());
    }

    private List<FigureCheck> with(Agreement agreement) {
        return verification.figures().stream()
                .filter(check -> check.agreement() == agreement)
                .toList();
    }

    private String listed(List<FigureCheck> checks) {
        return checks.stream().map(this::wrong).collect(Collectors.joining(", "));
    }

    private String wrong(FigureCheck check) {
        String unit = check.figure().symbol();
        Ratio ours = check.expected().exactValue();
        String shown = isBrief(ours) ? ours.toString() : "≈ " + FEW.format(ours);
        return say(
                "verification.wrong-figure", check.line().name(), check.figure().written(), shown + " " + unit);
    }

    private String total(Figure total) {
        return switch (verification.totalAgreement().orElseThrow()) {
            case DISAGREES ->
                say(isSum(total) ? "verification.total-is-sum" : "verification.total-disagrees", total.written());
            case SHOWS_NOTHING -> say("verification.total-nothing", total.written());
            default -> say("verification.total-agrees", total.written());
        };
    }

    private boolean isSum(Figure total) {
        Ratio sum = verification.sum().in(FormulationUnits.GRAM).dividedBy(total.unitSize());
        return verification.isComplete() && Hypothesis.Display.NEAREST.mayShow(sum, total.ownStep(), total.number());
    }

    private List<String> columns() {
        return List.of(
                say("verification.column.ingredient"),
                say("verification.column.figure"),
                say("verification.column.ours"),
                say("verification.column.outcome"));
    }

    /** A row for each line of the formula, so that a line without a figure is seen to have none. */
    private List<List<String>> rows() {
        Iterator<FigureCheck> checks = verification.figures().iterator();
        return verification.batch().lines().stream()
                .map(line ->
                        verification.claim().figures().containsKey(line.line().position())
                                ? row(checks.next())
                                : List.of(line.name(), "–", grams(line.mass()), say("agreement.no-figure")))
                .toList();
    }

    private List<String> row(FigureCheck check) {
        String unit = check.figure().symbol();
        return List.of(
                check.line().name(),
                check.figure().written(),
                number(check.expected().exactValue(), unit),
                outcome(check, unit));
    }

    private String outcome(FigureCheck check, String unit) {
        String step = check.step().toString();
        return switch (check.agreement()) {
            case AGREES -> say("agreement.agrees");
            case AGREES_AS_ROUNDED -> say("agreement.rounded", step);
            case AGREES_AS_BINARY -> say("agreement.binary");
            case AGREES_AS_CLOSED -> say("agreement.closed", step);
            case AGREES_BY_HABIT ->
                say("agreement.habit", habit(verification.habit().orElseThrow()));
            case SHOWS_NOTHING -> say("agreement.nothing");
            case DISAGREES ->
                say(
                        "agreement.disagrees",
                        signed(check.figure().number().minus(check.expected().exactValue()), unit));
        };
    }

    private String signed(Ratio value, String unit) {
        return number(value.signum() > 0 ? "+" : "−", value.abs(), unit);
    }

    private String number(Ratio value, String unit) {
        return number("", value, unit);
    }

    /** The exact number if it is short, else one that can be read with the exact one behind it; each with its sign. */
    private String number(String sign, Ratio value, String unit) {
        String exact = sign + value + " " + unit;
        return isBrief(value) ? exact : say("verification.about", sign + FEW.format(value) + " " + unit, exact);
    }

    private static boolean isBrief(Ratio value) {
        return value.isDecimal() && value.toString().length() <= 10;
    }

    private String grams(Amount<Mass> mass) {
        return number(mass.in(FormulationUnits.GRAM), "g");
    }

    private String sum() {
        Amount<Mass> batch = verification.batch().mass();
        if (!verification.isComplete()) {
            return say("verification.incomplete", grams(verification.sum()), grams(batch));
        }
        Ratio difference = verification.sum().minus(batch).in(FormulationUnits.GRAM);
        return difference.isZero()
                ? say("verification.closes", grams(batch))
                : say("verification.open", grams(verification.sum()), grams(batch), signed(difference, "g"));
    }

    private String largest() {
        FigureCheck worst = verification.largestError();
        return worst.excess().isZero()
                ? say("verification.no-error")
                : say("verification.largest", worst.line().name(), signed(worst.excess(), "g"));
    }

    private List<String> diagnosis() {
        if (verification.habit().isPresent()) {
            boolean all = verification.outcome() == Outcome.HOLDS || verification.outcome() == Outcome.HOLDS_BY_HABIT;
            return List.of(say(all ? "diagnosis.agrees" : "diagnosis.nothing-disagrees"));
        }
        List<Cause> causes = verification.causes();
        List<String> lines = new ArrayList<>();
        lines.add(causes.isEmpty() ? say("diagnosis.none") : causes(causes));
        verification.runnerUp().ifPresent(cause -> lines.add(next(cause)));
        if (Stream.concat(causes.stream(), verification.runnerUp().stream())
                .anyMatch(cause -> cause.slip() == Slip.ALKALI_EXCHANGED)) {
            lines.add(say("caution.alkali-exchanged"));
        }
        return List.copyOf(lines);
    }

    /** What the causes are, and on how much that rests. */
    private String causes(List<Cause> causes) {
        Cause first = causes.get(0);
        if (causes.size() > 1) {
            return say(
                    "diagnosis.several",
                    causes.stream().map(this::name).collect(Collectors.joining("; ")),
                    rests(first));
        }
        return say(first.isTold() ? "diagnosis.one" : "diagnosis.would-fit", name(first), rests(first));
    }

    private String rests(Cause cause) {
        return say(
                cause.isTold() ? "diagnosis.rests" : "diagnosis.rests-on-little",
                String.valueOf(cause.figures()),
                String.valueOf(cause.digits()));
    }

    private String next(Cause cause) {
        return say(
                "diagnosis.next",
                name(cause),
                String.valueOf(cause.missed().size()),
                String.valueOf(verification.figures().size()));
    }

    /** What limits say, cautions included. */
    static List<String> limits(LimitReport limits, Wording wording) {
        return limits.describe(wording);
    }

    private String name(Cause cause) {
        String slip = say(cause.slip().key());
        String name = cause.detail().isEmpty() ? slip : slip + " (" + cause.detail() + ")";
        return cause.restFollows() ? say("diagnosis.rest-follows", name) : name;
    }

    private String say(String key, String... arguments) {
        return wording.text(Phrase.of(key, arguments));
    }
}
