package io.github.formulationmath.limit;

import io.github.formulationmath.annex.ProhibitedSubstances;
import io.github.formulationmath.formula.NameBook;
import io.github.formulationmath.formula.Substance;
import io.github.formulationmath.formula.SubstanceName;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;
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
    private final boolean declares;
    private final List<UsageLimit> all;
    private volatile @Nullable NameBook names;
    private volatile @Nullable NameBook withProhibited;
    private @Nullable SaltNames salts;

    TableIndex(List<UsageLimit> limits, List<OmittedEntry> entries) {
        all = limits;
        Set<Substance> known = new HashSet<>();
        boolean anyDeclares = false;
        for (UsageLimit limit : limits) {
            anyDeclares |= limit.kind() == LimitKind.DECLARE_ABOVE;
            for (GroupMember member : limit.group().members()) {
                List<String> keys = member.substance().keys();
                if (known.add(member.substance())) {
                    members.add(keys, member.substance());
                }
                boolean told = member.isCounted() || !member.isAllowed();
                (told ? counting : mentioning).add(keys, limit);
                written.add(member.substance().name());
                written.addAll(member.substance().synonyms());
            }
        }
        for (OmittedEntry entry : entries) {
            omitted.add(entry.keys(), entry);
            written.addAll(entry.names());
        }
        declares = anyDeclares;
    }

    /** All names that the table has, as it writes them. */
    NameBook names() {
        NameBook known = names;
        if (known == null) {
            known = NameBook.of(written);
            names = known;
        }
        return known;
    }

    /**
     * Names that were probably meant by one that nothing is known of, the likeliest first, of the table and, if it asks them,
     * of the prohibited substances.
     */
    List<String> suggest(String name, int most, boolean asksEuAnnexes) {
        return asksEuAnnexes && ProhibitedSubstances.eu2024February().hasCloseTo(name)
                ? namesWithProhibited().suggest(name, most)
                : names().suggest(name, most);
    }

    private NameBook namesWithProhibited() {
        NameBook known = withProhibited;
        if (known == null) {
            Set<String> both = new TreeSet<>(written);
            both.addAll(ProhibitedSubstances.eu2024February().names());
            known = NameBook.of(both);
            withProhibited = known;
        }
        return known;
    }

    /** Whether the table has substances to be declared, so that constituents of natural materials matter. */
    boolean declares() {
        return declares;
    }

    /** What a substance of a formula is taken for of which the table has no name itself. */
    Optional<NameBook.Reading> read(Substance asked) {
        NameBook book = names();
        for (String key : asked.keys()) {
            if (book.has(key)) {
                return Optional.empty();
            }
        }
        Optional<NameBook.Reading> found = book.read(asked.name());
        for (int i = 0; found.isEmpty() && i < asked.synonyms().size(); i++) {
            found = book.read(asked.synonyms().get(i));
        }
        return found;
    }

    /** The substance with the names of the table that it is taken for; those of a blend are other substances. */
    private Substance asRead(Substance asked) {
        NameBook.Reading reading = read(asked).orElse(null);
        return reading == null || reading.how() == NameBook.How.BLEND
                ? asked
                : asked.withSynonyms(reading.names().toArray(new String[0]));
    }

    /** The limits whose entries name a substance without counting it. */
    List<UsageLimit> mentioning(Substance substance) {
        return mentioning.find(substance.keys());
    }

    /** The limits on "X and its salts" that do not name a substance, but are of a salt that its name reads like. */
    List<UsageLimit> saltsLike(Substance substance) {
        String name = substance.keys().get(0);
        return name.indexOf(' ') < 0 && name.indexOf('-') < 0 ? List.of() : salts().like(name);
    }

    private synchronized SaltNames salts() {
        SaltNames known = salts == null ? new SaltNames(all) : salts;
        salts = known;
        return known;
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
        return oncePerLimit(name, cas, false);
    }

    /** What counts a substance of a number, once for each limit. */
    List<Counting> numbered(String cas) {
        return oncePerLimit(cas, cas, true);
    }

    private List<Counting> oncePerLimit(String key, String cas, boolean isNumber) {
        List<Counting> found = new ArrayList<>();
        for (UsageLimit limit : counting.find(key)) {
            List<Counting> forms = new ArrayList<>(1);
            for (Counting form : of(limit)) {
                if (isNumber ? form.isNumbered(key) : form.isNamed(key)) {
                    forms.add(form);
                }
            }
            if (!forms.isEmpty()) {
                found.add(Counting.strictestOf(forms, cas));
            }
        }
        return found;
    }

    /** The CAS numbers that the table has for a name. */
    Set<String> casNumbersOf(String name) {
        Set<String> numbers = new HashSet<>();
        for (UsageLimit limit : counting.find(name)) {
            for (Counting form : of(limit)) {
                String cas =
                        form.isNamed(name) ? form.member().substance().cas().orElse("") : "";
                if (!cas.isEmpty()) {
                    numbers.add(cas);
                }
            }
        }
        return Set.copyOf(numbers);
    }

    /** What counts a substance, once for each limit; a limit that has its name and its number counts it by the name. */
    List<Counting> find(Substance substance) {
        String cas = substance.cas().orElse("");
        List<Counting> named = new ArrayList<>();
        List<Counting> numbered = new ArrayList<>();
        for (UsageLimit limit : counting.find(substance.keys())) {
            List<Counting> forms = new ArrayList<>(1);
            List<Counting> others = new ArrayList<>(1);
            for (Counting form : of(limit)) {
                if (form.isNamedOneOf(substance.keys())) {
                    forms.add(form);
                } else if (form.isNumberedOneOf(substance.keys())) {
                    others.add(form);
                }
            }
            if (forms.isEmpty()) {
                numbered.add(Counting.strictestOf(others, cas));
            } else {
                named.add(Counting.strictestOf(forms, cas));
            }
        }
        named.addAll(numbered);
        return named;
    }

    private List<Counting> of(UsageLimit limit) {
        List<Counting> known = byLimit.get(limit.id());
        if (known == null) {
            known = Counting.of(limit);
            byLimit.put(limit.id(), known);
        }
        return known;
    }

    /**
     * The substance, in its own spelling, with all that members which surely are the same say of it as synonyms, in whichever
     * row they say it: a number as well, because a number that only the table gives does not tell which of several forms is
     * used. A name that the table has with several numbers stands for several forms, and says nothing of which number is
     * meant. A number stands for a substance and for its nano form alike, which are two: no name leads to the other's.
     */
    Substance known(Substance written) {
        Substance asked = asRead(written);
        Set<String> keys = new LinkedHashSet<>(asked.keys());
        String cas = asked.cas().orElse(null);
        List<String> fresh = asked.keys();
        Set<Substance> alike = new LinkedHashSet<>();
        while (!fresh.isEmpty()) {
            for (Substance member : members.find(fresh)) {
                if (asked.cas().isPresent() || isNano(member) == isNano(asked)) {
                    alike.add(member);
                }
            }
            cas = cas == null ? onlyNumber(alike) : cas;
            List<String> found = new ArrayList<>();
            for (Substance member : alike) {
                if (member.cas().isEmpty() || member.cas().equals(Optional.ofNullable(cas))) {
                    for (String key : member.keys()) {
                        if (keys.add(key)) {
                            found.add(key);
                        }
                    }
                }
            }
            fresh = found;
        }
        if (cas != null && asked.cas().isEmpty() && standsForTwo(cas, asked)) {
            keys.remove(cas);
        }
        keys.removeAll(Set.copyOf(asked.keys()));
        return keys.isEmpty() ? asked : asked.withSynonyms(keys.toArray(new String[0]));
    }

    /** Whether a number stands for a nanomaterial and for what is none. */
    private boolean standsForTwo(String cas, Substance asked) {
        for (Substance member : members.find(cas)) {
            if (isNano(member) != isNano(asked)) {
                return true;
            }
        }
        return false;
    }

    private static boolean isNano(Substance substance) {
        for (String key : substance.keys()) {
            if (key.endsWith(NANO)) {
                return true;
            }
        }
        return false;
    }

    private static @Nullable String onlyNumber(Set<Substance> alike) {
        Set<String> numbers = new HashSet<>();
        for (Substance member : alike) {
            numbers.add(member.cas().orElse(""));
        }
        numbers.remove("");
        return numbers.size() == 1 ? numbers.iterator().next() : null;
    }

    /**
     * What a table has under the keys of substances ({@link Substance#keys()}). Filled once, each with an object that stands
     * for no other, then only read.
     *
     * @param <T> what is looked up
     */
    private static final class KeyIndex<T> {

        private final Map<String, List<T>> byKey = new HashMap<>();

        void add(Collection<String> keys, T found) {
            for (String key : keys) {
                List<T> all = byKey.get(key);
                if (all == null) {
                    all = new ArrayList<>(1);
                    byKey.put(key, all);
                }
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

    /**
     * Names of salts taken apart: SODIUM BENZOATE is a base and an acid. An entry on "X and its salts" means salts that it does
     * not print, and some of them are only to be told by their names.
     */
    private static final class SaltNames {

        private static final List<String> SALTS = List.of("SALTS", "SULPHITES", "SULFITES");

        private static final Set<String> AMINES = Set.of(
                "ETHANOLAMINE",
                "MONOETHANOLAMINE",
                "DIETHANOLAMINE",
                "TRIETHANOLAMINE",
                "MEA",
                "DEA",
                "TEA",
                "MIPA",
                "DIPA",
                "TIPA");

        /** How the names of salts begin that are called after their acid. */
        private static final Set<String> BASES = bases();

        /** Dimethyl and the like begin the names of many things, and are no base. */
        private static boolean isRadical(String base) {
            return base.endsWith("YL") && base.indexOf(' ') < 0 && base.indexOf('-') < 0;
        }

        private static Set<String> bases() {
            Set<String> bases = new HashSet<>(AMINES);
            bases.addAll(List.of(
                    "CALCIUM MAGNESIUM ZINC ALUMINUM ALUMINIUM COPPER SILVER STRONTIUM BARIUM MANGANESE BISMUTH IRON"
                            .split(" ", -1)));
            bases.addAll(List.of("FERROUS", "FERRIC", "CHOLINE", "LYSINE", "ARGININE", "BETAINE", "TROMETHAMINE"));
            for (String metal : List.of("SODIUM", "POTASSIUM", "AMMONIUM", "LITHIUM")) {
                for (String many : List.of("", "DI", "TRI", "TETRA", "MONO")) {
                    bases.add(many.concat(metal));
                }
            }
            return Set.copyOf(bases);
        }

        /** Where the name of the acid begins; 0 if the name begins with no base. */
        private static int acid(String name) {
            for (int i = 0; i < name.length() - 1; i++) {
                if (name.charAt(i) == ' ' || name.charAt(i) == '-') {
                    return BASES.contains(name.substring(0, i)) ? i + 1 : 0;
                }
            }
            return 0;
        }

        /** Zinc salts that water does not dissolve: an entry on water-soluble ones does not mean them. */
        private static final Set<String> INSOLUBLE = Set.of(
                "OXIDE",
                "HYDROXIDE",
                "CARBONATE",
                "SULFIDE",
                "STEARATE",
                "LAURATE",
                "MYRISTATE",
                "PALMITATE",
                "RICINOLEATE",
                "UNDECYLENATE",
                "PYRITHIONE");

        private final KeyIndex<UsageLimit> byAcid = new KeyIndex<>();
        private final KeyIndex<UsageLimit> byBase = new KeyIndex<>();

        SaltNames(List<UsageLimit> limits) {
            for (UsageLimit limit : limits) {
                if (limit.kind().restrictsContents() && isOnSalts(limit.group().name())) {
                    add(limit);
                }
            }
        }

        private static boolean isOnSalts(String group) {
            String name = SubstanceName.normalise(group);
            return (name.contains("SALTS") || name.contains("ITES"))
                    && !Collections.disjoint(SALTS, List.of(name.split("[^\\p{L}\\p{N}]+", -1)));
        }

        /**
         * An acid is one of the entry's if the entry prints salts of it with two bases: by ZINC LACTATE alone it is the zinc that
         * counts, and by salts of amines alone the amines. Where it prints none, what its names begin with in common counts.
         */
        private void add(UsageLimit limit) {
            Map<String, Set<String>> basesOf = new HashMap<>();
            Map<String, String> begins = new HashMap<>();
            Map<String, Integer> times = new HashMap<>();
            for (GroupMember member : limit.group().members()) {
                String name = member.substance().keys().get(0);
                int acid = acid(name);
                if (acid > 0) {
                    Set<String> bases = basesOf.getOrDefault(name.substring(acid), new HashSet<>());
                    bases.add(name.substring(0, acid - 1));
                    basesOf.put(name.substring(acid), bases);
                }
                int space = name.indexOf(' ');
                String first = space < 0 ? name : name.substring(0, space);
                String common = begins.get(first);
                begins.put(first, common == null ? name : commonWords(common, name));
                times.put(first, times.getOrDefault(first, 0) + 1);
            }
            for (Map.Entry<String, Set<String>> acid : Map.copyOf(basesOf).entrySet()) {
                if (acid.getValue().size() < 2 || AMINES.containsAll(acid.getValue())) {
                    basesOf.remove(acid.getKey());
                }
            }
            byAcid.add(basesOf.keySet(), limit);
            if (basesOf.isEmpty()) {
                for (Map.Entry<String, Integer> first : times.entrySet()) {
                    String base = begins.getOrDefault(first.getKey(), first.getKey());
                    if (first.getValue() > 1 && !isRadical(base)) {
                        byBase.add(Set.of(base), limit);
                    }
                }
            }
        }

        /** The words that both begin with. */
        private static String commonWords(String one, String other) {
            String[] some = one.split(" ", -1);
            String[] more = other.split(" ", -1);
            int same = 0;
            while (same < Math.min(some.length, more.length) && some[same].equals(more[same])) {
                same++;
            }
            return String.join(" ", List.of(some).subList(0, same));
        }

        List<UsageLimit> like(String written) {
            String name = written.replace(NANO, "").strip();
            int acid = acid(name);
            List<UsageLimit> found = new ArrayList<>(acid > 0 ? byAcid.find(name.substring(acid)) : List.of());
            for (int end = name.indexOf(' '); end > 0; end = name.indexOf(' ', end + 1)) {
                if (!INSOLUBLE.contains(name.substring(end + 1))) {
                    for (UsageLimit limit : byBase.find(name.substring(0, end))) {
                        if (!KeyIndex.has(found, limit)) {
                            found.add(limit);
                        }
                    }
                }
            }
            return List.copyOf(found);
        }
    }
}
