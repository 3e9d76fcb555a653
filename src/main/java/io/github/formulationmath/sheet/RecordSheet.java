package io.github.formulationmath.sheet;

import io.github.formulationmath.document.Document;
import io.github.formulationmath.document.Document.Column;
import io.github.formulationmath.document.Document.Column.Use;
import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.formula.Phase;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.packing.Filling;
import io.github.formulationmath.plan.WeighingPlan;
import io.github.formulationmath.pot.LineCheck;
import io.github.formulationmath.pot.MadeBatch;
import io.github.formulationmath.pot.MadeLine;
import io.github.formulationmath.pot.Reading;
import io.github.formulationmath.pot.Readings;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.reckoning.Wording;
import io.github.formulationmath.record.BatchRecord;
import io.github.formulationmath.record.BenchEntry;
import io.github.formulationmath.weighing.Balance;
import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import javax.measure.quantity.Mass;

/**
 * The filled-in page of the notebook: for each phase what was read and what is in the pot after everything, how far it is
 * off and what that means, then what happened, how the batch was filled, and the amendments.
 *
 * <p>Example: {@code RecordSheet.of(record).print(Format.TEXT)}.
 */
public final class RecordSheet {

    private final BatchRecord record;
    private final Wording words;

    private RecordSheet(BatchRecord record, Wording wording) {
        this.record = Objects.requireNonNull(record, "record");
        this.words = Objects.requireNonNull(wording, "wording");
    }

    /**
     * The sheet of a record, in English.
     *
     * @param record the record
     * @return the sheet, to be printed in any format
     */
    public static Document of(BatchRecord record) {
        return of(record, Wording.english());
    }

    /**
     * The sheet of a record.
     *
     * @param record the record
     * @param wording the words
     * @return the sheet, to be printed in any format
     */
    public static Document of(BatchRecord record, Wording wording) {
        return new RecordSheet(record, wording).document();
    }

    private Document document() {
        MadeBatch made = record.made();
        Map<Integer, Reading> readings = new HashMap<>();
        record.readings().taken().forEach(reading -> readings.put(reading.line().position(), reading));
        Document document = prepared(facts(made));
        for (Phase phase : record.formula().phases()) {
            document = document.heading(SheetNumbers.phase(words, phase))
                    .table(
                            columns(),
                            phase.lines().stream()
                                    .map(line ->
                                            row(made.line(line), Optional.ofNullable(readings.get(line.position()))))
                                    .toList());
        }
        for (FormulaLine line : record.readings().missing()) {
            document = document.paragraph(words.say("sheet.record.missing", line.name()));
        }
        return filling(entries(noted(document)))
                .fields(List.of(
                        words.say("sheet.field.by"),
                        words.say("sheet.field.checked"),
                        words.say("sheet.field.signature"),
                        words.say("sheet.field.notes")))
                .caution(words.say("sheet.record.caution"));
    }

    /** What was made up first, with its lots. */
    private Document prepared(Document document) {
        Document all = document;
        for (Readings made : record.preparations()) {
            WeighingPlan plan = made.plan();
            all = all.heading(words.say("sheet.stock", plan.formula().name()))
                    .table(
                            List.of(
                                    Column.number(words.say("sheet.column.number")),
                                    Column.name(words.say("sheet.column.ingredient")),
                                    Column.of(words.say("sheet.record.column.planned"), Use.DETAIL),
                                    Column.of(words.say("sheet.record.column.read"), Use.READING),
                                    Column.text(words.say("sheet.record.column.lot"))),
                            made.taken().stream()
                                    .map(reading -> List.of(
                                            reading.line().subscript(),
                                            reading.line().name(),
                                            SheetNumbers.amount(
                                                    words,
                                                    plan.batch()
                                                            .line(reading.line())
                                                            .mass()),
                                            read(reading, plan),
                                            SheetNumbers.lots(words, reading.lots())))
                                    .toList());
        }
        return all;
    }

