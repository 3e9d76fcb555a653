package io.github.formulationmath.sheet;

import io.github.formulationmath.formula.Phase;
import io.github.formulationmath.planning.ExpectedProduct;
import io.github.formulationmath.planning.PlannedLine;
import io.github.formulationmath.planning.Tolerances;
import io.github.formulationmath.planning.WeighingPlan;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.working.Wording;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import javax.measure.quantity.Mass;
import org.jspecify.annotations.Nullable;

/**
 * The sheet that lies beside the balance: for each phase what the display must read line by line, with the exact mass it
 * stands for, a box to tick, and what does not come out even.
 *
 * <p>Example: {@code BatchSheet.of(plan).print(SheetFormat.TEXT)}.
 *
 * <p>Immutable and thread-safe.
 */
public final class BatchSheet {

    private final WeighingPlan plan;
    private final @Nullable Expectation expectation;
    private final SheetWords words;

    private BatchSheet(WeighingPlan plan, @Nullable Expectation expectation, Wording wording) {
        this.plan = plan;
        this.expectation = expectation;
        this.words = new SheetWords(wording);
    }

    /**
     * The sheet of a plan, in English.
     *
     * @param plan the plan
     * @return the sheet
     */
    public static BatchSheet of(WeighingPlan plan) {
        return new BatchSheet(Objects.requireNonNull(plan, "plan"), null, Wording.english());
    }

    /**
     * The sheet of a plan with what it is sure to make: for each line the guaranteed interval of its share, and in words
     * whether it keeps its tolerance.
     *
     * @param expected the plan and the errors of its weighings
     * @param tolerances how far each line may be off
     * @return the sheet
     */
    public static BatchSheet of(ExpectedProduct expected, Tolerances tolerances) {
        Expectation expectation = new Expectation(
                Objects.requireNonNull(expected, "expected"), Objects.requireNonNull(tolerances, "tolerances"));
        return new BatchSheet(expected.plan(), expectation, Wording.english());
    }

    /**
     * The same sheet in other words.
     *
     * @param newWording the words
     * @return the sheet
     */
    public BatchSheet with(Wording newWording) {
        return new BatchSheet(plan, expectation, Objects.requireNonNull(newWording, "newWording"));
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

    /** The sheet as plain text. */
    @Override
    public String toString() {
        return print(SheetFormat.TEXT);
    }

    private Page page() {
        List<Page.Block> blocks = new ArrayList<>();
        blocks.add(facts());
        plan.batch().formula().phases().forEach(phase -> blocks.add(table(phase)));
        blocks.add(new Page.Facts(List.of(
                words.fact("total", reading(plan.total())),
                words.fact("difference", SheetNumbers.signed(plan.difference())))));
        if (expectation != null) {
            expectation.addTo(blocks, words);
        }
        remarks(blocks);
        blocks.add(new Page.Caution(words.say("sheet.caution")));
        return new Page(
                words.say("language"),
                words.say("sheet.batch-title", plan.batch().formula().name()),
                blocks);
    }

    private Page.Facts facts() {
        return new Page.Facts(List.of(
                words.fact("batch", SheetNumbers.amount(plan.batch().mass())),
                words.fact(
                        "balance",
                        words.say(
                                "sheet.balance-facts",
                                SheetNumbers.amount(plan.bench().balance().readability()),
                                SheetNumbers.amount(plan.bench().balance().capacity()))),
                words.fact("vessel", plan.bench().vessel().toString()),
                words.fact(
                        "closure",
                        words.say("sheet.closure." + plan.bench().closure().name()))));
    }

    private Page.Table table(Phase phase) {
        List<List<String>> rows = new ArrayList<>();
        phase.lines().forEach(line -> rows.add(row(plan.line(line))));
        return new Page.Table(
                words.say("sheet.phase", phase.name()),
                List.of(
                        words.say("sheet.column.done"),
                        words.say("sheet.column.number"),
                        words.say("sheet.column.ingredient"),
                        words.say("sheet.column.reading"),
                        words.say("sheet.column.cumulative"),
                        words.say("sheet.column.share"),
                        words.say("sheet.column.exact"),
                        words.say("sheet.column.error")),
                List.of(false, true, false, true, true, true, true, true),
                rows);
    }

    private List<String> row(PlannedLine line) {
        return List.of(
                "[ ]",
                line.subscript(),
                line.name(),
                reading(line.reading()),
                reading(line.cumulativeReading()),
                SheetNumbers.percent(line.target().line().fraction()),
                SheetNumbers.amount(line.target().mass().to(line.reading().getUnit())),
                SheetNumbers.error(line.relativeRoundingError()));
    }

    private void remarks(List<Page.Block> blocks) {
        plan.notConsidered()
                .forEach(phrase -> blocks.add(new Page.Remark(
                        words.say("sheet." + phrase.key(), phrase.arguments().toArray(String[]::new)))));
        for (PlannedLine line : plan.lines()) {
            if (line.isDroppedByClosure()) {
                blocks.add(new Page.Remark(
                        words.say("sheet.dropped-by-closure", line.name(), reading(line.nearestReading()))));
            } else if (line.divisions().isZero()) {
                blocks.add(new Page.Remark(words.say("sheet.below-display", line.name())));
            } else if (line.isBelowMinimumLoad()) {
                blocks.add(new Page.Remark(words.say(
                        "sheet.below-minimum",
                        line.name(),
                        SheetNumbers.amount(plan.bench().balance().minimumLoad()))));
            }
        }
    }

    private String reading(Amount<Mass> reading) {
        return SheetNumbers.reading(reading, plan.bench().balance().readability());
    }
}
