package io.github.formulationmath.soap;

import io.github.formulationmath.number.Excerpt;
import io.github.formulationmath.number.NumberText;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Interval;
import io.github.formulationmath.quantity.MassFraction;
import java.io.Serializable;
import java.util.Objects;

/**
 * What a profile of fatty acids does not see, each as a share of the fat: free acids take more alkali than the triglyceride they
 * came from, partial glycerides and unsaponifiable matter less, water and matter that does not elute none. Bounds from a
 * profile are no guarantee unless all of it is bounded.
 *
 * @param freeAcids the share of free fatty acids
 * @param monoglycerides the share of monoglycerides
 * @param diglycerides the share of diglycerides
 * @param unsaponifiable the share of unsaponifiable matter, water and all else that takes up no alkali
 */
public record Escapes(
        Interval<MassFraction> freeAcids,
        Interval<MassFraction> monoglycerides,
        Interval<MassFraction> diglycerides,
        Interval<MassFraction> unsaponifiable)
        implements Serializable {

    /**
     * Checks presence.
     *
     * @param freeAcids the share of free fatty acids
     * @param monoglycerides the share of monoglycerides
     * @param diglycerides the share of diglycerides
     * @param unsaponifiable the share of all that takes up no alkali
     * @throws IllegalArgumentException if together they may be more than the whole
     */
    public Escapes {
        Objects.requireNonNull(freeAcids, "freeAcids");
        Objects.requireNonNull(monoglycerides, "monoglycerides");
        Objects.requireNonNull(diglycerides, "diglycerides");
        Objects.requireNonNull(unsaponifiable, "unsaponifiable");
        Ratio most = freeAcids
                .greatest()
                .fraction()
                .plus(monoglycerides.greatest().fraction())
                .plus(diglycerides.greatest().fraction())
                .plus(unsaponifiable.greatest().fraction());
        if (most.compareTo(Ratio.ONE) > 0) {
            throw new IllegalArgumentException("free acids, partial glycerides and unsaponifiable matter may be "
                    + Excerpt.of(NumberText.percentExactly(most))
                    + " of the fat together: at most 100 % is possible; are they given in g/kg?");
        }
    }

    /**
     * Each at most so much, and perhaps nothing.
     *
     * @param freeAcids such as {@code "1 %"}
     * @param monoglycerides such as {@code "0.5 %"}
     * @param diglycerides such as {@code "3 %"}
     * @param unsaponifiable such as {@code "1.5 %"}
     * @return the bounds
     */
    public static Escapes atMost(String freeAcids, String monoglycerides, String diglycerides, String unsaponifiable) {
        return new Escapes(upTo(freeAcids), upTo(monoglycerides), upTo(diglycerides), upTo(unsaponifiable));
    }

    /**
     * Nothing of it: pure neutral triglycerides, as a textbook has them.
     *
     * @return zero of each
     */
    public static Escapes none() {
        return atMost("0 %", "0 %", "0 %", "0 %");
    }

    private static Interval<MassFraction> upTo(String share) {
        return Interval.of(MassFraction.ZERO, MassFraction.parse(share));
    }
}