    /** Who read what when, from which lots, and what else was noted there; nothing if nothing was. */
    private Document noted(Document document) {
        List<List<String>> rows = record.readings().taken().stream()
                .filter(reading -> reading.time().isPresent()
                        || reading.person().isPresent()
                        || !reading.lots().isEmpty()
                        || !reading.notes().isEmpty())
                .map(reading -> List.of(
                        reading.line().subscript(),
                        reading.line().name(),
                        time(reading.time()),
                        reading.person().orElse(""),
                        SheetNumbers.lots(words, reading.lots()),
                        reading.notes().entrySet().stream()
                                .map(note -> words.say("sheet.noted", note.getKey(), note.getValue()))
                                .collect(Collectors.joining("; "))))
                .toList();
        return rows.isEmpty()
                ? document
                : document.heading(words.say("sheet.record.noted"))
                        .table(
                                List.of(
                                        Column.number(words.say("sheet.column.number")),
                                        Column.name(words.say("sheet.column.ingredient")),
                                        Column.text(words.say("sheet.record.column.time")),
                                        Column.text(words.say("sheet.record.column.who")),
                                        Column.text(words.say("sheet.record.column.lot")),
                                        Column.text(words.say("sheet.record.column.notes"))),
                                rows);
    }

    private Document facts(MadeBatch made) {
        Document coded = Document.titled(
                        words.say("sheet.record.title", record.formula().name()), words.say("language"))
                .fact(words.say("sheet.record.code"), record.code().toString());
        Document numbered = record.hasOwnBatchNumber()
                ? coded.fact(words.say("sheet.record.batch-number"), record.batchNumber())
                : coded;
        return numbered.fact(words.say("sheet.record.day"), record.code().day().toString())
                .fact(
                        words.say("sheet.record.planned"),
                        SheetNumbers.amount(words, record.plan().batch().mass()))
                .fact(words.say("sheet.record.made"), SheetNumbers.amount(words, made.mass()))
                .fact(
                        words.say("sheet.record.method"),
                        words.say("sheet.record.method."
                                + record.readings().method().name()))
                .fact(words.say("sheet.record.tolerances"), record.tolerances().text(words));
    }

    private List<Column> columns() {
        return List.of(
                Column.number(words.say("sheet.column.number")),
                Column.name(words.say("sheet.column.ingredient")),
                Column.of(words.say("sheet.record.column.planned"), Use.DETAIL),
                Column.of(words.say("sheet.record.column.read"), Use.READING),
                Column.number(words.say("sheet.record.column.in-pot")),
                Column.of(words.say("sheet.record.column.asked"), Use.DETAIL),
                Column.number(words.say("sheet.record.column.share")),
                Column.of(words.say("sheet.record.column.off"), Use.DETAIL),
                Column.text(words.say("sheet.record.column.verdict")),
                Column.of(words.say("sheet.record.column.remark"), Use.ROOM));
    }

    private List<String> row(MadeLine line, Optional<Reading> reading) {
        LineCheck check = line.check(record.tolerances());
        return List.of(
                line.subscript(),
                line.name(),
                SheetNumbers.amount(
                        words, record.plan().batch().line(line.line()).mass().inUnitOf(line.mass())),
                reading.map(each -> read(each, record.plan()))
                        .orElseGet(() -> words.say("sheet.record.not-written-down")),
                SheetNumbers.amount(words, line.mass()) + (line.isAssumed() ? " ?" : ""),
                SheetNumbers.percent(words, line.line().fraction()),
                line.isAssumed()
                        ? "?"
                        : SheetNumbers.percent(words, line.share().fraction()),
                line.isAssumed() ? "?" : off(check.deviation().canonical()),
                words.say("sheet.record.verdict." + check.verdict().name()),
                "");
    }

    private String off(Ratio deviation) {
        String sign = deviation.signum() < 0 ? "−" : deviation.signum() > 0 ? "+" : "";
        return sign + SheetNumbers.error(words, deviation.abs());
    }

