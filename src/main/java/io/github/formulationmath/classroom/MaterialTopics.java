package io.github.formulationmath.classroom;

import io.github.formulationmath.batch.Batch;
import io.github.formulationmath.batch.BatchSize;
import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.number.Rounding;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.FormulationUnits;
import io.github.formulationmath.quantity.MassFraction;
import io.github.formulationmath.reckoning.Explained;
import io.github.formulationmath.reckoning.Kind;
import io.github.formulationmath.reckoning.Origin;
import io.github.formulationmath.reckoning.Phrase;
import io.github.formulationmath.reckoning.Reckoning;
import io.github.formulationmath.reckoning.Source;
import io.github.formulationmath.reckoning.Symbol;
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
import io.github.formulationmath.solution.Alligation;
import io.github.formulationmath.solution.Stock;
import java.util.List;
import javax.measure.quantity.Mass;

/** Exercises on what materials are: their density, their strength, their unit, and how much alkali a fat takes. */
final class MaterialTopics {

    private static final Ratio TENTH = Ratio.of(1, 10);
    private static final Source EXERCISE = Source.published("exercise of this class", "");

    private static final List<String> LIQUIDS =
            List.of("Propanediol", "Squalane", "Isopropyl Myristate", "Glyceryl Caprylate", "Ethylhexyl Stearate");
    private static final List<String> DISSOLVED = List.of("Betaine", "Panthenol", "Urea", "Sorbitol", "Sodium Lactate");

    /** In hundredths of g/mL; drawn, not those of the liquids. */
    private static final List<Integer> DENSITIES = List.of(82, 84, 86, 88, 91, 93, 94, 106, 109, 113, 118, 122);

    private MaterialTopics() {}

    /** V · ρ, or m / ρ the other way. */
    static Draft density(Draw draw, Ties ties) {
        boolean toMass = draw.oneIn(2);
        Rounding digits = ties.to(TENTH);
        List<Ratio> densities = draw.some(2, DENSITIES).stream()
                .map(density -> Ratio.of(density, 100))
                .toList();
        Ratio mine = densities.get(0);
        Ratio other = densities.get(1);
        Ratio amount = draw.multiple(11, 59, 1).times(5);
        List<String> names = draw.some(2, LIQUIDS);
        String unit = toMass ? "mL" : "g";
        Draft draft = new Draft(
                Topic.DENSITY,
                toMass ? "-to-mass" : "-to-volume",
                digits,
                Inset.of(amount, unit),
                Inset.name(names.get(0)),
                Inset.of(mine, "g/mL"),
                Inset.name(names.get(1)),
                Inset.of(other, "g/mL"));
        Ratio right = toMass ? amount.times(mine) : amount.dividedBy(mine);
        draft.slip(
                        toMass ? "divided-by-the-density" : "multiplied-by-the-density",
                        toMass ? amount.dividedBy(mine) : amount.times(mine))
                .slip("density-left-out", amount)
                .slip(
                        "other-density",
                        toMass ? amount.times(other) : amount.dividedBy(other),
                        Inset.name(names.get(1)),
                        Inset.of(other, "g/mL"))
                .slip(
                        "other-density-and-the-wrong-way",
                        toMass ? amount.dividedBy(other) : amount.times(other),
                        Inset.name(names.get(1)))
                .slip("mean-density", by(toMass, amount, mine.plus(other).dividedBy(2)))
                .slip(
                        "difference-to-water-the-wrong-way",
                        by(toMass, amount, Ratio.of(2).minus(mine)))
                .slip("density-twice", by(toMass, amount, mine.times(mine)))
                .check(Inset.of(toMass ? right.dividedBy(amount) : amount.dividedBy(right), "g/mL"));
        return toMass
                ? draft.answeredBy(
                        Kind.MASS,
                        Batch.of(
                                        Formula.inParts(names.get(0))
                                                .line(names.get(0), "1")
                                                .build(),
                                        BatchSize.ofVolume(amount + " mL", mine + " g/mL"))
                                .mass())
                : draft.answeredBy(Kind.VOLUME, new Volume(amount, mine));
    }

