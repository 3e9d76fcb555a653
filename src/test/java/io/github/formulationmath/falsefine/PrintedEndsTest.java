package io.github.formulationmath.falsefine;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.formulationmath.batch.Batch;
import io.github.formulationmath.batch.BatchSize;
import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.FormulaBuilder;
import io.github.formulationmath.formula.Substance;
import io.github.formulationmath.limit.DecisionRule;
import io.github.formulationmath.limit.GroupMember;
import io.github.formulationmath.limit.LimitChecker;
import io.github.formulationmath.limit.LimitKind;
import io.github.formulationmath.limit.LimitTable;
import io.github.formulationmath.limit.Product;
import io.github.formulationmath.limit.SubstanceGroup;
import io.github.formulationmath.limit.UsageLimit;
import io.github.formulationmath.limit.Verdict;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.plan.Bench;
import io.github.formulationmath.plan.ExpectedProduct;
import io.github.formulationmath.plan.OverloadException;
import io.github.formulationmath.plan.Tolerances;
import io.github.formulationmath.plan.WeighingPlan;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.MassFraction;
import io.github.formulationmath.size.BatchWindow;
import io.github.formulationmath.size.CapTarget;
import io.github.formulationmath.size.CoarsestStep;
import io.github.formulationmath.size.Criterion;
import io.github.formulationmath.size.MinimumBatch;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.weighing.WeighingMethod;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.measure.quantity.Mass;
import org.junit.jupiter.api.Test;

/** What is printed as a least, a greatest or a bound is read back from the text and asked for by itself: it has to pass. */
class PrintedEndsTest {

    private static final int CASES = Cases.of(150);

    /** A number and its unit; the decimal behind ≈ is none that anything is promised of, the exact one before it is. */
    private static final String NUMBER = "((?:[0-9]+/)?[0-9.]+ (?:g|oz|lb|kg|%))(?: ≈ [0-9.]+ (?:g|oz|lb|kg|%))?";

    private static final Pattern LEAST = Pattern.compile("at least " + NUMBER);
    private static final Pattern FROM = Pattern.compile(": from " + NUMBER);
    private static final Pattern TO = Pattern.compile(" to " + NUMBER);
    private static final Pattern ALL_FROM = Pattern.compile("all from " + NUMBER);
    private static final Pattern GAPS = Pattern.compile("with gaps below " + NUMBER);
    private static final Pattern AT_MOST = Pattern.compile("d at most " + NUMBER);
    private static final Pattern FINER = Pattern.compile("every d of at most " + NUMBER);
    private static final Pattern TARGET = Pattern.compile(" at most " + NUMBER);
    private static final Pattern BOUNDS = Pattern.compile("in \\[([0-9.]+), ([0-9.]+)] %");
    private static final BigDecimal OUNCE = new BigDecimal("28.349523125");

    private final Dice dice = new Dice(161_602);
    private int exact;

    @Test
    void the_example_of_an_ounce_balance_is_not_told_as_less_than_it_is() {
        Formula formula = formula(new int[] {9664, 336});
        MinimumBatch least = MinimumBatch.of(formula, Balance.of("0.1 oz", "5 lb"), Criterion.oneDivision());

        assertThat(least.mass().orElseThrow()).hasToString("125/42 oz");
        assertThat(least).asString().contains("at least 2.977 oz").doesNotContain("/42");
        assertThat(least.sizes().contains("2.976 oz")).isFalse();
    }

    @Test
    void a_least_batch_passes_as_printed() {
        for (int run = 0; run < CASES; run++) {
            Formula formula = formula(parts());
            Balance balance = balance();
            MinimumBatch answer = MinimumBatch.of(formula, balance, criterion(balance));
            if (answer instanceof MinimumBatch.Found found) {
                Amount<Mass> printed = mass(LEAST, answer).orElseThrow();
                assertThat(answer.sizes().contains(printed)).as("%s", answer).isTrue();
                isNear(found.smallest(), printed, answer);
            }
            if (answer.sizes().obstacle().isEmpty() && !(answer instanceof MinimumBatch.Undecided)) {
                mass(FROM, answer.sizes())
                        .or(() -> mass(Pattern.compile("from " + NUMBER), answer.sizes()))
                        .ifPresent(size ->
                                assertThat(answer.sizes().contains(size)).isTrue());
                mass(ALL_FROM, answer.sizes())
                        .ifPresent(size -> assertThat(answer.sizes().contains(size))
                                .as("%s", answer.sizes())
                                .isTrue());
            }
        }
        // Sizes that stand apart have no printable neighbour: they are told exactly. Most are not so.
        assertThat(exact).isLessThan(CASES / 3);
    }

