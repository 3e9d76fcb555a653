package io.github.formulationmath.printed;

import io.github.formulationmath.batch.Batch;
import io.github.formulationmath.batch.BatchSize;
import io.github.formulationmath.choice.BalanceAssignment;
import io.github.formulationmath.choice.Demand;
import io.github.formulationmath.choice.DilutedBatch;
import io.github.formulationmath.choice.Equipment;
import io.github.formulationmath.choice.EquipmentChoice;
import io.github.formulationmath.choice.Predilution;
import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.FormulaBuilder;
import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.formula.Substance;
import io.github.formulationmath.label.Label;
import io.github.formulationmath.label.LabelRule;
import io.github.formulationmath.label.NetContents;
import io.github.formulationmath.limit.LimitChecker;
import io.github.formulationmath.mend.Correction;
import io.github.formulationmath.mend.CorrectionRules;
import io.github.formulationmath.mend.StillToGo;
import io.github.formulationmath.number.Rounding;
import io.github.formulationmath.packing.BatchCost;
import io.github.formulationmath.packing.ExpectedLoss;
import io.github.formulationmath.packing.PackFill;
import io.github.formulationmath.packing.PriceList;
import io.github.formulationmath.plan.Bench;
import io.github.formulationmath.plan.Closure;
import io.github.formulationmath.plan.ExpectedProduct;
import io.github.formulationmath.plan.PlannedLine;
import io.github.formulationmath.plan.PlannedLoad;
import io.github.formulationmath.plan.Tolerances;
import io.github.formulationmath.plan.WeighingPlan;
import io.github.formulationmath.pot.Evaporation;
import io.github.formulationmath.pot.LineAddition;
import io.github.formulationmath.pot.MadeBatch;
import io.github.formulationmath.pot.Reading;
import io.github.formulationmath.pot.Readings;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.MassFraction;
import io.github.formulationmath.reckoning.Wording;
import io.github.formulationmath.record.BatchCode;
import io.github.formulationmath.record.BatchRecord;
import io.github.formulationmath.record.BenchEntry;
import io.github.formulationmath.record.VersionComparison;
import io.github.formulationmath.series.SeriesComparison;
import io.github.formulationmath.series.TrialSeries;
import io.github.formulationmath.sheet.BatchSheet;
import io.github.formulationmath.sheet.LabelText;
import io.github.formulationmath.sheet.RecordSheet;
import io.github.formulationmath.sheet.SeriesSheet;
import io.github.formulationmath.sheet.SoapSheet;
import io.github.formulationmath.shelf.Lot;
import io.github.formulationmath.shelf.Picking;
import io.github.formulationmath.shelf.Shelf;
import io.github.formulationmath.simulation.CoverageFactor;
import io.github.formulationmath.size.BatchConstraints;
import io.github.formulationmath.size.BatchWindow;
import io.github.formulationmath.size.CapTarget;
import io.github.formulationmath.size.CoarsestStep;
import io.github.formulationmath.size.Criterion;
import io.github.formulationmath.size.MinimumBatch;
import io.github.formulationmath.soap.AlkaliBalance;
import io.github.formulationmath.soap.LyeCalculation;
import io.github.formulationmath.soap.LyeWater;
import io.github.formulationmath.soap.Reckoned;
import io.github.formulationmath.soap.Soap;
import io.github.formulationmath.soap.SoapComposition;
import io.github.formulationmath.soap.SoapMending;
import io.github.formulationmath.soap.Unsaponified;
import io.github.formulationmath.solution.Stock;
import io.github.formulationmath.solution.StrengthBlend;
import io.github.formulationmath.support.Bar;
import io.github.formulationmath.support.Checkers;
import io.github.formulationmath.verification.Claim;
import io.github.formulationmath.verification.LyeClaim;
import io.github.formulationmath.verification.LyeVerification;
import io.github.formulationmath.verification.Verification;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.weighing.Vessel;
import io.github.formulationmath.weighing.WeighingMethod;
import io.github.formulationmath.weighing.WeighingStation;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.concurrent.Callable;
import javax.measure.quantity.Mass;

