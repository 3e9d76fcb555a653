package io.github.formulationmath.weighing;

import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.reckoning.Kind;
import io.github.formulationmath.reckoning.Phrase;
import io.github.formulationmath.reckoning.Reckoning;
import io.github.formulationmath.reckoning.Source;
import io.github.formulationmath.reckoning.Symbol;
import io.github.formulationmath.simulation.CoverageFactor;
import io.github.formulationmath.weighing.ErrorTerm.Load;
import io.github.formulationmath.weighing.ErrorTerm.Range;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.IntFunction;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;

/**
 * Additions and the independent errors that they have in common: the relations from these to masses, their extremes, and
 * their covariances. Nothing of the size lines × lines is kept.
 */
final class MassRelations {

    private static final Symbol COVERAGE = Symbol.of("k", "coverage-factor", Kind.NUMBER);
    private static final Symbol STRENGTH = Symbol.of("c", "strength-in-line", Kind.SHARE);
    private static final Symbol SCALE_TOTAL = Symbol.of("R_q", "scale-total", Kind.MASS);

    /** How a term enters a line, or a weighted sum of lines. */
    record Entry(int place, ErrorTerm term, Ratio factor) {}

    /** Terms of one source and one figure: they differ in their lines alone. */
    private record Keyed(ErrorSource source, ErrorTerm.Figures figures, boolean isHalf) {}

    private final List<Addition> additions;
    private final List<ErrorTerm> terms;
    private final @Nullable CoverageFactor coverage;
    private final List<List<Entry>> byLine = new ArrayList<>();
    /** Put together when somebody first asks how uncertain the whole is. */
    private volatile @Nullable Map<Integer, Entry> inTotal;

    private MassRelations(List<Addition> additions, List<ErrorTerm> terms, @Nullable CoverageFactor coverage) {
        this.additions = additions;
        this.terms = terms;
        this.coverage = coverage;
        for (int line = 0; line < additions.size(); line++) {
            byLine.add(new ArrayList<>(2));
        }
        for (int place = 0; place < terms.size(); place++) {
            ErrorTerm term = terms.get(place);
            for (Load load : term.loads()) {
                byLine.get(load.line()).add(new Entry(place, term, load.factor()));
            }
        }
    }

    static MassRelations of(List<Addition> additions) {
        return new MassRelations(additions, ErrorTerms.of(additions), null);
    }

    MassRelations covering(CoverageFactor factor) {
        return new MassRelations(additions, terms, factor);
    }

    /** Some of the lines, counted from 0 again: what they have in common with the others stays in them. */
    MassRelations part(List<Integer> lines) {
        Map<Integer, Integer> places = new HashMap<>();
        lines.forEach(line -> places.put(line, places.size()));
        return new MassRelations(
                lines.stream().map(additions::get).toList(),
                terms.stream()
                        .map(term -> term.part(places))
                        .filter(term -> !term.isNothing())
                        .toList(),
                coverage);
    }

    List<Addition> additions() {
        return additions;
    }

    List<Entry> of(int line) {
        return byLine.get(line);
    }

    /**
     * The terms that a weighted sum may depend on, by their places, each with how the sum changes with it. As long as the
     * lines with a weight are few, it does not matter how many others there are.
     */
    Map<Integer, Entry> felt(Weights weights) {
        if (weights.isTotal()) {
            return inTotal();
        }
        Map<Integer, Entry> felt = new TreeMap<>();
        weights.forEach(additions.size(), (line, weight) -> {
            for (Entry entry : of(line)) {
                felt.merge(
                        entry.place(),
                        new Entry(entry.place(), entry.term(), weight.times(entry.factor())),
                        (a, b) -> new Entry(a.place(), a.term(), a.factor().plus(b.factor())));
            }
        });
        return felt;
    }

