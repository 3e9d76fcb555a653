package io.github.formulationmath.limit;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.reckoning.Wording;
import io.github.formulationmath.support.Checkers;
import io.github.formulationmath.support.HandWeighed;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.weighing.WeighingMethod;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a person reads: short lines, ties told, room in percent and in grams, each thing said once. */
class ReportForPeopleTest {

    private static final LimitChecker CHECKER = Checkers.of(Checkers.FACE_CREAM);

    private static Formula salt(String percent) {
        return Formula.inPercent("F")
                .quantitySufficient("Aqua")
                .line("Sodium Benzoate", percent)
                .build();
    }

    /** 0.59 · 122.1213 / 144.1032 = 0.500000 to seven digits; the next figures are well apart. */
    @ParameterizedTest
    @CsvSource({"0.59 %, true", "0.591 %, false", "0.589 %, false"})
    void a_tie_is_told_as_a_tie(String percent, boolean tie) {
        LimitReport report = CHECKER.check(salt(percent));
        Verdict verdict = report.binding().orElseThrow();
        assertThat(verdict.isTie()).isEqualTo(tie);
        assertThat(String.join("\n", report.describe(Wording.english())).contains("exactly at the limit"))
                .isEqualTo(tie);
        assertThat(String.join("\n", report.describeInFull(Wording.english())).contains("exactly at the limit"))
                .isEqualTo(tie);
    }

    @Test
    void a_share_that_needs_no_molar_mass_is_no_tie() {
        Formula atTheCap = Formula.inPercent("F")
                .quantitySufficient("Aqua")
                .line("Phenoxyethanol", "1 %")
                .build();
        assertThat(CHECKER.check(atTheCap).binding().orElseThrow().isTie()).isFalse();
    }

    /** Every number has the decimal mark of the language, and no English word stands between others. */
    @Test
    void the_room_as_a_reference_is_told_in_the_language() {
        assertThat(String.join("\n", CHECKER.check(salt("0.3 %")).describe(Wording.english())))
                .contains("left in percentage points as benzoic acid: 0.2457");
        assertThat(String.join("\n", CHECKER.check(salt("0.3 %")).describe(Wording.german())))
                .contains("frei in Prozentpunkten als benzoic acid: 0,2457")
                .doesNotContain("0.2")
                .doesNotContain("% as ");
        assertThat(String.join("\n", CHECKER.check(salt("0.3 %")).describe(Wording.french())))
                .contains("marge en points de pourcentage en benzoic acid\u00A0: 0,2457")
                .doesNotContain("0.2")
                .doesNotContain("% as ");
        Formula scented = Formula.inPercent("F")
                .quantitySufficient("Aqua")
                .line("Linalool", "0.05 %")
                .line("Zinc Oxide", "1 %")
                .build();
        assertThat(CHECKER.check(scented).describe(Wording.german())).contains("Anzugeben: LINALOOL 0,05 %");
        assertThat(CHECKER.check(scented).describe(Wording.english()))
                .contains("To be declared: LINALOOL 0.05 %")
                .noneMatch(line -> line.contains(".. "));
    }

    @Test
    void eight_verdicts_stand_in_fifteen_lines_with_the_room_in_percentage_points_and_in_grams() {
        Formula cream = Formula.inPercent("Face cream")
                .quantitySufficient("Aqua")
                .line("Phenoxyethanol", "0.9 %")
                .line("Sodium Benzoate", "0.3 %")
                .line("Potassium Sorbate", "0.2 %")
                .line("Homosalate", "5 %")
                .line("Octocrylene", "8 %")
                .line("Ethylhexyl Salicylate", "4 %")
                .line("Linalool", "0.1 %")
                .line("Limonene", "0.05 %")
                .build();
        LimitReport report = CHECKER.check(
                HandWeighed.exactly(cream, "200 g", Balance.of("0.001 g", "500 g"), WeighingMethod.TARE_EACH));
        assertThat(report.verdicts()).hasSizeGreaterThanOrEqualTo(8);
        List<String> lines = report.describe(Wording.english());
        assertThat(lines).hasSizeLessThanOrEqualTo(15).doesNotHaveDuplicates();
        assertThat(lines)
                .anyMatch(line -> line.startsWith("Phenoxyethanol: 0.9 %, at most 1 %: within")
                        && line.contains("left in percentage points: 0.09946, in this batch 0.198 g")
                        && line.contains("Annex V, entry 29"))
                .anyMatch(line -> line.startsWith("To be declared: ") && line.contains("LINALOOL 0.1 %"))
                .noneMatch(line -> line.contains("LINALOOL") && line.contains("exceeds"));
        assertThat(report.describeInFull(Wording.english())).hasSizeGreaterThan(lines.size());
    }

    @Test
    void what_no_list_knows_is_said_once() {
        Formula formula = Formula.inPercent("F")
                .quantitySufficient("Aqua")
                .line("Glycerin", "3 %")
                .line("Phenoxyethanoll", "0.9 %")
                .line("Parfum", "0.2 %")
                .build();
        List<String> lines = CHECKER.check(formula).describe(Wording.english());
        for (String name : List.of("Aqua", "Glycerin", "Phenoxyethanoll", "Parfum")) {
            assertThat(lines.stream().filter(line -> line.contains(name)))
                    .as(name)
                    .hasSize(1);
        }
    }
}
