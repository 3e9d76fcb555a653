package io.github.formulationmath.weighing;

/**
 * The function Y = f(X₁, …, X_N) from input quantities to the quantity that is wanted (JCGM 101:2008, 4.1).
 *
 * <p>Example: {@code x -> x[0] / (x[0] + x[1])}.
 *
 * <p>It is called from several threads at once if the simulation is spread over them, and must neither keep nor change
 * the array.
 */
@FunctionalInterface
public interface MeasurementModel {

    /**
     * The value of the model.
     *
     * @param inputs one value per input quantity, in their order
     * @return a finite number
     */
    double valueAt(double[] inputs);
}
