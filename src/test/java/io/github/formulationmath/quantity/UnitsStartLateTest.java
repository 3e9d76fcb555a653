package io.github.formulationmath.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** A unit is kept by what is known of it; the object of the reference implementation says the same, read on its own way. */
class UnitsStartLateTest {

    @ParameterizedTest
    @EnumSource(KnownUnit.class)
    void the_unit_object_has_the_size_and_the_zero_that_the_table_states(KnownUnit known) {
        ForeignUnit walked = ForeignUnit.of(known.unit());
        assertThat(walked.factor()).isEqualTo(known.factor());
        assertThat(walked.offset()).isEqualTo(known.offset());
        assertThat(walked.kind()).isEqualTo(known.kind());
        assertThat(UnitScale.of(known.unit())).isSameAs(known);
    }

    /** What is not loaded cannot cost time; seen in a JVM of its own, for this one has the units long since. */
    @Test
    void plain_arithmetic_with_amounts_loads_no_unit_of_the_reference_implementation() throws Exception {
        Process java = new ProcessBuilder(
                        System.getProperty("java.home") + "/bin/java",
                        "-Xshare:auto",
                        "-verbose:class",
                        "-cp",
                        System.getProperty("java.class.path"),
                        Arithmetic.class.getName())
                .redirectErrorStream(true)
                .start();
        String log = new String(java.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(java.waitFor()).as(log).isZero();
        assertThat(log).contains("sum 40 g").contains("quantity.KnownUnit").doesNotContain("tech.units.indriya");
    }

    /** The program of that JVM. */
    static final class Arithmetic {

        private Arithmetic() {}

        public static void main(String[] arguments) {
            Amount<?> sum = Amount.mass("12.5 g").plus(Amount.mass("0.0275 kg"));
            System.out.println("sum " + sum + " " + MassFraction.parse("3 %").amountIn(Amount.mass("1 lb")));
        }
    }
}
