package io.github.formulationmath.limit;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.formulationmath.csv.CsvFormat;
import io.github.formulationmath.csv.CsvRow;
import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.support.Checkers;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** Names as suppliers write them, each in a formula of its own without any CAS number; what is expected stands in the file. */
class NamesAsWrittenTest {

    private static final Pattern ENTRY = Pattern.compile("Annex ([IVX]+), entry ([0-9]+[a-z]*)");

    private static List<CsvRow> rows() throws IOException {
        try (InputStream in =
                Objects.requireNonNull(NamesAsWrittenTest.class.getResourceAsStream("names-as-written.csv"))) {
            return CsvFormat.of(List.of("written", "expected"))
                    .withCommentHead()
                    .read("names-as-written.csv", in)
                    .rows();
        }
    }

    private static LimitReport check(String name) {
        return Checkers.LEAVE_ON.check(Formula.inPercent("Trial")
                .quantitySufficient("Carrier of the trial")
                .line(name, "2 %")
                .build());
    }

    private static Set<String> entries(LimitReport report) {
        Set<String> found = new TreeSet<>();
        Stream.concat(
                        report.verdicts().stream()
                                .map(verdict -> verdict.limit().citation()),
                        Stream.of(report.outOfScope(), report.mentioned())
                                .flatMap(List::stream)
                                .flatMap(finding -> finding.limits().stream())
                                .map(UsageLimit::citation))
                .map(Citation::text)
                .forEach(text -> {
                    Matcher entry = ENTRY.matcher(text);
                    while (entry.find()) {
                        found.add(entry.group(1) + " " + entry.group(2));
                    }
                });
        report.notTranscribed().stream()
                .flatMap(finding -> finding.entries().stream())
                .forEach(entry -> found.add(entry.annex() + " " + entry.number()));
        return found;
    }

    @Test
    @DisplayName("of 330 names at least 85 % are found or rightly unknown, all others have a suggestion")
    void names_as_written() throws IOException {
        List<String> wrong = new ArrayList<>();
        List<String> silent = new ArrayList<>();
        int right = 0;
        for (CsvRow row : rows()) {
            String name = row.text("written");
            LimitReport report = check(name);
            Set<String> found = entries(report);
            boolean suggested = report.suggestions().keySet().stream()
                    .anyMatch(substance -> !substance.name().equals("Carrier of the trial"));
            boolean good = switch (row.text("expected")) {
                case "unknown" -> found.isEmpty() && !suggested;
                case "suggest" -> found.isEmpty() && suggested;
                default -> found.contains(row.text("expected"));
            };
            right += good ? 1 : 0;
            if (!good) {
                (found.isEmpty() && !suggested ? silent : wrong)
                        .add(name + " -> " + found + report.suggestions() + ", expected " + row.text("expected"));
            }
        }
        assertThat(silent).isEmpty();
        assertThat(wrong).isEmpty();
        assertThat(right).isGreaterThanOrEqualTo(rows().size() * 85 / 100);
    }
}
