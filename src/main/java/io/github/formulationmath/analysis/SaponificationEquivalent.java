package io.github.formulationmath.analysis;

import io.github.formulationmath.number.NumberText;
import io.github.formulationmath.number.Ratio;
import java.io.Serial;
import java.io.Serializable;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * The mass of a fat that takes up one mole of alkali, in g/mol: 56.1 divided by the saponification value in g/g. A third of the
 * molar mass of a pure triglyceride.
 *
 * <p>{@code equals} means the same exact number. Immutable and thread-safe.
 */
public final class SaponificationEquivalent implements Comparable<SaponificationEquivalent>, Serializable {

    @Serial
    private static final long serialVersionUID = 1L;

    private final Ratio gramsPerMole;

    SaponificationEquivalent(Ratio gramsPerMole) {
        this.gramsPerMole = gramsPerMole;
    }

    @Override
    public int compareTo(SaponificationEquivalent other) {
        return gramsPerMole.compareTo(Objects.requireNonNull(other, "other").gramsPerMole);
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof SaponificationEquivalent that && gramsPerMole.equals(that.gramsPerMole);
    }

    @Override
    public int hashCode() {
        return gramsPerMole.hashCode();
    }

    /** The number, rounded if it is long, and its unit. */
    @Override
    public String toString() {
        return NumberText.of(gramsPerMole, "g/mol");
    }
}
