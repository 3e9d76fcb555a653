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

    /**
     * Adds a whole line under the name of its material, unless its parts, which were added before, do more harm (count
     * more against a highest share, less towards a lowest one) or tell what nothing else tells.
     */
    void addMaterial(FormulaLine line, Substance material, Hit hit) {
        Ratio parts = Ratio.ZERO;
        boolean counted = false;
        for (Contribution earlier : contributions) {
            if (earlier.line().position() == line.position()) {
                counted = true;
                parts = parts.plus(earlier.weight(Reckoning.plain()));
            }
        }
        Contribution whole = new Contribution(0, line, material, Ratio.ONE, hit);
        int more = whole.weight(Reckoning.plain()).compareTo(parts);
        boolean harmsMore = slot.limit().kind().isUpper() ? more > 0 : more < 0;
        if (!counted || hit.isAssessable() && harmsMore) {
            contributions.removeIf(earlier -> earlier.line().position() == line.position());
            contributions.add(whole);
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
        String term = LimitNames.term(LimitNames.normalise(name));
        return term.endsWith("_phase") ? term.substring(0, term.length() - "_phase".length()) : term;
    }

    /** Lines that hold what is counted, but in another phase than the one the limit is a share of. */
    List<FormulaLine> outsideWhole() {
        if (slot.limit().isOfProduct()) {
            return List.of();
        }
        String wanted = phaseName(slot.limit().whole());
        return contributions.stream()
                .map(Contribution::line)
                .distinct()
                .filter(line -> !phaseName(line.phase()).equals(wanted))
                .toList();
    }

    /** Whether every figure is known. */
    boolean isAssessable() {
        return withoutConversion().isEmpty() && hasWhole();
    }

    /** Whether the formula has what the limit is a share of. */
    boolean hasWhole() {
        return slot.limit().isOfProduct() || !whole().isEmpty();
    }

    /** Whether the share has a highest end: no member lacks the own limit that its share would be divided by. */
    boolean isBounded() {
        for (Contribution contribution : contributions) {
            if (!contribution.hit().hasDivisor()) {
                return false;
            }
        }
        return hasWhole();
    }

    /** Whether so little is unknown that the two ends tell the verdict for all that lies between. */
    boolean isUnknownInOneLine() {
        return unknownLines().size() <= 1;
    }

    /** The lines of the whole of which it is not known how much counts. */
    List<FormulaLine> unknownLines() {
        List<FormulaLine> elsewhere = outsideWhole();
        return contributions.stream()
                .filter(contribution -> !contribution.hit().isAssessable())
                .map(Contribution::line)
                .distinct()
                .filter(line -> !elsewhere.contains(line))
                .toList();
    }

    /** The greatest part of a line that may count beside what is known of it. */
    Ratio unknownStrength(FormulaLine line) {
        return strengths(List.of(line), End.HIGHEST)
                .get(0)
                .minus(strengths(List.of(line), End.LOWEST).get(0));
    }

    /** The first thing of which it is not known how much of it counts. */
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

    /** Contributions that are part of the whole, in a phase only the lines of that phase, as far as an end has them. */
    private List<Contribution> inWhole(End end) {
        List<FormulaLine> lines = slot.limit().isOfProduct() ? List.of() : whole();
        List<Contribution> counted = new ArrayList<>(contributions.size());
        for (Contribution contribution : contributions) {
            boolean part = lines.isEmpty() || lines.contains(contribution.line());
            if (part && (end == End.HIGHEST || contribution.hit().isAssessable())) {
                counted.add(contribution);
            }
        }
        return counted;
    }

    <V> V share(Reckoning<V> r, End end) {
        List<Contribution> counted = inWhole(end);
        List<V> terms = new ArrayList<>(counted.size());
        for (Contribution contribution : counted) {
            V line = r.known(contribution.line());
            terms.add(contribution.isWhole() ? line : r.product(line, contribution.weight(r)));
        }
        V sum = terms.isEmpty() ? r.literal(0) : terms.size() == 1 ? terms.get(0) : r.sum(terms);
        return r.named(SHARE, this, terms.isEmpty() ? sum : ofWhole(r, sum));
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

    /** How much of each of these lines counts; what is not known, as it does the most harm. */
    List<Ratio> strengths(List<FormulaLine> lines) {
        return strengths(lines, slot.limit().kind().isUpper() ? End.HIGHEST : End.LOWEST);
    }

    /** How much of each of these lines counts at one end. */
    List<Ratio> strengths(List<FormulaLine> lines, End end) {
        List<Ratio> strengths = new ArrayList<>(lines.size());
        for (FormulaLine line : lines) {
            Ratio sum = Ratio.ZERO;
            for (Contribution contribution : contributions) {
                boolean counts = end == End.HIGHEST || contribution.hit().isAssessable();
                if (counts && contribution.line().position() == line.position()) {
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