/** A workshop where every mass is typed in the units of one system, and everything that it asks of the library. */
final class Workshop {

    /** In what batches, steps and capacities are typed there; the numbers are of such a size that plans can be made. */
    record Units(String batch, int least, int most, List<String> steps, String capacity, String small, String price) {}

    static final Units GRAMS = new Units("g", 120, 900, List.of("0.1 g", "0.05 g", "0.01 g"), "6 kg", "g", "kg");
    static final Units KILOGRAMS = new Units("kg", 1, 4, List.of("0.5 g", "0.1 g", "1 g"), "6 kg", "g", "kg");
    static final Units OUNCES =
            new Units("oz", 8, 60, List.of("0.01 oz", "0.05 oz", "0.005 oz", "0.1 oz"), "11 lb", "oz", "lb");
    static final Units POUNDS =
            new Units("lb", 1, 7, List.of("0.01 oz", "0.05 oz", "0.1 oz", "0.002 lb"), "12 lb", "oz", "lb");

    private final Units units;
    private final Random random;
    private final Map<String, Callable<?>> answers = new LinkedHashMap<>();

    private Workshop(Units units, long seed) {
        this.units = units;
        this.random = new Random(seed);
    }

    /** Everything that is asked, by a name; asking may be refused. */
    static Map<String, Callable<?>> answers(Units units, long seed) {
        Workshop workshop = new Workshop(units, seed);
        workshop.ask();
        return workshop.answers;
    }

    private void ask() {
        String step = units.steps().get(random.nextInt(units.steps().size()));
        Balance balance = Balance.of(step, units.capacity());
        String size = size();
        Formula formula = formula("Oat cream");
        Batch batch = Batch.of(formula, BatchSize.ofMass(size));
        Bench bench = Bench.of(balance)
                .closing(random.nextBoolean() ? Closure.CLOSED : Closure.INDEPENDENT)
                .with(random.nextBoolean() ? Vessel.none() : Vessel.of("jug", small(3, 9)));
        Tolerances tolerances = Tolerances.of(1 + random.nextInt(9) + " %");
        WeighingMethod method = random.nextBoolean() ? WeighingMethod.TARE_EACH : WeighingMethod.CUMULATIVE;

        answers.put("formula", () -> formula);
        answers.put("batch", () -> batch);
        answers.put("bench", () -> bench);
        WeighingPlan plan = WeighingPlan.of(batch, bench);
        ExpectedProduct expected = ExpectedProduct.of(plan, method);
        answers.put("plan", () -> plan);
        answers.put("load", () -> PlannedLoad.of(formula, bench));
        answers.put("expected", () -> expected);
        pages("sheet", words -> BatchSheet.of(plan, words));
        pages("sure sheet", words -> BatchSheet.of(expected, tolerances, words));
        sizes(formula, bench, balance, batch, tolerances, method);
        choice(formula, batch, balance, tolerances);
        pot(plan, tolerances, balance);
        mixed(batch, bench, tolerances);
        packing(formula, batch, plan);
        limits(batch, expected, balance, method);
        volumes(formula, batch, balance, tolerances);
        series(bench, tolerances);
        verification(formula, size, balance);
        soap(balance, method, tolerances);
        refusals(formula, batch, bench, plan);
    }

    /** A vessel of which only the volume is known: what fits is told as a mass of the bench. */
    private void volumes(Formula formula, Batch batch, Balance balance, Tolerances tolerances) {
        Vessel jug = Vessel.of("jug", small(3, 9));
        Bench roomy = Bench.of(balance)
                .with(jug.holding("950 US fl oz", "900 US fl oz"))
                .withProductDensity("0.97 g/mL");
        Bench narrow = Bench.of(balance)
                .with(jug.holding("2 US fl oz", "1.5 US fl oz"))
                .withProductDensity("0.97 g/mL");
        answers.put("window of a volume", () -> BatchWindow.of(formula, roomy, Criterion.roundingWithin(tolerances)));
        answers.put("no room", () -> WeighingPlan.of(batch, narrow));
    }

