package io.github.formulationmath.formula;

import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.working.Comparison;
import io.github.formulationmath.working.Explained;
import io.github.formulationmath.working.Kind;
import io.github.formulationmath.working.Phrase;
import io.github.formulationmath.working.Reckoning;
import io.github.formulationmath.working.Source;
import io.github.formulationmath.working.Symbol;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;

/**
 * The relation between amounts as written and shares of the whole: {@code w_i = a_i / A}, where A is 100 %, the sum of
 * the lines, or a stated mass, and the q.s. line has {@code a = A − Σ others}.
 */
record Shares(List<DraftLine> lines, WholeRule rule, Ratio toMake) implements Explained, Serializable {

    private static final Symbol SHARE = Symbol.of("w", "share", Kind.SHARE);

    @Override
    public Phrase question() {
        return Phrase.of("question.written-total");
    }

    @Override
    public Ratio result() {
        return derive(Reckoning.plain());
    }

    /** The whole A that the lines are shares of; known, so that a working of many lines adds it up once. */
    @Override
    public <V> V derive(Reckoning<V> r) {
        return switch (rule) {
            case HUNDRED_PERCENT -> r.literal(1);
            case MASSES_TO_MAKE -> r.given(rule.whole(), toMake, Source.user());
            case NORMALISED, PARTS, MASSES -> r.named(rule.whole(), r.sum(writtenExcept(r, -1)));
        };
    }

    /** The share of one line of the whole. */
    <V> V share(Reckoning<V> r, V whole, int index) {
        DraftLine line = lines.get(index);
        boolean direct = rule == WholeRule.HUNDRED_PERCENT;
        if (direct && !line.isQuantitySufficient()) {
            return written(r, index);
        }
        if (direct) {
            return r.named(SHARE, line, rest(r, whole, index));
        }
        V amount =
                line.isQuantitySufficient() ? r.named(rule.written(), line, rest(r, whole, index)) : written(r, index);
        return r.named(SHARE, line, r.quotient(amount, whole));
    }

    private <V> V rest(Reckoning<V> r, V whole, int index) {
        List<V> others = writtenExcept(r, index);
        V rest = others.isEmpty() ? whole : r.difference(whole, r.sum(others));
        if (!r.holds(rest, Comparison.GREATER, r.literal(0))) {
            throw nothingLeft(index, r.number(rest));
        }
        return rest;
    }

    private <V> List<V> writtenExcept(Reckoning<V> r, int index) {
        List<V> amounts = new ArrayList<>(lines.size());
        for (int i = 0; i < lines.size(); i++) {
            if (i != index) {
                amounts.add(written(r, i));
            }
        }
        return amounts;
    }

    private <V> V written(Reckoning<V> r, int index) {
        DraftLine line = lines.get(index);
        return r.given(rule.written(), line, line.number(), line.source());
    }

    private RuntimeException nothingLeft(int index, Ratio rest) {
        Ratio whole = rule == WholeRule.HUNDRED_PERCENT ? Ratio.ONE : toMake;
        Ratio sum = whole.minus(rest).dividedBy(whole);
        return FormulaTotalException.nothingLeft(lines.get(index).name(), sum);
    }
}
