package io.github.formulationmath.limit;

import io.github.formulationmath.formula.Substance;
import java.util.Collection;
import java.util.List;

/** What a check found besides verdicts. */
record Findings(List<Substance> withoutLimit, List<OutOfScope> outOfScope, List<Substance> conflicts) {

    Findings(Collection<Substance> withoutLimit, Collection<OutOfScope> outOfScope, Collection<Substance> conflicts) {
        this(List.copyOf(withoutLimit), List.copyOf(outOfScope), List.copyOf(conflicts));
    }
}
