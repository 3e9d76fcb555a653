package io.github.formulationmath.size;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.plan.Bench;
import io.github.formulationmath.plan.Tolerances;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.support.Formulas;
import io.github.formulationmath.support.RandomFormulas;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.weighing.WeighingMethod;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What every criterion answers below, at and above its smallest size. */
class SizeSearchTest {

    private static final Balance TENTH = Balance.of("0.1 g", "2 kg");

    private static final Formula BALM = Formulas.balm("balm");

    private static final List<Criterion> CRITERIA = List.of(
            Criterion.oneDivision(),
            Criterion.minimumWeight(),
            Criterion.leastNetMass(Amount.mass("1 g")),
            Criterion.errorBound(Tolerances.of("5 %"), WeighingMethod.TARE_EACH),
            Criterion.roundingWithin(Tolerances.of("5 %")),
            Criterion.madeWithin(Tolerances.of("5 %")),
            Criterion.exactReadings());

    private static SearchMeter meter() {
        return new SearchMeter(SearchEffort.standard());
    }

    private static SizeSearch search(Criterion criterion) {
        return criterion.on(BALM, Bench.of(TENTH)).parts().get(0).search();
    }

    @Test
    void nothing_passes_below_the_smallest_size_and_it_passes_itself() {
        for (Criterion criterion : CRITERIA) {
            SizeSearch search = search(criterion);
            Ratio smallest = search.smallest(meter()).at();
            Ratio below = smallest.times(Ratio.of(9, 10));
            assertThat(search.atLeast(below, meter()).at()).as("%s", criterion).isEqualTo(smallest);
            assertThat(search.atLeast(smallest, meter())).isEqualTo(Landing.resting(smallest));
            assertThat(search.atMost(below, meter())).isEmpty();
            assertThat(search.atMost(smallest, meter()).map(Landing::at)).contains(smallest);
        }
    }

    /** One division, one line bound: from the smallest on. Rounding within 5 %: from 10 divisions of 0.525 % on. */
    @Test
    void from_where_every_size_passes() {
        assertThat(passesFrom(CRITERIA.get(0))).contains(Ratio.of(20));
        assertThat(passesFrom(CRITERIA.get(4))).contains(Ratio.of(4000, 21));
        assertThat(passesFrom(CRITERIA.get(6))).isEmpty();
        Ratio made = passesFrom(CRITERIA.get(5)).orElseThrow();
        SizeSearch search = search(CRITERIA.get(5));
        for (int step = 0; step < 100; step++) {
            Ratio size = made.plus(Ratio.of(step, 10));
            assertThat(search.atLeast(size, meter()).at()).isEqualTo(size);
        }
    }

    private static Optional<Ratio> passesFrom(Criterion criterion) {
        return search(criterion).allFrom();
    }

    /** Four large primes within 10^-8: ⌈(1 − τ)/(2τ)⌉ divisions of the smallest line within reach, 1/((1 + τ)·w). */
    @Test
    void a_search_given_up_still_knows_from_where_all_pass() {
        Formula primes = RandomFormulas.formula(1_000_003, 998_244_353, 999_999_937, 1_000_000_007);
        Criterion tiny = Criterion.roundingWithin(Tolerances.of("0.000001 %"));
        MinimumBatch.Undecided undecided =
                (MinimumBatch.Undecided) MinimumBatch.of(primes, TENTH, tiny, SearchEffort.ofChecks(500));
        Ratio tau = Ratio.of(1, 100_000_000);
        Ratio share = Ratio.of(1_000_003, 1_000_003L + 998_244_353 + 999_999_937 + 1_000_000_007);
        Ratio expected =
                Ratio.of(50_000_000).dividedBy(Ratio.ONE.plus(tau).times(share)).times(Ratio.of(1, 10));
        assertThat(undecided.allPassFrom()).contains(Amount.grams(expected));
        assertThat(undecided.toString()).contains("not decided");
        Criterion made = Criterion.madeWithin(Tolerances.of("0.000001 %"));
        MinimumBatch.Undecided asMade =
                (MinimumBatch.Undecided) MinimumBatch.of(primes, TENTH, made, SearchEffort.ofChecks(500));
        assertThat(asMade.allPassFrom()).isPresent();
        assertThat(asMade.allFailBelow()).isLessThan(asMade.allPassFrom().orElseThrow());
    }

    /** 1.5 divisions within 25 %: looked at twice, see the bands by hand. */
    @Test
    void a_search_may_use_up_its_whole_effort_but_no_more() {
        Bands bands = Bands.of(List.of(Ratio.ONE), List.of(Ratio.of(1, 4)));
        List<Long> heard = new ArrayList<>();
        SearchEffort two = SearchEffort.ofChecks(2).reportingTo((checks, limit) -> heard.add(checks));
        assertThat(bands.atLeast(Ratio.of(3, 2), new SearchMeter(two)).at()).isEqualTo(Ratio.of(8, 5));
        assertThat(heard).as("it was over before anything was due").isEmpty();
        assertThatThrownBy(() -> bands.atLeast(Ratio.of(3, 2), new SearchMeter(SearchEffort.ofChecks(1))))
                .isInstanceOf(SearchLimitException.class)
                .hasMessageContaining("1 checks");
    }
}
