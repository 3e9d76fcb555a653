package io.github.formulationmath.mend;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.formulationmath.batch.Batch;
import io.github.formulationmath.batch.BatchSize;
import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.plan.Tolerances;
import io.github.formulationmath.plan.WeighingPlan;
import io.github.formulationmath.pot.LineAddition;
import io.github.formulationmath.pot.MadeBatch;
import io.github.formulationmath.pot.Reading;
import io.github.formulationmath.pot.Readings;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.support.StockedFormula;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.weighing.WeighingMethod;
import java.util.ArrayList;
import java.util.List;
import java.util.function.IntUnaryOperator;
import java.util.stream.IntStream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/** A stock is of an ingredient, not of a line: nothing that was worked out from it needs more of it over all phases. */
final class StockOverAllLinesTest {

    /** A batch of which so many grams were read of each line. */
    record Case(StockedFormula asked, List<Integer> read) {

        Ratio stock() {
            return Ratio.of(asked.stock());
        }

        int parts(int line) {
            return asked.lines().get(line).parts();
        }

        /** Of the lines of the stocked ingredient. */
        int sum(IntUnaryOperator number) {
            return IntStream.range(0, read.size())
                    .filter(asked::isStocked)
                    .map(number)
                    .sum();
        }

        MadeBatch made() {
            WeighingPlan plan =
                    WeighingPlan.of(Batch.of(asked.formula(), BatchSize.ofMass("100 g")), Balance.of("1 g", "1000 kg"));
            List<Reading> readings = new ArrayList<>();
            for (FormulaLine line : plan.formula().lines()) {
                readings.add(Reading.of(line, Amount.grams(Ratio.of(read.get(line.index())))));
            }
            return MadeBatch.of(Readings.of(plan, WeighingMethod.TARE_EACH, readings));
        }

        Ratio stockedGrams(List<LineAddition> additions) {
            return additions.stream()
                    .filter(addition -> asked.isStocked(addition.line().index()))
                    .map(addition -> addition.mass().exactValue())
                    .reduce(Ratio.ZERO, Ratio::plus);
        }
    }

    @Provide
    Arbitrary<Case> cases() {
        return StockedFormula.any()
                .flatMap(asked -> Arbitraries.integers()
                        .between(1, 60)
                        .list()
                        .ofSize(asked.lines().size())
                        .map(read -> new Case(asked, read)));
    }

    @Property(tries = 300)
    void no_addition_takes_more_than_the_stock(@ForAll("cases") Case one) {
        MadeBatch made = one.made();
        Ratio stock = one.stock();
        CorrectionRules rules = CorrectionRules.within(Tolerances.of("5 %"))
                .withStock(one.asked.stocked(made.plan().batch().formula()), Amount.grams(stock));
        Correction correction = Correction.smallest(made, rules);
        assertThat(one.stockedGrams(correction.additions())).isLessThanOrEqualTo(stock);
        DisplayedAdditions displayed = correction.onDisplay();
        assertThat(!displayed.isWithin()
                        || one.stockedGrams(displayed.additions()).compareTo(stock) <= 0)
                .isTrue();
    }

    /** Restoring is possible if and only if the stock suffices: the grams needed are worked out in integers, times the parts. */
    @Property(tries = 300)
    void restoring_is_possible_if_the_stock_suffices_for_all_lines(@ForAll("cases") Case one) {
        MadeBatch made = one.made();
        int most = 0;
        for (int i = 1; i < one.read.size(); i++) {
            most = one.read.get(i) * one.parts(most) > one.read.get(most) * one.parts(i) ? i : most;
        }
        // Each line is to have its parts times what was read of that line, by the parts of that line.
        long neededTimesParts =
                (long) one.sum(one::parts) * one.read.get(most) - (long) one.sum(one.read::get) * one.parts(most);
        CorrectionRules rules = CorrectionRules.within(Tolerances.of("5 %"))
                .withStock(one.asked.stocked(made.plan().batch().formula()), Amount.grams(one.stock()));
        assertThat(Correction.restoring(made, rules).obstacles().isEmpty())
                .isEqualTo(neededTimesParts <= (long) one.asked.stock() * one.parts(most));
    }

    @Property(tries = 50)
    void a_stock_given_again_replaces_the_one_before(@ForAll("cases") Case one) {
        List<FormulaLine> lines = one.asked.formula().lines();
        CorrectionRules rules = CorrectionRules.within(Tolerances.of("5 %"))
                .withStock(lines.get(0), Amount.mass("1 g"))
                .withStock(one.asked.stocked(one.asked.formula()), Amount.mass("2 g"));
        assertThat(rules.stock()).hasSize(1).containsValue(Amount.mass("2 g"));
    }
}
