package io.github.formulationmath.weighing;

import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.weighing.CommonErrors.Entry;
import io.github.formulationmath.weighing.ErrorTerm.Load;
import io.github.formulationmath.weighing.ErrorTerm.Range;
import io.github.formulationmath.working.Kind;
import io.github.formulationmath.working.Reckoning;
import io.github.formulationmath.working.Source;
import io.github.formulationmath.working.Symbol;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;

/** The relations from readings and error terms to masses, their extremes, and their covariances. */
record MassRelations(
        List<Addition> additions,
        CommonErrors errors,
        @Nullable CoverageFactor coverage) {

    /** Terms of one source and one figure: they differ in their lines alone. */
    private record Keyed(ErrorSource source, ErrorTerm.Figures figures, boolean isHalf) {}

    private static final Symbol COVERAGE = Symbol.of("k", "coverage-factor", Kind.NUMBER);
    private static final Symbol STRENGTH = Symbol.of("c", "strength-in-line", Kind.SHARE);

    /** The mass of a line, every error at its middle. */
    <V> V estimate(Reckoning<V> r, int line) {
        V sum = r.known(additions.get(line).reading());
        for (Entry entry : errors.of(line)) {
            if (!entry.term().middle().isZero()) {
                sum = plus(r, sum, entry, line, entry.term().origin().middle(r));
            }
        }
        return sum;
    }

    /** The mass of a line, every bounded error at one of its ends. */
    <V> V massAt(Reckoning<V> r, int line, Predicate<Entry> atUpperEnd) {
        V sum = r.known(additions.get(line).reading());
        for (Entry entry : errors.of(line)) {
            if (isInBox(entry.term())) {
                sum = plusEnd(r, sum, entry, line, atUpperEnd.test(entry));
            }
        }
        return sum;
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

    <V> V reading(Reckoning<V> r, int line) {
        return r.known(additions.get(line).reading());
    }

    /** The covariance of two weighted sums of the masses: terms that enter with plain numbers are counted together. */
    <V> V covariance(Reckoning<V> r, Weights a, Weights b) {
        Map<Keyed, ErrorTerm> kinds = new LinkedHashMap<>();
        Map<Keyed, Ratio> counts = new LinkedHashMap<>();
        List<V> parts = new ArrayList<>();
        for (ErrorTerm term : errors.touching(a)) {
            Ratio factor = a.sensitivity(term).times(b.sensitivity(term));
            if (isCounted(term, a) && isCounted(term, b)) {
                Keyed key = new Keyed(term.source(), term.origin(), term.isHalf());
                kinds.putIfAbsent(key, term);
                counts.merge(key, factor, Ratio::plus);
            } else if (!factor.isZero()) {
                parts.add(r.product(square(r, term), r.product(sensitivity(r, a, term), sensitivity(r, b, term))));
            }
        }
        counts.forEach((key, count) ->
                addCounted(r, parts, square(r, Objects.requireNonNull(kinds.get(key), "kind")), count));
        return Sums.of(r, parts);
    }

    private static boolean isCounted(ErrorTerm term, Weights weights) {
        return !term.isProportional() && !(weights instanceof Weights.PerLine);
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

    private <V> V sensitivity(Reckoning<V> r, Weights weights, ErrorTerm term) {
        if (weights instanceof Weights.Total && term.loads().size() > 1) {
            return r.known(new ScaleTotal(this, term));
        }
        List<V> parts = new ArrayList<>();
        for (Load load : term.loads()) {
            if (!weights.of(load.line()).isZero()) {
                V factor = term.isProportional() ? reading(r, load.line()) : r.literal(load.factor());
                parts.add(
                        weights instanceof Weights.PerLine
                                ? r.product(strength(r, weights, load.line()), factor)
                                : factor);
            }
        }
        return Sums.of(r, parts);
    }

    <V> V strength(Reckoning<V> r, Weights weights, int line) {
        return r.given(STRENGTH, additions.get(line).subject(), weights.of(line), Source.user());
    }
}
