package io.github.formulationmath.verification;

import io.github.formulationmath.document.Document;
import io.github.formulationmath.document.Document.Column;
import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.number.NumberText;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.reckoning.Wording;
import io.github.formulationmath.verification.FigureCheck.Agreement;
import io.github.formulationmath.verification.Verification.Cause;
import io.github.formulationmath.verification.Verification.Outcome;
import io.github.formulationmath.verification.Verification.RoundingHabit;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.measure.quantity.Mass;

/** Puts the outcome of a verification into words. */
final class VerificationReport {

    private final Verification verification;
    private final Wording wording;

    VerificationReport(Verification verification, Wording wording) {
        this.verification = verification;
        this.wording = wording;
    }

    Document document() {
        Document document = Document.titled(
                        say("verification.title", verification.claim().formula().name()), say("language"))
                .paragraph(headline() + " " + sum());
        if (verification.claim().total().isPresent()) {
            document = document.paragraph(total(verification.claim().total().orElseThrow()));
        }
        return diagnosis(
                document.table(columns(wording), rows()).paragraph(largest()).heading(say("verification.diagnosis")));
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
        return say(
                "verification.wrong-figure", check.line().name(), check.figure().written(), NumberText.of(ours, unit));
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
        Ratio sum = verification.sum().canonical().dividedBy(total.unitSize());
        return verification.isComplete() && Hypothesis.Display.NEAREST.mayShow(sum, total.ownStep(), total.number());
    }

    /** The table of every verification: what was weighed of, the figure, ours, and what becomes of it. */
    static List<Column> columns(Wording wording) {
        return List.of(
                Column.name(wording.say("verification.column.ingredient")),
                Column.text(wording.say("verification.column.figure")),
                Column.text(wording.say("verification.column.ours")),
                Column.text(wording.say("verification.column.outcome")));
    }

    /** A row for each line of the formula, so that a line without a figure is seen to have none. */
    private List<List<String>> rows() {
        Iterator<FigureCheck> checks = verification.figures().iterator();
        return verification.batch().lines().stream()
                .map(line ->
                        verification.claim().figures().containsKey(line.line().position())
                                ? row(checks.next())
                                : List.of(line.name(), "–", mass(line.mass()), say("agreement.no-figure")))
                .toList();
    }

    private List<String> row(FigureCheck check) {
        String unit = check.figure().symbol();
        return List.of(
                check.line().name(),
                wording.number(check.figure().written()),
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
        String sign = value.signum() < 0 ? "−" : "+";
        return number(NumberText.signed(value, unit), value, sign + value.abs() + " " + unit);
    }

    private String number(Ratio value, String unit) {
        return number(NumberText.of(value, unit), value, value + " " + unit);
    }

    /** A number that is not printed exactly has the exact one behind it. */
    private String number(String text, Ratio value, String exact) {
        return NumberText.isShort(value) ? wording.number(text) : say("verification.about", text, exact);
    }

    private String mass(Amount<Mass> mass) {
        Amount<Mass> asked = mass.inUnitOf(verification.batch().mass());
        return number(asked.exactValue(), asked.symbol());
    }

    private String sum() {
        Amount<Mass> batch = verification.batch().mass();
        if (!verification.isComplete()) {
            return say("verification.incomplete", mass(verification.sum()), mass(batch));
        }
        Amount<Mass> difference = verification.sum().minus(batch).inUnitOf(batch);
        return difference.isZero()
                ? say("verification.closes", mass(batch))
                : say(
                        "verification.open",
                        mass(verification.sum()),
                        mass(batch),
                        signed(difference.exactValue(), difference.symbol()));
    }

    private String largest() {
        FigureCheck worst = verification.largestError();
        Amount<Mass> off =
                Amount.grams(worst.excess()).inUnitOf(verification.batch().mass());
        return worst.excess().isZero()
                ? say("verification.no-error")
                : say("verification.largest", worst.line().name(), signed(off.exactValue(), off.symbol()));
    }

    private Document diagnosis(Document document) {
        if (verification.habit().isPresent()) {
            boolean all = verification.outcome() == Outcome.HOLDS || verification.outcome() == Outcome.HOLDS_BY_HABIT;
            return document.paragraph(say(all ? "diagnosis.agrees" : "diagnosis.nothing-disagrees"));
        }
        List<Cause> causes = verification.causes();
        Optional<Cause> next = verification.runnerUp();
        Document found = document.paragraph(causes.isEmpty() ? say("diagnosis.none") : causes(causes));
        if (next.isPresent()) {
            found = found.paragraph(next(next.get()));
        }
        return Stream.concat(causes.stream(), next.stream()).anyMatch(cause -> cause.slip() == Slip.ALKALI_EXCHANGED)
                ? found.caution(say("caution.alkali-exchanged"))
                : found;
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

    private String name(Cause cause) {
        String slip = say(cause.slip().key());
        String name = cause.detail().isEmpty() ? slip : slip + " (" + cause.detail() + ")";
        return cause.restFollows() ? say("diagnosis.rest-follows", name) : name;
    }

    private String say(String key, String... arguments) {
        return wording.say(key, arguments);
    }
}
