package io.github.formulationmath.sheet;

import io.github.formulationmath.formula.Phase;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.record.Amendment;
import io.github.formulationmath.record.BatchRecord;
import io.github.formulationmath.record.BenchEntry;
import io.github.formulationmath.record.Filling;
import io.github.formulationmath.record.LineCheck;
import io.github.formulationmath.record.MadeBatch;
import io.github.formulationmath.record.MadeLine;
import io.github.formulationmath.record.Reading;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.working.Wording;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import javax.measure.quantity.Mass;

/**
 * The filled-in page of the notebook: for each phase what was read and what is in the pot after everything, how far it is
 * off and what that means, then what happened, how the batch was filled, and the amendments.
 *
 * <p>Example: {@code RecordSheet.of(record).print(SheetFormat.TEXT)}.
 *
 * <p>Immutable and thread-safe.
 */
public final class RecordSheet {

    private final BatchRecord record;
    private final SheetWords words;

    private RecordSheet(BatchRecord record, Wording wording) {
        this.record = record;
        this.words = new SheetWords(wording);
    }

    /**
     * The sheet of a record, in English.
     *
     * @param record the record
     * @return the sheet
     */
    public static RecordSheet of(BatchRecord record) {
        return new RecordSheet(Objects.requireNonNull(record, "record"), Wording.english());
    }

    /**
     * The same sheet in other words.
     *
     * @param newWording the words
     * @return the sheet
     */
    public RecordSheet with(Wording newWording) {
        return new RecordSheet(record, Objects.requireNonNull(newWording, "newWording"));
    }

    /**
     * Prints the sheet.
     *
     * @param format text, Markdown, HTML or CSV
     * @return the sheet, its lines ended by a line feed (CSV: by carriage return and line feed)
     */
    public String print(SheetFormat format) {
        return Objects.requireNonNull(format, "format").write(page());
    }

    /** The text format, for reading at a prompt. */
    @Override
    public String toString() {
        return print(SheetFormat.TEXT);
    }

    private Page page() {
        MadeBatch made = record.made();
        List<Page.Block> blocks = new ArrayList<>();
        blocks.add(facts(made));
        Map<Integer, Reading> readings = new HashMap<>();
        record.readings().taken().forEach(reading -> readings.put(reading.line().position(), reading));
        record.formula().phases().forEach(phase -> blocks.add(table(phase, made, readings)));
        record.readings()
                .missing()
                .forEach(line -> blocks.add(new Page.Remark(words.say("sheet.record.missing", line.name()))));
        if (!record.entries().isEmpty()) {
            blocks.add(entries());
        }
        record.filling().ifPresent(filling -> blocks.add(filling(filling)));
        if (!record.amendments().isEmpty()) {
            blocks.add(amendments());
        }
        blocks.add(new Page.Caution(words.say("sheet.record.caution")));
        return new Page(
                words.say("language"),
                words.say("sheet.record.title", record.formula().name()),
                blocks);
    }

    private Page.Facts facts(MadeBatch made) {
        return new Page.Facts(List.of(
                words.fact("record.code", record.code().toString()),
                words.fact("record.day", record.code().day().toString()),
                words.fact(
                        "record.planned",
                        SheetNumbers.amount(record.plan().batch().mass())),
                words.fact("record.made", SheetNumbers.amount(made.mass())),
                words.fact(
                        "record.method",
                        words.say("sheet.record.method."
                                + record.readings().method().name())),
                words.fact("record.tolerances", record.tolerances().toString())));
    }

    private Page.Table table(Phase phase, MadeBatch made, Map<Integer, Reading> readings) {
        List<List<String>> rows = new ArrayList<>();
        phase.lines()
                .forEach(line -> rows.add(row(made.line(line), Optional.ofNullable(readings.get(line.position())))));
        return new Page.Table(
                words.say("sheet.phase", phase.name()),
                List.of(
                        words.say("sheet.column.number"),
                        words.say("sheet.column.ingredient"),
                        words.say("sheet.record.column.planned"),
                        words.say("sheet.record.column.read"),
                        words.say("sheet.record.column.in-pot"),
                        words.say("sheet.record.column.asked"),
                        words.say("sheet.record.column.share"),
                        words.say("sheet.record.column.off"),
                        words.say("sheet.record.column.verdict")),
                List.of(true, false, true, true, true, true, true, true, false),
                rows);
    }

