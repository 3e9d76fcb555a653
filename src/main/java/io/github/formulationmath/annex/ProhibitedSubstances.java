package io.github.formulationmath.annex;

import io.github.formulationmath.formula.LooseNames;
import io.github.formulationmath.formula.NameBook;
import io.github.formulationmath.formula.Substance;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * Annex II of Regulation (EC) No 1223/2009 as of 25 February 2024: which entries name a substance.
 *
 * <p><b>Caution.</b> A dated transcription, never current law; it defers to the law in force, to the supplier's documents and
 * to a qualified safety assessor. A substance that nothing is found for is not thereby allowed.
 *
 * <p>Looked up by CAS number and by the names that the entry prints, its chemical names and the ingredients that the database
 * lists under it; besides, by words of groups ({@code mercury and its compounds}), which tell only that an entry may be
 * meant. British and American spelling are one.
 *
 * <p>Example: {@code ProhibitedSubstances.eu2024February().find(Substance.of("Tretinoin"))} has entry 375 as {@link Naming#NAMED}; mercurous chloride has entry
 * 221 as {@link Naming#MAY_BE}; petrolatum has entry 904 as {@link Naming#LET_THROUGH}.
 *
 * <p>Immutable and thread-safe.
 */
public final class ProhibitedSubstances {

    private static final ProhibitedSubstances EU = new ProhibitedSubstances();

    /** What salts are called after the name of their base or acid. */
    private static final Set<String> SALT_WORDS = Set.of(
            ("HCL DIHCL HYDROBROMIDE BROMIDE CHLORIDE IODIDE FLUORIDE SULFATE BISULFATE PHOSPHATE NITRATE ACETATE CITRATE"
                            + " TARTRATE MALEATE FUMARATE LACTATE SUCCINATE BENZOATE SALICYLATE OXALATE MESYLATE TOSYLATE"
                            + " SODIUM POTASSIUM CALCIUM MAGNESIUM AMMONIUM BASE SALT SALTS ANHYDROUS MONOHYDRATE")
                    .split(" ", -1));

    private ProhibitedSubstances() {}

    /** How an entry speaks of a substance. */
    public enum Naming {
        /** By number or by name, without condition. */
        NAMED,
        /** By number or by name, with words that let something through. */
        LET_THROUGH,
        /** By a word for a group that it may belong to, or as a salt or preparation of what is named. */
        MAY_BE
    }

    /**
     * An entry that speaks of a substance.
     *
     * @param entry the entry
     * @param naming how
     */
    public record Finding(ProhibitedEntry entry, Naming naming) {

        /**
         * Checks.
         *
         * @param entry the entry
         * @param naming how
         */
        public Finding {
            Objects.requireNonNull(entry, "entry");
            Objects.requireNonNull(naming, "naming");
        }
    }

    /**
     * The list that comes with the library. Not current law.
     *
     * @return the snapshot
     */
    public static ProhibitedSubstances eu2024February() {
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
    public List<ProhibitedEntry> entries() {
        return Entries.ALL;
    }

    /**
     * The entries that speak of a substance.
     *
     * @param substance the substance; all its names and its CAS number count
     * @return an unmodifiable list, the strongest first; empty if none was found, which does not mean that it is allowed
     */
    public List<Finding> find(Substance substance) {
        Map<ProhibitedEntry, Naming> found = new LinkedHashMap<>();
        for (String key : Objects.requireNonNull(substance, "substance").keys()) {
            String name = KeyFile.loose(key);
            exact(name, found);
            byBracket(name, found);
            if (!isNumber(name)) {
                byBeginning(name, found);
                byReading(name, found);
            }
        }
        if (found.isEmpty()) {
            return List.of();
        }
        if (found.containsValue(Naming.NAMED)) {
            found.values().removeIf(naming -> naming == Naming.MAY_BE);
        }
        return found.entrySet().stream()
                .sorted(Map.Entry.comparingByValue(Comparator.comparing(Naming::ordinal)))
                .map(entry -> new Finding(entry.getKey(), entry.getValue()))
                .toList();
    }

    private static boolean isNumber(String key) {
        for (int i = 0; i < key.length(); i++) {
            char c = key.charAt(i);
            if ((c < '0' || c > '9') && (c != '-' || i == 0)) {
                return false;
            }
        }
        return true;
    }

    private static void exact(String name, Map<ProhibitedEntry, Naming> found) {
        if (KeyFile.bundled().mayHave(KeyFile.PROHIBITED, name)) {
            Entries.BY_KEY.getOrDefault(name, Map.of()).forEach((entry, naming) -> stronger(found, entry, naming));
        }
    }

    /** What stands before a bracket, and in it. */
    private static void byBracket(String name, Map<ProhibitedEntry, Naming> found) {
        int open = name.lastIndexOf('(');
        if (open > 0 && name.endsWith(")")) {
            exact(name.substring(0, open), found);
            exact(name.substring(open + 1, name.length() - 1), found);
        }
    }

    /** A salt or preparation begins with the name of what it is of. */
    private static void byBeginning(String name, Map<ProhibitedEntry, Naming> found) {
        for (int end = name.indexOf(' '); end > 0; end = name.indexOf(' ', end + 1)) {
            if (KeyFile.bundled().mayHave(KeyFile.PROHIBITED, name, end)) {
                boolean salt =
                        SALT_WORDS.containsAll(List.of(name.substring(end + 1).split(" ", -1)));
                Entries.BY_KEY.getOrDefault(name.substring(0, end), Map.of()).forEach((entry, naming) -> {
                    boolean meant = entry.isGroup() || salt;
                    if (meant && entry.condition() == ProhibitedEntry.Condition.ALWAYS && !isExcepted(entry, name)) {
                        stronger(found, entry, Naming.MAY_BE);
                    }
                });
            }
        }
    }

    private static void byReading(String name, Map<ProhibitedEntry, Naming> found) {
        for (WordReading reading : Readings.BY_WORD) {
            if (reading.isIn(name)) {
                ProhibitedEntry entry = Objects.requireNonNull(Entries.BY_NUMBER.get(reading.entry()));
                if (!isExcepted(entry, name)) {
                    boolean always = entry.condition() == ProhibitedEntry.Condition.ALWAYS;
                    stronger(found, entry, always ? Naming.MAY_BE : Naming.LET_THROUGH);
                }
            }
        }
    }

    private static boolean isExcepted(ProhibitedEntry entry, String name) {
        return Readings.EXCEPT.stream()
                .anyMatch(reading -> reading.entry().equals(entry.number()) && reading.isIn(name));
    }

    private static void stronger(Map<ProhibitedEntry, Naming> found, ProhibitedEntry entry, Naming naming) {
        found.merge(entry, naming, (one, other) -> one.compareTo(other) <= 0 ? one : other);
    }

    /** Read when first asked for. */
    private static final class Readings {
        static final List<WordReading> ALL = AnnexFiles.readings();
        static final List<WordReading> EXCEPT = of(WordReading.Match.EXCEPT);
        static final List<WordReading> BY_WORD =
                of(WordReading.Match.WORD, WordReading.Match.PART, WordReading.Match.START);

        private static List<WordReading> of(WordReading.Match... matches) {
            List<WordReading.Match> wanted = List.of(matches);
            List<WordReading> all = new ArrayList<>();
            for (WordReading reading : ALL) {
                if (wanted.contains(reading.match())) {
                    all.add(reading);
                }
            }
            return List.copyOf(all);
        }
    }

    /** Read when a key file tells that something of them is in a formula. */
    private static final class Entries {
        static final List<ProhibitedEntry> ALL = AnnexFiles.prohibited();
        static final Map<String, ProhibitedEntry> BY_NUMBER = byNumber();
        static final Map<String, Map<ProhibitedEntry, Naming>> BY_KEY = byKey();

        private static Map<String, ProhibitedEntry> byNumber() {
            Map<String, ProhibitedEntry> all = new LinkedHashMap<>();
            ALL.forEach(entry -> all.putIfAbsent(entry.number(), entry));
            return all;
        }

        private static Map<String, Map<ProhibitedEntry, Naming>> byKey() {
            Map<String, Map<ProhibitedEntry, Naming>> all = new LinkedHashMap<>();
            for (ProhibitedEntry entry : ALL) {
                Naming naming = naming(entry);
                entry.names().forEach(name -> put(all, KeyFile.keyOf(name), entry, naming));
                entry.casNumbers().forEach(number -> put(all, number, entry, naming));
                Naming listed = entry.isGroup() && naming == Naming.NAMED ? Naming.MAY_BE : naming;
                entry.listed().forEach(name -> put(all, KeyFile.keyOf(name), entry, listed));
            }
            for (WordReading reading : Readings.of(WordReading.Match.NAME)) {
                ProhibitedEntry entry = Objects.requireNonNull(BY_NUMBER.get(reading.entry()));
                put(all, reading.text(), entry, naming(entry));
            }
            for (WordReading reading : Readings.of(WordReading.Match.MAYBE)) {
                Objects.requireNonNull(all.get(reading.text()), reading.text())
                        .replaceAll((entry, naming) -> entry.number().equals(reading.entry()) ? Naming.MAY_BE : naming);
            }
            return all;
        }

        private static Naming naming(ProhibitedEntry entry) {
            return switch (entry.condition()) {
                case ALWAYS -> Naming.NAMED;
                case MOVED -> Naming.MAY_BE;
                default -> Naming.LET_THROUGH;
            };
        }

        private static void put(
                Map<String, Map<ProhibitedEntry, Naming>> all, String key, ProhibitedEntry entry, Naming naming) {
            stronger(all.computeIfAbsent(key, k -> new LinkedHashMap<>(2)), entry, naming);
        }
    }

    /**
     * What a name is taken for that the list does not have itself: another spelling of one of its names, a common name, a word
     * or a bracket left out. Who uses it says so.
     *
     * @param name a name as written
     * @return names of the list, with how they were found; empty if the list has the name itself or nothing like it
     */
    public Optional<NameBook.Reading> read(String name) {
        return LooseOnes.NAMES.have(Objects.requireNonNull(name, "name")) ? Names.BOOK.read(name) : Optional.empty();
    }

    /**
     * Whether a name is the slip of a pen for one of the list's: one letter is wrong, or two of a name of twelve letters and
     * more; two neighbours that changed places are one step. Cheap: the list itself is not read for it; {@link #names} has all names.
     *
     * @param name a name as written
     * @return false if no name of the list is that close to it
     */
    public boolean hasCloseTo(String name) {
        return LooseOnes.NAMES.haveCloseTo(Objects.requireNonNull(name, "name"));
    }

    /**
     * All names that the list has: those that its entries print, their chemical names, the ingredients that the database lists
     * under them, and other names by our own reading.
     *
     * @return an unmodifiable set, as the list writes them
     */
    public Set<String> names() {
        return Names.ALL;
    }

    /** The names alone, from a file made of the list; a test makes it again and compares. */
    private static final class LooseOnes {
        static final LooseNames NAMES = AnnexFiles.looseNames();
    }

    /** Made when one of them may be meant. */
    private static final class Names {
        static final Set<String> ALL = all();
        static final NameBook BOOK = NameBook.of(ALL);

        private static Set<String> all() {
            Set<String> names = new TreeSet<>();
            for (ProhibitedEntry entry : Entries.ALL) {
                names.addAll(entry.names());
                names.addAll(entry.listed());
            }
            for (WordReading reading : Readings.of(WordReading.Match.NAME)) {
                names.add(reading.text());
            }
            return Collections.unmodifiableSet(names);
        }
    }

    /** Every key of the list, for the key file. */
    static Set<String> keys() {
        return new HashSet<>(Entries.BY_KEY.keySet());
    }

    @Override
    public String toString() {
        return "Regulation (EC) No 1223/2009, Annex II, snapshot of " + snapshot();
    }
}
