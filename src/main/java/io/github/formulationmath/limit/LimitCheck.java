package io.github.formulationmath.limit;

import io.github.formulationmath.amendment.Amendment;
import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.formula.Substance;
import io.github.formulationmath.formula.SubstanceShare;
import io.github.formulationmath.quantity.MassFraction;
import io.github.formulationmath.weighing.MadeMasses;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/** One run of a checker over one formula, and all that it found; used once, by one thread. */
final class LimitCheck {

    private final LimitChecker checker;
    private final Formula formula;
    private final Wholes wholes;

    /** By the key of what they count, in the order in which the formula needs them. */
    private final Map<String, Tally> tallies = new LinkedHashMap<>();

    private final Set<Substance> withoutLimit = new LinkedHashSet<>();
    private final Set<LimitReport.Uncounted> uncounted = new LinkedHashSet<>();

    /** Substances whose number is not one that the table has for their name. */
    private final Set<Substance> conflicts = new LinkedHashSet<>();

    /** What acts beside the table changed of a substance, by its own name. */
    private final Map<Substance, Set<Amendment>> amended = new LinkedHashMap<>();

    private final @Nullable MadeMasses masses;
    private final Map<SubstanceShare, Substance> allNames = new HashMap<>();
    private final Set<String> unusedPurposes;

    LimitCheck(LimitChecker checker, Formula formula, @Nullable MadeMasses masses) {
        this.checker = checker;
        this.formula = formula;
        this.unusedPurposes = new TreeSet<>(checker.product().purposes().keySet());
        this.masses = masses;
        this.wholes = new Wholes(formula, masses);
    }

    LimitReport report() {
        formula.lines().forEach(this::countLine);
        List<Verdict> verdicts = new ArrayList<>(verdicts());
        List<Verdict> told = new ArrayList<>();
        if (!amended.isEmpty() && checker.later().isPresent()) {
            LimitCheck later = new LimitCheck(checker.later().orElseThrow(), formula, masses);
            formula.lines().forEach(later::countLine);
            later.verdicts().forEach(verdict -> (isBinding(verdict) ? verdicts : told).add(verdict));
        }
        return new LimitReport(
                checker, formula, verdicts, amended, told, uncounted, withoutLimit, conflicts, unusedPurposes);
    }

    private List<Verdict> verdicts() {
        return tallies.values().stream()
                .map(tally -> new Verdict(checker, tally))
                .toList();
    }

    /** Whether a day was given, and the act of a later limit binds on it for what the limit counts. */
    private boolean isBinding(Verdict verdict) {
        String act = verdict.limit().citation().amendingAct();
        return checker.asOf()
                .map(asOf -> verdict.substances().stream()
                        .flatMap(substance -> amended.getOrDefault(substance, Set.of()).stream())
                        .anyMatch(amendment -> amendment.act().equals(act) && asOf.isBoundBy(amendment)))
                .orElse(false);
    }

    private void countLine(FormulaLine line) {
        Map<Substance, MassFraction> parts = line.ingredient().parts();
        parts.forEach((part, strength) -> {
            SubstanceShare one = formula.composition().shareOf(part).orElseThrow();
            Substance substance = one.substance();
            Substance named = allNames(one);
            CheckIndex.Entry entry = checker.index().find(named);
            if (!addFindings(substance, named, entry)) {
                withoutLimit.add(substance);
            }
            for (Counting counting : countings(entry)) {
                tally(counting).add(line, substance, strength, counting);
            }
        });
        if (!isNamedAmong(parts.keySet(), line.ingredient().normalName())) {
            countUnderOwnName(line);
        }
    }

    /** Whether the parts themselves tell how much of what the line is called it holds. */
    private boolean isNamedAmong(Set<Substance> parts, String normalName) {
        for (Substance part : parts) {
            if (allNames(formula.composition().shareOf(part).orElseThrow())
                    .keys()
                    .contains(normalName)) {
                return true;
            }
        }
        return false;
    }

    /** Every name and the number that any line, or the table, has for the substance. */
    private Substance allNames(SubstanceShare substance) {
        return allNames.computeIfAbsent(
                substance, one -> checker.table().index().known(one.as(one.substance())));
    }

    /**
     * A material made of declared parts is still what it is called: a limit on the oil is not met by telling what the oil
     * consists of.
     */
    private void countUnderOwnName(FormulaLine line) {
        Substance material = Substance.of(line.name());
        Substance named = formula.composition()
                .shareOf(material)
                .map(this::allNames)
                .orElseGet(() -> checker.table().index().known(material));
        CheckIndex.Entry entry = checker.index().find(named);
        addFindings(material, named, entry);
        for (Counting counting : countings(entry)) {
            tally(counting).addMaterial(line, material, counting);
        }
    }

    private static List<Counting> countings(CheckIndex.@Nullable Entry entry) {
        return entry == null ? List.of() : entry.countings();
    }

    /** Whether the table speaks of the substance at all. */
    private boolean addFindings(Substance substance, Substance named, CheckIndex.@Nullable Entry entry) {
        usePurpose(named);
        boolean isAmended = addAmendments(substance, named, entry);
        List<OmittedEntry> omitted = checker.table().index().omitted(named);
        if (!omitted.isEmpty()) {
            uncounted.add(new LimitReport.Uncounted(
                    substance, LimitReport.Uncounted.Why.NOT_TRANSCRIBED, List.of(), omitted));
        }
        List<UsageLimit> mentioning = checker.table().index().mentioning(named);
        addUncounted(substance, LimitReport.Uncounted.Why.MENTIONED, mentioning);
        if (entry == null) {
            return isAmended || !omitted.isEmpty() || !mentioning.isEmpty();
        }
        addUncounted(substance, LimitReport.Uncounted.Why.OTHER_PRODUCTS, entry.outside());
        addUncounted(substance, LimitReport.Uncounted.Why.OTHER_PURPOSE, entry.otherPurpose());
        if (!entry.casNumbers().isEmpty()
                && named.cas().isPresent()
                && !entry.casNumbers().contains(named.cas().orElseThrow())) {
            conflicts.add(substance);
        }
        return true;
    }

    /** Whether an act later than the table names the substance, or touches an entry that speaks of it. */
    private boolean addAmendments(Substance substance, Substance named, CheckIndex.@Nullable Entry entry) {
        Set<Amendment> found = new LinkedHashSet<>(checker.table().amendments().of(named));
        for (UsageLimit limit : entry == null ? List.<UsageLimit>of() : entry.limits()) {
            found.addAll(checker.table().amendments().touching(limit.place()));
        }
        found.removeIf(amendment -> !amendment.later());
        if (!found.isEmpty()) {
            amended.computeIfAbsent(substance, key -> new LinkedHashSet<>()).addAll(found);
        }
        return !found.isEmpty();
    }

    private void addUncounted(Substance substance, LimitReport.Uncounted.Why why, List<UsageLimit> limits) {
        if (!limits.isEmpty()) {
            uncounted.add(new LimitReport.Uncounted(substance, why, limits, List.of()));
        }
    }

    /** A purpose that is stated differently under two names of one substance is not used. */
    private void usePurpose(Substance named) {
        if (!unusedPurposes.isEmpty() && checker.product().purposeOf(named).isPresent()) {
            named.keys().forEach(unusedPurposes::remove);
        }
    }

    private Tally tally(Counting counting) {
        return tallies.computeIfAbsent(counting.key(), key -> new Tally(wholes, counting));
    }
}
