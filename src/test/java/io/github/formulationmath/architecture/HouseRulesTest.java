package io.github.formulationmath.architecture;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.io.IOException;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** Rules that keep the house as it is drawn: no edge on paper only, no file too long to be read at once. */
final class HouseRulesTest {

    private static final int MOST_CODE_LINES = 400;

    @Test
    void every_edge_of_the_ladder_is_used() {
        Set<String> used = new TreeSet<>();
        for (JavaClass type : new ClassFileImporter()
                .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
                .importPackages(Ladder.ROOT)) {
            type.getDirectDependenciesFromSelf()
                    .forEach(dependency -> Ladder.chapterOf(type.getPackageName())
                            .ifPresent(from -> Ladder.chapterOf(
                                            dependency.getTargetClass().getPackageName())
                                    .ifPresent(to -> used.add(Ladder.edge(from, to)))));
        }
        assertThat(used).as("edges that the ladder lists and nothing uses").containsAll(Ladder.edges());
    }

    /** Comments and blank lines do not count: a class is not split because it is well explained. */
    @Test
    void no_file_has_more_code_than_can_be_read_at_once() throws IOException {
        assertThat(HouseFigures.codeLinesByFile())
                .isNotEmpty()
                .allSatisfy((file, lines) -> assertThat(lines).as(file).isLessThanOrEqualTo(MOST_CODE_LINES));
    }

    @Test
    void comments_and_blank_lines_are_no_code() {
        Map<String, Integer> samples = Map.of(
                "int a;\n\n// no\n/* no\n no */ int b;\n", 2,
                "String s = \"/* yes */ // yes\";\n", 1,
                "/** Javadoc. */\nclass A {}\n", 1);
        samples.forEach(
                (source, lines) -> assertThat(HouseFigures.codeLines(source)).isEqualTo(lines));
    }
}
