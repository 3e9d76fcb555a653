package io.github.formulationmath.verification;

import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.number.Rounding;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.FormulationUnits;
import io.github.formulationmath.working.Phrase;
import io.github.formulationmath.working.Report;
import io.github.formulationmath.working.Wording;
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
                .table(columns(), verification.figures().stream().map(this::row).toList())
                .paragraph(sum())
                .paragraph(largest());
        if (verification.claim().total().isPresent()) {
            String key = verification.totalAgrees() ? "verification.total-agrees" : "verification.total-disagrees";
            report = report.paragraph(
                    say(key, verification.claim().total().orElseThrow().written()));
        }
        report = report.heading(say("verification.diagnosis"));
        for (String line : diagnosis()) {
            report = report.paragraph(line);
        }
        return report;
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

    private static String signed(Ratio value, String unit) {
        return (value.signum() > 0 ? "+" : "−") + number(value.abs(), unit);
    }

    private static String number(Ratio value, String unit) {
        boolean brief = value.isDecimal() && value.toString().length() <= 10;
        return value + " " + unit + (brief ? "" : " ≈ " + FEW.format(value) + " " + unit);
    }

    private static String grams(Amount<Mass> mass) {
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
        if (verification.agrees()) {
            return List.of(say("diagnosis.agrees"));
        }
        List<Cause> causes = verification.diagnosis().causes();
        String first = causes.isEmpty()
                ? say("diagnosis.none")
                : say(
                        causes.size() == 1 ? "diagnosis.one" : "diagnosis.several",
                        causes.stream().map(this::name).collect(Collectors.joining("; ")));
        String next = verification
                .diagnosis()
                .runnerUp()
                .map(cause -> say(
                        "diagnosis.next",
                        name(cause),
                        String.valueOf(cause.missed().size()),
                        String.valueOf(verification.figures().size())))
                .orElseGet(() -> say("diagnosis.no-next"));
        boolean alkali = causes.stream().anyMatch(cause -> cause.slip() == Slip.ALKALI_EXCHANGED);
        return alkali ? List.of(first, next, say("caution.alkali-exchanged")) : List.of(first, next);
    }

    private String name(Cause cause) {
        String name = say(cause.slip().key());
        return cause.detail().isEmpty() ? name : name + " (" + cause.detail() + ")";
    }

    private String say(String key, String... arguments) {
        return wording.text(Phrase.of(key, arguments));
    }
}
