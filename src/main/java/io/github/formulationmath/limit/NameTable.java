package io.github.formulationmath.limit;

import java.util.Arrays;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * Entries by name, found without making a normalised copy of every name that is looked up: a table with open addressing
 * whose hash is taken over the capital letters as they are read.
 *
 * <p>Names that need more than capital letters (odd spacing, letters beyond ASCII) are normalised first.
 */
final class NameTable {

    private static final int NEEDS_NORMALISING = -1;

    private final String[] keys;
    private final @Nullable CheckEntry[] entries;
    private final int mask;

    NameTable(Map<String, CheckEntry> byNormalisedName) {
        int size = Integer.highestOneBit(Math.max(4, byNormalisedName.size())) * 4;
        this.keys = new String[size];
        this.entries = new CheckEntry[size];
        this.mask = size - 1;
        Arrays.fill(keys, "");
        byNormalisedName.forEach(this::put);
    }

    private void put(String key, CheckEntry entry) {
        int at = place(key.hashCode() & Integer.MAX_VALUE);
        while (entries[at] != null) {
            at = at + 1 & mask;
        }
        keys[at] = key;
        entries[at] = entry;
    }

    @Nullable
    CheckEntry get(String name) {
        int hash = hash(name);
        String wanted = hash == NEEDS_NORMALISING ? LimitNames.normalise(name) : name;
        int at = place(hash == NEEDS_NORMALISING ? wanted.hashCode() & Integer.MAX_VALUE : hash);
        while (entries[at] != null && !same(keys[at], wanted)) {
            at = at + 1 & mask;
        }
        return entries[at];
    }

    private int place(int hash) {
        return (hash ^ hash >>> 15) & mask;
    }

    /** The hash of the name in capital letters, without its sign; or that it has to be normalised first. */
    private static int hash(String name) {
        int hash = 0;
        char last = ' ';
        for (int i = 0; i < name.length(); i++) {
            char c = name.charAt(i);
            boolean odd = c > 126 || c < ' ' || c == ' ' && isEdge(last) || last == ' ' && i > 0 && isEdge(c);
            if (odd) {
                return NEEDS_NORMALISING;
            }
            hash = 31 * hash + upper(c);
            last = c;
        }
        return last == ' ' ? NEEDS_NORMALISING : hash & Integer.MAX_VALUE;
    }

    private static boolean isEdge(char c) {
        return c == ' ' || c == '-' || c == '/';
    }

    private static char upper(char c) {
        return c >= 'a' && c <= 'z' ? (char) (c - 32) : c;
    }

    private static boolean same(String key, String name) {
        if (key.length() != name.length()) {
            return false;
        }
        for (int i = 0; i < key.length(); i++) {
            if (key.charAt(i) != upper(name.charAt(i))) {
                return false;
            }
        }
        return true;
    }
}
