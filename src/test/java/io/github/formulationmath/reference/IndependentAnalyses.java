package io.github.formulationmath.reference;

import io.github.formulationmath.analysis.BackTitration;
import io.github.formulationmath.analysis.Determination;
import io.github.formulationmath.analysis.Estimate;
import io.github.formulationmath.analysis.LyeAssay;
import io.github.formulationmath.analysis.Titrant;
import io.github.formulationmath.analysis.Titration;
import io.github.formulationmath.chemistry.MolarMass;
import io.github.formulationmath.chemistry.MolecularFormula;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.Interval;
import io.github.formulationmath.quantity.MassFraction;
import io.github.formulationmath.reckoning.Source;
import io.github.formulationmath.soap.Acid;
import io.github.formulationmath.soap.Alkali;
import io.github.formulationmath.soap.AlkaliGrade;
import io.github.formulationmath.soap.AlkaliNumber;
import io.github.formulationmath.soap.Escapes;
import io.github.formulationmath.soap.Evidence;
import io.github.formulationmath.soap.Fat;
import io.github.formulationmath.soap.FattyAcid;
import io.github.formulationmath.soap.FattyAcidProfile;
import io.github.formulationmath.soap.InertMatter;
import io.github.formulationmath.soap.LyeCalculation;
import io.github.formulationmath.soap.LyeWater;
import io.github.formulationmath.soap.MeasuredExcess;
import io.github.formulationmath.soap.Reckoned;
import io.github.formulationmath.soap.SaponificationValue;
import io.github.formulationmath.soap.SoapComposition;
import io.github.formulationmath.soap.Unsaponified;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.weighing.WeighingMethod;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import javax.measure.quantity.Mass;

/** What became of a soap, what a burette says, what a profile of fatty acids tells: asked of the public doors alone. */
final class IndependentAnalyses {

    private static final Source SOURCE = Source.published("figures of our own", "cases");
    private static final String SOYA_LIKE = "C16:0 11, C18:0 4, C18:1 23, C18:2 54, C18:3 8";
    private static final String COCONUT_LIKE =
            "C8:0 8, C10:0 6, C12:0 48, C14:0 18, C16:0 9, C18:0 3, C18:1 6, C18:2 2";
    private static final String COCONUT_OF_USP =
            "C8:0 5-11, C10:0 4-9, C12:0 40-50, C14:0 15-20, C16:0 7-12," + " C18:0 1.5-5, C18:1 4-10, C18:2 1-3";
    private static final String COTTONSEED_OF_USP = "C16:0 18-26.4, C18:0 2.1-3.3, C18:1 14-21.7, C18:2 46.7-58.3,"
            + " C14:0 0-1.2, C18:3 0-0.4, C16:1 0-1.2, C20:0 0-0.5";

    private IndependentAnalyses() {}

    static void addTo(Figures figures) {
        addComposition(figures);
        addExcess(figures);
        addTitrations(figures);
        addAssays(figures);
        addBudget(figures);
        addProfiles(figures);
    }

    private static void addComposition(Figures figures) {
        Fat fat = Fat.triglycerides(
                        "Fat",
                        SaponificationValue.ofStandard("191 mg KOH/g", "191 mg KOH/g", SOURCE),
                        InertMatter.atMost("0 %"))
                .withAcidValue("3 mg KOH/g", "3 mg KOH/g");
        AlkaliGrade pure = AlkaliGrade.assay(Alkali.SODIUM_HYDROXIDE, "100 %", "100 %", AlkaliGrade.Stated.HYDROXIDE)
                .carbonate("0 %", "0 %", Evidence.MAXIMUM_ERROR, SOURCE);
        LyeCalculation lye = LyeCalculation.named("soap")
                .fat(fat, "1000 g")
                .alkali(pure)
                .leaving(Unsaponified.alkaliShortfall("6 %"), Reckoned.FOR_EVERY_LOT)
                .water("Aqua", LyeWater.ofFats("28 %"))
                .build();
        Balance finest = Balance.of("0.0000000001 g", "10 kg");
        SoapComposition made = SoapComposition.of(lye.soap(), lye.expectedOn(finest, WeighingMethod.TARE_EACH));
        figures.add("after-01 glycerol g", made.glycerol())
                .add("after-01 water formed g", made.waterFormed())
                .add("after-01 tfm g", made.totalFattyMatter());
    }

    private static void addExcess(Figures figures) {
        MeasuredExcess excess = MeasuredExcess.of(Alkali.SODIUM_HYDROXIDE, "0.08 %", "0.12 %");
        Amount<Mass> soap = Amount.mass("2500 g");
        figures.add("after-05 cit", excess.acidAtMost(acid("C6H8O7", 3, "100 %"), soap))
                .add("after-05 citm", excess.acidAtMost(acid("C6H8O7·H2O", 3, "100 %"), soap))
                .add("after-05 ste", excess.acidAtMost(acid("C18H36O2", 1, "100 %"), soap))
                .add("after-05 lac80", excess.acidAtMost(acid("C3H6O3", 1, "80 %"), soap));
    }

    private static Acid acid(String formula, int protons, String share) {
        return Acid.of("Acid", formula, protons, share, share);
    }

