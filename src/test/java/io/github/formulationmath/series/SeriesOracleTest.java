package io.github.formulationmath.series;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.FormulaBuilder;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.plan.Bench;
import io.github.formulationmath.weighing.Balance;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** The least total of each way against every base and every size there is; 10 000 series in the long profile. */
final class SeriesOracleTest {

    private static final int FACTOR = Math.max(1, Integer.getInteger("formulationmath.cases", 1));
    private static final int CASES = FACTOR == 1 ? 40 : 100 * FACTOR;

    private static TrialSeries series(SeriesOracle oracle) {
        List<Formula> versions = new ArrayList<>();
        for (int[] shares : oracle.percent) {
            FormulaBuilder builder =
                    Formula.inPercent("version " + versions.size()).quantitySufficient("line 0");
            for (int i = 1; i < shares.length; i++) {
                if (shares[i] > 0) {
                    builder.line("line " + i, shares[i] + " %");
                }
            }
            versions.add(builder.build());
        }
        Balance balance = Balance.of("1 g", oracle.capacity + " g");
        TrialSeries series = TrialSeries.of(versions, Bench.of(balance), oracle.least + " g", oracle.tolerance + " %")
                .inStepsOf(oracle.step + " g")
                .withLeftInVessel(oracle.left + " g");
        for (int i = 0; i < oracle.stock.length; i++) {
            if (oracle.stock[i] >= 0 && isUsed(oracle, i)) {
                series = series.withStock("line " + i, oracle.stock[i] + " g");
            }
        }
        return oracle.most < 0 ? series : series.upTo(oracle.most + " g");
    }

    private static boolean isUsed(SeriesOracle oracle, int line) {
        for (int[] shares : oracle.percent) {
            if (shares[line] > 0) {
                return true;
            }
        }
        return false;
    }

    private static Optional<Ratio> grams(SeriesOracle.Best best) {
        return Optional.ofNullable(best).map(each -> Ratio.of(each.total(), each.per()));
    }

    private static Optional<Ratio> total(List<SeriesPlan> ways, SeriesPlan.Way way) {
        return ways.stream()
                .filter(plan -> plan.way() == way)
                .map(plan -> plan.total().canonical())
                .findFirst();
    }

    @Test
    void every_way_has_the_least_total_there_is() {
        int[] counted = new int[4];
        for (int seed = 0; seed < CASES; seed++) {
            SeriesOracle oracle = SeriesOracle.random(new Random(seed));
            TrialSeries series = series(oracle);
            List<SeriesPlan> ways = series.ways();
            SeriesOracle.Best scratch = oracle.scratch();
            int all = (1 << oracle.versions) - 1;
            SeriesOracle.Best base = oracle.onBase(all);
            SeriesOracle.Best split = null;
            for (int set = 0; set < all; set++) {
                split = Integer.bitCount(set) < 2 ? split : SeriesOracle.less(split, oracle.onBase(set));
            }
            String about = "seed " + seed + ": " + oracle;
            assertThat(total(ways, SeriesPlan.Way.FROM_SCRATCH)).as(about).isEqualTo(grams(scratch));
            assertThat(total(ways, SeriesPlan.Way.FROM_BASE)).as(about).isEqualTo(grams(base));
            SeriesOracle.Best pure = SeriesOracle.less(scratch, base);
            SeriesOracle.Best best = SeriesOracle.less(pure, split);
            boolean isSplit = best != null && (pure == null || best.isLess(pure));
            assertThat(total(ways, SeriesPlan.Way.SPLIT)).as(about).isEqualTo(isSplit ? grams(best) : Optional.empty());
            assertThat(series.best().map(plan -> plan.total().canonical()))
                    .as(about)
                    .isEqualTo(grams(best));
            assertThat(series.obstacles().isEmpty()).as(about).isEqualTo(best != null);
            assertThat(ways).as(about).allMatch(SeriesPlan::isLeast);
            counted[best == null ? 0 : isSplit ? 3 : best.onBase() == 0 ? 1 : 2]++;
        }
        // none at all, from scratch, from a base, split: all of them happen
        assertThat(counted).doesNotContain(0);
    }
}
