package io.github.formulationmath.guide;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** The pages of the documentation. */
final class GuidePages {

    static final Path DOCS = Path.of("docs");

    private GuidePages() {}

    /** Every Markdown page under docs, the README and the page for developers. */
    static List<GuidePage> all() {
        try (Stream<Path> docs = Files.walk(DOCS)) {
            return Stream.concat(Stream.of(Path.of("README.md"), Path.of("DEVELOPERS.md")), docs)
                    .filter(path -> path.toString().endsWith(".md"))
                    .sorted()
                    .map(GuidePage::read)
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The pages that show Java. */
    static List<GuidePage> withJava() {
        return all().stream().filter(page -> !page.in("java").isEmpty()).toList();
    }

    /** The pages that teach: each must show an output that the build has compared. */
    static List<GuidePage> teaching() {
        return all().stream()
                .filter(page -> !page.in("java").isEmpty() || !page.in("jshell").isEmpty())
                .toList();
    }
}