    private interface Page {
        Object in(Wording words);
    }

    private void pages(String name, Page page) {
        for (Wording words : Everything.WORDS) {
            answers.put(name + " " + words.locale(), () -> page.in(words));
        }
    }

    private String number(int least, int most, int places) {
        int scale = (int) Math.pow(10, places);
        int value = least * scale + random.nextInt((most - least) * scale);
        return new java.math.BigDecimal(value)
                .movePointLeft(places)
                .stripTrailingZeros()
                .toPlainString();
    }

    private String size() {
        return number(units.least(), units.most(), random.nextInt(3)) + " " + units.batch();
    }

    private String small(int least, int most) {
        return number(least, most, 1) + " " + units.small();
    }

    private Formula formula(String name) {
        FormulaBuilder builder = random.nextBoolean() ? Formula.inPercent(name) : null;
        if (builder != null) {
            builder.phase("Water").quantitySufficient("Aqua").line("Glycerin", number(2, 6, 2) + " %");
            builder.line("Xanthan Gum", number(0, 1, 2) + "1 %");
            builder.phase("Oil").line("Avena Sativa Kernel Oil", number(8, 15, 1) + " %");
            return builder.line("Phenoxyethanol", "0.9 %")
                    .line("Tocopherol", "0.5 %")
                    .build();
        }
        if (random.nextBoolean()) {
            return Formula.inParts(name)
                    .line("Aqua", number(40, 90, 0))
                    .line("Glycerin", number(3, 9, 0))
                    .line("Avena Sativa Kernel Oil", number(8, 19, 0))
                    .line("Phenoxyethanol", "1")
                    .build();
        }
        return Formula.inMasses(name)
                .line("Aqua", number(40, 90, 1) + " " + units.small())
                .line("Glycerin", small(3, 9))
                .line("Avena Sativa Kernel Oil", small(8, 19))
                .line("Phenoxyethanol", "0.7 " + units.small())
                .build();
    }

    private void sizes(
            Formula formula, Bench bench, Balance balance, Batch batch, Tolerances tolerances, WeighingMethod method) {
        Map<String, Criterion> criteria = new LinkedHashMap<>();
        criteria.put("one division", Criterion.oneDivision());
        criteria.put("rounding", Criterion.roundingWithin(tolerances));
        criteria.put("made", Criterion.madeWithin(tolerances));
        criteria.put("bound", Criterion.errorBound(tolerances, method));
        criteria.put("least net", Criterion.leastNetMass(Amount.mass(small(1, 3))));
        criteria.put("cap", Criterion.capKept(Substance.of("Phenoxyethanol"), MassFraction.parse("1.3 %"), method));
        criteria.put("exact", Criterion.exactReadings());
        criteria.put("minimum weight", Criterion.minimumWeight());
        criteria.forEach((name, criterion) -> {
            answers.put("least by " + name, () -> MinimumBatch.of(formula, balance, criterion));
            answers.put("window by " + name, () -> BatchWindow.of(formula, bench, criterion));
            answers.put("coarsest by " + name, () -> CoarsestStep.of(batch, balance, criterion));
        });
        answers.put(
                "window in steps",
                () -> BatchWindow.of(
                        formula,
                        bench,
                        BatchConstraints.of(Criterion.roundingWithin(tolerances))
                                .inStepsOf("1 " + units.small())
                                .withLeastSize(units.least() + " " + units.batch())
                                .withStock("Glycerin", small(4, 9))));
        answers.put(
                "empty window",
                () -> BatchWindow.of(
                        formula,
                        bench,
                        BatchConstraints.of(Criterion.roundingWithin(tolerances))
                                .withLeastSize("5 " + units.price())
                                .withStock("Glycerin", "0.1 " + units.small())));
        answers.put(
                "empty window for the capacity",
                () -> BatchWindow.of(
                        formula, bench, BatchConstraints.of(Criterion.errorBound(Tolerances.of("0.001 %"), method))));
        answers.put(
                "within",
                () -> BatchWindow.of(formula, bench, Criterion.roundingWithin(tolerances))
                        .within(
                                units.least() + " " + units.batch(),
                                units.most() + " " + units.batch(),
                                "1 " + units.batch()));
        answers.put(
                "cap target",
                () -> CapTarget.of(batch, balance, Substance.of("Phenoxyethanol"), MassFraction.parse("1 %"), method));
    }

