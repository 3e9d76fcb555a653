package io.github.formulationmath.weighing;

import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.weighing.ErrorTerm.Load;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;

/** Variances and covariances of the masses, which follow from the terms; nothing of the size lines × lines is kept. */
final class CommonErrors {

    /** A term as one line sees it. */
    record Entry(int place, ErrorTerm term, Ratio factor) {}

    private final List<ErrorTerm> terms;
    private final List<List<Entry>> byLine;

    CommonErrors(int lines, List<ErrorTerm> terms) {
        this.terms = terms;
        this.byLine = new ArrayList<>(lines);
        for (int i = 0; i < lines; i++) {
            byLine.add(new ArrayList<>());
        }
        for (int place = 0; place < terms.size(); place++) {
            for (Load load : terms.get(place).loads()) {
                byLine.get(load.line()).add(new Entry(place, terms.get(place), load.factor()));
            }
        }
    }

    /** The errors of some of the lines, counted from 0 again: what they have in common with the others stays in them. */
    CommonErrors part(List<Integer> lines) {
        Map<Integer, Integer> places = new HashMap<>();
        for (int i = 0; i < lines.size(); i++) {
            places.put(lines.get(i), i);
        }
        return new CommonErrors(
                lines.size(),
                terms.stream()
                        .map(term -> term.part(places))
                        .filter(term -> !term.isNothing())
                        .toList());
    }

    List<Entry> of(int line) {
        return byLine.get(line);
    }

    @SuppressWarnings("ReferenceEquality") // a term is one instance
    Ratio covariance(int i, int j) {
        Ratio sum = Ratio.ZERO;
        for (Entry a : of(i)) {
            for (Entry b : of(j)) {
                if (a.term() == b.term()) {
                    sum = sum.plus(a.term().variance().times(a.factor()).times(b.factor()));
                }
            }
        }
        return sum;
    }

    /** The covariance of two weighted sums of the masses, source by source. */
    Map<ErrorSource, Ratio> bySource(Weights a, Weights b) {
        Map<ErrorSource, Ratio> sums = new EnumMap<>(ErrorSource.class);
        for (ErrorTerm term : touching(a)) {
            Ratio contribution = term.variance().times(a.sensitivity(term)).times(b.sensitivity(term));
            if (!contribution.isZero()) {
                sums.merge(term.source(), contribution, Ratio::plus);
            }
        }
        return sums;
    }

    /** The terms that a sum may depend on. */
    List<ErrorTerm> touching(Weights weights) {
        if (weights instanceof Weights.OneLine one) {
            return of(one.line()).stream().map(Entry::term).toList();
        }
        return weights instanceof Weights.PerLine few ? touching(few) : terms;
    }

    /** In the order of all terms; as long as the lines with a weight are few, it does not matter how many others there are. */
    private List<ErrorTerm> touching(Weights.PerLine few) {
        SortedMap<Integer, ErrorTerm> touched = new TreeMap<>();
        for (int line : few.weights().keySet()) {
            of(line).forEach(entry -> touched.put(entry.place(), entry.term()));
        }
        return List.copyOf(touched.values());
    }
}
