package io.github.formulationmath.limit;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * What a checker knows of one substance.
 *
 * @param hits what it counts towards
 * @param outside limits of entries that do not cover the product at all
 * @param otherPurpose limits that do not count it because it serves another purpose
 * @param byCas what it counts towards if a CAS number says which form it is; only where that makes a difference
 * @param casNumbers all CAS numbers the table has for the name
 */
record CheckEntry(
        List<Hit> hits,
        List<UsageLimit> outside,
        List<UsageLimit> otherPurpose,
        Map<String, CheckEntry> byCas,
        Set<String> casNumbers) {

    /** Both together, for a substance that the table has under several names or numbers; each slot counts once. */
    CheckEntry and(@Nullable CheckEntry other) {
        if (other == null || addsNothing(other)) {
            return this;
        }
        Map<Integer, Hit> bySlot = new LinkedHashMap<>();
        hits.forEach(hit -> bySlot.put(hit.slot().index(), hit));
        other.hits.forEach(hit -> bySlot.merge(hit.slot().index(), hit, Hit::stricterOf));
        return new CheckEntry(
                List.copyOf(bySlot.values()),
                both(outside, other.outside),
                both(otherPurpose, other.otherPurpose),
                Map.of(),
                Set.copyOf(both(casNumbers, other.casNumbers)));
    }

    private boolean addsNothing(CheckEntry other) {
        return hits.equals(other.hits)
                && outside.equals(other.outside)
                && otherPurpose.equals(other.otherPurpose)
                && casNumbers.containsAll(other.casNumbers);
    }

    private static <T> List<T> both(Collection<T> some, Collection<T> more) {
        Set<T> all = new LinkedHashSet<>(some);
        all.addAll(more);
        return List.copyOf(all);
    }
}
