package io.github.formulationmath.solution;

import io.github.formulationmath.number.Bounds;
import io.github.formulationmath.number.Excerpt;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Interval;
import io.github.formulationmath.quantity.MassFraction;
import io.github.formulationmath.reckoning.Phrase;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * How much of a preservative acid has kept all its protons at a pH, which is the form that is said to work. It is arithmetic on the
 * numbers given, and not on whether a product is preserved: that a challenge test tells.
 *
 * <p>{@code α = 1 / (1 + 10^(pH − pK₁) + 10^(2 pH − pK₁ − pK₂) + …)}. It falls with the pH and rises with every pK, so that its ends are
 * corners. Two answers are to be printed together: {@link #ideal()}, the numbers as given, and {@link #upToIonicStrength}, which
 * allows for what salts do to the constant; at pH 5 the second moves benzoic acid from 13.8 to 11.1 %, ten times what its constant
 * is uncertain by.
 *
 * <p>The measured pH is an activity, so that the constant to use with it is the mixed one: {@code pK' = pK + (1 − 2z) log γ₁} for a
 * step from charge z, with Davies' {@code log γ₁ = −0.509 (√I/(1 + √I) − 0.3 I)} at 25 °C (the figure 0.509 is from memory
 * and not of the law; it turns at I = 0.395, beyond which it is refused).
 *
 * <p>Immutable.
 */
public final class UndissociatedShare {

    private static final Ratio ZERO_PH = Ratio.ZERO;
    private static final Ratio FOURTEEN = Ratio.of(14);

    private final AcidConstants acid;
    private final Interval<Ph> ph;

    private UndissociatedShare(AcidConstants acid, Interval<Ph> ph) {
        this.acid = acid;
        this.ph = ph;
    }

    /**
     * The share at a pH that was measured.
     *
     * @param acid the constants
     * @param ph the reading, such as {@code "5.0"}
     * @param off what it may be off by, such as {@code "0.1"} for a meter or {@code "0.5"} for paper
     * @return the share
     * @throws IllegalArgumentException if the pH may lie outside 0 to 14
     */
    public static UndissociatedShare of(AcidConstants acid, String ph, String off) {
        Objects.requireNonNull(acid, "acid");
        Ratio reading = Ratio.parse(ph);
        Ratio half = Ratio.parse(off);
        if (half.signum() < 0
                || reading.minus(half).compareTo(ZERO_PH) < 0
                || reading.plus(half).compareTo(FOURTEEN) > 0) {
            throw new IllegalArgumentException("pH is " + Excerpt.of(reading) + " and off by " + Excerpt.of(half)
                    + ": it must lie between 0 and 14, and be of a product with water");
        }
        return new UndissociatedShare(acid, Interval.of(Ph.of(reading.minus(half)), Ph.of(reading.plus(half))));
    }

    /**
     * The share by the numbers as given.
     *
     * @return the least and the greatest share, a little outside the exact ends
     */
    public Interval<MassFraction> ideal() {
        return Interval.of(share(ph.greatest(), acid.end(false), false), share(ph.least(), acid.end(true), true));
    }

    /**
     * The share if salts make an ionic strength of anything up to I.
     *
     * @param molesPerLitre I in mol/L, such as {@code "0.1"}, from 0 to 0.39
     * @return the least and the greatest share, a little outside the exact ends
     * @throws IllegalArgumentException if I lies outside
     */
    public Interval<MassFraction> upToIonicStrength(String molesPerLitre) {
        Ratio shift = Davies.mostShift(Ratio.parse(molesPerLitre));
        return Interval.of(
                share(ph.greatest(), shifted(acid.end(false), shift, false), false),
                share(ph.least(), shifted(acid.end(true), shift, true), true));
    }

    /** Each step moved by as much as the ionic strength may move it in one direction. */
    private List<Ratio> shifted(List<Ratio> pks, Ratio shift, boolean up) {
        List<Ratio> moved = new ArrayList<>();
        for (int j = 0; j < pks.size(); j++) {
            // log γ₁ is −shift at most: a step from charge z moves by −(1 − 2z) · shift.
            Ratio by = shift.times(2L * (acid.charge() - j) - 1);
            boolean moves = by.signum() > 0 == up;
            moved.add(moves ? pks.get(j).plus(by) : pks.get(j));
        }
        return moved;
    }

    private static MassFraction share(Ph at, List<Ratio> pks, boolean most) {
        Bounds share = Species.at(at.value(), pks).undissociated();
        return MassFraction.of((most ? share.upper() : share.lower()).orElseThrow());
    }

    /**
     * The pH at which at least a share of a monoprotic acid is undissociated: {@code pH ≤ pK − log₁₀(x/(1 − x))}.
     *
     * @param acid the constants of an acid with one step
     * @param share such as {@code "50 %"}, above 0 and below 100 %
     * @return the pH up to which it is sure, to a thousandth, rounded down
     * @throws IllegalArgumentException if the acid has more steps, or the share is 0 or the whole
     */
    public static Ph highestPh(AcidConstants acid, String share) {
        MassFraction wanted = MassFraction.parse(share);
        if (acid.protons() != 1) {
            throw new IllegalArgumentException(Excerpt.of(acid.name()) + " has " + acid.protons()
                    + " steps: the pH for a share is told of an acid with one");
        }
        if (wanted.equals(MassFraction.ZERO) || wanted.equals(MassFraction.WHOLE)) {
            throw new IllegalArgumentException(
                    "share is " + wanted + ": no pH has exactly that; it must lie between 0 and 100 %");
        }
        int low = 0;
        int high = 14_000;
        while (high - low > 1) {
            int middle = (low + high) >>> 1;
            MassFraction least = share(Ph.of(Ratio.of(middle, 1000)), acid.end(false), false);
            if (least.compareTo(wanted) >= 0) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return Ph.of(Ratio.of(low, 1000));
    }

    /**
     * What the share does not tell, to be printed with it.
     *
     * @return the sentences
     */
    public List<Phrase> notCovered() {
        return List.of(Phrase.of("solution.share-is-not-efficacy"), Phrase.of("solution.ideal-model"));
    }
}
