package io.github.formulationmath.analysis;

import io.github.formulationmath.number.Excerpt;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.AmountFormat;
import java.io.Serial;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Volume;
import org.jspecify.annotations.Nullable;

/**
 * A reading with what makes it uncertain: one or more sources, each a standard uncertainty with its degrees of freedom (JCGM
 * 100:2008, 4.2 and 4.3). Sources are independent of each other; each is kept apart, for each has its own line in the {@link Budget}.
 *
 * <p>Variances are kept exact: a rectangular half-width a has a²/3, a triangular one a²/6. Without a source the value counts as exact.
 *
 * <p>Example: a burette reading with a tolerance of ±0.03 mL and a repeatability of 0.01 mL from ten fillings is
 *
 * <pre>{@code
 * Estimate.volume("25.60 mL").triangular("0.03 mL").standard("0.01 mL", "9")
 * }</pre>
 *
 * <p>{@code equals} means the same value in the same unit with the same sources in the same order. Immutable and thread-safe.
 *
 * @param <Q> what is measured
 */
public final class Estimate<Q extends Quantity<Q>> implements Serializable {

    @Serial
    private static final long serialVersionUID = 1L;

    private final Amount<Q> value;
    private final List<Spread> spreads;

    /**
     * One source, its variance in the counting unit squared.
     *
     * @param stated what was stated, for the budget
     * @param variance the square of the standard uncertainty
     * @param degreesOfFreedom none for infinitely many
     */
    record Spread(String stated, Ratio variance, @Nullable Ratio degreesOfFreedom) implements Serializable {}

    private Estimate(Amount<Q> value, List<Spread> spreads) {
        this.value = value;
        this.spreads = spreads;
    }

    /**
     * A mass, its sources still to be added.
     *
     * @param text such as {@code "1.8976 g"}
     * @return the estimate
     * @throws io.github.formulationmath.number.NumberTextException if the text is not a mass; a bare number is none
     */
    public static Estimate<Mass> mass(String text) {
        return of(Amount.mass(text));
    }

    /**
     * A volume, its sources still to be added.
     *
     * @param text such as {@code "5.20 mL"}
     * @return the estimate
     * @throws io.github.formulationmath.number.NumberTextException if the text is not a volume; a bare number is none
     */
    public static Estimate<Volume> volume(String text) {
        return of(Amount.volume(text));
    }

    /**
     * A value, its sources still to be added.
     *
     * @param value the value
     * @param <Q> what is measured
     * @return the estimate, exact so far
     */
    public static <Q extends Quantity<Q>> Estimate<Q> of(Amount<Q> value) {
        return new Estimate<>(Objects.requireNonNull(value, "value"), List.of());
    }

    /**
     * The mean of repeated readings: {@code u² = Σ (x − mean)² / (n (n − 1))} with n − 1 degrees of freedom (JCGM 100:2008, 4.2.3).
     *
     * @param readings two or more
     * @param <Q> what is measured
     * @return the estimate, in the unit of the first reading
     * @throws IllegalArgumentException if there are fewer than two
     */
    public static <Q extends Quantity<Q>> Estimate<Q> ofReadings(List<Amount<Q>> readings) {
        if (Objects.requireNonNull(readings, "readings").size() < 2) {
            throw new IllegalArgumentException("readings are " + Excerpt.ofAll(readings)
                    + ": a spread needs two or more; state the uncertainty of one with standard(…)");
        }
        int n = readings.size();
        Amount<Q> sum = readings.get(0);
        for (Amount<Q> reading : readings.subList(1, n)) {
            sum = sum.plus(reading);
        }
        Amount<Q> mean = sum.dividedBy(Ratio.of(n));
        Ratio squares = Ratio.ZERO;
        for (Amount<Q> reading : readings) {
            Ratio off = reading.minus(mean).canonical();
            squares = squares.plus(off.times(off));
        }
        Ratio variance = squares.dividedBy((long) n * (n - 1));
        return of(mean).with(new Spread("mean of " + n + " readings", variance, Ratio.of(n - 1L)));
    }

