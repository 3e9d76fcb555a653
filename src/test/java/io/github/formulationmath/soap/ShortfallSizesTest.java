package io.github.formulationmath.soap;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.plan.Bench;
import io.github.formulationmath.plan.ExpectedProduct;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.Interval;
import io.github.formulationmath.reckoning.Wording;
import io.github.formulationmath.simulation.CoverageFactor;
import io.github.formulationmath.size.BatchConstraints;
import io.github.formulationmath.size.BatchWindow;
import io.github.formulationmath.size.Criterion;
import io.github.formulationmath.size.MinimumBatch;
import io.github.formulationmath.support.Bar;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.weighing.ErrorModel;
import io.github.formulationmath.weighing.WeighingMethod;
import java.util.Objects;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Mass;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** How small a batch of soap may be for its shortfall to stay between two figures whatever the scale does. */
class ShortfallSizesTest {

    private static final Balance TENTH = Balance.of("0.1 g", "20 kg");
    private static final Balance COARSE = Balance.of("1 g", "20 kg");

    private static Criterion within(String least, String greatest, WeighingMethod method) {
        return Bar.SOAP.shortfallWithin(
                Unsaponified.alkaliShortfall(least), Unsaponified.alkaliShortfall(greatest), method);
    }

    /**
     * By hand, as KOH: the fats take at least 700·0.184 + 200·0.248 + 100·0.16 = 194.4 g, the flakes give at most 139.6·0.99·k, with k
     * = 56.10564/39.99710928, and each weighing is off by 0.15 g at most: three for fats, with S, and one with 0.99·k.
     */
    @Test
    void the_smallest_batch_is_where_the_errors_just_fit() {
        MinimumBatch.Found found = (MinimumBatch.Found)
                MinimumBatch.of(Bar.FORMULA, TENTH, within("0 %", "10 %", WeighingMethod.TARE_EACH));
        double k = 56.10564 / 39.99710928;
        double room = (194.4 - 139.6 * 0.99 * k) / 1439.6;
        double errors = 0.15 * (0.184 + 0.248 + 0.16 + 0.99 * k);
        double above = (0.9 * (700 * 0.196 + 200 * 0.265 + 100 * 0.195) - 139.6 * 0.97 * k) / 1439.6;
        double errorsAbove = 0.15 * (0.9 * (0.196 + 0.265 + 0.195) + 0.97 * k);
        // At most 10 % is the sum 0.97·k·A − 0.9·Σ S·m.
        double smallest = Math.max(errors / room, errorsAbove / -above);
        assertThat(found.smallest().canonical().doubleValue()).isCloseTo(smallest, Offset.offset(1e-6));
        found.working().check();
        assertThat(found.bindingLine()).contains(Bar.FORMULA.line("Sodium Hydroxide"));
    }

    private static boolean isWithin(Amount<Mass> size, Balance balance, WeighingMethod method) {
        Interval<Amount<Dimensionless>> shortfall = AlkaliBalance.of(
                        Bar.SOAP, ExpectedProduct.of(Bar.plan(size, balance), method))
                .shortfall();
        return shortfall.least().signum() >= 0
                && shortfall.greatest().exactValue().compareTo(Ratio.of(10)) <= 0;
    }

    @ParameterizedTest
    @EnumSource(
            value = WeighingMethod.class,
            names = {"TARE_EACH", "CUMULATIVE", "BY_DIFFERENCE"})
    void every_batch_from_there_on_keeps_it_and_some_below_does_not(WeighingMethod method) {
        Criterion criterion = within("0 %", "10 %", method);
        Amount<Mass> smallest =
                criterion.on(Bar.FORMULA, Bench.of(COARSE)).smallest().orElseThrow();
        int below = 0;
        for (int i = 0; i <= 300; i++) {
            assertThat(isWithin(smallest.times(Ratio.of(300 + i, 300)), COARSE, method))
                    .isTrue();
            below += isWithin(smallest.times(Ratio.of(300 + i, 900)), COARSE, method) ? 0 : 1;
        }
        assertThat(below).isPositive();
    }

