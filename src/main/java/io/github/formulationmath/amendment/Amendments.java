package io.github.formulationmath.amendment;

import io.github.formulationmath.csv.CsvFormat;
import io.github.formulationmath.csv.CsvRow;
import io.github.formulationmath.formula.Substance;
import io.github.formulationmath.number.Excerpt;
import java.io.Serial;
import java.io.Serializable;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * The known changes to a table, found by the entries and the substances that they touch.
 *
 * <p>Immutable and thread-safe.
 */
public final class Amendments implements Serializable {

    /** The file of known changes: lists are parted by semicolons. */
    public static final CsvFormat FILE = CsvFormat.of(List.of(
                    "act",
                    "later",
                    "kind",
                    "tag",
                    "placed_until",
                    "available_until",
                    "entries",
                    "names",
                    "cas_numbers",
                    "what"))
            .withCommentHead();

    @Serial
    private static final long serialVersionUID = 1L;

    private static final Map<String, Boolean> LATER = new LinkedHashMap<>();
    private static final Map<String, LegalChange.Kind> KINDS = new LinkedHashMap<>();
    private static final Map<String, LegalChange.Tag> TAGS = new LinkedHashMap<>();

    static {
        LATER.put("yes", true);
        LATER.put("no", false);
        for (LegalChange.Kind kind : LegalChange.Kind.values()) {
            KINDS.put(kind.code(), kind);
        }
        for (LegalChange.Tag tag : LegalChange.Tag.values()) {
            TAGS.put(tag.code(), tag);
        }
    }

    private final List<LegalChange> all;
    private transient volatile @Nullable Map<String, List<LegalChange>> byKey;

    private Amendments(List<LegalChange> all) {
        this.all = List.copyOf(all);
    }

    /**
     * Changes made in code.
     *
     * @param changes all of them
     * @return the changes
     */
    public static Amendments of(List<LegalChange> changes) {
        return new Amendments(Objects.requireNonNull(changes, "changes"));
    }

    /**
     * Reads a file of known changes.
     *
     * @param table the rows of a file in the format {@link #FILE}
     * @return the changes in their order
     * @throws io.github.formulationmath.csv.CsvException if a field is not as it should be; it names file, line and column
     */
    public static Amendments read(CsvFormat.Table table) {
        List<LegalChange> changes = new ArrayList<>();
        for (CsvRow row : Objects.requireNonNull(table, "table").rows()) {
            changes.add(amendment(row));
        }
        return of(changes);
    }

    private static LegalChange amendment(CsvRow row) {
        try {
            return new LegalChange(
                    row.text("act"),
                    row.choice("later", LATER),
                    row.choice("kind", KINDS),
                    row.choice("tag", TAGS),
                    day(row, "placed_until"),
                    day(row, "available_until"),
                    Set.copyOf(row.list("entries")),
                    row.list("names"),
                    row.list("cas_numbers"),
                    row.required("what"));
        } catch (IllegalArgumentException e) {
            throw row.wrong("act", e);
        }
    }

    private static LocalDate day(CsvRow row, String column) {
        LocalDate day = row.date(column);
        if (day == null) {
            throw row.wrong(column, "is empty: write the last day as " + Excerpt.of("2025-04-30"));
        }
        return day;
    }

    /**
     * All of them.
     *
     * @return an unmodifiable list in the order of the file
     */
    public List<LegalChange> all() {
        return all;
    }

    /**
     * The changes that touch an entry.
     *
     * @param entry annex and number, for example {@code VI 18}
     * @return an unmodifiable list, the order kept
     */
    public List<LegalChange> touching(String entry) {
        return index().getOrDefault("entry " + Objects.requireNonNull(entry, "entry"), List.of());
    }

    /**
     * The changes that name a substance.
     *
     * @param substance the substance, by any of its names or its number
     * @return an unmodifiable list
     */
    public List<LegalChange> of(Substance substance) {
        Set<LegalChange> found = new LinkedHashSet<>();
        for (String key : Objects.requireNonNull(substance, "substance").keys()) {
            found.addAll(index().getOrDefault(key, List.of()));
        }
        return List.copyOf(found);
    }

    /**
     * The acts later than the table.
     *
     * @return their numbers, each once
     */
    public List<String> laterActs() {
        return acts(all.stream().filter(LegalChange::later));
    }

    /**
     * The acts later than the table that bind on a day.
     *
     * @param asOf the day
     * @return their numbers, each once
     */
    public List<String> laterActs(AsOf asOf) {
        Objects.requireNonNull(asOf, "asOf");
        return acts(all.stream().filter(LegalChange::later).filter(asOf::isBoundBy));
    }

    /**
     * The acts older than the table whose transitions have ended since it was made.
     *
     * @param since the day of the table
     * @param asOf the day
     * @return their numbers, each once
     */
    public List<String> endedTransitions(LocalDate since, AsOf asOf) {
        AsOf before = new AsOf(
                Objects.requireNonNull(since, "since"),
                Objects.requireNonNull(asOf, "asOf").dealing());
        return acts(all.stream()
                .filter(change -> !change.later())
                .filter(asOf::isBoundBy)
                .filter(change -> !before.isBoundBy(change)));
    }

    private static List<String> acts(Stream<LegalChange> some) {
        return some.map(LegalChange::act).distinct().toList();
    }

    private Map<String, List<LegalChange>> index() {
        Map<String, List<LegalChange>> known = byKey;
        if (known == null) {
            Map<String, List<LegalChange>> made = new HashMap<>();
            for (LegalChange amendment : all) {
                for (String entry : amendment.entries()) {
                    add(made, "entry ".concat(entry), amendment);
                }
                for (String key : amendment.keys()) {
                    add(made, key, amendment);
                }
            }
            byKey = made;
            known = made;
        }
        return known;
    }

    private static void add(Map<String, List<LegalChange>> lists, String key, LegalChange amendment) {
        List<LegalChange> known = lists.get(key);
        if (known == null) {
            known = new ArrayList<>(1);
            lists.put(key, known);
        }
        known.add(amendment);
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Amendments that && all.equals(that.all);
    }

    @Override
    public int hashCode() {
        return all.hashCode();
    }

    @Override
    public String toString() {
        return laterActs().size() + " later acts, " + all.size() + " known changes";
    }
}
