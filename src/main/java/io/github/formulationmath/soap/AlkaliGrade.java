package io.github.formulationmath.soap;

import io.github.formulationmath.number.Excerpt;
import io.github.formulationmath.number.NumberText;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Interval;
import io.github.formulationmath.quantity.MassFraction;
import io.github.formulationmath.reckoning.Source;
import java.io.Serializable;
import java.util.Objects;

/**
 * An alkali as it is weighed: flakes, pellets or a titrated stock lye, with the range of hydroxide in it.
 *
 * <p>Two figures are called its assay. Total alkali counts the carbonate, which takes no part in cold saponification; then
 * {@code w = assay − k · carbonate}, with k = 2 M(hydroxide)/M(carbonate). A carbonate that nobody states is taken as none
 * for the upper end, which is the safe side, and leaves the lower end to whoever states it. Pharmacopoeias allow an assay
 * up to 100.5 %; one up to 101 % is read, and the hydroxide is cut at 100 %.
 *
 * <p>A nominal "90 %" is no upper bound, so both ends are asked for. Moisture and carbon dioxide taken up lower the share,
 * which is the safe side; a stock lye that lost water is stronger, so that only a titrated, stirred one has a range.
 *
 * @param alkali the hydroxide
 * @param hydroxide the share of hydroxide in what is weighed
 * @param carbonate the share of carbonate in it
 * @param form solid or dissolved
 * @param evidence what the range rests on
 * @param source where it was read
 */
