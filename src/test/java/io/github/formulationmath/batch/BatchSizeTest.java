package io.github.formulationmath.batch;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatNullPointerException;

import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.Density;
import io.github.formulationmath.quantity.MassFraction;
import org.junit.jupiter.api.Test;

class BatchSizeTest {

    @Test
    void sizes_from_text() {
        assertThat(BatchSize.ofMass("850 g")).isEqualTo(BatchSize.ofMass(Amount.mass("850 g")));
        assertThat(BatchSize.ofPacks(12, "50 g"))
                .isEqualTo(BatchSize.ofPacks(12, Amount.mass("50 g"), MassFraction.ZERO));
        assertThat(BatchSize.ofPacks(12, "50 g", "5 %"))
                .isEqualTo(BatchSize.ofPacks(12, Amount.mass("50 g"), MassFraction.ofPercent("5")));
        assertThat(BatchSize.ofVolume("500 mL", "0.95 g/mL"))
                .isEqualTo(BatchSize.ofVolume(Amount.volume("500 mL"), Density.ofGramsPerMillilitre("0.95")));
    }

    @Test
    void what_is_no_size_is_refused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> BatchSize.ofMass("850 mL"))
                .withMessageContaining("850 mL");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> BatchSize.ofPacks(2, "50 g", "five"))
                .withMessageContaining("five");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> BatchSize.ofVolume("5 g", "1 g/mL"))
                .withMessageContaining("5 g");
        assertThatNullPointerException()
                .isThrownBy(() -> BatchSize.ofPacks(2, null))
                .withMessage("fillMass");
        assertThatNullPointerException()
                .isThrownBy(() -> BatchSize.ofPacks(2, "50 g", null))
                .withMessage("overage");
        assertThatNullPointerException()
                .isThrownBy(() -> BatchSize.ofVolume("5 mL", null))
                .withMessage("density");
    }
}
