package io.github.formulationmath.limit;

import static io.github.formulationmath.limit.SnapshotTable.field;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import io.github.formulationmath.formula.Substance;
import io.github.formulationmath.quantity.MassFraction;
import io.github.formulationmath.support.Formulas;
import java.io.BufferedReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The words by which a product is described: one list, without loose ends, that knows every word of the table. */
class VocabularyTest {

    private static final ProductWords WORDS = LimitTable.eu2024February().words();

    private static List<Map<String, String>> rows() throws IOException {
        Path file = Path.of("src/main/resources/io/github/formulationmath/limit/product-words.csv");
        CSVFormat format = CSVFormat.RFC4180
                .builder()
                .setCommentMarker('#')
                .setHeader()
                .setSkipHeaderRecord(true)
                .get();
        try (BufferedReader reader = Files.newBufferedReader(file, StandardCharsets.UTF_8)) {
            return format.parse(reader).stream().map(CSVRecord::toMap).toList();
        }
    }

    private static Stream<String> list(String words) {
        return Stream.of(words.split(";")).filter(word -> !word.isEmpty());
    }

    @Test
    void every_word_that_a_word_leads_to_is_on_the_list() throws IOException {
        Map<String, Set<String>> bySide = rows().stream()
                .collect(Collectors.groupingBy(
                        row -> field(row, "side"), Collectors.mapping(row -> field(row, "word"), Collectors.toSet())));
        assertThat(bySide.keySet()).containsExactlyInAnyOrder("area", "kind", "form", "purpose");
        for (Map<String, String> row : rows()) {
            Set<String> own = bySide.getOrDefault(field(row, "side"), Set.of());
            assertThat(list(field(row, "also")))
                    .as(row.toString())
                    .isSubsetOf(own)
                    .doesNotContain(field(row, "word"));
            assertThat(list(field(row, "may_be")))
                    .as(row.toString())
                    .isSubsetOf(own)
                    .doesNotContain(field(row, "word"));
            assertThat(list(field(row, "area"))).as(row.toString()).isSubsetOf(bySide.getOrDefault("area", Set.of()));
        }
        assertThat(rows().stream().map(row -> field(row, "side") + " " + field(row, "word")))
                .doesNotHaveDuplicates();
    }

    @Test
    void every_word_of_the_table_is_on_the_list() throws IOException {
        Map<String, String> columns = Map.of("area", "scope_area", "kind", "scope_product", "form", "scope_form");
        Map<String, Set<String>> named = new HashMap<>();
        rows().forEach(row -> named.computeIfAbsent(field(row, "side"), side -> new TreeSet<>(Set.of("any")))
                .add(field(row, "word")));
        for (Map<String, String> limit : SnapshotTable.LIMITS) {
            columns.forEach((side, column) -> assertThat(list(field(limit, column))
                            .map(word -> word.replace("perhaps_not:", "").replace("not:", "")))
                    .as(field(limit, "limit_id"))
                    .isSubsetOf(named.getOrDefault(side, Set.of())));
        }
    }

    @ParameterizedTest
    @CsvSource({
        "lips, mucous_membranes",
        "mouth, mucous_membranes",
        "eyes, mucous_membranes",
        "lip_balm, mucous_membranes",
        "toothpaste, oral",
        "mascara, eyes",
        "pump spray, inhaled",
        "aerosol, inhaled",
        "body mist, inhaled",
        "large-area, body",
        "Baby Shampoo, hair",
    })
    void some_words_say_more_than_themselves(String word, String implied) {
        assertThat(WORDS.impliedBy(word)).contains(implied);
    }

    @Test
    void a_sibling_is_told_apart_and_a_broader_word_is_not() {
        UsageLimit edt = cap().within(Scope.any().withProducts("eau_de_toilette"));
        assertThat(applicability(edt, Product.leaveOn().ofKind("fine_fragrance")))
                .isEqualTo(Applicability.OUT_OF_SCOPE);
        assertThat(applicability(edt, Product.leaveOn().ofKind("eau_de_parfum")))
                .isEqualTo(Applicability.MAY_APPLY);
        assertThat(applicability(edt, Product.leaveOn().ofKind("hydroalcoholic")))
                .isEqualTo(Applicability.MAY_APPLY);
        assertThat(applicability(edt, Product.leaveOn().ofKind("cologne"))).isEqualTo(Applicability.APPLIES);
    }

