package io.github.formulationmath.solution;

import io.github.formulationmath.number.Excerpt;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.Interval;
import io.github.formulationmath.reckoning.Source;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import javax.measure.quantity.Temperature;

/**
 * The stepwise acid constants of an acid, each as a range, with what a constant is worthless without: the temperature, the ionic
 * strength it holds at, and where it was read. The acid of an amine is its ammonium ion.
 *
 * <p>Ranges are of stepwise pK and never of cumulative constants, whose signs in a bound are not fixed.
 *
 * @param name the acid
 * @param steps pK₁, pK₂ … from the acid with all its protons, each as a range
 * @param charge the charge of the acid with all its protons: 0 for acetic acid, 1 for an ammonium ion
 * @param temperature at which they hold
 * @param ionicStrength at which they hold
 * @param source where they were read
 */
public record AcidConstants(
        String name,
        List<Interval<Ph>> steps,
        int charge,
        Amount<Temperature> temperature,
        IonicStrength ionicStrength,
        Source source)
        implements Serializable {

    /** No acid of this trade has a pK between 0 and this one; a constant K has. */
    private static final Ratio LEAST_LIKELY = Ratio.of(1, 10);

    private static final int MOST_CHARGE = 4;
    private static final int MOST_STEPS = 8;

    /**
     * Checks the figures.
     *
     * @param name the acid
     * @param steps pK₁, pK₂ … each as a range
     * @param charge the charge of the acid with all its protons, 0 to 4
     * @param temperature at which they hold
     * @param ionicStrength at which they hold
     * @param source where they were read
     * @throws IllegalArgumentException if there is no step or more than eight, a later step is not the weaker acid, the charge is out of range, or
     *     no source is named
     */
    public AcidConstants {
        Objects.requireNonNull(name, "name");
        steps = List.copyOf(new ArrayList<>(Objects.requireNonNull(steps, "steps")));
        Objects.requireNonNull(temperature, "temperature");
        Objects.requireNonNull(ionicStrength, "ionicStrength");
        if (steps.isEmpty() || steps.size() > MOST_STEPS) {
            throw new IllegalArgumentException("steps of " + Excerpt.of(name) + " are " + steps.size()
                    + ": give at least one pK and at most " + MOST_STEPS);
        }
        for (int i = 1; i < steps.size(); i++) {
            if (steps.get(i).greatest().compareTo(steps.get(i - 1).least()) < 0) {
                throw new IllegalArgumentException("step " + (i + 1) + " of " + Excerpt.of(name) + " has pK "
                        + steps.get(i) + ", below step " + i + " with " + steps.get(i - 1)
                        + ": give them from the strongest acid to the weakest, not as cumulative constants");
            }
        }
        if (charge < 0 || charge > MOST_CHARGE) {
            throw new IllegalArgumentException("charge is " + charge + ": it must be 0 to " + MOST_CHARGE);
        }
        if (Objects.requireNonNull(source, "source").citation().isEmpty()) {
            throw new IllegalArgumentException("the constants of " + Excerpt.of(name)
                    + " have no source: name the publication with Source.published(…)");
        }
    }

    /**
     * An acid without charge, at 25 °C and infinite dilution.
     *
     * @param name the acid
     * @param source where its constants were read
     * @param steps pK and what it may be off by, in turn: {@code "4.204", "0.005"}
     * @return the constants
     * @throws IllegalArgumentException if the numbers do not come in pairs, or a pK between 0 and 0.1 looks like the constant itself
     */
    public static AcidConstants at25Celsius(String name, Source source, String... steps) {
        return at25Celsius(name, source, 0, steps);
    }

    /**
     * The ammonium ion of a base, at 25 °C and infinite dilution: its charge is the number of its steps.
     *
     * @param name the ammonium ion, or its base
     * @param source where its constants were read
     * @param steps pK and what it may be off by, in turn
     * @return the constants
     * @throws IllegalArgumentException if the numbers do not come in pairs, or a pK between 0 and 0.1 looks like the constant itself
     */
    public static AcidConstants ofBaseAt25Celsius(String name, Source source, String... steps) {
        return at25Celsius(name, source, Objects.requireNonNull(steps, "steps").length / 2, steps);
    }

    private static AcidConstants at25Celsius(String name, Source source, int charge, String... steps) {
        return new AcidConstants(
                name, pairs(name, steps), charge, Amount.temperature("25 °C"), IonicStrength.ZERO, source);
    }

    private static List<Interval<Ph>> pairs(String name, String... steps) {
        if (Objects.requireNonNull(steps, "steps").length % 2 != 0) {
            throw new IllegalArgumentException("steps of " + Excerpt.of(name)
                    + " are not in pairs: after each pK say what it may be off by, as in \"4.204\", \"0.005\"");
        }
        List<Interval<Ph>> ranges = new ArrayList<>();
        for (int i = 0; i < steps.length; i += 2) {
            ranges.add(range(name, steps[i], steps[i + 1]));
        }
        return ranges;
    }

    /** A pK and what it may be off by. */
    static Interval<Ph> range(String name, String pk, String off) {
        Ratio value = Ratio.parse(pk);
        Ratio half = Ratio.parse(off);
        if (value.signum() > 0 && value.compareTo(LEAST_LIKELY) < 0) {
            throw new IllegalArgumentException("pK of " + Excerpt.of(name) + " is " + Excerpt.of(pk)
                    + ": that looks like the constant K itself; pK is its negative decadic logarithm, 4.74 for 1.8e-5");
        }
        if (half.signum() < 0) {
            throw new IllegalArgumentException(
                    "pK of " + Excerpt.of(name) + " may be off by " + Excerpt.of(half) + ": give 0 or more");
        }
        return Interval.of(Ph.of(value.minus(half)), Ph.of(value.plus(half)));
    }

    /** Whether they hold at the same temperature and ionic strength. */
    boolean holdsBeside(AcidConstants other) {
        return temperature.canonical().equals(other.temperature.canonical())
                && ionicStrength.equals(other.ionicStrength);
    }

    /** Where they hold, for a message. */
    String holdsAt() {
        return temperature + " and ionic strength " + ionicStrength;
    }

    /** How many protons the acid can lose. */
    int protons() {
        return steps.size();
    }

    /** The constants at one end: all the stronger, or all the weaker. */
    List<Ratio> end(boolean weaker) {
        return steps.stream()
                .map(step -> (weaker ? step.greatest() : step.least()).value())
                .toList();
    }
}
