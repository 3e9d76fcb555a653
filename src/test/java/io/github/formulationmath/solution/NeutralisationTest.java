package io.github.formulationmath.solution;

import static io.github.formulationmath.solution.Acids.NAOH;
import static io.github.formulationmath.solution.Acids.mass;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.formulationmath.number.Rounding;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.Interval;
import javax.measure.quantity.Mass;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How much base an acid takes. */
class NeutralisationTest {

    private static final Amount<Mass> GRAM = Amount.mass("1 g");
    private static final Neutralisation CARBOMER = Neutralisation.ofCarboxyl("56.0 %", "68.0 %");

    /** A carbomer of 56.0 to 68.0 % COOH, dried (USP 32, Carbomer 940); the masses of base by hand, from molar masses. */
    @ParameterizedTest
    @CsvSource({
        "NaOH, 0.4975, 0.6042",
        "KOH, 0.6979, 0.8475",
        "C6H15NO3, 1.8558, 2.2535",
        "C4H11NO3, 1.5069, 1.8298",
        "C4H11NO, 1.1088, 1.3464"
    })
    void a_carbomer_by_its_carboxyl_content(String base, String least, String greatest) {
        Interval<Amount<Mass>> needed = CARBOMER.needs(GRAM, mass(base), 1);
        assertThat(four(needed.least())).isEqualTo(least);
        assertThat(four(needed.greatest())).isEqualTo(greatest);
    }

    /** Equal parts of triethanolamine neutralise 44 to 54 % of it, and not the whole. */
    @Test
    void equal_parts_are_not_enough() {
        var share = CARBOMER.neutralised(GRAM, GRAM, mass("C6H15NO3"), 1);
        assertThat(Rounding.toDecimalPlaces(0).format(share.least().percent())).isEqualTo("44");
        assertThat(Rounding.toDecimalPlaces(0).format(share.greatest().percent()))
                .isEqualTo("54");
        assertThat(CARBOMER.neutralised(GRAM, Amount.mass("3 g"), mass("C6H15NO3"), 1))
                .hasToString("[100 %, 100 %]");
    }

    /** By molar masses: stearic acid takes 0.5244 g of triethanolamine, 0.14060 g of NaOH; lactic acid 0.44403 g of NaOH. */
    @Test
    void substances_by_their_molar_masses() {
        assertThat(four(Neutralisation.of(mass("C18H36O2"), 1)
                        .needs(GRAM, mass("C6H15NO3"), 1)
                        .least()))
                .isEqualTo("0.5244");
        assertThat(four(Neutralisation.of(mass("C18H36O2"), 1)
                        .needs(GRAM, NAOH, 1)
                        .least()))
                .isEqualTo("0.1406");
        assertThat(four(Neutralisation.of(mass("C3H6O3"), 1)
                        .needs(GRAM, NAOH, 1)
                        .least()))
                .isEqualTo("0.4440");
        assertThat(four(Neutralisation.of(mass("C6H8O7"), 3)
                        .needs(GRAM, mass("Ca(OH)2"), 2)
                        .least()))
                .as("three protons by hand: 3/192.12352 * 74.09268/2")
                .isEqualTo("0.5785");
    }

    /** An acid value is the KOH itself. */
    @Test
    void fatty_acids_by_their_acid_value() {
        Neutralisation acids = Neutralisation.ofAcidValue("194 mg KOH/g", "212 mg KOH/g");
        assertThat(acids.needs(Amount.mass("100 g"), mass("KOH"), 1)).hasToString("[19.4 g, 21.2 g]");
    }

    private static String four(Amount<Mass> mass) {
        return Rounding.toDecimalPlaces(4).format(mass.canonical());
    }

    @Test
    void what_is_no_acid_or_base_is_refused() {
        assertThatThrownBy(() -> Neutralisation.ofAcidValue("194", "212 mg KOH/g"))
                .hasMessageContaining("needs its unit");
        assertThatThrownBy(() -> Neutralisation.ofCarboxyl("68 %", "56 %")).hasMessageContaining("exchanged");
        assertThatThrownBy(() -> Neutralisation.of(NAOH, 0)).hasMessageContaining("at least 1");
        assertThatThrownBy(() -> CARBOMER.needs(GRAM, NAOH, 0)).hasMessageContaining("at least 1 proton");
        assertThatThrownBy(() ->
                        Neutralisation.ofAcidValue("0 mg KOH/g", "1 mg KOH/g").neutralised(GRAM, GRAM, NAOH, 1))
                .hasMessageContaining("raise its least value");
    }
}
