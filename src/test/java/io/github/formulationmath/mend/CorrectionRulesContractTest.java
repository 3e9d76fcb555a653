package io.github.formulationmath.mend;

import static io.github.formulationmath.pot.Lotion.g;
import static io.github.formulationmath.pot.Lotion.line;

import io.github.formulationmath.formula.Substance;
import io.github.formulationmath.plan.Tolerances;
import io.github.formulationmath.quantity.MassFraction;
import io.github.formulationmath.support.ValueContract;
import java.util.List;

/** Two sets of rules are equal if tolerances, caps, frozen lines, stock and room are. */
class CorrectionRulesContractTest implements ValueContract<CorrectionRules> {

    @Override
    public List<CorrectionRules> different() {
        CorrectionRules plain = CorrectionRules.within(Tolerances.of("2 %"));
        return List.of(
                plain,
                CorrectionRules.within(Tolerances.of("3 %")),
                plain.withCap(Substance.of("Glycerin"), MassFraction.parse("5 %")),
                plain.withCap(Substance.of("Glycerin"), MassFraction.parse("6 %")),
                plain.freezing(line("Aqua")),
                plain.freezing(line("Aqua")).freezing(line("Glycerin")),
                plain.withStock(line("Aqua"), g("1")),
                plain.withStock(line("Aqua"), g("2")),
                plain.withRoomFor(g("500")));
    }

    @Override
    public List<CorrectionRules> same() {
        return different();
    }
}
