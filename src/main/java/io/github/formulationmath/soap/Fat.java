package io.github.formulationmath.soap;

import io.github.formulationmath.number.Excerpt;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Interval;
import java.io.Serializable;
import java.util.Objects;
import java.util.Optional;

/**
 * A fat or wax as far as alkali is concerned.
 *
 * <p>A wax is told apart from a fat. The esters of beeswax, jojoba or wool fat hardly react with watery alkali, so that for a
 * wax only its acids are sure to take up alkali: the low end of its demand is its acid value, the high end its
 * saponification value. A wax of unknown acid value is sure of nothing.
 *
 * @param name the INCI name, or what it is called in the formula
 * @param nature what it is made of
 * @param saponification its saponification value
 * @param acid the range of its acid value, if known
 * @param inert what of it takes no part and is not counted in the value
 */
public record Fat(String name, Nature nature, SaponificationValue saponification, AcidRange acid, InertMatter inert)
        implements Serializable {

    /**
     * The range of an acid value that may be unknown.
     *
     * @param isKnown whether anybody knows it
     * @param range its range; 0 if nobody does
     */
    public record AcidRange(boolean isKnown, Interval<AlkaliNumber> range) implements Serializable {

        /**
         * Checks presence.
         *
         * @param isKnown whether anybody knows it
         * @param range its range
         */
        public AcidRange {
            Objects.requireNonNull(range, "range");
        }

        static AcidRange of(Optional<Interval<AlkaliNumber>> range) {
            return new AcidRange(range.isPresent(), range.orElse(Interval.of(AlkaliNumber.ZERO, AlkaliNumber.ZERO)));
        }
    }

    /** Edible fats lie inside; what lies outside has to be asked for by {@link #unusual}. */
    private static final Interval<AlkaliNumber> USUAL =
            Interval.of(AlkaliNumber.parse("150 mg KOH/g"), AlkaliNumber.parse("300 mg KOH/g"));

    /** What a fat is made of. */
    public enum Nature {
        /** Esters of glycerol, with or without free acids: they set glycerol free. */
        TRIGLYCERIDES,
        /** Esters of long alcohols that hardly react with watery alkali: only the acid value is counted on. */
        WAX,
        /** A wax of which somebody states that its esters react as well. It sets no glycerol free. */
        WAX_THAT_REACTS,
        /** Free fatty acids, such as stearic acid: no glycerol. */
        FATTY_ACIDS
    }

    /**
     * Checks what belongs together.
     *
     * @param name the name
     * @param nature what it is made of
     * @param saponification its saponification value
     * @param acid the range of its acid value, if known
     * @param inert what of it takes no part
     * @throws IllegalArgumentException if the name is blank, or the acid value reaches above the saponification value
     */
    public Fat {
        if (Objects.requireNonNull(name, "name").isBlank()) {
            throw new IllegalArgumentException("name is blank: name the fat as its line in the formula");
        }
        Objects.requireNonNull(nature, "nature");
        Objects.requireNonNull(inert, "inert");
        AlkaliNumber most =
                Objects.requireNonNull(saponification, "saponification").range().greatest();
        Optional.of(Objects.requireNonNull(acid, "acid"))
                .filter(AcidRange::isKnown)
                .ifPresent(known -> {
                    if (known.range().greatest().compareTo(most) > 0) {
                        throw new IllegalArgumentException("acid value of " + Excerpt.of(name) + " is " + known.range()
                                + ", which reaches above its saponification value of " + most
                                + ": the saponification value counts the free acids already");
                    }
                });
    }

    /**
     * The range of its acid value.
     *
     * @return the range, if anybody knows it
     */
    public Optional<Interval<AlkaliNumber>> acidValue() {
        return acid.isKnown() ? Optional.of(acid.range()) : Optional.empty();
    }

    /**
     * An oil or butter.
     *
     * @param name the name
     * @param value its saponification value, between 150 and 300 mg KOH/g
     * @param inert what of it takes no part and is not counted in the value; there is no default
     * @return the fat
     * @throws IllegalArgumentException if the value reaches outside what edible fats have
     */
    public static Fat triglycerides(String name, SaponificationValue value, InertMatter inert) {
        return new Fat(name, Nature.TRIGLYCERIDES, usual(name, value), AcidRange.of(Optional.empty()), inert);
    }

    /**
     * Fatty acids as such, for example stearic acid of the trade.
     *
     * @param name the name
     * @param value its saponification value, between 150 and 300 mg KOH/g
     * @param inert what of it takes no part and is not counted in the value
     * @return the fat
     * @throws IllegalArgumentException if the value reaches outside what fatty acids of the trade have
     */
    public static Fat fattyAcids(String name, SaponificationValue value, InertMatter inert) {
        return new Fat(name, Nature.FATTY_ACIDS, usual(name, value), AcidRange.of(Optional.empty()), inert);
    }

    /**
     * A wax whose acid value is known.
     *
     * @param name the name
     * @param value its saponification value
     * @param leastAcid the least acid value, such as {@code "17 mg KOH/g"}
     * @param greatestAcid the greatest acid value
     * @param inert what of it takes no part and is not counted in the value
     * @return the wax
     * @throws IllegalArgumentException if the acid value reaches above the saponification value
     */
    public static Fat wax(
            String name, SaponificationValue value, String leastAcid, String greatestAcid, InertMatter inert) {
        return new Fat(
                name,
                Nature.WAX,
                value,
                AcidRange.of(Optional.of(Interval.of(AlkaliNumber.parse(leastAcid), AlkaliNumber.parse(greatestAcid)))),
                inert);
    }

    /**
     * A wax whose acid value nobody knows: it may take up no alkali at all.
     *
     * @param name the name
     * @param value its saponification value
     * @param inert what of it takes no part and is not counted in the value
     * @return the wax
     */
    public static Fat wax(String name, SaponificationValue value, InertMatter inert) {
        return new Fat(name, Nature.WAX, value, AcidRange.of(Optional.empty()), inert);
    }

    /**
     * A fat whose saponification value lies outside 150 to 300 mg KOH/g, and somebody has seen that.
     *
     * @param name the name
     * @param value its saponification value
     * @param inert what of it takes no part and is not counted in the value
     * @return the fat, taken for triglycerides
     */
    public static Fat unusual(String name, SaponificationValue value, InertMatter inert) {
        return new Fat(name, Nature.TRIGLYCERIDES, value, AcidRange.of(Optional.empty()), inert);
    }

    private static SaponificationValue usual(String name, SaponificationValue value) {
        Objects.requireNonNull(value, "value");
        if (!USUAL.contains(value.range().least())
                || !USUAL.contains(value.range().greatest())) {
            throw new IllegalArgumentException("saponification value of " + Excerpt.of(name) + " is " + value.range()
                    + ", outside " + USUAL
                    + " of edible fats: if it is a wax use Fat.wax, if you have seen such a value"
                    + " use Fat.unusual; or is the unit wrong?");
        }
        return value;
    }

    /**
     * This wax, of which it is stated that its esters react too.
     *
     * @return the wax with its saponification value at both ends
     * @throws IllegalStateException if it is no wax
     */
    public Fat whoseEstersReact() {
        if (nature != Nature.WAX) {
            throw new IllegalStateException(name + " is no wax: its esters are counted already");
        }
        return new Fat(name, Nature.WAX_THAT_REACTS, saponification, acid, inert);
    }

    /**
     * This fat with the range of its acid value. The saponification value counts the free acids already; the acid value tells how
     * much of it sets no glycerol free.
     *
     * @param least such as {@code "0 mg KOH/g"}
     * @param greatest such as {@code "2 mg KOH/g"}
     * @return the fat with its acid value
     * @throws IllegalArgumentException if the acid value reaches above the saponification value
     */
    public Fat withAcidValue(String least, String greatest) {
        return new Fat(
                name,
                nature,
                saponification,
                AcidRange.of(Optional.of(Interval.of(AlkaliNumber.parse(least), AlkaliNumber.parse(greatest)))),
                inert);
    }

    /** This fat with a second value of the same lot, which has to have something in common with the first. */
    Fat with(SaponificationValue second) {
        Interval<AlkaliNumber> known = saponification.range();
        if (second.range().least().compareTo(known.greatest()) > 0
                || second.range().greatest().compareTo(known.least()) < 0) {
            throw new IllegalArgumentException("value of " + Excerpt.of(name) + " is " + second.range()
                    + ", nowhere inside " + known
                    + " as declared: the lot does not conform, or one figure is of another fat;"
                    + " declare the fat by the figure that is right");
        }
        return new Fat(name, nature, second, acid, inert);
    }

    /** Grams of potassium hydroxide that one gram as weighed is sure to take up. */
    Ratio leastTaken() {
        return leastNumber().gramsPerGram().times(Ratio.ONE.minus(inert.most().fraction()));
    }

    /** What one gram without inert matter is sure to take up: of a wax its acids alone. */
    AlkaliNumber leastNumber() {
        return nature == Nature.WAX
                ? acidValue().map(Interval::least).orElse(AlkaliNumber.ZERO)
                : saponification.range().least();
    }

    /** Grams of potassium hydroxide that one gram as weighed may take up. */
    Ratio greatestTaken() {
        return saponification.range().greatest().gramsPerGram();
    }

    /** The same in moles of hydroxide. */
    Ratio greatestDemand() {
        return saponification.range().greatest().molesPerGram();
    }

    /** Grams of potassium hydroxide per gram in the middle of the range, as recipes are reckoned. */
    Ratio middleTaken() {
        return saponification.middle().gramsPerGram();
    }

    /** The same in moles of hydroxide. */
    Ratio middleDemand() {
        return saponification.middle().molesPerGram();
    }

    /** What it is and the range of its value, for reading at a prompt. */
    @Override
    public String toString() {
        return name + " (" + FatTable.word(nature) + "), "
                + saponification.range().least() + " to "
                + saponification.range().greatest();
    }
}
