package io.github.formulationmath.limit;

import io.github.formulationmath.support.ValueContract;
import java.util.List;

/** Two tables are equal if their names, the heads of their files and their limits are. */
class LimitTableContractTest implements ValueContract<LimitTable> {

    @Override
    public List<LimitTable> different() {
        List<UsageLimit> limits = LimitTable.eu2024February().limits();
        return List.of(
                LimitTable.eu2024February(),
                LimitTable.of("house rules", List.of()),
                LimitTable.of("house rules", limits.subList(0, 3)),
                LimitTable.of("other rules", limits.subList(0, 3)));
    }

    @Override
    public List<LimitTable> same() {
        return different();
    }
}
