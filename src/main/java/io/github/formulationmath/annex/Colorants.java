package io.github.formulationmath.annex;

import io.github.formulationmath.formula.Substance;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.function.Function;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * Annex IV of Regulation (EC) No 1223/2009 as of 25 February 2024: the colorants allowed. Colorants that it does not list are
 * not allowed as colorants, save in products that colour the hair, for which Annex IV is not meant.
 *
 * <p><b>Caution.</b> A dated transcription, never current law; it defers to the law in force, to the supplier's documents and
 * to a qualified safety assessor.
 *
 * <p>A colour index number is found in any spelling: {@code CI 77491}, {@code CI77491}, {@code C.I. 77491}, {@code Iron Oxides
 * (CI 77491)}, {@code 77491}; a lake or salt such as {@code CI 15850:1} counts as its colorant. Else the names of the entry
 * count, {@code Pigment Red 57:1} or {@code E 172}, and the CAS number.
 *
 * <p>Immutable and thread-safe.
 */
public final class Colorants {

    private static final Colorants EU = new Colorants();
    private static final Finding NOTHING = new Finding(List.of(), List.of());

    /** Made when a name has five digits; few have. */
    private static final class Forms {
        static final Pattern NUMBER = Pattern.compile(
                "(?:^|[^A-Z])(?:C\\.? ?I\\.?|COLOU?R INDEX)[ -]?(?:NO\\.? ?)?([0-9]{5})(?::([0-9]))?(?![0-9])");
        static final Pattern BARE = Pattern.compile("^([1-7][0-9]{4})(?::([0-9]))?$");
    }

    private Colorants() {}

    /**
     * What the annex says of a substance.
     *
     * @param entries the entries that list it; empty if none does
     * @param unlisted colour index numbers in its name that no entry has
     */
    public record Finding(List<ColorantEntry> entries, List<String> unlisted) {

        /**
         * Copies.
         *
         * @param entries the entries
         * @param unlisted the numbers that no entry has
         */
        public Finding {
            entries = List.copyOf(Objects.requireNonNull(entries, "entries"));
            unlisted = List.copyOf(Objects.requireNonNull(unlisted, "unlisted"));
        }

        /**
         * Whether the annex has nothing to say.
         *
         * @return true if no entry lists the substance and its name has no colour index number
         */
        public boolean isEmpty() {
            return entries.isEmpty() && unlisted.isEmpty();
        }
    }

    /**
     * The list that comes with the library. Not current law.
     *
     * @return the snapshot
     */
    public static Colorants eu2024February() {
        return EU;
    }

    /**
     * The day of which it is.
     *
     * @return 25 February 2024
     */
    public LocalDate snapshot() {
        return AnnexFiles.SNAPSHOT;
    }

    /**
     * All entries.
     *
     * @return an unmodifiable list in the order of the annex
     */
    public List<ColorantEntry> entries() {
        return Entries.ALL;
    }

    /**
     * What the annex says of a substance.
     *
     * @param substance the substance; all its names and its CAS number count, colour index numbers first
     * @return the finding
     */
    public Finding find(Substance substance) {
        List<String> keys = Objects.requireNonNull(substance, "substance").keys();
        List<ColorantEntry> listed = new ArrayList<>();
        Set<String> unlisted = new LinkedHashSet<>();
        for (String key : keys) {
            for (Map.Entry<String, String> one : numbers(key).entrySet()) {
                Map<String, List<ColorantEntry>> all = Entries.BY_NUMBER;
                List<ColorantEntry> found = all.getOrDefault(one.getKey(), all.getOrDefault(one.getValue(), List.of()));
                addTo(listed, found);
                if (found.isEmpty()) {
                    unlisted.add("CI " + one.getKey());
                }
            }
        }
        if (listed.isEmpty() && unlisted.isEmpty()) {
            for (String key : keys) {
                String loose = KeyFile.loose(key);
                if (KeyFile.bundled().mayHave(KeyFile.COLORANT, loose)) {
                    addTo(listed, Entries.BY_KEY.getOrDefault(loose, List.of()));
                }
            }
        }
        return listed.isEmpty() && unlisted.isEmpty()
                ? NOTHING
                : new Finding(ofTheSameSize(listed, keys), List.copyOf(unlisted));
    }