    private static Ratio by(boolean toMass, Ratio amount, Ratio density) {
        return toMass ? amount.times(density) : amount.dividedBy(density);
    }

    /** V = m / ρ. */
    private record Volume(Ratio mass, Ratio density) implements Explained {
        private static final Symbol MASS = Symbol.of("m", "mass-of-the-volume", Kind.MASS);
        private static final Symbol DENSITY = Symbol.of("ρ", "density-of-the-material", Kind.DENSITY);
        private static final Symbol VOLUME = Symbol.of("V", "volume-taken", Kind.VOLUME);

        <V> V in(Reckoning<V> r) {
            V m = r.given(MASS, mass, Source.user());
            V density = r.given(DENSITY, this.density, Source.user());
            return r.named(VOLUME, r.quotient(m, density));
        }

        @Override
        public Origin origin() {
            return Origin.of(owner -> Phrase.of("question.class-exercise"), in(Reckoning.plain()), this, Volume::in);
        }
    }

    /** m = w · M / s. */
    static Draft strength(Draw draw, Ties ties) {
        Rounding digits = ties.to(TENTH);
        String name = draw.oneOf(DISSOLVED);
        Ratio wanted = draw.multiple(4, 30, 200);
        Ratio strength = draw.multiple(8, 19, 20);
        Ratio batch = draw.multiple(40, 99, 1).times(5);
        Ratio pure = wanted.times(batch);
        Draft draft = new Draft(
                Topic.STRENGTH,
                "",
                digits,
                Inset.percent(wanted),
                Inset.name(name),
                Inset.percent(strength),
                Inset.grams(batch));
        draft.atMost(batch)
                .slip("strength-left-out", pure)
                .slip("multiplied-by-the-strength", pure.times(strength))
                .slip("missing-part-added", pure.times(Ratio.of(2).minus(strength)))
                .slip("other-part-of-the-material", pure.dividedBy(Ratio.ONE.minus(strength)))
                .slip("strength-of-the-batch", strength.times(batch))
                .slip("only-the-missing-part", pure.times(Ratio.ONE.minus(strength)))
                .slip("percents-subtracted", strength.minus(wanted).times(batch))
                .slip("quotient-inverted", strength.dividedBy(wanted))
                .check(Inset.grams(pure));
        return draft.answeredBy(Kind.MASS, new Strength(wanted, batch, strength));
    }

    /** The mass of a material that brings in a share of a batch. */
    private record Strength(Ratio wanted, Ratio batch, Ratio strength) implements Explained {
        private static final Symbol WANTED = Symbol.of("w", "share-wanted-of-the-substance", Kind.SHARE);
        private static final Symbol BATCH = Symbol.of("M", "mass-of-the-class-batch", Kind.MASS);
        private static final Symbol STRENGTH = Symbol.of("s", "strength-of-the-material", Kind.SHARE);
        private static final Symbol PURE = Symbol.of("p", "substance-wanted", Kind.MASS);
        private static final Symbol MATERIAL = Symbol.of("m", "material-taken", Kind.MASS);

        <V> V in(Reckoning<V> r) {
            V w = r.given(WANTED, wanted, Source.user());
            V batchMass = r.given(BATCH, batch, Source.user());
            V s = r.given(STRENGTH, strength, Source.user());
            V pure = r.named(PURE, r.product(w, batchMass));
            return r.named(MATERIAL, r.quotient(pure, s));
        }

        @Override
        public Origin origin() {
            return Origin.of(owner -> Phrase.of("question.class-exercise"), in(Reckoning.plain()), this, Strength::in);
        }
    }

