package io.github.formulationmath.reckoning;

/** A function whose values are not exact: a probability, a quantile. Implemented where the function is needed. */
public interface StatisticalFunction {

    /**
     * The name as printed before the bracket.
     *
     * @return for example {@code Φ}
     */
    String symbol();

    /**
     * The value of the function.
     *
     * @param arguments the arguments
     * @return a finite number
     */
    double applyAsDouble(double... arguments);
}
