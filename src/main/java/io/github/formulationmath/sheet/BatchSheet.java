package io.github.formulationmath.sheet;

import io.github.formulationmath.choice.DilutedBatch;
import io.github.formulationmath.choice.StockMixture;
import io.github.formulationmath.document.Document;
import io.github.formulationmath.document.Document.Column;
import io.github.formulationmath.document.Document.Column.Use;
import io.github.formulationmath.formula.Phase;
import io.github.formulationmath.number.Excerpt;
import io.github.formulationmath.number.NumberText;
import io.github.formulationmath.plan.ExpectedProduct;
import io.github.formulationmath.plan.PlannedLine;
import io.github.formulationmath.plan.Tolerances;
import io.github.formulationmath.plan.WeighingPlan;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.reckoning.Wording;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.weighing.WeighingStation;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import javax.measure.quantity.Mass;

/**
 * The sheet that lies beside the balance: for each phase what the display must read line by line, with the exact mass it
 * stands for, a box to tick, and what does not come out even.
 *
 * <p>Example: {@code BatchSheet.of(plan).print(Format.TEXT)}.
 */
public final class BatchSheet {

    private final WeighingPlan plan;
    private final List<StockMixture> stocks;
    private final Wording words;
    /** Whether each line says where it is weighed. */
    private final boolean tellsPlaces;

    BatchSheet(WeighingPlan plan, Wording wording) {
        this(plan, List.of(), wording);
    }

    private BatchSheet(WeighingPlan plan, List<StockMixture> stocks, Wording wording) {
        this(
                plan,
                stocks,
                wording,
                !Objects.requireNonNull(plan, "plan").stations().isEmpty());
    }

    private BatchSheet(WeighingPlan plan, List<StockMixture> stocks, Wording wording, boolean tellsPlaces) {
        this.plan = plan;
        this.stocks = stocks;
        this.words = Objects.requireNonNull(wording, "wording");
        this.tellsPlaces = tellsPlaces;
    }

    /**
     * The sheet of a plan, in English.
     *
     * @param plan the plan
     * @return the sheet, to be printed in any format
     */
    public static Document of(WeighingPlan plan) {
        return of(plan, Wording.english());
    }

    /**
     * The sheet of a plan.
     *
     * @param plan the plan
     * @param wording the words
     * @return the sheet, to be printed in any format
     */
    public static Document of(WeighingPlan plan, Wording wording) {
        BatchSheet sheet = new BatchSheet(plan, wording);
        return sheet.ending(sheet.plan());
    }

    /**
     * The sheet of a plan with stocks that are made first, in English.
     *
     * @param diluted the batch with its stocks
     * @param plan a plan of it as it is weighed
     * @return the sheet, to be printed in any format; the steps of the stocks stand before the phases
     * @throws IllegalArgumentException if the plan is of another formula
     */
    public static Document of(DilutedBatch diluted, WeighingPlan plan) {
        return of(diluted, plan, Wording.english());
    }

    /**
     * The sheet of a plan with stocks that are made first.
     *
     * @param diluted the batch with its stocks
     * @param plan a plan of it as it is weighed
     * @param wording the words
     * @return the sheet, to be printed in any format; the steps of the stocks stand before the phases
     * @throws IllegalArgumentException if the plan is of another formula
     */
    public static Document of(DilutedBatch diluted, WeighingPlan plan, Wording wording) {
        if (!Objects.requireNonNull(diluted, "diluted").batch().formula().equals(plan.formula())) {
            throw new IllegalArgumentException(
                    "plan is of \"" + Excerpt.of(plan.formula().name())
                            + "\", not of the diluted batch as it is weighed: plan diluted.batch()");
        }
        BatchSheet sheet = new BatchSheet(plan, diluted.stocks(), wording);
        return sheet.ending(sheet.plan());
    }

