package io.github.formulationmath.support;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** A table of the test tree, one row a line. */
public final class TextTable {

    private TextTable() {}

    /** Its rows, without blank lines and comments. */
    public static List<String> rows(Path file) {
        try {
            return Files.readAllLines(file).stream()
                    .filter(line -> !line.isBlank() && !line.startsWith("#"))
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
