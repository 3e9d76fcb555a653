package io.github.formulationmath.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.formulationmath.support.ValueContract;
import java.io.IOException;
import java.util.HexFormat;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** The serial form is a promise: bytes written by an older release must read as the same values for ever. */
class QuantitySerialFormTest {

    private static final Map<String, Object> GOLDEN = Map.of(
            GoldenBytes.TWELVE_AND_A_HALF_OUNCES, Amount.mass("12.5 oz"),
            GoldenBytes.HALF_A_PERCENT, MassFraction.parse("0.50 %"),
            GoldenBytes.OIL_AT_20_DEGREES, Density.parse("0.92 g/mL at 20 °C"));

    @Test
    void bytes_of_the_first_release_read_as_the_same_value() throws IOException, ClassNotFoundException {
        for (Map.Entry<String, Object> entry : GOLDEN.entrySet()) {
            assertThat(ValueContract.read(HexFormat.of().parseHex(entry.getKey())))
                    .isEqualTo(entry.getValue());
        }
    }

    @Test
    void the_same_bytes_are_written_today() throws IOException {
        for (Map.Entry<String, Object> entry : GOLDEN.entrySet()) {
            assertThat(HexFormat.of().formatHex(ValueContract.bytes(entry.getValue())))
                    .isEqualTo(entry.getKey());
        }
    }

    @Test
    void the_text_as_written_travels_along() throws IOException, ClassNotFoundException {
        assertThat(ValueContract.copy(MassFraction.parse("0.50 %")).asWritten()).contains("0.50 %");
    }
}
