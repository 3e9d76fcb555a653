package io.github.formulationmath.chemistry;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.number.Rounding;
import java.math.RoundingMode;
import org.junit.jupiter.api.Test;

/** Factors that textbooks print. */
class PublishedFactorsTest {

    private static Ratio grams(String formula) {
        return MolarMass.of(MolecularFormula.parse(formula)).gramsPerMole();
    }

    private static String shown(Ratio value, int places, RoundingMode mode) {
        return Rounding.toDecimalPlaces(places).with(mode).format(value);
    }

    private static String shown(Ratio value, int places) {
        return shown(value, places, RoundingMode.HALF_EVEN);
    }

    /** The same book: "fatty acids to anhydrides × 0.9875". Two acids lose one water, of oleic acid 0.968: a misprint of 0.9675. */
    @Test
    void a_printed_factor_is_a_misprint() {
        Ratio oleic = grams("C18H34O2").times(2);
        Ratio factor = oleic.minus(grams("H2O")).dividedBy(oleic);
        assertThat(shown(factor, 3)).isEqualTo("0.968");
        assertThat(factor.minus(Ratio.parse("0.9675")).abs()).isLessThan(Ratio.parse("0.001"));
        assertThat(factor.minus(Ratio.parse("0.9875")).abs()).isGreaterThan(Ratio.parse("0.019"));
    }

    /** luyentap365.com: a tonne of fat with 89 % tristearin gives 918 kg of sodium stearate; exactly 917.851. */
    @Test
    void a_tonne_of_tristearin() {
        Ratio soap = Ratio.of(890).dividedBy(grams("C57H110O6")).times(3).times(grams("C18H35NaO2"));
        assertThat(shown(soap, 3)).isEqualTo("917.851");
        assertThat(shown(soap, 0)).isEqualTo("918");
    }

    /** Simmons and Appleton, Appendix C: 25.526 % Na2O are 32.930 % NaOH, a ratio of 1.2901; exactly 1.29067. */
    @Test
    void caustic_soda_by_its_oxide() {
        Ratio ratio = grams("HNaO").times(2).dividedBy(grams("Na2O"));
        assertThat(shown(ratio, 5)).isEqualTo("1.29067");
        assertThat(Ratio.parse("25.526")
                        .times(ratio)
                        .minus(Ratio.parse("32.930"))
                        .abs())
                .isLessThan(Ratio.parse("0.02"));
    }
}