    private void choice(Formula formula, Batch batch, Balance balance, Tolerances tolerances) {
        FormulaLine least = formula.lines().get(formula.lines().size() - 1);
        FormulaLine water = formula.line("Aqua");
        Balance fine = Balance.of(units.small().equals("g") ? "0.001 g" : "0.0005 oz", small(3, 9));
        answers.put("predilution", () -> Predilution.of(batch, least, water, balance, Tolerances.of("0.2 %")));
        answers.put("diluted", () -> DilutedBatch.of(batch).diluting(least, water, balance, Tolerances.of("0.2 %")));
        pages("diluted sheet", words -> {
            DilutedBatch diluted = DilutedBatch.of(batch).diluting(least, water, balance, Tolerances.of("0.2 %"));
            return BatchSheet.of(diluted, WeighingPlan.of(diluted.batch(), balance), words);
        });
        answers.put(
                "assignment",
                () -> BalanceAssignment.of(
                        batch,
                        List.of(
                                WeighingStation.inVessel(balance, Vessel.none()),
                                WeighingStation.fromBoat(fine, Vessel.of("boat", "0.2 " + units.small()))),
                        tolerances));
        answers.put(
                "what to buy",
                () -> EquipmentChoice.of(
                        List.of(
                                Equipment.balance(balance.named("bench"), "40 EUR"),
                                Equipment.balance(fine.named("pocket"), "25 EUR"),
                                Equipment.pot(
                                        Vessel.of("pot", small(5, 9)).holding("180 US fl oz", "200 US fl oz"),
                                        "10 EUR")),
                        List.of(Demand.of(formula, size(), size(), Criterion.roundingWithin(tolerances)))));
    }

    private Reading read(PlannedLine line, int steps) {
        Amount<Mass> step = line.balance().readability();
        Amount<Mass> shown = line.reading().plus(step.times(steps));
        return Reading.of(line.target().line(), shown.signum() > 0 ? shown : line.reading());
    }

    private MadeBatch made(WeighingPlan plan, int worst) {
        List<Reading> readings = new ArrayList<>();
        for (PlannedLine line : plan.lines()) {
            readings.add(read(line, random.nextInt(2 * worst + 1) - worst));
        }
        return MadeBatch.of(Readings.of(plan, WeighingMethod.TARE_EACH, readings));
    }

    private void pot(WeighingPlan plan, Tolerances tolerances, Balance balance) {
        MadeBatch made = made(plan, 40);
        Tolerances narrow = Tolerances.of("0.5 %");
        CorrectionRules rules = CorrectionRules.within(narrow);
        FormulaLine first = plan.formula().lines().get(0);
        answers.put("made", () -> made);
        answers.put("mended", () -> Correction.smallest(made, rules));
        answers.put("restored", () -> Correction.restoring(made, rules));
        answers.put(
                "mending in little room",
                () -> Correction.smallest(
                        made,
                        rules.withRoomFor(Amount.mass("0.3 " + units.small()))
                                .withStock(first, Amount.mass("0.1 " + units.small()))));
        answers.put(
                "still to go",
                () -> StillToGo.of(
                        Readings.begun(
                                plan,
                                WeighingMethod.TARE_EACH,
                                List.of(
                                        read(plan.lines().get(0), 3),
                                        read(plan.lines().get(1), 9))),
                        narrow));
        Amount<Mass> less = made.mass().minus(Amount.mass("0.3 " + units.small()));
        answers.put("gone off", () -> Evaporation.of(made, less, first).on(balance));
        answers.put(
                "added back",
                () -> Evaporation.of(made, less, first).on(balance).notAddedBack());
        List<Reading> all = new ArrayList<>();
        for (PlannedLine line : plan.lines()) {
            all.add(read(line, random.nextInt(9) - 4));
        }
        all.set(1, Reading.notWrittenDown(plan.lines().get(1).target().line()));
        BatchRecord record = BatchRecord.of(
                        BatchCode.of("OATCR", LocalDate.of(2026, 11, 26), 1),
                        Readings.of(plan, WeighingMethod.TARE_EACH, all),
                        tolerances)
                .with(BenchEntry.addition(
                        LineAddition.of(first, balance.readability().times(5))))
                .filled(Amount.mass("0.4 " + units.small()), PackFill.ofMass(small(1, 3)));
        answers.put("record", () -> record);
        pages("record sheet", words -> RecordSheet.of(record, words));
        pages(
                "label",
                words -> LabelText.of(record)
                        .with(Label.of(LabelRule.eu()).list(record.formula()))
                        .with(NetContents.byMass(Amount.mass(small(2, 4)), Amount.mass("0.1 " + units.small())))
                        .document(words));
    }

