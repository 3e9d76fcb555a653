package io.github.formulationmath.pot;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.weighing.WeighingMethod;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Each line of a pot has the balance of its latest reading. */
final class BalancesOfLinesTest {
    @Test
    void the_balance_of_a_line_is_that_of_its_latest_reading() {
        Balance pocket = Balance.of("0.01 g", "100 g").named("pocket");
        MadeBatch made = MadeBatch.of(Readings.of(
                Lotion.PLAN,
                WeighingMethod.TARE_EACH,
                List.of(
                        Reading.of(Lotion.line("Aqua"), "316 g"),
                        Reading.of(Lotion.line("Preservative blend"), "4 g").on(pocket))));
        assertThat(made.line("Preservative blend").balance()).isEqualTo(pocket);
        assertThat(made.line("Aqua").balance()).isEqualTo(Lotion.BALANCE);
        assertThat(made.line("Glycerin").balance()).isEqualTo(Lotion.BALANCE);
        MadeBatch more = made.plus(List.of(
                LineAddition.of(Lotion.line("Glycerin"), Amount.mass("12.05 g")).on(pocket),
                LineAddition.of(Lotion.line("Preservative blend"), Amount.mass("0.1 g"))));
        assertThat(more.line("Glycerin").balance()).isEqualTo(pocket);
        assertThat(more.line("Preservative blend").balance()).isEqualTo(Lotion.BALANCE);
    }
}
