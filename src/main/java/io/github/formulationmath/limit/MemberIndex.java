package io.github.formulationmath.limit;

import io.github.formulationmath.formula.Substance;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * Which limits count a substance: by its name or a synonym, in normal form, or by its CAS number; a limit that has both
 * counts it by the name. And which limits only mention it.
 */
final class MemberIndex {

    private final Map<String, List<Counted>> byName = new LinkedHashMap<>();
    private final Map<String, List<Counted>> byCas = new HashMap<>();
    private final Map<String, Set<UsageLimit>> mentioning = new HashMap<>();
    private final TableSynonyms synonyms = new TableSynonyms();
    private final KnownNames names;

    MemberIndex(List<UsageLimit> limits) {
        Set<String> written = new TreeSet<>();
        for (UsageLimit limit : limits) {
            List<Conversion> conversions = Conversion.ofMembers(limit);
            for (int i = 0; i < conversions.size(); i++) {
                GroupMember member = limit.group().members().get(i);
                synonyms.add(member.substance());
                if (!member.isCounted()) {
                    member.substance()
                            .keys()
                            .forEach(key -> mentioning
                                    .computeIfAbsent(key, k -> new LinkedHashSet<>())
                                    .add(limit));
                } else {
                    add(new Counted(limit, member, conversions.get(i), false));
                    written.add(member.substance().name());
                }
            }
        }
        this.names = new KnownNames(written);
    }

    private void add(Counted counted) {
        Substance substance = counted.member().substance();
        substance.keys().stream()
                .filter(key -> !substance.cas().equals(Optional.of(key)))
                .forEach(name ->
                        byName.computeIfAbsent(name, n -> new ArrayList<>()).add(counted));
        substance
                .cas()
                .ifPresent(cas ->
                        byCas.computeIfAbsent(cas, c -> new ArrayList<>()).add(counted));
    }

    /** A substance with every other name, and the number, by which the table shows that it knows it. */
    Substance known(Substance asked) {
        return synonyms.known(asked);
    }

    /** The limits whose entries name a substance without counting it. */
    List<UsageLimit> mentioning(Substance substance) {
        Set<UsageLimit> found = new LinkedHashSet<>();
        substance.keys().forEach(key -> found.addAll(mentioning.getOrDefault(key, Set.of())));
        return List.copyOf(found);
    }

    /** All names as the table writes them. */
    KnownNames names() {
        return names;
    }

    Set<String> normalisedNames() {
        return byName.keySet();
    }

    Set<String> casNumbers() {
        return byCas.keySet();
    }

    /** The CAS numbers that the table has for a name. */
    Set<String> casNumbersOf(String normalisedName) {
        return byName.getOrDefault(normalisedName, List.of()).stream()
                .flatMap(counted -> counted.member().substance().cas().stream())
                .collect(Collectors.toUnmodifiableSet());
    }

    /** What counts a substance, one member for each limit. */
    List<Counted> find(Substance substance) {
        String cas = substance.cas().orElse(null);
        List<Counted> named = new ArrayList<>();
        substance.keys().forEach(key -> named.addAll(byName.getOrDefault(key, List.of())));
        Set<UsageLimit> limits = named.stream().map(Counted::limit).collect(Collectors.toCollection(HashSet::new));
        List<Counted> found = new ArrayList<>(onePerLimit(named, cas));
        for (String key : substance.keys()) {
            withCas(key).stream().filter(counted -> limits.add(counted.limit())).forEach(found::add);
        }
        return found;
    }

    List<Counted> named(String normalisedName, @Nullable String cas) {
        return onePerLimit(byName.getOrDefault(normalisedName, List.of()), cas);
    }

    List<Counted> withCas(String cas) {
        return onePerLimit(byCas.getOrDefault(cas, List.of()), cas);
    }

    private static List<Counted> onePerLimit(List<Counted> all, @Nullable String cas) {
        Map<String, List<Counted>> byLimit = new LinkedHashMap<>();
        all.forEach(counted -> byLimit.computeIfAbsent(counted.limit().id(), id -> new ArrayList<>())
                .add(counted));
        return byLimit.values().stream().map(forms -> choose(forms, cas)).toList();
    }

    private static Counted choose(List<Counted> forms, @Nullable String cas) {
        List<Counted> exact = cas == null
                ? List.of()
                : forms.stream()
                        .filter(counted -> counted.member().substance().cas().equals(Optional.of(cas)))
                        .toList();
        List<Counted> left = exact.isEmpty() ? forms : exact;
        if (left.size() == 1) {
            return left.get(0);
        }
        Comparator<Counted> byShare =
                Comparator.comparing(counted -> counted.conversion().factor());
        boolean upper = left.get(0).limit().kind().isUpper();
        Counted strictest = left.stream()
                .filter(counted -> counted.conversion().isKnown())
                .max(upper ? byShare : byShare.reversed())
                .orElse(left.get(0));
        boolean differ =
                left.stream().map(counted -> counted.member().form()).distinct().count() > 1
                        && strictest.limit().basis().isReference();
        return new Counted(strictest.limit(), strictest.member(), strictest.conversion(), differ);
    }
}
