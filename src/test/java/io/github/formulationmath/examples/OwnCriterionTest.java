package io.github.formulationmath.examples;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.plan.Bench;
import io.github.formulationmath.plan.Tolerances;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.Interval;
import io.github.formulationmath.reckoning.Kind;
import io.github.formulationmath.reckoning.Phrase;
import io.github.formulationmath.reckoning.Reckoning;
import io.github.formulationmath.reckoning.Source;
import io.github.formulationmath.reckoning.Subject;
import io.github.formulationmath.reckoning.Symbol;
import io.github.formulationmath.size.BatchConstraints;
import io.github.formulationmath.size.BatchWindow;
import io.github.formulationmath.size.Criterion;
import io.github.formulationmath.size.MinimumBatch;
import io.github.formulationmath.size.Sizes;
import io.github.formulationmath.size.WindowOpening;
import io.github.formulationmath.weighing.Balance;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A criterion made outside the library's own package: every line of a phase is at least so many drops. */
class OwnCriterionTest {

    private static final Formula SERUM = Formula.inPercent("serum")
            .phase("water")
            .quantitySufficient("Aqua")
            .line("Glycerin", "5 %")
            .phase("drops")
            .line("Parfum", "0.4 %")
            .line("Tocopherol", "0.5 %")
            .build();

    private static final Balance TENTH = Balance.of("0.1 g", "2 kg");

    /** A drop of 1/40 g each: 10 drops of 0.4 % need 62.5 g. */
    private record Drops(String phase, long least) implements Criterion {

        private static final Symbol DROP = Symbol.of("g", "least-net-mass", Kind.MASS);

        @Override
        public Sizes on(Formula formula, Bench bench) {
            List<FormulaLine> lines = formula.lines().stream()
                    .filter(line -> line.phase().equals(phase))
                    .toList();
            return lines.isEmpty()
                    ? Sizes.none(formula, bench, Phrase.of("criterion.nothing"))
                    : Sizes.from(formula, bench, Phrase.of("criterion.one-division"), lines, this::bound);
        }

        private <V> V bound(Reckoning<V> r, FormulaLine line) {
            V drop = r.given(DROP, Subject.of("drop", ""), Ratio.of(1, 40), Source.user());
            return r.quotient(r.product(r.literal(least), drop), r.known(line));
        }
    }

    private static final Criterion TEN_DROPS = new Drops("drops", 10);

    @Test
    void it_is_asked_like_any_other_and_proves_itself() {
        MinimumBatch.Found found = (MinimumBatch.Found) MinimumBatch.of(SERUM, TENTH, TEN_DROPS);
        assertThat(found.smallest()).isEqualTo(Amount.mass("62.5 g"));
        assertThat(found.bindingLine()).contains(SERUM.line("Parfum"));
        found.working().check();
        assertThat(found.sizes().contains("62.4 g")).isFalse();
        assertThat(found.sizes().islands()).isEmpty();
        assertThat(found.sizes().allFrom()).contains(Amount.mass("62.5 g"));
        assertThat(MinimumBatch.of(SERUM, TENTH, new Drops("oil", 10))).isInstanceOf(MinimumBatch.Impossible.class);
    }

    @Test
    void it_joins_the_criteria_of_the_library() {
        Bench bench = Bench.of(TENTH);
        Criterion made = Criterion.madeWithin(Tolerances.of("5 %"));
        Sizes both = TEN_DROPS.on(SERUM, bench).and(made.on(SERUM, bench));
        Amount<?> smallest = both.smallest().orElseThrow();
        BatchWindow window = BatchWindow.of(SERUM, bench, BatchConstraints.of(TEN_DROPS, made));
        assertThat(window.smallest().orElseThrow().mass()).isEqualTo(smallest);
        for (int tenths = 600; tenths < 1000; tenths++) {
            Amount<javax.measure.quantity.Mass> size = Amount.grams(Ratio.of(tenths, 10));
            assertThat(both.contains(size))
                    .isEqualTo(tenths >= 625 && made.on(SERUM, bench).contains(size))
                    .isEqualTo(window.contains(size));
        }
        assertThat(both.within(Interval.of(Amount.mass("60 g"), Amount.mass("110 g"))))
                .isNotEmpty()
                .allSatisfy(island -> assertThat(island.least()).isEqualTo(island.greatest()));
    }

    /** Nobody knows what a dilution means to it, so none is proposed. */
    @Test
    void what_would_open_a_window_is_told_as_far_as_it_is_sure() {
        BatchWindow.Empty none = (BatchWindow.Empty) BatchWindow.of(SERUM, Balance.of("0.1 g", "50 g"), TEN_DROPS);
        assertThat(none.openings()).containsExactly(new WindowOpening.HigherCapacity(Amount.mass("62.5 g")));
    }

    @Test
    void sizes_of_two_formulas_have_nothing_in_common() {
        Formula other = Formula.inPercent("other")
                .quantitySufficient("Aqua")
                .phase("drops")
                .line("Parfum", "1 %")
                .build();
        Bench bench = Bench.of(TENTH);
        assertThatThrownBy(() -> TEN_DROPS.on(SERUM, bench).and(TEN_DROPS.on(other, bench)))
                .hasMessageContaining("a size is of one formula");
    }
}
