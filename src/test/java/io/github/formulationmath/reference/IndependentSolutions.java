package io.github.formulationmath.reference;

import io.github.formulationmath.chemistry.MolarMass;
import io.github.formulationmath.chemistry.MolecularFormula;
import io.github.formulationmath.emulsion.DaviesGroup;
import io.github.formulationmath.emulsion.Emulsifier;
import io.github.formulationmath.emulsion.EmulsifierBlend;
import io.github.formulationmath.emulsion.Hlb;
import io.github.formulationmath.emulsion.OilPhase;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.Interval;
import io.github.formulationmath.quantity.MassConcentration;
import io.github.formulationmath.quantity.MassFraction;
import io.github.formulationmath.quantity.VolumeFraction;
import io.github.formulationmath.reckoning.Source;
import io.github.formulationmath.soap.AlkaliNumber;
import io.github.formulationmath.solution.AcidConstants;
import io.github.formulationmath.solution.AlcoholDilution;
import io.github.formulationmath.solution.ChargeBalance;
import io.github.formulationmath.solution.DilutionSeries;
import io.github.formulationmath.solution.EthanolWater;
import io.github.formulationmath.solution.EthanolWater.Reference;
import io.github.formulationmath.solution.Neutralisation;
import io.github.formulationmath.solution.Stock;
import io.github.formulationmath.solution.StrengthBlend;
import io.github.formulationmath.solution.UndissociatedShare;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** Strengths, alcohol, acids and emulsifiers, asked of the public doors alone. */
final class IndependentSolutions {

    private static final Source SOURCE = Source.published("figures of our own", "cases");
    private static final AcidConstants WATER = acid("13.997");
    private static final AcidConstants ACETIC = acid("4.757");
    private static final AcidConstants BENZOIC = acid("4.204");
    private static final AcidConstants CITRIC = acid("3.128", "4.761", "6.396");
    private static final AcidConstants PHOSPHORIC = acid("2.148", "7.198", "12.375");
    private static final AcidConstants ETHANOLAMMONIUM = base("9.498");

    private IndependentSolutions() {}

    static void addTo(Figures figures) {
        addBlends(figures);
        addAlcohol(figures);
        addShares(figures);
        addPh(figures);
        addAmounts(figures);
        addEmulsifiers(figures);
    }

    private static void addBlends(Figures figures) {
        StrengthBlend blend = StrengthBlend.to(
                "30 %",
                Amount.mass("1000 g"),
                List.of(
                        Stock.of("s0", "60 %").costing("8 EUR", "1 kg").ofWhichThereIs("300 g"),
                        Stock.of("s1", "40 %").costing("5 EUR", "1 kg").ofWhichThereIs("400 g"),
                        Stock.of("s2", "25 %").costing("3.20 EUR", "1 kg").ofWhichThereIs("600 g"),
                        Stock.of("s3", "10 %").costing("1.50 EUR", "1 kg").ofWhichThereIs("1000 g")));
        StrengthBlend.Blended cheapest = (StrengthBlend.Blended) blend.cheapest();
        figures.add("strength-09 cost", cheapest.cost().orElseThrow());
        for (String stock : List.of("s0", "s1", "s2", "s3")) {
            figures.add("strength-09 " + stock, cheapest.masses().get(stock))
                    .add("strength-10 " + stock, blend.range(stock).orElseThrow());
        }
        Stock five = Stock.of("stock", "5 %");
        figures.add("strength-11 nine", DilutionSeries.onePartWith(five, "9").strengthAfter(4))
                .add("strength-11 ten", DilutionSeries.onePartWith(five, "10").strengthAfter(4));
    }

    private static void addAlcohol(Figures figures) {
        figures.add("strength-13 mass", byMass("45", Reference.AT_20_CELSIUS))
                .add("strength-15 mass", byMass("80", Reference.AT_20_CELSIUS))
                .add("strength-18 mass60f", byMass("50", Reference.AT_60_FAHRENHEIT))
                .add("strength-20 mass60f", byMass("94.9", Reference.AT_60_FAHRENHEIT));
        figures.add("strength-22 r1", density("30 %", "5 °C"))
                .add("strength-22 r2", density("72 %", "35 °C"))
                .add("strength-22 r3", density("90 %", "-15 °C"));
        AlcoholDilution half =
                AlcoholDilution.of(Amount.volume("500 mL"), "96 % v/v", "45 % v/v", Reference.AT_20_CELSIUS);
        figures.add("strength-23 water g", half.water()).add("strength-23 final ml", half.becomes());
        AlcoholDilution quarter =
                AlcoholDilution.making(Amount.volume("250 mL"), "96 % v/v", "70 % v/v", Reference.AT_20_CELSIUS);
        figures.add("strength-24 stock ml", quarter.poured()).add("strength-24 water g", quarter.water());
    }

