package io.github.formulationmath.reference;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.formulationmath.reference.ReferenceTable.Row;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The check values themselves: each table states where it comes from, and derived rows follow from the seen ones. */
@DisplayName("Tables of check values")
final class ReferenceTablesTest {

    private static final Pattern ATOM = Pattern.compile("([A-Z][a-z]?)(\\d*)");

    static List<ReferenceTable> tables() {
        return ReferenceTable.all();
    }

    @ParameterizedTest
    @MethodSource("tables")
    void every_table_states_its_source_and_tolerance_and_every_row_its_tag(ReferenceTable table) {
        assertThat(table.provenance()).anyMatch(line -> line.startsWith("source: "));
        assertThat(table.provenance()).anyMatch(line -> line.startsWith("tag: "));
        assertThat(table.provenance()).anyMatch(line -> line.startsWith("declared tolerance for tests: "));
        assertThat(table.columns()).endsWith("source", "tag");
        assertThat(table.rows()).isNotEmpty().allSatisfy(row -> {
            assertThat(row.fields()).hasSize(table.columns().size());
            assertThat(row.text("source")).isNotBlank();
            assertThat(row.text("tag")).isIn("SEEN", "SEEN-FILE", "SEEN-CITED", "SEEN-2ND", "DERIVED", "MEMORY");
        });
    }

    @Test
    void unit_factors_agree_with_one_another() {
        Map<String, BigDecimal> unit = new HashMap<>();
        ReferenceTable.read("shared/reference/units.csv")
                .rows()
                .forEach(row -> unit.put(row.text("unit"), row.decimal("value")));

        assertThat(times(unit, "avoirdupois ounce", 16)).isEqualByComparingTo(unit.get("avoirdupois pound"));
        assertThat(times(unit, "grain", 7)).isEqualByComparingTo(unit.get("avoirdupois pound"));
        assertThat(times(unit, "US fluid dram", 8)).isEqualByComparingTo(unit.get("US fluid ounce"));
        assertThat(times(unit, "US fluid ounce", 16)).isEqualByComparingTo(unit.get("US pint"));
        assertThat(times(unit, "US fluid ounce", 8)).isEqualByComparingTo(unit.get("US cup"));
        assertThat(times(unit, "US tablespoon", 2)).isEqualByComparingTo(unit.get("US fluid ounce"));
        assertThat(times(unit, "US teaspoon", 3)).isEqualByComparingTo(unit.get("US tablespoon"));
        assertThat(times(unit, "imperial fluid ounce", 160))
                .isEqualByComparingTo(unit.get("imperial gallon").movePointRight(3));
    }

    @Test
    void as_acid_factors_follow_from_the_atomic_masses() {
        Map<String, BigDecimal> masses = new HashMap<>();
        ReferenceTable.read("shared/chemistry/atomic-masses.csv")
                .rows()
                .forEach(row -> masses.put(row.text("symbol"), row.decimal("atomic_mass")));

        for (Row row :
                ReferenceTable.read("shared/reference/as-acid-factors.csv").rows()) {
            BigDecimal salt = molarMass(row.text("formula"), masses);
            BigDecimal acid = molarMass(row.text("acid_formula"), masses);
            BigDecimal asSalt =
                    row.decimal("limit_as_acid_percent").multiply(salt).divide(acid, MathContext.DECIMAL64);

            assertThat(roundedLike(salt, row.text("molar_mass"))).isEqualTo(row.text("molar_mass"));
            assertThat(roundedLike(acid, row.text("acid_molar_mass"))).isEqualTo(row.text("acid_molar_mass"));
            assertThat(roundedLike(acid.divide(salt, MathContext.DECIMAL64), row.text("factor")))
                    .isEqualTo(row.text("factor"));
            assertThat(roundedLike(asSalt, row.text("limit_as_salt_percent")))
                    .isEqualTo(row.text("limit_as_salt_percent"));
        }
    }

    @Test
    void the_census_adds_up_and_each_state_gets_its_quota_or_one_more() {
        List<Row> states = ReferenceTable.read("shared/reference/largest-remainder-census-1790.csv")
                .rows();
        long people = states.stream()
                .mapToLong(row -> row.decimal("population").longValueExact())
                .sum();
        assertThat(people).isEqualTo(3_615_920);
        assertThat(states.stream().mapToInt(row -> row.decimal("seats").intValueExact()))
                .satisfies(seats -> assertThat(
                                seats.stream().mapToInt(Integer::intValue).sum())
                        .isEqualTo(60));
        assertThat(states).allSatisfy(row -> {
            long quota = row.decimal("population").longValueExact() * 60 / people;
            assertThat(row.decimal("seats").longValueExact()).isBetween(quota, quota + 1);
        });
    }

    @Test
    void error_bands_join_without_gap_and_grow() {
        List<Row> bands = ReferenceTable.read("shared/reference/r76-maximum-permissible-errors.csv")
                .rows();
        assertThat(bands).hasSize(12);
        for (int i = 1; i < bands.size(); i++) {
            Row before = bands.get(i - 1);
            Row row = bands.get(i);
            if (row.text("class").equals(before.text("class"))) {
                assertThat(row.text("load_above_e")).isEqualTo(before.text("load_up_to_e"));
                assertThat(row.decimal("error_e")).isGreaterThan(before.decimal("error_e"));
            }
        }
    }

    private static BigDecimal times(Map<String, BigDecimal> units, String name, int factor) {
        return units.getOrDefault(name, BigDecimal.ZERO).multiply(BigDecimal.valueOf(factor));
    }

    private static BigDecimal molarMass(String formula, Map<String, BigDecimal> masses) {
        BigDecimal sum = BigDecimal.ZERO;
        Matcher atom = ATOM.matcher(formula);
        while (atom.find()) {
            BigDecimal count = atom.group(2).isEmpty() ? BigDecimal.ONE : new BigDecimal(atom.group(2));
            sum = sum.add(masses.getOrDefault(atom.group(1), BigDecimal.ZERO).multiply(count));
        }
        return sum;
    }

    private static String roundedLike(BigDecimal value, String printed) {
        return value.setScale(new BigDecimal(printed).scale(), RoundingMode.HALF_EVEN)
                .toPlainString();
    }
}
