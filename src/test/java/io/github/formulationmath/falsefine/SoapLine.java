package io.github.formulationmath.falsefine;

import io.github.formulationmath.reckoning.Source;
import io.github.formulationmath.soap.Acid;
import io.github.formulationmath.soap.Alkali;
import io.github.formulationmath.soap.AlkaliGrade;
import io.github.formulationmath.soap.Evidence;
import io.github.formulationmath.soap.Fat;
import io.github.formulationmath.soap.InertMatter;
import io.github.formulationmath.soap.SaponificationValue;
import io.github.formulationmath.soap.Soap;
import java.math.BigDecimal;

/** A line of a soap: what a gram of it brings of hydroxide, in moles, at both ends and somewhere between. */
sealed interface SoapLine {

    /** Where every figure comes from. */
    Source DRAWN = Source.published("drawn by this test", "");

    String name();

    /** Moles of hydroxide that a gram brings, at the end that leaves most. */
    Exact most();

    /** At the end that leaves least. */
    Exact least();

    /** Of one lot that nobody can tell from the others. */
    Exact lot(Dice dice);

    Soap declare(Soap soap);

    default boolean isFat() {
        return false;
    }

    /** One end or the other, seldom something between. */
    static Exact inside(Dice dice, Exact low, Exact high) {
        int place = dice.between(0, 9);
        Exact part = place < 4 ? Exact.ZERO : place < 8 ? Exact.of(1) : Exact.of(dice.between(0, 10), 10);
        return low.plus(high.minus(low).times(part));
    }

    private static String tenths(int tenths, String unit) {
        return BigDecimal.valueOf(tenths, 1).toPlainString() + " " + unit;
    }

    /** A value in tenths of a milligram of KOH (56.10564 g/mol) is so many moles. */
    private static Exact moles(Exact tenths) {
        return tenths.times(Exact.of(10, 5_610_564));
    }

    /**
     * A fat, or a wax with its acid value; all values in tenths of mg KOH/g.
     *
     * @param wax whether only its acids are sure to react
     * @param acidLow the least acid value of a wax; below 0 if nobody knows it
     * @param inert what takes no part, of 10⁴; below 0 if the value counts it
     */
    record Takes(String name, int low, int high, boolean wax, int acidLow, int acidHigh, int inert)
            implements SoapLine {

        @Override
        public boolean isFat() {
            return true;
        }

        private Exact whole() {
            return Exact.of(10_000L - Math.max(0, inert), 10_000);
        }

        private Exact sure() {
            return Exact.of(wax ? Math.max(0, acidLow) : low);
        }

        @Override
        public Exact most() {
            return moles(sure()).times(whole()).times(-1);
        }

        @Override
        public Exact least() {
            return moles(Exact.of(high)).times(-1);
        }

        @Override
        public Exact lot(Dice dice) {
            Exact all = inside(dice, Exact.of(low), Exact.of(high));
            Exact reacts = wax ? inside(dice, inside(dice, sure(), Exact.of(acidLow < 0 ? low : acidHigh)), all) : all;
            return moles(reacts).times(inside(dice, whole(), Exact.of(1))).times(-1);
        }

        @Override
        public Soap declare(Soap soap) {
            InertMatter matter = inert < 0
                    ? InertMatter.countedInTheValue()
                    : InertMatter.atMost(BigDecimal.valueOf(inert, 2).toPlainString() + " %");
            SaponificationValue value =
                    SaponificationValue.ofStandard(tenths(low, "mg KOH/g"), tenths(high, "mg KOH/g"), DRAWN);
            if (!wax) {
                return soap.fat(name, Fat.triglycerides(name, value, matter));
            }
            return soap.fat(
                    name,
                    acidLow < 0
                            ? Fat.wax(name, value, matter)
                            : Fat.wax(name, value, tenths(acidLow, "mg KOH/g"), tenths(acidHigh, "mg KOH/g"), matter));
        }

        /** As a recipe that takes the middle for the truth. */
        Takes inTheMiddle() {
            int middle = (low + high) / 2;
            return new Takes(name, middle, middle, wax, acidLow, acidHigh, inert);
        }

        /** The same of the acid value alone. */
        Takes acidInTheMiddle() {
            int middle = (acidLow + acidHigh) / 2;
            return wax && acidLow >= 0 ? new Takes(name, low, high, true, middle, middle, inert) : this;
        }

        /** As if half the water that there may be were what there is. */
        Takes halfAsWet() {
            return new Takes(name, low, high, wax, acidLow, acidHigh, inert / 2);
        }

        /** As if all of a wax reacted. */
        Takes asFat() {
            return wax ? new Takes(name, low, high, true, low, low, inert) : this;
        }

        /** As if there were no water in it. */
        Takes dry() {
            return new Takes(name, low, high, wax, acidLow, acidHigh, -1);
        }
    }

