package io.github.formulationmath.verification;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatNullPointerException;

import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.Density;
import io.github.formulationmath.quantity.MassFraction;
import org.junit.jupiter.api.Test;

class ClaimedSizeTest {

    @Test
    void sizesFromText() {
        assertThat(ClaimedSize.ofMass("850 g")).isEqualTo(new ClaimedSize.OfMass(Amount.mass("850 g")));
        assertThat(ClaimedSize.ofPacks(12, "50 g"))
                .isEqualTo(new ClaimedSize.OfPacks(12, Amount.mass("50 g"), MassFraction.ZERO));
        assertThat(ClaimedSize.ofPacks(12, "50 g", "5 %"))
                .isEqualTo(new ClaimedSize.OfPacks(12, Amount.mass("50 g"), MassFraction.ofPercent("5")));
        assertThat(ClaimedSize.ofVolume("500 mL", "0.95 g/mL"))
                .isEqualTo(new ClaimedSize.OfVolume(Amount.volume("500 mL"), Density.ofGramsPerMillilitre("0.95")));
    }

    @Test
    void whatIsNoSizeIsRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> ClaimedSize.ofMass("850 mL"))
                .withMessageContaining("850 mL");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> ClaimedSize.ofPacks(2, "50 g", "five"))
                .withMessageContaining("five");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> ClaimedSize.ofVolume("5 g", "1 g/mL"))
                .withMessageContaining("5 g");
        assertThatNullPointerException()
                .isThrownBy(() -> ClaimedSize.ofMass(null))
                .withMessage("mass");
        assertThatNullPointerException()
                .isThrownBy(() -> ClaimedSize.ofPacks(2, null))
                .withMessage("fillMass");
        assertThatNullPointerException()
                .isThrownBy(() -> ClaimedSize.ofPacks(2, "50 g", null))
                .withMessage("overage");
        assertThatNullPointerException()
                .isThrownBy(() -> ClaimedSize.ofVolume("5 mL", null))
                .withMessage("density");
    }
}
