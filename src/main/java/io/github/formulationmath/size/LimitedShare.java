package io.github.formulationmath.size;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.limit.Conformity;
import io.github.formulationmath.limit.UsageLimit;
import io.github.formulationmath.limit.Verdict;
import io.github.formulationmath.number.Excerpt;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.reckoning.Kind;
import io.github.formulationmath.reckoning.Phrase;
import io.github.formulationmath.reckoning.Reckoning;
import io.github.formulationmath.reckoning.Source;
import io.github.formulationmath.reckoning.Symbol;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * What one limit counts in one formula, on the basis of the limit: groups, sums, conversions and the phase come with it.
 *
 * @param formula the formula on which the verdict was given
 * @param counted what is counted, in words
 * @param limit the limit
 * @param lines the lines of which the limit is a share
 * @param strengths how much of each of these is counted, by its position
 */
record LimitedShare(
        Formula formula, String counted, UsageLimit limit, List<FormulaLine> lines, Map<Integer, Ratio> strengths)
        implements CountedShare {

    private static final Symbol LIMIT = Symbol.of("T", "usage-limit", Kind.SHARE);
    private static final Symbol COUNTED = Symbol.of("C", "counted-per-line", Kind.SHARE);

    static LimitedShare of(Verdict verdict) {
        if (verdict.conformity() == Conformity.NOT_ASSESSABLE) {
            throw new IllegalArgumentException("verdict is " + Excerpt.of(verdict)
                    + ": without all figures no batch can be named; give those that its remarks ask for");
        }
        return new LimitedShare(
                verdict.formula(),
                verdict.counted(),
                verdict.limit(),
                List.copyOf(verdict.wholeLines()),
                strengths(verdict));
    }

    private static Map<Integer, Ratio> strengths(Verdict verdict) {
        List<FormulaLine> lines = verdict.wholeLines();
        List<Ratio> strengths = verdict.strengths();
        Map<Integer, Ratio> byPosition = new HashMap<>();
        for (int i = 0; i < lines.size(); i++) {
            byPosition.put(lines.get(i).position(), strengths.get(i));
        }
        return Map.copyOf(byPosition);
    }

    @Override
    public Phrase name() {
        return Phrase.of("criterion.limit-kept", counted, limit.id());
    }

    @Override
    public Phrase obstacle() {
        return Phrase.of("obstacle.target-at-limit", counted, limit.id());
    }

    @Override
    public void check(Formula other) {
        if (!formula.equals(other)) {
            throw new IllegalArgumentException(
                    "the verdict on " + Excerpt.of(counted) + " by " + Excerpt.of(limit.id()) + " was given on another"
                            + " formula (\"" + Excerpt.of(formula.name()) + "\") than the one asked about (\""
                            + Excerpt.of(other.name())
                            + "\"): check that one and take its own verdict");
        }
    }

    @Override
    public List<FormulaLine> whole(Formula same) {
        return lines;
    }

    @Override
    public FormulaLine carrier(Formula same) {
        return lines.stream()
                .max(Comparator.comparing(line -> strength(same, line).times(line.fraction())))
                .orElseThrow();
    }

    @Override
    public boolean isUpper() {
        return limit.kind().isUpper();
    }

    @Override
    public Ratio bound() {
        return limit.share().fraction();
    }

    @Override
    public <V> V bound(Reckoning<V> r) {
        return r.given(LIMIT, bound(), Source.published(limit.citation().toString(), ""));
    }

    @Override
    public Ratio strength(Formula same, FormulaLine line) {
        return strengths.getOrDefault(line.position(), Ratio.ZERO);
    }

    @Override
    public <V> V strength(Reckoning<V> r, Formula same, FormulaLine line) {
        Ratio strength = strength(same, line);
        return strength.isZero() ? r.literal(0) : r.given(COUNTED, line, strength, Source.user());
    }

    @Override
    public <V> V evenRoom(Reckoning<V> r, Formula same) {
        List<V> parts = new ArrayList<>(lines.size());
        for (FormulaLine line : lines) {
            parts.add(r.product(lack(r, same, line), r.known(line)));
        }
        return r.sum(parts);
    }

    @Override
    public void caution(Reckoning<?> r) {
        r.note(() -> Phrase.of("caution.limit-short"));
    }

    @Override
    public String toString() {
        return counted + " keeps limit " + limit.id();
    }
}
