package io.github.formulationmath.falsefine;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.formulationmath.batch.Batch;
import io.github.formulationmath.batch.BatchSize;
import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.FormulaBuilder;
import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.mend.Correction;
import io.github.formulationmath.mend.CorrectionRules;
import io.github.formulationmath.plan.Tolerances;
import io.github.formulationmath.plan.WeighingPlan;
import io.github.formulationmath.pot.LineAddition;
import io.github.formulationmath.pot.MadeBatch;
import io.github.formulationmath.pot.Reading;
import io.github.formulationmath.pot.Readings;
import io.github.formulationmath.soap.AlkaliBalance;
import io.github.formulationmath.soap.Soap;
import io.github.formulationmath.soap.SoapMending;
import io.github.formulationmath.soap.Unsaponified;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.weighing.ErrorModel;
import io.github.formulationmath.weighing.WeighingMethod;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Pots with too much alkali, mended: what is called sure leaves no hydroxide, whatever lots and balances did before and after. */
class SoapMendingFalseFineTest {

    /** A soap with its alkali poured too far, as a pot of the library. */
    private record Pot(SoapCase drawn, Soap soap, MadeBatch made) {

        static Pot of(SoapCase any) {
            SoapCase drawn = new SoapCase(any.lines(), any.readings(), any.places(), any.linearity(), false);
            FormulaBuilder builder = Formula.inMasses("soap");
            for (int i = 0; i < drawn.lines().size(); i++) {
                builder.line(drawn.lines().get(i).name(), drawn.grams(drawn.readings()[i]));
            }
            Formula formula = builder.build();
            Soap soap = Soap.of(formula);
            for (SoapLine line : drawn.lines()) {
                soap = line.declare(soap);
            }
            Balance balance = Balance.of(drawn.grams(1), "1000 kg")
                    .withErrors(ErrorModel.readabilityOnly()
                            .withLinearityOfNetReading(
                                    BigDecimal.valueOf(drawn.linearity(), drawn.places() + 1)
                                                    .toPlainString() + " g"));
            WeighingPlan plan =
                    WeighingPlan.of(Batch.of(formula, BatchSize.ofMass(drawn.grams(drawn.total()))), balance);
            List<Reading> readings = new ArrayList<>();
            for (FormulaLine line : formula.lines()) {
                readings.add(Reading.of(line, drawn.grams(drawn.readings()[line.index()])));
            }
            return new Pot(drawn, soap, MadeBatch.of(Readings.of(plan, WeighingMethod.TARE_EACH, readings)));
        }

        CorrectionRules rules() {
            return CorrectionRules.within(Tolerances.of("90 %"));
        }

        /** In steps of the display, by line. */
        long[] steps(List<LineAddition> additions) {
            long[] steps = new long[drawn.lines().size()];
            for (LineAddition addition : additions) {
                Exact grams = Exact.read(addition.mass().canonical());
                Exact whole =
                        grams.times(Exact.of(BigInteger.TEN.pow(drawn.places()).longValueExact()));
                assertThat(whole.isWhole()).isTrue();
                steps[addition.line().index()] = whole.floor().longValueExact();
            }
            return steps;
        }

        /** Moles of hydroxide left at most, each addition weighed by itself on top of what was weighed. */
        Exact most(long[] added) {
            Exact off = Exact.of(10L + drawn.linearity(), 10);
            Exact sum = drawn.most();
            for (int i = 0; i < added.length; i++) {
                Exact own = drawn.lines().get(i).most();
                if (added[i] > 0) {
                    Exact low = off.isAbove(Exact.of(added[i])) ? Exact.of(added[i]) : off;
                    Exact hidden = own.abs().times(own.isAbove(Exact.ZERO) ? off : low);
                    sum = sum.plus(own.times(added[i]).plus(hidden).over(Exact.of(pow())));
                }
            }
            return sum;
        }

        private long pow() {
            return BigInteger.TEN.pow(drawn.places()).longValueExact();
        }
    }

    private static Optional<Pot> overpoured(int seed) {
        Dice dice = new Dice(seed);
        SoapCase any = SoapCase.any(dice);
        long reading = any.readings()[any.alkali()];
        SoapCase poured = any.reading(reading + reading * dice.between(1, 12) / 100 + dice.between(1, 4));
        return poured.most().isAbove(Exact.ZERO) ? Optional.of(Pot.of(poured)) : Optional.empty();
    }

    @Test
    void a_pot_that_is_called_sure_has_no_hydroxide_left() {
        int sure = 0;
        for (int seed = 0; seed < Cases.of(150); seed++) {
            Pot pot = overpoured(seed).orElse(null);
            if (pot == null) {
                continue;
            }
            SoapMending mending =
                    SoapMending.of(pot.soap(), pot.made(), pot.rules(), Unsaponified.alkaliShortfall("0 %"));
            long[] added = pot.steps(mending.additions().additions());
            if (mending.isSure()) {
                sure++;
                assertThat(pot.most(added).isAbove(Exact.ZERO))
                        .as("seed %s", seed)
                        .isFalse();
            }
        }
        assertThat(sure).isGreaterThan(Cases.of(75));
    }

    /** The condition of the display alone, without what the balance hides, is found out. */
    @Test
    void a_mending_that_forgets_the_balance_is_found_out() {
        int falselyFine = 0;
        int told = 0;
        for (int seed = 0; seed < Cases.of(60); seed++) {
            Pot pot = overpoured(seed).orElse(null);
            if (pot == null) {
                continue;
            }
            var displayed = Correction.smallest(
                            pot.made(), pot.rules().keeping(pot.soap().leaving(Unsaponified.alkaliShortfall("0 %"))))
                    .onDisplay();
            if (displayed.isWithin()
                    && pot.most(pot.steps(displayed.additions())).isAbove(Exact.ZERO)) {
                falselyFine++;
                told += AlkaliBalance.of(pot.soap(), displayed.after())
                                        .excess()
                                        .greatest()
                                        .signum()
                                > 0
                        ? 1
                        : 0;
            }
        }
        assertThat(falselyFine).isPositive();
        assertThat(told).isEqualTo(falselyFine);
    }
}
