package io.github.formulationmath.reckoning;

import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.reckoning.Operation.Arithmetic;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;

/**
 * The step of which a value is a whole multiple because of the way it was worked out, so that it is printed with as many
 * decimals: what was rounded to 0.1 g is a multiple of 0.1 g, and so is a whole number of divisions times a readability of
 * 0.1 g, and any sum of such readings.
 */
final class Grid {

    private final Map<Term, Ratio> known = new IdentityHashMap<>();

    /** The step, above 0; 0 if the value is on no grid. */
    Ratio of(Term term) {
        // Works off a list instead of calling itself: a chain of operations may be long.
        Deque<Term> open = new ArrayDeque<>(List.of(term));
        while (!open.isEmpty()) {
            Term next = open.peek();
            List<Term> unknown = parts(next).stream()
                    .filter(part -> !known.containsKey(part))
                    .toList();
            if (unknown.isEmpty()) {
                known.put(open.pop(), work(next));
            } else {
                unknown.forEach(open::push);
            }
        }
        return known.getOrDefault(term, Ratio.ZERO);
    }

    private static List<Term> parts(Term term) {
        if (term instanceof Step step) {
            return step.definition().map(List::of).orElse(List.of());
        }
        return term instanceof Term.Applied applied ? applied.inputs() : List.of();
    }

    private Ratio work(Term term) {
        if (term instanceof Step step) {
            return step.definition().map(this::done).orElse(Ratio.ZERO);
        }
        if (term instanceof Term.Applied applied) {
            return work(applied);
        }
        return term.value().isInteger() ? Ratio.ONE : Ratio.ZERO;
    }

    private Ratio work(Term.Applied applied) {
        List<Term> inputs = applied.inputs();
        if (applied.operation() instanceof Operation.Rounded rounding) {
            Ratio step = rounding.rounding().stepFor(applied.value());
            return step.isZero() ? done(inputs.get(0)) : step;
        }
        if (applied.operation() == Arithmetic.PRODUCT) {
            Ratio first = multiples(inputs.get(0), inputs.get(1));
            return first.isZero() ? multiples(inputs.get(1), inputs.get(0)) : first;
        }
        boolean keeps = applied.operation() instanceof Arithmetic && applied.operation() != Arithmetic.QUOTIENT;
        return keeps ? common(inputs) : Ratio.ZERO;
    }

    /** A whole number of times a given value is a multiple of that value. */
    private Ratio multiples(Term count, Term of) {
        boolean whole =
                count instanceof Step && done(count).isInteger() && !done(count).isZero();
        boolean given = of instanceof Step step && step.definition().isEmpty();
        return whole && given ? done(count).times(of.value().abs()) : Ratio.ZERO;
    }

    /** Sums, differences, sizes and extremes stay on the grid that all their terms are on. */
    private Ratio common(List<Term> inputs) {
        return inputs.stream()
                .map(this::done)
                .reduce((a, b) -> a.equals(b) ? a : Ratio.ZERO)
                .orElse(Ratio.ZERO);
    }

    private Ratio done(Term term) {
        return known.getOrDefault(term, Ratio.ZERO);
    }
}