    private void mixed(Batch batch, Bench bench, Tolerances tolerances) {
        Balance fine = Balance.of(units.small().equals("g") ? "0.001 g" : "0.0005 oz", "9 " + units.small())
                .named("pocket");
        WeighingStation boat = WeighingStation.fromBoat(fine, Vessel.of("boat", "0.2 " + units.small()));
        BalanceAssignment assigned = BalanceAssignment.of(
                batch, List.of(WeighingStation.inVessel(bench.balance(), bench.vessel()), boat), tolerances);
        answers.put("plan on two balances", () -> assigned.plan(Closure.CLOSED));
        pages("sheet of two balances", words -> BatchSheet.of(assigned.plan(Closure.CLOSED), words));
    }

    private void packing(Formula formula, Batch batch, WeighingPlan plan) {
        String fill = small(1, 3);
        answers.put("packs", () -> Batch.of(formula, BatchSize.ofPacks(6, fill, "4 %")));
        answers.put(
                "stock",
                () -> Batch.of(formula, BatchSize.ofStock(formula.line("Glycerin"), Amount.mass(small(2, 5)))));
        ExpectedLoss loss = ExpectedLoss.ofPast(List.of(
                Amount.mass("0.3 " + units.small()),
                Amount.mass("0.5 " + units.small()),
                Amount.mass("0.4 " + units.small())));
        answers.put("loss", () -> loss);
        answers.put("to fill", () -> loss.toFill(6, PackFill.ofMass(fill), CoverageFactor.of(2)));
        PriceList prices = PriceList.empty();
        for (FormulaLine line : formula.lines()) {
            prices = prices.with(line.name(), PriceList.Offer.of(number(2, 20, 2) + " EUR", "1 " + units.price()));
        }
        PriceList all = prices;
        answers.put("prices", () -> all);
        answers.put("cost", () -> BatchCost.of(batch, all, Rounding.toDecimalPlaces(2)));
        answers.put("cost as made", () -> BatchCost.of(made(plan, 9), all, Rounding.toDecimalPlaces(2)));
        Shelf shelf = Shelf.of(List.of(
                Lot.of("Glycerin", "G1", small(2, 4)).useBy("2027-01-31"),
                Lot.of("Glycerin", "G2", small(20, 40)).useBy("2027-03-31"),
                Lot.of("Aqua", "A1", "4 " + units.price()),
                Lot.of("Xanthan Gum", "X1", small(2, 4)),
                Lot.of("Avena Sativa Kernel Oil", "O1", small(4, 40)),
                Lot.of("Phenoxyethanol", "P1", small(2, 4)),
                Lot.of("Tocopherol", "T1", small(2, 4))));
        Picking day = Picking.on("2026-12-01");
        answers.put("shelf", () -> shelf);
        answers.put("largest of the shelf", () -> shelf.largest(formula, day));
        answers.put("taken", () -> shelf.take(batch, day));
        answers.put("taken by the plan", () -> shelf.take(plan, day));
        answers.put("use first", () -> shelf.useFirst(day));
        answers.put(
                "makeable",
                () -> shelf.makeable(
                        List.of(MinimumBatch.of(formula, plan.bench().balance(), Criterion.oneDivision())
                                .sizes()),
                        day));
        answers.put("other version", () -> VersionComparison.of(formula, formula("Oat cream 2")));
    }

