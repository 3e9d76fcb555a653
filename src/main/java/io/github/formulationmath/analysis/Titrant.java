package io.github.formulationmath.analysis;

import io.github.formulationmath.analysis.Estimate.Spread;
import io.github.formulationmath.number.Excerpt;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.FormulationUnits;
import io.github.formulationmath.reckoning.Kind;
import io.github.formulationmath.reckoning.Reckoning;
import io.github.formulationmath.reckoning.Source;
import io.github.formulationmath.reckoning.Subject;
import io.github.formulationmath.reckoning.Symbol;
import java.io.Serializable;
import java.util.Objects;
import javax.measure.quantity.Dimensionless;
import org.jspecify.annotations.Nullable;

/**
 * The solution in the burette: what it is, its nominal concentration, and the factor that its standardisation found. The
 * concentration is that of what reacts one to one, as a normality is: 0.5 mol/L of sulfuric acid is {@code "1 N"}.
 *
 * <p>The factor has no default: a solution that nobody standardised has the factor somebody answers for. Example: a factor of
 * 1.0023 with a standard uncertainty of 0.0008 from five degrees of freedom.
 *
 * <p>Immutable and thread-safe.
 */
public final class Titrant implements Serializable {

    private static final long serialVersionUID = 1L;

    private static final Symbol CONCENTRATION = Symbol.of("c", "titrant-concentration", Kind.SUBSTANCE_CONCENTRATION);
    private static final Symbol FACTOR = Symbol.of("f", "titrant-factor", Kind.NUMBER);
    private static final Ratio LEAST_FACTOR = Ratio.parse("0.5");
    private static final Ratio GREATEST_FACTOR = Ratio.of(2);

    private final String name;
    private final String concentration;
    private final Ratio molesPerMillilitre;
    private final Estimate<Dimensionless> factor;

    private Titrant(String name, String concentration, Ratio molesPerMillilitre, Estimate<Dimensionless> factor) {
        this.name = name;
        this.concentration = concentration;
        this.molesPerMillilitre = molesPerMillilitre;
        this.factor = factor;
    }

    /**
     * A standardised solution, the uncertainty of its factor still to be added.
     *
     * @param name what it is, such as {@code "KOH"}
     * @param concentration nominal, such as {@code "0.1 mol/L"} or {@code "0.1 N"}
     * @param factor actual by nominal concentration, such as {@code "0.9982"}; {@code "1"} if that is what was found
     * @return the titrant
     * @throws IllegalArgumentException if the concentration has no unit or is not above 0, or the factor is missing or so far from 1
     *     that it is no factor
     */
    public static Titrant of(String name, String concentration, String factor) {
        if (Objects.requireNonNull(name, "name").isBlank()) {
            throw new IllegalArgumentException("name is blank: say what the solution is, as in \"KOH\"");
        }
        if (Objects.requireNonNull(factor, "factor").isBlank()) {
            throw new IllegalArgumentException("factor of " + Excerpt.of(name)
                    + " is missing: standardise the solution and give what was found, as in \"0.9982\"");
        }
        Ratio found = Ratio.parse(factor.strip());
        if (found.compareTo(LEAST_FACTOR) < 0 || found.compareTo(GREATEST_FACTOR) > 0) {
            throw new IllegalArgumentException("factor of " + Excerpt.of(name) + " is " + Excerpt.of(found)
                    + ": it lies near 1, between 0.5 and 2; is it a concentration, or milligrams to the millilitre?");
        }
        String plain = Objects.requireNonNull(concentration, "concentration").strip();
        return new Titrant(
                name.strip(), plain, molesPerMillilitre(plain), Estimate.of(Amount.of(found, FormulationUnits.ONE)));
    }

    private static Ratio molesPerMillilitre(String text) {
        for (String unit : new String[] {" mol/L", " N"}) {
            if (text.endsWith(unit)) {
                Ratio moles = Ratio.parse(
                        text.substring(0, text.length() - unit.length()).strip());
                if (moles.signum() <= 0) {
                    throw new IllegalArgumentException(
                            "concentration is " + Excerpt.of(text) + ": it must be above 0 mol/L");
                }
                return moles.dividedBy(1000);
            }
        }
        throw new IllegalArgumentException("concentration is \"" + Excerpt.of(text)
                + "\": it needs its unit, mol/L of what reacts one to one, or N, as in \"0.1 mol/L\"");
    }

    /**
     * With a standard uncertainty of the factor that is well known.
     *
     * @param uncertainty such as {@code "0.0008"}, a number as the factor is one; 0 or more
     * @return the titrant with this source
     * @throws IllegalArgumentException if it is negative
     */
    public Titrant standard(String uncertainty) {
        return with(new Spread("standard " + uncertainty.strip(), squared(uncertainty), null));
    }

    /**
     * With a standard uncertainty of the factor and its degrees of freedom.
     *
     * @param uncertainty such as {@code "0.0008"}, a number as the factor is one; 0 or more
     * @param degreesOfFreedom such as {@code "5"} for six titrations of a standard; at least 1
     * @return the titrant with this source
     * @throws IllegalArgumentException if a number is too small
     */
    public Titrant standard(String uncertainty, String degreesOfFreedom) {
        return with(new Spread(
                "standard " + uncertainty.strip(), squared(uncertainty), Estimate.degrees(degreesOfFreedom)));
    }

    private Ratio squared(String uncertainty) {
        Ratio u = Ratio.parse(uncertainty.strip());
        if (u.signum() < 0) {
            throw new IllegalArgumentException("uncertainty of the factor of " + Excerpt.of(name) + " is "
                    + Excerpt.of(u) + ": it must be at least 0");
        }
        return u.times(u);
    }

    private Titrant with(Spread spread) {
        return new Titrant(name, concentration, molesPerMillilitre, factor.with(spread));
    }

    private Subject subject() {
        return Subject.of(name, name + " " + concentration);
    }

    /** The factor as an input; its index tells solutions apart. */
    Input factor() {
        return new Input(FACTOR, subject(), factor);
    }

    /** Moles in a millilitre: c · f. */
    <V> V strength(Reckoning<V> r) {
        return r.product(
                r.given(CONCENTRATION, subject(), molesPerMillilitre, Source.written(concentration)), factor().in(r));
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Titrant that
                && name.equals(that.name)
                && concentration.equals(that.concentration)
                && factor.equals(that.factor);
    }

    @Override
    public int hashCode() {
        return Objects.hash(name, concentration, factor);
    }

    /** What it is, its nominal concentration and its factor. */
    @Override
    public String toString() {
        return name + " " + concentration + ", factor " + factor;
    }
}
