package io.github.formulationmath.weighing;

import io.github.formulationmath.number.Bounds;
import io.github.formulationmath.number.Excerpt;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.Interval;
import io.github.formulationmath.simulation.InputQuantity.Law;
import java.io.Serial;
import java.io.Serializable;
import java.util.Objects;
import java.util.Optional;
import javax.measure.quantity.Mass;
import org.jspecify.annotations.Nullable;

/**
 * What is known of a balance beyond the step of its display: the errors that its makers, its certificate, or a test at
 * the bench put figures to. Everything is 0 until it is said.
 *
 * <ul>
 *   <li><b>repeatability s</b>: the standard deviation of repeated net weighings of the same thing. It has no bound. A net
 *       weighing is the difference of two indications, so that each of the two carries the variance s²/2.
 *   <li><b>linearity a</b>: the most by which the balance may be wrong because it does not rise evenly, stated either of
 *       one indication or of a net reading ({@link LinearityBasis}). There is no default: the figure of a data sheet is of an
 *       indication as a rule, and counts twice in a net reading. A reading that adds up from one tare, and each of the two
 *       readings of a weighing by difference, count as net readings of their own.
 *   <li><b>calibration</b>: the relative standard uncertainty of the scale as a whole. It is common to all additions, so
 *       it changes the masses and leaves their shares alone.
 *   <li><b>tare resolution z</b>: the step to which the zero is set; the readability unless it is said otherwise.
 *   <li><b>residue</b>: how much may stay behind in a boat; it matters to {@link WeighingMethod#FROM_BOAT} alone.
 *   <li><b>buoyancy b</b>: the relative correction for air, mass = reading · (1 + b); an interval if the densities are
 *       not known better (see {@link AirBuoyancy}).
 * </ul>
 *
 * <p>Errors add up, {@code mass = reading · (1 + b) + errors}: the products of two of them, b times half a division above
 * all, are left out. With b below 0.002 that is less than a five-hundredth of what the display hides.
 *
 * <p>Example: {@code ErrorModel.readabilityOnly().withRepeatability("0.05 g").withLinearityOfIndication("0.1 g")}.
 *
 * <p>Immutable and thread-safe.
 */
public final class ErrorModel implements Serializable {

    @Serial
    private static final long serialVersionUID = 3L;

    private static final Amount<Mass> NOTHING = Amount.grams(Ratio.ZERO);

    private static final ErrorModel READABILITY_ONLY = new ErrorModel(NOTHING, null, Ratio.ZERO, null, null, null);

    private final Amount<Mass> repeatability;
    private final @Nullable Linearity linearity;
    private final Ratio calibration;
    private final @Nullable Amount<Mass> tareResolution;
    private final @Nullable Interval<Amount<Mass>> residue;
    private final @Nullable Bounds buoyancy;

    private ErrorModel(
            Amount<Mass> repeatability,
            @Nullable Linearity linearity,
            Ratio calibration,
            @Nullable Amount<Mass> tareResolution,
            @Nullable Interval<Amount<Mass>> residue,
            @Nullable Bounds buoyancy) {
        this.repeatability = repeatability;
        this.linearity = linearity;
        this.calibration = calibration;
        this.tareResolution = tareResolution;
        this.residue = residue;
        this.buoyancy = buoyancy;
    }

    /**
     * The model that knows of nothing but the steps of the display.
     *
     * @return the model every balance begins with
     */
    public static ErrorModel readabilityOnly() {
        return READABILITY_ONLY;
    }

    /**
     * The same model with a repeatability.
     *
     * <p>A standard deviation worked out from readings of the display already contains the d²/6 that two indications hide;
     * the display is counted again, which is on the safe side, unless {@code s² − d²/6} is given instead of s².
     *
     * @param standardDeviation the standard deviation of repeated net weighings, at least 0
     * @return the model
     * @throws IllegalArgumentException if it is negative
     */
    public ErrorModel withRepeatability(Amount<Mass> standardDeviation) {
        Amount.requireNotNegative("standardDeviation", standardDeviation);
        return new ErrorModel(standardDeviation, linearity, calibration, tareResolution, residue, buoyancy);
    }

    /**
     * The same model with a repeatability as text.
     *
     * @param standardDeviation for example {@code "0.05 g"}
     * @return the model
     * @throws IllegalArgumentException if the text is no mass, or negative
     */
    public ErrorModel withRepeatability(String standardDeviation) {
        return withRepeatability(Amount.mass(standardDeviation));
    }

