package io.github.formulationmath.limit;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.formula.Substance;
import io.github.formulationmath.limit.LimitKind.End;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.MassFraction;
import io.github.formulationmath.reckoning.Kind;
import io.github.formulationmath.reckoning.Reckoning;
import io.github.formulationmath.reckoning.Subject;
import io.github.formulationmath.reckoning.Symbol;
import io.github.formulationmath.weighing.MadeMasses;
import io.github.formulationmath.weighing.MadeShare;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/**
 * Everything in one formula that counts towards one slot: {@code y = Σ w_i · c_i · F_i / W}, with W the share of the phase
 * the limit is of, 1 for the whole product.
 */
final class Tally implements Subject {

    private static final Symbol CAP = Symbol.of("T", "usage-limit", Kind.SHARE);
    private static final Symbol SHARE = Symbol.of("y", "counted-share", Kind.SHARE);

    private final Wholes wholes;
    private final Counting of;
    private final Wholes.Whole whole;
    private final List<Contribution> contributions = new ArrayList<>(2);

    /** @param of one of those that are counted together */
    Tally(Wholes wholes, Counting of) {
        this.wholes = wholes;
        this.of = of;
        this.whole = wholes.of(of.limit());
    }

    /**
     * Adds a substance of a line; a material that counts as supplied counts once. Lines are added one after another, so that
     * what was added of the same line is the end of the list.
     */
    void add(FormulaLine line, Substance substance, MassFraction strength, Counting counting) {
        int place = of(line).size();
        boolean asSupplied = limit().basis().isAsSupplied();
        if (place == 0 || !asSupplied) {
            contributions.add(
                    new Contribution(place, line, substance, asSupplied ? Ratio.ONE : strength.fraction(), counting));
        }
    }

    /**
     * Adds a whole line under the name of its material, unless its parts, which were added before, do more harm (count
     * more against a highest share, less towards a lowest one) or tell what nothing else tells.
     */
    void addMaterial(FormulaLine line, Substance material, Counting counting) {
        Ratio parts = Ratio.ZERO;
        List<Contribution> before = of(line);
        for (Contribution earlier : before) {
            parts = parts.plus(earlier.weight(Reckoning.plain()));
        }
        Contribution whole = new Contribution(0, line, material, Ratio.ONE, counting);
        int more = whole.weight(Reckoning.plain()).compareTo(parts);
        boolean harmsMore = limit().kind().isUpper() ? more > 0 : more < 0;
        if (before.isEmpty() || counting.isAssessable() && harmsMore) {
            before.clear();
            contributions.add(whole);
        }
    }

    /** What was added of the line that is being added, as a view. */
    private List<Contribution> of(FormulaLine line) {
        int from = contributions.size();
        while (from > 0 && contributions.get(from - 1).line().position() == line.position()) {
            from--;
        }
        return contributions.subList(from, contributions.size());
    }

    Formula formula() {
        return wholes.formula();
    }

    UsageLimit limit() {
        return of.limit();
    }

    Applicability applicability() {
        return of.applicability();
    }

    /** The share that the limit allows, demands or sets. */
    <V> V cap(Reckoning<V> r) {
        return r.given(CAP, limit().share().fraction(), limit().citation().source());
    }

    List<Contribution> contributions() {
        return Collections.unmodifiableList(contributions);
    }

    /** What it is a share of; no line if the formula does not have the phase. */
    Wholes.Whole whole() {
        return whole;
    }

    /** Lines that hold what is counted, but in another phase than the one the limit is a share of. */
    List<FormulaLine> outsideWhole() {
        if (limit().isOfProduct()) {
            return List.of();
        }
        return contributions.stream()
                .map(Contribution::line)
                .distinct()
                .filter(line -> !whole.contains(line))
                .toList();
    }

    /** Whether every figure is known. */
    boolean isAssessable() {
        for (Contribution contribution : contributions) {
            if (!contribution.counting().isAssessable()) {
                return false;
            }
        }
        return hasWhole();
    }

    /** Whether the formula has what the limit is a share of. */
    boolean hasWhole() {
        return limit().isOfProduct() || !whole.isEmpty();
    }

