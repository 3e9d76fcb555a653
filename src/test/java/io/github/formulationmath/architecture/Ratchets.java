package io.github.formulationmath.architecture;

import io.github.formulationmath.support.TextTable;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * How much of what should not be there is there still: {@code src/test/resources/architecture/ratchets.txt}. A number may
 * fall and never rise; one that is not listed is 0. What was found is written to {@code target/house}.
 */
public final class Ratchets {

    private static final Path FILE = Path.of("src", "test", "resources", "architecture", "ratchets.txt");
    private static final Path REPORTS = Path.of("target", "house");

    private static final Map<String, Integer> NUMBERS = read();

    private Ratchets() {}

    /** The number, or 0. */
    public static int of(String name) {
        return NUMBERS.getOrDefault(name, 0);
    }

    private static Map<String, Integer> read() {
        return TextTable.rows(FILE).stream()
                .map(line -> line.split("=", 2))
                .collect(Collectors.toMap(
                        pair -> pair[0].strip(), pair -> Integer.parseInt(pair[1].strip()), (a, b) -> b, TreeMap::new));
    }

    /** Writes what a gate found, so that whoever tidies up sees what is left. */
    public static void report(String name, Collection<String> lines) {
        try {
            Files.createDirectories(REPORTS);
            Files.write(REPORTS.resolve(name + ".txt"), List.copyOf(lines));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