    /**
     * With a standard uncertainty that is well known, as from a certificate or long use: infinitely many degrees of freedom.
     *
     * @param uncertainty such as {@code "0.02 mL"}, 0 or more
     * @return the estimate with this source
     * @throws IllegalArgumentException if the text is no such amount, or is negative
     */
    public Estimate<Q> standard(String uncertainty) {
        Ratio u = width("uncertainty", uncertainty);
        return with(new Spread("standard " + uncertainty.strip(), u.times(u), null));
    }

    /**
     * With a standard uncertainty and its degrees of freedom.
     *
     * @param uncertainty such as {@code "0.02 mL"}, 0 or more
     * @param degreesOfFreedom such as {@code "9"} for ten readings; at least 1, whole or not
     * @return the estimate with this source
     * @throws IllegalArgumentException if a text is no such amount or number, or is too small
     */
    public Estimate<Q> standard(String uncertainty, String degreesOfFreedom) {
        Ratio u = width("uncertainty", uncertainty);
        return with(new Spread("standard " + uncertainty.strip(), u.times(u), degrees(degreesOfFreedom)));
    }

    static Ratio degrees(String text) {
        Ratio degrees = Ratio.parse(Objects.requireNonNull(text, "degreesOfFreedom"));
        if (degrees.compareTo(Ratio.ONE) < 0) {
            throw new IllegalArgumentException("degreesOfFreedom is " + Excerpt.of(degrees)
                    + ": it is at least 1; of n readings it is n − 1, so take two or more");
        }
        return degrees;
    }

    /**
     * With a source of which only the limits are known: {@code u² = a²/3}.
     *
     * @param halfWidth such as {@code "0.03 mL"}, 0 or more
     * @return the estimate with this source
     * @throws IllegalArgumentException if the text is no such amount, or is negative
     */
    public Estimate<Q> rectangular(String halfWidth) {
        Ratio a = width("halfWidth", halfWidth);
        return with(new Spread("rectangular ±" + halfWidth.strip(), a.times(a).dividedBy(3), null));
    }

    /**
     * With a source of which the limits are known, and that values near the middle are likelier: {@code u² = a²/6}.
     *
     * @param halfWidth such as {@code "0.03 mL"}, 0 or more
     * @return the estimate with this source
     * @throws IllegalArgumentException if the text is no such amount, or is negative
     */
    public Estimate<Q> triangular(String halfWidth) {
        Ratio a = width("halfWidth", halfWidth);
        return with(new Spread("triangular ±" + halfWidth.strip(), a.times(a).dividedBy(6), null));
    }

    /** A width in counting units; its text has a unit that measures what the value measures. */
    private Ratio width(String name, String text) {
        Amount<?> width = AmountFormat.standard().parse(text);
        if (!width.getUnit().isCompatible(value.getUnit())) {
            throw new IllegalArgumentException(name + " is " + Excerpt.of(text) + " of " + Excerpt.of(value)
                    + ": they measure different things; give it in " + value.symbol());
        }
        if (width.signum() < 0) {
            throw new IllegalArgumentException(name + " is " + Excerpt.of(text) + ": it must be at least 0");
        }
        return width.canonical();
    }

    Estimate<Q> with(Spread spread) {
        List<Spread> more = new ArrayList<>(spreads);
        more.add(spread);
        return new Estimate<>(value, List.copyOf(more));
    }

    /**
     * The value.
     *
     * @return the best estimate
     */
    public Amount<Q> value() {
        return value;
    }

    List<Spread> spreads() {
        return spreads;
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Estimate<?> that && value.equals(that.value) && spreads.equals(that.spreads);
    }

    @Override
    public int hashCode() {
        return Objects.hash(value, spreads);
    }

    /** The value and what was stated of it. */
    @Override
    public String toString() {
        StringBuilder text = new StringBuilder(value.toString());
        spreads.forEach(spread -> text.append(", ").append(spread.stated()));
        return text.toString();
    }
}
