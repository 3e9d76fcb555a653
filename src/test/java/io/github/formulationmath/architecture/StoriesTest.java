package io.github.formulationmath.architecture;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** The story at each door: what comes in, what goes out, in which order to read, why it is right; of types that are there. */
class StoriesTest {

    private static final Map<String, Pattern> PARTS = Map.of(
            "what comes in", Pattern.compile("<b>What comes in:</b>"),
            "what goes out", Pattern.compile("<b>What goes out:</b>"),
            "in which order to read", Pattern.compile("Reading order:"),
            "why it is right", Pattern.compile("<b>Why [^<]*:</b>"));

    private static final Pattern TYPE = Pattern.compile("\\{@code ([A-Z][a-z]+[A-Za-z]*)}");

    @Test
    void each_room_tells_its_story_at_the_door() throws IOException {
        for (String room : rooms()) {
            assertThat(missing(story(room)))
                    .as("what " + room + " does not tell")
                    .isEmpty();
        }
    }

    @Test
    void a_story_names_types_that_are_there() throws IOException {
        Set<String> types =
                Types.ofTheLibrary().stream().map(Class::getSimpleName).collect(Collectors.toSet());
        for (String room : rooms()) {
            assertThat(TYPE.matcher(story(room)).results().map(found -> found.group(1)))
                    .as("what " + room + " names")
                    .allMatch(types::contains);
        }
    }

    @Test
    void a_part_that_is_missing_is_noticed() {
        String whole = " * <p><b>What comes in:</b> a. <b>What goes\n * out:</b> b.\n * <p><b>Reading order:</b> c.\n"
                + " * <p><b>Why it ends:</b> d.";
        assertThat(missing(plain(whole))).isEmpty();
        assertThat(missing(plain(whole.replace("Why", "How")))).containsExactly("why it is right");
        assertThat(missing("")).hasSameSizeAs(PARTS.keySet());
    }

    private static List<String> missing(String story) {
        List<String> missing = new ArrayList<>();
        PARTS.forEach((part, said) -> {
            if (!said.matcher(story).find()) {
                missing.add(part);
            }
        });
        return missing;
    }

    private static Set<String> rooms() {
        return Sources.code().keySet().stream().map(Sources::room).collect(Collectors.toSet());
    }

    private static String story(String room) throws IOException {
        return plain(Files.readString(Sources.MAIN.resolve(room).resolve("package-info.java")));
    }

    /** As it is read, whatever the lines it stands on. */
    private static String plain(String comment) {
        return comment.replaceAll("\\s+\\*?\\s*", " ");
    }
}
