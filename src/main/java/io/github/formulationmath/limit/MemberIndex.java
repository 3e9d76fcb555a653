package io.github.formulationmath.limit;

import io.github.formulationmath.formula.Substance;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * Which limits count a substance: by its name, letter case and spacing forgiven, or, if the table does not have the name,
 * by its CAS number.
 */
final class MemberIndex {

    private final Map<String, List<Counted>> byName = new LinkedHashMap<>();
    private final Map<String, List<Counted>> byCas = new HashMap<>();
    private final KnownNames names;

    MemberIndex(List<UsageLimit> limits) {
        Set<String> written = new TreeSet<>();
        for (UsageLimit limit : limits) {
            for (GroupMember member : limit.group().members()) {
                if (member.isCounted()) {
                    add(new Counted(limit, member, false));
                    written.add(member.substance().name());
                }
            }
        }
        this.names = new KnownNames(written);
    }

    private void add(Counted counted) {
        Substance substance = counted.member().substance();
        byName.computeIfAbsent(LimitNames.normalise(substance.name()), name -> new ArrayList<>())
                .add(counted);
        substance
                .cas()
                .ifPresent(cas ->
                        byCas.computeIfAbsent(cas, c -> new ArrayList<>()).add(counted));
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
        List<Counted> named = named(LimitNames.normalise(substance.name()), cas);
        return named.isEmpty() && cas != null ? withCas(cas) : named;
    }

    List<Counted> named(String normalisedName, @Nullable String cas) {
        return onePerLimit(byName.getOrDefault(normalisedName, List.of()), cas);
    }

    List<Counted> withCas(String cas) {
        return onePerLimit(byCas.getOrDefault(cas, List.of()), cas);
    }

    private static List<Counted> onePerLimit(List<Counted> all, @Nullable String cas) {
        Map<UsageLimit, List<Counted>> byLimit = new LinkedHashMap<>();
        all.forEach(counted ->
                byLimit.computeIfAbsent(counted.limit(), l -> new ArrayList<>()).add(counted));
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
        Comparator<Counted> byShare = Comparator.comparing(
                counted -> Conversion.of(counted.limit(), counted.member()).factor());
        boolean upper = left.get(0).limit().kind().isUpper();
        Counted strictest = left.stream()
                .filter(counted ->
                        Conversion.of(counted.limit(), counted.member()).isKnown())
                .max(upper ? byShare : byShare.reversed())
                .orElse(left.get(0));
        boolean differ =
                left.stream().map(counted -> counted.member().form()).distinct().count() > 1
                        && strictest.limit().basis().isReference();
        return new Counted(strictest.limit(), strictest.member(), differ);
    }
}
