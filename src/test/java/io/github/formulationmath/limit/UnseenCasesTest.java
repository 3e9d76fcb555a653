package io.github.formulationmath.limit;

import static io.github.formulationmath.limit.SnapshotTable.field;
import static org.assertj.core.api.Assertions.assertThat;

import io.github.formulationmath.amendment.AsOf;
import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.FormulaBuilder;
import io.github.formulationmath.formula.Ingredient;
import io.github.formulationmath.formula.Substance;
import io.github.formulationmath.limit.Heard.Word;
import io.github.formulationmath.support.Checkers;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/**
 * Rows, sums, products and names that an independent reader wrote down from the raw text of Annexes II to VI and of later acts
 * before any code, test or coded row was looked at (Regulation (EC) No 1223/2009, state of 25 February 2024, as of 26 November
 * 2026). The figures of the first run, and the reader's own mistakes, stand at the head of each file.
 */
@DisplayName("Cases written from the text before the code was seen")
class UnseenCasesTest {

    private static final AsOf DAY = AsOf.placing(LocalDate.of(2026, 11, 26));

    private static final Set<Word> AGAINST = EnumSet.of(Word.PROHIBITED, Word.EXCEEDS);

    /** The formulas of a file, each with its rows. */
    private static Map<String, List<Map<String, String>>> formulas(String file, String column) {
        Map<String, List<Map<String, String>>> formulas = new LinkedHashMap<>();
        ReadCase.in(file)
                .forEach(row -> formulas.computeIfAbsent(field(row, column), key -> new ArrayList<>())
                        .add(row));
        return formulas;
    }

    private static String[] words(Map<String, String> row, String column) {
        return field(row, column).split(";", -1);
    }

    private static Product product(List<Map<String, String>> rows) {
        Map<String, String> first = rows.get(0);
        Product product = (field(first, "use").equals("leave_on") ? Product.leaveOn() : Product.rinseOff())
                .on(words(first, "areas"))
                .ofKind(words(first, "kinds"))
                .inForm(words(first, "forms"))
                .forUsers(words(first, "users"));
        for (Map<String, String> row : rows) {
            product = ReadCase.using(product, row);
        }
        return product;
    }

    private static Substance substance(Map<String, String> row) {
        Substance named = Substance.of(field(row, "ingredient"));
        return field(row, "cas").isEmpty() ? named : named.withCas(field(row, "cas"));
    }

    private static LimitReport report(List<Map<String, String>> rows) {
        FormulaBuilder formula = Formula.inPercent("Trial").quantitySufficient("Carrier of the trial");
        for (Map<String, String> row : rows) {
            formula.line(Ingredient.of(field(row, "ingredient"), substance(row)), field(row, "percent") + " %");
        }
        return Checkers.of(product(rows)).asOf(DAY).check(formula.build());
    }

    /** What a reader expects; several words if any of them is right. */
    private static Set<Word> expected(Map<String, String> row) {
        return Pattern.compile("\\|")
                .splitAsStream(field(row, "finding"))
                .map(word -> Word.valueOf(word.toUpperCase(Locale.ROOT)))
                .collect(Collectors.toCollection(() -> EnumSet.noneOf(Word.class)));
    }

    /** Findings of each kind of disagreement. */
    private record Count(List<String> tooLenient, List<String> gone, List<String> falseAlarms, List<String> vague) {

        Count() {
            this(new ArrayList<>(), new ArrayList<>(), new ArrayList<>(), new ArrayList<>());
        }

        void add(Map<String, String> row, Set<Word> heard) {
            Set<Word> expected = expected(row);
            String line = heard + " instead of " + expected + ": " + row;
            if (heard.isEmpty()) {
                gone.add(line);
                return;
            }
            Word worst = heard.iterator().next();
            boolean expectsAgainst = expected.stream().anyMatch(AGAINST::contains);
            boolean isRight = expected.contains(worst)
                    || expectsAgainst && AGAINST.contains(worst)
                    || expected.contains(Word.DECLARE) && heard.contains(Word.DECLARE) && !AGAINST.contains(worst)
                    || expected.contains(Word.READ) && worst == Word.WITHIN && heard.contains(Word.CONDITIONS)
                    || expected.contains(Word.NOTHING) && worst.compareTo(Word.READ) > 0
                    || expected.contains(Word.SUGGESTED) && worst.compareTo(Word.SUGGESTED) <= 0;
            if (isRight) {
                return;
            }
            if (AGAINST.contains(worst)) {
                falseAlarms.add(line);
            } else if (worst == Word.READ) {
                vague.add(line);
            } else if (worst == Word.UNKNOWN || worst == Word.SUGGESTED) {
                gone.add(line);
            } else {
                tooLenient.add(line);
            }
        }

