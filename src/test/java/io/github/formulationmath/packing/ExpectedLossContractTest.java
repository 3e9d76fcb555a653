package io.github.formulationmath.packing;

import static io.github.formulationmath.pot.Lotion.g;

import io.github.formulationmath.quantity.MassFraction;
import io.github.formulationmath.support.ValueContract;
import java.util.List;

/** Two expected losses are equal if mean, spread, share and the past batches they come from are. */
class ExpectedLossContractTest implements ValueContract<ExpectedLoss> {

    @Override
    public List<ExpectedLoss> different() {
        return List.of(
                ExpectedLoss.of(g("8"), g("2")),
                ExpectedLoss.of(g("9"), g("2")),
                ExpectedLoss.of(g("8"), g("3")),
                ExpectedLoss.of(g("8"), g("2")).withShare(MassFraction.parse("1 %")),
                ExpectedLoss.ofPast(List.of(g("6"), g("8"), g("10"))),
                ExpectedLoss.ofPast(List.of(g("8"), g("6"), g("10"))));
    }

    @Override
    public List<ExpectedLoss> same() {
        return different();
    }
}
