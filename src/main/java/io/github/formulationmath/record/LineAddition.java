package io.github.formulationmath.record;

import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import java.io.Serial;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import javax.measure.quantity.Mass;
import org.jspecify.annotations.Nullable;

/**
 * Something to add to the pot.
 *
 * <p>Example: {@code LineAddition.of(formula.line("Aqua"), Amount.mass("4.2 g"))}.
 *
 * <p>Immutable and thread-safe.
 */
public final class LineAddition implements Serializable {

    @Serial
    private static final long serialVersionUID = 1L;

    private final FormulaLine line;
    private final Amount<Mass> mass;

    private LineAddition(FormulaLine line, Amount<Mass> mass) {
        this.line = line;
        this.mass = mass;
    }

    /**
     * An addition.
     *
     * @param line the line whose ingredient is added
     * @param mass how much of it, at least 0
     * @return the addition
     * @throws IllegalArgumentException if the mass is negative
     */
    public static LineAddition of(FormulaLine line, Amount<Mass> mass) {
        Objects.requireNonNull(line, "line");
        if (Objects.requireNonNull(mass, "mass").signum() < 0) {
            throw new IllegalArgumentException(
                    "mass is " + mass + " of " + line.name() + ": what is in the pot cannot be taken out again");
        }
        return new LineAddition(line, mass);
    }

    /** The additions above 0 of a list with one number of grams per line. */
    static List<LineAddition> listOf(MadeBatch made, List<Ratio> grams) {
        List<LineAddition> additions = new ArrayList<>();
        for (int i = 0; i < grams.size(); i++) {
            if (!grams.get(i).isZero()) {
                additions.add(of(made.lines().get(i).line(), Amount.grams(grams.get(i))));
            }
        }
        return List.copyOf(additions);
    }

    /**
     * The line.
     *
     * @return the line whose ingredient is added
     */
    public FormulaLine line() {
        return line;
    }

    /**
     * How much is added.
     *
     * @return the mass, at least 0
     */
    public Amount<Mass> mass() {
        return mass;
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof LineAddition that && line.equals(that.line) && mass.equals(that.mass);
    }

    @Override
    public int hashCode() {
        return Objects.hash(line, mass);
    }

    @Override
    public String toString() {
        return mass + " " + line.name();
    }
}
