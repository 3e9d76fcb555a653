package io.github.formulationmath.limit;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.formula.NameBook;
import io.github.formulationmath.formula.Substance;
import io.github.formulationmath.formula.SubstanceShare;
import io.github.formulationmath.formula.WrittenName;
import io.github.formulationmath.quantity.MassFraction;
import io.github.formulationmath.weighing.MadeMasses;
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

    private final Map<Substance, NameBook.Reading> readings = new LinkedHashMap<>();
    private final Map<String, Substance> toBreakDown = new LinkedHashMap<>();
    private final Map<SubstanceShare, Substance> allNames = new HashMap<>();
    private final Set<String> unusedPurposes;

    LimitCheck(LimitChecker checker, Formula formula, @Nullable MadeMasses masses) {
        this.checker = checker;
        this.formula = formula;
        this.unusedPurposes = new TreeSet<>(checker.product().purposes().keySet());
        this.wholes = new Wholes(formula, masses);
    }

    LimitReport report() {
        formula.lines().forEach(this::countLine);
        List<Verdict> verdicts = tallies.values().stream()
                .map(tally -> new Verdict(checker, tally))
                .toList();
        return new LimitReport(
                checker,
                formula,
                verdicts,
                uncounted,
                withoutLimit,
                conflicts,
                unusedPurposes,
                readings,
                toBreakDown.values());
    }

    private void countLine(FormulaLine line) {
        Map<Substance, MassFraction> parts = line.ingredient().parts();
        parts.forEach((part, strength) -> {
            SubstanceShare one = formula.composition().shareOf(part).orElseThrow();
            Substance substance = one.substance();
            Substance named = allNames(one);
            NameBook.Reading reading =
                    checker.table().index().read(one.as(substance)).orElse(null);
            if (reading != null) {
                readings.put(substance, reading);
            }
            if (reading != null && reading.how() == NameBook.How.BLEND) {
                countBlend(line, strength, reading.names());
            }
            CheckIndex.Entry entry = checker.index().find(named);
            if (!addFindings(substance, named, entry) && (reading == null || reading.how() != NameBook.How.BLEND)) {
                withoutLimit.add(substance);
            }
            askForBreakdown(line, substance, countings(entry));
            for (Counting counting : countings(entry)) {
                tally(counting).add(line, substance, strength, counting);
            }
        });
        if (!isNamedAmong(parts.keySet(), line.ingredient().normalName())) {
            countUnderOwnName(line);
        }
    }

    /**
     * Several names written as one: each counts with as much as the whole, or next to nothing. Of those that go into one sum
     * the one that weighs most stands for all, because together they are no more than the whole.
     */
    private void countBlend(FormulaLine line, MassFraction strength, List<String> parts) {
        Map<String, Counting> heaviest = new LinkedHashMap<>();
        Map<String, Substance> meant = new HashMap<>();
        for (String name : parts) {
            Substance part = Substance.of(name);
            Substance named = checker.table().index().known(part);
            checker.table().index().read(part).ifPresent(reading -> readings.put(part, reading));
            CheckIndex.Entry entry = checker.index().find(named);
            if (!addFindings(part, named, entry)) {
                withoutLimit.add(part);
            }
            for (Counting counting : countings(entry)) {
                Counting known = heaviest.get(counting.key());
                if (known == null || counting.weight().compareTo(known.weight()) > 0) {
                    heaviest.put(counting.key(), counting);
                    meant.put(counting.key(), part);
                }
            }
        }
        heaviest.forEach((key, counting) -> {
            Counting unstated = counting.inBlend();
            tally(unstated).add(line, meant.getOrDefault(key, Substance.of(line.name())), strength, unstated);
        });
    }

    /** A material that smells and tells nothing of its constituents, once; what is left of a breakdown is none. */
    private void askForBreakdown(FormulaLine line, Substance substance, List<Counting> countings) {
        if (!checker.table().index().declares()) {
            return;
        }
        boolean parted = line.ingredient().parts().size() > 1;
        if (isAromatic(substance.name(), countings)
                ? !parted || !isAromatic(line.name(), List.of())
                : !parted && isAromatic(line.name(), List.of())) {
            toBreakDown.putIfAbsent(substance.keys().get(0), substance);
        }
    }

    private static boolean isAromatic(String name, List<Counting> countings) {
        WrittenName written = WrittenName.of(name);
        return written.isAromatic()
                || written.isPreparation()
                        && countings.stream()
                                .anyMatch(counting -> counting.limit().kind() == LimitKind.DECLARE_ABOVE);
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
        List<OmittedEntry> omitted = checker.table().index().omitted(named);
        if (!omitted.isEmpty()) {
            uncounted.add(new LimitReport.Uncounted(
                    substance, LimitReport.Uncounted.Why.NOT_TRANSCRIBED, List.of(), omitted));
        }
        List<UsageLimit> mentioning = checker.table().index().mentioning(named);
        addUncounted(substance, LimitReport.Uncounted.Why.MENTIONED, mentioning);
        if (entry == null) {
            return !omitted.isEmpty() || !mentioning.isEmpty();
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
