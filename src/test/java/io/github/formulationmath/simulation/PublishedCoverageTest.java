package io.github.formulationmath.simulation;

import static io.github.formulationmath.support.PrintedFigures.assertPrinted;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.number.Rounding;
import io.github.formulationmath.reference.ReferenceTable;
import io.github.formulationmath.reference.ReferenceTable.Row;
import io.github.formulationmath.simulation.InputQuantity.Law;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Coverage factors and laws against published tables. */
@DisplayName("Budgets of uncertainty as published")
class PublishedCoverageTest {

    /** The table prints 1.70; the quantile is 1.6896. */
    private static final String MISPRINTED = "35 90";

    /**
     * What the normal law holds within 1, 2 and 3 standard deviations: the columns so headed were reckoned with these and not with the
     * four digits printed, which for one degree of freedom would give 235.78 and not 235.80.
     */
    private static final Map<String, String> ONE_TWO_THREE =
            Map.of("68.27", "68.268949213708590", "95.45", "95.449973610364159", "99.73", "99.730020393673981");

    @Test
    void students_law_as_in_the_table() {
        for (ReferenceTable.Row row :
                ReferenceTable.read("shared/reference/student-t.csv").rows()) {
            String percent = row.text("probability_percent");
            Ratio p = Ratio.parse(ONE_TWO_THREE.getOrDefault(percent, percent)).dividedBy(100);
            String degrees = row.text("degrees_of_freedom");
            CoverageFactor factor = degrees.equals("inf")
                    ? CoverageFactor.normal(p)
                    : CoverageFactor.student(p, Long.parseLong(degrees));
            if (MISPRINTED.equals(degrees + " " + percent)) {
                assertThat(row.text("t")).isEqualTo("1.70");
                assertPrinted(factor.factor(), "1.69");
            } else {
                assertPrinted(factor.factor(), row.text("t"));
            }
        }
    }

    /** JCGM 100:2008, F.2.2.1, 4.3.7, 4.4.5, 4.4.6. */
    @ParameterizedTest
    @MethodSource("gumRoundings")
    void standard_uncertainty_of_a_law(Row row) {
        String shape = row.text("shape");
        boolean twoReadings = shape.equals("difference of two readings");
        Law law = shape.equals("triangular") ? Law.TRIANGULAR : Law.RECTANGULAR;
        Ratio variance = law.variance(Ratio.of(row.decimal("half_width"))).times(twoReadings ? 2 : 1);
        BigDecimal expected = row.decimal("expected");
        assertThat(variance.sqrt(17).rounded(Rounding.toDecimalPlaces(expected.scale())))
                .isEqualTo(Ratio.of(expected));
    }

    /** JCGM 100:2008, table G.1. */
    @Test
    void coverage_factors_of_the_normal_law() {
        for (Row row : rows("gum-coverage")) {
            if (row.text("shape").equals("normal")) {
                CoverageFactor factor = CoverageFactor.normal(
                        Ratio.of(row.decimal("probability_percent")).dividedBy(100));
                // Some rows print a rounded probability for a whole k, so that k comes back to within half a unit of
                // its third decimal.
                assertThat(factor.factor().doubleValue())
                        .isCloseTo(row.decimal("k").doubleValue(), within(0.0005));
            }
        }
        assertThat(CoverageFactor.normal(Ratio.parse("0.95")).factor().rounded(Rounding.toDecimalPlaces(3)))
                .isEqualTo(Ratio.parse("1.96"));
        assertThatThrownBy(() -> CoverageFactor.normal(Ratio.ONE)).hasMessageContaining("probability");
        assertThatThrownBy(() -> CoverageFactor.normal(Ratio.parse("1e-30"))).hasMessageContaining("probability");
        assertThatThrownBy(() -> CoverageFactor.of(0)).hasMessageContaining("factor");
    }

    static List<Row> rows(String table) {
        return ReferenceTable.read("shared/reference/" + table + ".csv").rows();
    }

    static Stream<Row> gumRoundings() {
        return rows("gum-rounding").stream();
    }
}
