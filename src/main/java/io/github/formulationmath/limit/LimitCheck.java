package io.github.formulationmath.limit;

import io.github.formulationmath.amendment.LegalChange;
import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.formula.NameBook;
import io.github.formulationmath.formula.Substance;
import io.github.formulationmath.formula.SubstanceShare;
import io.github.formulationmath.quantity.MassFraction;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/** One run of a checker over one formula, and all that it found; used once, by one thread. */
final class LimitCheck {

    private final LimitChecker checker;
    private final Formula formula;
    private final Wholes wholes;

    /** By the key of what they count, in the order in which the formula needs them. */
    private final Map<String, Tally> tallies = new LinkedHashMap<>();

    private final Set<Substance> withoutLimit;
    private final Set<LimitReport.Uncounted> uncounted = new LinkedHashSet<>();

    /** Substances whose number is not one that the table has for their name. */
    private final Set<Substance> conflicts = new LinkedHashSet<>();

    private final Map<Substance, NameBook.Reading> readings = new LinkedHashMap<>();
    private final Map<String, Substance> toBreakDown = new LinkedHashMap<>();
    /** What acts beside the table changed of a substance, by its own name. */
    private final Map<Substance, Set<LegalChange>> amended = new LinkedHashMap<>();

    private final Set<String> unusedPurposes;

    /** Whether all that is found is wanted, and not the verdicts alone. */
    private final boolean tellsFindings;

    /**
     * All that a check found; what each is, {@link LimitReport} tells.
     *
     * @param verdicts the verdicts, put into the order of their harm
     * @param amended what later acts changed
     * @param later verdicts by figures that are only told, put into the order of their harm
     * @param uncounted what is spoken of and not counted
     * @param withoutLimit what the table does not speak of
     * @param conflicts substances whose number is not that of their name
     * @param unusedPurposes names whose stated purpose was used for nothing
     * @param readings what names were taken for
     * @param toBreakDown materials whose constituents are to be asked for
     */
    record Found(
            List<Verdict> verdicts,
            Map<Substance, Set<LegalChange>> amended,
            List<Verdict> later,
            List<LimitReport.Uncounted> uncounted,
            List<Substance> withoutLimit,
            List<Substance> conflicts,
            Set<String> unusedPurposes,
            Map<Substance, NameBook.Reading> readings,
            List<Substance> toBreakDown) {

        Found {
            verdicts = bindingFirst(verdicts);
            amended = Collections.unmodifiableMap(amended);
            later = bindingFirst(later);
            unusedPurposes = Collections.unmodifiableSet(unusedPurposes);
            readings = Collections.unmodifiableMap(readings);
        }

        private static List<Verdict> bindingFirst(List<Verdict> found) {
            if (found.size() > 1) {
                found.sort(Found::byHarm);
            }
            return List.copyOf(found);
        }

        /**
         * What restricts the contents first, then the worst, then what surely applies, then what uses up most of its limit,
         * then the limit on fewer substances; written out because it is asked often.
         */
        private static int byHarm(Verdict one, Verdict other) {
            int order = Boolean.compare(
                    other.limit().kind().restrictsContents(), one.limit().kind().restrictsContents());
            if (order == 0) {
                order = other.conformity().compareTo(one.conformity());
            }
            if (order == 0) {
                order = one.applicability().compareTo(other.applicability());
            }
            if (order == 0) {
                order = other.used().compareTo(one.used());
            }
            if (order == 0) {
                order = Integer.compare(
                        one.limit().group().members().size(),
                        other.limit().group().members().size());
            }
            if (order == 0) {
                order = one.limit().id().compareTo(other.limit().id());
            }
            return order == 0 ? one.counted().compareTo(other.counted()) : order;
        }
    }

    LimitCheck(LimitChecker checker, Wholes wholes) {
        this(checker, wholes, true);
    }

    private LimitCheck(LimitChecker checker, Wholes wholes, boolean tellsFindings) {
        this.checker = checker;
        this.formula = wholes.formula();
        this.withoutLimit = new LinkedHashSet<>(2 * formula.lines().size());
        this.unusedPurposes = new TreeSet<>(checker.product().purposes().keySet());
        this.wholes = wholes;
        this.tellsFindings = tellsFindings;
    }

    LimitReport report() {
        countLines();
        List<Verdict> verdicts = verdicts();
        List<Verdict> told = new ArrayList<>();
        LimitChecker acts = checker.later().orElse(null);
        if (acts != null && hasLaterFigures(acts)) {
            LimitCheck later = new LimitCheck(acts, wholes, false);
            later.countLines();
            later.verdicts().forEach(verdict -> (isBinding(verdict) ? verdicts : told).add(verdict));
        }
        return new LimitReport(
                checker,
                formula,
                new Found(
                        verdicts,
                        amended,
                        told,
                        List.copyOf(uncounted),
                        List.copyOf(withoutLimit),
                        List.copyOf(conflicts),
                        unusedPurposes,
                        readings,
                        List.copyOf(toBreakDown.values())));
    }

    /** Whether a later act has figures for anything that was changed; most changes are only told. */
    private boolean hasLaterFigures(LimitChecker acts) {
        for (Substance substance : amended.keySet()) {
            Substance named = formula.composition()
                    .shareOf(substance)
                    .map(SubstanceShare::inAllNames)
                    .orElse(substance);
            if (!acts.index().known(named).isEmpty()) {
                return true;
            }
        }
        return false;
    }

