package io.github.formulationmath.weighing;

import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.weighing.ErrorTerm.Load;
import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/** Everything the masses may be: fixed parts, and variables that each range over an interval of their own. */
final class MassBox {

    private final MassRelations relations;
    private final List<BoxVariable> variables = new ArrayList<>();
    private final List<List<Entering>> byLine = new ArrayList<>();
    private final Map<ErrorTerm, Integer> byTerm = new IdentityHashMap<>();
    private final boolean[] shared;

    /** How a variable enters the mass of a line. */
    private record Entering(int variable, Ratio factor) {}

    private boolean sharesAnything;

    MassBox(MassRelations relations, Whole whole) {
        this.relations = relations;
        this.shared = new boolean[relations.additions().size()];
        for (int i = 0; i < shared.length; i++) {
            byLine.add(new ArrayList<>());
            shared[i] = relations.errors().of(i).stream()
                    .anyMatch(
                            e -> relations.isInBox(e.term()) && e.term().loads().size() > 1);
            sharesAnything |= shared[i];
        }
        for (int i = 0; i < shared.length; i++) {
            if (shared[i]) {
                addErrors(i);
            } else {
                addMass(i, whole);
            }
        }
    }

    private void addMass(int line, Whole whole) {
        byLine.get(line).add(new Entering(variables.size(), Ratio.ONE));
        variables.add(new BoxVariable(
                whole.extreme(line, false).result(),
                whole.extreme(line, true).result(),
                List.of(new Load(line, Ratio.ONE))));
    }

    private void addErrors(int line) {
        for (CommonErrors.Entry entry : relations.errors().of(line)) {
            ErrorTerm term = entry.term();
            if (relations.isInBox(term) && byTerm.putIfAbsent(term, variables.size()) == null) {
                term.loads()
                        .forEach(load -> byLine.get(load.line()).add(new Entering(variables.size(), load.factor())));
                variables.add(new BoxVariable(relations.end(term, false), relations.end(term, true), term.loads()));
            }
        }
    }

    List<BoxVariable> variables() {
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
        return sharesAnything;
    }

    /** The part of the mass of a line that no variable changes. */
    private Ratio fixed(int line) {
        return shared[line] ? relations.additions().get(line).reading().result() : Ratio.ZERO;
    }

    /** The part of a weighted sum of the masses that no variable changes. */
    Ratio fixed(Weights weights) {
        List<Ratio> parts = new ArrayList<>();
        weights.forEach(shared.length, (i, weight) -> parts.add(weight.times(fixed(i))));
        return parts.stream().reduce(Ratio.ZERO, Ratio::plus);
    }
}
