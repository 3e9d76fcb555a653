package io.github.formulationmath.architecture;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The walks lead past what is there: five, of at most a dozen stops, each a sentence, each name one of the library. */
class WalksTest {

    private static final Pattern STOP = Pattern.compile("(?m)^\\d+\\. (.*)$");
    private static final Pattern NAME = Pattern.compile("`([A-Z][A-Za-z]*(?:\\.[A-Za-z]+)*)`");
    private static final int DOZEN = 12;

    @Test
    void five_walks_have_a_dozen_stops_at_most() throws IOException {
        List<String> walks = walks();
        assertThat(walks).hasSize(5);
        assertThat(walks).allSatisfy(walk -> assertThat(stops(walk)).hasSizeBetween(1, DOZEN));
    }

    @Test
    void each_stop_is_one_sentence_that_begins_with_a_name() throws IOException {
        assertThat(walks().stream().flatMap(walk -> stops(walk).stream())).allSatisfy(stop -> {
            assertThat(NAME.matcher(stop).lookingAt()).as(stop).isTrue();
            assertThat(stop).endsWith(".").doesNotContainPattern("\\. [A-Z]");
        });
    }

    @Test
    void every_name_on_the_way_is_one_of_the_library() throws IOException {
        Set<String> names = names(Files.readString(Path.of("docs", "walks.md")));
        assertThat(names).hasSizeGreaterThan(50);
        assertThat(names).allSatisfy(name -> assertThat(exists(name)).as(name).isTrue());
    }

    @Test
    void a_name_that_is_gone_is_noticed() {
        assertThat(exists("Amount.withWorking")).isTrue();
        assertThat(exists("MinimumBatch.Found.readings")).isTrue();
        assertThat(exists("Closure.CLOSED")).isTrue();
        assertThat(exists("Amount.withoutReason")).isFalse();
        assertThat(exists("SafeBatch")).isFalse();
        assertThat(exists("MinimumBatch.Lost")).isFalse();
        assertThat(names("`Amount.of` and `amount.of` and `Ratio`")).containsExactly("Amount.of", "Ratio");
    }

    private static List<String> walks() throws IOException {
        String[] parts = Files.readString(Path.of("docs", "walks.md")).split("(?m)(?=^## )");
        return List.of(parts).subList(1, parts.length);
    }

    private static List<String> stops(String walk) {
        return STOP.matcher(walk).results().map(found -> found.group(1)).toList();
    }

    private static Set<String> names(String page) {
        return NAME.matcher(page)
                .results()
                .map((MatchResult found) -> found.group(1))
                .collect(Collectors.toCollection(TreeSet::new));
    }

    /** A type, seen from its own name or the one around it, or a member that it or what it extends declares. */
    private static boolean exists(String name) {
        if (isType(name)) {
            return true;
        }
        int dot = name.lastIndexOf('.');
        return dot > 0
                && typesNamed(name.substring(0, dot))
                        .anyMatch(type -> members(type).contains(name.substring(dot + 1)));
    }

    private static boolean isType(String name) {
        return typesNamed(name).findAny().isPresent();
    }

    private static Stream<Class<?>> typesNamed(String name) {
        return Types.ofTheLibrary().stream()
                .filter(type -> type.getName()
                        .substring(type.getPackageName().length() + 1)
                        .replace('$', '.')
                        .equals(name));
    }

    private static List<String> members(Class<?> type) {
        List<String> members = new ArrayList<>();
        for (Class<?> at = type; at != null; at = at.getSuperclass()) {
            Arrays.stream(at.getDeclaredMethods()).forEach(method -> members.add(method.getName()));
            Arrays.stream(at.getFields()).forEach(field -> members.add(field.getName()));
            Arrays.stream(at.getInterfaces())
                    .flatMap(each -> Arrays.stream(each.getMethods()))
                    .forEach(method -> members.add(method.getName()));
        }
        return members;
    }
}