    private static Interval<MassFraction> byMass(String percent, Reference reference) {
        return EthanolWater.byMass(VolumeFraction.parse(percent + " % v/v"), reference);
    }

    private static Object density(String share, String celsius) {
        return EthanolWater.density(MassFraction.parse(share), Amount.temperature(celsius));
    }

    // Acids and bases.

    private static AcidConstants acid(String... steps) {
        return AcidConstants.at25Celsius("acid", SOURCE, exact(steps));
    }

    private static AcidConstants base(String... steps) {
        return AcidConstants.ofBaseAt25Celsius("base", SOURCE, exact(steps));
    }

    private static String[] exact(String... steps) {
        return Arrays.stream(steps).flatMap(pk -> Stream.of(pk, "0")).toArray(String[]::new);
    }

    private static ChargeBalance water() {
        return ChargeBalance.of(WATER);
    }

    private static MolarMass mass(String formula) {
        return MolarMass.of(MolecularFormula.parse(formula));
    }

    private static void addShares(Figures figures) {
        AcidConstants benzoic = AcidConstants.at25Celsius("benzoic acid", SOURCE, "4.204", "0.005");
        figures.add("acid-09 int", UndissociatedShare.of(benzoic, "5.2", "0.1").ideal())
                .add("acid-11 a0", UndissociatedShare.of(CITRIC, "4.5", "0").ideal());
    }

    /** A free base brings no cations, its hydrochloride brings one less than none. */
    private static void addPh(Figures figures) {
        AcidConstants triethanolammonium = base("7.762");
        AcidConstants edta = acid("2.16", "3.119", "6.273", "10.948");
        ChargeBalance buffer = water().with(ACETIC, "0.05 mol/L", 0).with(ACETIC, "0.02 mol/L", 1);
        figures.add("acid-12 ph", water().with(ACETIC, "0.05 mol/L", 0).ph())
                .add("acid-13 ph", water().with(ACETIC, "0.02 mol/L", 1).ph())
                .add("acid-14 ph", water().with(ETHANOLAMMONIUM, "0.1 mol/L", 0).ph())
                .add(
                        "acid-15 ph",
                        water().with(triethanolammonium, "0.05 mol/L", -1).ph())
                .add("acid-16 ph", water().with(CITRIC, "0.03 mol/L", 0).ph())
                .add("acid-17 ph", water().with(CITRIC, "0.03 mol/L", 1).ph())
                .add("acid-18 ph", water().with(CITRIC, "0.03 mol/L", 3).ph())
                .add(
                        "acid-19 ph",
                        water().with(PHOSPHORIC, "0.025 mol/L", 1)
                                .with(PHOSPHORIC, "0.025 mol/L", 2)
                                .ph())
                .add(
                        "acid-20 ph",
                        water().with(acid("6.352", "10.329"), "0.1 mol/L", 1).ph())
                .add("acid-21 NaOH", water().withStrong("0.01 mol/L", 1).ph())
                .add("acid-21 hcl", water().withStrong("0.003 mol/L", -1).ph())
                .add("acid-21 water", water().ph())
                .add("acid-22 ph", water().withStrong("1e-8 mol/L", -1).ph())
                .add("acid-23 before", buffer.ph())
                .add("acid-23 after", buffer.withStrong("0.005 mol/L", 1).ph())
                .add(
                        "acid-24 ph",
                        water().with(BENZOIC, "0.02 mol/L", 1)
                                .with(CITRIC, "0.01 mol/L", 0)
                                .ph())
                .add("acid-34 acid", water().with(PHOSPHORIC, "0.02 mol/L", 0).ph())
                .add("acid-34 di", water().with(PHOSPHORIC, "0.02 mol/L", 2).ph())
                .add("acid-35 ph", water().with(edta, "0.005 mol/L", 2).ph())
                .add(
                        "acid-36 ph",
                        water().with(ETHANOLAMMONIUM, "0.1 mol/L", 0)
                                .with(ACETIC, "0.1 mol/L", 0)
                                .ph());
    }

