package io.github.formulationmath.falsefine;

import io.github.formulationmath.batch.Batch;
import io.github.formulationmath.batch.BatchSize;
import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.FormulaBuilder;
import io.github.formulationmath.plan.ExpectedProduct;
import io.github.formulationmath.plan.WeighingPlan;
import io.github.formulationmath.soap.AlkaliBalance;
import io.github.formulationmath.soap.Soap;
import io.github.formulationmath.soap.Unsaponified;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.weighing.ErrorModel;
import io.github.formulationmath.weighing.WeighingMethod;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.Optional;
import java.util.OptionalLong;

/** The library, asked about a soap with texts. */
final class SoapJudge {

    private final SoapCase drawn;
    private final Soap soap;
    private final ExpectedProduct weighed;

    private SoapJudge(SoapCase drawn) {
        this.drawn = drawn;
        FormulaBuilder builder = Formula.inMasses("soap");
        for (int i = 0; i < drawn.lines().size(); i++) {
            builder.line(drawn.lines().get(i).name(), drawn.grams(drawn.readings()[i]));
        }
        Formula formula = builder.build();
        Soap declared = Soap.of(formula);
        for (SoapLine line : drawn.lines()) {
            declared = line.declare(declared);
        }
        this.soap = declared;
        Balance balance = Balance.of(drawn.grams(1), "1000 kg")
                .withErrors(ErrorModel.readabilityOnly()
                        .withLinearityOfNetReading(
                                BigDecimal.valueOf(drawn.linearity(), drawn.places() + 1)
                                                .toPlainString() + " g"));
        this.weighed = ExpectedProduct.of(
                WeighingPlan.of(Batch.of(formula, BatchSize.ofMass(drawn.grams(drawn.total()))), balance),
                drawn.cumulative() ? WeighingMethod.CUMULATIVE : WeighingMethod.TARE_EACH);
    }

    static SoapJudge of(SoapCase drawn) {
        return new SoapJudge(drawn);
    }

    AlkaliBalance balance() {
        return AlkaliBalance.of(soap, weighed);
    }

    /** From which size on, in grams, no hydroxide is left whatever the scale does; empty if from none. */
    Optional<Exact> smallestWithoutHydroxide() {
        return soap.shortfallWithin(
                        Unsaponified.alkaliShortfall("0 %"),
                        Unsaponified.alkaliShortfall("99.9 %"),
                        drawn.cumulative() ? WeighingMethod.CUMULATIVE : WeighingMethod.TARE_EACH)
                .on(soap.formula(), weighed.plan().bench())
                .smallest()
                .map(size -> Exact.read(size.canonical()));
    }

    /** In steps. */
    OptionalLong largestReading(int percent) {
        return AlkaliBalance.largestReading(
                        soap,
                        weighed,
                        drawn.lines().get(drawn.alkali()).name(),
                        Unsaponified.alkaliShortfall(percent + " %"))
                .map(reading -> Exact.read(reading.canonical())
                        .times(Exact.of(BigInteger.TEN.pow(drawn.places()).longValueExact())))
                .map(steps -> OptionalLong.of(steps.floor().longValueExact()))
                .orElse(OptionalLong.empty());
    }
}
