package io.github.formulationmath.soap;

import io.github.formulationmath.number.Excerpt;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Interval;
import io.github.formulationmath.reckoning.Source;
import io.github.formulationmath.simulation.CoverageFactor;
import java.io.Serializable;
import java.util.Objects;

/**
 * The saponification value of a fat as what it is: a range, with what the range rests on and where it was read. Nobody's
 * lot has the middle of a standard's range.
 *
 * <p>A saponification value counts free and esterified acids alike (ISO 3657), so free acids are not added to it. Above
 * 560 mg KOH/g there is no fat: tributyrin, the lightest, has 557.
 *
 * @param range the least and the greatest value
 * @param evidence what the range rests on
 * @param source where it was read
 */
public record SaponificationValue(Interval<AlkaliNumber> range, Evidence evidence, Source source)
        implements Serializable {

    private static final AlkaliNumber HIGHEST = AlkaliNumber.parse("560 mg KOH/g");

    /**
     * Checks the range.
     *
     * @param range the least and the greatest value
     * @param evidence what the range rests on
     * @param source where it was read
     * @throws IllegalArgumentException if the least is 0, the greatest is above 560 mg KOH/g, or no source is named
     */
    public SaponificationValue {
        Objects.requireNonNull(evidence, "evidence");
        if (Objects.requireNonNull(range, "range").least().equals(AlkaliNumber.ZERO)
                || range.greatest().compareTo(HIGHEST) > 0) {
            throw new IllegalArgumentException(
                    "saponification value is " + Excerpt.of(range) + ": it lies above 0 and at most at " + HIGHEST
                            + ", beyond which there is no fat; is the unit right?");
        }
        if (Objects.requireNonNull(source, "source").citation().isEmpty()) {
            throw new IllegalArgumentException("saponification value " + Excerpt.of(range)
                    + " has no source: name the standard, the certificate or the book with Source.published(…)");
        }
    }

    /**
     * The range of a standard, for a lot that is stated to conform to it.
     *
     * @param least such as {@code "184 mg KOH/g"}
     * @param greatest such as {@code "196 mg KOH/g"}
     * @param standard the standard with its edition, and the table
     * @return the value
     * @throws IllegalArgumentException if a text has no unit, the ends are reversed, or no fat has such a value
     */
    public static SaponificationValue ofStandard(String least, String greatest, Source standard) {
        return new SaponificationValue(ends(least, greatest), Evidence.CONFORMS_TO_STANDARD, standard);
    }

    /**
     * A value that is guaranteed to lie within a maximum error.
     *
     * @param value such as {@code "190 mg KOH/g"}
     * @param maximumError such as {@code "2 mg KOH/g"}
     * @param source who guarantees it
     * @return the value
     * @throws IllegalArgumentException if a text has no unit, or no fat has such a value
     */
    public static SaponificationValue within(String value, String maximumError, Source source) {
        return new SaponificationValue(around(value, maximumError), Evidence.MAXIMUM_ERROR, source);
    }

    /**
     * The value of a certificate with its expanded uncertainty. A certificate that states no uncertainty, or none whose
     * coverage factor is known, is no ground for a guarantee: its last digit is no uncertainty.
     *
     * @param value such as {@code "192.0 mg KOH/g"}
     * @param expandedUncertainty U, such as {@code "1.0 mg KOH/g"}, above 0
     * @param coverage the coverage factor k that U was stated with
     * @param certificate the certificate, with its lot and date
     * @return the value
     * @throws IllegalArgumentException if a text has no unit, U is 0, or no fat has such a value
     */
    public static SaponificationValue ofCertificate(
            String value, String expandedUncertainty, CoverageFactor coverage, Source certificate) {
        Objects.requireNonNull(coverage, "coverage");
        if (AlkaliNumber.parse(expandedUncertainty).equals(AlkaliNumber.ZERO)) {
            throw new IllegalArgumentException(
                    "expandedUncertainty is 0: a certificate that states none is no ground for a guarantee;"
                            + " take the range of a standard with ofStandard(…)");
        }
        return new SaponificationValue(around(value, expandedUncertainty), Evidence.COVERAGE_INTERVAL, certificate);
    }

    private static Interval<AlkaliNumber> ends(String least, String greatest) {
        return Interval.of(AlkaliNumber.parse(least), AlkaliNumber.parse(greatest));
    }

    private static Interval<AlkaliNumber> around(String value, String plusMinus) {
        Ratio middle = AlkaliNumber.parse(value).gramsPerGram();
        Ratio half = AlkaliNumber.parse(plusMinus).gramsPerGram();
        if (half.compareTo(middle) >= 0) {
            throw new IllegalArgumentException(
                    "saponification value is " + Excerpt.of(value) + " ± " + Excerpt.of(plusMinus)
                            + ": it would reach 0 or less; were the two exchanged, or is a unit wrong?");
        }
        return Interval.of(
                AlkaliNumber.ofGramsPerGram(middle.minus(half)), AlkaliNumber.ofGramsPerGram(middle.plus(half)));
    }

    /** The middle of the range: nobody's lot, but what a recipe is often reckoned with. */
    AlkaliNumber middle() {
        return AlkaliNumber.ofGramsPerGram(range.least()
                .gramsPerGram()
                .plus(range.greatest().gramsPerGram())
                .dividedBy(2));
    }
}