    private List<String> row(MadeLine line, Optional<Reading> reading) {
        LineCheck check = line.check(record.tolerances());
        return List.of(
                line.subscript(),
                line.name(),
                SheetNumbers.amount(record.plan().batch().line(line.line()).mass()),
                reading.map(this::read).orElseGet(() -> words.say("sheet.record.not-written-down")),
                SheetNumbers.amount(line.mass()) + (line.isAssumed() ? " ?" : ""),
                SheetNumbers.percent(line.line().fraction()),
                line.isAssumed() ? "?" : SheetNumbers.percent(line.share().fraction()),
                line.isAssumed() ? "?" : off(check.deviation()),
                words.say("sheet.record.verdict." + check.verdict().name()));
    }

    private static String off(Ratio deviation) {
        String sign = deviation.signum() < 0 ? "−" : deviation.signum() > 0 ? "+" : "";
        return sign + SheetNumbers.error(deviation.abs());
    }

    private String read(Reading reading) {
        return switch (reading.kind()) {
            case SHOWN -> shown(reading);
            case LEFT_OUT -> words.say("sheet.record.left-out");
            case NOT_WRITTEN_DOWN -> words.say("sheet.record.not-written-down");
        };
    }

    private String shown(Reading reading) {
        return reading.shown().map(shown -> shown(shown, reading.balance())).orElse("");
    }

    /** A reading with the digits of its display, and on which balance if it was not that of the bench. */
    private String shown(Amount<Mass> mass, Optional<Balance> other) {
        Balance bench = record.plan().bench().balance();
        Balance used = other.orElse(bench);
        Amount<Mass> step = used.readability();
        String text = SheetNumbers.reading(mass.to(step.getUnit()), step);
        if (used.equals(bench)) {
            return text;
        }
        return used.name().isEmpty()
                ? words.say("sheet.record.on-unnamed-balance", text, SheetNumbers.amount(step))
                : words.say("sheet.record.on-balance", text, used.name());
    }

    private Page.Table entries() {
        List<List<String>> rows = new ArrayList<>();
        record.entries().forEach(entry -> rows.add(List.of(time(entry.time()), words(entry))));
        return new Page.Table(
                words.say("sheet.record.entries"),
                List.of(words.say("sheet.record.column.time"), words.say("sheet.record.column.what")),
                List.of(false, false),
                rows);
    }

    private String words(BenchEntry entry) {
        String mass = entry.mass().map(m -> shown(m, entry.balance())).orElse("");
        String name = entry.line().map(line -> line.name()).orElse("");
        return switch (entry.kind()) {
            case OBSERVATION -> entry.text();
            case ADDITION -> words.say("sheet.record.addition", mass, name);
            case WEIGHED_AGAIN -> words.say("sheet.record.weighed-again", mass, name);
        };
    }

    private Page.Facts filling(Filling filling) {
        return new Page.Facts(List.of(
                words.fact("record.residue", SheetNumbers.amount(filling.residue())),
                words.fact("record.fill", SheetNumbers.amount(filling.fill().mass())),
                words.fact("record.packs", Integer.toString(filling.fullPacks())),
                words.fact("record.last-pack", SheetNumbers.amount(filling.lastPack()))));
    }

    private Page.Table amendments() {
        List<List<String>> rows = new ArrayList<>();
        for (Amendment amendment : record.amendments()) {
            rows.add(List.of(time(Optional.of(amendment.time())), amendment.who(), amendment.text()));
        }
        return new Page.Table(
                words.say("sheet.record.amendments"),
                List.of(
                        words.say("sheet.record.column.time"),
                        words.say("sheet.record.column.who"),
                        words.say("sheet.record.column.what")),
                List.of(false, false, false),
                rows);
    }

    private static String time(Optional<Instant> time) {
        return time.map(Instant::toString).orElse("");
    }
}
