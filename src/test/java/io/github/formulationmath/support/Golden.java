package io.github.formulationmath.support;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * Texts kept in files: what the library prints must be what stands there, to the byte. To accept a change that was meant,
 * run the test with {@code -Dgolden.write=true} and read the difference before committing it.
 */
public final class Golden {

    private static final Path ROOT = Path.of("src", "test", "resources", "golden");

    private Golden() {}

    /**
     * Asserts that a text is what its file holds.
     *
     * @param file the path below the folder of golden files, with slashes
     * @param printed the text
     */
    public static void assertGolden(String file, String printed) {
        assertSameAsFile(ROOT.resolve(file), printed);
    }

    /**
     * Asserts that a text is what a file holds.
     *
     * @param path the file
     * @param printed the text
     */
    public static void assertSameAsFile(Path path, String printed) {
        try {
            if (Boolean.getBoolean("golden.write")) {
                Files.createDirectories(path.getParent());
                Files.writeString(path, printed);
            }
            assertThat(printed).as(path.toString()).isEqualTo(Files.readString(path, StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new UncheckedIOException(path.toString(), e);
        }
    }
}