    private static void addTitrations(Figures figures) {
        Estimate<Mass> fat = Estimate.mass("5.0023 g");
        Estimate<Mass> saponified = Estimate.mass("2.0150 g");
        Titration acids = Titration.of(Titrant.of("KOH", "0.1 mol/L", "1.003"), Estimate.volume("3.42 mL"));
        BackTitration back = BackTitration.of(
                Titrant.of("HCl", "0.5 mol/L", "1.0024"), Estimate.volume("25.31 mL"), Estimate.volume("11.62 mL"));
        MolarMass oleic = MolarMass.of(MolecularFormula.parse("C18H34O2"));
        figures.add("titration-01 av", acids.acidValue(fat).value())
                .add("titration-01 ffa oleic", acids.freeFattyAcids(fat, oleic).value())
                .add("titration-02 sv", back.saponificationValue(saponified).value())
                .add("titration-03 ev", back.esterValue(saponified, acids, fat).value());
        BackTitration iodine = BackTitration.of(
                Titrant.of("Na2S2O3", "0.1 mol/L", "1.002"), Estimate.volume("44.20 mL"), Estimate.volume("27.95 mL"));
        figures.add(
                "titration-04 iv", iodine.iodineValue(Estimate.mass("0.2514 g")).value());
        Estimate<Mass> soap = Estimate.mass("10.05 g");
        Titration free = Titration.of(Titrant.of("HCl", "0.1 mol/L", "1"), Estimate.volume("1.35 mL"));
        figures.add(
                        "titration-05 NaOH",
                        free.freeAlkali(soap, Alkali.SODIUM_HYDROXIDE).value())
                .add(
                        "titration-05 koh",
                        free.freeAlkali(soap, Alkali.POTASSIUM_HYDROXIDE).value());
    }

    private static void addAssays(Figures figures) {
        Titrant acid = Titrant.of("HCl", "1 mol/L", "1");
        addAssay(
                figures,
                "titration-06",
                LyeAssay.of(
                        Alkali.SODIUM_HYDROXIDE,
                        acid,
                        Estimate.volume("24.10 mL"),
                        Estimate.volume("24.75 mL"),
                        Estimate.mass("1.0120 g")));
        addAssay(
                figures,
                "titration-07",
                LyeAssay.of(
                        Alkali.POTASSIUM_HYDROXIDE,
                        acid,
                        Estimate.volume("22.05 mL"),
                        Estimate.volume("22.41 mL"),
                        Estimate.mass("1.4405 g")));
    }

    private static void addAssay(Figures figures, String name, LyeAssay assay) {
        figures.add(name + " total alkali", assay.totalAlkali().value())
                .add(name + " carbonate", assay.carbonate().value())
                .add(name + " hydroxide", assay.hydroxide().value());
    }

    private static void addBudget(Figures figures) {
        var readings = Stream.of("3.42 mL", "3.46 mL", "3.38 mL", "3.44 mL")
                .map(Amount::volume)
                .toList();
        Titration titration = Titration.of(
                Titrant.of("KOH", "0.1 mol/L", "1.003").standard("0.001"),
                Estimate.ofReadings(readings).rectangular("0.02 mL"));
        Determination<AlkaliNumber> value =
                titration.acidValue(Estimate.mass("5.0023 g").rectangular("0.0002 g"));
        figures.add("titration-10 av", value.value())
                .add(
                        "titration-10 veff",
                        value.budget().effectiveDegreesOfFreedom().orElseThrow());
    }

    private static void addProfiles(Figures figures) {
        FattyAcidProfile soya = FattyAcidProfile.ofAcids(profile(SOYA_LIKE));
        FattyAcidProfile coconut = FattyAcidProfile.ofAcids(profile(COCONUT_LIKE));
        FattyAcidProfile asEsters = FattyAcidProfile.ofMethylEsters(profile(COCONUT_LIKE));
        FattyAcidProfile wide = FattyAcidProfile.ofAcids(profile(COCONUT_OF_USP));
        FattyAcidProfile cottonseed = FattyAcidProfile.ofAcids(profile(COTTONSEED_OF_USP));
        Interval<MassFraction> none = percent("0");
        figures.add("profile-01 sv", soya.saponificationValue(Escapes.none()))
                .add("profile-01 iv", soya.iodineValue())
                .add("profile-03 sv", coconut.saponificationValue(Escapes.none()))
                .add("profile-03 iv", coconut.iodineValue())
                .add("profile-04 sv", soya.saponificationValue(new Escapes(percent("4"), none, none, percent("1"))))
                .add("profile-05 sv", asEsters.saponificationValue(Escapes.none()))
                .add("profile-05 iv", asEsters.iodineValue())
                .add("profile-06 sv", wide.saponificationValue(Escapes.none()))
                .add("profile-07 sv", cottonseed.saponificationValue(Escapes.none()))
                .add("profile-07 iv", cottonseed.iodineValue());
    }

    private static Map<FattyAcid, Interval<MassFraction>> profile(String text) {
        Map<FattyAcid, Interval<MassFraction>> profile = new LinkedHashMap<>();
        for (String one : List.of(text.split(", ?"))) {
            String[] parts = one.strip().split(" ", 2);
            profile.put(FattyAcid.parse(parts[0]), percent(parts[1]));
        }
        return profile;
    }

    private static Interval<MassFraction> percent(String range) {
        String[] ends = range.split("-", 2);
        return Interval.of(MassFraction.ofPercent(ends[0]), MassFraction.ofPercent(ends[ends.length - 1]));
    }
}
