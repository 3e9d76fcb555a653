package io.github.formulationmath.limit;

import static io.github.formulationmath.limit.SnapshotTable.field;
import static org.assertj.core.api.Assertions.assertThat;

import io.github.formulationmath.formula.Formula;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Cases read from the raw text and written down before the rows were mended: an entry, a product, an amount, and what the
 * printed words say of it (Regulation (EC) No 1223/2009, Annexes III, V and VI, state of 25 February 2024).
 */
@DisplayName("Cases read from the raw text of the annexes")
final class ScopeCasesTest {

    static Stream<Map<String, String>> cases() {
        return ReadCase.in("scope-cases.csv").stream();
    }

    @ParameterizedTest
    @MethodSource("cases")
    void the_finding_is_the_one_that_the_printed_words_give(Map<String, String> row) {
        LimitReport report = LimitChecker.of(
                        LimitTable.eu2024February(),
                        ReadCase.using(ReadCase.product(row), row),
                        DecisionRule.worstCase())
                .check(ReadCase.line(Formula.inPercent("F").quantitySufficient("Aqua"), row)
                        .build());
        assertThat(ReadCase.ofEntry(report, field(row, "entry")))
                .as("%s: %s", row, report)
                .isEqualTo(field(row, "finding"));
    }
}
