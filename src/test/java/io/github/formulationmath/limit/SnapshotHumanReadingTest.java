package io.github.formulationmath.limit;

import static io.github.formulationmath.limit.SnapshotTable.field;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/**
 * The rows of Annex V that no machine reads without guessing, read a second time from the raw export and entered here by
 * hand: limit, percent, use, sum rule, basis as printed. A row that leaves or joins the list must be read again.
 */
@DisplayName("The rows that a person had to read were read twice")
final class SnapshotHumanReadingTest {

    private static final List<String> SECOND_READING = List.of(
            "EU-V-3-acid | 0.5 | any | single | acid",
            "EU-V-3-salts | 0.5 | any | sum | acid",
            "EU-V-3-salts-shampoo | 0.5 | any | sum | acid",
            "EU-V-3-both | 0.5 | any | sum | acid",
            "EU-V-7-rinse-off | 0.2 | rinse_off | single | as phenol",
            "EU-V-7-leave-on | 0.15 | leave_on | single | as phenol",
            "EU-V-12-single | 0.4 | any | single | as acid",
            "EU-V-12-mixture | 0.8 | any | sum | as acid",
            "EU-V-12a-sum | 0.14 | leave_on | sum | as acid",
            "EU-V-12a-sum-rinse-off | 0.14 | rinse_off | sum | as acid",
            "EU-V-12a-mixture | 0.8 | leave_on | sum | as acid",
            "EU-V-12a-mixture-rinse-off | 0.8 | rinse_off | sum | as acid",
            "EU-V-16 | 0.007 | any | single | of Hg",
            "EU-V-16-mixture | 0.007 | any | sum | of Hg",
            "EU-V-17 | 0.007 | any | sum | of Hg",
            "EU-V-17-mixture | 0.007 | any | sum | of Hg",
            "EU-V-39 | 0.0015 | rinse_off | sum | of a mixture in the ratio 3:1 of"
                    + " 5-Chloro-2-methyl-isothiazol-3(2H)-one and 2-Methylisothiazol-3(2H)-one",
            "EU-V-53-a | 0.1 | rinse_off | single | ",
            "EU-V-53-b | 0.1 | leave_on | single | ",
            "EU-V-57 | 0.0015 | rinse_off | single | ",
            "EU-V-59 | 0.2 | any | single | ",
            "EU-V-59-silver | 0.0024 | any | single | of silver");

    @Test
    void annex_v_rows_listed_for_human_reading_agree_with_a_second_reading() {
        assertThat(SnapshotTable.LIMITS)
                .filteredOn(row -> field(row, "annex").equals("V"))
                .filteredOn(row -> !field(row, "needs_human_reading").isEmpty())
                .extracting(row -> String.join(
                        " | ",
                        field(row, "limit_id"),
                        field(row, "percent"),
                        field(row, "scope_use"),
                        field(row, "sum_rule"),
                        field(row, "basis_as_printed")))
                .containsExactlyInAnyOrderElementsOf(SECOND_READING);
    }

    @Test
    void a_printed_product_type_that_names_one_use_is_coded_with_that_use() {
        assertThat(codedUses("rinse-off", "leave-on")).hasSizeGreaterThan(20).containsOnly("rinse_off");
        assertThat(codedUses("leave-on", "rinse-off")).hasSizeGreaterThan(10).containsOnly("leave_on");
    }

    @Test
    void a_ban_on_sprays_in_the_conditions_is_coded() {
        assertThat(SnapshotTable.LIMITS)
                .filteredOn(row -> field(row, "conditions").matches("Not to be used in (aerosol|aerosols|sprays).*"))
                .extracting(row -> field(row, "scope_form"))
                .hasSizeGreaterThan(3)
                .containsOnly("not:spray");
    }

    private static List<String> codedUses(String named, String other) {
        return SnapshotTable.LIMITS.stream()
                .filter(row -> !field(row, "kind").equals("declare_above"))
                .filter(row ->
                        !field(row, "limit_id").equals("EU-III-102-d-oral")) // leave-on products and oral products
                .filter(row -> scope(row).contains(named) && !scope(row).contains(other))
                .map(row -> field(row, "scope_use"))
                .toList();
    }

    private static String scope(Map<String, String> row) {
        return field(row, "scope_as_printed")
                .toLowerCase(Locale.ROOT)
                .replace("rinse off", "rinse-off")
                .replace("leave on", "leave-on");
    }
}
