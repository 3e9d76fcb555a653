package io.github.formulationmath.limit;

import io.github.formulationmath.amendment.LegalChange;
import io.github.formulationmath.annex.ProhibitedSubstances;
import io.github.formulationmath.formula.NameBook;
import io.github.formulationmath.formula.Substance;
import io.github.formulationmath.formula.SubstanceName;
import io.github.formulationmath.formula.WrittenName;
import io.github.formulationmath.number.Ratio;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
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
    /** By name or number, the number that tells its form, and the purpose of the substance, each on a line. */
    private final Map<String, Entry> entries = new ConcurrentHashMap<>();

    private final Map<String, Applicability> applicabilities = new ConcurrentHashMap<>();
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
            for (Counting counting : countings) {
                byKey.put(counting.key(), counting);
            }
            for (Counting counting : other.countings) {
                Counting known = byKey.get(counting.key());
                byKey.put(counting.key(), known == null ? counting : Counting.stricterOf(known, counting));
            }
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
            return areSame(countings, other.countings)
                    && outside.equals(other.outside)
                    && otherPurpose.equals(other.otherPurpose)
                    && casNumbers.containsAll(other.casNumbers);
        }

        /** Made of the same things; to compare two of them part by part is dear, and others are only put together once more. */
        private static boolean areSame(List<Counting> some, List<Counting> more) {
            boolean same = some.size() == more.size();
            for (int i = 0; same && i < some.size(); i++) {
                same = some.get(i).isSameAs(more.get(i));
            }
            return same;
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
            Set<LegalChange> amendments) {

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
        if (reading == null && annexes.isEmpty() && entry == null) {
            reading = readInAnnexes(substance);
            annexes = reading == null ? annexes : annexes(substance, reading);
        }
        return new Known(
                named,
                entry,
                annexes.speaking(index.omitted(named), product),
                index.mentioning(named),
                annexes,
                reading,
                smells(substance.name(), entry),
                alike(said(named, reading), entry == null ? List.of() : entry.limits()),
                amendments(named, entry == null ? List.of() : entry.limits()));
    }

    /** What a name is taken for that no list has itself: another spelling of what Annex II names, or a blend of such. */
    private NameBook.@Nullable Reading readInAnnexes(Substance substance) {
        if (!table.asksEuAnnexes()) {
            return null;
        }
        List<String> parts = WrittenName.of(substance.name()).parts();
        if (parts.size() > 1) {
            for (String part : parts) {
                if (!known(Substance.of(part)).isEmpty()) {
                    return new NameBook.Reading(substance.name(), parts, NameBook.How.BLEND);
                }
            }
        }
        NameBook.Reading spelt = ProhibitedSubstances.eu2024February()
                .read(substance.name())
                .filter(found -> found.how() != NameBook.How.BLEND)
                .orElse(null);
        return spelt == null || annexes(substance, spelt).isEmpty() ? null : spelt;
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

    /** The name that was found in a written one. */
    private static Substance said(Substance named, NameBook.@Nullable Reading reading) {
        return reading == null || reading.how() == NameBook.How.BLEND
                ? named
                : Substance.of(reading.names().get(0));
    }

    private boolean smells(String name, @Nullable Entry entry) {
        if (!table.index().declares()) {
            return false;
        }
        WrittenName written = WrittenName.of(name);
        return written.isAromatic() || entry != null && written.isPreparation() && isDeclared(entry);
    }

    private static boolean isDeclared(Entry entry) {
        for (Counting counting : entry.countings()) {
            if (counting.limit().kind() == LimitKind.DECLARE_ABOVE) {
                return true;
            }
        }
        return false;
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
        for (UsageLimit limit : limits) {
            known.add(limit.place());
            known.add(limit.basis().toString());
        }
        table.index().mentioning(named).forEach(limit -> known.add(limit.place()));
        String purpose = product.purposeOf(named).orElse(EVERY_PURPOSE);
        return likely.stream()
                .filter(limit -> !known.contains(limit.place()))
                .filter(limit -> limits.stream().noneMatch(own -> isExcepted(limit, own)))
                .filter(limit -> !limit.basis().isReference()
                        || !known.contains(limit.basis().toString()))
                .filter(limit -> serves(limit, purpose))
                .toList();
    }

    /** Whether an entry prints that it does not mean what another entry of its annex is on: "(entry 25)". */
    private static boolean isExcepted(UsageLimit limit, UsageLimit own) {
        String place = own.place();
        int number = place.indexOf(' ') + 1;
        return limit.place().startsWith(place.substring(0, number))
                && limit.group().name().contains("(entry " + place.substring(number) + ")");
    }

    private Set<LegalChange> amendments(Substance named, List<UsageLimit> limits) {
        Set<LegalChange> found = new LinkedHashSet<>();
        addLater(found, table.amendments().of(named));
        for (UsageLimit limit : limits) {
            addLater(found, table.amendments().touching(limit.place()));
        }
        return Collections.unmodifiableSet(found);
    }

    private static void addLater(Set<LegalChange> found, List<LegalChange> changes) {
        for (LegalChange change : changes) {
            if (change.later()) {
                found.add(change);
            }
        }
    }

    /** What is known of a substance under any of its names and its number. */
    @Nullable
    Entry find(Substance substance) {
        String purpose = product.purposeOf(substance).orElse(EVERY_PURPOSE);
        String cas = substance.cas().orElse("");
        Entry found = null;
        for (String key : substance.keys()) {
            Entry named = entry(key, "", purpose);
            if (named != null && named.casNumbers().contains(cas)) {
                named = entry(key, cas, purpose);
            }
            found = named == null ? found : named.and(found);
        }
        for (String key : substance.keys()) {
            Entry numbered = entry(key, ITSELF, purpose);
            found = found == null ? numbered : found.and(numbered);
        }
        return found;
    }

    /** Only keys of the table are kept, so that what others ask for does not pile up. */
    private @Nullable Entry entry(String key, String cas, String purpose) {
        if (!table.index().counts(key)) {
            return null;
        }
        String asked = String.join("\n", key, cas, purpose);
        Entry found = entries.get(asked);
        if (found == null) {
            found = worked(key, cas, purpose);
            if (found != null) {
                entries.put(asked, found);
            }
        }
        return found;
    }

    private @Nullable Entry worked(String key, String cas, String purpose) {
        boolean number = cas.equals(ITSELF);
        List<Counting> all =
                number ? table.index().numbered(key) : table.index().named(key, cas);
        if (all.isEmpty()) {
            return null;
        }
        List<Counting> meant = new ArrayList<>(all.size());
        List<UsageLimit> otherPurpose = new ArrayList<>();
        List<Counting> countings = new ArrayList<>(all.size());
        for (Counting counting : all) {
            if (!serves(counting.limit(), purpose)) {
                otherPurpose.add(counting.limit());
                continue;
            }
            meant.add(counting);
            if (!isOutside(counting)) {
                countings.add(counting.isForbidden() ? counting : inProduct(counting));
            }
        }
        List<UsageLimit> outside = new ArrayList<>();
        for (List<Counting> entry : byEntry(restricting(meant))) {
            if (isForbidden(entry)) {
                countings.add(entry.get(0).forbidden());
            } else if (areOutside(entry)) {
                outside.addAll(limits(entry));
            }
        }
        Set<String> numbers = number ? Set.of() : table.index().casNumbersOf(key);
        return new Entry(List.copyOf(countings), List.copyOf(outside), List.copyOf(otherPurpose), numbers);
    }

    private static List<UsageLimit> limits(List<Counting> countings) {
        List<UsageLimit> limits = new ArrayList<>(countings.size());
        for (Counting counting : countings) {
            limits.add(counting.limit());
        }
        return limits;
    }

    private static boolean serves(UsageLimit limit, String purpose) {
        return purpose.equals(EVERY_PURPOSE) || limit.scope().coversPurpose(purpose);
    }

    /** Those that say what a product may hold; what only has to be declared allows nothing. */
    private static List<Counting> restricting(List<Counting> all) {
        List<Counting> restricting = new ArrayList<>(all.size());
        for (Counting counting : all) {
            if (counting.limit().kind().restrictsContents()) {
                restricting.add(counting);
            }
        }
        return restricting;
    }

    /** By the names of their entries, and of one entry by their ids. */
    private static Iterable<List<Counting>> byEntry(List<Counting> all) {
        all.sort((one, other) -> one.limit().id().compareTo(other.limit().id()));
        Map<String, List<Counting>> entries = new TreeMap<>();
        for (Counting counting : all) {
            entries.computeIfAbsent(counting.limit().entry(), entry -> new ArrayList<>(1))
                    .add(counting);
        }
        return entries.values();
    }

    /** Whether the entry allows its substances only where its limits apply, and none of them does. */
    private boolean isForbidden(List<Counting> entry) {
        boolean nowhereElse = false;
        for (Counting counting : entry) {
            if (!counting.limit().scope().excludes(product, table.words())) {
                return false;
            }
            nowhereElse |= counting.limit().outside() == OutsideScope.NOT_ALLOWED;
        }
        return nowhereElse;
    }

    private boolean areOutside(List<Counting> entry) {
        for (Counting counting : entry) {
            if (!isOutside(counting)) {
                return false;
            }
        }
        return true;
    }

    private boolean isOutside(Counting counting) {
        return applicability(counting.limit()) == Applicability.OUT_OF_SCOPE;
    }

    private Applicability applicability(UsageLimit limit) {
        Applicability found = applicabilities.get(limit.id());
        if (found == null) {
            found = limit.scope().applicabilityTo(product, table.words());
            applicabilities.put(limit.id(), found);
        }
        return found;
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
