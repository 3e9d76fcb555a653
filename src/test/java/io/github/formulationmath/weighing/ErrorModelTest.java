package io.github.formulationmath.weighing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.formulationmath.number.Bounds;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.simulation.InputQuantity.Law;
import io.github.formulationmath.support.ValueContract;
import java.util.List;
import org.junit.jupiter.api.Test;

class ErrorModelTest implements ValueContract<ErrorModel> {

    private static final ErrorModel NONE = ErrorModel.readabilityOnly();

    @Override
    public List<ErrorModel> different() {
        return List.of(
                NONE,
                NONE.withRepeatability("0.1 g"),
                NONE.withLinearityOfNetReading("0.1 g"),
                NONE.withLinearityOfNetReading(Amount.mass("0.1 g"), Law.TRIANGULAR),
                NONE.withLinearityOfIndication("0.1 g"),
                NONE.withCalibration(Ratio.of(1, 1000)),
                NONE.withTareResolution(Amount.mass("0.1 g")),
                NONE.withResidue(Amount.mass("0 g"), Amount.mass("0.1 g")),
                NONE.withResidue(Amount.mass("0.1 g"), Amount.mass("0.1 g")),
                NONE.withBuoyancy(Bounds.closed(Ratio.ZERO, Ratio.of(1, 1000))));
    }

    @Override
    public List<ErrorModel> same() {
        return List.of(
                NONE.withRepeatability("1 g").withRepeatability("0 g"),
                NONE.withRepeatability(Amount.mass("0.10 g")),
                NONE.withLinearityOfNetReading(Amount.mass("0.10 g"), Law.RECTANGULAR),
                NONE.withLinearityOfNetReading(Amount.mass("0.10 g"), Law.TRIANGULAR),
                NONE.withLinearityOfIndication(Amount.mass("0.10 g"), Law.RECTANGULAR),
                NONE.withCalibration(Ratio.parse("0.001")),
                NONE.withTareResolution(Amount.mass("0.10 g")),
                NONE.withResidue(Amount.mass("0 g"), Amount.mass("0.10 g")),
                NONE.withResidue(Amount.mass("0.10 g"), Amount.mass("0.10 g")),
                NONE.withBuoyancy(Bounds.closed(Ratio.ZERO, Ratio.parse("0.001"))));
    }

    @Test
    void what_is_0_is_as_if_it_were_not_said() {
        assertThat(NONE.withCalibration(Ratio.ZERO)).isEqualTo(NONE);
        assertThat(NONE.withLinearityOfIndication("0 g")).isEqualTo(NONE.withLinearityOfNetReading("0 g"));
        assertThat(NONE.withLinearityOfIndication("0 g").linearityBasis()).isEmpty();
        assertThat(NONE.withLinearityOfIndication("1 g").linearityBasis()).contains(LinearityBasis.INDICATION);
        assertThat(NONE.withLinearityOfNetReading("1 g").linearityBasis()).contains(LinearityBasis.NET_READING);
        assertThat(NONE.tareResolution()).isEmpty();
        assertThat(NONE.withTareResolution(Amount.mass("0.01 g")).tareResolution())
                .contains(Amount.mass("0.01 g"));
    }

    @Test
    void refusals() {
        Amount<javax.measure.quantity.Mass> negative = Amount.mass("-0.1 g");
        Amount<javax.measure.quantity.Mass> one = Amount.mass("1 g");
        assertThatThrownBy(() -> NONE.withRepeatability(negative)).hasMessageContaining("standardDeviation is -0.1 g");
        assertThatThrownBy(() -> NONE.withLinearityOfNetReading(negative)).hasMessageContaining("halfWidth is -0.1 g");
        assertThatThrownBy(() -> NONE.withLinearityOfNetReading(one, Law.NORMAL))
                .hasMessageContaining("law is NORMAL");
        assertThatThrownBy(() -> NONE.withCalibration(Ratio.ONE)).hasMessageContaining("relativeStandardUncertainty");
        assertThatThrownBy(() -> NONE.withCalibration(Ratio.of(-1)))
                .hasMessageContaining("relativeStandardUncertainty");
        assertThatThrownBy(() -> NONE.withTareResolution(negative)).hasMessageContaining("step is -0.1 g");
        assertThatThrownBy(() -> NONE.withResidue(negative, one)).hasMessageContaining("least is -0.1 g");
        assertThatThrownBy(() -> NONE.withResidue(one, Amount.mass("0.5 g"))).hasMessageContaining("exchanged");
        assertThatThrownBy(() -> NONE.withBuoyancy(Bounds.atLeast(Ratio.ZERO)))
                .hasMessageContaining("relativeCorrection");
        assertThatThrownBy(() -> NONE.withBuoyancy(Bounds.closed(Ratio.of(-1), Ratio.ZERO)))
                .hasMessageContaining("relativeCorrection");
    }

    @Test
    void its_text_says_every_figure_and_of_what_the_linearity_is() {
        assertThat(NONE)
                .hasToString("repeatability 0, linearity 0 RECTANGULAR, calibration 0, tare as the display, "
                        + "residue 0 to 0, buoyancy [0, 0]");
        assertThat(NONE.withRepeatability("0.05 g")
                        .withLinearityOfIndication(Amount.mass("0.1 g"), Law.TRIANGULAR)
                        .withCalibration(Ratio.of(1, 1000))
                        .withTareResolution(Amount.mass("0.02 g"))
                        .withResidue(Amount.mass("0 g"), Amount.mass("0.2 g"))
                        .withBuoyancy(Bounds.closed(Ratio.ZERO, Ratio.of(1, 1000))))
                .hasToString("repeatability 0.05 g, linearity 0.1 g TRIANGULAR of an indication, calibration 0.001, "
                        + "tare 0.02 g, residue 0 to 0.2 g, buoyancy [0, 0.001]");
        assertThat(NONE.withLinearityOfNetReading("0.1 g").toString())
                .contains("linearity 0.1 g RECTANGULAR of a net reading,");
    }

    @Test
    void nothing_is_told_alike_in_any_unit() {
        assertThat(NONE.withRepeatability("0 kg").withLinearityOfIndication("0 oz"))
                .hasToString(NONE.toString());
    }
}