    private List<Verdict> verdicts() {
        List<Verdict> verdicts = new ArrayList<>(tallies.size());
        for (Tally tally : tallies.values()) {
            verdicts.add(new Verdict(checker, tally));
        }
        return verdicts;
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

    private void countLines() {
        for (FormulaLine line : formula.lines()) {
            countLine(line);
        }
    }

    private void countLine(FormulaLine line) {
        String ownName = line.ingredient().normalName();
        boolean namedAmongParts = false;
        List<SubstanceShare> substances = formula.composition().sharesIn(line);
        int part = 0;
        for (MassFraction strength : line.ingredient().parts().values()) {
            SubstanceShare one = substances.get(part++);
            Substance substance = one.substance();
            CheckIndex.Known known = checker.index().known(one.inAllNames());
            namedAmongParts |= known.named().keys().contains(ownName);
            addFindings(substance, known);
            if (known.isBlend()) {
                countBlend(line, strength, known.blended());
            } else if (known.isEmpty()) {
                withoutLimit.add(substance);
            }
            askForBreakdown(line, substance, known);
            for (Counting counting : known.countings()) {
                tally(counting).add(line, substance, strength, counting);
            }
            for (Counting counting : known.annexes().countings()) {
                tally(counting).add(line, substance, strength, counting);
            }
        }
        if (!namedAmongParts) {
            countUnderOwnName(line);
        }
    }

    /**
     * Several names written as one: each counts with as much as the whole, or next to nothing. Of those that go into one sum
     * the one that weighs most stands for all, because together they are no more than the whole.
     */
    private void countBlend(FormulaLine line, MassFraction strength, List<Substance> parts) {
        Map<String, Counting> heaviest = new LinkedHashMap<>();
        Map<String, Substance> meant = new LinkedHashMap<>();
        for (Substance part : parts) {
            CheckIndex.Known known = checker.index().known(part);
            addFindings(part, known);
            if (known.isEmpty()) {
                withoutLimit.add(part);
            }
            List<Counting> all = new ArrayList<>(known.countings());
            all.addAll(known.annexes().countings());
            for (Counting counting : all) {
                Counting other = heaviest.get(counting.key());
                if (other == null || counting.weight().compareTo(other.weight()) > 0) {
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
    private void askForBreakdown(FormulaLine line, Substance substance, CheckIndex.Known known) {
        boolean parted = line.ingredient().parts().size() > 1;
        if (known.smells() ? !parted || !lineSmells(line, known) : !parted && lineSmells(line, known)) {
            toBreakDown.putIfAbsent(substance.keys().get(0), substance);
        }
    }

    private boolean lineSmells(FormulaLine line, CheckIndex.Known known) {
        String name = line.ingredient().normalName();
        return known.named().keys().get(0).equals(name)
                ? known.smells()
                : checker.index().smells(line.name());
    }

    /**
     * A material made of declared parts is still what it is called: a limit on the oil is not met by telling what the oil
     * consists of. Where a part has the name of the material, the parts themselves tell how much of it the line holds.
     */
    private void countUnderOwnName(FormulaLine line) {
        Substance material = Substance.of(line.name());
        CheckIndex.Known known = checker.index()
                .known(formula.composition()
                        .shareOf(material)
                        .map(SubstanceShare::inAllNames)
                        .orElse(material));
        addFindings(material, known);
        known.countings().forEach(counting -> tally(counting).addMaterial(line, material, counting));
        known.annexes().countings().forEach(counting -> tally(counting).addMaterial(line, material, counting));
    }

    /** Tells all that is not counted. */
    private void addFindings(Substance substance, CheckIndex.Known known) {
        if (!tellsFindings) {
            return;
        }
        usePurpose(known.named());
        if (known.reading() != null) {
            readings.put(substance, known.reading());
        }
        if (known.isEmpty()) {
            return;
        }
        if (!known.amendments().isEmpty()) {
            amended.merge(substance, known.amendments(), LimitCheck::both);
        }
        for (LimitReport.Uncounted finding : known.annexes().findings()) {
            uncounted.add(new LimitReport.Uncounted(substance, finding.why(), finding.limits(), finding.entries()));
        }
        if (!known.omitted().isEmpty()) {
            uncounted.add(new LimitReport.Uncounted(
                    substance, LimitReport.Uncounted.Why.NOT_TRANSCRIBED, List.of(), known.omitted()));
        }
        addUncounted(substance, LimitReport.Uncounted.Why.MENTIONED, known.mentioning());
        addUncounted(substance, LimitReport.Uncounted.Why.MAY_BE_MEANT, known.alike());
        CheckIndex.Entry entry = known.entry();
        if (entry == null) {
            return;
        }
        addUncounted(substance, LimitReport.Uncounted.Why.OTHER_PRODUCTS, entry.outside());
        addUncounted(substance, LimitReport.Uncounted.Why.OTHER_PURPOSE, entry.otherPurpose());
        if (!entry.casNumbers().isEmpty()
                && known.named().cas().isPresent()
                && !entry.casNumbers().contains(known.named().cas().orElseThrow())) {
            conflicts.add(substance);
        }
    }

    private static Set<LegalChange> both(Set<LegalChange> some, Set<LegalChange> more) {
        if (some.equals(more)) {
            return some;
        }
        Set<LegalChange> all = new LinkedHashSet<>(some);
        all.addAll(more);
        return Collections.unmodifiableSet(all);
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
