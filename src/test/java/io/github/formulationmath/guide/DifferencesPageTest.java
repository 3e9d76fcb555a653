package io.github.formulationmath.guide;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/**
 * The page of differences: what its tables say of now is what its code prints, row by row, and nothing stands there that is the
 * same. That the code prints it, {@link UserGuideTest} compares.
 */
class DifferencesPageTest {

    private static final Pattern ROW = Pattern.compile("\\| (\\d+) \\| .+ \\| (.+) \\| `(.+)` \\| .+ \\|");
    private static final Pattern PRINTED = Pattern.compile("(\\d+): (.*)");

    private final GuidePage page = GuidePage.read(GuidePages.DOCS.resolve(Path.of("differences.md")));

    @Test
    void what_the_tables_say_of_now_is_printed() {
        Map<Integer, String> said = found(page.prose(), ROW, row -> row.group(3));
        List<String> printed = page.in("text").stream()
                .flatMap(text -> text.content().stream())
                .toList();
        assertThat(said).isNotEmpty().isEqualTo(found(printed, PRINTED, line -> line.group(2)));
        assertThat(said.keySet())
                .containsExactlyElementsOf(
                        IntStream.rangeClosed(1, said.size()).boxed().toList());
    }

    @Test
    void a_row_tells_a_difference() {
        Map<Integer, String> now = found(page.prose(), ROW, row -> "`" + row.group(3) + "`");
        assertThat(found(page.prose(), ROW, row -> row.group(2)))
                .allSatisfy((row, before) -> assertThat(before).isNotEqualTo(now.get(row)));
    }

    private static Map<Integer, String> found(
            Collection<String> lines, Pattern pattern, Function<Matcher, String> text) {
        return lines.stream()
                .map(pattern::matcher)
                .filter(Matcher::matches)
                .collect(Collectors.toMap(
                        found -> Integer.valueOf(found.group(1)),
                        text,
                        (one, other) -> {
                            throw new IllegalStateException("a number stands twice: " + one + ", " + other);
                        },
                        TreeMap::new));
    }
}