    /**
     * The same model with a linearity of one indication: it counts for both indications of a net reading, as data sheets mean it. Every
     * value between its bounds is alike.
     *
     * @param halfWidth the most by which one indication may be wrong either way, at least 0
     * @return the model
     * @throws IllegalArgumentException if it is negative
     */
    public ErrorModel withLinearityOfIndication(Amount<Mass> halfWidth) {
        return withLinearityOfIndication(halfWidth, Law.RECTANGULAR);
    }

    /**
     * The same model with a linearity of one indication as text, every value between its bounds alike.
     *
     * @param halfWidth for example {@code "0.1 g"}
     * @return the model
     * @throws IllegalArgumentException if the text is no mass, or negative
     */
    public ErrorModel withLinearityOfIndication(String halfWidth) {
        return withLinearityOfIndication(Amount.mass(halfWidth));
    }

    /**
     * The same model with a linearity of one indication, spread by a stated law.
     *
     * @param halfWidth the most by which one indication may be wrong either way, at least 0
     * @param law how it is spread between its bounds
     * @return the model
     * @throws IllegalArgumentException if the half-width is negative or the law has no bounds
     */
    public ErrorModel withLinearityOfIndication(Amount<Mass> halfWidth, Law law) {
        return with(Linearity.of(halfWidth, law, LinearityBasis.INDICATION));
    }

    /**
     * The same model with a linearity of a net reading: it counts once for a reading from a tare. Every
     * value between its bounds is alike.
     *
     * @param halfWidth the most by which a net reading may be wrong either way, at least 0
     * @return the model
     * @throws IllegalArgumentException if it is negative
     */
    public ErrorModel withLinearityOfNetReading(Amount<Mass> halfWidth) {
        return withLinearityOfNetReading(halfWidth, Law.RECTANGULAR);
    }

    /**
     * The same model with a linearity of a net reading as text, every value between its bounds alike.
     *
     * @param halfWidth for example {@code "0.1 g"}
     * @return the model
     * @throws IllegalArgumentException if the text is no mass, or negative
     */
    public ErrorModel withLinearityOfNetReading(String halfWidth) {
        return withLinearityOfNetReading(Amount.mass(halfWidth));
    }

    /**
     * The same model with a linearity of a net reading, spread by a stated law.
     *
     * @param halfWidth the most by which a net reading may be wrong either way, at least 0
     * @param law how it is spread between its bounds
     * @return the model
     * @throws IllegalArgumentException if the half-width is negative or the law has no bounds
     */
    public ErrorModel withLinearityOfNetReading(Amount<Mass> halfWidth, Law law) {
        return with(Linearity.of(halfWidth, law, LinearityBasis.NET_READING));
    }

    /** Without one of its own it is 0. */
    private Linearity stated() {
        return linearity == null ? Linearity.NONE : linearity;
    }

    private ErrorModel with(Linearity newLinearity) {
        return new ErrorModel(repeatability, newLinearity, calibration, tareResolution, residue, buoyancy);
    }

    /**
     * The same model with a calibration.
     *
     * @param relativeStandardUncertainty standard uncertainty of the scale divided by the mass, at least 0 and below 1;
     *     1/10000 is 0.01 %
     * @return the model
     * @throws IllegalArgumentException if it is out of range
     */
    public ErrorModel withCalibration(Ratio relativeStandardUncertainty) {
        Objects.requireNonNull(relativeStandardUncertainty, "relativeStandardUncertainty");
        if (relativeStandardUncertainty.signum() < 0 || relativeStandardUncertainty.compareTo(Ratio.ONE) >= 0) {
            throw new IllegalArgumentException("relativeStandardUncertainty is "
                    + Excerpt.of(relativeStandardUncertainty) + ": it is a share of the mass, at least 0 and below 1");
        }
        return new ErrorModel(repeatability, linearity, relativeStandardUncertainty, tareResolution, residue, buoyancy);
    }

    /**
     * The same model for a balance that sets its zero more finely or more coarsely than it shows.
     *
     * @param step the step to which the zero is set, at least 0
     * @return the model
     * @throws IllegalArgumentException if it is negative
     */
    public ErrorModel withTareResolution(Amount<Mass> step) {
        Amount.requireNotNegative("step", step);
        return new ErrorModel(repeatability, linearity, calibration, step, residue, buoyancy);
    }

