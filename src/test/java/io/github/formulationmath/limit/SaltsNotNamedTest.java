package io.github.formulationmath.limit;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.reckoning.Wording;
import io.github.formulationmath.support.Checkers;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** "X and its salts" means salts that the entry does not print: they are told of, and what is no salt of X is left alone. */
class SaltsNotNamedTest {

    private static LimitReport check(String name) {
        Product cream = Product.leaveOn()
                .on("face")
                .ofKind("face_cream")
                .inForm("cream")
                .forUsers("adults");
        return Checkers.of(cream)
                .check(Formula.inPercent("F")
                        .quantitySufficient("Aqua")
                        .line(name, "1 %")
                        .build());
    }

    @ParameterizedTest
    @CsvSource({
        "Lithium Benzoate, V 1a",
        "TEA-Benzoate, V 1a",
        "Zinc Salicylate, V 3",
        "Lithium Sorbate, V 4",
        "Hexamidine Dihydrochloride, V 47",
        "Phenyl Mercuric Nitrate, V 17",
        "Quinine Sulfate, III 21",
        "Zinc Phosphate, III 24",
    })
    void a_salt_that_the_entry_does_not_print_is_told_of(String name, String entry) {
        LimitReport report = check(name);
        assertThat(report.outcome()).isGreaterThanOrEqualTo(LimitOutcome.CONDITIONS_OPEN);
        assertThat(report.mentioned())
                .filteredOn(finding -> finding.why() == LimitReport.Uncounted.Why.MAY_BE_MEANT)
                .flatExtracting(LimitReport.Uncounted::limits)
                .extracting(UsageLimit::place)
                .contains(entry);
        assertThat(report.describe(Wording.english()))
                .anyMatch(line -> line.startsWith(name + ": an entry on salts does not name it"));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "Sodium Acetate",
                "Sodium Chloride",
                "Sodium Citrate",
                "Sodium Lactate",
                "Sodium PCA",
                "Magnesium Stearate",
                "Magnesium Sulfate",
                "Zinc Stearate",
                "Zinc Ricinoleate",
                "Calcium Carbonate",
                "Calcium Chloride",
                "Ammonium Lauryl Sulfate",
                "Copper Gluconate",
                "Potassium Cetyl Phosphate",
                "C12-15 Alkyl Benzoate",
                "Polysorbate 20",
                "Phenyl Trimethicone",
                "Sodium Benzoate",
                "Potassium Sorbate",
                "Dimethyl Ether",
                "Dimethyl Isosorbide",
                "Zinc Oxide (nano), coated",
                "Zinc Phenolsulfonate"
            })
    void what_is_no_such_salt_or_is_printed_is_not_guessed_at(String name) {
        List<LimitReport.Uncounted> guessed = check(name).mentioned().stream()
                .filter(finding -> finding.why() == LimitReport.Uncounted.Why.MAY_BE_MEANT)
                .toList();
        assertThat(guessed).isEmpty();
    }
}