    private Map<Integer, Entry> inTotal() {
        Map<Integer, Entry> known = inTotal;
        if (known == null) {
            known = new LinkedHashMap<>();
            for (int place = 0; place < terms.size(); place++) {
                known.put(
                        place,
                        new Entry(place, terms.get(place), terms.get(place).totalLoad()));
            }
            inTotal = known;
        }
        return known;
    }

    /** The covariance of two weighted sums of the masses, source by source. */
    Map<ErrorSource, Ratio> bySource(Weights a, Weights b) {
        Map<ErrorSource, Ratio> sums = new EnumMap<>(ErrorSource.class);
        Map<Integer, Entry> others = felt(b);
        for (Entry entry : felt(a).values()) {
            Entry other = others.get(entry.place());
            if (other != null) {
                Ratio part = entry.term().variance().times(entry.factor()).times(other.factor());
                sums.merge(entry.term().source(), part, Ratio::plus);
            }
        }
        sums.values().removeIf(Ratio::isZero);
        return sums;
    }

    /** The mass of a line, every error at its middle. */
    <V> V estimate(Reckoning<V> r, int line) {
        V sum = reading(r, line);
        for (Entry entry : of(line)) {
            if (!entry.term().middle().isZero()) {
                sum = plus(r, sum, entry, line, entry.term().origin().middle(r));
            }
        }
        return sum;
    }

    /** The mass of a line, every bounded error at one of its ends. */
    <V> V massAt(Reckoning<V> r, int line, Predicate<Entry> atUpperEnd) {
        V sum = reading(r, line);
        for (Entry entry : of(line)) {
            if (isInBox(entry.term())) {
                sum = plusEnd(r, sum, entry, line, atUpperEnd.test(entry));
            }
        }
        return sum;
    }

    Optional<CoverageFactor> coverage() {
        return Optional.ofNullable(coverage);
    }

    boolean leavesErrorsOut() {
        for (ErrorTerm term : terms) {
            if (!isInBox(term)) {
                return true;
            }
        }
        return false;
    }

    boolean isInBox(ErrorTerm term) {
        return term.law().isBounded() || coverage != null;
    }

    /** The end of the box of a term. */
    Ratio end(ErrorTerm term, boolean upper) {
        Ratio reach = term.reach(coverage);
        return upper ? term.middle().plus(reach) : term.middle().minus(reach);
    }

    private <V> V plusEnd(Reckoning<V> r, V sum, Entry entry, int line, boolean upper) {
        if (entry.term().origin() instanceof Range range) {
            return plus(r, sum, entry, line, upper ? range.upper(r) : range.lower(r));
        }
        V reach = reach(r, entry.term());
        V part = entry.term().isProportional() ? r.product(reading(r, line), reach) : reach;
        return upper == entry.factor().signum() > 0 ? r.sum(sum, part) : r.difference(sum, part);
    }

    private <V> V plus(Reckoning<V> r, V sum, Entry entry, int line, V error) {
        if (entry.term().isProportional()) {
            return r.sum(sum, r.product(reading(r, line), error));
        }
        return entry.factor().signum() > 0 ? r.sum(sum, error) : r.difference(sum, error);
    }

    private <V> V reach(Reckoning<V> r, ErrorTerm term) {
        V scale = term.origin().scale(r);
        V whole = term.law().isBounded() || coverage == null
                ? scale
                : r.product(r.given(COVERAGE, coverage.factor(), Source.user()), scale);
        return term.isHalf() ? r.quotient(whole, r.literal(2)) : whole;
    }

    private <V> V reading(Reckoning<V> r, int line) {
        return r.known(additions.get(line).reading());
    }

    /** Σ weight · mass, lines of weight 0 left out. */
    <V> V weighted(Reckoning<V> r, Weights weights, IntFunction<V> masses) {
        List<V> parts = new ArrayList<>();
        weights.forEach(
                additions.size(), (line, weight) -> parts.add(strengthened(r, weights, line, masses.apply(line))));
        return r.sum(parts);
    }

