package io.github.formulationmath.size;

import static io.github.formulationmath.support.Made.massBounds;
import static org.assertj.core.api.Assertions.assertThat;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.plan.Closure;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.reckoning.Reckoning;
import io.github.formulationmath.simulation.CoverageFactor;
import io.github.formulationmath.weighing.Addition;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.weighing.ErrorModel;
import io.github.formulationmath.weighing.MadeMasses;
import io.github.formulationmath.weighing.WeighingMethod;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import javax.measure.quantity.Mass;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class AdditionBoundTest {

    /** The bound before anything is read is the worst bound of any reading, and the half division by which targets round. */
    @ParameterizedTest
    @EnumSource(WeighingMethod.class)
    void the_error_of_an_addition_is_the_same_before_and_after_it_is_read(WeighingMethod method) {
        SplittableRandom random = new SplittableRandom(8);
        for (int round = 0; round < 100; round++) {
            ErrorModel errors = ErrorModel.readabilityOnly()
                    .withRepeatability(tenths(random))
                    .withTareResolution(tenths(random))
                    .withResidue(Amount.mass("0.2 g"), Amount.mass("0.2 g").plus(tenths(random)));
            Amount<Mass> linearity = tenths(random);
            Balance balance = Balance.of("0.1 g", "2 kg")
                    .withErrors(
                            random.nextBoolean()
                                    ? errors.withLinearityOfIndication(linearity)
                                    : errors.withLinearityOfNetReading(linearity));
            Amount<Mass> mass = Amount.mass("100 g");
            List<Addition> additions = IntStream.range(0, 3)
                    .mapToObj(i -> Addition.of("L" + i, mass, mass, balance).by(method))
                    .toList();
            MadeMasses made = MadeMasses.of(additions).covering(CoverageFactor.of(2));
            Ratio over = Ratio.of(-100);
            Ratio under = Ratio.of(-100);
            for (int i = 0; i < 3; i++) {
                over = over.max(massBounds(made, i).upper().orElseThrow().minus(Ratio.of(100)));
                under = under.max(
                        Ratio.of(100).minus(massBounds(made, i).lower().orElseThrow()));
            }
            AdditionBound bound = new AdditionBound(balance, method, Ratio.of(2), Ratio.of(1, 2), null);
            Ratio half = Ratio.of(1, 20);
            assertThat(bound.constant(Reckoning.plain(), true)).isEqualTo(over.plus(half));
            assertThat(bound.constant(Reckoning.plain(), false)).isEqualTo(under.plus(half));
        }
    }

    private static Amount<Mass> tenths(SplittableRandom random) {
        return Amount.grams(Ratio.of(random.nextInt(5), 10));
    }

    /** Wax is a fifth. Within a tolerance: a tenth for the total, and one division or half of the others, whichever is more. */
    @Test
    void how_far_a_closure_moves_a_reading() {
        Formula formula = Formula.inPercent("balm")
                .quantitySufficient("Oil")
                .line("Wax", "20 %")
                .build();
        FormulaLine wax = formula.line("Wax");
        FormulaLine oil = formula.line("Oil");
        assertThat(AdditionBound.reach(Closure.INDEPENDENT, wax, 5)).isEqualTo(Ratio.of(1, 2));
        assertThat(AdditionBound.reach(Closure.CLOSED, wax, 5)).isEqualTo(Ratio.ONE);
        assertThat(AdditionBound.reach(Closure.QS_TAKES_REST, wax, 5)).isEqualTo(Ratio.of(1, 2));
        assertThat(AdditionBound.reach(Closure.QS_TAKES_REST, oil, 5)).isEqualTo(Ratio.of(5, 2));
        assertThat(AdditionBound.reach(Closure.WITHIN_TOLERANCE, wax, 2)).isEqualTo(Ratio.parse("1.1"));
        assertThat(AdditionBound.reach(Closure.WITHIN_TOLERANCE, wax, 3)).isEqualTo(Ratio.parse("1.1"));
        assertThat(AdditionBound.reach(Closure.WITHIN_TOLERANCE, wax, 5)).isEqualTo(Ratio.parse("2.1"));
    }
}
