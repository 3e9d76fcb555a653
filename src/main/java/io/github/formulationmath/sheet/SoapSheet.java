package io.github.formulationmath.sheet;

import io.github.formulationmath.document.Document;
import io.github.formulationmath.document.Document.Column;
import io.github.formulationmath.document.Document.Column.Use;
import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.number.Excerpt;
import io.github.formulationmath.plan.ExpectedProduct;
import io.github.formulationmath.plan.PlannedLine;
import io.github.formulationmath.reckoning.Wording;
import io.github.formulationmath.soap.AlkaliBalance;
import io.github.formulationmath.soap.AlkaliGrade;
import io.github.formulationmath.soap.Soap;
import io.github.formulationmath.soap.Unsaponified;
import io.github.formulationmath.weighing.WeighingMethod;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * The sheet of a batch of soap. Water and alkali are weighings of their own, in a vessel of their own, and come first; then the
 * fats, what is added when they have reacted, and the rest. Beside each alkali stands the largest reading that leaves no hydroxide
 * for certain; the judgement on the whole follows, and the cautions, once.
 *
 * <p>Example: {@code SoapSheet.of(lye.soap(), lye.expectedOn(balance, WeighingMethod.TARE_EACH)).print(Format.TEXT)}.
 */
public final class SoapSheet {

    private static final Unsaponified NONE_LEFT = Unsaponified.alkaliShortfall("0 %");

    private final Soap soap;
    private final ExpectedProduct expected;
    private final BatchSheet sheet;
    private final Wording words;

    private SoapSheet(Soap soap, ExpectedProduct expected, Wording words) {
        this.soap = soap;
        this.expected = expected;
        this.sheet = new BatchSheet(expected.plan(), words);
        this.words = words;
    }

    /**
     * The sheet of a soap, in English.
     *
     * @param soap the formula with its lines declared
     * @param expected its plan and the errors of its weighings
     * @return the sheet, to be printed in any format
     * @throws IllegalArgumentException if a solid alkali has no water declared for it, if alkali is to be weighed on top of something
     *     else, and as {@link AlkaliBalance#of(Soap, io.github.formulationmath.weighing.Weighed)}
     */
    public static Document of(Soap soap, ExpectedProduct expected) {
        return of(soap, expected, Wording.english());
    }

    /**
     * The sheet of a soap.
     *
     * @param soap the formula with its lines declared
     * @param expected its plan and the errors of its weighings
     * @param wording the words
     * @return the sheet, to be printed in any format
     * @throws IllegalArgumentException if a solid alkali has no water declared for it, if alkali is to be weighed on top of something
     *     else, and as {@link AlkaliBalance#of(Soap, io.github.formulationmath.weighing.Weighed)}
     */
    public static Document of(Soap soap, ExpectedProduct expected, Wording wording) {
        Objects.requireNonNull(soap, "soap");
        Objects.requireNonNull(expected, "expected");
        AlkaliBalance balance = AlkaliBalance.of(soap, expected);
        requireWater(soap);
        requireOwnVessel(soap, expected);
        return new SoapSheet(soap, expected, Objects.requireNonNull(wording, "wording")).document(balance);
    }

    private static void requireWater(Soap soap) {
        for (FormulaLine line : soap.lines(Soap.Part.ALKALI)) {
            boolean dry = soap.alkaliOf(line.name())
                    .filter(grade -> grade.form() == AlkaliGrade.Form.SOLID)
                    .isPresent();
            if (dry && soap.lines(Soap.Part.LYE_WATER).isEmpty()) {
                throw new IllegalArgumentException(Excerpt.of(line.name())
                        + " is solid, and no line is declared as the water that it is dissolved in: declare it with"
                        + " lyeWater(…); alkali is never used dry");
            }
        }
    }

    private static void requireOwnVessel(Soap soap, ExpectedProduct expected) {
        for (FormulaLine line : soap.lines(Soap.Part.ALKALI)) {
            WeighingMethod method =
                    expected.masses().additions().get(line.index()).addition().method();
            if (method == WeighingMethod.CUMULATIVE) {
                throw new IllegalArgumentException("method is " + method + ", which weighs " + Excerpt.of(line.name())
                        + " on top of what is in the pot: alkali is weighed by itself; plan with "
                        + WeighingMethod.TARE_EACH + " or " + WeighingMethod.FROM_BOAT);
            }
        }
    }

    private Document document(AlkaliBalance balance) {
        Document document = sheet.head();
        List<FormulaLine> lye = new ArrayList<>(soap.lines(Soap.Part.LYE_WATER));
        lye.addAll(soap.lines(Soap.Part.ALKALI));
        document = group(document, "sheet.soap.lye", lye);
        document = group(document, "sheet.soap.fats", soap.lines(Soap.Part.FAT));
        document = group(document, "sheet.soap.late", soap.lines(Soap.Part.LATE_FAT));
        document = group(document, "sheet.soap.acids", soap.lines(Soap.Part.ACID));
        document = group(document, "sheet.soap.rest", soap.lines(Soap.Part.NEITHER));
        document = group(document, "sheet.soap.undeclared", soap.undeclared());
        document = largest(sheet.notes(sheet.total(document)));
        return document.followedBy(balance.document(words));
    }

    private Document group(Document document, String heading, List<FormulaLine> lines) {
        if (lines.isEmpty()) {
            return document;
        }
        List<Column> columns = List.of(
                Column.of(words.say("sheet.column.done"), Use.TICK),
                Column.number(words.say("sheet.column.number")),
                Column.name(words.say("sheet.column.ingredient")),
                Column.of(words.say("sheet.column.reading"), Use.READING),
                Column.of(words.say("sheet.column.actual"), Use.ROOM),
                Column.of(words.say("sheet.column.lot"), Use.ROOM),
                Column.of(words.say("sheet.column.share"), Use.DETAIL),
                Column.of(words.say("sheet.column.exact"), Use.DETAIL),
                Column.of(words.say("sheet.column.error"), Use.DETAIL));
        return document.heading(words.say(heading))
                .table(columns, lines.stream().map(this::row).toList());
    }

    private List<String> row(FormulaLine line) {
        PlannedLine planned = expected.plan().line(line);
        return List.of(
                "[ ]",
                line.subscript(),
                line.name(),
                sheet.reading(planned.reading(), planned.balance()),
                "",
                "",
                SheetNumbers.percent(words, line.fraction()),
                SheetNumbers.amount(words, planned.target().mass().inUnitOf(planned.reading())),
                SheetNumbers.error(words, planned.relativeRoundingError().canonical()));
    }

    /** The largest reading of each alkali, the others being as they are planned. */
    private Document largest(Document document) {
        if (!soap.undeclared().isEmpty()) {
            return document;
        }
        Document all = document;
        for (FormulaLine line : soap.lines(Soap.Part.ALKALI)) {
            all = all.fact(words.say("sheet.soap.largest", line.name()), largest(soap, line));
            if (!soap.lines(Soap.Part.LATE_FAT).isEmpty()) {
                String cook = largest(soap.withoutLateFat(), line);
                all = all.fact(words.say("sheet.soap.largest-cook", line.name()), cook);
            }
        }
        return all;
    }

    private String largest(Soap judged, FormulaLine line) {
        return AlkaliBalance.largestReading(judged, expected, line.name(), NONE_LEFT)
                .map(reading ->
                        sheet.reading(reading, expected.plan().line(line).balance()))
                .orElseGet(() -> words.say("sheet.soap.no-reading"));
    }
}
