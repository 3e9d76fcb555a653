package io.github.formulationmath.reference;

import io.github.formulationmath.batch.Batch;
import io.github.formulationmath.batch.BatchSize;
import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.plan.ExpectedProduct;
import io.github.formulationmath.plan.WeighingPlan;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.reckoning.Source;
import io.github.formulationmath.soap.Acid;
import io.github.formulationmath.soap.Alkali;
import io.github.formulationmath.soap.AlkaliBalance;
import io.github.formulationmath.soap.AlkaliGrade;
import io.github.formulationmath.soap.AlkaliMixture;
import io.github.formulationmath.soap.Evidence;
import io.github.formulationmath.soap.Fat;
import io.github.formulationmath.soap.InertMatter;
import io.github.formulationmath.soap.LyeBuilder;
import io.github.formulationmath.soap.LyeCalculation;
import io.github.formulationmath.soap.LyeWater;
import io.github.formulationmath.soap.Reckoned;
import io.github.formulationmath.soap.SaponificationValue;
import io.github.formulationmath.soap.Soap;
import io.github.formulationmath.soap.Unsaponified;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.weighing.ErrorModel;
import io.github.formulationmath.weighing.WeighingMethod;
import javax.measure.quantity.Mass;
import org.jspecify.annotations.Nullable;

/** Lyes and what is left of them, asked of the public doors alone. */
final class IndependentSoaps {

    private static final Source SOURCE = Source.published("figures of our own", "cases");
    private static final InertMatter NONE = InertMatter.atMost("0 %");
    private static final Unsaponified SIX = Unsaponified.alkaliShortfall("6 %");
    private static final Unsaponified NOTHING = Unsaponified.alkaliShortfall("0 %");
    private static final AlkaliGrade PURE = hydroxide(Alkali.SODIUM_HYDROXIDE, "100 %", "100 %");
    private static final AlkaliGrade FLAKES = hydroxide(Alkali.SODIUM_HYDROXIDE, "98.5 %", "98.5 %");
    private static final AlkaliGrade POTASH = hydroxide(Alkali.POTASSIUM_HYDROXIDE, "90 %", "90 %");
    private static final AlkaliGrade RANGE = hydroxide(Alkali.SODIUM_HYDROXIDE, "97 %", "99 %");
    private static final Balance TENTHS = Balance.of("0.1 g", "10 kg");
    private static final Balance FINEST = Balance.of("0.000000001 g", "10 kg");

    private IndependentSoaps() {}

    static void addTo(Figures figures) {
        addLyes(figures);
        addJudgements(figures);
    }

    private static Fat fat(String name, String least, String greatest, InertMatter inert) {
        return Fat.triglycerides(
                name, SaponificationValue.ofStandard(least + " mg KOH/g", greatest + " mg KOH/g", SOURCE), inert);
    }

    private static AlkaliGrade hydroxide(Alkali alkali, String least, String greatest) {
        return AlkaliGrade.assay(alkali, least, greatest, AlkaliGrade.Stated.HYDROXIDE)
                .carbonate("0 %", "0 %", Evidence.MAXIMUM_ERROR, SOURCE);
    }

    private static AlkaliGrade total(Alkali alkali, String least, String greatest, String low, String high) {
        return AlkaliGrade.assay(alkali, least, greatest, AlkaliGrade.Stated.TOTAL_ALKALI)
                .carbonate(low, high, Evidence.MAXIMUM_ERROR, SOURCE);
    }

    private static Acid acid(String formula, int protons, String least, String greatest) {
        return Acid.of("Acid", formula, protons, least, greatest);
    }

    // What to weigh.

    private static LyeBuilder lye(Unsaponified goal) {
        return LyeCalculation.named("lye")
                .fat(fat("Oil", "190", "190", NONE), "640 g")
                .fat(fat("Coconut", "255", "255", NONE), "260 g")
                .fat(fat("Shea", "182", "182", NONE), "100 g")
                .leaving(goal, Reckoned.WITH_THE_MIDDLES)
                .water("Aqua", LyeWater.perAlkali("2", LyeWater.Of.PURE_HYDROXIDE));
    }

