package io.github.formulationmath.architecture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** Each idea of the house has one home: what is said in two places comes to be said in two ways. */
class SecondHomesTest {

    private static final Map<String, String> CODE = Sources.code();

    @TestFactory
    Stream<DynamicTest> an_idea_has_no_second_home() {
        return SecondHome.all().stream()
                .map(home -> dynamicTest(
                        home.idea() + ": " + home.name(),
                        () -> assertThat(home.in(CODE))
                                .as(home.ratchet())
                                .hasSizeLessThanOrEqualTo(Ratchets.of(home.ratchet()))));
    }

    @TestFactory
    Stream<DynamicTest> a_planted_second_home_is_found() {
        return SecondHome.all().stream()
                .map(home -> dynamicTest(home.idea() + ": " + home.name(), () -> {
                    Map<String, String> more = new HashMap<>(CODE);
                    more.put("planted/Planted.java", home.planted());
                    assertThat(home.in(more))
                            .contains("planted/Planted.java")
                            .hasSize(home.in(CODE).size() + 1);
                }));
    }

    @Test
    void each_of_the_fifteen_ideas_is_watched() {
        assertThat(SecondHome.all().stream().map(SecondHome::idea).distinct())
                .containsExactlyInAnyOrder(
                        "Ratio",
                        "Rounding",
                        "Amount and Share",
                        "Relation",
                        "Explanation",
                        "Document",
                        "Formula",
                        "Substance",
                        "Batch",
                        "Bench",
                        "Plan",
                        "Weighed",
                        "Criterion and Sizes",
                        "Limit and Verdict",
                        "Pot, Mending and Record");
    }

    /** Two files of one name in two rooms are two answers to one question. */
    @Test
    void no_two_rooms_have_a_type_of_the_same_name() {
        assertThat(twins(CODE)).hasSizeLessThanOrEqualTo(Ratchets.of("types of one name"));
        Map<String, String> planted = new TreeMap<>(CODE);
        planted.put("planted/Ratio.java", "");
        assertThat(twins(planted)).hasSize(twins(CODE).size() + 1).contains("Ratio.java");
    }

    private static List<String> twins(Map<String, String> code) {
        return code.keySet().stream()
                .map(file -> file.substring(file.indexOf('/') + 1))
                .filter(name -> !name.equals("package-info.java"))
                .collect(Collectors.groupingBy(name -> name, TreeMap::new, Collectors.counting()))
                .entrySet()
                .stream()
                .filter(entry -> entry.getValue() > 1)
                .map(Map.Entry::getKey)
                .toList();
    }

    @Test
    void what_is_left_to_tidy_up_is_written_down() {
        List<String> lines = new ArrayList<>();
        SecondHome.all()
                .forEach(home -> lines.add(home.ratchet() + " = "
                        + home.in(CODE).size() + "   # " + home.idea() + ": " + String.join(", ", home.in(CODE))));
        lines.add("types of one name = " + twins(CODE).size() + "   # " + twins(CODE));
        Ratchets.report("second-homes", lines);
        assertThat(lines).hasSizeGreaterThan(15);
    }
}
