package io.github.formulationmath.limit;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.Ingredient;
import io.github.formulationmath.formula.Substance;
import io.github.formulationmath.limit.LimitReport.Uncounted;
import io.github.formulationmath.limit.LimitReport.Uncounted.Why;
import io.github.formulationmath.quantity.MassFraction;
import io.github.formulationmath.reckoning.Wording;
import io.github.formulationmath.support.Checkers;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Cases of Annexes II and IV written by hand from the printed entries, before the program was asked. */
class AnnexHandCasesTest {

    private static final LimitTable EU = LimitTable.eu2024February();

    private record Case(String name, String cas, String product, String entry, String expected) {}

    private static List<Case> cases() throws IOException {
        try (BufferedReader in = new BufferedReader(new InputStreamReader(
                        Objects.requireNonNull(AnnexHandCasesTest.class.getResourceAsStream("annex-hand-cases.csv")),
                        StandardCharsets.UTF_8));
                CSVParser parser =
                        CSVFormat.RFC4180.builder().setCommentMarker('#').get().parse(in)) {
            return parser.stream().skip(1).map(AnnexHandCasesTest::read).toList();
        }
    }

    private static Case read(CSVRecord row) {
        String entry = row.get(3).isEmpty() ? "" : "EU-" + row.get(3) + "-" + row.get(4);
        return new Case(row.get(0), row.get(1), row.get(2), entry, row.get(5));
    }

    private static Product product(String word) {
        return switch (word) {
            case "cream" -> Checkers.FACE_CREAM;
            case "lips" -> Product.leaveOn().on("lips");
            case "eyes" -> Product.leaveOn().on("eyes");
            case "wash" -> Product.rinseOff().on("body");
            case "dye" -> Product.rinseOff().on("hair").ofKind("hair_dye");
            case "open" -> Product.leaveOn();
            default -> throw new IllegalArgumentException(word);
        };
    }

    private static LimitReport report(Case one) {
        Substance substance = Substance.of(one.name());
        substance = one.cas().isEmpty() ? substance : substance.withCas(one.cas());
        Formula formula = Formula.inPercent("F")
                .quantitySufficient("Water as written")
                .line(Ingredient.of("Material", substance), MassFraction.parse("1 %"))
                .build();
        return LimitChecker.of(EU, product(one.product()), DecisionRule.worstCase())
                .check(formula);
    }

    /** What the report says of annexes II and IV: the kind of finding, and the entry. */
    private static Set<String> said(LimitReport report) {
        Stream<String> verdicts = report.verdicts().stream()
                .filter(verdict -> verdict.limit().id().startsWith("EU-II-")
                        || verdict.limit().id().startsWith("EU-IV-"))
                .filter(verdict -> verdict.conformity() != Conformity.WITHIN)
                .map(verdict -> switch (verdict.conformity()) {
                    case PROHIBITED ->
                        (verdict.limit().id().startsWith("EU-II-") ? "named " : "forbidden ")
                                + verdict.limit().id();
                    default -> "exceeds " + verdict.limit().id();
                });
        Stream<String> banned = report.mayBeProhibited().stream()
                .map(finding -> (finding.why() == Why.MAY_BE_PROHIBITED ? "may_be EU-II-" : "let_through EU-II-")
                        + finding.entries().get(0).number());
        Stream<String> colorants = report.colorants().stream().map(AnnexHandCasesTest::colorant);
        return Stream.of(verdicts, banned, colorants).flatMap(s -> s).collect(Collectors.toSet());
    }

    private static String colorant(Uncounted finding) {
        if (finding.why() == Why.COLORANT_UNLISTED) {
            return "unlisted ";
        }
        UsageLimit limit = finding.limits().get(0);
        boolean open = limit.scope().applicabilityTo(Product.leaveOn(), EU.words()) == Applicability.MAY_APPLY
                && finding.why() == Why.COLORANT_CONDITIONS
                && limit.text().conditions().isEmpty();
        return (open ? "may_apply " : "listed ") + limit.id();
    }

    @ParameterizedTest
    @MethodSource("cases")
    void is_found_as_a_reader_of_the_entries_finds_it(Case one) {
        LimitReport report = report(one);
        Set<String> said = said(report);
        String text = String.join("\n", report.describe(Wording.english()));
        switch (one.expected()) {
            case "none" -> assertThat(said).isEmpty();
            case "named", "forbidden" -> {
                assertThat(said).contains(one.expected() + " " + one.entry());
                assertThat(report.outcome()).isEqualTo(LimitOutcome.PROHIBITED);
                assertThat(report.binding().orElseThrow().conformity()).isEqualTo(Conformity.PROHIBITED);
                assertThat(report.toString()).contains("PROHIBITED", one.name());
                assertThat(text).contains("PROHIBITED", one.name());
                assertThat(report.withoutLimit()).extracting(Substance::name).containsExactly("Water as written");
            }
            case "may_be", "let_through" -> {
                assertThat(said).contains(one.expected() + " " + one.entry());
                assertThat(said).noneMatch(word -> word.startsWith("named"));
                assertThat(report.outcome()).isGreaterThanOrEqualTo(LimitOutcome.CONDITIONS_OPEN);
                assertThat(report.toString()).contains("may be prohibited, to read: [" + one.name());
                assertThat(text).contains("entry " + one.entry().substring("EU-II-".length()));
            }
            case "unlisted" -> {
                assertThat(said).contains("unlisted ");
                assertThat(report.outcome()).isGreaterThanOrEqualTo(LimitOutcome.CONDITIONS_OPEN);
                assertThat(text).contains("save in products that colour the hair");
            }
            default -> {
                assertThat(said).contains(one.expected() + " " + one.entry());
                assertThat(said).noneMatch(word -> word.startsWith("forbidden") || word.startsWith("unlisted"));
            }
        }
    }

    @Test
    void half_of_the_cases_of_annex_ii_give_no_number_and_fifteen_or_more_are_not_meant() throws IOException {
        assertThat(cases()).hasSizeGreaterThan(60);
        assertThat(cases()).filteredOn(one -> one.expected().equals("none")).hasSizeGreaterThan(15);
        List<Case> second =
                cases().stream().filter(one -> one.entry().startsWith("EU-II-")).toList();
        assertThat(second).filteredOn(one -> one.cas().isEmpty()).hasSizeGreaterThan(second.size() / 2);
    }
}
