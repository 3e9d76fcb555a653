package io.github.formulationmath.oracle;

import java.util.Map;
import java.util.function.ToDoubleFunction;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.apache.commons.math3.distribution.TDistribution;

/** Statistical functions by the names they are printed with. A new one is taught here. */
final class Functions {

    private static final NormalDistribution NORMAL = new NormalDistribution(null, 0, 1);

    private static final Map<String, ToDoubleFunction<double[]>> KNOWN = Map.of(
            "Φ", x -> NORMAL.cumulativeProbability(x[0]),
            "Φ⁻¹", x -> NORMAL.inverseCumulativeProbability(x[0]),
            "t", x -> new TDistribution(null, x[1]).inverseCumulativeProbability(x[0]));

    private Functions() {}

    static double apply(String name, double... arguments) {
        ToDoubleFunction<double[]> function = KNOWN.get(name);
        if (function == null) {
            throw new OracleException(
                    "the oracle does not know the function " + name + "; teach it in oracle/Functions");
        }
        return function.applyAsDouble(arguments);
    }
}
