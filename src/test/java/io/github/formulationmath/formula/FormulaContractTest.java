package io.github.formulationmath.formula;

import io.github.formulationmath.support.ValueContract;
import java.util.List;

/** Two formulas are equal if name and lines are, as written and as resolved. */
class FormulaContractTest implements ValueContract<Formula> {

    private static List<Formula> formulas() {
        return List.of(
                Formula.inPercent("one")
                        .line("Aqua", "60 %")
                        .line("Glycerin", "40 %")
                        .build(),
                Formula.inPercent("one")
                        .quantitySufficient("Aqua")
                        .line("Glycerin", "40 %")
                        .build(),
                Formula.inPercent("two")
                        .line("Aqua", "60 %")
                        .line("Glycerin", "40 %")
                        .build(),
                Formula.inParts("one").line("Aqua", "60").line("Glycerin", "40").build(),
                Formula.inMasses("one")
                        .line("Aqua", "60 g")
                        .line("Glycerin", "40 g")
                        .build());
    }

    @Override
    public List<Formula> different() {
        return formulas();
    }

    @Override
    public List<Formula> same() {
        return formulas();
    }
}