    private static void addLyes(Figures figures) {
        LyeBuilder ranges = LyeCalculation.named("lye")
                .fat(fat("Oil", "186", "194", NONE), "640 g")
                .fat(fat("Coconut", "248", "262", NONE), "260 g")
                .fat(fat("Shea", "160", "195", NONE), "100 g")
                .leaving(SIX, Reckoned.WITH_THE_MIDDLES)
                .water("Aqua", LyeWater.ofFats("30 %"));
        figures.add("soap-04 NaOH", ranges.alkali(PURE).build().alkali())
                .add(
                        "soap-05 NaOH",
                        lye(Unsaponified.fatOverEquivalence("6 %"))
                                .alkali(PURE)
                                .build()
                                .alkali())
                .add("soap-08 alkali", weighed(total(Alkali.SODIUM_HYDROXIDE, "98.5 %", "98.5 %", "1.2 %", "1.2 %")))
                .add(
                        "soap-09 alkali",
                        weighed(total(Alkali.POTASSIUM_HYDROXIDE, "88.5 %", "88.5 %", "2.1 %", "2.1 %")));
        addPair(figures, "soap-11", AlkaliMixture.byPureMass("70 %"));
        addPair(figures, "soap-12", AlkaliMixture.asWeighed("70 %"));
        figures.add("soap-14 water by pure hydroxide", water(LyeWater.Of.PURE_HYDROXIDE))
                .add("soap-14 water as weighed", water(LyeWater.Of.ALKALI_AS_WEIGHED));
        addSour(figures, "soap-17 NaOH", acid("C6H8O7", 3, "100 %", "100 %"), "12 g");
        addSour(figures, "soap-18 NaOH", acid("C6H8O7·H2O", 3, "100 %", "100 %"), "12 g");
        addSour(figures, "soap-19 NaOH", acid("C3H6O3", 1, "80 %", "80 %"), "15 g");
        addSour(figures, "soap-20 NaOH", acid("C18H36O2", 1, "100 %", "100 %"), "20 g");
    }

    private static Amount<Mass> weighed(AlkaliGrade grade) {
        return lye(SIX).alkali(grade).build().alkali();
    }

    private static Amount<Mass> water(LyeWater.Of alkali) {
        return lye(SIX).alkali(FLAKES)
                .water("Aqua", LyeWater.concentration("30 %", alkali))
                .build()
                .water();
    }

    private static void addPair(Figures figures, String name, AlkaliMixture mixture) {
        LyeCalculation pair = lye(SIX).alkalis(mixture, FLAKES, POTASH).build();
        figures.add(name + " NaOH", pair.alkalis().get(0).mass())
                .add(name + " KOH", pair.alkalis().get(1).mass());
    }

    private static void addSour(Figures figures, String name, Acid acid, String mass) {
        figures.add(name, lye(SIX).acid(acid, mass).alkali(PURE).build().alkali());
    }

    // What is left.

    /** 640 g, 260 g and 100 g of three fats with an alkali, and the acid if there is one. */
    private record Pot(
            InertMatter inert,
            AlkaliGrade grade,
            String alkali,
            @Nullable Acid acid) {

        Formula formula() {
            var builder = Formula.inMasses("pot")
                    .line("Oil", "640 g")
                    .line("Coconut", "260 g")
                    .line("Shea", "100 g");
            if (acid != null) {
                builder.line("Acid", "12 g");
            }
            return builder.line("Flakes", alkali + " g").build();
        }

        Soap soap() {
            Soap soap = Soap.of(formula())
                    .fat("Oil", fat("Oil", "186", "194", inert))
                    .fat("Coconut", fat("Coconut", "248", "262", inert))
                    .fat("Shea", fat("Shea", "160", "195", inert))
                    .alkali("Flakes", grade);
            return acid == null ? soap : soap.acid("Acid", acid);
        }

        ExpectedProduct on(Balance balance, WeighingMethod method) {
            String mass = Ratio.parse(alkali).plus(Ratio.of(acid == null ? 1000 : 1012)) + " g";
            return expected(formula(), mass, balance, method);
        }
    }

    private static ExpectedProduct expected(Formula formula, String mass, Balance balance, WeighingMethod method) {
        return ExpectedProduct.of(WeighingPlan.of(Batch.of(formula, BatchSize.ofMass(mass)), balance), method);
    }

