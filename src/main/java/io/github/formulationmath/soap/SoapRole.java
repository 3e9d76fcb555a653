package io.github.formulationmath.soap;

import io.github.formulationmath.formula.SubstanceName;
import io.github.formulationmath.number.Excerpt;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.reckoning.Phrase;
import java.io.Serializable;
import java.util.Optional;
import java.util.Set;

/** What a line of a soap is as far as alkali is concerned: whether it gives hydroxide, takes it, or does neither. */
sealed interface SoapRole extends Serializable {

    /** Grams of potassium hydroxide in a mole. */
    Ratio KOH = Alkali.POTASSIUM_HYDROXIDE.gramsPerMole();

    /**
     * What one gram as weighed brings of hydroxide, in grams of potassium hydroxide, at the end that leaves most; negative if it takes
     * them. In this unit the figures of fats are short decimals.
     */
    Ratio most();

    /** The same at the end that leaves least. */
    Ratio least();

    /** What the line is, for those who print it. */
    Soap.Part part();

    /** Whether the ends are sure, and not the ends of a coverage interval. */
    boolean isBounded();

    /** The figure at the end that leaves most, in words; nothing to say of what takes no part. */
    default Optional<Phrase> corner(String line) {
        return Optional.empty();
    }

    /** An alkali. */
    record Gives(AlkaliGrade grade) implements SoapRole {
        @Override
        public Soap.Part part() {
            return Soap.Part.ALKALI;
        }

        @Override
        public Ratio most() {
            return grade.greatestSupply().times(KOH);
        }

        @Override
        public Ratio least() {
            return grade.leastSupply().times(KOH);
        }

        @Override
        public boolean isBounded() {
            return grade.evidence().isBounded();
        }

        @Override
        public Optional<Phrase> corner(String line) {
            return Optional.of(Phrase.of(
                    "soap.corner.alkali",
                    line,
                    AlkaliReport.percentUp(grade.hydroxide().greatest().fraction())));
        }
    }

    /** A fat, in the pot from the start or added late. */
    record Takes(Fat fat, boolean late) implements SoapRole {
        @Override
        public Soap.Part part() {
            return late ? Soap.Part.LATE_FAT : Soap.Part.FAT;
        }

        @Override
        public Ratio most() {
            return fat.leastTaken().unaryMinus();
        }

        @Override
        public Ratio least() {
            return fat.greatestTaken().unaryMinus();
        }

        @Override
        public boolean isBounded() {
            return fat.saponification().evidence().isBounded();
        }

        @Override
        public Optional<Phrase> corner(String line) {
            String value = AlkaliReport.down(fat.leastNumber().gramsPerGram().times(1000));
            String key = fat.nature() == Fat.Nature.WAX ? "soap.corner.wax" : "soap.corner.fat";
            return Optional.of(
                    fat.inert().most().fraction().isZero()
                            ? Phrase.of(key, line, value)
                            : Phrase.of(
                                    key + "-inert",
                                    line,
                                    value,
                                    AlkaliReport.percentUp(fat.inert().most().fraction())));
        }
    }

    /** An acid, which is paid in full before any fat. */
    record TakesFirst(Acid acid) implements SoapRole {
        @Override
        public Soap.Part part() {
            return Soap.Part.ACID;
        }

        @Override
        public Ratio most() {
            return acid.leastDemand().times(KOH).unaryMinus();
        }

        @Override
        public Ratio least() {
            return acid.greatestDemand().times(KOH).unaryMinus();
        }

        @Override
        public boolean isBounded() {
            return true;
        }

        @Override
        public Optional<Phrase> corner(String line) {
            return Optional.of(Phrase.of(
                    "soap.corner.acid",
                    line,
                    AlkaliReport.down(acid.assay().least().percent())));
        }
    }

    /** Water, perfume, salt: stated to give no hydroxide and to take none. */
    enum Neither implements SoapRole {
        /** Anything. */
        INSTANCE,
        /** The water that the alkali is dissolved in. */
        LYE_WATER;

        /** What is known by name to bring alkali: hydroxides, oxides, and salts of weak acids that take acid from the fats' share. */
        private static final Set<String> BRINGS_ALKALI = Set.of(
                "sodium hydroxide",
                "potassium hydroxide",
                "lithium hydroxide",
                "calcium hydroxide",
                "magnesium hydroxide",
                "ammonium hydroxide",
                "calcium oxide",
                "magnesium oxide",
                "zinc oxide",
                "sodium carbonate",
                "potassium carbonate",
                "sodium silicate",
                "potassium silicate",
                "sodium metasilicate",
                "sodium borate");

        /** Refuses what is known to bring alkali, so that no judgement rests on the statement that it does not. */
        static void require(String name) {
            if (BRINGS_ALKALI.stream().anyMatch(known -> SubstanceName.areAlike(known, name))) {
                throw new IllegalArgumentException(
                        Excerpt.of(name)
                                + " brings alkali: declare sodium and potassium hydroxide with alkali(…); how much other alkalis bring is"
                                + " not reckoned here, so leave their line undeclared in a Soap, for which no judgement is then made");
            }
        }

        @Override
        public Soap.Part part() {
            return this == LYE_WATER ? Soap.Part.LYE_WATER : Soap.Part.NEITHER;
        }

        @Override
        public Ratio most() {
            return Ratio.ZERO;
        }

        @Override
        public Ratio least() {
            return Ratio.ZERO;
        }

        @Override
        public boolean isBounded() {
            return true;
        }
    }
}
