package io.github.formulationmath.soap;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.formulationmath.csv.CsvException;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.MassFraction;
import io.github.formulationmath.reference.ReferenceTable;
import io.github.formulationmath.reference.ReferenceTable.Row;
import java.io.StringReader;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.HashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class AlkaliGradeTableTest {

    private static final String HEADER = "alkali,assay_least,assay_greatest,carbonate_least,carbonate_greatest,locator,"
            + "read_at,read_on,source,tag\n";

    private final AlkaliGradeTable table = AlkaliGradeTable.bundled();

    /** Least hydroxide: assay − 2 M(hydroxide)/M(carbonate) · carbonate, from the atomic masses in the tests' own arithmetic. */
    @ParameterizedTest
    @CsvSource({
        "SODIUM_HYDROXIDE, USP 35, 95.0, 3.0, Na, 92.736",
        "SODIUM_HYDROXIDE, British, 97.0, 2.0, Na, 95.491",
        "POTASSIUM_HYDROXIDE, National Formulary, 85.0, 3.5, K, 82.158"
    })
    void the_least_hydroxide_is_the_assay_less_its_carbonate(
            Alkali alkali, String work, BigDecimal assay, BigDecimal carbonate, String metal, BigDecimal expected) {
        Map<String, BigDecimal> masses = masses();
        BigDecimal hydroxide = masses.get(metal).add(masses.get("O")).add(masses.get("H"));
        BigDecimal salt = masses.get(metal)
                .multiply(BigDecimal.valueOf(2))
                .add(masses.get("C"))
                .add(masses.get("O").multiply(BigDecimal.valueOf(3)));
        BigDecimal counted =
                carbonate.multiply(hydroxide).multiply(BigDecimal.valueOf(2)).divide(salt, MathContext.DECIMAL128);
        BigDecimal least = assay.subtract(counted);
        assertThat(least).isCloseTo(expected, within(new BigDecimal("0.0005")));

        AlkaliGrade grade = table.grade(alkali, work);

        Ratio percent = grade.hydroxide().least().fraction().times(100);
        assertThat(percent.minus(Ratio.of(least)).abs()).isLessThan(Ratio.parse("0.000000000000000001"));
        assertThat(grade.hydroxide().greatest()).isEqualTo(MassFraction.WHOLE);
        assertThat(grade.evidence()).isEqualTo(Evidence.CONFORMS_TO_STANDARD);
        assertThat(grade.source().citation()).contains("monograph").contains("2026-11-26");
    }

    @Test
    void the_choice_of_the_pharmacopoeia_is_the_callers() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> table.grade(Alkali.SODIUM_HYDROXIDE, ""))
                .withMessageContaining("fits 2 rows")
                .withMessageContaining("USP 35-NF 30");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> table.grade(Alkali.POTASSIUM_HYDROXIDE, "USP 35"))
                .withMessageContaining("fits 0 rows")
                .withMessageContaining("AlkaliGrade.assay");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "sodium hydroxide,98,101.5,0,1,m,b,2026-11-20,W,SEEN|at most at 101 %",
                "sodium hydroxide,99,98,0,1,m,b,2026-11-20,W,SEEN|assay_greatest",
                "sodium hydroxide,55,100,0,99,m,b,2026-11-20,W,SEEN|same lot",
                "soda,98,100,0,1,m,b,2026-11-20,W,SEEN|sodium hydroxide, potassium hydroxide",
                "sodium hydroxide,98,100,0,,m,b,2026-11-20,W,SEEN|carbonate_greatest",
                "sodium hydroxide,98,100,0,1,m,b,2026-11-20,W,MEMORY|SEEN, SEEN-2ND",
            })
    void a_row_that_cannot_be_is_refused_with_its_place(String row, String remedy) {
        assertThatThrownBy(() -> AlkaliGradeTable.read("mine", new StringReader(HEADER + row + "\n")))
                .isInstanceOf(CsvException.class)
                .hasMessageContaining("mine, line 2, column ")
                .hasMessageContaining(remedy);
    }

    private static Map<String, BigDecimal> masses() {
        Map<String, BigDecimal> masses = new HashMap<>();
        for (Row row : ReferenceTable.read("shared/chemistry/atomic-masses.csv").rows()) {
            masses.put(row.text("symbol"), row.decimal("atomic_mass"));
        }
        return masses;
    }
}