    private void limits(Batch batch, ExpectedProduct expected, Balance balance, WeighingMethod method) {
        LimitChecker checker = Checkers.LEAVE_ON;
        answers.put("limits", () -> checker.check(expected));
        pages("limits page", words -> checker.check(expected).document(words));
        answers.put(
                "limit kept",
                () -> MinimumBatch.of(
                        batch.formula(),
                        balance,
                        Criterion.limitKept(checker.check(expected).verdicts().get(0), method)));
    }

    private void series(Bench bench, Tolerances tolerances) {
        TrialSeries series = TrialSeries.of(
                List.of(trial("plain", "3.5 %"), trial("rich", "7.25 %"), trial("richest", "11 %")),
                bench,
                Amount.mass(small(8, 19)),
                tolerances);
        answers.put("series", () -> series);
        answers.put(
                "series with losses",
                () -> series.withLeftInVessel("0.2 " + units.small()).withStock("Glycerin", "0.5 " + units.small()));
        answers.put("compared", () -> SeriesComparison.of(series.best().orElseThrow()));
        pages("series sheet", words -> SeriesSheet.of(series.best().orElseThrow(), words));
    }

    private static Formula trial(String name, String oil) {
        return Formula.inPercent(name)
                .quantitySufficient("Aqua")
                .line("Glycerin", "4 %")
                .line("Avena Sativa Kernel Oil", oil)
                .build();
    }

    private void verification(Formula formula, String size, Balance balance) {
        Claim claim = Claim.about(formula, BatchSize.ofMass(size)).on(balance);
        WeighingPlan plan = WeighingPlan.of(Batch.of(formula, BatchSize.ofMass(size)), balance);
        Claim right = claim;
        Claim wrong = claim;
        for (PlannedLine line : plan.lines()) {
            right = right.withFigure(line.name(), line.reading().toString());
            wrong = wrong.withFigure(
                    line.name(),
                    line.reading().times(line.index() == 1 ? 10 : 1).toString());
        }
        Claim fine = right;
        Claim off = wrong.withTotal(plan.total().toString());
        answers.put("claim", () -> Verification.of(fine));
        pages("verified", words -> Verification.of(fine).report(words));
        answers.put("wrong claim", () -> Verification.of(off));
        pages("wrong claim verified", words -> Verification.of(off).report(words));
    }

    private void soap(Balance balance, WeighingMethod method, Tolerances tolerances) {
        LyeCalculation lye = LyeCalculation.named("bar")
                .fat(Bar.fat("Olive", "184", "196"), small(17, 22))
                .fat(Bar.fat("Coconut", "248", "265"), small(5, 9))
                .alkali(Bar.FLAKES)
                .water("Aqua", LyeWater.concentration("30 %", LyeWater.Of.PURE_HYDROXIDE))
                .leaving(Unsaponified.alkaliShortfall("5 %"), Reckoned.FOR_EVERY_LOT)
                .build();
        answers.put("lye", () -> lye);
        answers.put("alkali", () -> AlkaliBalance.of(lye, balance, method));
        ExpectedProduct expected = lye.expectedOn(balance, method);
        Soap soap = lye.soap();
        answers.put("soap", () -> soap);
        answers.put("soap on the bench", () -> expected);
        pages("soap sheet", words -> SoapSheet.of(soap, expected, words));
        pages("alkali page", words -> AlkaliBalance.of(soap, expected).document(words));
        answers.put("composition", () -> SoapComposition.of(soap, expected));
        MadeBatch made = made(expected.plan(), 30);
        answers.put(
                "soap mended",
                () -> SoapMending.of(
                        soap, made, CorrectionRules.within(tolerances), Unsaponified.alkaliShortfall("2 %")));
        pages(
                "soap mending",
                words -> SoapMending.of(
                                soap, made, CorrectionRules.within(tolerances), Unsaponified.alkaliShortfall("2 %"))
                        .document(words));
        LyeClaim claim = LyeClaim.about(lye);
        LyeClaim wrong = claim.withFigure("Sodium Hydroxide", number(2, 4, 2) + " " + units.small());
        answers.put("lye claim", () -> LyeVerification.of(wrong));
        pages("lye verified", words -> LyeVerification.of(wrong).report(words));
        answers.put(
                "strength",
                () -> StrengthBlend.to(
                        "10 %",
                        Amount.mass(small(8, 30)), List.of(Stock.of("Lactic acid", "80 %"), Stock.diluent("Aqua"))));
        answers.put(
                "strength in steps",
                () -> StrengthBlend.to(
                                "10 %",
                                Amount.mass(small(8, 30)),
                                List.of(Stock.of("Lactic acid", "80 %"), Stock.diluent("Aqua")))
                        .inSteps(balance));
    }

