package io.github.formulationmath.limit;

import io.github.formulationmath.amendment.LegalChange;
import io.github.formulationmath.formula.NameBook;
import io.github.formulationmath.formula.Substance;
import io.github.formulationmath.formula.SubstanceName;
import io.github.formulationmath.formula.WrittenName;
import io.github.formulationmath.number.Ratio;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * A table as it is for one product: for every substance, what counts it there. Worked out when a name or number of the table
 * is first asked for, and kept.
 */
final class CheckIndex {

    /** The purpose of substances that serve every purpose. */
    private static final String EVERY_PURPOSE = "";

    /** In place of a CAS number where the key is one. */
    private static final String ITSELF = "itself";

    /** What others ask for must not pile up. */
    private static final int MOST_KEPT = 10_000;

    private final LimitTable table;
    private final Product product;
    private final Map<Content, Conversion> stated;
    private final Map<Asked, Entry> entries = new ConcurrentHashMap<>();
    private final Map<Substance, Known> known = new ConcurrentHashMap<>();

    CheckIndex(LimitTable table, Product product, Map<Content, Conversion> stated) {
        this.table = table;
        this.product = product;
        this.stated = stated;
    }

    /** Whose content of which reference substance is stated; both names in normal form. */
    record Content(String substance, String reference) {

        static Content of(Substance substance, String reference) {
            return new Content(substance.keys().get(0), SubstanceName.normalise(reference));
        }
    }

    /** A name or number of the table, with the number that tells its form, and the purpose of the substance. */
    private record Asked(String key, String cas, String purpose) {}

