package io.github.formulationmath.size;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.formulationmath.batch.Batch;
import io.github.formulationmath.batch.BatchSize;
import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.number.Rounding;
import io.github.formulationmath.oracle.BatchOracle;
import io.github.formulationmath.plan.Bench;
import io.github.formulationmath.plan.Tolerances;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.MassFraction;
import io.github.formulationmath.support.Formulas;
import io.github.formulationmath.support.RandomFormulas;
import io.github.formulationmath.support.WorkingAssertions;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.weighing.ErrorModel;
import io.github.formulationmath.weighing.Vessel;
import io.github.formulationmath.weighing.WeighingMethod;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javax.measure.quantity.Mass;
import org.junit.jupiter.api.Test;

class InverseQuestionsTest {

    private static final Formula BALM = Formulas.balm("balm");
    private static final Formula CREAM =
            Formula.inPercent("cream").line("Aqua", "99 %").line("Gum", "1 %").build();

    private static final Balance TENTH = Balance.of("0.1 g", "2 kg");

    private static Batch batch(Formula formula, String mass) {
        return Batch.of(formula, BatchSize.ofMass(mass));
    }

    @Test
    void the_coarsest_display_for_a_batch() {
        CoarsestStep coarsest = rounding(batch(BALM, "200 g"), Tolerances.of("5 %"));
        assertThat(coarsest.exactStep()).contains(Amount.mass("1.05 g"));
        assertThat(coarsest.bindingLine().orElseThrow().name()).isEqualTo("Tocopherol");
        assertThat(coarsest.step()).contains(Amount.mass("1 g"));
        assertThat(coarsest.serves(Amount.mass("0.5 g"))).isTrue();
        assertThat(coarsest.serves(Amount.mass("0.7 g"))).isFalse();
        assertThat(coarsest.everyFinerFrom()).contains(Amount.mass("0.105 g"));
        WorkingAssertions.assertSelfChecking(coarsest.exactStep().orElseThrow().working());
    }

    private static CoarsestStep rounding(Batch batch, Tolerances tolerances) {
        return CoarsestStep.of(batch, TENTH, Criterion.roundingWithin(tolerances));
    }

    @Test
    void a_repertoire_needs_one_display_for_all() {
        List<Batch> repertoire = List.of(batch(BALM, "200 g"), batch(CREAM, "35 g"));
        Criterion within = Criterion.roundingWithin(Tolerances.of("5 %"));
        CoarsestStep coarsest = CoarsestStep.of(repertoire, TENTH, within, SearchEffort.standard());
        assertThat(coarsest.exactStep().orElseThrow()).isLessThanOrEqualTo(Amount.mass("0.3675 g"));
        assertThat(coarsest.step().orElseThrow()).isLessThanOrEqualTo(Amount.mass("0.2 g"));
        WorkingAssertions.assertSelfChecking(coarsest.exactStep().orElseThrow().working());
        // 0.5 % of 200 g is 1 g and 1 % of 35 g is 0.35 g: the smallest line of all is one division of 0.2 g at least.
        assertThat(CoarsestStep.of(repertoire, TENTH, Criterion.oneDivision(), SearchEffort.standard())
                        .step())
                .contains(Amount.mass("0.2 g"));
        assertThatThrownBy(() -> CoarsestStep.of(List.of(), TENTH, within, SearchEffort.standard()))
                .hasMessageContaining("batches");
    }

    @Test
    void a_tolerance_for_a_line_must_be_of_some_batch_of_the_repertoire() {
        List<Batch> repertoire = List.of(batch(BALM, "200 g"), batch(CREAM, "35 g"));
        Tolerances gum = Tolerances.of("5 %").withLine("Gum", "20 %");
        assertThat(CoarsestStep.of(repertoire, TENTH, Criterion.roundingWithin(gum), SearchEffort.standard())
                        .exactStep())
                .isPresent();
        Tolerances talc = Tolerances.of("5 %").withLine("Talc", "20 %");
        assertThatThrownBy(() ->
                        CoarsestStep.of(repertoire, TENTH, Criterion.roundingWithin(talc), SearchEffort.standard()))
                .hasMessageContaining("Talc")
                .hasMessageContaining("\"balm\", \"cream\"");
    }

