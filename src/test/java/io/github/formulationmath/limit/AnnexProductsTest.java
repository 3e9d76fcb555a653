package io.github.formulationmath.limit;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.FormulaBuilder;
import io.github.formulationmath.formula.Ingredient;
import io.github.formulationmath.formula.Substance;
import io.github.formulationmath.limit.LimitReport.Uncounted;
import io.github.formulationmath.limit.LimitReport.Uncounted.Why;
import io.github.formulationmath.quantity.MassFraction;
import io.github.formulationmath.reckoning.Wording;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;

/**
 * Whole products that hold what Annexes II and IV and the entries left out of Annex III speak of, against what a reader of
 * the raw exports wrote down beforehand: nothing that has to be told is missed, and little is told that need not be.
 */
class AnnexProductsTest {

    private static final LimitTable EU = LimitTable.eu2024February();

    /** A line of a product with what the reader found. */
    private record Line(String name, String cas, String percent, Set<String> expected) {

        boolean mustBeTold() {
            return expected.stream().anyMatch(AnnexProductsTest::isAlarm);
        }
    }

    /** What the report says of one line, and whether it is named anywhere at all. */
    private record Told(String product, Line line, Set<String> found, boolean somewhere) {

        boolean isMissed() {
            return line.mustBeTold() && found.stream().noneMatch(AnnexProductsTest::isAlarm);
        }

        /** Found, but not by the entries or not as surely as the reader did. */
        boolean isVague() {
            return !isMissed() && !found.containsAll(ofTheseAnnexes(line.expected()));
        }

        boolean isFalseAlarm() {
            Set<String> entries =
                    line.expected().stream().map(AnnexProductsTest::entry).collect(Collectors.toSet());
            return found.stream().filter(AnnexProductsTest::isAlarm).anyMatch(one -> !entries.contains(entry(one)));
        }
    }

    private static boolean isAlarm(String finding) {
        return finding.startsWith("prohibited")
                || finding.startsWith("read")
                || finding.startsWith("exceeds")
                || finding.startsWith("unlisted");
    }

    private static Set<String> ofTheseAnnexes(Set<String> findings) {
        return findings.stream()
                .filter(one -> !one.equals("clean") && !one.equals("limit"))
                .collect(Collectors.toSet());
    }

    private static String entry(String finding) {
        return finding.substring(finding.indexOf(' ') + 1);
    }

    private static Map<List<String>, List<Line>> products() throws IOException {
        Map<List<String>, List<Line>> products = new LinkedHashMap<>();
        try (BufferedReader in = new BufferedReader(new InputStreamReader(
                        Objects.requireNonNull(AnnexProductsTest.class.getResourceAsStream("annex-products.csv")),
                        StandardCharsets.UTF_8));
                CSVParser parser =
                        CSVFormat.RFC4180.builder().setCommentMarker('#').get().parse(in)) {
            for (CSVRecord row : parser.stream().skip(1).toList()) {
                products.computeIfAbsent(row.toList().subList(0, 5), key -> new ArrayList<>())
                        .add(new Line(
                                row.get(5),
                                row.get(6),
                                row.get(7),
                                Set.of(row.get(8).split("\\|", -1))));
            }
        }
        return products;
    }

    private static LimitReport report(List<String> head, List<Line> lines) {
        Product product = (head.get(1).equals("rinse_off") ? Product.rinseOff() : Product.leaveOn())
                .on(head.get(2))
                .ofKind(head.get(3))
                .inForm(head.get(4));
        FormulaBuilder draft = Formula.inPercent(head.get(0)).quantitySufficient("Aqua");
        for (Line line : lines) {
            Substance substance = Substance.of(line.name());
            draft.line(
                    Ingredient.of(line.name(), line.cas().isEmpty() ? substance : substance.withCas(line.cas())),
                    MassFraction.parse(line.percent() + " %"));
        }
        return LimitChecker.of(EU, product, DecisionRule.worstCase()).check(draft.build());
    }