        void assertGood(int findings) {
            assertThat(tooLenient).as("too lenient, of " + findings).isEmpty();
            assertThat(gone).as("neither a finding nor rightly unknown").isEmpty();
            assertThat(falseAlarms).as("false alarms").hasSizeLessThanOrEqualTo(findings * 2 / 100);
            assertThat(vague).as("vague").hasSizeLessThanOrEqualTo(findings * 5 / 100);
        }
    }

    @Test
    void rows_below_at_and_above_their_limit_in_and_out_of_scope() {
        List<Map<String, String>> rows = ReadCase.in("unseen-rows.csv");
        Count count = new Count();
        rows.forEach(row -> count.add(row, Heard.of(report(List.of(row)), substance(row))));
        assertThat(rows).hasSizeGreaterThan(500);
        count.assertGood(rows.size());
    }

    @Test
    void sums_ratios_and_combined_limits() {
        Count count = new Count();
        Map<String, List<Map<String, String>>> formulas = formulas("unseen-sums.csv", "row");
        formulas.values().forEach(rows -> {
            LimitReport report = report(rows);
            Set<Word> heard = EnumSet.noneOf(Word.class);
            rows.forEach(row -> heard.addAll(Heard.of(report, substance(row))));
            count.add(rows.get(0), heard);
        });
        count.assertGood(formulas.size() * 2);
    }

    @Test
    void forty_products_as_people_write_them() {
        Count count = new Count();
        Map<String, List<Map<String, String>>> products = formulas("unseen-products.csv", "product");
        products.values().forEach(rows -> {
            LimitReport report = report(rows);
            rows.forEach(row -> count.add(row, Heard.of(report, substance(row))));
        });
        assertThat(products).hasSize(40);
        count.assertGood(ReadCase.in("unseen-products.csv").size());
    }

    @Test
    void names_are_found_or_rightly_unknown_and_the_rest_has_a_suggestion() {
        List<String> lost = new ArrayList<>();
        List<Map<String, String>> rows = ReadCase.in("unseen-names.csv");
        int right = 0;
        for (Map<String, String> row : rows) {
            String name = field(row, "written");
            LimitReport report = Checkers.LEAVE_ON.check(Formula.inPercent("Trial")
                    .quantitySufficient("Carrier of the trial")
                    .line(name, "0.5 %")
                    .build());
            Set<String> entries = entries(report);
            boolean unknown = field(row, "expected").equals("unknown");
            boolean found = Stream.of(field(row, "expected").split("\\|", -1)).anyMatch(entries::contains);
            boolean suggested = report.suggestions().containsKey(Substance.of(name));
            if (unknown ? entries.isEmpty() : found) {
                right++;
            } else if (!suggested || !entries.isEmpty()) {
                lost.add(name + " -> " + entries + " instead of " + field(row, "expected"));
            }
        }
        assertThat(lost).isEmpty();
        assertThat(right).isGreaterThanOrEqualTo(rows.size() * 85 / 100);
    }

    /** The entries that speak of what a formula holds: {@code III 88}. */
    private static Set<String> entries(LimitReport report) {
        Stream<LimitReport.Uncounted> findings = Stream.of(
                        report.outOfScope(),
                        report.notTranscribed(),
                        report.mentioned(),
                        report.mayBeProhibited(),
                        report.colorants())
                .flatMap(List::stream);
        Stream<String> told = findings.flatMap(finding -> Stream.concat(
                finding.limits().stream().map(UsageLimit::place),
                finding.entries().stream().map(entry -> entry.annex() + " " + entry.number())));
        return Stream.concat(
                        report.verdicts().stream()
                                .map(verdict -> verdict.limit().place()),
                        told)
                .collect(Collectors.toSet());
    }
}