    /** A table's own word that has a part in common with a known one may mean the same. */
    @Test
    void a_word_of_a_tables_own_is_not_passed_over_by_a_known_one() {
        UsageLimit balms = cap().within(Scope.any().withProducts("balm", "shampoo"));
        assertThat(applicability(balms, Product.leaveOn().ofKind("lip_balm"))).isEqualTo(Applicability.MAY_APPLY);
        assertThat(applicability(balms, Product.leaveOn().ofKind("toothpaste"))).isEqualTo(Applicability.OUT_OF_SCOPE);
        UsageLimit own = cap().within(Scope.any().withProducts("skin food"));
        assertThat(applicability(own, Product.leaveOn().ofKind("face_cream"))).isEqualTo(Applicability.MAY_APPLY);
        assertThat(applicability(own, Product.leaveOn().ofKind("Skin-Food"))).isEqualTo(Applicability.APPLIES);
    }

    /** A kind says for which part of the body it is; a part of the body leaves every kind open. */
    @Test
    void a_kind_tells_the_area_and_an_area_leaves_the_kind_open() {
        UsageLimit hair = cap().within(Scope.any().withAreas("hair"));
        assertThat(applicability(hair, Product.rinseOff().ofKind("shampoo"))).isEqualTo(Applicability.APPLIES);
        assertThat(applicability(hair, Product.rinseOff().ofKind("toothpaste"))).isEqualTo(Applicability.OUT_OF_SCOPE);
        UsageLimit cream = cap().within(Scope.any().withProducts("face_cream"));
        assertThat(applicability(cream, Product.leaveOn().on("face"))).isEqualTo(Applicability.MAY_APPLY);
        UsageLimit face = cap().within(Scope.any().withProducts("shampoo", "face_product"));
        assertThat(applicability(face, Product.leaveOn().on("face"))).isEqualTo(Applicability.APPLIES);
        assertThat(applicability(face, Product.leaveOn().ofKind("night_cream"))).isEqualTo(Applicability.APPLIES);
    }

    @Test
    void any_age_can_be_said_and_other_words_are_refused_with_a_remedy() {
        UsageLimit grown = cap().within(Scope.any().withUsers("not:under_10"));
        assertThat(applicability(grown, Product.leaveOn().forUsers("from_12"))).isEqualTo(Applicability.APPLIES);
        assertThat(applicability(grown, Product.leaveOn().forUsers("from_9"))).isEqualTo(Applicability.OUT_OF_SCOPE);
        assertThat(applicability(grown, Product.leaveOn().forUsers("under_12"))).isEqualTo(Applicability.OUT_OF_SCOPE);
        assertThat(applicability(grown, Product.leaveOn().forUsers("babies"))).isEqualTo(Applicability.OUT_OF_SCOPE);
        assertThat(applicability(grown, Product.leaveOn())).isEqualTo(Applicability.MAY_APPLY);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Product.leaveOn().forUsers("children"))
                .withMessageContaining("user is \"children\"")
                .withMessageContaining("under_3");
    }

    @Test
    void a_word_that_nobody_knows_is_told_with_those_that_may_be_meant() {
        LimitReport report = LimitChecker.of(
                        LimitTable.eu2024February(),
                        Product.leaveOn().on("fase").ofKind("shampo"),
                        DecisionRule.worstCase())
                .check(Formulas.only("F", "Aqua"));
        assertThat(report.closestWords()).containsOnlyKeys("fase", "shampo");
        assertThat(report.closestWords().get("fase")).contains("face");
        assertThat(report.closestWords().get("shampo")).contains("shampoo");
    }

    private static UsageLimit cap() {
        return UsageLimit.of(
                "H",
                SubstanceGroup.of("one", List.of(GroupMember.of(Substance.of("X")))),
                LimitKind.MAXIMUM,
                MassFraction.ofPercent("1"));
    }

    private static Applicability applicability(UsageLimit limit, Product product) {
        LimitTable table = LimitTable.of("house", List.of(limit));
        return limit.scope().applicabilityTo(product, table.words());
    }
}
