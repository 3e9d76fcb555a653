package io.github.formulationmath.architecture;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** The picture of the house shows every room, and its arrows, followed one after the other, are the uses in the code. */
class PictureTest {

    private static final Pattern BOX = Pattern.compile("(?m)^ +([a-z]+)\\[\"([a-z]+)<br/>");
    private static final Pattern ARROW = Pattern.compile("(?m)^ +([a-z]+) --> ([a-z]+)$");
    private static final Pattern ROW = Pattern.compile("(?m)^\\| (`[a-z]+`(?:, `[a-z]+`)*) \\|");
    private static final Pattern IMPORT =
            Pattern.compile("import (?:static )?io\\.github\\.formulationmath\\.([a-z]+)\\.");

    @Test
    void every_room_is_a_box() throws IOException {
        Set<String> rooms = Sources.code().keySet().stream().map(Sources::room).collect(Collectors.toSet());
        assertThat(BOX.matcher(picture()).results().map(found -> found.group(1)))
                .hasSameElementsAs(rooms);
        assertThat(BOX.matcher(picture()).results())
                .allMatch(found -> found.group(1).equals(found.group(2)));
    }

    @Test
    void every_room_stands_once_in_the_table_for_developers() throws IOException {
        String page = Files.readString(Path.of("DEVELOPERS.md"));
        String table = page.substring(page.indexOf("\n| room |"), page.indexOf("\n\n`architecture/Ladder.java`"));
        List<String> named = ROW.matcher(table)
                .results()
                .flatMap(found -> List.of(found.group(1).replace("`", "").split(", ")).stream())
                .toList();
        assertThat(named).doesNotHaveDuplicates();
        assertThat(named)
                .hasSameElementsAs(
                        Sources.code().keySet().stream().map(Sources::room).collect(Collectors.toSet()));
    }

    @Test
    void every_arrow_is_used() throws IOException {
        Map<String, Set<String>> used = used();
        arrows(picture())
                .forEach((room, lower) -> assertThat(used.get(room)).as(room).containsAll(lower));
    }

    @Test
    void every_use_is_a_way_along_the_arrows() throws IOException {
        Map<String, Set<String>> drawn = arrows(picture());
        used().forEach((room, lower) ->
                assertThat(reached(drawn, room)).as(room).containsAll(lower));
    }

    @Test
    void an_arrow_that_is_missing_is_noticed() {
        Map<String, Set<String>> drawn = arrows("  pot --> plan\n  plan --> batch\n  label --> limit\n");
        assertThat(reached(drawn, "pot")).containsExactlyInAnyOrder("plan", "batch");
        assertThat(reached(drawn, "batch")).isEmpty();
    }

    private static String picture() throws IOException {
        String page = Files.readString(Path.of("docs", "architecture.md"));
        int start = page.indexOf("```mermaid");
        return page.substring(start, page.indexOf("```", start + 3));
    }

    private static Map<String, Set<String>> arrows(String picture) {
        Map<String, Set<String>> arrows = new TreeMap<>();
        ARROW.matcher(picture)
                .results()
                .forEach(found -> arrows.computeIfAbsent(found.group(1), room -> new TreeSet<>())
                        .add(found.group(2)));
        return arrows;
    }

    private static Map<String, Set<String>> used() {
        Map<String, Set<String>> used = new TreeMap<>();
        Sources.code().forEach((file, source) -> {
            Set<String> rooms = used.computeIfAbsent(Sources.room(file), room -> new TreeSet<>());
            Matcher imports = IMPORT.matcher(source);
            while (imports.find()) {
                if (!imports.group(1).equals(Sources.room(file))) {
                    rooms.add(imports.group(1));
                }
            }
        });
        return used;
    }

    private static Set<String> reached(Map<String, Set<String>> arrows, String from) {
        Set<String> reached = new TreeSet<>();
        Deque<String> open = new ArrayDeque<>(List.of(from));
        while (!open.isEmpty()) {
            for (String next : arrows.getOrDefault(open.pop(), Set.of())) {
                if (reached.add(next)) {
                    open.push(next);
                }
            }
        }
        return reached;
    }
}
