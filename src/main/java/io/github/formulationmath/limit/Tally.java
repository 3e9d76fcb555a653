package io.github.formulationmath.limit;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.formula.Substance;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.MassFraction;
import io.github.formulationmath.working.Kind;
import io.github.formulationmath.working.Reckoning;
import io.github.formulationmath.working.Subject;
import io.github.formulationmath.working.Symbol;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

/**
 * Everything in one formula that counts towards one slot: {@code y = Σ w_i · c_i · F_i / W}, with W the share of the phase
 * the limit is of, 1 for the whole product.
 */
final class Tally implements Subject {

    private static final Symbol SHARE = Symbol.of("y", "counted-share", Kind.SHARE);
    private static final Symbol WHOLE = Symbol.of("W", "phase-share", Kind.SHARE);

    private final Formula formula;
    private final Slot slot;
    private final List<Contribution> contributions = new ArrayList<>(2);

    Tally(Formula formula, Slot slot) {
        this.formula = formula;
        this.slot = slot;
    }

    /** Adds a substance of a line; a material that counts as supplied counts once. */
    void add(FormulaLine line, Substance substance, MassFraction strength, Hit hit) {
        int place = 0;
        for (Contribution earlier : contributions) {
            place += earlier.line().position() == line.position() ? 1 : 0;
        }
        boolean asSupplied = slot.limit().basis().isAsSupplied();
        if (place == 0 || !asSupplied) {
            contributions.add(
                    new Contribution(place, line, substance, asSupplied ? Ratio.ONE : strength.fraction(), hit));
        }
    }

    Formula formula() {
        return formula;
    }

    Slot slot() {
        return slot;
    }

    List<Contribution> contributions() {
        return Collections.unmodifiableList(contributions);
    }

    /** The lines that make up the whole; empty if the formula does not have the phase. */
    List<FormulaLine> whole() {
        UsageLimit limit = slot.limit();
        if (limit.isOfProduct()) {
            return formula.lines();
        }
        return phaseLines(formula, limit.whole());
    }

    static List<FormulaLine> phaseLines(Formula formula, String whole) {
        String wanted = phaseName(whole);
        return formula.lines().stream()
                .filter(line -> phaseName(line.phase()).equals(wanted))
                .toList();
    }

    /** {@code Oil phase} and {@code oil} are the same phase. */
    private static String phaseName(String name) {
        String term = LimitNames.term(name);
        return term.endsWith("_phase") ? term.substring(0, term.length() - "_phase".length()) : term;
    }

    boolean isAssessable() {
        for (Contribution contribution : contributions) {
            if (!contribution.hit().isAssessable()) {
                return false;
            }
        }
        return slot.limit().isOfProduct() || !whole().isEmpty();
    }

    /** The first thing that keeps the limit from being assessed. */
    Optional<Contribution> withoutConversion() {
        return contributions.stream().filter(c -> !c.hit().isAssessable()).findFirst();
    }

    Optional<String> problem() {
        if (!slot.limit().isOfProduct() && whole().isEmpty()) {
            return Optional.of("problem.no-phase");
        }
        return withoutConversion()
                .map(contribution ->
                        contribution.hit().conversion().isKnown() ? "problem.no-own-limit" : "problem.no-conversion");
    }

    /** Contributions that are part of the whole: in a phase, only the lines of that phase. */
    private List<Contribution> inWhole() {
        if (slot.limit().isOfProduct()) {
            return contributions;
        }
        List<FormulaLine> lines = whole();
        return lines.isEmpty()
                ? contributions
                : contributions.stream().filter(c -> lines.contains(c.line())).toList();
    }

    <V> V share(Reckoning<V> r) {
        List<Contribution> counted = inWhole();
        List<V> terms = new ArrayList<>(counted.size());
        for (Contribution contribution : counted) {
            V line = r.known(contribution.line());
            terms.add(contribution.isWhole() ? line : r.product(line, contribution.weight(r)));
        }
        V sum = terms.size() == 1 ? terms.get(0) : r.sum(terms);
        return r.named(SHARE, this, ofWhole(r, sum));
    }

    private <V> V ofWhole(Reckoning<V> r, V sum) {
        List<FormulaLine> lines = slot.limit().isOfProduct() ? List.of() : whole();
        if (lines.isEmpty()) {
            return sum;
        }
        List<V> parts = new ArrayList<>(lines.size());
        for (FormulaLine line : lines) {
            parts.add(r.known(line));
        }
        return r.quotient(sum, r.named(WHOLE, parts.size() == 1 ? parts.get(0) : r.sum(parts)));
    }

    /** How much of each of these lines counts. */
    List<Ratio> strengths(List<FormulaLine> lines) {
        List<Ratio> strengths = new ArrayList<>(lines.size());
        for (FormulaLine line : lines) {
            Ratio sum = Ratio.ZERO;
            for (Contribution contribution : contributions) {
                if (contribution.line().position() == line.position()) {
                    sum = sum.plus(contribution.weight(Reckoning.plain()));
                }
            }
            strengths.add(sum);
        }
        return strengths;
    }

    @Override
    public String subscript() {
        return "";
    }

    @Override
    public String name() {
        return slot.counted();
    }
}
