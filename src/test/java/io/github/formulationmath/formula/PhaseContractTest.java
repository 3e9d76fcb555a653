package io.github.formulationmath.formula;

import io.github.formulationmath.support.ValueContract;
import java.util.List;

/** Two phases are equal if their names and lines are. */
class PhaseContractTest implements ValueContract<Phase> {

    private static List<Phase> phases() {
        Formula one = Formula.inPercent("one")
                .phase("A")
                .line("Aqua", "60 %")
                .phase("B")
                .line("Glycerin", "40 %")
                .build();
        Formula two = Formula.inPercent("two").phase("A").line("Aqua", "100 %").build();
        return List.of(one.phases().get(0), one.phases().get(1), two.phases().get(0));
    }

    @Override
    public List<Phase> different() {
        return phases();
    }

    @Override
    public List<Phase> same() {
        return phases();
    }
}
