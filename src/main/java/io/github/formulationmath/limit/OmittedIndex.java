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

    /** What speaks of a substance, by its name or its CAS number. */
    List<OmittedEntry> find(Substance substance) {
        if (byName.isEmpty() && byCas.isEmpty()) {
            return List.of();
        }
        List<OmittedEntry> named = byName.getOrDefault(LimitNames.normalise(substance.name()), List.of());
        List<OmittedEntry> numbered =
                substance.cas().map(cas -> byCas.getOrDefault(cas, List.of())).orElse(List.of());
        if (numbered.isEmpty()) {
            return named;
        }
        Set<OmittedEntry> both = new LinkedHashSet<>(named);
        both.addAll(numbered);
        return List.copyOf(both);
    }
}
