package io.github.formulationmath.limit;

import io.github.formulationmath.formula.Substance;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * What a table knows of sameness: its members say which names and which CAS number are one substance, in whichever row
 * they say it. Filled once, then only read.
 *
 * <p>A name that the table has with several numbers stands for several forms, and says nothing of which number is meant.
 * A number stands for a substance and for its nano form alike, which are two: no name leads to the other's.
 */
final class TableSynonyms {

    private static final String NANO = "(NANO)";

    private final Map<String, List<Substance>> byKey = new HashMap<>();

    void add(Substance member) {
        member.keys()
                .forEach(key ->
                        byKey.computeIfAbsent(key, k -> new ArrayList<>(1)).add(member));
    }

    /**
     * The substance, in its own spelling, with all that members which surely are the same say of it as synonyms: a number
     * as well, because a number that only the table gives does not tell which of several forms is used.
     */
    Substance known(Substance asked) {
        Set<String> keys = new LinkedHashSet<>(asked.keys());
        String cas = asked.cas().orElse(null);
        List<String> fresh = List.copyOf(keys);
        Set<Substance> alike = new LinkedHashSet<>();
        while (!fresh.isEmpty()) {
            fresh.forEach(key -> byKey.getOrDefault(key, List.of()).stream()
                    .filter(member -> asked.cas().isPresent() || isNano(member) == isNano(asked))
                    .forEach(alike::add));
            cas = cas == null ? onlyNumber(alike) : cas;
            List<String> found = new ArrayList<>();
            for (Substance member : alike) {
                if (member.cas().isEmpty() || member.cas().equals(Optional.ofNullable(cas))) {
                    member.keys().stream().filter(keys::add).forEach(found::add);
                }
            }
            fresh = found;
        }
        if (cas != null && asked.cas().isEmpty()) {
            boolean two =
                    byKey.getOrDefault(cas, List.of()).stream().anyMatch(member -> isNano(member) != isNano(asked));
            keys.remove(two ? cas : "");
        }
        List<String> own = asked.keys();
        String[] more = keys.stream().filter(key -> !own.contains(key)).toArray(String[]::new);
        return more.length == 0 ? asked : asked.withSynonyms(more);
    }

    private static boolean isNano(Substance substance) {
        return substance.keys().stream().anyMatch(key -> key.endsWith(NANO));
    }

    private static @Nullable String onlyNumber(Set<Substance> alike) {
        List<String> numbers = alike.stream()
                .flatMap(member -> member.cas().stream())
                .distinct()
                .toList();
        return numbers.size() == 1 ? numbers.get(0) : null;
    }
}
