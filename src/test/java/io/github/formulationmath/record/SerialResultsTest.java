package io.github.formulationmath.record;

import static io.github.formulationmath.record.Lotion.g;
import static io.github.formulationmath.record.Lotion.line;
import static org.assertj.core.api.Assertions.assertThat;

import io.github.formulationmath.number.Rounding;
import io.github.formulationmath.planning.Tolerances;
import io.github.formulationmath.support.ValueContract;
import io.github.formulationmath.working.Explained;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Results come back from their serial form with the same number, text and working. */
class SerialResultsTest {

    private static final MadeBatch MADE = Lotion.made("316.0", "12.4", "48.0", "20.0", "4.0");

    private static final PriceList PRICES = PriceList.empty()
            .with("Aqua", Offer.of("1", "1 kg"))
            .with("Glycerin", Offer.of("4", "100 g"))
            .with("Avena Sativa Kernel Oil", Offer.of("9", "100 g"))
            .with("Glyceryl Stearate SE", Offer.of("7", "3 oz"))
            .with("Preservative blend", Offer.of("5.25", "30 g"));

    private static void comesBack(Explained result) throws Exception {
        Explained copy = ValueContract.copy(result);
        assertThat(copy.result()).isEqualTo(result.result());
        assertThat(copy).hasToString(result.toString());
        assertThat(copy.working()).hasToString(result.working().toString());
    }

    @Test
    void a_batch_that_was_mended_and_its_lines() throws Exception {
        MadeBatch mended = MADE.plus(List.of(LineAddition.of(line("Aqua"), g("1"))));
        comesBack(mended);
        for (MadeLine line : mended.lines()) {
            comesBack(line);
            comesBack(line.check(Tolerances.of("2 %")));
        }
    }

    @Test
    void a_cost_and_what_has_to_be_bought() throws Exception {
        BatchCost cost = BatchCost.of(MADE, PRICES, Rounding.toDecimalPlaces(2));
        comesBack(cost);
        for (Purchase purchase : cost.purchases()) {
            comesBack(purchase);
        }
        for (LineCost line : cost.lines()) {
            comesBack(line);
        }
    }
}
