package io.github.formulationmath.limit;

import static io.github.formulationmath.limit.SnapshotTable.field;
import static org.assertj.core.api.Assertions.assertThat;

import io.github.formulationmath.formula.Formula;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
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
        CSVFormat format = CSVFormat.RFC4180
                .builder()
                .setCommentMarker('#')
                .setHeader()
                .setSkipHeaderRecord(true)
                .get();
        try (BufferedReader reader = Files.newBufferedReader(Path.of("src/test/resources/limit/scope-cases.csv"))) {
            return format.parse(reader).stream().map(CSVRecord::toMap).toList().stream();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @ParameterizedTest
    @MethodSource("cases")
    void the_finding_is_the_one_that_the_printed_words_give(Map<String, String> row) {
        LimitReport report = LimitChecker.of(LimitTable.eu2024February(), product(row), DecisionRule.worstCase())
                .check(Formula.inPercent("F")
                        .quantitySufficient("Aqua")
                        .line(field(row, "ingredient"), field(row, "percent") + " %")
                        .build());
        assertThat(finding(report, field(row, "entry")))
                .as("%s: %s", row, report)
                .isEqualTo(field(row, "finding"));
    }

    private static String finding(LimitReport report, String entry) {
        List<Verdict> own = report.verdicts().stream()
                .filter(verdict -> verdict.limit().kind().restrictsContents())
                .filter(verdict -> verdict.limit().entry().startsWith(entry + " "))
                .toList();
        if (has(own, verdict -> verdict.conformity() == Conformity.PROHIBITED)) {
            return "prohibited";
        }
        if (has(own, verdict -> verdict.conformity() == Conformity.EXCEEDS)) {
            return "exceeds";
        }
        if (has(own, verdict -> verdict.conformity() == Conformity.NOT_ASSESSABLE)) {
            return "unsure";
        }
        boolean read = report.outOfScope().stream()
                .filter(finding -> !finding.otherPurpose() && finding.mustBeRead())
                .flatMap(finding -> finding.limits().stream())
                .anyMatch(limit -> limit.entry().startsWith(entry + " "));
        return has(own, verdict -> verdict.applicability() == Applicability.APPLIES)
                ? "within"
                : read || !own.isEmpty() ? "open" : "silent";
    }

    private static boolean has(List<Verdict> verdicts, Predicate<Verdict> what) {
        return verdicts.stream().anyMatch(what);
    }

    private static Product product(Map<String, String> row) {
        Product product = field(row, "use").equals("leave_on") ? Product.leaveOn() : Product.rinseOff();
        product = product.on(field(row, "areas")).ofKind(field(row, "kinds")).inForm(field(row, "forms"));
        String age = field(row, "age");
        String user = field(row, "user").isEmpty() ? "general" : field(row, "user");
        product = age.isEmpty() ? product.forUsers(user) : product.forUsers(user, word(Integer.parseInt(age)));
        return field(row, "purpose").isEmpty()
                ? product
                : product.using(field(row, "ingredient"), field(row, "purpose"));
    }

    private static String word(int age) {
        return switch (age) {
            case 0 -> "under_3";
            case 12 -> "from_10";
            default -> "from_" + age;
        };
    }
}
