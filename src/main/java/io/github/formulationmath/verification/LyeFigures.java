package io.github.formulationmath.verification;

import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.Interval;
import io.github.formulationmath.soap.Acid;
import io.github.formulationmath.soap.Alkali;
import io.github.formulationmath.soap.AlkaliGrade;
import io.github.formulationmath.soap.AlkaliMixture;
import io.github.formulationmath.soap.AlkaliNumber;
import io.github.formulationmath.soap.Fat;
import io.github.formulationmath.soap.LyeCalculation;
import io.github.formulationmath.soap.LyeWater;
import io.github.formulationmath.soap.Reckoned;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import javax.measure.quantity.Mass;

/**
 * What somebody may have reckoned a lye from: the numbers of a calculation, each of which a slip can change, and the rule {@code A = (f·Σ
 * m·S/M ± Σ z·q·m/M)·M/w} with every place in it where people go wrong. With no slip it gives what {@link LyeCalculation} gives; a test
 * holds the two together.
 */
record LyeFigures(
        List<FatFigure> fats,
        List<AcidFigure> acids,
        List<AlkaliFigure> alkalis,
        Optional<AlkaliMixture> division,
        Ratio stated,
        Ratio kept,
        AcidRule acidRule,
        Ratio scale,
        WaterFigure water) {

    /** A fat: its mass, the value reckoned with, and the ends of its range, in g KOH/g. */
    record FatFigure(String name, Ratio grams, Ratio value, Ratio least, Ratio most) {
        FatFigure valued(Ratio other) {
            return new FatFigure(name, grams, other, least, most);
        }
    }

    /** An acid. */
    record AcidFigure(String name, String formula, Ratio grams, Ratio share, Ratio protons, Ratio molarMass) {}

    /**
     * An alkali: what its moles weigh, what they are divided by for its purity, what its carbonate counts as, and whether it is a stock
     * lye, whose water counts.
     */
    record AlkaliFigure(
            String name, Alkali alkali, Ratio molarMass, Ratio purity, Ratio carbonate, boolean isStockLye) {}

    /** How the acids enter. */
    enum AcidRule {
        /** Paid in full. */
        ADDED,
        /** Discounted like a fat. */
        DISCOUNTED,
        /** Taken off the alkali. */
        TAKEN_OFF
    }

    /** The water. */
    record WaterFigure(String name, LyeWater.Convention convention, Ratio number, LyeWater.Of alkali) {}

    private static final AlkaliNumber ONE = AlkaliNumber.parse("1 g KOH/g");
    private static final Ratio HALF = Ratio.of(1, 2);

    static Ratio molarMass(Alkali alkali) {
        return alkali.molarMass().gramsPerMole();
    }

    static LyeFigures of(LyeCalculation lye) {
        boolean everyLot = lye.reckoned() == Reckoned.FOR_EVERY_LOT;
        LyeWater water = lye.waterFigure();
        return new LyeFigures(
                lye.fats().stream().map(p -> fat(p, everyLot)).toList(),
                lye.acids().stream().map(p -> acid(p, everyLot)).toList(),
                lye.alkalis().stream().map(p -> alkali(p.what(), everyLot)).toList(),
                lye.division(),
                lye.goal().stated().fraction(),
                Ratio.ONE.minus(lye.goal().shortfall().fraction()),
                AcidRule.ADDED,
                Ratio.ONE,
                new WaterFigure(lye.waterName(), water.convention(), water.number(), water.alkali()));
    }

    private static Ratio number(AlkaliNumber number) {
        return number.relativeTo(ONE);
    }

    private static FatFigure fat(LyeCalculation.Portion<Fat> portion, boolean everyLot) {
        Fat fat = portion.what();
        Interval<AlkaliNumber> range = fat.saponification().range();
        Ratio least = number(range.least());
        Ratio most = number(range.greatest());
        Ratio lowest = fat.nature() == Fat.Nature.WAX
                ? fat.acidValue().map(acid -> number(acid.least())).orElse(Ratio.ZERO)
                : least;
        Ratio sure = lowest.times(Ratio.ONE.minus(fat.inert().most().fraction()));
        Ratio used = everyLot ? sure : least.plus(most).times(HALF);
        return new FatFigure(fat.name(), portion.mass().canonical(), used, least, most);
    }

    private static AcidFigure acid(LyeCalculation.Portion<Acid> portion, boolean everyLot) {
        Acid acid = portion.what();
        Ratio low = acid.assay().least().fraction();
        Ratio share =
                everyLot ? low : low.plus(acid.assay().greatest().fraction()).times(HALF);
        return new AcidFigure(
                acid.name(),
                acid.molarMass().formula().toString(),
                portion.mass().canonical(),
                share,
                Ratio.of(acid.protons()),
                acid.molarMass().gramsPerMole());
    }

    private static AlkaliFigure alkali(AlkaliGrade grade, boolean everyLot) {
        Ratio high = grade.hydroxide().greatest().fraction();
        Ratio used = everyLot
                ? high
                : high.plus(grade.hydroxide().least().fraction()).times(HALF);
        Ratio counted = molarMass(grade.alkali())
                .times(2)
                .dividedBy(grade.alkali().carbonateMolarMass().gramsPerMole());
        Ratio carbonate = grade.carbonate()
                .least()
                .fraction()
                .plus(grade.carbonate().greatest().fraction());
        return new AlkaliFigure(
                grade.alkali().inciName(),
                grade.alkali(),
                molarMass(grade.alkali()),
                used,
                counted.times(carbonate).times(HALF),
                grade.form() == AlkaliGrade.Form.SOLUTION);
    }

    /** Grams of each alkali and of the water, by name. */
    Map<String, Ratio> grams() {
        Ratio ofFats = fats.stream()
                .map(fat -> fat.grams().times(fat.value()))
                .reduce(Ratio.ZERO, Ratio::plus)
                .dividedBy(molarMass(Alkali.POTASSIUM_HYDROXIDE));
        Ratio ofAcids = acids.stream()
                .map(acid ->
                        acid.grams().times(acid.share()).times(acid.protons()).dividedBy(acid.molarMass()))
                .reduce(Ratio.ZERO, Ratio::plus);
        Ratio wanted = ofFats.times(kept);
        Ratio moles = switch (acidRule) {
            case ADDED -> wanted.plus(ofAcids);
            case DISCOUNTED -> wanted.plus(ofAcids.times(kept));
            case TAKEN_OFF -> wanted.minus(ofAcids);
        };
        Map<String, Ratio> grams = new LinkedHashMap<>();
        Ratio pure = Ratio.ZERO;
        Ratio weighed = Ratio.ZERO;
        Ratio inStock = Ratio.ZERO;
        for (AlkaliFigure alkali : alkalis) {
            Ratio hydroxide = moles.times(shareOfMoles(alkali)).times(alkali.molarMass());
            Ratio mass = hydroxide.dividedBy(alkali.purity());
            pure = pure.plus(hydroxide);
            weighed = weighed.plus(mass);
            inStock = alkali.isStockLye() ? inStock.plus(mass.minus(hydroxide).max(Ratio.ZERO)) : inStock;
            grams.put(alkali.name(), mass.times(scale));
        }
        grams.put(water.name(), water(pure, weighed, inStock).times(scale));
        return grams;
    }

    private Ratio water(Ratio pure, Ratio weighed, Ratio inStock) {
        boolean isPure = water.alkali() == LyeWater.Of.PURE_HYDROXIDE;
        Ratio lye = isPure ? pure : weighed;
        Ratio ofStock = isPure ? inStock : Ratio.ZERO;
        return switch (water.convention()) {
            case CONCENTRATION ->
                lye.times(Ratio.ONE.minus(water.number()))
                        .dividedBy(water.number())
                        .minus(ofStock)
                        .max(Ratio.ZERO);
            case PER_ALKALI -> lye.times(water.number()).minus(ofStock).max(Ratio.ZERO);
            case OF_FATS ->
                fats.stream()
                        .map(FatFigure::grams)
                        .reduce(Ratio.ZERO, Ratio::plus)
                        .times(water.number());
        };
    }

    private Ratio shareOfMoles(AlkaliFigure alkali) {
        if (division.isEmpty()) {
            return Ratio.ONE;
        }
        AlkaliMixture mixture = division.get();
        Ratio whole = alkalis.stream().map(each -> moles(each, mixture)).reduce(Ratio.ZERO, Ratio::plus);
        return moles(alkali, mixture).dividedBy(whole);
    }

    /** In proportion to these the moles are divided. */
    private static Ratio moles(AlkaliFigure alkali, AlkaliMixture mixture) {
        Ratio sodium = mixture.sodium().fraction();
        Ratio part = alkali.alkali() == Alkali.SODIUM_HYDROXIDE ? sodium : Ratio.ONE.minus(sodium);
        return switch (mixture.basis()) {
            case MOLES -> part;
            case PURE_MASS -> part.dividedBy(alkali.molarMass());
            case MASS_AS_WEIGHED -> part.times(alkali.purity()).dividedBy(alkali.molarMass());
        };
    }

    Amount<Mass> mass(String name) {
        Ratio found = grams().get(name);
        return Amount.grams(found == null ? Ratio.ZERO : found);
    }

    LyeFigures withFats(UnaryOperator<FatFigure> change) {
        return withFats(fats.stream().map(change).toList());
    }

    LyeFigures withFats(List<FatFigure> other) {
        return new LyeFigures(other, acids, alkalis, division, stated, kept, acidRule, scale, water);
    }

    LyeFigures withAcids(List<AcidFigure> other) {
        return new LyeFigures(fats, other, alkalis, division, stated, kept, acidRule, scale, water);
    }

    LyeFigures withAlkalis(List<AlkaliFigure> other) {
        return new LyeFigures(fats, acids, other, division, stated, kept, acidRule, scale, water);
    }

    LyeFigures withAlkalis(UnaryOperator<AlkaliFigure> change) {
        return withAlkalis(alkalis.stream().map(change).toList());
    }

    LyeFigures withDivision(AlkaliMixture other) {
        return new LyeFigures(fats, acids, alkalis, Optional.of(other), stated, kept, acidRule, scale, water);
    }

    LyeFigures keeping(Ratio other) {
        return new LyeFigures(fats, acids, alkalis, division, stated, other, acidRule, scale, water);
    }

    LyeFigures withRule(AcidRule other) {
        return new LyeFigures(fats, acids, alkalis, division, stated, kept, other, scale, water);
    }

    LyeFigures times(Ratio factor) {
        return new LyeFigures(fats, acids, alkalis, division, stated, kept, acidRule, scale.times(factor), water);
    }

    LyeFigures withWater(LyeWater.Convention convention, Ratio number, LyeWater.Of alkali) {
        WaterFigure other = new WaterFigure(water.name(), convention, number, alkali);
        return new LyeFigures(fats, acids, alkalis, division, stated, kept, acidRule, scale, other);
    }
}
