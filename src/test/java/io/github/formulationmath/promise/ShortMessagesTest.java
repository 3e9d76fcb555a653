package io.github.formulationmath.promise;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.formulationmath.batch.Batch;
import io.github.formulationmath.batch.BatchSize;
import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.FormulaBuilder;
import io.github.formulationmath.formula.Ingredient;
import io.github.formulationmath.formula.Substance;
import io.github.formulationmath.limit.DecisionRule;
import io.github.formulationmath.limit.LimitChecker;
import io.github.formulationmath.limit.LimitTable;
import io.github.formulationmath.limit.Product;
import io.github.formulationmath.mend.CorrectionRules;
import io.github.formulationmath.number.Excerpt;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.packing.PriceList;
import io.github.formulationmath.packing.PriceList.Offer;
import io.github.formulationmath.plan.Bench;
import io.github.formulationmath.plan.Tolerances;
import io.github.formulationmath.plan.WeighingPlan;
import io.github.formulationmath.pot.Lotion;
import io.github.formulationmath.pot.Reading;
import io.github.formulationmath.pot.Readings;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.MassFraction;
import io.github.formulationmath.record.BatchCode;
import io.github.formulationmath.size.BatchConstraints;
import io.github.formulationmath.size.BatchWindow;
import io.github.formulationmath.size.Criterion;
import io.github.formulationmath.size.MinimumBatch;
import io.github.formulationmath.verification.Claim;
import io.github.formulationmath.verification.Figure;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.weighing.Vessel;
import io.github.formulationmath.weighing.WeighingMethod;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;

/** No name, number or list, however long, makes a message that nobody reads. */
class ShortMessagesTest {

    private static final String LONG = "x".repeat(900_000);
    private static final String LONGEST_NAME = "N".repeat(500);
    private static final String HUGE = "1" + "0".repeat(400) + " g";
    private static final Balance BALANCE = Balance.of("0.1 g", "2 kg");

    /** Lines with the longest names that there can be, each in a phase of such a name. */
    private static final Formula MANY = many(40);

    private static Formula many(int lines) {
        FormulaBuilder draft = Formula.inPercent(LONGEST_NAME);
        for (int i = 0; i < lines; i++) {
            draft.phase("P" + i + LONGEST_NAME.substring(5)).line(name(i % (lines / 2)), "1 %");
        }
        return draft.quantitySufficient("Aqua").build();
    }

    private static String name(int i) {
        return "L" + i + LONGEST_NAME.substring(5);
    }

    private static Ingredient numbered(int i, String cas) {
        return Ingredient.of(name(i), Substance.of(name(i)).withCas(cas).withSynonyms(names(200)));
    }

    private static String[] names(int count) {
        return IntStream.range(0, count)
                .mapToObj(i -> "S" + name(i).substring(1))
                .toArray(String[]::new);
    }

    private static List<ThrowingCallable> refused() {
        Ratio tiny = Ratio.parse("1e-400");
        List<ThrowingCallable> calls = new ArrayList<>(List.of(
                () -> MANY.line(LONG),
                () -> MANY.line(LONG, name(0)),
                () -> MANY.line(name(0)),
                () -> Formula.inPercent(LONGEST_NAME)
                        .line(Ingredient.of(LONGEST_NAME), MassFraction.of(tiny))
                        .build(),
                () -> Formula.inPercent("F")
                        .quantitySufficient(LONGEST_NAME)
                        .line("A", "99 %")
                        .line(Ingredient.of("B"), MassFraction.of(tiny.plus(Ratio.of(1, 10))))
                        .build(),
                () -> Formula.inPercent("F")
                        .phase(LONGEST_NAME)
                        .line(LONGEST_NAME, "1 %")
                        .line(LONGEST_NAME, "1 %"),
                () -> Formula.inPercent("F").line(LONGEST_NAME, LONG),
                () -> Ingredient.blend(LONGEST_NAME)
                        .part(Substance.of(LONGEST_NAME), MassFraction.of(tiny))
                        .build(),
                () -> Formula.inPercent(LONGEST_NAME)
                        .line(numbered(1, "56-81-5"), MassFraction.parse("1 %"))
                        .line(numbered(2, "122-99-6"), MassFraction.parse("99 %"))
                        .build()));
        calls.addAll(List.of(
                () -> MinimumBatch.of(
                        MANY,
                        BALANCE,
                        Criterion.roundingWithin(Tolerances.of("5 %").withLine(LONG, "1 %"))),
                () -> MinimumBatch.of(
                        MANY,
                        BALANCE,
                        Criterion.roundingWithin(Tolerances.of("5 %").withPhase(LONG, "1 %"))),
                () -> BatchWindow.of(
                        MANY,
                        Bench.of(BALANCE),
                        BatchConstraints.of(Criterion.roundingWithin(Tolerances.of("5 %")))
                                .withStock(LONG, "1 g")),
                () -> MinimumBatch.of(
                        MANY,
                        BALANCE,
                        Criterion.capKept(
                                Substance.of("Z".repeat(500)), MassFraction.parse("1 %"), WeighingMethod.TARE_EACH)),
                () -> WeighingPlan.of(Batch.of(MANY, BatchSize.ofMass(HUGE)), BALANCE),
                () -> Balance.of(HUGE, "2 kg"),
                () -> BALANCE.capacityUnder(Vessel.of(LONG, HUGE)),
                () -> BatchSize.ofMass("-" + HUGE),
                () -> Reading.of(MANY.lines().get(0), "-" + HUGE),
                () -> Readings.of(
                        Lotion.PLAN,
                        WeighingMethod.TARE_EACH,
                        List.of(Reading.of(Lotion.line("Glycerin"), "0." + "0".repeat(400) + "1 g"))),
                () -> Readings.of(
                        Lotion.PLAN,
                        WeighingMethod.TARE_EACH,
                        List.of(Reading.of(MANY.lines().get(0), "1 g"))),
                () -> CorrectionRules.within(Tolerances.of("5 %"))
                        .withStock(MANY.lines().get(0), Amount.mass("-" + HUGE)),
                () -> Claim.about(MANY, BatchSize.ofMass("1 kg"))
                        .withFigure(Lotion.line("Glycerin"), Figure.parse("1 g")),
                () -> LimitChecker.of(
                        LimitTable.eu2024February(),
                        Product.leaveOn().using(LONG, LONG),
                        DecisionRule.simpleAcceptance()),
                () -> PriceList.empty().with(LONG, Offer.of("-1 EUR" + "0".repeat(400), "1 g")),
                () -> BatchCode.parse(LONG)));
        return calls;
    }

    @Test
    void messages_stay_within_a_thousand_characters() {
        int i = 0;
        for (ThrowingCallable call : refused()) {
            assertThatThrownBy(call, "call %d", i++)
                    .isInstanceOfAny(IllegalArgumentException.class, ArithmeticException.class)
                    .satisfies(e -> assertThat(e.getMessage().length())
                            .as(Excerpt.of(e.getMessage()))
                            .isBetween(20, 1_000));
        }
    }
}