    /** (16 · lb + oz) · 28.349523125 g. */
    static Draft ounces(Draw draw, Ties ties) {
        Rounding digits = ties.to(Ratio.ONE);
        Ratio pounds = draw.multiple(1, 5, 1);
        Ratio ounces = draw.multiple(3, 31, 2);
        Ratio ounce = FormulationUnits.factorOf(FormulationUnits.OUNCE);
        Ratio pound = ounce.times(16);
        Draft draft = new Draft(
                Topic.OUNCES, "", digits, Inset.of(pounds, "lb"), Inset.of(ounces, "oz"), Inset.exactly(ounce, "g"));
        draft.slip("ten-ounces-a-pound", pounds.times(10).plus(ounces).times(ounce))
                .slip("twelve-ounces-a-pound", pounds.times(12).plus(ounces).times(ounce))
                .slip("ounces-as-tenths", pounds.plus(ounces.dividedBy(10)).times(pound))
                .slip("ounces-as-hundredths", pounds.plus(ounces.dividedBy(100)).times(pound))
                .slip("ounces-left-out", pounds.times(pound))
                .slip("pounds-left-out", ounces.times(ounce))
                .slip("metric-pound", pounds.times(500).plus(ounces.times(ounce)))
                .slip(
                        "fluid-ounces",
                        pounds.times(16).plus(ounces).times(FormulationUnits.factorOf(FormulationUnits.US_FLUID_OUNCE)))
                .slip("pound-counted-as-an-ounce", pounds.plus(ounces).times(ounce))
                .check(
                        Inset.grams(digits.apply(pounds.times(pound))),
                        Inset.of(pounds, "lb"),
                        Inset.of(pounds.plus(Ratio.ONE), "lb"));
        return draft.answeredBy(Kind.MASS, new PoundsAndOunces(pounds, ounces));
    }

    /** Pounds and ounces, avoirdupois, as grams. */
    private record PoundsAndOunces(Ratio pounds, Ratio ounces) implements Explained {
        private static final long OUNCES_A_POUND = 16;
        private static final Symbol POUNDS = Symbol.of("l", "pounds-read", Kind.NUMBER);
        private static final Symbol OUNCES = Symbol.of("z", "ounces-beside-pounds", Kind.NUMBER);
        private static final Symbol ALL = Symbol.of("n", "ounces-in-all", Kind.NUMBER);
        private static final Symbol GRAMS = Symbol.of("m", "mass-in-grams", Kind.MASS);

        <V> V in(Reckoning<V> r) {
            V l = r.given(POUNDS, pounds, Source.user());
            V z = r.given(OUNCES, ounces, Source.user());
            V all = r.named(ALL, r.sum(r.product(r.literal(OUNCES_A_POUND), l), z));
            return r.named(GRAMS, r.product(all, r.literal(FormulationUnits.factorOf(FormulationUnits.OUNCE))));
        }

        @Override
        public Origin origin() {
            return Origin.of(
                    owner -> Phrase.of("question.class-exercise"), in(Reckoning.plain()), this, PoundsAndOunces::in);
        }
    }

    /** M − M · t / s. */
    static Draft dilution(Draw draw, Ties ties) {
        Rounding digits = ties.to(TENTH);
        Ratio strong = draw.multiple(8, 19, 20);
        Ratio wanted = draw.multiple(4, 34, 100);
        Ratio made = draw.multiple(22, 98, 1).times(5);
        Draft draft =
                new Draft(Topic.DILUTION, "", digits, Inset.percent(strong), Inset.percent(wanted), Inset.grams(made));
        Ratio stock = made.times(wanted).dividedBy(strong);
        draft.atMost(made.times(2))
                .slip("stock-instead-of-water", stock)
                .slip(
                        "water-added-to-the-whole",
                        made.times(strong).dividedBy(wanted).minus(made))
                .slip("difference-of-percents", strong.minus(wanted).times(made))
                .slip("rest-of-the-wanted", Ratio.ONE.minus(wanted).times(made))
                .slip("rest-of-the-strong", Ratio.ONE.minus(strong).times(made))
                .slip("shares-multiplied", made.minus(made.times(wanted).times(strong)))
                .slip("quotient-inverted", made.times(strong).dividedBy(wanted))
                .check(Inset.grams(stock), Inset.grams(made));
        Alligation water = Alligation.of(
                Stock.of("stock", MassFraction.of(strong).toString()),
                Stock.diluent("Aqua"),
                MassFraction.of(wanted).toString());
        return draft.answeredBy(Kind.MASS, water.weakerIn(Amount.grams(made)));
    }

