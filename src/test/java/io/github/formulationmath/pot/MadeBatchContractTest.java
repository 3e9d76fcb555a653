package io.github.formulationmath.pot;

import static io.github.formulationmath.pot.Lotion.g;
import static io.github.formulationmath.pot.Lotion.line;

import io.github.formulationmath.support.ValueContract;
import java.util.List;

/** Two batches as made are equal if the plan, what is in the pot, and how well that is known are. */
class MadeBatchContractTest implements ValueContract<MadeBatch> {

    @Override
    public List<MadeBatch> different() {
        MadeBatch made = MadeBatch.of(Lotion.tared("12.0"));
        return List.of(
                made,
                MadeBatch.of(Lotion.tared("12.4")),
                made.plus(List.of(LineAddition.of(line("Aqua"), g("1")))),
                made.plus(List.of(LineAddition.of(line("Glycerin"), g("1")))));
    }

    @Override
    public List<MadeBatch> same() {
        return different();
    }
}
