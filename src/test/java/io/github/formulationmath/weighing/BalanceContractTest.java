package io.github.formulationmath.weighing;

import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.support.ValueContract;
import java.util.List;

/** Two balances are equal if all that is known of them is. */
class BalanceContractTest implements ValueContract<Balance> {

    private static List<Balance> balances() {
        Balance plain = Balance.of("0.1 g", "2 kg");
        return List.of(
                plain,
                Balance.of("0.2 g", "2 kg"),
                Balance.of("0.1 g", "3 kg"),
                plain.withMinimumLoad(Amount.mass("5 g")),
                plain.withErrors(ErrorModel.readabilityOnly().withRepeatability("0.05 g")),
                plain.named("kitchen"));
    }

    @Override
    public List<Balance> different() {
        return balances();
    }

    @Override
    public List<Balance> same() {
        return balances();
    }
}
