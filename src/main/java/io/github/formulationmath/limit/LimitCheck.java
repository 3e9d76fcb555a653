package io.github.formulationmath.limit;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.formula.Substance;
import io.github.formulationmath.quantity.MassFraction;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** One run of a checker over one formula; used once, by one thread. */
final class LimitCheck {

    private final LimitChecker checker;
    private final Formula formula;
    private final @Nullable MadeShares made;
    private final List<Tally> tallies = new ArrayList<>();
    private final List<Substance> withoutLimit = new ArrayList<>();
    private final List<OutOfScope> outside = new ArrayList<>(0);
    private final List<Substance> conflicts = new ArrayList<>(0);

    LimitCheck(LimitChecker checker, Formula formula, @Nullable MadeShares made) {
        this.checker = checker;
        this.formula = formula;
        this.made = made;
    }

    LimitReport report() {
        for (FormulaLine line : formula.lines()) {
            countLine(line);
        }
        List<Verdict> verdicts = new ArrayList<>(tallies.size());
        for (Tally tally : tallies) {
            verdicts.add(new Verdict(checker, tally, made));
        }
        return new LimitReport(checker, formula, verdicts, new Findings(withoutLimit, outside, conflicts));
    }

    private void countLine(FormulaLine line) {
        Map<Substance, MassFraction> parts = line.ingredient().parts();
        parts.forEach((substance, strength) -> count(line, substance, strength));
        boolean named =
                parts.size() == 1 && parts.keySet().iterator().next().name().equals(line.name());
        if (!named) {
            countAsSupplied(line);
        }
    }

    private void count(FormulaLine line, Substance substance, MassFraction strength) {
        CheckEntry entry = checker.index().find(substance);
        if (entry == null) {
            withoutLimit.add(substance);
            return;
        }
        String purpose = checker.product().statesPurposes()
                ? checker.product().purposeOf(substance).orElse(null)
                : null;
        for (Hit hit : entry.hits()) {
            if (purpose == null || hit.slot().limit().scope().coversPurpose(purpose)) {
                tally(hit.slot()).add(line, substance, strength, hit);
            }
        }
        if (!entry.outside().isEmpty()) {
            addOutside(substance, entry, purpose);
        }
        if (!entry.casNumbers().isEmpty() && substance.cas().isPresent()) {
            addConflict(substance, entry);
        }
    }

    /** A material may itself be what a limit on materials as bought is about. */
    private void countAsSupplied(FormulaLine line) {
        CheckEntry entry = checker.index().named(line.name());
        if (entry == null) {
            return;
        }
        for (Hit hit : entry.hits()) {
            if (hit.slot().limit().basis().isAsSupplied()) {
                tally(hit.slot()).add(line, hit.member().substance(), MassFraction.WHOLE, hit);
            }
        }
    }

    private void addOutside(Substance substance, CheckEntry entry, @Nullable String purpose) {
        List<UsageLimit> limits = entry.outside().stream()
                .filter(limit -> purpose == null || limit.scope().coversPurpose(purpose))
                .toList();
        OutOfScope finding = new OutOfScope(substance, limits);
        if (!limits.isEmpty() && !outside.contains(finding)) {
            outside.add(finding);
        }
    }

    private void addConflict(Substance substance, CheckEntry entry) {
        boolean conflict = !entry.casNumbers().contains(substance.cas().orElseThrow());
        if (conflict && !conflicts.contains(substance)) {
            conflicts.add(substance);
        }
    }

    /** A formula counts towards few slots: looking through them is faster than any map. */
    private Tally tally(Slot slot) {
        for (int i = 0; i < tallies.size(); i++) {
            if (tallies.get(i).slot().index() == slot.index()) {
                return tallies.get(i);
            }
        }
        Tally tally = new Tally(formula, slot);
        tallies.add(tally);
        return tally;
    }
}
