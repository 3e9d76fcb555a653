// What every snippet may name without making it: a lotion of our own, its bench, its plan, what was read. Compiled together
// with the snippets, not with the tests, so that a snippet and its setting are mended in one place.
// The packages of the library are imported by the harness.

/** Compiled behind the imports of the harness. */
public final class Setting {

    public static final Ingredient preservative =
            Ingredient.blend("Preservative blend").part("Phenoxyethanol", "90 %").rest("Ethylhexylglycerin");

    /** Glycerin 2.5 %, Phenoxyethanol 1 %, the smallest line 0.5 %. */
    public static final Formula formula = Formula.inPercent("Oat lotion")
            .phase("water").quantitySufficient("Aqua").line("Glycerin", "2.5 %")
            .phase("oil").line("Avena Sativa Kernel Oil", "12 %").line("Glyceryl Stearate SE", "5 %")
            .phase("cool-down").line("Phenoxyethanol", "1 %").line("Lavender fragrance", "0.5 %")
            .build();
    public static final Formula lotion = formula;
    public static final Formula firstFormula = formula;
    public static final Formula secondFormula =
            Formula.inPercent("Oat lotion, second trial").quantitySufficient("Aqua").line("Glycerin", "3 %").build();
    public static final FormulaLine line = formula.line("Glycerin");
    public static final FormulaLine oil = formula.line("Avena Sativa Kernel Oil");
    public static final FormulaLine emulsifier = formula.line("Glyceryl Stearate SE");
    public static final String json = Json.formulas().write(formula);

    public static final Balance balance = Balance.of("0.1 g", "2 kg");
    public static final Balance kitchen = Balance.of("1 g", "5 kg").named("kitchen");
    public static final Balance pocket = Balance.of("0.01 g", "200 g").named("pocket");
    public static final Vessel beaker = Vessel.of("beaker", "214 g").holding("600 mL", "550 mL");
    public static final Vessel vessel = beaker;
    public static final Vessel boat = Vessel.of("boat", "2 g");
    public static final Bench bench = Bench.of(balance).with(beaker);
    public static final List<Bench> benches = List.of(bench, Bench.of(kitchen));
    public static final List<Formula> versions = List.of(formula, secondFormula);
    public static final TrialSeries series = TrialSeries.of(versions, Bench.of(pocket), "20 g", "5 %");
    public static final SeriesPlan seriesPlan = series.best().orElseThrow();
    public static final List<Equipment> candidates = List.of(
            Equipment.balance(kitchen, "0 EUR"), Equipment.balance(pocket, "24.90 EUR"), Equipment.boat(boat, "0.80 EUR"));
    public static final List<Demand> demands = List.of(Demand.of(formula, "20 g", "100 g", "5 %"));
    public static final Shelf shelf = Shelf.of(List.of(Lot.of("Glycerin", "G-17", "12 g")));
    public static final BatchConstraints constraints = BatchConstraints.of(Criterion.oneDivision());

    public static final Batch batch = Batch.of(formula, BatchSize.ofMass("500 g"));
    public static final WeighingPlan plan = WeighingPlan.of(batch, bench);
    public static final BulkPlanner planner = BulkPlanner.of(List.of(formula));
    public static final Amount<Mass> batchMass = Amount.mass("500 g");
    public static final double[] divisions = new double[6];

    public static final Readings readings = Readings.of(plan, WeighingMethod.TARE_EACH, plan.lines().stream()
            .map(planned -> Reading.of(planned.target().line(), planned.reading()))
            .toList());
    public static final BatchCode code = BatchCode.of("OATLOT", LocalDate.of(2026, 11, 25), 1);
    public static final BatchRecord record = BatchRecord.of(code, readings, Tolerances.of("5 %"));
    public static final MadeBatch made = MadeBatch.of(readings);
    public static final Instant instant = Instant.parse("2026-11-25T10:15:30Z");

    public static final LimitChecker checker =
            LimitChecker.of(LimitTable.eu2024February(), Product.leaveOn().on("face"), DecisionRule.worstCase());
    public static final LimitReport report = checker.check(formula);
    public static final Claim claim = Claim.about(formula, BatchSize.ofMass("500 g")).withFigure("Aqua", "395 g");
    public static final Working working = batch.line("Glycerin").working();

    public static final MolecularFormula c7h5nao2 = MolecularFormula.parse("C7H5NaO2");
    public static final Symbol LINE_MASS = Symbol.of("m", "line-mass", Kind.MASS);
    public static final Amount<Mass> mass = Amount.mass("200 g");
    public static final Amount<Dimensionless> share = Amount.of("25", FormulationUnits.PERCENT);
    public static final MonteCarlo<Mass> simulation = MonteCarlo.of(
                    List.of(InputQuantity.rectangular(Amount.mass("1 g"), Amount.mass("2 g"))),
                    x -> x[0],
                    Amount.mass("1 g"))
            .withMostTrials(20_000);
    public static final MonteCarlo.Result<Mass> result = simulate();
    public static final Bar bar = new Bar();

    /** A soap of one oil, its flakes, its standard. */
    public static final Source standard = Source.published("a standard of this setting", "table 2");
    public static final SaponificationValue oliveValue =
            SaponificationValue.ofStandard("184 mg KOH/g", "196 mg KOH/g", standard);
    public static final Fat olive = Fat.triglycerides("Olive oil", oliveValue, InertMatter.countedInTheValue());
    public static final AlkaliGrade flakes = AlkaliGrade.assay(
                    Alkali.SODIUM_HYDROXIDE, "97 %", "99 %", AlkaliGrade.Stated.TOTAL_ALKALI)
            .carbonate("0 %", "1 %", Evidence.MAXIMUM_ERROR, standard);
    public static final AlkaliGrade potash = AlkaliGrade.assay(
                    Alkali.POTASSIUM_HYDROXIDE, "89 %", "91 %", AlkaliGrade.Stated.HYDROXIDE)
            .carbonate("0 %", "1 %", Evidence.MAXIMUM_ERROR, standard);
    public static final LyeWater twice = LyeWater.perAlkali("2", LyeWater.Of.ALKALI_AS_WEIGHED);
    public static final Unsaponified five = Unsaponified.alkaliShortfall("5 %");
    public static final LyeCalculation lye = LyeCalculation.named("Kitchen bar")
            .fat(olive, "1000 g").alkali(flakes).leaving(five, Reckoned.FOR_EVERY_LOT).water("Aqua", twice).build();
    public static final AlkaliBalance judged = AlkaliBalance.of(lye, balance, WeighingMethod.TARE_EACH);
    public static final AcidConstants benzoic =
            AcidTable.shipped().constants("benzoic acid", Amount.temperature("25 °C"), "0.005");
    public static final Emulsifier oily = Emulsifier.of("oily", "4.3", "0.5", standard);
    public static final Emulsifier watery = Emulsifier.of("watery", "15", "0.5", standard);
    public static final Titrant acid = Titrant.of("HCl", "0.5 mol/L", "1.000");

    private static MonteCarlo.Result<Mass> simulate() {
        try {
            return simulation.run();
        } catch (InterruptedException e) {
            throw new IllegalStateException(e);
        }
    }

    /** A bar on a screen that shows how far a work is. */
    public static final class Bar {
        public void set(long value) {}

        public void setValue(int value) {}
    }

    private Setting() {}
}
