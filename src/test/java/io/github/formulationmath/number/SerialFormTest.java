package io.github.formulationmath.number;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.formulationmath.support.ValueContract;
import java.io.IOException;
import java.io.InvalidObjectException;
import java.math.BigInteger;
import java.util.HexFormat;
import org.junit.jupiter.api.Test;

/** The serial form is a promise: bytes written by an older release must read as the same values for ever. */
class SerialFormTest {

    @Test
    void bytes_of_the_first_release_read_as_the_same_value() throws IOException, ClassNotFoundException {
        assertThat(ValueContract.read(HexFormat.of().parseHex(GoldenBytes.TWENTY_FIVE_HALVES)))
                .isEqualTo(Ratio.of(25, 2));
        assertThat(ValueContract.read(HexFormat.of().parseHex(GoldenBytes.TWO_DECIMAL_PLACES)))
                .isEqualTo(Rounding.toDecimalPlaces(2));
        assertThat(ValueContract.read(HexFormat.of().parseHex(GoldenBytes.AT_LEAST_ONE)))
                .isEqualTo(Bounds.atLeast(Ratio.ONE));
    }

    @Test
    void the_same_bytes_are_written_today() throws IOException {
        assertThat(HexFormat.of().formatHex(ValueContract.bytes(Ratio.of(25, 2))))
                .isEqualTo(GoldenBytes.TWENTY_FIVE_HALVES);
        assertThat(HexFormat.of().formatHex(ValueContract.bytes(Rounding.toDecimalPlaces(2))))
                .isEqualTo(GoldenBytes.TWO_DECIMAL_PLACES);
        assertThat(HexFormat.of().formatHex(ValueContract.bytes(Bounds.atLeast(Ratio.ONE))))
                .isEqualTo(GoldenBytes.AT_LEAST_ONE);
    }

    @Test
    void a_forged_ratio_is_refused_or_made_proper() throws IOException, ClassNotFoundException {
        byte[] zero = ValueContract.bytes(new SerializedRatio(BigInteger.ONE, BigInteger.ZERO));
        assertThatThrownBy(() -> ValueContract.read(zero)).isInstanceOf(InvalidObjectException.class);
        byte[] none = ValueContract.bytes(new SerializedRatio(null, BigInteger.ONE));
        assertThatThrownBy(() -> ValueContract.read(none)).isInstanceOf(InvalidObjectException.class);
        byte[] loose = ValueContract.bytes(new SerializedRatio(BigInteger.TEN, BigInteger.valueOf(-4)));
        assertThat(ValueContract.read(loose)).isEqualTo(Ratio.of(-5, 2));
    }
}
