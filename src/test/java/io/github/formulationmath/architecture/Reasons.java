package io.github.formulationmath.architecture;

import io.github.formulationmath.support.TextTable;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;

/** A list of exceptions in {@code src/test/resources/architecture}, each line a name, a colon and the reason. */
final class Reasons {

    private Reasons() {}

    static Map<String, String> read(String file) {
        Map<String, String> reasons = new TreeMap<>();
        for (String line : TextTable.rows(Path.of("src", "test", "resources", "architecture", file))) {
            String[] pair = line.split(": ", 2);
            if (pair.length != 2 || reasons.put(pair[0].strip(), pair[1].strip()) != null) {
                throw new IllegalStateException(file + ": \"" + line + "\" has no reason or stands twice");
            }
        }
        return reasons;
    }
}
