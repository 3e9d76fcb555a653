package io.github.formulationmath.analysis;

import io.github.formulationmath.number.Ratio;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * One source of uncertainty in a result: the variance it brings, {@code (c · u)²}.
 *
 * <p>{@code equals} compares every figure. Immutable.
 */
public final class BudgetLine {

    private final String input;
    private final String source;
    private final Ratio sensitivity;
    private final Ratio variance;
    private final @Nullable Ratio degreesOfFreedom;

    BudgetLine(String input, String source, Ratio sensitivity, Ratio variance, @Nullable Ratio degreesOfFreedom) {
        this.input = input;
        this.source = source;
        this.sensitivity = sensitivity;
        this.variance = variance;
        this.degreesOfFreedom = degreesOfFreedom;
    }

    /**
     * The input that is uncertain.
     *
     * @return its symbol with the index, as it stands in the working
     */
    public String input() {
        return input;
    }

    /**
     * What was stated of it.
     *
     * @return for example {@code standard 0.02 mL}
     */
    public String source() {
        return source;
    }

    /**
     * The sensitivity coefficient c.
     *
     * @return the exact derivative of the result by the input, in the budget's unit for one unit of the input as given
     */
    public Ratio sensitivity() {
        return sensitivity;
    }

    /**
     * The variance of the result from this source.
     *
     * @return (c · u)², exact, in the square of the budget's unit
     */
    public Ratio variance() {
        return variance;
    }

    /**
     * The degrees of freedom of u.
     *
     * @return how many; none means infinitely many
     */
    public Optional<Ratio> degreesOfFreedom() {
        return Optional.ofNullable(degreesOfFreedom);
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof BudgetLine that
                && input.equals(that.input)
                && source.equals(that.source)
                && sensitivity.equals(that.sensitivity)
                && variance.equals(that.variance)
                && Objects.equals(degreesOfFreedom, that.degreesOfFreedom);
    }

    @Override
    public int hashCode() {
        return Objects.hash(input, source, sensitivity, variance, degreesOfFreedom);
    }

    /** Input, source, and the standard uncertainty they bring. */
    @Override
    public String toString() {
        return input + " " + source + ": " + Budget.root(variance);
    }
}
