package io.github.formulationmath.fuzz;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** The kept texts: one file each, a folder for each target. */
final class Corpus {

    static final Path ROOT = Path.of("src/test/resources/fuzz");

    private Corpus() {}

    static List<Path> filesOf(FuzzTarget target) {
        try (Stream<Path> files = Files.list(ROOT.resolve(target.folder()))) {
            return files.filter(Files::isRegularFile).sorted().toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Bytes as text; what is no UTF-8 becomes replacement characters. */
    static String text(byte[] bytes) {
        return new String(bytes, StandardCharsets.UTF_8);
    }
}