    /** A batch of 1 g on a step d is a batch of 1/d divisions: the oracle's smallest one turned over. */
    @Test
    void the_coarsest_display_is_the_smallest_batch_turned_over() {
        RandomFormulas random = new RandomFormulas(61);
        for (int run = 0; run < 500; run++) {
            long[] parts = random.parts(40);
            long p = 2 + random.below(28);
            Batch batch = batch(RandomFormulas.formula(parts), "1 g");
            CoarsestStep coarsest = rounding(batch, Tolerances.of(MassFraction.of(Ratio.of(p, 100))));
            Ratio step = coarsest.exactStep().orElseThrow().exactValue();
            long[] best = new BatchOracle(parts, p, 100)
                    .smallestRounding(step.reciprocal().ceil().toLongExact());
            assertThat(step).isEqualTo(Ratio.of(best[1], best[0]));
            coarsest.exactStep().orElseThrow().working().check();
        }
    }

    @Test
    void several_benches_side_by_side() {
        Bench kitchen = Bench.of(Balance.of("1 g", "5 kg"));
        Bench pocket = Bench.of(Balance.of("0.01 g", "200 g")).with(Vessel.of("jar", "45 g"));
        Bench tiny = Bench.of(Balance.of("1 g", "100 g"));
        List<BatchWindow> windows = Stream.of(kitchen, pocket, tiny)
                .map(bench -> BatchWindow.of(BALM, bench, BatchConstraints.of(Criterion.oneDivision())))
                .toList();
        BatchWindow.Feasible finest = windows.stream()
                .filter(BatchWindow.Feasible.class::isInstance)
                .map(BatchWindow.Feasible.class::cast)
                .min(Comparator.comparing(window -> window.lowerEnd().mass()))
                .orElseThrow();
        assertThat(finest.bench()).isEqualTo(pocket);
        assertThat(finest.upperEnd().mass()).isEqualTo(Amount.mass("155 g"));
        assertThat(windows.get(2)).isInstanceOf(BatchWindow.Empty.class);
        assertThat(windows.toString()).contains("no batch").contains("from 2 g to 155 g");
    }

    /** By hand: 2 % of 60 g is 1.2 g; a worst error of 1.5 d within 5 % of it, 0.06 g, allows d = 0.04 g. */
    @Test
    void the_coarsest_step_of_the_series_under_any_criterion() {
        Formula salve = Formula.inPercent("salve")
                .line("Oil", "98 %")
                .line("Wax", "2 %")
                .build();
        Batch batch = batch(salve, "60 g");
        Balance balance = Balance.of("0.1 g", "2 kg");
        assertThat(CoarsestStep.of(batch, balance, Criterion.oneDivision()).step())
                .contains(Amount.mass("1 g"));
        Criterion worst = Criterion.errorBound(Tolerances.of("5 %"), WeighingMethod.TARE_EACH);
        CoarsestStep coarsest = CoarsestStep.of(batch, balance, worst);
        assertThat(coarsest.step()).contains(Amount.mass("0.02 g"));
        assertThat(coarsest.serves(Amount.mass("0.04 g"))).isTrue();
        assertThat(coarsest.serves(Amount.mass("0.041 g"))).isFalse();
        assertThat(coarsest.toString())
                .contains("0.02 g is the coarsest of the series 1-2-5")
                .contains("worst error");
        assertThatThrownBy(() -> coarsest.serves(Amount.mass("0 g"))).hasMessageContaining("readability is 0 g");
        Balance crooked = balance.withErrors(ErrorModel.readabilityOnly().withLinearityOfNetReading("0.1 g"));
        CoarsestStep none = CoarsestStep.of(batch, crooked, worst);
        assertThat(none.step()).isEmpty();
        assertThat(none.toString()).contains("no step of the series 1-2-5 serves");
    }