    private static void addJudgements(Figures figures) {
        InertMatter moist = InertMatter.atMost("0.3 %");
        Balance boats =
                TENTHS.withErrors(ErrorModel.readabilityOnly().withResidue(Amount.mass("0 g"), Amount.mass("0.4 g")));
        Pot pot = new Pot(NONE, RANGE, "137.0", null);
        Pot moistPot = new Pot(moist, RANGE, "137.0", null);
        ExpectedProduct tared = pot.on(TENTHS, WeighingMethod.TARE_EACH);
        addBoth(figures, "soap-24", pot.soap(), tared);
        addLargest(figures, "soap-24 largest", pot.soap(), tared, NOTHING);
        addLargest(figures, "soap-24 largest for 3 %", pot.soap(), tared, Unsaponified.alkaliShortfall("3 %"));
        addBoth(figures, "soap-25", moistPot.soap(), moistPot.on(TENTHS, WeighingMethod.TARE_EACH));
        addLargest(figures, "soap-25 largest", moistPot.soap(), moistPot.on(TENTHS, WeighingMethod.TARE_EACH), NOTHING);
        addBoth(figures, "soap-26", moistPot.soap(), moistPot.on(boats, WeighingMethod.FROM_BOAT));
        addLargest(figures, "soap-26 largest", moistPot.soap(), moistPot.on(boats, WeighingMethod.FROM_BOAT), NOTHING);
        Pot much = new Pot(NONE, RANGE, "145.0", null);
        figures.add(
                "soap-28 excess as NaOH", judged(much, WeighingMethod.TARE_EACH).excess());
        Pot sour = new Pot(NONE, RANGE, "143", acid("C6H8O7·H2O", 3, "99.5 %", "100 %"));
        addBoth(figures, "soap-29", sour.soap(), sour.on(TENTHS, WeighingMethod.TARE_EACH));
        addLargest(figures, "soap-29 largest", sour.soap(), sour.on(TENTHS, WeighingMethod.TARE_EACH), NOTHING);
        Pot carbonate = new Pot(NONE, total(Alkali.SODIUM_HYDROXIDE, "97 %", "99 %", "0 %", "1 %"), "137", null);
        figures.add("soap-30 hydroxide", carbonate.grade().hydroxide())
                .add(
                        "soap-30 carbonate as NaOH",
                        judged(carbonate, WeighingMethod.TARE_EACH).carbonate());
        Pot chained = new Pot(NONE, PURE, "1", null);
        ExpectedProduct once = chained.on(Balance.of("1 g", "10 kg"), WeighingMethod.CUMULATIVE);
        figures.add(
                "soap-34 excess as NaOH", AlkaliBalance.of(chained.soap(), once).excess());
        addForgotten(figures);
        addWax(figures);
        addTwo(figures);
    }

    private static AlkaliBalance judged(Pot pot, WeighingMethod method) {
        return AlkaliBalance.of(pot.soap(), pot.on(TENTHS, method));
    }

    private static void addBoth(Figures figures, String name, Soap soap, ExpectedProduct weighed) {
        AlkaliBalance balance = AlkaliBalance.of(soap, weighed);
        figures.add(name + " excess as NaOH", balance.excess()).add(name + " shortfall", balance.shortfall());
    }

    private static void addLargest(
            Figures figures, String name, Soap soap, ExpectedProduct weighed, Unsaponified atLeast) {
        figures.add(
                name,
                AlkaliBalance.largestReading(soap, weighed, "Flakes", atLeast).orElseThrow());
    }

    private static void addForgotten(Figures figures) {
        Formula formula = Formula.inMasses("pot")
                .line("Fat", "1000 g")
                .line("Acid", "12 g")
                .line("Flakes", "138.1 g")
                .build();
        Soap soap = Soap.of(formula)
                .fat("Fat", fat("Fat", "206.1", "206.1", NONE))
                .acid("Acid", acid("C6H8O7", 3, "100 %", "100 %"))
                .alkali("Flakes", PURE);
        addBoth(figures, "soap-23", soap, expected(formula, "1150.1 g", TENTHS, WeighingMethod.TARE_EACH));
    }

    private static void addWax(Figures figures) {
        Formula formula = Formula.inMasses("pot")
                .line("Fat", "900 g")
                .line("Wax", "50 g")
                .line("Flakes", "117 g")
                .build();
        SaponificationValue value = SaponificationValue.ofStandard("87 mg KOH/g", "100 mg KOH/g", SOURCE);
        Soap soap = Soap.of(formula)
                .fat("Fat", fat("Fat", "188", "198", NONE))
                .fat("Wax", Fat.wax("Wax", value, "17 mg KOH/g", "24 mg KOH/g", NONE))
                .alkali("Flakes", PURE);
        figures.add(
                "soap-33 excess as NaOH",
                AlkaliBalance.of(soap, expected(formula, "1067 g", FINEST, WeighingMethod.TARE_EACH))
                        .excess());
    }

    private static void addTwo(Figures figures) {
        Formula formula = Formula.inMasses("pot")
                .line("Oil", "640 g")
                .line("Coconut", "260 g")
                .line("Shea", "100 g")
                .line("Flakes", "90 g")
                .line("Potash", "80 g")
                .build();
        Soap soap = Soap.of(formula)
                .fat("Oil", fat("Oil", "186", "194", NONE))
                .fat("Coconut", fat("Coconut", "248", "262", NONE))
                .fat("Shea", fat("Shea", "160", "195", NONE))
                .alkali("Flakes", RANGE)
                .alkali("Potash", hydroxide(Alkali.POTASSIUM_HYDROXIDE, "89 %", "91 %"));
        ExpectedProduct weighed = expected(formula, "1170 g", TENTHS, WeighingMethod.TARE_EACH);
        figures.add(
                "soap-35 largest",
                AlkaliBalance.largestReading(soap, weighed, "Potash", NOTHING).orElseThrow());
    }
}
