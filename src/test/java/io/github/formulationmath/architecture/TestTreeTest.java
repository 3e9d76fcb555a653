package io.github.formulationmath.architecture;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The test tree reads like one hand wrote it: tests are sentences, and what several classes need stands in one place. */
class TestTreeTest {

    private static final Path TESTS = Path.of("src", "test", "java");

    private static final Pattern TEST = Pattern.compile(
            "@(?:Test|ParameterizedTest|RepeatedTest|TestFactory|Property|Example)\\b(?:\\([^)]*\\))?"
                    + "(?:\\s+@\\w+(?:\\((?:[^()\"]|\"[^\"]*\")*\\))?)*\\s+(?:default |private |public )?[\\w<>?, ]+? (\\w+)\\(");

    private static final Pattern FORMULA = Pattern.compile(
            "Formula\\s*\\.in(?:Percent|Parts|Masses)\\((?:\"[^\"]*\"|\\w+)\\)((?:\\s*\\.\\w+\\((?:\"[^\"]*\"(?:, \"[^\"]*\")?)?\\))*?)"
                    + "\\s*\\.build\\(\\)");

    /** A member of a class with what stands between its braces, five lines and more. */
    private static final Pattern HELPER =
            Pattern.compile("(?m)^    \\w[^;={}\"]*\\)[^;={}\"]*\\{\\n((?:(?: {5}.*)?\\n){5,}?) {4}\\}$");

    private static Map<String, String> sources() {
        Map<String, String> sources = new TreeMap<>();
        try (Stream<Path> all = Files.walk(TESTS)) {
            for (Path file :
                    all.filter(path -> path.toString().endsWith(".java")).toList()) {
                sources.put(file.getFileName().toString(), Sources.withoutComments(Files.readString(file)));
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return sources;
    }

    @Test
    void the_name_of_a_test_is_a_sentence() {
        List<String> named = sources().entrySet().stream()
                .flatMap(file -> inCamelCase(file.getValue()).stream().map(name -> file.getKey() + ": " + name))
                .toList();
        Ratchets.report("test-names", named);
        assertThat(named).hasSizeLessThanOrEqualTo(Ratchets.of("test names in camel case"));
    }

    private static List<String> inCamelCase(String source) {
        return TEST.matcher(source)
                .results()
                .map(found -> found.group(1))
                .filter(name -> name.matches(".*[A-Z].*"))
                .toList();
    }

    @Test
    void a_formula_that_three_classes_need_stands_in_one_place() {
        Map<String, Set<String>> shared = formulas(sources());
        shared.values().removeIf(files -> files.size() < 3);
        Ratchets.report(
                "formulas",
                shared.entrySet().stream()
                        .map(entry -> entry.getValue() + " " + entry.getKey())
                        .toList());
        assertThat(shared).hasSizeLessThanOrEqualTo(Ratchets.of("fixture formulas in three classes"));
    }

    @Test
    void a_helper_that_two_classes_need_stands_in_one_place() {
        assertThat(shared(sources())).as("give it a home in support").isEmpty();
    }

    /** By the lines of the helper: the files that hold them, if they are several. */
    private static Map<String, Set<String>> shared(Map<String, String> sources) {
        Map<String, Set<String>> files = new TreeMap<>();
        sources.forEach((file, source) -> HELPER.matcher(source)
                .results()
                .map(helper -> helper.group(1).replaceAll("\\s+", " "))
                .forEach(lines ->
                        files.computeIfAbsent(lines, any -> new TreeSet<>()).add(file)));
        files.values().removeIf(all -> all.size() < 2);
        return files;
    }

    /** By the calls of the builder: the files that hold them. */
    private static Map<String, Set<String>> formulas(Map<String, String> sources) {
        Map<String, Set<String>> files = new TreeMap<>();
        sources.forEach((file, source) -> FORMULA.matcher(source)
                .results()
                .map(TestTreeTest::calls)
                .filter(calls -> !calls.isEmpty())
                .forEach(calls ->
                        files.computeIfAbsent(calls, any -> new TreeSet<>()).add(file)));
        return files;
    }

    private static String calls(MatchResult formula) {
        return formula.group(1).replaceAll("\\s+\\.", ".").strip();
    }

    @Test
    void a_name_that_is_no_sentence_and_a_third_copy_are_noticed() {
        assertThat(inCamelCase("@Test\n    void addsUp() {} @Test void adds_up() {} void helperMethod() {}"))
                .containsExactly("addsUp");
        assertThat(inCamelCase("@ParameterizedTest\n @ValueSource(strings = {\"a(b)\"})\n void readsText(String t) {}"))
                .containsExactly("readsText");
        String formula = "Formula.inPercent(\"balm\")\n    .line(\"Oil\", \"99 %\")\n.line(\"Wax\", \"1 %\").build()";
        assertThat(formulas(Map.of("A", formula, "B", formula.replace("balm", "other"), "C", formula)))
                .containsExactly(Map.entry(".line(\"Oil\", \"99 %\").line(\"Wax\", \"1 %\")", Set.of("A", "B", "C")));
        String helper = "    private static <T> List<T> sum(int... all) throws IOException {\n        int sum = 0;\n\n"
                + "        for (int each : all) {\n            sum += each;\n        }\n        return sum;\n    }\n";
        assertThat(shared(Map.of("A", helper, "B", helper.replace("sum(", "total("), "C", helper.replace("0", "1"))))
                .containsExactly(Map.entry(
                        " int sum = 0; for (int each : all) { sum += each; } return sum; ", Set.of("A", "B")));
    }
}
