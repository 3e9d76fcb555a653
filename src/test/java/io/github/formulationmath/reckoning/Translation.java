package io.github.formulationmath.reckoning;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** The texts of a file of words, read line by line without the library, and what is wrong with them beside the English. */
record Translation(String room, Map<String, String> texts) {

    private static final Path ROOMS = Path.of("src", "main", "resources", "io", "github", "formulationmath");
    private static final Pattern PLACEHOLDER = Pattern.compile("\\{[^}]*}");

    /** A text of so many words is not the same in two languages. */
    private static final int SAYS_SOMETHING = 4;

    /** An abbreviation such as "no." ends with no sentence. */
    private static final int SHORTENED = 3;

    static List<String> rooms() {
        try (Stream<Path> rooms = Files.list(ROOMS)) {
            return rooms.filter(room -> Files.exists(room.resolve("words-en.properties")))
                    .map(room -> room.getFileName().toString())
                    .sorted()
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static Translation of(String room, String language) {
        Path file = ROOMS.resolve(room).resolve("words-" + language + ".properties");
        Map<String, String> texts = new LinkedHashMap<>();
        try {
            for (String line : Files.exists(file) ? Files.readAllLines(file) : List.<String>of()) {
                if (!line.isBlank() && !line.startsWith("#")) {
                    int at = line.indexOf('=');
                    String before = texts.put(line.substring(0, at), line.substring(at + 1));
                    if (before != null) {
                        throw new IllegalStateException(file + " has twice " + line.substring(0, at));
                    }
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return new Translation(room, texts);
    }

    /** What is missing, too much, puts in something else, was left in English or lost its ending. */
    List<String> faultsBeside(Translation english) {
        List<String> faults = new ArrayList<>();
        english.texts.forEach((key, said) -> {
            String here = texts.get(key);
            if (here == null) {
                faults.add(room + ": " + key + " is missing: " + said);
            } else {
                if (!placeholders(here).equals(placeholders(said))) {
                    faults.add(room + ": " + key + " puts in " + placeholders(here) + ", not " + placeholders(said));
                }
                if (here.equals(said) && words(said) >= SAYS_SOMETHING) {
                    faults.add(room + ": " + key + " is still in English");
                }
                if (here.isBlank() || ending(here) != ending(said)) {
                    faults.add(room + ": " + key + " ends otherwise than " + said);
                }
            }
        });
        texts.keySet().stream()
                .filter(key -> !english.texts.containsKey(key))
                .forEach(key -> faults.add(room + ": " + key + " is in no English file"));
        return faults;
    }

    private static List<String> placeholders(String text) {
        return new ArrayList<>(new TreeSet<>(
                PLACEHOLDER.matcher(text).results().map(found -> found.group()).toList()));
    }

    private static long words(String text) {
        return Pattern.compile("\\p{L}{2,}")
                .matcher(PLACEHOLDER.matcher(text).replaceAll(""))
                .results()
                .count();
    }

    /** The mark at the end of a sentence or question; a letter if it is none. */
    private static char ending(String text) {
        char last = text.charAt(text.length() - 1);
        if (text.length() <= SHORTENED) {
            return 'x';
        }
        return last == '.' || last == '?' || last == ':' ? last : 'x';
    }
}
