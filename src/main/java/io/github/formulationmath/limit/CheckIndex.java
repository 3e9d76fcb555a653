package io.github.formulationmath.limit;

import io.github.formulationmath.formula.Substance;
import io.github.formulationmath.number.Ratio;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** A table made ready for one product: for every substance, the limits that count it there. Built once, only read later. */
final class CheckIndex {

    /** The key of substances that serve every purpose. */
    private static final String EVERY_PURPOSE = "";

    private final LimitTable table;
    private final Product product;
    private final Map<StatedContent.Key, StatedContent> stated;
    private final Map<String, Applicability> applicability = new HashMap<>();
    private final Set<String> excluded = new HashSet<>();
    private final Map<String, Slot> slots = new HashMap<>();
    private final Map<String, CountedNames> countedNames = new HashMap<>();
    private final Map<String, Entries> byPurpose = new HashMap<>();

    CheckIndex(LimitTable table, Product product, Map<StatedContent.Key, StatedContent> stated) {
        this.table = table;
        this.product = product;
        this.stated = stated;
        StatedProduct read = product.in(table.words());
        for (UsageLimit limit : table.limits()) {
            applicability.put(limit.id(), limit.scope().applicabilityTo(read));
            if (limit.scope().excludes(read)) {
                excluded.add(limit.id());
            }
        }
        byPurpose.put(EVERY_PURPOSE, entries(EVERY_PURPOSE));
        product.purposes().values().forEach(purpose -> byPurpose.computeIfAbsent(purpose, this::entries));
    }

    /** Entries by name and by CAS number for substances that serve one purpose. */
    private record Entries(Map<String, CheckEntry> byName, Map<String, CheckEntry> byCas) {}

    private Entries entries(String purpose) {
        MemberIndex members = table.index();
        Map<String, CheckEntry> names = new HashMap<>();
        members.normalisedNames().forEach(name -> names.put(name, named(members, name, purpose)));
        Map<String, CheckEntry> numbers = new HashMap<>();
        members.casNumbers().forEach(cas -> numbers.put(cas, entry(members.withCas(cas), Map.of(), Set.of(), purpose)));
        return new Entries(names, numbers);
    }

    /** What is known of a substance under any of its names and its number. */
    @Nullable
    CheckEntry find(Substance substance) {
        String purpose = product.statesPurposes() ? product.purposeOf(substance).orElse(EVERY_PURPOSE) : EVERY_PURPOSE;
        Entries entries = Objects.requireNonNull(byPurpose.get(purpose), purpose);
        String cas = substance.cas().orElse("");
        CheckEntry found = null;
        for (String key : substance.keys()) {
            CheckEntry named = entries.byName().get(key);
            found = named == null
                    ? found
                    : named.byCas().getOrDefault(cas, named).and(found);
        }
        for (String key : substance.keys()) {
            CheckEntry numbered = entries.byCas().get(key);
            found = found != null ? found.and(numbered) : numbered;
        }
        return found;
    }

    private CheckEntry named(MemberIndex members, String name, String purpose) {
        List<Counted> all = members.named(name, null);
        Set<String> numbers = members.casNumbersOf(name);
        Map<String, CheckEntry> exact = new HashMap<>();
        for (String cas : numbers) {
            List<Counted> narrowed = members.named(name, cas);
            if (!narrowed.equals(all)) {
                exact.put(cas, entry(narrowed, Map.of(), numbers, purpose));
            }
        }
        return entry(all, exact, numbers, purpose);
    }

    private CheckEntry entry(List<Counted> all, Map<String, CheckEntry> exact, Set<String> casNumbers, String purpose) {
        Map<Boolean, List<Counted>> serving =
                all.stream().collect(Collectors.partitioningBy(counted -> serves(counted, purpose)));
        List<Counted> meant = serving.getOrDefault(true, List.of());
        List<Hit> hits = new ArrayList<>();
        for (Counted counted : meant) {
            if (applicabilityOf(counted.limit()) != Applicability.OUT_OF_SCOPE) {
                hits.add(hit(counted));
            }
        }
        List<UsageLimit> outside = new ArrayList<>();
        for (List<Counted> limits : byEntry(meant)) {
            if (isForbidden(limits)) {
                hits.add(forbidden(limits.get(0)));
            } else if (isOutside(limits)) {
                limits.forEach(counted -> outside.add(counted.limit()));
            }
        }
        List<UsageLimit> otherPurpose = serving.getOrDefault(false, List.of()).stream()
                .map(Counted::limit)
                .toList();
        return new CheckEntry(
                List.copyOf(hits), List.copyOf(outside), otherPurpose, Map.copyOf(exact), Set.copyOf(casNumbers));
    }