    /**
     * The same model with what may stay behind in a boat, every amount between the two alike.
     *
     * @param least the least that stays behind, at least 0
     * @param greatest the most that stays behind, at least the least
     * @return the model
     * @throws IllegalArgumentException if one is negative or they are the wrong way round
     */
    public ErrorModel withResidue(Amount<Mass> least, Amount<Mass> greatest) {
        Amount.requireNotNegative("least", least);
        Amount.requireNotNegative("greatest", greatest);
        Interval<Amount<Mass>> between = Interval.of(least, greatest);
        return new ErrorModel(repeatability, linearity, calibration, tareResolution, between, buoyancy);
    }

    /**
     * The same model with a correction for the buoyancy of air, every value between its ends alike, and for each addition
     * by itself: the densities of the ingredients differ.
     *
     * @param relativeCorrection b in mass = reading · (1 + b), both ends given and above -1; a point if it is known
     * @return the model
     * @throws IllegalArgumentException if an end is missing or not above -1
     */
    public ErrorModel withBuoyancy(Bounds relativeCorrection) {
        return new ErrorModel(
                repeatability, linearity, calibration, tareResolution, residue, requireCorrection(relativeCorrection));
    }

    static Bounds requireCorrection(Bounds relativeCorrection) {
        Optional<Ratio> lower =
                Objects.requireNonNull(relativeCorrection, "relativeCorrection").lower();
        if (lower.filter(b -> b.plus(Ratio.ONE).signum() > 0).isEmpty()
                || relativeCorrection.upper().isEmpty()) {
            throw new IllegalArgumentException("relativeCorrection is " + Excerpt.of(relativeCorrection)
                    + ": both its ends are needed, above -1; on a usual balance it lies between 0 and 0.002");
        }
        return relativeCorrection;
    }

    /**
     * The repeatability.
     *
     * @return the standard deviation s, at least 0
     */
    public Amount<Mass> repeatability() {
        return repeatability;
    }

    /**
     * The linearity.
     *
     * @return the half-width a, at least 0
     */
    public Amount<Mass> linearity() {
        return linearity == null ? NOTHING : linearity.halfWidth();
    }

    /**
     * Of what the linearity is stated.
     *
     * @return the basis; empty if the linearity is 0, which is the same of anything
     */
    public Optional<LinearityBasis> linearityBasis() {
        return Optional.ofNullable(linearity == null ? null : linearity.basis());
    }

    /**
     * How the linearity is spread between its bounds.
     *
     * @return a law with bounds
     */
    public Law linearityLaw() {
        return stated().law();
    }

    /**
     * The calibration.
     *
     * @return the relative standard uncertainty of the scale
     */
    public Ratio calibration() {
        return calibration;
    }

    /**
     * The step to which the zero is set.
     *
     * @return the step, if it is not the readability
     */
    public Optional<Amount<Mass>> tareResolution() {
        return Optional.ofNullable(tareResolution);
    }

    /**
     * What stays behind in a boat.
     *
     * @return from the least to the most, at least 0
     */
    public Interval<Amount<Mass>> residue() {
        return residue == null ? Interval.of(NOTHING, NOTHING) : residue;
    }

    /**
     * The relative correction for the buoyancy of air.
     *
     * @return b in mass = reading · (1 + b), a plain number; both ends are there
     */
    public Bounds buoyancy() {
        return buoyancy == null ? Bounds.point(Ratio.ZERO) : buoyancy;
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return this == other
                || other instanceof ErrorModel that
                        && repeatability.equals(that.repeatability)
                        && stated().equals(that.stated())
                        && calibration.equals(that.calibration)
                        && Objects.equals(tareResolution, that.tareResolution)
                        && residue().equals(that.residue())
                        && buoyancy().equals(that.buoyancy());
    }

    @Override
    public int hashCode() {
        return Objects.hash(repeatability, stated(), calibration, tareResolution, residue(), buoyancy());
    }

    @Override
    public String toString() {
        return "repeatability " + said(repeatability) + ", " + stated() + ", calibration "
                + calibration
                + ", tare " + (tareResolution == null ? "as the display" : tareResolution.toldExactly()) + ", residue "
                + said(residue().least()) + " to " + said(residue().greatest()) + ", buoyancy " + buoyancy();
    }

    /** Nothing is nothing in any unit. */
    private static String said(Amount<Mass> mass) {
        return mass.isZero() ? "0" : mass.toldExactly();
    }
}
