package io.github.formulationmath.architecture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** Each idea of the house has one home: what is said in two places comes to be said in two ways. */
class SecondHomesTest {

    private static final Pattern IMPORTS =
            Pattern.compile("(?m)^import (static )?(io.github|java.util|javax)\\.[^\n]*\n");
    private static final Pattern INDENTED = Pattern.compile("\n\\s+");
    private static final Pattern HOME_TYPE =
            Pattern.compile("\\b(?:class|record|interface|enum) (Ratio|Rounding|Bounds|Interval|Amount"
                    + "|MassFraction|Density|Money|Reckoning|Working|Origin|Document|Formula|FormulaLine|Ingredient|Substance|SubstanceName"
                    + "|Batch|BatchLine|Bench|Balance|Vessel|WeighingPlan|PlannedLine|Weighed|MadeMasses|Criterion|Sizes|UsageLimit|Verdict"
                    + "|Conformity|MadeBatch|Correction|BatchRecord)\\b");

    private static final Map<String, String> CODE = compact(Sources.code());

    /** What each sign finds, looked for once. */
    private static final Map<SecondHome, List<String>> FOUND = new HashMap<>();

    /** Without imports and without what indents a line, which is a third of it. */
    private static Map<String, String> compact(Map<String, String> code) {
        Map<String, String> compact = new TreeMap<>();
        code.forEach((file, text) -> compact.put(
                file, INDENTED.matcher(IMPORTS.matcher(text).replaceAll("")).replaceAll("\n")));
        return compact;
    }

    private static List<String> found(SecondHome home) {
        return FOUND.computeIfAbsent(home, sought -> sought.in(CODE));
    }

    @TestFactory
    Stream<DynamicTest> an_idea_has_no_second_home() {
        return SecondHomes.all().stream()
                .map(home -> dynamicTest(
                        home.idea() + ": " + home.name(),
                        () -> assertThat(found(home))
                                .as(home.ratchet())
                                .hasSizeLessThanOrEqualTo(Ratchets.of(home.ratchet()))));
    }

    @TestFactory
    Stream<DynamicTest> a_planted_second_home_is_found() {
        return SecondHomes.all().stream()
                .map(home -> dynamicTest(
                        home.idea() + ": " + home.name(),
                        () -> assertThat(home.planted())
                                .isNotEmpty()
                                .allMatch(piece -> home.isIn("planted/Planted.java", Sources.withoutComments(piece)))));
    }

    @Test
    void each_of_the_fifteen_ideas_is_watched() {
        assertThat(SecondHomes.all().stream().map(SecondHome::idea).distinct())
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

    /** A type of its own within another, under the name of an idea's home, is a second home in hiding. */
    @Test
    void no_nested_type_is_named_like_the_home_of_an_idea() {
        assertThat(hidden(CODE)).isEmpty();
        Map<String, String> planted = new TreeMap<>(CODE);
        planted.put(
                "planted/Planted.java", "final class Planted { private record Interval(Ratio low, Ratio high) {} }");
        assertThat(hidden(planted)).containsExactly("planted/Planted.java: Interval");
    }

    private static List<String> hidden(Map<String, String> code) {
        List<String> hidden = new ArrayList<>();
        code.forEach((file, text) -> HOME_TYPE
                .matcher(text)
                .results()
                .map(found -> found.group(1))
                .filter(type -> !file.endsWith("/" + type + ".java"))
                .forEach(type -> hidden.add(file + ": " + type)));
        return hidden;
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
        SecondHomes.all()
                .forEach(home -> lines.add(home.ratchet() + " = " + found(home).size() + "   # " + home.idea() + ": "
                        + String.join(", ", found(home))));
        lines.add("types of one name = " + twins(CODE).size() + "   # " + twins(CODE));
        Ratchets.report("second-homes", lines);
        assertThat(lines).hasSizeGreaterThan(15);
    }
}
