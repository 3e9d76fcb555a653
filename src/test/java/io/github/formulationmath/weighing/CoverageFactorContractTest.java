package io.github.formulationmath.weighing;

import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.support.ValueContract;
import java.util.List;

/** Two coverage factors are equal if factor and level of confidence are. */
class CoverageFactorContractTest implements ValueContract<CoverageFactor> {

    private static List<CoverageFactor> factors() {
        return List.of(
                CoverageFactor.of(2),
                CoverageFactor.of(3),
                CoverageFactor.normal(Ratio.parse("0.95")),
                CoverageFactor.normal(Ratio.parse("0.99")));
    }

    @Override
    public List<CoverageFactor> different() {
        return factors();
    }

    @Override
    public List<CoverageFactor> same() {
        return factors();
    }
}
