package io.github.formulationmath.verification;

import io.github.formulationmath.limit.LimitReport;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.number.Rounding;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.FormulationUnits;
import io.github.formulationmath.working.Phrase;
import io.github.formulationmath.working.Report;
import io.github.formulationmath.working.Wording;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
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
        report = report.table(
                        columns(),
                        verification.figures().stream().map(this::row).toList())
                .paragraph(largest())
                .heading(say("verification.diagnosis"));
        for (String line : diagnosis()) {
            report = report.paragraph(line);
        }
        return report;
    }

    /** How many figures hold, and which do not: what a reviewer sends first. */
    private String headline() {
        List<FigureCheck> wrong = verification.figures().stream()
                .filter(check -> check.agreement() == Agreement.DISAGREES)
                .toList();
        String all = String.valueOf(verification.figures().size());
        return wrong.isEmpty()
                ? say("verification.all-hold", all)
                : say(
                        "verification.some-hold",
                        String.valueOf(verification.figures().size() - wrong.size()),
                        all,
                        wrong.stream().map(this::wrong).collect(Collectors.joining(", ")));
    }

    private String wrong(FigureCheck check) {
        String unit = FormulationUnits.symbolOf(check.figure().unit());
        Ratio ours = check.expected();
        String shown = isBrief(ours) ? ours.toString() : "≈ " + FEW.format(ours);
        return say(
                "verification.wrong-figure", check.line().name(), check.figure().written(), shown + " " + unit);
    }

    private String total(Figure total) {
        if (verification.totalAgrees()) {
            return say("verification.total-agrees", total.written());
        }
        Ratio shown = verification.sum().in(FormulationUnits.GRAM).dividedBy(total.unitSize());
        boolean isSum = verification.isComplete()
                && Hypothesis.Display.NEAREST.mayShow(shown, total.lastDigit(), total.number());
        return say(isSum ? "verification.total-is-sum" : "verification.total-disagrees", total.written());
    }

    private List<String> columns() {
        return List.of(
                say("verification.column.ingredient"),
                say("verification.column.figure"),
                say("verification.column.ours"),
                say("verification.column.outcome"));
    }

    private List<String> row(FigureCheck check) {
        String unit = FormulationUnits.symbolOf(check.figure().unit());
        return List.of(
                check.line().name(), check.figure().written(), number(check.expected(), unit), outcome(check, unit));
    }

    private String outcome(FigureCheck check, String unit) {
        String step = check.step() + " " + unit;
        return switch (check.agreement()) {
            case AGREES -> say("agreement.agrees");
            case AGREES_AS_ROUNDED -> say("agreement.rounded", step);
            case AGREES_AS_CLOSED -> say("agreement.closed", step);
            case DISAGREES -> say("agreement.disagrees", signed(check.deviation(), unit));
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
        return worst.result().isZero()
                ? say("verification.no-error")
                : say("verification.largest", worst.line().name(), signed(worst.result(), "g"));
    }

    private List<String> diagnosis() {
        if (verification.figuresAgree()) {
            return List.of(say("diagnosis.agrees"));
        }
        List<Cause> causes = verification.diagnosis().causes();
        List<String> lines = new ArrayList<>();
        lines.add(
                causes.isEmpty()
                        ? say("diagnosis.none")
                        : say(
                                causes.size() == 1 ? "diagnosis.one" : "diagnosis.several",
                                causes.stream().map(this::name).collect(Collectors.joining("; "))));
        verification.diagnosis().runnerUp().ifPresent(cause -> lines.add(next(cause)));
        if (causes.stream().anyMatch(cause -> cause.slip() == Slip.ALKALI_EXCHANGED)) {
            lines.add(say("caution.alkali-exchanged"));
        }
        return List.copyOf(lines);
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
        String name = say(cause.slip().key());
        return cause.detail().isEmpty() ? name : name + " (" + cause.detail() + ")";
    }

    private String say(String key, String... arguments) {
        return wording.text(Phrase.of(key, arguments));
    }
}