    private <V> V strengthened(Reckoning<V> r, Weights weights, int line, V value) {
        return weights.areStrengths()
                ? r.product(r.given(STRENGTH, additions.get(line).subject(), weights.of(line), Source.user()), value)
                : value;
    }

    /** The covariance of two weighted sums of the masses: terms that enter with plain numbers are counted together. */
    <V> V covariance(Reckoning<V> r, Weights a, Weights b) {
        Map<Keyed, ErrorTerm> kinds = new LinkedHashMap<>();
        Map<Keyed, Ratio> counts = new LinkedHashMap<>();
        List<V> parts = new ArrayList<>();
        Map<Integer, Entry> others = felt(b);
        for (Entry entry : felt(a).values()) {
            ErrorTerm term = entry.term();
            Entry other = others.get(entry.place());
            Ratio factor = other == null ? Ratio.ZERO : entry.factor().times(other.factor());
            if (!term.isProportional() && !a.areStrengths() && !b.areStrengths()) {
                Keyed key = new Keyed(term.source(), term.origin(), term.isHalf());
                kinds.putIfAbsent(key, term);
                counts.merge(key, factor, Ratio::plus);
            } else if (other != null && !factor.isZero()) {
                parts.add(r.product(square(r, term), r.product(sensitivity(r, a, entry), sensitivity(r, b, other))));
            }
        }
        counts.forEach((key, count) ->
                addCounted(r, parts, square(r, Objects.requireNonNull(kinds.get(key), "kind")), count));
        return r.sum(parts);
    }

    private static <V> void addCounted(Reckoning<V> r, List<V> parts, V square, Ratio count) {
        if (!count.isZero()) {
            parts.add(count.equals(Ratio.ONE) ? square : r.product(r.literal(count), square));
        }
    }

    /** The variance of a term, scale² / divisor. */
    private static <V> V square(Reckoning<V> r, ErrorTerm term) {
        V scale = term.origin().scale(r);
        V product = r.product(scale, scale);
        long divisor = term.isHalf() ? 2 * term.law().divisor() : term.law().divisor();
        return divisor == 1 ? product : r.quotient(product, r.literal(divisor));
    }

    private <V> V sensitivity(Reckoning<V> r, Weights weights, Entry entry) {
        ErrorTerm term = entry.term();
        if (weights.isTotal() && term.loads().size() > 1) {
            return r.known(scaleTotal(entry));
        }
        List<V> parts = new ArrayList<>();
        Weights own = weights.isTotal() ? Weights.line(term.loads().get(0).line()) : weights;
        if (own.size() < term.loads().size()) {
            // Of few lines not all loads of the term are looked through,
            own.forEach(additions.size(), (line, weight) -> {
                for (Entry each : of(line)) {
                    if (each.place() == entry.place()) {
                        parts.add(part(r, weights, term, line, each.factor()));
                    }
                }
            });
        } else {
            // and of a term of few lines not all weights.
            for (Load load : term.loads()) {
                if (!own.of(load.line()).isZero()) {
                    parts.add(part(r, weights, term, load.line(), load.factor()));
                }
            }
        }
        return r.sum(parts);
    }

    private <V> V part(Reckoning<V> r, Weights weights, ErrorTerm term, int line, Ratio factor) {
        return strengthened(r, weights, line, term.isProportional() ? reading(r, line) : r.literal(factor));
    }

    /** The sum of all readings that one scale error changes: known already, added up again for a working. */
    Derived scaleTotal(Entry inTotal) {
        return Derived.of(
                total -> Phrase.of("question.scale-total"),
                inTotal.factor(),
                new ScaleTotal(this, inTotal.term()),
                ScaleTotal::in);
    }

    private record ScaleTotal(MassRelations relations, ErrorTerm term) {

        <V> V in(Reckoning<V> r) {
            List<V> readings = term.loads().stream()
                    .map(load -> relations.reading(r, load.line()))
                    .toList();
            return r.named(SCALE_TOTAL, term.origin().subject(), r.sum(readings));
        }
    }
}
