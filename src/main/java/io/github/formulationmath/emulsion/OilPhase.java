package io.github.formulationmath.emulsion;

import io.github.formulationmath.number.Excerpt;
import io.github.formulationmath.number.NumberText;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.Interval;
import io.github.formulationmath.reckoning.Kind;
import io.github.formulationmath.reckoning.Phrase;
import io.github.formulationmath.reckoning.Reckoning;
import io.github.formulationmath.reckoning.Source;
import io.github.formulationmath.reckoning.Subject;
import io.github.formulationmath.reckoning.Symbol;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;
import javax.measure.quantity.Mass;

/**
 * The value that an oil phase is said to require, {@code R = Σ m · R / Σ m} over the oils alone and not over the cream: an assumption, of
 * which Griffin could not show that it holds (Pasquali, Taurozzi, Bregni, Int. J. Pharm. 356 (2008) 44-51).
 *
 * <p>No table of required values comes with the library: each oil brings its value and where it was read. Emulsifiers do not belong to the
 * oil phase; whether a fatty alcohol does is said by listing it or not.
 *
 * <p>Example, by hand: 1 part of 11.5 and 3 parts of 15.5 require 14.5.
 */
public final class OilPhase {

    private static final Symbol MASS = Symbol.of("m", "oil-mass", Kind.MASS);
    private static final Symbol OWN = Symbol.of("r", "oil-required", Kind.NUMBER);
    private static final Symbol REQUIRED = Symbol.of("R", "required-value", Kind.NUMBER);

    /** Which of the two is the drop: one oil requires another value in each. */
    public enum Emulsion {
        /** Drops of oil in water. */
        OIL_IN_WATER,
        /** Drops of water in oil. */
        WATER_IN_OIL
    }

    /**
     * An oil with what it is said to require.
     *
     * @param name the oil
     * @param mass how much of it, above 0; only the proportions count
     * @param emulsion in which the value holds
     * @param required the value, as a range
     * @param source where it was read
     */
    public record Oil(String name, Amount<Mass> mass, Emulsion emulsion, Interval<Hlb> required, Source source) {

        /**
         * Checks the figures.
         *
         * @param name the oil
         * @param mass how much of it, above 0
         * @param emulsion in which the value holds
         * @param required the value
         * @param source where it was read
         * @throws IllegalArgumentException if the name is blank, the mass is not above 0, or no source is named
         */
        public Oil {
            if (Objects.requireNonNull(name, "name").isBlank()) {
                throw new IllegalArgumentException("name is blank: name the oil");
            }
            Amount.requirePositive("mass of " + name, mass);
            Objects.requireNonNull(emulsion, "emulsion");
            Objects.requireNonNull(required, "required");
            if (Objects.requireNonNull(source, "source").citation().isEmpty()) {
                throw new IllegalArgumentException("the required value of " + Excerpt.of(name)
                        + " has no source: name where it was read with Source.published(…)");
            }
        }
    }

    private final List<Oil> oils;

    private OilPhase(List<Oil> oils) {
        this.oils = oils;
    }

    /**
     * An oil phase.
     *
     * @param emulsion what is to be made
     * @param oils the oils and waxes in it, without the emulsifiers
     * @return the oil phase
     * @throws IllegalArgumentException if there is none, or a value is of the other kind of emulsion
     */
    public static OilPhase of(Emulsion emulsion, List<Oil> oils) {
        List<Oil> all = List.copyOf(new ArrayList<>(Objects.requireNonNull(oils, "oils")));
        if (all.isEmpty()) {
            throw new IllegalArgumentException("oils is empty: give at least one oil");
        }
        for (Oil oil : all) {
            if (oil.emulsion() != Objects.requireNonNull(emulsion, "emulsion")) {
                throw new IllegalArgumentException("the required value of " + Excerpt.of(oil.name()) + " is for "
                        + words(oil.emulsion()) + " and the cream is " + words(emulsion)
                        + ": the two differ by several units; take the value for " + words(emulsion));
            }
        }
        return new OilPhase(all);
    }

    private static String words(Emulsion emulsion) {
        return emulsion == Emulsion.OIL_IN_WATER ? "oil in water" : "water in oil";
    }

    /**
     * What it requires, reckoned with the middles of the ranges.
     *
     * @return the value, with its working
     */
    public Hlb required() {
        return Hlb.of(middle(Reckoning.plain()))
                .withWorking(any -> Phrase.of("question.required-value"), this, OilPhase::middle);
    }

    private <V> V middle(Reckoning<V> r) {
        List<V> values = new ArrayList<>();
        List<V> masses = new ArrayList<>();
        for (Oil oil : oils) {
            Subject subject = Subject.of(oil.name(), oil.name());
            V mass = r.given(MASS, subject, oil.mass(), Source.user());
            masses.add(mass);
            values.add(r.product(
                    mass, r.given(OWN, subject, Hlb.middle(oil.required()).value(), oil.source())));
        }
        return r.named(REQUIRED, r.quotient(r.sum(values), r.sum(masses)));
    }

    /**
     * What it requires over the ranges of the oils.
     *
     * @return the least and the greatest value
     */
    public Interval<Hlb> requiredOverRanges() {
        Ratio whole = Ratio.ZERO;
        Ratio least = Ratio.ZERO;
        Ratio greatest = Ratio.ZERO;
        for (Oil oil : oils) {
            Ratio mass = oil.mass().canonical();
            whole = whole.plus(mass);
            least = least.plus(mass.times(oil.required().least().value()));
            greatest = greatest.plus(mass.times(oil.required().greatest().value()));
        }
        return Interval.of(Hlb.of(least.dividedBy(whole)), Hlb.of(greatest.dividedBy(whole)));
    }

    /** The oils and the value they require, shortened for reading at a prompt. */
    @Override
    public String toString() {
        return oils.stream().map(Oil::name).collect(Collectors.joining(", ")) + ": HLB "
                + NumberText.of(required().value());
    }
}
