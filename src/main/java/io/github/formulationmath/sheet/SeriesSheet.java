package io.github.formulationmath.sheet;

import io.github.formulationmath.document.Document;
import io.github.formulationmath.document.Document.Column;
import io.github.formulationmath.plan.WeighingPlan;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.reckoning.Wording;
import io.github.formulationmath.series.SeriesPlan;
import io.github.formulationmath.series.Trial;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import javax.measure.quantity.Mass;

/**
 * The sheet of a whole series of trials: what is needed in all, the base first, then each trial with what it is sure to contain.
 *
 * <p>Example: {@code SeriesSheet.of(series.best().orElseThrow()).print(Format.TEXT)}.
 */
public final class SeriesSheet {

    private final SeriesPlan plan;
    private final Wording words;

    private SeriesSheet(SeriesPlan plan, Wording wording) {
        this.plan = Objects.requireNonNull(plan, "plan");
        this.words = Objects.requireNonNull(wording, "wording");
    }

    /**
     * The sheet of a series, in English.
     *
     * @param plan the series as it is weighed
     * @return the sheet, to be printed in any format
     */
    public static Document of(SeriesPlan plan) {
        return of(plan, Wording.english());
    }

    /**
     * The sheet of a series.
     *
     * @param plan the series as it is weighed
     * @param wording the words
     * @return the sheet, to be printed in any format
     */
    public static Document of(SeriesPlan plan, Wording wording) {
        return new SeriesSheet(plan, wording).document();
    }

    private Document document() {
        Document document = Document.titled(words.say("sheet.series-title"), words.say("language"))
                .fact(
                        words.say("sheet.series-way"),
                        words.say("way." + plan.way().name()))
                .fact(words.say("sheet.series-total"), SheetNumbers.amount(words, plan.total()))
                .table(
                        List.of(
                                Column.name(words.say("sheet.column.ingredient")),
                                Column.number(words.say("sheet.column.needed"))),
                        plan.needs().entrySet().stream().map(this::need).toList());
        Optional<WeighingPlan> base = plan.base();
        if (base.isPresent()) {
            document = weighed(document.heading(words.say("sheet.series-base")), base.get())
                    .paragraph(words.say(
                            "sheet.series-stir",
                            SheetNumbers.amount(words, plan.leftOfBase().orElseThrow())));
        }
        for (Trial trial : plan.trials()) {
            document = weighed(
                            document.heading(words.say(
                                    "sheet.series-trial", trial.formula().name())),
                            trial.plan())
                    .table(columns(), rows(trial));
        }
        return document.paragraph(words.say("sheet.series-guaranteed")).caution(words.say("sheet.caution"));
    }

    private List<String> need(Map.Entry<String, Amount<Mass>> entry) {
        return List.of(entry.getKey(), SheetNumbers.amount(words, entry.getValue()));
    }

    private Document weighed(Document document, WeighingPlan own) {
        BatchSheet sheet = new BatchSheet(own, words);
        return document.followedBy(sheet.notes(sheet.plan()));
    }

    private List<Column> columns() {
        return List.of(
                Column.number(words.say("sheet.column.number")),
                Column.name(words.say("sheet.column.ingredient")),
                Column.number(words.say("sheet.column.share")),
                Column.number(words.say("sheet.column.delivered")),
                Column.number(words.say("sheet.column.guaranteed")),
                Column.text(words.say("sheet.column.tolerance")));
    }

    private List<List<String>> rows(Trial trial) {
        return trial.lines().stream()
                .map(share -> List.of(
                        share.subscript(),
                        share.name(),
                        SheetNumbers.percent(words, share.line().fraction()),
                        SheetNumbers.percent(words, share.share().canonical()),
                        SheetNumbers.interval(words, share.bounds()),
                        words.say("sheet.verdict." + share.verdict().name())))
                .toList();
    }
}
