package io.github.formulationmath.limit;

import io.github.formulationmath.formula.Substance;
import java.util.List;

/** What a check found besides verdicts. */
record Findings(List<Substance> withoutLimit, List<OutOfScope> outOfScope, List<Substance> conflicts) {

    Findings {
        withoutLimit = List.copyOf(withoutLimit);
        outOfScope = List.copyOf(outOfScope);
        conflicts = List.copyOf(conflicts);
    }

    /** Each substance once. */
    List<Substance> distinctWithoutLimit() {
        return withoutLimit.stream().distinct().toList();
    }
}
