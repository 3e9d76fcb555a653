package io.github.formulationmath.verification;

import io.github.formulationmath.batch.BatchSize;
import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.support.ValueContract;
import io.github.formulationmath.weighing.Balance;
import java.util.List;

/** Two claims are equal if formula, size, balance and all figures are. */
class ClaimContractTest implements ValueContract<Claim> {

    private static Claim about(String percent, String mass) {
        Formula formula = Formula.inPercent("Gel " + percent)
                .quantitySufficient("Aqua")
                .line("Glycerin", percent)
                .build();
        return Claim.about(formula, BatchSize.ofMass(Amount.mass(mass)));
    }

    @Override
    public List<Claim> different() {
        Claim plain = about("5 %", "200 g");
        return List.of(
                plain,
                about("6 %", "200 g"),
                about("5 %", "300 g"),
                plain.on(Balance.of("0.1 g", "2 kg")),
                plain.withFigure("Glycerin", "10 g"),
                plain.withFigure("Glycerin", "10.0 g"),
                plain.withFigure("Aqua", "190 g").withFigure("Glycerin", "10 g"),
                plain.withTotal("200 g"));
    }

    @Override
    public List<Claim> same() {
        Claim plain = about("5 %", "200 g");
        return List.of(
                about("5 %", "200 g"),
                about("6 %", "200 g"),
                about("5 %", "300 g"),
                plain.on(Balance.of("0.1 g", "2 kg")),
                plain.withFigure("Glycerin", "10 g"),
                plain.withFigure("Glycerin", "10.0 g"),
                plain.withFigure("Aqua", "190 g").withFigure("Glycerin", "10 g"),
                plain.withTotal("200 g"));
    }
}
