package io.github.formulationmath.figures;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** The measured figures, as the benchmarks wrote them. */
final class Measured {

    private Measured() {}

    static List<String> lines() {
        try {
            return Files.readAllLines(Path.of("docs/benchmarks.md"));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