    /** By whole numbers alone: the smallest line of the batch that is printed weighs a division of the display. */
    @Test
    void one_division_of_every_line_is_there_in_whole_numbers() {
        for (int run = 0; run < CASES; run++) {
            int[] parts = parts();
            String step = dice.of("0.1 g", "0.01 g", "0.5 g", "0.1 oz", "0.05 oz", "0.01 oz", "2 g");
            MinimumBatch answer = MinimumBatch.of(formula(parts), Balance.of(step, "50 kg"), Criterion.oneDivision());
            Matcher told = LEAST.matcher(answer.toString());
            assertThat(told.find()).isTrue();
            String[] printed = told.group(1).split(" ");
            int slash = printed[0].indexOf('/');
            BigDecimal above = new BigDecimal(slash < 0 ? printed[0] : printed[0].substring(0, slash));
            BigDecimal below = slash < 0 ? BigDecimal.ONE : new BigDecimal(printed[0].substring(slash + 1));
            int smallest = Arrays.stream(parts).min().orElseThrow();
            BigDecimal line = above.multiply(BigDecimal.valueOf(smallest)).multiply(unit(printed[1]));
            BigDecimal division = new BigDecimal(step.split(" ")[0])
                    .multiply(unit(step.split(" ")[1]))
                    .multiply(BigDecimal.valueOf(Arrays.stream(parts).sum()))
                    .multiply(below);
            assertThat(line).as("%s", answer).isGreaterThanOrEqualTo(division);
            assertThat(line).as("%s", answer).isLessThan(division.multiply(new BigDecimal("1.001")));
        }
    }

    @Test
    void both_ends_of_a_window_pass_as_printed() {
        int feasible = 0;
        for (int run = 0; run < CASES; run++) {
            Formula formula = formula(parts());
            Balance balance = balance();
            BatchWindow window = BatchWindow.of(formula, balance, criterion(balance));
            if (window instanceof BatchWindow.Feasible open) {
                feasible++;
                assertThat(window.contains(mass(FROM, window).orElseThrow()))
                        .as("%s", window)
                        .isTrue();
                assertThat(window.contains(mass(TO, window).orElseThrow()))
                        .as("%s", window)
                        .isTrue();
                mass(GAPS, window).ifPresent(size -> {
                    assertThat(window.contains(size)).as("%s", window).isTrue();
                    assertThat(size).isGreaterThanOrEqualTo(open.everySizeFrom());
                });
                assertThat(window.contains(mass(Pattern.compile("^" + NUMBER), open.lowerEnd())
                                .orElseThrow()))
                        .as("%s", open.lowerEnd())
                        .isTrue();
                assertThat(window.contains(mass(Pattern.compile("^" + NUMBER), open.upperEnd())
                                .orElseThrow()))
                        .as("%s", open.upperEnd())
                        .isTrue();
            }
        }
        assertThat(feasible).isGreaterThan(CASES / 4);
    }

    @Test
    void a_coarsest_step_serves_as_printed() {
        for (int run = 0; run < CASES; run++) {
            Batch batch = Batch.of(formula(parts()), BatchSize.ofMass(dice.between(20, 900) + dice.of(" g", " oz")));
            CoarsestStep answer = CoarsestStep.of(batch, Balance.of("0.001 g", "100 kg"), within(dice.between(2, 20)));
            mass(AT_MOST, answer)
                    .ifPresent(step ->
                            assertThat(answer.serves(step)).as("%s", answer).isTrue());
            mass(FINER, answer)
                    .ifPresent(step ->
                            assertThat(answer.serves(step)).as("%s", answer).isTrue());
        }
    }