    /**
     * For rounding, the step of the series is the largest at which every line reads within tolerance, tried here from far
     * above the batch down to a millionth of the smallest line, by the definition.
     */
    @Test
    void the_step_of_the_series_is_the_largest_that_rounds_within_tolerance() {
        RandomFormulas random = new RandomFormulas(67);
        for (int run = 0; run < 200; run++) {
            Ratio share = Ratio.of(2 + random.below(28), 100);
            long[] parts = run % 10 == 0 ? new long[] {1 + random.below(9)} : random.parts(40);
            if (run % 10 == 1) {
                parts = new long[] {30_000_000, 1 + random.below(9)};
            }
            Batch batch = batch(RandomFormulas.formula(parts), "97 g");
            CoarsestStep found = rounding(batch, Tolerances.of(MassFraction.of(share)));
            assertThat(found.step()).isEqualTo(largestByDefinition(batch, share));
            assertThat(found.serves("0.7 g")).isEqualTo(roundsWithin(batch, Ratio.parse("0.7"), share));
        }
    }

    private static Optional<Amount<Mass>> largestByDefinition(Batch batch, Ratio share) {
        for (Ratio decade = Ratio.of(1000); decade.compareTo(Ratio.of(1, 1_000_000_000_000L)) > 0; ) {
            for (int mantissa : new int[] {5, 2, 1}) {
                Ratio step = decade.times(mantissa);
                if (roundsWithin(batch, step, share)) {
                    return Optional.of(Amount.grams(step));
                }
            }
            decade = decade.times(Ratio.of(1, 10));
        }
        return Optional.empty();
    }

    private static boolean roundsWithin(Batch batch, Ratio step, Ratio share) {
        return batch.lines().stream().allMatch(line -> {
            Ratio exact = line.mass().canonical().dividedBy(step);
            Ratio shown = Rounding.toDecimalPlaces(0).apply(exact);
            return shown.minus(exact).abs().compareTo(share.times(exact)) <= 0;
        });
    }

    /** Of 100 g, a line of 0.00001 % is 10 µg: one division of 0.00001 g, seven decades below the batch. */
    @Test
    void the_step_is_looked_for_below_the_smallest_line() {
        Formula trace = Formula.inPercent("trace")
                .line("Oil", "99.99999 %")
                .line("Dye", "0.00001 %")
                .build();
        assertThat(CoarsestStep.of(batch(trace, "100 g"), TENTH, Criterion.oneDivision())
                        .step())
                .contains(Amount.mass("0.00001 g"));
    }

    @Test
    void the_exact_step_is_known_for_rounding_alone() {
        CoarsestStep other = CoarsestStep.of(batch(BALM, "200 g"), TENTH, Criterion.oneDivision());
        assertThat(other.step()).contains(Amount.mass("1 g"));
        assertThat(other.exactStep()).isEmpty();
        assertThat(other.exactStep()).isEmpty();
        assertThat(other.bindingLine()).isEmpty();
        assertThat(other.everyFinerFrom()).isEmpty();
    }

    /** By hand: of 1.2 g, 0.6 g is half and 0.4 g a third, but 0.5 g shows 1 g, 17 % too little. */
    @Test
    void a_finer_display_may_fail_where_a_coarser_one_serves() {
        Formula salve = Formula.inPercent("salve")
                .line("Oil", "98 %")
                .line("Wax", "2 %")
                .build();
        CoarsestStep coarsest = rounding(batch(salve, "60 g"), Tolerances.of("5 %"));
        assertThat(coarsest.serves("0.6 g")).isTrue();
        assertThat(coarsest.serves("0.5 g")).isFalse();
        assertThat(coarsest.serves("0.4 g")).isTrue();
    }

    /** 0.5 % of 2 kg is 10 g, more than the pocket balance carries: its display is asked about, not its capacity. */
    @Test
    void the_coarsest_step_may_be_more_than_the_balance_carries() {
        Balance pocket = Balance.of("0.01 g", "5 g");
        assertThat(CoarsestStep.of(batch(BALM, "2000 g"), pocket, Criterion.oneDivision())
                        .step())
                .contains(Amount.mass("10 g"));
    }
}
