package io.github.formulationmath.limit;

import io.github.formulationmath.amendment.Amendments;
import io.github.formulationmath.annex.Colorants;
import io.github.formulationmath.annex.ProhibitedSubstances;
import io.github.formulationmath.csv.CsvException;
import io.github.formulationmath.csv.CsvFormat;
import io.github.formulationmath.csv.CsvRow;
import io.github.formulationmath.formula.Substance;
import io.github.formulationmath.number.Excerpt;
import io.github.formulationmath.reckoning.Phrase;
import java.io.IOException;
import java.io.Reader;
import java.io.Serial;
import java.io.Serializable;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Limits from one source, of one day.
 *
 * <p><b>Caution.</b> A table is a dated transcription, never current law. It defers to the law in force where the product
 * is made and sold, to the supplier's documents, and to a qualified safety assessor. A substance that is not in it has no
 * limit in this table, which does not mean that it is safe or allowed.
 *
 * <p>Two CSV files make a table: one limit per row, and the substances that each counts; the columns are described in
 * {@code shared/limits/README.md} of the project. They are read strictly: every complaint has its file, line and column.
 *
 * <p>What the source says besides is told too: {@link #omitted()} entries are named where a substance of theirs is checked,
 * and {@link #notHeld()} stands first in every report.
 *
 * <p>Substances are found by INCI name, letter case and spacing forgiven, or else by CAS number. Nothing else is guessed;
 * {@link #closestNames} only suggests.
 *
 * <p>Immutable and thread-safe.
 */
public final class LimitTable implements Serializable {

    @Serial
    private static final long serialVersionUID = 4L;

    private static final String NOT_HELD = "not held:";

    private final String name;
    private final List<String> provenance;
    private final List<UsageLimit> limits;
    private final List<OmittedEntry> omitted;
    private final Amendments amendments;
    private final @Nullable LimitTable later;
    /** Whether Annexes II and IV of the EU regulation are asked as well. */
    private final boolean euAnnexes;
    /** Made when first asked for: what only reads or changes a table does not wait for it. */
    private transient volatile @Nullable Indexes indexes;

    /** What the entries and the words of products are looked up by. */
    private record Indexes(TableIndex entries, ProductWords words) {

        static Indexes of(List<UsageLimit> limits, List<OmittedEntry> omitted) {
            return new Indexes(new TableIndex(limits, omitted), ProductWords.of(limits));
        }
    }

    private LimitTable(
            String name,
            List<String> provenance,
            List<UsageLimit> limits,
            List<OmittedEntry> omitted,
            Amendments amendments,
            @Nullable LimitTable later,
            boolean euAnnexes) {
        this.name = name;
        this.provenance = List.copyOf(provenance);
        this.limits = List.copyOf(limits);
        this.omitted = List.copyOf(omitted);
        this.amendments = amendments;
        this.later = later;
        this.euAnnexes = euAnnexes;
    }

    private Indexes indexes() {
        Indexes known = indexes;
        if (known == null) {
            known = Indexes.of(limits, omitted);
            indexes = known;
        }
        return known;
    }

    /**
     * The table that comes with the library: Annexes V and VI of Regulation (EC) No 1223/2009 complete, the entries of
     * Annex III that matter to skin, hair and soap products, and Annexes II and IV as lists of what is prohibited and which
     * colorants are allowed, as of 25 February 2024. Not current law.
     *
     * @return the snapshot
     */
    public static LimitTable eu2024February() {
        return BundledTable.EU_2024_FEBRUARY;
    }

    /**
     * A table of limits made in code.
     *
     * @param name what it is
     * @param limits the limits, each with an id of its own
     * @return the table
     * @throws IllegalArgumentException if two limits have the same id
     */
    public static LimitTable of(String name, List<UsageLimit> limits) {
        return of(name, List.of(), limits);
    }

    static LimitTable of(String name, List<String> provenance, List<UsageLimit> limits) {
        Objects.requireNonNull(name, "name");
        Set<String> ids = new HashSet<>();
        for (UsageLimit limit : Objects.requireNonNull(limits, "limits")) {
            if (!ids.add(limit.id())) {
                throw new IllegalArgumentException(
                        "two limits have the id " + Excerpt.of(limit.id()) + ": give each its own");
            }
        }
        return new LimitTable(name, provenance, limits, List.of(), Amendments.of(List.of()), null, false);
    }

    /**
     * The same table with entries of its source that it does not transcribe. A check names them for the substances they
     * speak of.
     *
     * @param entries all of them
     * @return the table
     */
    public LimitTable withOmitted(List<OmittedEntry> entries) {
        return new LimitTable(
                name, provenance, limits, Objects.requireNonNull(entries, "entries"), amendments, later, euAnnexes);
    }

    /**
     * The same table with the changes that are known beside it. A check tells those that touch a substance or an entry.
     *
     * @param changes all of them
     * @return the table
     */
    public LimitTable withAmendments(Amendments changes) {
        return new LimitTable(
                name, provenance, limits, omitted, Objects.requireNonNull(changes, "changes"), later, euAnnexes);
    }

    /**
     * The same table with the figures of later acts beside its own. A check as of a day judges by those of them that bind on
     * it, and only tells the others.
     *
     * @param laterLimits limits whose {@link Citation#amendingAct()} is the act of an amendment
     * @return the table
     */
    public LimitTable withLater(LimitTable laterLimits) {
        return new LimitTable(
                name,
                provenance,
                limits,
                omitted,
                amendments,
                Objects.requireNonNull(laterLimits, "laterLimits"),
                euAnnexes);
    }

    /**
     * The changes that are known beside the table.
     *
     * @return the changes; none if nobody said any
     */
    public Amendments amendments() {
        return amendments;
    }

    /**
     * The figures of later acts.
     *
     * @return the limits as a table of their own, if there are any
     */
    public Optional<LimitTable> later() {
        return Optional.ofNullable(later);
    }

    /**
     * The same table, with which Annexes II (prohibited substances) and IV (colorants) of Regulation (EC) No 1223/2009 as of
     * 25 February 2024 are asked as well: see {@link ProhibitedSubstances} and {@link Colorants}. The table that comes with
     * the library asks them already.
     *
     * @return the table
     */
    public LimitTable withEuAnnexes() {
        return new LimitTable(name, provenance, limits, omitted, amendments, later, true);
    }

    /**
     * Whether Annexes II and IV are asked as well.
     *
     * @return true if {@link #withEuAnnexes()} was
     */
    public boolean asksEuAnnexes() {
        return euAnnexes;
    }

    /**
     * The same table with more limits. What was there and where it came from stays; every new limit is told in {@link
     * #provenance()} with its source.
     *
     * @param more the limits, each with an id of its own
     * @return the table
     * @throws IllegalArgumentException if two limits have the same id
     */
    public LimitTable adding(UsageLimit... more) {
        List<UsageLimit> all = new ArrayList<>(limits);
        List<String> lines = new ArrayList<>(provenance);
        for (UsageLimit limit : Objects.requireNonNull(more, "more")) {
            all.add(Objects.requireNonNull(limit, "more"));
            lines.add("added: " + limit.id() + ", " + limit.citation());
        }
        return of(name, lines, all).withOmitted(omitted);
    }

    /**
     * The same table with the limits of another, for example those of the house beside those of the law. All of them hold;
     * the provenance of both is kept.
     *
     * @param other the other table
     * @return the table, named like both
     * @throws IllegalArgumentException if a limit of each has the same id
     */
    public LimitTable adding(LimitTable other) {
        Objects.requireNonNull(other, "other");
        return of(name + "; " + other.name, joined(provenance, other.provenance), joined(limits, other.limits))
                .withOmitted(joined(omitted, other.omitted));
    }

    private static <T> List<T> joined(List<T> some, List<T> more) {
        return Stream.concat(some.stream(), more.stream()).toList();
    }

    /**
     * The same table with one limit replaced, for example because a later act changed it. The exchange is told in {@link
     * #provenance()} with the new source.
     *
     * @param id the key of the limit that no longer holds
     * @param instead what holds instead, one limit or several
     * @return the table
     * @throws IllegalArgumentException if there is no such limit, nothing is given instead, or two limits have the same id
     */
    public LimitTable replacing(String id, UsageLimit... instead) {
        UsageLimit old = limit(id);
        if (Objects.requireNonNull(instead, "instead").length == 0) {
            throw new IllegalArgumentException("instead is empty: give the limit that holds instead of "
                    + Excerpt.of(id) + "; one that allows nothing is UsageLimit.atMost(name, \"0 %\", scope, source)");
        }
        List<UsageLimit> all = new ArrayList<>();
        for (UsageLimit limit : limits) {
            if (limit.equals(old)) {
                all.addAll(List.of(instead));
            } else {
                all.add(limit);
            }
        }
        List<String> lines = new ArrayList<>(provenance);
        for (UsageLimit limit : instead) {
            lines.add("replaced: " + id + " by " + limit.id() + ", " + limit.citation());
        }
        return of(name, lines, all).withOmitted(omitted);
    }

    /**
     * Reads a table of one's own in its short form from a file in UTF-8: one rule to a row with the four facts {@code
     * substance,limit,scope,source}.
     *
     * <pre>
     * substance,limit,scope,source
     * Phenoxyethanol,max 0.9 %,leave_on; area=face,"Data sheet of the supplier, edition 3 of 2026-02-01"
     * </pre>
     *
     * <p>A limit is {@code max}, {@code min}, {@code declare above} or {@code warn above} with a percentage, and {@code as
     * supplied} if the material counts as bought, carrier and all. A scope is {@code any}, or facts parted by semicolons: {@code
     * leave_on}, {@code rinse_off}, {@code area=face}, {@code product=shampoo}, {@code form=not:spray}, {@code
     * user=professional}, {@code purpose=preservative}.
     *
     * @param rules the file
     * @return the table, named like the file, with the lines at its head as provenance
     * @throws IOException if the file cannot be read
     * @throws CsvException if it is not as it should be, or not in UTF-8; it names file, line and column, and what to write
     */
    public static LimitTable read(Path rules) throws IOException {
        Objects.requireNonNull(rules, "rules");
        return ShortRules.table(String.valueOf(rules.getFileName()), ShortRules.FORMAT.read(rules));
    }

    /**
     * Reads a table of one's own in its short form.
     *
     * @param name what it is
     * @param rules the text, as in {@link #read(Path)}
     * @return the table
     * @throws IOException if the reader fails
     * @throws CsvException if the text is not as it should be; it tells the name, line and column, and what to write
     */
    public static LimitTable read(String name, Reader rules) throws IOException {
        return ShortRules.table(
                Objects.requireNonNull(name, "name"),
                ShortRules.FORMAT.read(name, Objects.requireNonNull(rules, "rules")));
    }

    /**
     * Reads a table from two files in UTF-8.
     *
     * @param limits the file of limits
     * @param substances the file of substances
     * @return the table, named like the file of limits
     * @throws IOException if a file cannot be read
     * @throws CsvException if a file is not as it should be, or not in UTF-8; it names file, line and column
     */
    public static LimitTable read(Path limits, Path substances) throws IOException {
        Objects.requireNonNull(limits, "limits");
        Objects.requireNonNull(substances, "substances");
        return LimitTableReader.read(
                String.valueOf(limits.getFileName()),
                LimitTableReader.LIMITS.read(limits),
                LimitTableReader.SUBSTANCES.read(substances));
    }

    /**
     * Reads a table.
     *
     * @param name what it is
     * @param limits the text of the file of limits
     * @param substances the text of the file of substances
     * @return the table
     * @throws IOException if a reader fails
     * @throws CsvException if a text is not as it should be; it says {@code limits} or {@code substances}, line and column
     */
    public static LimitTable read(String name, Reader limits, Reader substances) throws IOException {
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(limits, "limits");
        Objects.requireNonNull(substances, "substances");
        return LimitTableReader.read(
                name,
                LimitTableReader.LIMITS.read("limits", limits),
                LimitTableReader.SUBSTANCES.read("substances", substances));
    }

    /**
     * What it is.
     *
     * @return the name
     */
    public String name() {
        return name;
    }

    /**
     * Where it comes from.
     *
     * @return the lines at the head of the file of limits
     */
    public List<String> provenance() {
        return provenance;
    }

    /**
     * All limits.
     *
     * @return an unmodifiable list in the order of the file
     */
    public List<UsageLimit> limits() {
        return limits;
    }

    /**
     * The entries of the source that the table does not transcribe.
     *
     * @return an unmodifiable list
     */
    public List<OmittedEntry> omitted() {
        return omitted;
    }

    /**
     * The parts of the source that the table does not hold at all, so that no check against it can know of them: what
     * follows {@code not held:} in the lines of {@link #provenance()}, several parted by semicolons.
     *
     * @return for example {@code Annex II (prohibited substances)}; empty if the table does not say
     */
    public List<String> notHeld() {
        return provenance.stream()
                .filter(line -> line.startsWith(NOT_HELD))
                .flatMap(line -> CsvRow.listed(line.substring(NOT_HELD.length()), ';').stream())
                .filter(part -> !part.isEmpty())
                .toList();
    }

    /**
     * The words by which the limits of the table tell products and purposes apart.
     *
     * @return the words that settle anything in a {@link Product}
     */
    public ProductWords words() {
        return indexes().words();
    }

    /**
     * The limit with an id.
     *
     * @param id the key
     * @return the limit
     * @throws IllegalArgumentException if there is none
     */
    public UsageLimit limit(String id) {
        Objects.requireNonNull(id, "id");
        return limits.stream()
                .filter(limit -> limit.id().equals(id))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException(
                        "id is \"" + id + "\": " + name + " has no such limit: take one of limits()"));
    }

    /**
     * The day of which the oldest limit of the table is.
     *
     * @return the day, if any limit states one
     */
    public Optional<LocalDate> snapshot() {
        return limits.stream()
                .flatMap(limit -> limit.citation().snapshot().stream())
                .min(LocalDate::compareTo);
    }

    /**
     * What has to be said with every result drawn from this table.
     *
     * @return the caution
     */
    public Phrase caution() {
        return Phrase.of(
                "caution.limit-table", name, snapshot().map(LocalDate::toString).orElse("unknown"));
    }

    /**
     * The limits that count a substance, whatever the product.
     *
     * @param substance the substance, found by name or else by CAS number
     * @return the limits in the order of the table; none if the substance has no limit in this table
     */
    public List<UsageLimit> limitsFor(Substance substance) {
        return index().find(index().known(Objects.requireNonNull(substance, "substance"))).stream()
                .map(Counting::limit)
                .toList();
    }

    /**
     * Names of the table that are spelt like another, at most a third of the letters away; a suggestion, never used for
     * matching. What was probably meant by a name of a formula, {@link LimitReport#suggestions()} tells.
     *
     * @param text what was written
     * @param most how many to return at most, from 1 to 100
     * @return the closest names, the closest first; none if nothing is close
     * @throws IllegalArgumentException if {@code most} is out of range
     */
    public List<String> closestNames(String text, int most) {
        if (most < 1 || most > 100) {
            throw new IllegalArgumentException("most is " + most + ": it must lie between 1 and 100");
        }
        return index().names().alike(Objects.requireNonNull(text, "text"), most);
    }

    /** The day in few words, for a line of a working. */
    Phrase shortCaution() {
        return Phrase.of(
                "caution.limit-table-short", snapshot().map(LocalDate::toString).orElse("unknown date"));
    }

    TableIndex index() {
        return indexes().entries();
    }

    @Serial
    private Object readResolve() {
        return new LimitTable(name, provenance, limits, omitted, amendments, later, euAnnexes);
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof LimitTable that
                && name.equals(that.name)
                && provenance.equals(that.provenance)
                && limits.equals(that.limits)
                && omitted.equals(that.omitted)
                && amendments.equals(that.amendments)
                && Objects.equals(later, that.later)
                && euAnnexes == that.euAnnexes;
    }

    @Override
    public int hashCode() {
        return Objects.hash(name, limits.size());
    }

    @Override
    public String toString() {
        return name + ", " + limits.size() + " limits, snapshot of "
                + snapshot().map(LocalDate::toString).orElse("an unknown day");
    }

    /** Loaded when first asked for. */
    private static final class BundledTable {

        static final LimitTable EU_2024_FEBRUARY = load();

        private static LimitTable load() {
            return LimitTableReader.read(
                            "Regulation (EC) No 1223/2009, Annexes II, III (in part), IV, V and VI, snapshot of February 2024",
                            part("", LimitTableReader.LIMITS),
                            part("-substances", LimitTableReader.SUBSTANCES),
                            part("-synonyms", LimitTableReader.SYNONYMS))
                    .withOmitted(LimitTableReader.omitted(
                            part("-omitted", LimitTableReader.OMITTED),
                            part("-omitted-substances", LimitTableReader.OMITTED_NAMES)))
                    .withAmendments(Amendments.read(part("-known-changes", Amendments.FILE)))
                    .withLater(LimitTableReader.read(
                            "Acts later than February 2024, as far as their figures were seen",
                            part("-later", LimitTableReader.LIMITS),
                            part("-later-substances", LimitTableReader.SUBSTANCES)))
                    .withEuAnnexes();
        }

        private static CsvFormat.Table part(String part, CsvFormat format) {
            return format.shipped(LimitTable.class, "eu-1223-2009-2024-02" + part + ".csv");
        }
    }
}