    /** Calls that have to be refused, for what the refusal says. */
    private void refusals(Formula formula, Batch batch, Bench bench, WeighingPlan plan) {
        answers.put(
                "too heavy", () -> WeighingPlan.of(Batch.of(formula, BatchSize.ofMass("40 " + units.price())), bench));
        answers.put(
                "too heavy for the closing",
                () -> WeighingPlan.of(
                        Batch.of(formula, BatchSize.ofMass("40 " + units.price())), bench.closing(Closure.CLOSED)));
        answers.put(
                "no reading of the display",
                () -> Readings.of(
                        plan,
                        WeighingMethod.TARE_EACH,
                        List.of(Reading.of(formula.lines().get(0), "1.23456789 " + units.small()))));
        answers.put(
                "beyond the capacity",
                () -> Readings.of(
                        plan,
                        WeighingMethod.TARE_EACH,
                        List.of(Reading.of(formula.lines().get(0), "100 " + units.price()))));
        answers.put(
                "cumulative that falls",
                () -> Readings.of(
                        plan,
                        WeighingMethod.CUMULATIVE,
                        List.of(
                                Reading.of(formula.lines().get(0), "5 " + units.small()),
                                Reading.of(formula.lines().get(1), "4 " + units.small()))));
        answers.put(
                "filled with more than was made",
                () -> BatchRecord.of(
                                BatchCode.of("OATCR", LocalDate.of(2026, 11, 26), 1),
                                Readings.asPlanned(plan),
                                Tolerances.of("5 %"))
                        .filled(Amount.mass("90 " + units.price()), PackFill.ofMass(small(1, 3))));
        answers.put("a vessel too heavy", () -> bench.with(Vessel.of("cauldron", "50 " + units.price())));
        answers.put("a step larger than the capacity", () -> Balance.of("9 " + units.price(), "1 " + units.price()));
        answers.put(
                "a minimum load above the capacity",
                () -> bench.balance().withMinimumLoad(Amount.mass("90 " + units.price())));
        answers.put("no size", () -> BatchSize.ofMass("0 " + units.batch()));
        answers.put("a negative size", () -> BatchSize.ofMass("-1 " + units.batch()));
        answers.put(
                "more evaporated than there was",
                () -> Evaporation.of(
                        made(plan, 3),
                        Amount.mass("90 " + units.price()),
                        formula.lines().get(0)));
        answers.put(
                "net contents of nothing",
                () -> NetContents.byMass(Amount.mass("0.05 " + units.small()), Amount.mass("0.1 " + units.small())));
        answers.put(
                "net contents in steps of nothing",
                () -> NetContents.byMass(Amount.mass("0.05 " + units.small()), Amount.mass("0 " + units.small())));
        answers.put("a volume", () -> Batch.of(formula, BatchSize.ofVolume("1 L", "0 g/mL")));
        answers.put("packs of nothing", () -> PackFill.ofMass("0 " + units.small()));
        answers.put("lots of less than nothing", () -> Lot.of("Glycerin", "G1", "-1 " + units.small()));
        answers.put(
                "shelf too small",
                () -> Shelf.of(List.of(Lot.of("Aqua", "A1", "0.1 " + units.small())))
                        .take(batch, Picking.on("2026-12-01")));
    }
}
