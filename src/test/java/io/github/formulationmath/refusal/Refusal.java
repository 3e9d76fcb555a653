package io.github.formulationmath.refusal;

import io.github.formulationmath.snippet.Snippet;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * A row of the corpus: a call with bad input, what must be said to it, and the call put right.
 *
 * @param place file and line
 * @param call the bad call
 * @param exception the simple name of what is thrown
 * @param argument what the message calls the argument or place; {@code -} for text that is read, which has no name
 * @param value the value as it was given, with its unit where it has one
 * @param remedy what the message says would help
 * @param instead the call with that help followed
 */
record Refusal(
        String place, String call, String exception, String argument, String value, String remedy, String instead) {

    static final String NONE = "-";

    private static final Path FOLDER = Path.of("src", "test", "resources", "refusals");

    /** Every row of every file. */
    static List<Refusal> all() {
        try (Stream<Path> files = Files.list(FOLDER)) {
            return files.filter(file -> file.toString().endsWith(".txt"))
                    .sorted()
                    .flatMap(file -> rows(file).stream())
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Three lines a row: the call; the exception, what it names, the remedy; the call put right. */
    private static List<Refusal> rows(Path file) {
        List<String> lines = lines(file);
        List<Refusal> rows = new ArrayList<>();
        for (int i = 0; i < lines.size(); i++) {
            if (lines.get(i).isBlank() || lines.get(i).startsWith("#")) {
                continue;
            }
            String place = file.getFileName() + ":" + (i + 1);
            String[] says = lines.get(i + 1).strip().split(" \\| ", -1);
            if (says.length != 4 || !lines.get(i + 2).startsWith("  instead: ")) {
                throw new IllegalStateException(
                        place + ": a row is a call, \"exception | argument | value | remedy\"" + " and \"instead: …\"");
            }
            rows.add(new Refusal(
                    place,
                    lines.get(i),
                    says[0],
                    says[1],
                    says[2],
                    says[3],
                    lines.get(i + 2).substring("  instead: ".length())));
            i += 2;
        }
        return rows;
    }

    private static List<String> lines(Path file) {
        try {
            return Files.readAllLines(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    Snippet bad() {
        return Snippet.of(place, List.of(), call);
    }

    Snippet right() {
        return Snippet.of(place, List.of(), instead);
    }

    /** What the message must say. */
    List<String> needed() {
        return Stream.of(argument, value, remedy)
                .filter(words -> !words.equals(NONE))
                .toList();
    }
}
