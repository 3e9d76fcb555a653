package io.github.formulationmath.weighing;

import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.reckoning.Reckoning;
import io.github.formulationmath.weighing.MassRelations.Entry;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * Everything the masses may be: fixed parts, and variables that each range over an interval of their own, independently of
 * the others. A line that shares no error with other lines is one variable, its whole mass, cut off at 0; the lines that
 * share errors are affine in those errors, each of which is a variable.
 */
final class MassBox {

    private static final int SHARED = -1;

    private final MassRelations relations;
    private final List<Variable> variables = new ArrayList<>();
    private final Map<ErrorTerm, Integer> byTerm = new IdentityHashMap<>();
    /** The variable that is the whole mass of a line; {@link #SHARED} for a line that shares errors. */
    private final int[] own;
    /** Added up when somebody first asks; sums of the masses need neither. */
    private volatile @Nullable Ratio least;

    private volatile @Nullable Ratio most;

    /**
     * A number that may lie anywhere between two ends.
     *
     * @param lower the lower end
     * @param upper the upper end
     * @param inTotal how the sum of all masses changes with it
     */
    record Variable(Ratio lower, Ratio upper, Ratio inTotal) {

        Ratio end(boolean high) {
            return high ? upper : lower;
        }

        /** Which end gives the largest or the least sum of all masses. */
        boolean isHighFor(boolean largest) {
            return inTotal.signum() > 0 == largest;
        }

        /** The most or the least that it can add to the sum of all masses. */
        Ratio inTotal(boolean largest) {
            return inTotal.times(end(isHighFor(largest)));
        }
    }

    /** The variables that enter a weighted sum of the masses, ascending, each with how the sum changes with it. */
    static final class Felt {

        private final int[] variables;
        private final Ratio[] factors;

        private Felt(int size) {
            this.variables = new int[size];
            this.factors = new Ratio[size];
        }

        int size() {
            return variables.length;
        }

        int variable(int i) {
            return variables[i];
        }

        Ratio factor(int i) {
            return factors[i];
        }

        /** At which place a variable stands; below 0 if it does not enter the sum. */
        int placeOf(int variable) {
            return Arrays.binarySearch(variables, variable);
        }

        private void set(int i, int variable, Ratio factor) {
            variables[i] = variable;
            factors[i] = factor;
        }
    }

    MassBox(MassRelations relations, List<AdditionError> errors) {
        this.relations = relations;
        this.own = new int[errors.size()];
        for (int i = 0; i < own.length; i++) {
            if (sharesErrors(i)) {
                own[i] = SHARED;
                addErrors(i);
            } else {
                own[i] = variables.size();
                AdditionError error = errors.get(i);
                variables.add(new Variable(error.leastGrams(), error.mostGrams(), Ratio.ONE));
            }
        }
    }

    private boolean sharesErrors(int line) {
        for (Entry entry : relations.of(line)) {
            if (entry.term().loads().size() > 1 && relations.isInBox(entry.term())) {
                return true;
            }
        }
        return false;
    }

    private void addErrors(int line) {
        for (Entry entry : relations.of(line)) {
            ErrorTerm term = entry.term();
            if (relations.isInBox(term) && byTerm.putIfAbsent(term, variables.size()) == null) {
                variables.add(new Variable(relations.end(term, false), relations.end(term, true), term.totalLoad()));
            }
        }
    }

    private Ratio total(boolean largest) {
        Ratio sum = fixed(Weights.TOTAL);
        for (Variable variable : variables) {
            sum = sum.plus(variable.inTotal(largest));
        }
        return sum;
    }

    List<Variable> variables() {
        return variables;
    }

    Felt felt(Weights weights) {
        return sharesAnything() ? feltInCommon(weights) : feltAlone(weights);
    }

    private Felt feltAlone(Weights weights) {
        Felt felt = new Felt(Math.min(weights.size(), own.length));
        int[] at = {0};
        weights.forEach(own.length, (line, weight) -> felt.set(at[0]++, own[line], weight));
        return felt;
    }

    private Felt feltInCommon(Weights weights) {
        Map<Integer, Ratio> all = new TreeMap<>();
        weights.forEach(own.length, (line, weight) -> {
            if (isShared(line)) {
                for (Entry entry : relations.of(line)) {
                    Integer variable = byTerm.get(entry.term());
                    if (variable != null) {
                        all.merge(variable, weight.times(entry.factor()), Ratio::plus);
                    }
                }
            } else {
                all.put(own[line], weight);
            }
        });
        Felt felt = new Felt(all.size());
        int at = 0;
        for (Map.Entry<Integer, Ratio> each : all.entrySet()) {
            felt.set(at++, each.getKey(), each.getValue());
        }
        return felt;
    }

    /** The variable that is the whole mass of a line which shares no error. */
    int massOf(int line) {
        return own[line];
    }

    int variableOf(ErrorTerm term) {
        return Objects.requireNonNull(byTerm.get(term), "term");
    }

    /** Whether the mass of a line shares an error with another line, and is not a variable of its own. */
    boolean isShared(int line) {
        return own[line] == SHARED;
    }

    boolean sharesAnything() {
        return !byTerm.isEmpty();
    }

    /** The part of a weighted sum of the masses that no variable changes. */
    Ratio fixed(Weights weights) {
        if (!sharesAnything()) {
            return Ratio.ZERO;
        }
        List<Ratio> parts = new ArrayList<>();
        weights.forEach(own.length, (line, weight) -> {
            if (isShared(line)) {
                parts.add(weight.times(relations.additions().get(line).reading().canonical()));
            }
        });
        return Reckoning.plain().sum(parts);
    }

    /** The least sum of all masses. */
    Ratio least() {
        Ratio known = least;
        if (known == null) {
            known = total(false);
            least = known;
        }
        return known;
    }

    /** The largest sum of all masses. */
    Ratio most() {
        Ratio known = most;
        if (known == null) {
            known = total(true);
            most = known;
        }
        return known;
    }
}