    /** m · S / M(KOH) · (1 − x) · M(NaOH) / p; drawn so that the molar masses as printed lead to the same answer. */
    static Draft alkali(Draw draw, Ties ties) {
        Rounding digits = ties.to(TENTH);
        Rounding printed = Rounding.toDecimalPlaces(3);
        Ratio potassium = printed.apply(Alkali.POTASSIUM_HYDROXIDE.molarMass().gramsPerMole());
        Ratio sodium = printed.apply(Alkali.SODIUM_HYDROXIDE.molarMass().gramsPerMole());
        Ratio fat = draw.multiple(5, 20, 1).times(50);
        Ratio value = draw.multiple(186, 255, 1);
        Ratio purity = draw.multiple(94, 99, 100);
        Ratio left = draw.multiple(3, 9, 100);
        Ratio asPotassium = fat.times(value).dividedBy(1000);
        Ratio full = asPotassium.dividedBy(potassium).times(sodium);
        Ratio pure = full.times(Ratio.ONE.minus(left));
        Draft draft = new Draft(
                Topic.ALKALI,
                "",
                digits,
                Inset.grams(fat),
                Inset.of(value, "mg KOH/g"),
                Inset.percent(left),
                Inset.percent(purity),
                Inset.of(potassium, "g/mol"),
                Inset.of(sodium, "g/mol"));
        draft.slip(
                        "molar-mass-of-the-other",
                        asPotassium.times(Ratio.ONE.minus(left)).dividedBy(purity))
                .slip("purity-left-out", pure)
                .slip("multiplied-by-the-purity", pure.times(purity))
                .slip("shortfall-left-out", full.dividedBy(purity))
                .slip("shortfall-added", full.times(Ratio.ONE.plus(left)).dividedBy(purity))
                .slip(
                        "molar-masses-inverted",
                        asPotassium
                                .times(potassium)
                                .dividedBy(sodium)
                                .times(Ratio.ONE.minus(left))
                                .dividedBy(purity))
                .slip("shortfall-alone", full.times(left).dividedBy(purity))
                .slip("purity-and-shortfall-left-out", full)
                .leadingTo(pure.dividedBy(purity))
                .check(Inset.grams(pure.dividedBy(purity).dividedBy(fat).times(100)));
        return draft.answeredBy(Kind.MASS, alkaliFor(fat, value, purity, left));
    }

    private static Amount<Mass> alkaliFor(Ratio mass, Ratio value, Ratio purity, Ratio left) {
        Fat fat = Fat.triglycerides(
                "fat",
                SaponificationValue.within(value + " mg KOH/g", "0 mg KOH/g", EXERCISE),
                InertMatter.countedInTheValue());
        String assay = MassFraction.of(purity).toString();
        AlkaliGrade flakes = AlkaliGrade.assay(Alkali.SODIUM_HYDROXIDE, assay, assay, AlkaliGrade.Stated.HYDROXIDE)
                .carbonate("0 %", "0 %", Evidence.MAXIMUM_ERROR, EXERCISE);
        return LyeCalculation.named("class soap")
                .fat(fat, mass + " g")
                .alkali(flakes)
                .leaving(Unsaponified.alkaliShortfall(MassFraction.of(left).toString()), Reckoned.WITH_THE_MIDDLES)
                .water("Aqua", LyeWater.perAlkali("2", LyeWater.Of.PURE_HYDROXIDE))
                .build()
                .alkali();
    }
}
