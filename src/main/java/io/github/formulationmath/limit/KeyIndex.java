package io.github.formulationmath.limit;

import io.github.formulationmath.formula.Substance;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * What a table has under the keys of substances ({@link Substance#keys()}). Filled once, each with an object that stands
 * for no other, then only read.
 *
 * @param <T> what is looked up
 */
final class KeyIndex<T> {

    private final Map<String, List<T>> byKey = new HashMap<>();

    void add(Collection<String> keys, T found) {
        for (String key : keys) {
            List<T> all = byKey.computeIfAbsent(key, k -> new ArrayList<>(1));
            if (!has(all, found)) {
                all.add(found);
            }
        }
    }

    /** The very object: what is filled in once is one object under all its keys, and to compare two fields by field is dear. */
    static boolean has(List<?> all, Object found) {
        for (Object one : all) {
            if (one == found) {
                return true;
            }
        }
        return false;
    }

    boolean has(String key) {
        return byKey.containsKey(key);
    }

    List<T> find(String key) {
        return byKey.getOrDefault(key, List.of());
    }

    /** Each once, in the order of the keys. */
    List<T> find(Collection<String> keys) {
        List<T> found = new ArrayList<>();
        for (String key : keys) {
            for (T one : find(key)) {
                if (!has(found, one)) {
                    found.add(one);
                }
            }
        }
        return found;
    }
}
