package io.github.formulationmath.formula;

import io.github.formulationmath.support.ValueContract;
import java.util.List;

/** Two compositions are equal if the same substances have the same shares from the same lines. */
class CompositionContractTest implements ValueContract<Composition> {

    private static Composition of(String percent, String name) {
        return Formula.inPercent("Gel")
                .quantitySufficient("Aqua")
                .line(name, percent)
                .build()
                .composition();
    }

    @Override
    public List<Composition> different() {
        return List.of(of("5 %", "Glycerin"), of("6 %", "Glycerin"), of("5 %", "Panthenol"));
    }

    @Override
    public List<Composition> same() {
        return different();
    }
}