    /** Whether the share has a highest end: no member lacks the own limit that its share would be divided by. */
    boolean isBounded() {
        for (Contribution contribution : contributions) {
            if (!contribution.counting().hasDivisor()) {
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
                .filter(contribution -> !contribution.counting().isAssessable())
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
        return contributions.stream().filter(c -> !c.counting().isAssessable()).findFirst();
    }

    Optional<String> problem() {
        if (!limit().isOfProduct() && whole.isEmpty()) {
            return Optional.of("problem.no-phase");
        }
        return withoutConversion()
                .map(contribution -> contribution.counting().conversion())
                .map(conversion -> conversion instanceof Conversion.Unstated
                        ? Conversion.Unstated.PROBLEM
                        : conversion.isKnown() ? "problem.no-own-limit" : "problem.no-conversion");
    }

    /** Contributions that are part of the whole, in a phase only the lines of that phase, as far as an end has them. */
    private List<Contribution> inWhole(End end) {
        if (end == End.HIGHEST && limit().isOfProduct()) {
            return contributions;
        }
        List<Contribution> counted = new ArrayList<>(contributions.size());
        for (Contribution contribution : contributions) {
            boolean part = limit().isOfProduct() || whole.isEmpty() || whole.contains(contribution.line());
            if (part && (end == End.HIGHEST || contribution.counting().isAssessable())) {
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
        V sum = terms.isEmpty() ? r.literal(0) : r.sum(terms);
        return r.named(SHARE, this, terms.isEmpty() ? sum : ofWhole(r, sum));
    }

    private <V> V ofWhole(Reckoning<V> r, V sum) {
        return limit().isOfProduct() || whole.isEmpty() ? sum : r.quotient(sum, r.known(whole));
    }

    /** How much of each of these lines counts; what is not known, as it does the most harm. */
    List<Ratio> strengths(List<FormulaLine> lines) {
        return strengths(lines, limit().kind().harmful());
    }

    /** How much of each of these lines counts at one end. */
    List<Ratio> strengths(List<FormulaLine> lines, End end) {
        Map<Integer, Ratio> counted = byPosition(end);
        List<Ratio> strengths = new ArrayList<>(lines.size());
        for (FormulaLine line : lines) {
            strengths.add(counted.getOrDefault(line.position(), Ratio.ZERO));
        }
        return strengths;
    }

    /** The share at one end: as weighed, if anything was, or else as written. */
    KnownShare evidence(End end) {
        return made(byPlace(byPosition(end))).orElseGet(() -> new KnownShare.Written(this, end));
    }

    /** The share as weighed of what counts in these strengths, by the place of the line in the whole; empty if nothing was weighed. */
    private Optional<KnownShare> made(Map<Integer, Ratio> counted) {
        return whole.masses().map(masses -> {
            MadeShare share = masses.madeShare(this, counted);
            return whole.sureShare(counted)
                    .<KnownShare>map(sure -> new KnownShare.Mixed(this, share, sure))
                    .orElseGet(() -> new KnownShare.Made(share));
        });
    }

    /** Whether something is converted by a factor that is known no better than atomic masses are. */
    boolean isRounded() {
        for (Contribution contribution : contributions) {
            if (contribution.counting().conversion().isRounded()) {
                return true;
            }
        }
        return false;
    }

    /** The share at one end, with every factor as far off in the same way as atomic masses allow. */
    KnownShare evidenceAt(End end) {
        Map<Integer, Ratio> counted = byPlace(byPosition(end, contribution -> contribution.weightAt(end)));
        return made(counted).orElseGet(() -> KnownShare.Numbers.of(written(end)));
    }

    private Ratio written(End end) {
        Ratio sum = Ratio.ZERO;
        for (Contribution contribution : inWhole(end)) {
            sum = sum.plus(contribution.line().fraction().times(contribution.weightAt(end)));
        }
        return limit().isOfProduct() || whole.isEmpty() ? sum : sum.dividedBy(whole.share());
    }

    /** The share of what is unknown in one line, all of it taken as there. */
    KnownShare evidenceOfUnknown(MadeMasses masses, FormulaLine line) {
        return new KnownShare.Made(masses.madeShare(this, byPlace(Map.of(line.position(), unknownStrength(line)))));
    }

    /** How much counts at the end that does the most harm, by the place of the line in the whole. */
    Map<Integer, Ratio> counted() {
        return byPlace(byPosition(limit().kind().harmful()));
    }

    /** In the formula if it does not have the phase. */
    private Map<Integer, Ratio> byPlace(Map<Integer, Ratio> byPosition) {
        return (whole.isEmpty() ? wholes.product() : whole).byPlace(byPosition);
    }

    private Map<Integer, Ratio> byPosition(End end) {
        return byPosition(end, contribution -> contribution.weight(Reckoning.plain()));
    }

    private Map<Integer, Ratio> byPosition(End end, Function<Contribution, Ratio> weight) {
        Map<Integer, Ratio> counted = new HashMap<>();
        for (Contribution contribution : contributions) {
            if (end == End.HIGHEST || contribution.counting().isAssessable()) {
                counted.merge(contribution.line().position(), weight.apply(contribution), Ratio::plus);
            }
        }
        return counted;
    }

    @Override
    public String subscript() {
        return "";
    }

    @Override
    public String name() {
        return of.counted();
    }
}
