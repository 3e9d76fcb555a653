package io.github.formulationmath.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.formulationmath.number.NumberTextException;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.number.Rounding;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Pounds and ounces in one amount. The avoirdupois pound has 16 ounces (International Yard and Pound agreement, 1959). */
class TwoUnitsTest {

    private static final AmountFormat FORMAT = AmountFormat.standard();

    @ParameterizedTest
    @CsvSource({
        "2.1875 lb, 0.1, 2 lb 3.0 oz",
        "1.999 lb, 0.1, 2 lb",
        "0.999 lb, 1, 1 lb",
        "0.2 lb, 0.1, 3.2 oz",
        "-1.5 lb, 1, -1 lb 8 oz",
        "0 lb, 0.5, 0.0 oz",
        "1.25 kg, 1, 1 kg 250 g",
        "7 oz, 0.5, 7.0 oz",
    })
    void what_is_left_of_a_large_unit_is_told_in_small_ones(String amount, String step, String printed) {
        assertThat(FORMAT.formatInTwoUnits(Amount.mass(amount), Rounding.toMultipleOf(Ratio.parse(step))))
                .isEqualTo(printed);
    }

    @Test
    void what_is_printed_with_a_comma_is_read_again() {
        AmountFormat german = AmountFormat.with(',');
        String printed = german.formatInTwoUnits(Amount.mass("2.21875 lb"), Rounding.toDecimalPlaces(1));
        assertThat(printed).isEqualTo("2 lb 3,5 oz");
        assertThat(german.parseMass(printed)).isEqualTo(Amount.mass("2.21875 lb"));
        assertThat(german.parseMass("2 lb, 3,5 oz")).isEqualTo(Amount.mass("2 lb, 3.5 oz"));
        assertThatThrownBy(() -> german.parseMass("2 lb 3.5 oz"))
                .isInstanceOf(NumberTextException.class)
                .hasMessageContaining("the decimal mark here is \",\"");
    }

    /** The oracle counts thousandths of an ounce in whole numbers and knows 16, half-even and nothing of the library. */
    @Test
    void no_carry_is_wrong() {
        Random random = new Random(1959);
        int cases = Integer.getInteger("formulationmath.cases", 1) > 1 ? 1_000_000 : 2_000;
        for (int i = 0; i < cases; i++) {
            long thousandths = random.nextInt(4) == 0
                    ? 16_000L * random.nextInt(40) - random.nextInt(60)
                    : random.nextInt(700_000);
            thousandths = Math.max(0, thousandths);
            long tenths = BigDecimal.valueOf(thousandths, 2)
                    .setScale(0, RoundingMode.HALF_EVEN)
                    .longValueExact();
            BigInteger[] parts = BigInteger.valueOf(tenths).divideAndRemainder(BigInteger.valueOf(160));
            String ounces = BigDecimal.valueOf(parts[1].longValueExact(), 1).toPlainString() + " oz";
            String expected =
                    parts[0].signum() == 0 ? ounces : parts[0] + " lb" + (parts[1].signum() == 0 ? "" : " " + ounces);
            Amount<?> amount = Amount.mass(BigDecimal.valueOf(thousandths, 3).toPlainString() + " oz")
                    .to(FormulationUnits.POUND);
            String printed = FORMAT.formatInTwoUnits(amount, Rounding.toDecimalPlaces(1));
            assertThat(printed).isEqualTo(expected);
            assertThat(FORMAT.parseMass(printed)
                            .compareTo(Amount.mass(BigDecimal.valueOf(tenths, 1).toPlainString() + " oz")))
                    .isZero();
        }
    }
}
