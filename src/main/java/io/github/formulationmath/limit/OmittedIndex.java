package io.github.formulationmath.limit;

import io.github.formulationmath.formula.Substance;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** The entries that a table does not transcribe, by the names and CAS numbers of what they speak of. */
final class OmittedIndex {

    private final Map<String, List<OmittedEntry>> byName = new HashMap<>();
    private final Map<String, List<OmittedEntry>> byCas = new HashMap<>();

    OmittedIndex(List<OmittedEntry> entries) {
        for (OmittedEntry entry : entries) {
            entry.names().stream()
                    .map(LimitNames::normalise)
                    .distinct()
                    .forEach(name -> byName.computeIfAbsent(name, key -> new ArrayList<>())
                            .add(entry));
            entry.casNumbers().stream()
                    .distinct()
                    .forEach(cas ->
                            byCas.computeIfAbsent(cas, key -> new ArrayList<>()).add(entry));
        }
    }

    /** What speaks of a substance, by any of its names or its CAS number. */
    List<OmittedEntry> find(Substance substance) {
        if (byName.isEmpty() && byCas.isEmpty()) {
            return List.of();
        }
        Set<OmittedEntry> found = new LinkedHashSet<>();
        for (String key : substance.keys()) {
            found.addAll(byName.getOrDefault(key, List.of()));
            found.addAll(byCas.getOrDefault(key, List.of()));
        }
        return List.copyOf(found);
    }
}
