package io.github.formulationmath.reference;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.lang.reflect.Method;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;

/** The table of published checks of the chemistry: there are as many as it says, and each is made by a test that exists. */
class ChemistryChecksTest {

    private static final Path PAGE = Path.of("docs", "chemistry-checks.md");
    private static final Pattern COUNTS = Pattern.compile("The table has (\\d+) checks against (\\d+) sources");

    private record Check(String what, String printed, String here, String source, String test) {

        static Check of(String row) {
            List<String> cells =
                    Arrays.stream(row.split("\\|", -1)).map(String::strip).toList();
            return new Check(
                    cells.get(1),
                    cells.get(2),
                    cells.get(3),
                    cells.get(4),
                    cells.get(5).replace("`", ""));
        }

        String className() {
            return test.substring(0, test.indexOf('#'));
        }

        String method() {
            return test.substring(test.indexOf('#') + 1);
        }

        Path file() {
            return Path.of(
                    "src/test/java/io/github/formulationmath", className().replace('.', '/') + ".java");
        }
    }

    private static List<Check> checks() throws IOException {
        return Files.readAllLines(PAGE).stream()
                .filter(line -> line.startsWith("| ") && line.contains("#"))
                .map(Check::of)
                .toList();
    }

    @Test
    void there_are_as_many_as_the_page_says_and_enough() throws IOException {
        Set<String> sources = checks().stream().map(Check::source).collect(Collectors.toSet());
        Matcher told = COUNTS.matcher(Files.readString(PAGE));
        assertThat(told.find()).isTrue();
        assertThat(checks()).hasSize(Integer.parseInt(told.group(1))).hasSizeGreaterThanOrEqualTo(60);
        assertThat(sources).hasSize(Integer.parseInt(told.group(2))).hasSizeGreaterThanOrEqualTo(15);
        assertThat(checks().stream().map(check -> check.what() + check.test())).doesNotHaveDuplicates();
    }

    @Test
    void each_is_made_by_a_test_that_has_its_figure() throws Exception {
        Set<String> seen = new HashSet<>();
        for (Check check : checks()) {
            Class<?> type = Class.forName("io.github.formulationmath." + check.className());
            assertThat(type.getDeclaredMethods())
                    .as(check.test())
                    .filteredOn(method -> method.getName().equals(check.method()))
                    .anyMatch(ChemistryChecksTest::isTest);
            assertThat(Files.readString(check.file())).as(check.what()).contains(check.here());
            assertThat(check.source()).isNotBlank();
            seen.add(check.className());
        }
        assertThat(seen).hasSizeGreaterThan(8);
    }

    private static boolean isTest(Method method) {
        return method.isAnnotationPresent(Test.class) || method.isAnnotationPresent(ParameterizedTest.class);
    }
}