    /** An alkali, its assay and carbonate in tenths of a per cent. */
    record Gives(boolean sodium, int low, int high, int carbonateLow, int carbonateHigh, boolean total)
            implements SoapLine {

        @Override
        public String name() {
            return sodium ? "Sodium Hydroxide" : "Potassium Hydroxide";
        }

        private Exact molarMass() {
            return sodium ? Exact.of(3_999_710_928L, 100_000_000) : Exact.of(5_610_564, 100_000);
        }

        /** Of 1000, cut at the whole, in moles per gram. */
        private Exact moles(Exact assay, Exact carbonate) {
            Exact two = molarMass().times(2);
            Exact counted = two.over(sodium ? Exact.of(10_598_843_856L, 100_000_000) : Exact.of(1_382_055, 10_000));
            Exact hydroxide = total ? assay.minus(counted.times(carbonate)) : assay;
            Exact share = hydroxide.isAbove(Exact.of(1000)) ? Exact.of(1000) : hydroxide;
            return share.over(molarMass().times(1000));
        }

        @Override
        public Exact most() {
            return moles(Exact.of(high), Exact.of(carbonateLow));
        }

        @Override
        public Exact least() {
            return moles(Exact.of(low), Exact.of(carbonateHigh));
        }

        @Override
        public Exact lot(Dice dice) {
            return moles(
                    inside(dice, Exact.of(low), Exact.of(high)),
                    inside(dice, Exact.of(carbonateLow), Exact.of(carbonateHigh)));
        }

        @Override
        public Soap declare(Soap soap) {
            return soap.alkali(
                    name(),
                    AlkaliGrade.assay(
                                    sodium ? Alkali.SODIUM_HYDROXIDE : Alkali.POTASSIUM_HYDROXIDE,
                                    tenths(low, "%"),
                                    tenths(high, "%"),
                                    total ? AlkaliGrade.Stated.TOTAL_ALKALI : AlkaliGrade.Stated.HYDROXIDE)
                            .carbonate(
                                    tenths(carbonateLow, "%"),
                                    tenths(carbonateHigh, "%"),
                                    Evidence.MAXIMUM_ERROR,
                                    DRAWN));
        }

        /** As if the middle of the assay were the assay. */
        Gives inTheMiddle() {
            int middle = (low + high) / 2;
            return new Gives(sodium, middle, middle, carbonateLow, carbonateHigh, total);
        }

        /** The same of the carbonate alone. */
        Gives carbonateInTheMiddle() {
            int middle = (carbonateLow + carbonateHigh) / 2;
            return new Gives(sodium, low, high, middle, middle, total);
        }
    }

    /** Citric acid, dry or with its water, or lactic acid; the assay in tenths of a per cent. */
    record TakesFirst(String formula, int protons, Exact molarMass, int low, int high) implements SoapLine {

        static TakesFirst citric(boolean hydrate, int low, int high) {
            return hydrate
                    ? new TakesFirst("C6H8O7·H2O", 3, Exact.of(2_101_388, 10_000), low, high)
                    : new TakesFirst("C6H8O7", 3, Exact.of(19_212_352, 100_000), low, high);
        }

        static TakesFirst lactic(int low, int high) {
            return new TakesFirst("C3H6O3", 1, Exact.of(9_007_794, 100_000), low, high);
        }

        @Override
        public String name() {
            return protons == 3 ? "Citric Acid" : "Lactic Acid";
        }

        /** As if the middle of the assay were the assay. */
        TakesFirst inTheMiddle() {
            int middle = (low + high) / 2;
            return new TakesFirst(formula, protons, molarMass, middle, middle);
        }

        private Exact moles(Exact assay) {
            return assay.times(-protons).over(molarMass.times(1000));
        }

        @Override
        public Exact most() {
            return moles(Exact.of(low));
        }

        @Override
        public Exact least() {
            return moles(Exact.of(high));
        }

        @Override
        public Exact lot(Dice dice) {
            return moles(inside(dice, Exact.of(low), Exact.of(high)));
        }

        @Override
        public Soap declare(Soap soap) {
            return soap.acid(name(), Acid.of(name(), formula, protons, tenths(low, "%"), tenths(high, "%")));
        }
    }

    /** Water. */
    record Neither(String name) implements SoapLine {

        @Override
        public Exact most() {
            return Exact.ZERO;
        }

        @Override
        public Exact least() {
            return Exact.ZERO;
        }

        @Override
        public Exact lot(Dice dice) {
            return Exact.ZERO;
        }

        @Override
        public Soap declare(Soap soap) {
            return soap.neither(name);
        }
    }
}