    /**
     * The sheet of a plan with what it is sure to make, in English.
     *
     * @param expected the plan and the errors of its weighings
     * @param tolerances how far each line may be off
     * @return the sheet, to be printed in any format
     */
    public static Document of(ExpectedProduct expected, Tolerances tolerances) {
        return of(expected, tolerances, Wording.english());
    }

    /**
     * The sheet of a plan with what it is sure to make: for each line the guaranteed interval of its share, and in words
     * whether it keeps its tolerance.
     *
     * @param expected the plan and the errors of its weighings
     * @param tolerances how far each line may be off
     * @param wording the words
     * @return the sheet, to be printed in any format
     */
    public static Document of(ExpectedProduct expected, Tolerances tolerances, Wording wording) {
        Objects.requireNonNull(tolerances, "tolerances");
        BatchSheet sheet =
                new BatchSheet(Objects.requireNonNull(expected, "expected").plan(), wording);
        return sheet.ending(sheet.expected(sheet.plan(), expected, tolerances));
    }

    /** What is made, and on what. */
    Document head() {
        Document document = Document.titled(
                        words.say("sheet.batch-title", plan.batch().formula().name()), words.say("language"))
                .fact(
                        words.say("sheet.batch"),
                        SheetNumbers.amount(words, plan.batch().mass()));
        for (WeighingStation station : stations()) {
            document = document.fact(words.say("sheet.balance"), balance(station));
        }
        return document.fact(words.say("sheet.vessel"), plan.bench().vessel().text(words))
                .fact(
                        words.say("sheet.closure"),
                        words.say("sheet.closure." + plan.bench().closure().name()))
                .fields(List.of(
                        words.say("sheet.field.code"),
                        words.say("sheet.field.day"),
                        words.say("sheet.field.by"),
                        words.say("sheet.field.checked"),
                        words.say("sheet.field.signature"),
                        words.say("sheet.field.notes")));
    }

    /** What is made and on what, and what the displays read. */
    Document plan() {
        Document document = head();
        for (StockMixture stock : stocks) {
            for (WeighingPlan step : stock.steps()) {
                boolean isElsewhere =
                        !step.bench().balance().equals(plan.bench().balance());
                BatchSheet own = new BatchSheet(step, List.of(), words, tellsPlaces || isElsewhere);
                document = document.heading(
                                words.say("sheet.stock", step.formula().name()))
                        .table(
                                own.columns(),
                                step.formula().phases().stream()
                                        .flatMap(phase -> own.rows(phase).stream())
                                        .toList());
            }
        }
        for (Phase phase : plan.batch().formula().phases()) {
            document = document.heading(SheetNumbers.phase(words, phase)).table(columns(), rows(phase));
        }
        return total(document);
    }

    /** What the readings add up to. */
    Document total(Document document) {
        return document.fact(
                        words.say("sheet.total"),
                        SheetNumbers.total(words, plan.total(), plan.finest().readability()))
                .fact(
                        words.say("sheet.difference"),
                        words.number(NumberText.signed(
                                plan.difference().exactValue(),
                                plan.difference().symbol())));
    }

    /** The places that are used, that of the bench first. */
    private List<WeighingStation> stations() {
        return Stream.concat(
                        Stream.of(plan.bench().station()).filter(station -> isUsed(station)), plan.stations().stream())
                .distinct()
                .toList();
    }

    private boolean isUsed(WeighingStation station) {
        return plan.stations().isEmpty() || plan.stations().contains(station);
    }

    private String balance(WeighingStation station) {
        String facts = words.say(
                "sheet.balance-facts",
                SheetNumbers.amount(words, station.balance().readability()),
                SheetNumbers.amount(words, station.balance().capacity()));
        return plan.stations().isEmpty() ? facts : words.say("sheet.balance-at", place(station), facts);
    }

    /** A place in few words: the balance by its name or step, and the boat. */
    private String place(WeighingStation station) {
        String balance = SheetNumbers.balance(words, station.balance());
        return switch (station.method()) {
            case TARE_EACH, CUMULATIVE -> balance;
            case FROM_BOAT ->
                words.say("sheet.from-boat", balance, station.vessel().name());
            case BY_DIFFERENCE ->
                words.say("sheet.by-difference", balance, station.vessel().name());
        };
    }

