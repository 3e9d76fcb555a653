package io.github.formulationmath.size;

import io.github.formulationmath.support.ValueContract;
import java.util.List;

/** Two sets of constraints are equal if criteria, stock, step and least size are. */
class BatchConstraintsContractTest implements ValueContract<BatchConstraints> {

    @Override
    public List<BatchConstraints> different() {
        BatchConstraints plain = BatchConstraints.of(Criterion.oneDivision());
        return List.of(
                plain,
                BatchConstraints.of(Criterion.exactReadings()),
                BatchConstraints.of(Criterion.oneDivision(), Criterion.exactReadings()),
                plain.withStock("Glycerin", "35 g"),
                plain.withStock("Glycerin", "36 g"),
                plain.inStepsOf("5 g"),
                plain.withLeastSize("100 g"));
    }

    @Override
    public List<BatchConstraints> same() {
        return different();
    }
}