public record AlkaliGrade(
        Alkali alkali,
        Interval<MassFraction> hydroxide,
        Interval<MassFraction> carbonate,
        Form form,
        Evidence evidence,
        Source source)
        implements Serializable {

    /** Above it neither lye stays dissolved at room temperature for certain. */
    static final MassFraction STRONGEST_LYE = MassFraction.parse("50 %");

    private static final Ratio HIGHEST_ASSAY = Ratio.parse("1.01");

    /** Hydroxide and carbonate beyond the whole by more than two titrations may err are not of one lot. */
    private static final Ratio MOST_TOGETHER = Ratio.parse("1.05");

    private static final MassFraction LEAST_SOLID = MassFraction.parse("50 %");

    /** Solid or dissolved. */
    public enum Form {
        /** Flakes, pellets, beads: the rest is carbonate and water. */
        SOLID,
        /** A stock lye, titrated and stirred. */
        SOLUTION
    }

    /** What an assay counts. */
    public enum Stated {
        /** Hydroxide and carbonate together, expressed as the hydroxide, as pharmacopoeias state it. */
        TOTAL_ALKALI,
        /** The hydroxide alone. */
        HYDROXIDE
    }

    /**
     * Checks the range against the form.
     *
     * @param alkali the hydroxide
     * @param hydroxide the share of hydroxide
     * @param carbonate the share of carbonate
     * @param form solid or dissolved
     * @param evidence what the range rests on
     * @param source where it was read
     * @throws IllegalArgumentException if a solid has less than 50 % hydroxide, a solution more than 50 %, or no hydroxide at all, or if
     *     hydroxide and carbonate are more than the whole
     */
    public AlkaliGrade {
        Objects.requireNonNull(alkali, "alkali");
        Objects.requireNonNull(carbonate, "carbonate");
        Objects.requireNonNull(evidence, "evidence");
        Objects.requireNonNull(source, "source");
        MassFraction least = Objects.requireNonNull(hydroxide, "hydroxide").least();
        if (least.fraction().plus(carbonate.least().fraction()).compareTo(MOST_TOGETHER) > 0) {
            throw new IllegalArgumentException(
                    "hydroxide in " + alkali + " is " + hydroxide + ", carbonate " + carbonate
                            + ": even the least of both make more than 105 %; are the two figures of the same lot?");
        }
        if (Objects.requireNonNull(form, "form") == Form.SOLID && least.compareTo(LEAST_SOLID) < 0) {
            throw new IllegalArgumentException("hydroxide in " + alkali + " is " + hydroxide
                    + ": a solid has at least 50 %; a lye is given with solution(…)");
        }
        if (least.equals(MassFraction.ZERO)) {
            throw new IllegalArgumentException("hydroxide in the lye is " + hydroxide + ": it must be above 0 %");
        }
        if (form == Form.SOLUTION && hydroxide.greatest().compareTo(STRONGEST_LYE) > 0) {
            throw new IllegalArgumentException("hydroxide in the lye is " + hydroxide
                    + ": above 50 % it may not stay dissolved at room temperature; dilute it and titrate it again");
        }
    }

    /** A solid alkali of which the assay and what it counts are still to be said. */
    public static final class Assayed {

        private final Alkali alkali;
        private final Interval<Ratio> assay;
        private final Stated stated;

        private Assayed(Alkali alkali, Interval<Ratio> assay, Stated stated) {
            this.alkali = alkali;
            this.assay = assay;
            this.stated = stated;
        }

        /**
         * With the range of its carbonate.
         *
         * @param least such as {@code "0 %"}
         * @param greatest such as {@code "3 %"}
         * @param evidence what the ranges rest on
         * @param source where they were read
         * @return the grade
         * @throws IllegalArgumentException if the carbonate is more than the assay allows
         */
        public AlkaliGrade carbonate(String least, String greatest, Evidence evidence, Source source) {
            Interval<MassFraction> carbonate = Interval.of(MassFraction.parse(least), MassFraction.parse(greatest));
            Ratio k = carbonateFactor(alkali);
            boolean total = stated == Stated.TOTAL_ALKALI;
            Ratio low = assay.least().minus(total ? k.times(carbonate.greatest().fraction()) : Ratio.ZERO);
            Ratio high =
                    assay.greatest().minus(total ? k.times(carbonate.least().fraction()) : Ratio.ZERO);
            if (low.signum() < 0) {
                throw new IllegalArgumentException("carbonate in " + alkali + " is " + carbonate
                        + ", which counts as more than the assay of "
                        + Excerpt.of(NumberText.percentExactly(assay.least()))
                        + ": are the two figures of the same lot?");
            }
            return new AlkaliGrade(alkali, Interval.of(cut(low), cut(high)), carbonate, Form.SOLID, evidence, source);
        }
    }

    /** How much hydroxide, in grams, one gram of carbonate counts as in a total alkali: two moles for one. */
    static Ratio carbonateFactor(Alkali alkali) {
        return alkali.molarMass().gramsPerMole().times(2).dividedBy(alkali.gramsPerMoleOfCarbonate());
    }

    private static MassFraction cut(Ratio share) {
        return share.compareTo(Ratio.ONE) > 0 ? MassFraction.WHOLE : MassFraction.of(share);
    }

    /**
     * A solid alkali with both ends of its assay.
     *
     * @param alkali the hydroxide
     * @param least the least assay in per cent, such as {@code "97 %"}
     * @param greatest the greatest assay, at most 101 %
     * @param stated what the assay counts; there is no default
     * @return the assay, to be completed with the carbonate
     * @throws IllegalArgumentException if the ends are reversed, or the greatest is above 101 %
     */
    public static Assayed assay(Alkali alkali, String least, String greatest, Stated stated) {
        Objects.requireNonNull(alkali, "alkali");
        Objects.requireNonNull(stated, "stated");
        Ratio low = percent("least", least);
        Ratio high = percent("greatest", greatest);
        if (low.compareTo(high) > 0) {
            throw new IllegalArgumentException("assay is " + Excerpt.of(least) + " to " + Excerpt.of(greatest)
                    + ": the least must not be above the greatest, the two may have been exchanged");
        }
        return new Assayed(alkali, Interval.of(low, high), stated);
    }

    private static Ratio percent(String name, String text) {
        String plain = Objects.requireNonNull(text, name).strip();
        if (!plain.endsWith("%")) {
            throw new IllegalArgumentException(
                    name + " is \"" + Excerpt.of(text) + "\": an assay is given in per cent, as in \"98 %\"");
        }
        Ratio share =
                Ratio.parse(plain.substring(0, plain.length() - 1).strip()).dividedBy(100);
        if (share.signum() <= 0 || share.compareTo(HIGHEST_ASSAY) > 0) {
            throw new IllegalArgumentException(name + " is " + Excerpt.of(text)
                    + ": an assay lies above 0 % and at most at 101 % (pharmacopoeias allow 100.5 %)");
        }
        return share;
    }

    /**
     * A stock lye by mass of hydroxide in mass of lye, as titrated.
     *
     * @param alkali the hydroxide
     * @param least the least strength w/w, such as {@code "49.5 %"}
     * @param greatest the greatest strength w/w, at most 50 %
     * @param evidence what the range rests on
     * @param source the titration
     * @return the grade
     * @throws IllegalArgumentException if the ends are reversed or out of range
     */
    public static AlkaliGrade solution(Alkali alkali, String least, String greatest, Evidence evidence, Source source) {
        return new AlkaliGrade(
                alkali,
                Interval.of(MassFraction.parse(least), MassFraction.parse(greatest)),
                Interval.of(MassFraction.ZERO, MassFraction.ZERO),
                Form.SOLUTION,
                evidence,
                source);
    }

    /** Moles of hydroxide in one gram as weighed, at most. */
    Ratio greatestSupply() {
        return hydroxide.greatest().fraction().dividedBy(alkali.gramsPerMole());
    }

    /** Moles of hydroxide in one gram as weighed, at least. */
    Ratio leastSupply() {
        return hydroxide.least().fraction().dividedBy(alkali.gramsPerMole());
    }

    /** The alkali and how much of it is hydroxide, rounded outward, for reading at a prompt. */
    @Override
    public String toString() {
        return alkali + ", " + AlkaliReport.down(hydroxide.least().percent()) + " to "
                + AlkaliReport.atLeast(hydroxide.greatest()) + " hydroxide";
    }
}