    @Test
    void what_a_share_surely_lies_between_is_rounded_outwards() {
        for (int run = 0; run < CASES; run++) {
            Formula formula = formula(parts());
            Balance balance = balance();
            Batch batch = Batch.of(formula, BatchSize.ofMass(dice.between(100, 900) + dice.of(" g", " oz")));
            batch = carried(batch, balance);
            ExpectedProduct product =
                    ExpectedProduct.of(WeighingPlan.of(batch, Bench.of(balance)), WeighingMethod.TARE_EACH);
            int thousandths = dice.between(1, 900);
            UsageLimit limit = UsageLimit.of(
                    "HOUSE-1",
                    SubstanceGroup.of("material 0", List.of(GroupMember.of(Substance.of("material 0")))),
                    LimitKind.MAXIMUM,
                    MassFraction.of(Ratio.of(thousandths, 1000)));
            Verdict verdict = LimitChecker.of(
                            LimitTable.of("House limits", List.of(limit)), Product.leaveOn(), DecisionRule.worstCase())
                    .check(product)
                    .verdicts()
                    .get(0);
            Matcher told = BOUNDS.matcher(verdict.toString());
            if (told.find()) {
                assertThat(percent(told.group(1)))
                        .isLessThanOrEqualTo(verdict.lowest().canonical());
                assertThat(percent(told.group(2)))
                        .isGreaterThanOrEqualTo(verdict.highest().orElseThrow().canonical());
            }
            CapTarget target =
                    CapTarget.of(batch, balance, Substance.of("material 0"), limit.share(), WeighingMethod.TARE_EACH);
            Matcher most = TARGET.matcher(target.toString());
            if (target.share().isPresent() && most.find()) {
                assertThat(Ratio.parse(most.group(1).replace(" %", "")).dividedBy(100))
                        .isLessThanOrEqualTo(target.share().orElseThrow().fraction());
            }
        }
    }

    /** The batch, or the largest that the refusal names, which has to be carried. */
    private static Batch carried(Batch batch, Balance balance) {
        try {
            WeighingPlan.of(batch, Bench.of(balance));
            return batch;
        } catch (OverloadException e) {
            Matcher most = TARGET.matcher(String.valueOf(e.getMessage()));
            assertThat(most.find()).isTrue();
            return Batch.of(batch.formula(), BatchSize.ofMass(most.group(1)));
        }
    }

    private static Ratio percent(String number) {
        return Ratio.parse(number).dividedBy(100);
    }

    private void isNear(Amount<Mass> least, Amount<Mass> printed, Object told) {
        assertThat(printed).as("%s", told).isGreaterThanOrEqualTo(least);
        assertThat(printed).as("%s", told).isLessThanOrEqualTo(least.times(Ratio.of(1001, 1000)));
        exact += told.toString().contains(" ≈ ") ? 1 : 0;
    }

    private static Optional<Amount<Mass>> mass(Pattern pattern, Object answer) {
        Matcher told = pattern.matcher(answer.toString());
        return told.find() ? Optional.of(Amount.mass(told.group(1))) : Optional.empty();
    }

    private static BigDecimal unit(String symbol) {
        return symbol.equals("oz") ? OUNCE : BigDecimal.ONE;
    }

    private int[] parts() {
        int[] parts = new int[dice.between(2, 7)];
        Arrays.setAll(parts, i -> i == 0 ? dice.between(40, 400) : dice.between(1, 60));
        return parts;
    }

    private Balance balance() {
        return Balance.of(
                dice.of("0.1 g", "0.01 g", "0.5 g", "1 g", "0.1 oz", "0.05 oz", "0.01 oz"),
                dice.of("5 kg", "2 kg", "64 oz", "11 lb"));
    }

    private Criterion criterion(Balance balance) {
        return switch (dice.between(0, 5)) {
            case 0 -> Criterion.oneDivision();
            case 1 -> within(dice.between(1, 25));
            case 2 -> Criterion.madeWithin(Tolerances.of(MassFraction.parse(dice.between(3, 25) + " %")));
            case 3 ->
                Criterion.errorBound(
                        Tolerances.of(MassFraction.parse(dice.between(5, 30) + " %")),
                        dice.of(WeighingMethod.TARE_EACH, WeighingMethod.CUMULATIVE));
            case 4 -> Criterion.leastNetMass(balance.readability().times(dice.between(1, 9)));
            default -> within(dice.between(1, 10));
        };
    }

    private static Criterion within(int percent) {
        return Criterion.roundingWithin(
                Tolerances.of(MassFraction.of(Ratio.of(BigInteger.valueOf(percent), BigInteger.valueOf(100)))));
    }

    private static Formula formula(int[] parts) {
        FormulaBuilder builder = Formula.inParts("printed");
        for (int i = 0; i < parts.length; i++) {
            builder.line("material " + i, Integer.toString(parts[i]));
        }
        return builder.build();
    }
}