    private static List<Told> told() throws IOException {
        List<Told> all = new ArrayList<>();
        products().forEach((head, lines) -> {
            LimitReport report = report(head, lines);
            String text = String.join("\n", report.describe(Wording.english()));
            lines.forEach(line -> all.add(new Told(
                    head.get(0),
                    line,
                    found(report, line.name()),
                    text.contains(line.name())
                            || !report.verdictsFor(line.name()).isEmpty())));
        });
        return all;
    }

    private static Set<String> found(LimitReport report, String name) {
        Set<String> found = new TreeSet<>();
        for (Verdict verdict : report.verdicts()) {
            String id = verdict.limit().id();
            if ((id.startsWith("EU-II-") || id.startsWith("EU-IV-")) && names(verdict.substances(), name)) {
                switch (verdict.conformity()) {
                    case PROHIBITED -> found.add("prohibited " + id.substring(3));
                    case EXCEEDS -> found.add("exceeds " + id.substring(3));
                    default -> found.add("colorant " + id.substring(3));
                }
            }
        }
        report.mayBeProhibited().stream()
                .filter(finding -> names(finding, name))
                .forEach(finding ->
                        found.add("read II-" + finding.entries().get(0).number()));
        report.notTranscribed().stream()
                .filter(finding -> names(finding, name))
                .flatMap(finding -> finding.entries().stream())
                .forEach(entry -> found.add("read " + entry.annex() + "-" + entry.number()));
        report.colorants().stream()
                .filter(finding -> names(finding, name))
                .forEach(finding -> found.add(
                        finding.why() == Why.COLORANT_UNLISTED
                                ? "unlisted"
                                : "colorant " + finding.limits().get(0).id().substring(3)));
        return found;
    }

    private static boolean names(List<Substance> substances, String name) {
        return substances.stream().anyMatch(substance -> substance.name().equals(name));
    }

    private static boolean names(Uncounted finding, String name) {
        return finding.substance().name().equals(name);
    }

    @Test
    void nothing_is_missed_nothing_vanishes_and_little_is_told_in_vain() throws IOException {
        List<Told> all = told();
        assertThat(all).filteredOn(Told::isMissed).isEmpty();
        assertThat(all).filteredOn(one -> !one.somewhere()).isEmpty();
        List<Told> vague = all.stream().filter(Told::isVague).toList();
        List<Told> vain = all.stream().filter(Told::isFalseAlarm).toList();
        long expected = all.stream().filter(one -> one.line().mustBeTold()).count();
        assertThat(vague).as("vague of %d", expected).hasSizeLessThanOrEqualTo((int) (expected * 5 / 100));
        assertThat(vain).as("false alarms of %d", all.size()).hasSizeLessThanOrEqualTo(all.size() * 2 / 100);
    }

    @Test
    void a_product_with_something_prohibited_is_called_so_and_no_other() throws IOException {
        products().forEach((head, lines) -> {
            LimitReport report = report(head, lines);
            boolean prohibited = lines.stream()
                    .flatMap(line -> line.expected().stream())
                    .anyMatch(finding -> finding.startsWith("prohibited"));
            assertThat(report.verdicts().stream()
                            .anyMatch(verdict -> verdict.conformity() == Conformity.PROHIBITED
                                    && verdict.limit().id().matches("EU-(II|IV)-.*")))
                    .as(head.get(0))
                    .isEqualTo(prohibited);
            if (lines.stream().anyMatch(Line::mustBeTold)) {
                assertThat(report.outcome()).as(head.get(0)).isNotEqualTo(LimitOutcome.NO_COUNTED_LIMIT_PASSED);
            }
        });
    }

    @Test
    void half_of_what_has_to_be_told_is_given_without_a_number() throws IOException {
        List<Line> lines = products().values().stream()
                .flatMap(List::stream)
                .filter(Line::mustBeTold)
                .toList();
        assertThat(products()).hasSizeGreaterThanOrEqualTo(40);
        assertThat(lines).filteredOn(line -> line.cas().isEmpty()).hasSizeGreaterThanOrEqualTo(lines.size() / 2);
    }
}
