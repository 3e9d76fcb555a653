package io.github.formulationmath.limit;

import io.github.formulationmath.reckoning.Operation.StatisticalFunction;
import io.github.formulationmath.reckoning.Reckoning;
import java.util.List;
import org.apache.commons.math3.distribution.NormalDistribution;

/** Functions of the standard normal law. */
enum StandardNormal implements StatisticalFunction {
    /** The probability of a value at or below the argument. */
    DISTRIBUTION;

    private static final NormalDistribution LAW = new NormalDistribution(null, 0, 1);

    /** The density at a number. */
    static double density(double z) {
        return LAW.density(z);
    }

    /** Φ(room / u): the probability that a quantity stays below an end that is this far above its most likely value. */
    static <V> V probabilityBelow(Reckoning<V> r, V room, V uncertainty) {
        return r.function(DISTRIBUTION, List.of(r.quotient(room, uncertainty)));
    }

    @Override
    public String symbol() {
        return "Φ";
    }

    @Override
    public double applyAsDouble(double... arguments) {
        return LAW.cumulativeProbability(arguments[0]);
    }
}
