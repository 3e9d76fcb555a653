package io.github.formulationmath.architecture;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Every text that the library speaks is written down, and nothing is written down that it never says. */
class WordingKeysTest {

    private static final Set<String> WRITTEN = WordingKeys.written();
    private static final WordingKeys KEYS = new WordingKeys(WRITTEN, Sources.code(), constants());

    @Test
    void every_key_that_is_used_is_written() {
        assertThat(KEYS.missing()).isEmpty();
    }

    @Test
    void every_key_that_is_written_is_used() {
        Ratchets.report("wording-unused", KEYS.unused());
        assertThat(KEYS.unused()).hasSizeLessThanOrEqualTo(Ratchets.of("wording keys never used"));
    }

    /** All rooms speak from one book: a key that two of them write would say in both what the later one means. */
    @Test
    void no_key_stands_in_two_rooms() {
        assertThat(twice(WordingKeys.writtenByRoom()))
                .as("keys of two rooms: what both say stands in the lower one, what differs needs a key of its own")
                .isEmpty();
        assertThat(twice(Map.of("a", Set.of("symbol.x", "symbol.y"), "b", Set.of("symbol.y"))))
                .containsExactly("symbol.y in [a, b]");
    }

    private static List<String> twice(Map<String, Set<String>> writtenByRoom) {
        Map<String, Set<String>> rooms = new TreeMap<>();
        writtenByRoom.forEach((room, keys) -> keys.forEach(
                key -> rooms.computeIfAbsent(key, any -> new TreeSet<>()).add(room)));
        return rooms.entrySet().stream()
                .filter(key -> key.getValue().size() > 1)
                .map(key -> key.getKey() + " in " + key.getValue())
                .toList();
    }

    @Test
    void every_key_stands_in_a_room_that_says_it() {
        List<String> elsewhere = new ArrayList<>();
        WordingKeys.writtenByRoom()
                .forEach((room, keys) ->
                        KEYS.saidNowhereIn(room, keys).forEach(key -> elsewhere.add(room + ": " + key)));
        assertThat(elsewhere).isEmpty();
    }

    /** Constants put their keys together from their names; each is asked for its own. */
    @Test
    void every_constant_speaks_with_a_key_that_is_written() {
        List<String> missing = new ArrayList<>();
        int asked = 0;
        for (Class<?> type : Types.ofTheLibrary()) {
            for (Method method : type.isEnum() ? type.getDeclaredMethods() : new Method[0]) {
                if (isAboutWords(method)) {
                    for (Object constant : type.getEnumConstants()) {
                        asked++;
                        String key = key(method, constant);
                        if (key != null && !WRITTEN.contains(key)) {
                            missing.add(constant + ": " + key);
                        }
                    }
                }
            }
        }
        assertThat(asked).isPositive();
        assertThat(missing).isEmpty();
    }

    private static boolean isAboutWords(Method method) {
        String name = method.getName();
        return method.getParameterCount() == 0
                && !method.isSynthetic()
                && (method.getReturnType().getSimpleName().equals("Phrase")
                        || (method.getReturnType() == String.class && (name.equals("key") || name.endsWith("Key"))));
    }

    private static String key(Method method, Object constant) {
        try {
            method.setAccessible(true);
            Object said = method.invoke(constant);
            if (said instanceof String || said == null) {
                return (String) said;
            }
            Method key = said.getClass().getMethod("key");
            key.setAccessible(true);
            return (String) key.invoke(said);
        } catch (InvocationTargetException e) {
            return null;
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException(e);
        }
    }

    @Test
    void a_misspelt_key_and_a_forgotten_one_are_noticed() {
        Set<String> keys = new TreeSet<>(Set.of(
                "question.mass", "symbol.line-mass", "verdict.within", "verdict.lost", "note.said", "note.said-by"));
        WordingKeys watched = new WordingKeys(
                keys,
                Map.of(
                        "a/A.java",
                        "Symbol.of(\"m\", \"line-mass\", MASS); Symbol.of(\"n\", \"line-count\", NUMBER);"
                                + " Phrase.of(\"question.mas\"); Phrase.of(\"verdict.\" + this); Phrase.of(\"note.said\" + \"-by\");"),
                List.of("WITHIN"));
        assertThat(watched.saidNowhereIn("a", Set.of("verdict.within", "note.said")))
                .isEmpty();
        assertThat(watched.saidNowhereIn("b", Set.of("verdict.within", "note.said")))
                .containsExactlyInAnyOrder("verdict.within", "note.said");
        assertThat(watched.missing()).containsExactlyInAnyOrder("question.mas", "symbol.line-count");
        assertThat(watched.unused()).containsExactlyInAnyOrder("question.mass", "verdict.lost");
    }

    private static List<String> constants() {
        return Stream.concat(
                        Types.ofTheLibrary().stream().filter(Class::isEnum), Stream.of(java.math.RoundingMode.class))
                .flatMap(type -> Arrays.stream(type.getEnumConstants()))
                .map(constant -> ((Enum<?>) constant).name())
                .toList();
    }
}