    @Test
    void a_window_counts_it_among_its_constraints() {
        Criterion criterion = within("0 %", "10 %", WeighingMethod.TARE_EACH);
        BatchWindow window =
                BatchWindow.of(Bar.FORMULA, Bench.of(TENTH), BatchConstraints.of(criterion, Criterion.oneDivision()));
        Amount<Mass> smallest =
                criterion.on(Bar.FORMULA, Bench.of(TENTH)).smallest().orElseThrow();
        assertThat(window.smallest().orElseThrow().mass()).isEqualTo(smallest);
        assertThat(window.contains(Amount.mass("3 kg"))).isTrue();
        assertThat(BatchWindow.of(Bar.FORMULA, Balance.of("0.1 g", "0.4 kg"), criterion))
                .isInstanceOf(BatchWindow.Empty.class);
    }

    @Test
    void ranges_wider_than_what_is_asked_are_an_obstacle_told_in_words() {
        MinimumBatch none = MinimumBatch.of(Bar.FORMULA, TENTH, within("2 %", "9 %", WeighingMethod.TARE_EACH));
        assertThat(none).isInstanceOf(MinimumBatch.Impossible.class);
        assertThat(within("2 %", "10 %", WeighingMethod.TARE_EACH)
                        .on(Bar.FORMULA, Bench.of(TENTH))
                        .obstacle()
                        .map(Wording.english()::text))
                .hasValueSatisfying(text -> assertThat(text).contains("2 %").contains("take less alkali"));
        assertThat(within("0 %", "9 %", WeighingMethod.TARE_EACH)
                        .on(Bar.FORMULA, Bench.of(TENTH))
                        .obstacle()
                        .map(Wording.english()::text))
                .hasValueSatisfying(text -> assertThat(text).contains("9 %").contains("take more alkali"));
    }

    @Test
    void a_repeatability_is_taken_in_with_a_coverage_factor_or_no_size_is_sure() {
        Balance spread = TENTH.withErrors(ErrorModel.readabilityOnly().withRepeatability("0.05 g"));
        assertThat(within("0 %", "10 %", WeighingMethod.TARE_EACH)
                        .on(Bar.FORMULA, Bench.of(spread))
                        .obstacle()
                        .map(Wording.english()::text))
                .hasValueSatisfying(text -> assertThat(text).contains("coverage factor"));
        Criterion covered = Bar.SOAP.shortfallWithin(
                Unsaponified.alkaliShortfall("0 %"),
                Unsaponified.alkaliShortfall("10 %"),
                WeighingMethod.TARE_EACH,
                CoverageFactor.of(2));
        Amount<Mass> wider =
                covered.on(Bar.FORMULA, Bench.of(spread)).smallest().orElseThrow();
        // 0.25 g in the place of 0.15 g
        Amount<Mass> sharp = within("0 %", "10 %", WeighingMethod.TARE_EACH)
                .on(Bar.FORMULA, Bench.of(TENTH))
                .smallest()
                .orElseThrow();
        assertThat(wider.canonical().dividedBy(sharp.canonical())).isEqualTo(Ratio.of(5, 3));
    }

    @Test
    void what_cannot_be_asked_is_refused() {
        assertThatThrownBy(() -> within("9 %", "2 %", WeighingMethod.TARE_EACH)).hasMessageContaining("exchanged");
        Formula other = Formula.inMasses("other").line("Olive", "700 g").build();
        assertThatThrownBy(() -> within("0 %", "10 %", WeighingMethod.TARE_EACH).on(other, Bench.of(TENTH)))
                .hasMessageContaining("is no line of the soap");
        Soap open = Soap.of(Bar.FORMULA);
        assertThatThrownBy(() -> open.leaving(Unsaponified.alkaliShortfall("0 %")))
                .hasMessageContaining("not declared")
                .hasMessageContaining("say of each line");
        assertThat(Objects.toString(within("0 %", "10 %", WeighingMethod.TARE_EACH)))
                .isEqualTo("shortfall within 0 % to 10 %");
    }
}