    private static boolean serves(Counted counted, String purpose) {
        return purpose.equals(EVERY_PURPOSE) || counted.limit().scope().coversPurpose(purpose);
    }

    private static Iterable<List<Counted>> byEntry(List<Counted> all) {
        Map<String, List<Counted>> entries = all.stream()
                .sorted(Comparator.comparing(counted -> counted.limit().id()))
                .collect(Collectors.groupingBy(counted -> counted.limit().entry(), TreeMap::new, Collectors.toList()));
        return entries.values();
    }

    /** Whether the entry allows its substances only where its limits apply, and none of them does. */
    private boolean isForbidden(List<Counted> limits) {
        return limits.stream()
                        .allMatch(counted -> excluded.contains(counted.limit().id()))
                && limits.stream().anyMatch(counted -> counted.limit().outsideScope() == OutsideScope.NOT_ALLOWED);
    }

    private boolean isOutside(List<Counted> limits) {
        return limits.stream().allMatch(counted -> applicabilityOf(counted.limit()) == Applicability.OUT_OF_SCOPE);
    }

    /** An entry that forbids a substance counts it against nothing. */
    private Hit forbidden(Counted counted) {
        UsageLimit nothing = counted.limit().allowingNothing();
        String name = counted.member().countsAs();
        String key = "forbidden\n" + nothing.id() + "\n" + LimitNames.normalise(name);
        Slot slot = slots.computeIfAbsent(key, k -> new Slot(slots.size(), nothing, Applicability.OUT_OF_SCOPE, name));
        return new Hit(slot, counted.member(), Conversion.NONE, null, false);
    }

    private Hit hit(Counted counted) {
        UsageLimit limit = counted.limit();
        Counted own = limit.sumRule() == SumRule.SUM_OF_RATIOS ? strictestSingle(counted.member()) : null;
        Counted basis = own == null ? counted : own;
        return new Hit(
                slot(limit, counted.member()),
                counted.member(),
                conversion(basis),
                own == null ? null : own.limit(),
                counted.formGuessed());
    }

    private Conversion conversion(Counted counted) {
        if (!counted.limit().basis().isReference()) {
            return counted.conversion();
        }
        StatedContent content = stated.get(StatedContent.Key.of(
                counted.member().substance().name(), counted.limit().basis().referenceName()));
        return content == null ? counted.conversion() : content.conversion();
    }

    /** The own limit by which a share is divided in a sum of ratios: the one that weighs it most. */
    private @Nullable Counted strictestSingle(GroupMember member) {
        Function<Counted, Ratio> weight = counted ->
                conversion(counted).factor().dividedBy(counted.limit().share().fraction());
        return table.index().find(member.substance()).stream()
                .filter(counted -> counted.limit().sumRule() == SumRule.SINGLE)
                .filter(counted -> counted.limit().kind() == LimitKind.MAXIMUM)
                .filter(counted -> !counted.limit().share().fraction().isZero())
                .filter(counted -> applicabilityOf(counted.limit()) != Applicability.OUT_OF_SCOPE)
                .max(Comparator.comparing(weight))
                .orElse(null);
    }

    private Slot slot(UsageLimit limit, GroupMember member) {
        boolean alone = limit.sumRule() == SumRule.SINGLE;
        String counted = alone
                ? countedNames
                        .computeIfAbsent(
                                limit.id(), id -> new CountedNames(limit.group().members()))
                        .of(member)
                : limit.group().name();
        String key = limit.id() + "\n" + (alone ? LimitNames.normalise(counted) : "");
        return slots.computeIfAbsent(key, k -> new Slot(slots.size(), limit, applicabilityOf(limit), counted));
    }

    private Applicability applicabilityOf(UsageLimit limit) {
        return applicability.getOrDefault(limit.id(), Applicability.OUT_OF_SCOPE);
    }
}
