package io.github.formulationmath.soap;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Interval;
import io.github.formulationmath.quantity.MassFraction;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Map;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Figures of soap that are printed in books and standards. */
class PublishedSoapTest {

    /** W. H. Simmons, H. A. Appleton, The Handbook of Soap Manufacture, London 1908, chapter II: SE of pure triglycerides. */
    @ParameterizedTest
    @CsvSource({
        "C4:0, 100.7",
        "C6:0, 128.7",
        "C8:0, 156.7",
        "C12:0, 212.7",
        "C14:0, 240.7",
        "C16:0, 268.7",
        "C18:1, 294.7"
    })
    void equivalents_of_pure_triglycerides_are_those_of_the_handbook(String acid, String printed) {
        AlkaliNumber value = pure(acid).saponificationValue(Escapes.none()).least();
        Ratio equivalent = Alkali.POTASSIUM_HYDROXIDE.molarMass().gramsPerMole().dividedBy(value.gramsPerGram());
        // The book has whole-number atomic weights, which move an equivalent by up to 0.5.
        assertThat(equivalent.minus(Ratio.parse(printed)).abs()).isLessThan(Ratio.parse("0.5"));
    }

    /** The same book with the atomic weights it used, C 12, H 1, O 16: every printed figure to its last digit. */
    @ParameterizedTest
    @CsvSource({
        "4, 0, 100.7",
        "6, 0, 128.7",
        "8, 0, 156.7",
        "12, 0, 212.7",
        "14, 0, 240.7",
        "16, 0, 268.7",
        "18, 1, 294.7"
    })
    void the_printed_digits_are_those_of_whole_number_atomic_weights(int carbons, int bonds, String printed) {
        int acid = 12 * carbons + 2 * (carbons - bonds) + 32;
        BigDecimal equivalent =
                BigDecimal.valueOf(3L * acid + 38).divide(BigDecimal.valueOf(3), 1, RoundingMode.HALF_UP);
        assertThat(equivalent).isEqualTo(new BigDecimal(printed));
    }

    /**
     * AOCS Recommended Practice Cd 1c-85 (reapproved 2009): factors of the iodine value for acids in simple triglycerides. The
     * printed 0.785 of C20:1 and 0.723 of C22:1 and the others agree to the last digit.
     */
    @ParameterizedTest
    @CsvSource({"C16:1, 0.950", "C18:1, 0.860", "C18:2, 1.732", "C18:3, 2.616", "C20:1, 0.785", "C22:1, 0.723"})
    void iodine_values_of_simple_triglycerides_are_the_factors_of_the_practice(String acid, String factor) {
        Ratio value = pure(acid).iodineValue().greatest().gramsPerHundred();
        assertThat(new BigDecimal(value.dividedBy(100).doubleValue()).setScale(3, RoundingMode.HALF_UP))
                .isEqualTo(new BigDecimal(factor));
    }

    private static FattyAcidProfile pure(String acid) {
        return FattyAcidProfile.ofAcids(
                Map.of(FattyAcid.parse(acid), Interval.of(MassFraction.WHOLE, MassFraction.WHOLE)));
    }
}
