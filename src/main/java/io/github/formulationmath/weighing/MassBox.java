package io.github.formulationmath.weighing;

import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.weighing.MassRelations.Entry;
import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/**
 * Everything the masses may be: fixed parts, and variables that each range over an interval of their own, independently of
 * the others. A line that shares no error with other lines is one variable, its whole mass, cut off at 0; the lines that
 * share errors are affine in those errors, each of which is a variable.
 */
final class MassBox {

    private final MassRelations relations;
    private final List<Variable> variables = new ArrayList<>();
    private final List<List<Entering>> byLine = new ArrayList<>();
    private final Map<ErrorTerm, Integer> byTerm = new IdentityHashMap<>();
    private final boolean[] shared;
    private final Ratio least;
    private final Ratio most;

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

    /** How a variable enters the mass of a line. */
    private record Entering(int variable, Ratio factor) {}

    MassBox(MassRelations relations, List<AdditionError> errors) {
        this.relations = relations;
        this.shared = new boolean[errors.size()];
        for (int i = 0; i < shared.length; i++) {
            byLine.add(new ArrayList<>());
            shared[i] = relations.of(i).stream()
                    .map(Entry::term)
                    .anyMatch(term -> relations.isInBox(term) && term.loads().size() > 1);
        }
        for (int i = 0; i < shared.length; i++) {
            if (shared[i]) {
                addErrors(i);
            } else {
                byLine.get(i).add(new Entering(variables.size(), Ratio.ONE));
                AdditionError error = errors.get(i);
                variables.add(
                        new Variable(error.lowest().canonical(), error.highest().canonical(), Ratio.ONE));
            }
        }
        this.least = total(false);
        this.most = total(true);
    }

    private void addErrors(int line) {
        for (Entry entry : relations.of(line)) {
            ErrorTerm term = entry.term();
            if (relations.isInBox(term) && byTerm.putIfAbsent(term, variables.size()) == null) {
                term.loads()
                        .forEach(load -> byLine.get(load.line()).add(new Entering(variables.size(), load.factor())));
                variables.add(new Variable(relations.end(term, false), relations.end(term, true), term.totalLoad()));
            }
        }
    }

    private Ratio total(boolean largest) {
        return variables.stream().map(v -> v.inTotal(largest)).reduce(fixed(Weights.TOTAL), Ratio::plus);
    }

    List<Variable> variables() {
        return variables;
    }

    /** The variables that enter a weighted sum of the masses, each with how the sum changes with it. */
    Map<Integer, Ratio> sensitivities(Weights weights) {
        Map<Integer, Ratio> all = new LinkedHashMap<>();
        weights.forEach(
                shared.length,
                (line, weight) -> byLine.get(line)
                        .forEach(entry -> all.merge(entry.variable(), weight.times(entry.factor()), Ratio::plus)));
        return all;
    }

    /** The variable that is the whole mass of a line which shares no error. */
    int massOf(int line) {
        return byLine.get(line).get(0).variable();
    }

    int variableOf(ErrorTerm term) {
        return Objects.requireNonNull(byTerm.get(term), "term");
    }

    /** Whether the mass of a line shares an error with another line, and is not a variable of its own. */
    boolean isShared(int line) {
        return shared[line];
    }

    boolean sharesAnything() {
        return !byTerm.isEmpty();
    }

    /** The part of a weighted sum of the masses that no variable changes. */
    Ratio fixed(Weights weights) {
        List<Ratio> parts = new ArrayList<>();
        weights.forEach(shared.length, (line, weight) -> {
            if (shared[line]) {
                parts.add(weight.times(relations.additions().get(line).reading().canonical()));
            }
        });
        return parts.stream().reduce(Ratio.ZERO, Ratio::plus);
    }

    /** The least sum of all masses. */
    Ratio least() {
        return least;
    }

    /** The largest sum of all masses. */
    Ratio most() {
        return most;
    }
}