    private List<Column> columns() {
        List<Column> columns = new ArrayList<>(List.of(
                Column.of(words.say("sheet.column.done"), Use.TICK),
                Column.number(words.say("sheet.column.number")),
                Column.name(words.say("sheet.column.ingredient"))));
        if (tellsPlaces) {
            columns.add(Column.text(words.say("sheet.column.where")));
        }
        columns.addAll(List.of(
                Column.of(words.say("sheet.column.reading"), Use.READING),
                Column.of(words.say("sheet.column.actual"), Use.ROOM),
                Column.number(words.say("sheet.column.cumulative")),
                Column.of(words.say("sheet.column.lot"), Use.ROOM),
                Column.of(words.say("sheet.column.share"), Use.DETAIL),
                Column.of(words.say("sheet.column.exact"), Use.DETAIL),
                Column.of(words.say("sheet.column.error"), Use.DETAIL)));
        return columns;
    }

    private List<List<String>> rows(Phase phase) {
        return phase.lines().stream().map(line -> row(plan.line(line))).toList();
    }

    private List<String> row(PlannedLine line) {
        List<String> row = new ArrayList<>(List.of("[ ]", line.subscript(), line.name()));
        if (tellsPlaces) {
            row.add(place(line.station()));
        }
        row.addAll(List.of(
                reading(line.reading(), line.balance()),
                "",
                line.isOnBench() ? reading(line.cumulativeReading(), line.balance()) : "",
                "",
                SheetNumbers.percent(words, line.target().line().fraction()),
                SheetNumbers.amount(words, line.target().mass().inUnitOf(line.reading())),
                SheetNumbers.error(words, line.relativeRoundingError().canonical())));
        return row;
    }

    private Document expected(Document document, ExpectedProduct expected, Tolerances tolerances) {
        List<Column> columns = List.of(
                Column.number(words.say("sheet.column.number")),
                Column.name(words.say("sheet.column.ingredient")),
                Column.number(words.say("sheet.column.share")),
                Column.number(words.say("sheet.column.guaranteed")),
                Column.text(words.say("sheet.column.tolerance")));
        List<List<String>> rows = expected.lines().stream()
                .map(line -> List.of(
                        line.subscript(),
                        line.name(),
                        SheetNumbers.percent(
                                words, line.planned().target().line().fraction()),
                        SheetNumbers.interval(words, line.bounds()),
                        words.say("sheet.verdict." + line.verdict(tolerances).name())))
                .toList();
        return document.heading(words.say("sheet.expected"))
                .table(columns, rows)
                .paragraph(words.say("sheet.guaranteed", tolerances.text(words)));
    }

    private Document ending(Document document) {
        return notes(document).caution(words.say("sheet.caution"));
    }

    /** What does not come out even. */
    Document notes(Document document) {
        Document all = document;
        for (var phrase : plan.notConsidered()) {
            all = all.paragraph(
                    words.say("sheet." + phrase.key(), phrase.arguments().toArray(String[]::new)));
        }
        for (PlannedLine line : plan.lines()) {
            if (line.isDroppedByClosure()) {
                all = all.paragraph(words.say(
                        "sheet.dropped-by-closure", line.name(), reading(line.nearestReading(), line.balance())));
            } else if (line.divisions().isZero()) {
                all = all.paragraph(words.say("sheet.below-display", line.name()));
            } else if (line.isBelowMinimumLoad()) {
                String least = SheetNumbers.amount(words, line.balance().minimumLoad());
                all = all.paragraph(words.say("sheet.below-minimum", line.name(), least));
            }
        }
        return all;
    }

    String reading(Amount<Mass> reading, Balance balance) {
        return SheetNumbers.reading(words, reading, balance.readability());
    }
}
