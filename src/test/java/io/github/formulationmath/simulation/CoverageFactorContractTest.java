package io.github.formulationmath.simulation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.support.ValueContract;
import java.util.List;
import org.junit.jupiter.api.Test;

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

    @Test
    void it_keeps_the_level_it_was_taken_for() {
        CoverageFactor two = CoverageFactor.of(2);
        assertThat(two.probability()).isEmpty();
        assertThat(two).hasToString("k = 2");
        CoverageFactor normal = CoverageFactor.normal(Ratio.parse("0.95"));
        assertThat(normal.probability()).contains(Ratio.parse("0.95"));
        assertThat(normal.toString()).startsWith("k = 1.95996").endsWith(" (normal law, p = 0.95)");
    }

    @Test
    void a_level_lies_between_none_and_all() {
        for (String bad : new String[] {"0", "1", "-0.5", "95", "1e-30", "1e400", "-1e400"}) {
            Ratio probability = Ratio.parse(bad);
            assertThatThrownBy(() -> CoverageFactor.normal(probability))
                    .isInstanceOf(IllegalArgumentException.class)
                    .hasMessageContaining("probability is " + probability)
                    .hasMessageContaining("often 0.95");
        }
    }
}
