package io.github.formulationmath.limit;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.formula.Substance;
import io.github.formulationmath.formula.SubstanceShare;
import io.github.formulationmath.quantity.MassFraction;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/** One run of a checker over one formula; used once, by one thread. */
final class LimitCheck {

    private final LimitChecker checker;
    private final Formula formula;
    private final @Nullable MadeShares made;
    private final Wholes wholes;
    /** By the index of their slot, in the order in which the formula needs them. */
    private final Map<Integer, Tally> tallies = new LinkedHashMap<>();

    private final Findings findings = new Findings();
    private final Map<SubstanceShare, Substance> allNames = new HashMap<>();
    private final Set<String> stated;

    LimitCheck(LimitChecker checker, Formula formula, @Nullable MadeShares made) {
        this.checker = checker;
        this.formula = formula;
        this.made = made;
        this.stated = new TreeSet<>(checker.product().purposes().keySet());
        this.wholes = new Wholes(formula);
    }

    LimitReport report() {
        for (FormulaLine line : formula.lines()) {
            countLine(line);
        }
        List<Verdict> verdicts = new ArrayList<>(tallies.size());
        for (Tally tally : tallies.values()) {
            verdicts.add(new Verdict(checker, tally, made));
        }
        findings.setUnusedPurposes(stated);
        return new LimitReport(checker, formula, verdicts, findings);
    }

    private void countLine(FormulaLine line) {
        Map<Substance, MassFraction> parts = line.ingredient().parts();
        parts.forEach((part, strength) -> {
            SubstanceShare substance = formula.composition().shareOf(part).orElseThrow();
            if (!count(line, substance, strength)) {
                findings.addWithoutLimit(substance.substance());
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

    /** Counts a part of a line wherever it counts; false if the table does not speak of it. */
    private boolean count(FormulaLine line, SubstanceShare substance, MassFraction strength) {
        Substance named = allNames(substance);
        CheckEntry entry = checker.index().find(named);
        boolean spokenOf = addFindings(substance.substance(), named, entry);
        if (entry != null) {
            for (Hit hit : entry.hits()) {
                tally(hit.slot()).add(line, substance.substance(), strength, hit);
            }
        }
        return spokenOf;
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
        CheckEntry entry = checker.index().find(named);
        addFindings(material, named, entry);
        if (entry != null) {
            for (Hit hit : entry.hits()) {
                tally(hit.slot()).addMaterial(line, material, hit);
            }
        }
    }

    /** Whether the table speaks of the substance at all. */
    private boolean addFindings(Substance substance, Substance named, @Nullable CheckEntry entry) {
        usePurpose(named);
        boolean spokenOf = addUncounted(substance, named);
        if (entry == null) {
            return spokenOf;
        }
        if (!entry.outside().isEmpty()) {
            findings.add(new OutOfScope(substance, entry.outside(), false));
        }
        if (!entry.otherPurpose().isEmpty()) {
            findings.add(new OutOfScope(substance, entry.otherPurpose(), true));
        }
        if (!entry.casNumbers().isEmpty()
                && named.cas().isPresent()
                && !entry.casNumbers().contains(named.cas().orElseThrow())) {
            findings.addConflict(substance);
        }
        return true;
    }

    /** What entries say of the substance that the table does not count. */
    private boolean addUncounted(Substance substance, Substance named) {
        List<OmittedEntry> omitted = checker.table().omittedIndex().find(named);
        if (!omitted.isEmpty()) {
            findings.add(new NotTranscribed(substance, omitted));
        }
        List<UsageLimit> mentioning = checker.table().index().mentioning(named);
        if (!mentioning.isEmpty()) {
            findings.add(new Mentioned(substance, mentioning));
        }
        return !omitted.isEmpty() || !mentioning.isEmpty();
    }

    /** A purpose that is stated differently under two names of one substance is not used. */
    private void usePurpose(Substance named) {
        if (!stated.isEmpty() && checker.product().purposeOf(named).isPresent()) {
            named.keys().forEach(stated::remove);
        }
    }

    private Tally tally(Slot slot) {
        return tallies.computeIfAbsent(slot.index(), index -> new Tally(wholes, slot));
    }
}
