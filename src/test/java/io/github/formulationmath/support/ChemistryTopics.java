package io.github.formulationmath.support;

import io.github.formulationmath.emulsion.Emulsifier;
import io.github.formulationmath.emulsion.EmulsifierBlend;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.reckoning.Source;
import io.github.formulationmath.reckoning.Working;
import io.github.formulationmath.soap.Alkali;
import io.github.formulationmath.soap.AlkaliGrade;
import io.github.formulationmath.soap.Evidence;
import io.github.formulationmath.soap.Fat;
import io.github.formulationmath.soap.InertMatter;
import io.github.formulationmath.soap.LyeCalculation;
import io.github.formulationmath.soap.LyeWater;
import io.github.formulationmath.soap.Reckoned;
import io.github.formulationmath.soap.SaponificationValue;
import io.github.formulationmath.soap.Unsaponified;
import io.github.formulationmath.solution.AcidConstants;
import io.github.formulationmath.solution.Alligation;
import io.github.formulationmath.solution.Stock;
import io.github.formulationmath.solution.UndissociatedShare;
import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.function.Function;

/** What a teacher of this bench sets: alkali for a fat, diluting, alligation, the value of a blend, an undissociated share. */
public final class ChemistryTopics {

    private static final Source CLASS = Source.published("exercise of this test", "");

    public static final List<Function<SplittableRandom, Working>> ALL = List.of(
            ChemistryTopics::alkali,
            ChemistryTopics::diluted,
            ChemistryTopics::alligation,
            ChemistryTopics::medial,
            ChemistryTopics::blend,
            ChemistryTopics::undissociated);

    private ChemistryTopics() {}

    private static String tenths(SplittableRandom random, int least, int greatest, String unit) {
        return BigDecimal.valueOf(random.nextInt(least, greatest + 1), 1).toPlainString() + unit;
    }

    /** A fat of a value, an alkali of a purity, a shortfall; the potassium soap needs no second molar mass. */
    static Working alkali(SplittableRandom random) {
        String value = tenths(random, 1800, 2600, " mg KOH/g");
        String purity = tenths(random, 900, 990, " %");
        return alkali(
                random.nextInt(1, 21) * 50 + " g", value, Alkali.SODIUM_HYDROXIDE, purity, random.nextInt(0, 9) + " %");
    }

    /** The same with sodium hydroxide, the figures given. */
    public static Working soda(String mass, String value, String purity, String shortfall) {
        return alkali(mass, value, Alkali.SODIUM_HYDROXIDE, purity, shortfall);
    }

    private static Working alkali(String mass, String value, Alkali alkali, String purity, String shortfall) {
        Fat fat = Fat.triglycerides(
                "fat", SaponificationValue.within(value, "0 mg KOH/g", CLASS), InertMatter.countedInTheValue());
        return LyeCalculation.named("class soap")
                .fat(fat, mass)
                .alkali(AlkaliGrade.assay(alkali, purity, purity, AlkaliGrade.Stated.HYDROXIDE)
                        .carbonate("0 %", "0 %", Evidence.MAXIMUM_ERROR, CLASS))
                .leaving(Unsaponified.alkaliShortfall(shortfall), Reckoned.WITH_THE_MIDDLES)
                .water("Aqua", LyeWater.perAlkali("2", LyeWater.Of.PURE_HYDROXIDE))
                .build()
                .alkali()
                .working();
    }

    private static Working diluted(SplittableRandom random) {
        int strong = random.nextInt(20, 96);
        int target = random.nextInt(1, strong);
        return Alligation.of(Stock.of("stock", strong + " %"), Stock.diluent("water"), target + " %")
                .weakerTo(Amount.mass(random.nextInt(1, 40) * 25 + " g"))
                .working();
    }

    private static Working alligation(SplittableRandom random) {
        int weak = random.nextInt(1, 60);
        int target = random.nextInt(weak + 1, 80);
        int strong = random.nextInt(target + 1, 97);
        return Alligation.of(Stock.of("strong", strong + " %"), Stock.of("weak", weak + " %"), target + " %")
                .strongerIn(Amount.mass(random.nextInt(1, 40) * 25 + " g"))
                .working();
    }

    private static Working medial(SplittableRandom random) {
        Map<Stock, Amount<javax.measure.quantity.Mass>> poured = new LinkedHashMap<>();
        int count = random.nextInt(2, 5);
        for (int i = 0; i < count; i++) {
            poured.put(
                    Stock.of("stock " + (i + 1), random.nextInt(1, 100) + " %"),
                    Amount.mass(random.nextInt(1, 100) * 10 + " g"));
        }
        return Alligation.medial(poured).origin().working();
    }

    private static Working blend(SplittableRandom random) {
        Map<Emulsifier, Amount<javax.measure.quantity.Mass>> poured = new LinkedHashMap<>();
        int count = random.nextInt(2, 4);
        for (int i = 0; i < count; i++) {
            poured.put(
                    Emulsifier.of("emulsifier " + (i + 1), tenths(random, 18, 188, ""), "0.5", CLASS),
                    Amount.mass(tenths(random, 1, 60, " g")));
        }
        return EmulsifierBlend.valueOfMasses(poured).working();
    }

    private static Working undissociated(SplittableRandom random) {
        AcidConstants acid = AcidConstants.at25Celsius("the acid", CLASS, tenths(random, 28, 60, ""), "0");
        return UndissociatedShare.of(acid, tenths(random, 30, 75, ""), "0")
                .atTheMiddles()
                .origin()
                .working();
    }
}
