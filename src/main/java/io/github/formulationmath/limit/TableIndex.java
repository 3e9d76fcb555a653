package io.github.formulationmath.limit;

import io.github.formulationmath.formula.Substance;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * What a table says of substances: by their names and synonyms, in normal form, and by their CAS numbers. Filled once, then
 * only read; how a limit counts its members is worked out when it is first asked for.
 */
final class TableIndex {

    private static final String NANO = "(NANO)";

    private final KeyIndex<Substance> members = new KeyIndex<>();
    private final KeyIndex<UsageLimit> counting = new KeyIndex<>();
    private final KeyIndex<UsageLimit> mentioning = new KeyIndex<>();
    private final KeyIndex<OmittedEntry> omitted = new KeyIndex<>();
    private final Map<String, List<Counting>> byLimit = new ConcurrentHashMap<>();
    private final Set<String> written = new TreeSet<>();
    private @Nullable KnownNames names;

    TableIndex(List<UsageLimit> limits, List<OmittedEntry> entries) {
        Set<Substance> known = new HashSet<>();
        for (UsageLimit limit : limits) {
            for (GroupMember member : limit.group().members()) {
                List<String> keys = member.substance().keys();
                if (known.add(member.substance())) {
                    members.add(keys, member.substance());
                }
                boolean told = member.isCounted() || !member.isAllowed();
                (told ? counting : mentioning).add(keys, limit);
                if (told) {
                    written.add(member.substance().name());
                }
            }
        }
        entries.forEach(entry -> omitted.add(entry.keys(), entry));
    }

    /** The names of what is counted, as the table writes them. */
    synchronized KnownNames names() {
        KnownNames known = names == null ? new KnownNames(written) : names;
        names = known;
        return known;
    }

    /** The limits whose entries name a substance without counting it. */
    List<UsageLimit> mentioning(Substance substance) {
        return mentioning.find(substance.keys());
    }

    /** The entries that speak of a substance and are not transcribed. */
    List<OmittedEntry> omitted(Substance substance) {
        return omitted.find(substance.keys());
    }

    boolean counts(String key) {
        return counting.has(key);
    }

    /** What counts a substance of a name, once for each limit; a number that the limit has with the name tells the form. */
    List<Counting> named(String name, String cas) {
        return oncePerLimit(name, cas, form -> form.isNamed(name));
    }

    /** What counts a substance of a number, once for each limit. */
    List<Counting> numbered(String cas) {
        return oncePerLimit(cas, cas, form -> form.isNumbered(cas));
    }

    private List<Counting> oncePerLimit(String key, String cas, Predicate<Counting> isMeant) {
        List<Counting> found = new ArrayList<>();
        for (UsageLimit limit : counting.find(key)) {
            List<Counting> forms = of(limit).stream().filter(isMeant).toList();
            if (!forms.isEmpty()) {
                found.add(Counting.strictestOf(forms, cas));
            }
        }
        return found;
    }

    /** The CAS numbers that the table has for a name. */
    Set<String> casNumbersOf(String name) {
        return counting.find(name).stream()
                .flatMap(limit -> of(limit).stream())
                .filter(form -> form.isNamed(name))
                .flatMap(form -> form.member().substance().cas().stream())
                .collect(Collectors.toUnmodifiableSet());
    }

    /** What counts a substance, once for each limit; a limit that has its name and its number counts it by the name. */
    List<Counting> find(Substance substance) {
        String cas = substance.cas().orElse("");
        List<Counting> named = new ArrayList<>();
        List<Counting> numbered = new ArrayList<>();
        for (UsageLimit limit : counting.find(substance.keys())) {
            List<Counting> forms = of(limit).stream()
                    .filter(form -> substance.keys().stream().anyMatch(form::isNamed))
                    .toList();
            if (forms.isEmpty()) {
                List<Counting> others = of(limit).stream()
                        .filter(form -> substance.keys().stream().anyMatch(form::isNumbered))
                        .toList();
                numbered.add(Counting.strictestOf(others, cas));
            } else {
                named.add(Counting.strictestOf(forms, cas));
            }
        }
        named.addAll(numbered);
        return named;
    }

    private List<Counting> of(UsageLimit limit) {
        return byLimit.computeIfAbsent(limit.id(), id -> Counting.of(limit));
    }

    /**
     * The substance, in its own spelling, with all that members which surely are the same say of it as synonyms, in whichever
     * row they say it: a number as well, because a number that only the table gives does not tell which of several forms is
     * used. A name that the table has with several numbers stands for several forms, and says nothing of which number is
     * meant. A number stands for a substance and for its nano form alike, which are two: no name leads to the other's.
     */
    Substance known(Substance asked) {
        Set<String> keys = new LinkedHashSet<>(asked.keys());
        String cas = asked.cas().orElse(null);
        List<String> fresh = asked.keys();
        Set<Substance> alike = new LinkedHashSet<>();
        while (!fresh.isEmpty()) {
            members.find(fresh).stream()
                    .filter(member -> asked.cas().isPresent() || isNano(member) == isNano(asked))
                    .forEach(alike::add);
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
            boolean two = members.find(cas).stream().anyMatch(member -> isNano(member) != isNano(asked));
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
