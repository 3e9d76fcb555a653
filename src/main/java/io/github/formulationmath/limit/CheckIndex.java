package io.github.formulationmath.limit;

import io.github.formulationmath.formula.Substance;
import io.github.formulationmath.number.Ratio;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** A table made ready for one product: for every substance, the limits that count it there. Built once, only read later. */
final class CheckIndex {

    private final LimitTable table;
    private final Map<StatedContent.Key, StatedContent> stated;
    private final Map<UsageLimit, Applicability> applicability = new HashMap<>();
    private final Map<String, Slot> slots = new HashMap<>();
    private final NameTable byName;
    private final Map<String, CheckEntry> byCas = new HashMap<>();

    CheckIndex(LimitTable table, Product product, Map<StatedContent.Key, StatedContent> stated) {
        this.table = table;
        this.stated = stated;
        table.limits().forEach(limit -> applicability.put(limit, limit.scope().applicabilityTo(product)));
        MemberIndex members = table.index();
        Map<String, CheckEntry> names = new HashMap<>();
        members.normalisedNames().forEach(name -> names.put(name, named(members, name)));
        this.byName = new NameTable(names);
        members.casNumbers().forEach(cas -> byCas.put(cas, entry(members.withCas(cas), Map.of(), Set.of())));
    }

    @Nullable
    CheckEntry named(String normalisedName) {
        return byName.get(normalisedName);
    }

    @Nullable
    CheckEntry find(Substance substance) {
        CheckEntry entry = byName.get(substance.name());
        String cas = substance.cas().orElse(null);
        if (cas == null) {
            return entry;
        }
        return entry == null ? byCas.get(cas) : entry.byCas().getOrDefault(cas, entry);
    }

    private CheckEntry named(MemberIndex members, String name) {
        List<Counted> all = members.named(name, null);
        Set<String> numbers = members.casNumbersOf(name);
        Map<String, CheckEntry> exact = new HashMap<>();
        for (String cas : numbers) {
            List<Counted> narrowed = members.named(name, cas);
            if (!narrowed.equals(all)) {
                exact.put(cas, entry(narrowed, Map.of(), numbers));
            }
        }
        return entry(all, exact, numbers);
    }

    private CheckEntry entry(List<Counted> all, Map<String, CheckEntry> exact, Set<String> casNumbers) {
        List<Hit> hits = new ArrayList<>();
        for (Counted counted : all) {
            if (applicabilityOf(counted.limit()) != Applicability.OUT_OF_SCOPE) {
                hits.add(hit(counted));
            }
        }
        return new CheckEntry(List.copyOf(hits), outside(all), Map.copyOf(exact), casNumbers);
    }

    /** The limits of entries of which no limit covers the product, as far as they say something for that case. */
    private List<UsageLimit> outside(List<Counted> all) {
        Map<String, List<UsageLimit>> entries =
                all.stream().map(Counted::limit).collect(Collectors.groupingBy(UsageLimit::entry));
        return entries.values().stream()
                .filter(limits ->
                        limits.stream().allMatch(limit -> applicabilityOf(limit) == Applicability.OUT_OF_SCOPE))
                .flatMap(List::stream)
                .filter(limit -> limit.outsideScope() != OutsideScope.NONE)
                .sorted(Comparator.comparing(UsageLimit::id))
                .toList();
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
        Conversion computed = Conversion.of(counted.limit().basis(), counted.member());
        if (!counted.limit().basis().isReference()) {
            return computed;
        }
        StatedContent content = stated.get(StatedContent.Key.of(
                counted.member().substance().name(), counted.limit().basis().referenceName()));
        return content == null ? computed : content.conversion();
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
        String counted = alone ? member.countsAs() : limit.group().name();
        String key = limit.id() + "\n" + (alone ? LimitNames.normalise(counted) : "");
        Slot known = slots.get(key);
        if (known == null) {
            known = new Slot(slots.size(), limit, applicabilityOf(limit), counted);
            slots.put(key, known);
        }
        return known;
    }

    private Applicability applicabilityOf(UsageLimit limit) {
        return applicability.getOrDefault(limit, Applicability.OUT_OF_SCOPE);
    }
}