    private String read(Reading reading, WeighingPlan plan) {
        return switch (reading.kind()) {
            case SHOWN -> shown(reading, plan);
            case LEFT_OUT -> words.say("sheet.record.left-out");
            case NOT_WRITTEN_DOWN -> words.say("sheet.record.not-written-down");
        };
    }

    private String shown(Reading reading, WeighingPlan plan) {
        Balance used = reading.balance().orElse(plan.line(reading.line()).balance());
        return reading.shown().map(shown -> shown(shown, used)).orElse("");
    }

    /** A reading with the digits of its display, and on which balance if it was not that of the bench. */
    private String shown(Amount<Mass> mass, Balance used) {
        Amount<Mass> step = used.readability();
        String text = SheetNumbers.reading(words, mass.inUnitOf(step), step);
        if (used.equals(record.plan().bench().balance())) {
            return text;
        }
        return used.name().isEmpty()
                ? words.say("sheet.record.on-unnamed-balance", text, SheetNumbers.amount(words, step))
                : words.say("sheet.record.on-balance", text, used.name());
    }

    /** What happened at the bench. */
    private Document entries(Document document) {
        if (record.entries().isEmpty()) {
            return document;
        }
        return document.heading(words.say("sheet.record.entries"))
                .table(
                        List.of(
                                Column.text(words.say("sheet.record.column.time")),
                                Column.name(words.say("sheet.record.column.what"))),
                        record.entries().stream()
                                .map(entry -> List.of(time(entry.time()), words(entry)))
                                .toList());
    }

    private Balance used(BenchEntry entry) {
        return entry.balance()
                .or(() -> entry.line()
                        .filter(line -> entry.kind() == BenchEntry.Kind.ADDITION)
                        .map(line -> record.plan().line(line).balance()))
                .orElse(record.plan().bench().balance());
    }

    private String words(BenchEntry entry) {
        String mass = entry.mass().map(m -> shown(m, used(entry))).orElse("");
        String name = entry.line().map(line -> line.name()).orElse("");
        return switch (entry.kind()) {
            case OBSERVATION -> entry.text();
            case ADDITION -> noted(words.say("sheet.record.addition", mass, name), entry);
            case WEIGHED_AGAIN -> noted(words.say("sheet.record.weighed-again", mass, name), entry);
        };
    }

    /** With lots and person, where they were noted. */
    private String noted(String what, BenchEntry entry) {
        String from = entry.lots().isEmpty()
                ? what
                : words.say("sheet.record.from-lots", what, SheetNumbers.lots(words, entry.lots()));
        return entry.person()
                .map(who -> words.say("sheet.record.by-person", from, who))
                .orElse(from);
    }

    /** How the batch was filled, and the amendments. */
    private Document filling(Document document) {
        Document filled =
                record.filling().map(filling -> filled(document, filling)).orElse(document);
        if (record.amendments().isEmpty()) {
            return filled;
        }
        return filled.heading(words.say("sheet.record.amendments"))
                .table(
                        List.of(
                                Column.text(words.say("sheet.record.column.time")),
                                Column.text(words.say("sheet.record.column.who")),
                                Column.name(words.say("sheet.record.column.what"))),
                        record.amendments().stream()
                                .map(amendment ->
                                        List.of(time(Optional.of(amendment.time())), amendment.who(), amendment.text()))
                                .toList());
    }

    private Document filled(Document document, Filling filling) {
        return document.fact(words.say("sheet.record.residue"), SheetNumbers.amount(words, filling.residue()))
                .fact(
                        words.say("sheet.record.fill"),
                        SheetNumbers.amount(words, filling.fill().mass()))
                .fact(words.say("sheet.record.packs"), words.number(Integer.toString(filling.fullPacks())))
                .fact(words.say("sheet.record.last-pack"), SheetNumbers.amount(words, filling.lastPack()));
    }

    private static String time(Optional<Instant> time) {
        return time.map(Instant::toString).orElse("");
    }
}
