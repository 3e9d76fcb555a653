package io.github.formulationmath.record;

import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.number.Excerpt;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.FormulationUnits;
import io.github.formulationmath.weighing.Balance;
import java.io.Serial;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
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
    private static final long serialVersionUID = 2L;

    private final FormulaLine line;
    private final Amount<Mass> mass;
    private final @Nullable Balance balance;

    private LineAddition(FormulaLine line, Amount<Mass> mass, @Nullable Balance balance) {
        this.line = line;
        this.mass = mass;
        this.balance = balance;
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
            throw new IllegalArgumentException("mass is " + Excerpt.of(mass) + " of " + Excerpt.of(line.name())
                    + ": what is in the pot cannot be taken out again");
        }
        return new LineAddition(line, mass, null);
    }

    /**
     * The same addition, weighed on another balance than that of the bench.
     *
     * @param other the balance
     * @return the addition on that balance
     */
    public LineAddition on(Balance other) {
        return new LineAddition(line, mass, Objects.requireNonNull(other, "other"));
    }

    /** The additions above 0 of a list with one number of grams per line, each on the balance of its line. */
    static List<LineAddition> listOf(MadeBatch made, List<Ratio> grams) {
        List<LineAddition> additions = new ArrayList<>();
        for (int i = 0; i < grams.size(); i++) {
            if (!grams.get(i).isZero()) {
                additions.add(of(made.lines().get(i), Amount.grams(grams.get(i))));
            }
        }
        return List.copyOf(additions);
    }

    /** An addition on the balance of a line in the pot, which is only said if it is another than that of the bench. */
    static LineAddition of(MadeLine line, Amount<Mass> mass) {
        LineAddition addition = of(line.line(), mass);
        return line.isOnBench() ? addition : addition.on(line.balance());
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

    Ratio grams() {
        return mass.in(FormulationUnits.GRAM);
    }

    /**
     * The balance, if it was another than that of the bench.
     *
     * @return the balance
     */
    public Optional<Balance> balance() {
        return Optional.ofNullable(balance);
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof LineAddition that
                && line.equals(that.line)
                && mass.equals(that.mass)
                && Objects.equals(balance, that.balance);
    }

    @Override
    public int hashCode() {
        return Objects.hash(line, mass, balance);
    }

    @Override
    public String toString() {
        return mass + " " + line.name();
    }
}
