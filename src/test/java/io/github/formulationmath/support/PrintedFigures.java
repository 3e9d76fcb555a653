package io.github.formulationmath.support;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.number.Rounding;
import java.math.BigDecimal;

/** Figures as a publication prints them. */
public final class PrintedFigures {

    private PrintedFigures() {}

    /** Within half a unit of the last printed digit. */
    public static void assertPrinted(Ratio value, String printed) {
        int places = Math.max(0, new BigDecimal(printed).scale());
        assertThat(value.minus(Ratio.parse(printed)).abs())
                .as(value.doubleValue() + " printed as " + printed)
                .isLessThanOrEqualTo(
                        Rounding.toDecimalPlaces(places).stepFor(Ratio.ONE).dividedBy(2));
    }
}