    /**
     * What a checker knows of one substance.
     *
     * @param countings what counts it
     * @param outside limits of entries that do not cover the product at all
     * @param otherPurpose limits that do not count it because it serves another purpose
     * @param casNumbers all CAS numbers that the table has for the name
     */
    record Entry(
            List<Counting> countings, List<UsageLimit> outside, List<UsageLimit> otherPurpose, Set<String> casNumbers) {

        /** Both together, for a substance that the table has under several names or numbers; each sum counts it once. */
        Entry and(@Nullable Entry other) {
            if (other == null || addsNothing(other)) {
                return this;
            }
            Map<String, Counting> byKey = new LinkedHashMap<>();
            countings.forEach(counting -> byKey.put(counting.key(), counting));
            other.countings.forEach(counting -> byKey.merge(counting.key(), counting, Counting::stricterOf));
            return new Entry(
                    List.copyOf(byKey.values()),
                    both(outside, other.outside),
                    both(otherPurpose, other.otherPurpose),
                    Set.copyOf(both(casNumbers, other.casNumbers)));
        }

        /** Every limit that speaks of it, for this product or another. */
        List<UsageLimit> limits() {
            List<UsageLimit> all = new ArrayList<>(CheckIndex.limits(countings));
            all.addAll(outside);
            all.addAll(otherPurpose);
            return all;
        }

        private boolean addsNothing(Entry other) {
            return countings.equals(other.countings)
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

    /**
     * Everything that a table says of a substance in one product.
     *
     * @param named the substance with all that the table has for it as synonyms
     * @param entry what counts it, if anything does
     * @param omitted entries that speak of it and are not transcribed
     * @param mentioning limits whose entries name it without counting it
     * @param annexes what Annexes II and IV say of the names that the formula has for it
     * @param reading what its name is taken for, if no list has the name itself
     * @param smells whether it is a perfume, a volatile oil or the like, whose constituents matter to the table
     * @param alike limits on salts that do not name it, and may mean it
     * @param amendments acts later than the table that name it, or touch an entry that speaks of it
     */
    record Known(
            Substance named,
            @Nullable Entry entry,
            List<OmittedEntry> omitted,
            List<UsageLimit> mentioning,
            AnnexFindings annexes,
            NameBook.@Nullable Reading reading,
            boolean smells,
            List<UsageLimit> alike,
            List<LegalChange> amendments) {

        boolean isBlend() {
            return reading != null && reading.how() == NameBook.How.BLEND;
        }

        /** The names of a blend that is written as one name. */
        List<Substance> blended() {
            return reading == null
                    ? List.of()
                    : reading.names().stream().map(Substance::of).toList();
        }

        List<Counting> countings() {
            return entry == null ? List.of() : entry.countings();
        }

        boolean isEmpty() {
            return entry == null
                    && omitted.isEmpty()
                    && mentioning.isEmpty()
                    && annexes.isEmpty()
                    && alike.isEmpty()
                    && amendments.isEmpty();
        }
    }

    /** What is known of a substance; as many substances are kept as a large stock has. */
    Known known(Substance substance) {
        Known found = known.get(substance);
        if (found == null) {
            found = work(substance);
            if (known.size() < MOST_KEPT) {
                known.put(substance, found);
            }
        }
        return found;
    }

    private Known work(Substance substance) {
        TableIndex index = table.index();
        NameBook.Reading reading = index.read(substance).orElse(null);
        Substance named = index.known(substance);
        AnnexFindings annexes = annexes(substance, reading);
        if (annexes.isEmpty() && (reading == null || reading.how() != NameBook.How.BLEND)) {
            for (Map.Entry<String, NameBook.How> variant :
                    WrittenName.of(substance.name()).readings().entrySet()) {
                Substance meant = substance.withSynonyms(variant.getKey());
                AnnexFindings found = annexes(meant, null);
                boolean amended = !table.amendments().of(meant).isEmpty();
                if (!found.isEmpty() || amended) {
                    annexes = found;
                    named = amended ? named.withSynonyms(variant.getKey()) : named;
                    reading = reading == null
                            ? new NameBook.Reading(substance.name(), List.of(variant.getKey()), variant.getValue())
                            : reading;
                    break;
                }
            }
        }
        Entry entry = find(named);
        return new Known(
                named,
                entry,
                annexes.speaking(index.omitted(named), product),
                index.mentioning(named),
                annexes,
                reading,
                smells(substance.name(), entry),
                alike(named, entry == null ? List.of() : entry.limits()),
                amendments(named, entry == null ? List.of() : entry.limits()));
    }

    private AnnexFindings annexes(Substance substance, NameBook.@Nullable Reading reading) {
        if (!table.asksEuAnnexes()) {
            return AnnexFindings.NONE;
        }
        Substance meant = reading == null || reading.how() == NameBook.How.BLEND
                ? substance
                : substance.withSynonyms(reading.names().toArray(new String[0]));
        return AnnexFindings.of(meant, product, table.words());
    }

    private boolean smells(String name, @Nullable Entry entry) {
        if (!table.index().declares()) {
            return false;
        }
        WrittenName written = WrittenName.of(name);
        return written.isAromatic()
                || entry != null
                        && written.isPreparation()
                        && entry.countings().stream()
                                .anyMatch(counting -> counting.limit().kind() == LimitKind.DECLARE_ABOVE);
    }

    /** Whether a material, as its line is called, is a perfume, a volatile oil or the like. */
    boolean smells(String material) {
        return known(Substance.of(material)).smells();
    }

    /** A salt that an entry names, or one on the same acid counts, needs no guess. */
    private List<UsageLimit> alike(Substance named, List<UsageLimit> limits) {
        List<UsageLimit> likely = table.index().saltsLike(named);
        if (likely.isEmpty()) {
            return likely;
        }
        Set<String> known = new HashSet<>();
        limits.forEach(
                limit -> known.addAll(List.of(limit.place(), limit.basis().toString())));
        table.index().mentioning(named).forEach(limit -> known.add(limit.place()));
        String purpose = product.purposeOf(named).orElse(EVERY_PURPOSE);
        return likely.stream()
                .filter(limit -> !known.contains(limit.place()))
                .filter(limit -> !limit.basis().isReference()
                        || !known.contains(limit.basis().toString()))
                .filter(limit -> serves(limit, purpose))
                .toList();
    }

    private List<LegalChange> amendments(Substance named, List<UsageLimit> limits) {
        Set<LegalChange> found = new LinkedHashSet<>(table.amendments().of(named));
        limits.forEach(limit -> found.addAll(table.amendments().touching(limit.place())));
        found.removeIf(amendment -> !amendment.later());
        return List.copyOf(found);
    }

    /** What is known of a substance under any of its names and its number. */
    @Nullable
    Entry find(Substance substance) {
        String purpose = product.purposeOf(substance).orElse(EVERY_PURPOSE);
        String cas = substance.cas().orElse("");
        Entry found = null;
        for (String key : substance.keys()) {
            Entry named = entry(new Asked(key, "", purpose));
            if (named != null && named.casNumbers().contains(cas)) {
                named = entry(new Asked(key, cas, purpose));
            }
            found = named == null ? found : named.and(found);
        }
        for (String key : substance.keys()) {
            Entry numbered = entry(new Asked(key, ITSELF, purpose));
            found = found == null ? numbered : found.and(numbered);
        }
        return found;
    }

    /** Only keys of the table are kept, so that what others ask for does not pile up. */
    private @Nullable Entry entry(Asked asked) {
        return table.index().counts(asked.key()) ? entries.computeIfAbsent(asked, this::worked) : null;
    }

    private @Nullable Entry worked(Asked asked) {
        boolean number = asked.cas().equals(ITSELF);
        List<Counting> all =
                number ? table.index().numbered(asked.key()) : table.index().named(asked.key(), asked.cas());
        if (all.isEmpty()) {
            return null;
        }
        Map<Boolean, List<Counting>> serving =
                all.stream().collect(Collectors.partitioningBy(counting -> serves(counting.limit(), asked.purpose())));
        List<Counting> meant = serving.getOrDefault(true, List.of());
        List<Counting> countings = new ArrayList<>();
        meant.stream()
                .filter(counting -> !isOutside(counting))
                .map(counting -> counting.isForbidden() ? counting : inProduct(counting))
                .forEach(countings::add);
        List<UsageLimit> outside = new ArrayList<>();
        for (List<Counting> entry : byEntry(restricting(meant))) {
            if (isForbidden(entry)) {
                countings.add(entry.get(0).forbidden());
            } else if (entry.stream().allMatch(this::isOutside)) {
                outside.addAll(limits(entry));
            }
        }
        List<UsageLimit> otherPurpose = limits(serving.getOrDefault(false, List.of()));
        Set<String> numbers = number ? Set.of() : table.index().casNumbersOf(asked.key());
        return new Entry(List.copyOf(countings), List.copyOf(outside), otherPurpose, Set.copyOf(numbers));
    }

    private static List<UsageLimit> limits(List<Counting> countings) {
        return countings.stream().map(Counting::limit).toList();
    }

    private static boolean serves(UsageLimit limit, String purpose) {
        return purpose.equals(EVERY_PURPOSE) || limit.scope().coversPurpose(purpose);
    }

    /** Those that say what a product may hold; what only has to be declared allows nothing. */
    private static List<Counting> restricting(List<Counting> all) {
        return all.stream()
                .filter(counting -> counting.limit().kind().restrictsContents())
                .toList();
    }

    private static Iterable<List<Counting>> byEntry(List<Counting> all) {
        Map<String, List<Counting>> entries = all.stream()
                .sorted(Comparator.comparing(counting -> counting.limit().id()))
                .collect(
                        Collectors.groupingBy(counting -> counting.limit().entry(), TreeMap::new, Collectors.toList()));
        return entries.values();
    }

    /** Whether the entry allows its substances only where its limits apply, and none of them does. */
    private boolean isForbidden(List<Counting> entry) {
        return entry.stream().allMatch(counting -> counting.limit().scope().excludes(product, table.words()))
                && entry.stream().anyMatch(counting -> counting.limit().outside() == OutsideScope.NOT_ALLOWED);
    }

    private boolean isOutside(Counting counting) {
        return applicability(counting.limit()) == Applicability.OUT_OF_SCOPE;
    }

    private Applicability applicability(UsageLimit limit) {
        return limit.scope().applicabilityTo(product, table.words());
    }

    private Counting inProduct(Counting counting) {
        UsageLimit limit = counting.limit();
        Counting own = limit.sumRule() == SumRule.SUM_OF_RATIOS ? strictestSingle(counting.member()) : null;
        return counting.in(
                applicability(limit), conversion(own == null ? counting : own), own == null ? null : own.limit());
    }

    private Conversion conversion(Counting counting) {
        LimitBasis basis = counting.limit().basis();
        return basis.isReference()
                ? stated.getOrDefault(
                        Content.of(counting.member().substance(), basis.referenceName()), counting.conversion())
                : counting.conversion();
    }

    /** The own highest share of a member, by which a sum of ratios divides its share; the strictest if there are several. */
    private @Nullable Counting strictestSingle(GroupMember member) {
        Function<Counting, Ratio> weight = counting ->
                conversion(counting).factor().dividedBy(counting.limit().share().fraction());
        return table.index().find(member.substance()).stream()
                .filter(counting -> counting.limit().sumRule() == SumRule.SINGLE)
                .filter(counting -> counting.limit().kind() == LimitKind.MAXIMUM)
                .filter(counting -> !counting.limit().share().fraction().isZero())
                .filter(counting -> !isOutside(counting))
                .max(Comparator.comparing(weight))
                .orElse(null);
    }
}
