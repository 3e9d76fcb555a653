package io.github.formulationmath.annex;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.formulationmath.formula.LooseNames;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Objects;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/**
 * The key file is made again from the tables and compared. Written with {@code -Dformulationmath.annex.keys=write}, see
 * docs/limits-in-the-jar.md.
 */
class KeyFileTest {

    private static final Path FILE =
            Path.of("src/main/resources/io/github/formulationmath/annex").resolve(KeyFile.NAME);

    private static byte[] made() {
        TreeSet<Long> hashes = new TreeSet<>();
        ProhibitedSubstances.keys().forEach(key -> hashes.add(KeyFile.hash(KeyFile.PROHIBITED, key, key.length())));
        Colorants.keys().forEach(key -> hashes.add(KeyFile.hash(KeyFile.COLORANT, key, key.length())));
        ByteBuffer bytes = ByteBuffer.allocate(hashes.size() * Long.BYTES);
        hashes.forEach(bytes::putLong);
        return bytes.array();
    }

    @Test
    void it_is_what_the_tables_make() throws IOException {
        byte[] made = made();
        if ("write".equals(System.getProperty("formulationmath.annex.keys"))) {
            Files.createDirectories(FILE.getParent());
            Files.write(FILE, made);
            return;
        }
        try (InputStream in = Objects.requireNonNull(KeyFile.class.getResourceAsStream(KeyFile.NAME))) {
            assertThat(in.readAllBytes()).isEqualTo(made);
        }
        assertThat(made.length).isLessThan(64 * 1024);
    }

    /** The names of the prohibited substances, by which slips of the pen are seen without the list. */
    @Test
    void the_loose_names_are_what_the_list_makes() throws IOException {
        byte[] made =
                LooseNames.text(ProhibitedSubstances.eu2024February().names()).getBytes(StandardCharsets.UTF_8);
        if ("write".equals(System.getProperty("formulationmath.annex.keys"))) {
            Files.write(FILE.resolveSibling(AnnexFiles.LOOSE_NAMES), made);
            return;
        }
        try (InputStream in = Objects.requireNonNull(KeyFile.class.getResourceAsStream(AnnexFiles.LOOSE_NAMES))) {
            assertThat(in.readAllBytes()).isEqualTo(made);
        }
    }

    /** Test vectors of the 64-bit FNV-1a for "a" and "foobar" (RFC 9923, appendix; Fowler, Noll, Vo). */
    @Test
    void the_hash_is_fnv_1a() {
        assertThat(KeyFile.hash('a', "", 0)).isEqualTo(0xaf63dc4c8601ec8cL);
        assertThat(KeyFile.hash('f', "oobar", 5)).isEqualTo(0x85944171f73967e8L);
    }

    @Test
    void what_it_does_not_have_is_not_looked_for() {
        assertThat(KeyFile.bundled().mayHave(KeyFile.PROHIBITED, "AQUA")).isFalse();
        assertThat(KeyFile.bundled().mayHave(KeyFile.PROHIBITED, "TRETINOIN")).isTrue();
        assertThat(KeyFile.bundled().mayHave(KeyFile.COLORANT, "TRETINOIN")).isFalse();
        assertThat(KeyFile.bundled().mayHave(KeyFile.PROHIBITED, "TRETINOIN CREAM", 9))
                .isTrue();
    }
}
