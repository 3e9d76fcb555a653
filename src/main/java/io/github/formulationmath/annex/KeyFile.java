package io.github.formulationmath.annex;

import io.github.formulationmath.formula.SubstanceName;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.util.Arrays;
import java.util.Objects;

/**
 * The names and numbers of both lists as sorted hashes, so that a formula which holds none of them never waits for the lists
 * themselves. Made from the tables of the lists; a test makes it again and compares. A hash that is in it says only that
 * the lists have to be asked.
 */
final class KeyFile {

    static final String NAME = "annex-keys.bin";

    /** Before the keys of each list. */
    static final char PROHIBITED = 'P';

    static final char COLORANT = 'C';

    private static final long OFFSET = 0xcbf29ce484222325L;
    private static final long PRIME = 0x100000001b3L;

    private final long[] sorted;

    private KeyFile(long[] sorted) {
        this.sorted = sorted;
    }

    /** The form in which the names of the lists are compared: that of {@link SubstanceName}, with two orthographies made one. */
    static String keyOf(String name) {
        return loose(SubstanceName.normalise(name));
    }

    /** The same from a name in normal form. */
    static String loose(String normal) {
        String key = normal;
        key = key.indexOf("SULPH") < 0 ? key : key.replace("SULPH", "SULF");
        key = key.indexOf("HYDROCHLORIDE") < 0 ? key : key.replace("HYDROCHLORIDE", "HCL");
        key = key.indexOf("ALUMINIUM") < 0 ? key : key.replace("ALUMINIUM", "ALUMINUM");
        key = key.indexOf("OESTR") < 0 ? key : key.replace("OESTR", "ESTR");
        return key.indexOf("NO. ") < 0 ? key : key.replace("NO. ", "NO ");
    }

    /** The one in the jar, read when first asked for. */
    static KeyFile bundled() {
        return Bundled.KEYS;
    }

    /** Loaded when first asked for. */
    private static final class Bundled {
        static final KeyFile KEYS = read();
    }

    private static KeyFile read() {
        try (InputStream in = Objects.requireNonNull(
                KeyFile.class.getResourceAsStream(NAME), "the keys of the lists are missing from the jar")) {
            byte[] bytes = in.readAllBytes();
            long[] keys = new long[bytes.length / Long.BYTES];
            ByteBuffer.wrap(bytes).asLongBuffer().get(keys);
            return new KeyFile(keys);
        } catch (IOException e) {
            throw new UncheckedIOException("the keys of the lists cannot be read", e);
        }
    }

    boolean mayHave(char list, String key) {
        return mayHave(hash(list, key, key.length()));
    }

    boolean mayHave(char list, String key, int end) {
        return mayHave(hash(list, key, end));
    }

    boolean mayHave(long hash) {
        return Arrays.binarySearch(sorted, hash) >= 0;
    }

    /** FNV-1a (Fowler, Noll, Vo) over the 16-bit units of the text, 64 bits. */
    static long hash(char list, String key, int end) {
        return hash((OFFSET ^ list) * PRIME, key, 0, end);
    }

    /** A part of a text more. */
    static long hash(long before, String text, int from, int end) {
        long hash = before;
        for (int i = from; i < end; i++) {
            hash = (hash ^ text.charAt(i)) * PRIME;
        }
        return hash;
    }

    /** One unit more. */
    static long hash(long before, char unit) {
        return (before ^ unit) * PRIME;
    }
}
