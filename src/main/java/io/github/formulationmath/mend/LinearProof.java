package io.github.formulationmath.mend;

import io.github.formulationmath.number.LinearProgram;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.reckoning.Entry.Comparison;
import io.github.formulationmath.reckoning.Kind;
import io.github.formulationmath.reckoning.Phrase;
import io.github.formulationmath.reckoning.Reckoning;
import io.github.formulationmath.reckoning.Source;
import io.github.formulationmath.reckoning.Subject;
import io.github.formulationmath.reckoning.Symbol;
import java.util.ArrayList;
import java.util.List;

/**
 * Why the answer of a linear program is the smallest: all conditions are kept, and added up with their multipliers they ask
 * for no less. This is the relation behind the reported total.
 */
record LinearProof(
        List<? extends Constraint> conditions,
        List<Unknown> unknowns,
        LinearProgram.Answer.Optimal answer,
        Symbol total) {

    private static final Symbol MULTIPLIER = Symbol.of("λ", "multiplier", Kind.NUMBER);

    /** One condition {@code Σ a_j · u_j ≥ b} of a linear program. Its numbers are relations, so that a proof can show them. */
    interface Constraint {

        /** The line, substance or condition it is about; empty if it is about the whole pot. */
        default String name() {
            return "";
        }

        /** The coefficient a_j of an unknown. */
        <V> V coefficient(Reckoning<V> r, int unknown);

        /** The right side b. */
        <V> V least(Reckoning<V> r);
    }

    /** An unknown with its letter, its index and its cost. */
    record Unknown(Symbol symbol, Subject subject, Ratio cost) {

        <V> V given(Reckoning<V> r, Ratio value) {
            return r.given(symbol, subject, value, Source.user());
        }
    }

    /** The program that conditions amount to. */
    static LinearProgram program(List<? extends Constraint> conditions, List<Ratio> costs) {
        Reckoning<Ratio> plain = Reckoning.plain();
        List<LinearProgram.Row> rows = new ArrayList<>();
        for (Constraint condition : conditions) {
            List<Ratio> coefficients = new ArrayList<>(costs.size());
            for (int j = 0; j < costs.size(); j++) {
                coefficients.add(condition.coefficient(plain, j));
            }
            rows.add(new LinearProgram.Row(coefficients, condition.least(plain)));
        }
        return new LinearProgram(costs, rows);
    }

    <V> V derive(Reckoning<V> r) {
        r.note(() -> Phrase.of("note.linear-program"));
        conditions.forEach(condition -> holds(r, condition));
        for (int j = 0; j < unknowns.size(); j++) {
            column(r, j);
        }
        V least = r.named(total, combined(r));
        List<V> costs = new ArrayList<>();
        for (int j = 0; j < unknowns.size(); j++) {
            if (!unknowns.get(j).cost().isZero() && !answer.values().get(j).isZero()) {
                V value = unknowns.get(j).given(r, answer.values().get(j));
                costs.add(
                        unknowns.get(j).cost().equals(Ratio.ONE)
                                ? value
                                : r.product(r.literal(unknowns.get(j).cost()), value));
            }
        }
        if (!costs.isEmpty()) {
            r.holds(r.sum(costs), Comparison.EQUAL, least);
        }
        return least;
    }

    /** Σ a_j·u_j ≥ b at the answer. */
    private <V> void holds(Reckoning<V> r, Constraint condition) {
        List<V> terms = new ArrayList<>();
        for (int j = 0; j < unknowns.size(); j++) {
            if (!answer.values().get(j).isZero()) {
                V coefficient = condition.coefficient(r, j);
                if (!r.number(coefficient).isZero()) {
                    terms.add(r.product(
                            coefficient,
                            unknowns.get(j).given(r, answer.values().get(j))));
                }
            }
        }
        V least = condition.least(r);
        r.holds(terms.isEmpty() ? r.literal(0) : r.sum(terms), Comparison.AT_LEAST, least);
    }

    /** Σ λ_k·a_kj ≤ c_j for one unknown. */
    private <V> void column(Reckoning<V> r, int j) {
        List<V> terms = new ArrayList<>();
        for (int k : answer.binding()) {
            V coefficient = conditions.get(k).coefficient(r, j);
            if (!r.number(coefficient).isZero()) {
                terms.add(r.product(multiplier(r, k), coefficient));
            }
        }
        if (!terms.isEmpty()) {
            r.holds(r.sum(terms), Comparison.AT_MOST, r.literal(unknowns.get(j).cost()));
        }
    }

    /** Σ λ_k·b_k. */
    private <V> V combined(Reckoning<V> r) {
        List<V> terms = new ArrayList<>();
        for (int k : answer.binding()) {
            terms.add(r.product(multiplier(r, k), conditions.get(k).least(r)));
        }
        return r.sum(terms);
    }

    private <V> V multiplier(Reckoning<V> r, int k) {
        Subject subject = Subject.of(Integer.toString(k + 1), conditions.get(k).name());
        return r.given(MULTIPLIER, subject, answer.multipliers().get(k), Source.user());
    }
}
