package io.github.formulationmath.architecture;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;

/** A list of exceptions in {@code src/test/resources/architecture}, each line a name, a colon and the reason. */
final class Reasons {

    private Reasons() {}

    static Map<String, String> read(String file) {
        try {
            Map<String, String> reasons = new TreeMap<>();
            for (String line : Files.readAllLines(Path.of("src", "test", "resources", "architecture", file))) {
                if (!line.isBlank() && !line.startsWith("#")) {
                    String[] pair = line.split(": ", 2);
                    if (pair.length != 2 || reasons.put(pair[0].strip(), pair[1].strip()) != null) {
                        throw new IllegalStateException(file + ": \"" + line + "\" has no reason or stands twice");
                    }
                }
            }
            return reasons;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