    private static void addAmounts(Figures figures) {
        MolarMass citric = mass("C6H8O7");
        ChargeBalance sorbate = water().with(acid("4.762"), mass("C6H7KO2"), MassConcentration.parse("0.2 % w/v"), 1);
        ChargeBalance benzoate = water().with(BENZOIC, mass("C7H5NaO2"), MassConcentration.parse("0.5 % w/v"), 1);
        ChargeBalance sour = water().with(CITRIC, citric, MassConcentration.parse("0.3 % w/v"), 0);
        figures.add("acid-25 anh g", sorbate.toReach("4.8", CITRIC, citric, 0))
                .add("acid-25 hyd g", sorbate.toReach("4.8", CITRIC, mass("C6H8O7·H2O"), 0))
                .add("acid-26 g", benzoate.toReach("5.0", acid("3.86"), mass("C3H6O3"), 0))
                .add("acid-27 g", sour.strongToReach("5.5", mass("NaOH"), 1));
        Neutralisation carbomer = Neutralisation.ofCarboxyl("62 %", "62 %");
        figures.add("acid-31 NaOH", carbomer.needs(Amount.mass("0.28 g"), mass("NaOH"), 1))
                .add("acid-31 tea", carbomer.needs(Amount.mass("0.28 g"), mass("C6H15NO3"), 1));
    }

    // Emulsifiers.

    private static Emulsifier grade(String name, String hlb, String off) {
        return Emulsifier.of(name, hlb, off, SOURCE);
    }

    private static void addEmulsifiers(Figures figures) {
        Emulsifier low = grade("low", "4.3", "0");
        Emulsifier middle = grade("middle", "8.6", "0");
        Emulsifier high = grade("high", "15", "0");
        figures.add(
                "emulsifier-01 share hi",
                EmulsifierBlend.to(Hlb.parse("12.5"), List.of(grade("top", "16.7", "0"), low))
                        .range("top")
                        .orElseThrow());
        EmulsifierBlend family = EmulsifierBlend.to(Hlb.parse("10"), List.of(low, middle, high));
        figures.add("emulsifier-03 z", family.range("high").orElseThrow())
                .add("emulsifier-03 y", family.range("middle").orElseThrow())
                .add("emulsifier-03 x", family.range("low").orElseThrow());
        OilPhase.Emulsion cream = OilPhase.Emulsion.OIL_IN_WATER;
        figures.add(
                "emulsifier-05 req",
                OilPhase.of(cream, List.of(oil("a", "10 g", "12"), oil("b", "5 g", "7"), oil("c", "3 g", "15.5")))
                        .required());
        figures.add(
                        "emulsifier-06 a",
                        Hlb.ofEster(AlkaliNumber.parse("45.5 mg KOH/g"), AlkaliNumber.parse("276 mg KOH/g")))
                .add("emulsifier-07 v", Hlb.byDavies(Map.of(DaviesGroup.CARBOXYLATE_SODIUM, 1), 11))
                .add(
                        "emulsifier-08 int",
                        EmulsifierBlend.shareOfHigher(
                                        grade("low", "4.3", "0.5"),
                                        grade("top", "16.7", "0.5"),
                                        Interval.of(Hlb.parse("10"), Hlb.parse("10")))
                                .orElseThrow())
                .add(
                        "emulsifier-12 int",
                        EmulsifierBlend.valueOf(Map.of(
                                grade("high", "15", "0.3"), MassFraction.parse("70 %"),
                                grade("low", "4.3", "0.3"), MassFraction.parse("30 %"))));
        EmulsifierBlend priced = EmulsifierBlend.to(
                Hlb.parse("11"),
                List.of(
                        grade("s0", "16.7", "0").costing("12 EUR", "1 g"),
                        grade("s1", "15", "0").costing("9 EUR", "1 g"),
                        grade("s2", "8.6", "0").costing("14 EUR", "1 g"),
                        grade("s3", "4.3", "0").costing("6 EUR", "1 g")));
        addCheapest(figures, "emulsifier-09", priced);
        addCheapest(
                figures,
                "emulsifier-10",
                priced.with("s1", MassFraction.ZERO, MassFraction.parse("40 %"))
                        .with("s3", MassFraction.ZERO, MassFraction.parse("30 %")));
    }

    private static OilPhase.Oil oil(String name, String mass, String required) {
        return new OilPhase.Oil(
                name, Amount.mass(mass), OilPhase.Emulsion.OIL_IN_WATER, Hlb.within(required, "0"), SOURCE);
    }

    private static void addCheapest(Figures figures, String name, EmulsifierBlend blend) {
        EmulsifierBlend.Blended cheapest = (EmulsifierBlend.Blended) blend.cheapest();
        figures.add(name + " cost", cheapest.pricePerGram().orElseThrow());
        cheapest.shares().forEach((grade, share) -> figures.add(name + " " + grade, share));
    }
}