    /**
     * Whether a name has a colour index number, and so means a colorant.
     *
     * @param substance the substance
     * @return true if one of its names has such a number
     */
    public static boolean isColourIndexName(Substance substance) {
        for (String key : Objects.requireNonNull(substance, "substance").keys()) {
            if (!numbers(key).isEmpty()) {
                return true;
            }
        }
        return false;
    }

    /** The numbers in a name, each with the number of the colorant that it is a lake or salt of. */
    private static Map<String, String> numbers(String key) {
        if (!hasFiveDigits(key)) {
            return Map.of();
        }
        Map<String, String> found = new LinkedHashMap<>();
        Forms.NUMBER.matcher(key).results().forEach(match -> put(found, match));
        Forms.BARE.matcher(key).results().forEach(match -> put(found, match));
        return found;
    }

    private static void put(Map<String, String> found, MatchResult match) {
        String base = match.group(1);
        found.put(match.group(2) == null ? base : base + ":" + match.group(2), base);
    }

    private static boolean hasFiveDigits(String key) {
        int run = 0;
        for (int i = 0; i < key.length(); i++) {
            run = key.charAt(i) >= '0' && key.charAt(i) <= '9' ? run + 1 : 0;
            if (run == 5) {
                return true;
            }
        }
        return false;
    }

    /** Each once; an entry has a number of its own. */
    private static void addTo(List<ColorantEntry> listed, List<ColorantEntry> found) {
        for (ColorantEntry entry : found) {
            if (listed.stream().noneMatch(one -> one.number().equals(entry.number()))) {
                listed.add(entry);
            }
        }
    }

    /** Where a colorant and its nano form share a number, the name tells which one it is. */
    private static List<ColorantEntry> ofTheSameSize(List<ColorantEntry> listed, List<String> keys) {
        boolean nano = keys.stream().anyMatch(key -> key.contains("NANO"));
        Set<String> ours = listed.stream()
                .filter(entry -> isNano(entry) == nano)
                .flatMap(entry -> entry.colourIndexNumbers().stream())
                .collect(Collectors.toSet());
        return listed.stream()
                .filter(entry -> isNano(entry) == nano
                        || entry.colourIndexNumbers().stream().noneMatch(ours::contains))
                .toList();
    }

    private static boolean isNano(ColorantEntry entry) {
        return entry.printed().contains("(nano)");
    }

    /** Read when a key file or a number tells that something of them may be in a formula. */
    private static final class Entries {
        static final List<ColorantEntry> ALL = AnnexFiles.colorants();
        static final Map<String, List<ColorantEntry>> BY_NUMBER = by(ColorantEntry::colourIndexNumbers);
        static final Map<String, List<ColorantEntry>> BY_KEY = by(Entries::keys);

        private static List<String> keys(ColorantEntry entry) {
            Set<String> keys = new LinkedHashSet<>(entry.casNumbers());
            entry.names().forEach(name -> keys.add(KeyFile.keyOf(name)));
            return List.copyOf(keys);
        }

        private static Map<String, List<ColorantEntry>> by(Function<ColorantEntry, List<String>> keys) {
            Map<String, List<ColorantEntry>> all = new LinkedHashMap<>();
            for (ColorantEntry entry : ALL) {
                keys.apply(entry)
                        .forEach(key -> all.computeIfAbsent(key, k -> new ArrayList<>(1))
                                .add(entry));
            }
            return all;
        }
    }

    /** Every key of the list, for the key file. */
    static Set<String> keys() {
        return Set.copyOf(Entries.BY_KEY.keySet());
    }

    @Override
    public String toString() {
        return "Regulation (EC) No 1223/2009, Annex IV, snapshot of " + snapshot();
    }
}
