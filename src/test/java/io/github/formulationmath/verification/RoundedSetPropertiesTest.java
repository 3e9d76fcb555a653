package io.github.formulationmath.verification;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.formulationmath.batch.BatchSize;
import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.FormulaBuilder;
import io.github.formulationmath.formula.Ingredient;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.MassFraction;
import io.github.formulationmath.verification.Verification.Outcome;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.SplittableRandom;
import java.util.TreeSet;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * A set of figures holds if, and only if, some rule for ties and some order gives it: every rule and order is tried out in
 * whole numbers, for sets made right and for sets made right but for one step.
 */
class RoundedSetPropertiesTest {

    private static final List<Integer> DENOMINATORS = List.of(2, 4, 8, 10, 20);

    @Test
    void a_set_holds_exactly_if_some_rule_gives_it() {
        assertSeen(tried(400, 16));
    }

    @Tag("many")
    @Test
    void many_sets_hold_exactly_if_some_rule_gives_them() {
        assertSeen(tried(20_000, 1816));
    }

    /** Both kinds must have been there, or nothing was shown. */
    private static void assertSeen(int[] seen) {
        assertThat(seen[0]).as("legitimate").isGreaterThan(seen[2] / 4);
        assertThat(seen[1]).as("not legitimate").isGreaterThan(seen[2] / 4);
    }

    private static int[] tried(int cases, long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        int[] seen = new int[3];
        for (int i = 0; i < cases; i++) {
            Case each = Case.random(random);
            List<BigInteger> right = each.rounded(random);
            seen[each.check(right) ? 0 : 1]++;
            seen[each.check(oneStepOff(right, random)) ? 0 : 1]++;
            seen[2] += 2;
        }
        return seen;
    }

    /** One figure a step up or down, and every other time another the other way, so that the sum stays. */
    private static List<BigInteger> oneStepOff(List<BigInteger> right, SplittableRandom random) {
        List<BigInteger> wrong = new ArrayList<>(right);
        int place = random.nextInt(wrong.size());
        wrong.set(place, wrong.get(place).add(BigInteger.ONE));
        if (random.nextBoolean()) {
            int other = random.nextInt(wrong.size());
            wrong.set(other, wrong.get(other).subtract(BigInteger.ONE).max(BigInteger.ZERO));
        }
        return wrong;
    }

    /** Targets in steps, as numerators over a denominator; the step is 1 g, or 1 mg. */
    private record Case(List<BigInteger> targets, BigInteger below, int rest, String unit, RoundedByHand hand) {

        static Case random(SplittableRandom random) {
            int lines = 2 + random.nextInt(4);
            BigInteger below = BigInteger.valueOf(DENOMINATORS.get(random.nextInt(DENOMINATORS.size())));
            List<BigInteger> targets = new ArrayList<>();
            for (int i = 0; i < lines; i++) {
                // Halves often, so that ties are met.
                long number = random.nextInt(3) == 0
                        ? (1 + random.nextInt(60)) * below.longValue() / 2
                        : 1 + random.nextInt(400);
                targets.add(BigInteger.valueOf(Math.max(1, number)));
            }
            int rest = random.nextInt(lines + 1) - 1;
            return new Case(
                    List.copyOf(targets),
                    below,
                    rest,
                    random.nextBoolean() ? "g" : "mg",
                    new RoundedByHand(targets, below));
        }

        /** By a way chosen at random, ties free. */
        List<BigInteger> rounded(SplittableRandom random) {
            List<BigInteger> shown = new ArrayList<>();
            for (BigInteger target : targets) {
                List<BigInteger> ways = List.copyOf(new TreeSet<>(hand.nearest(target)));
                shown.add(ways.get(random.nextInt(ways.size())));
            }
            int way = random.nextInt(3);
            if (way == 1 && rest >= 0) {
                BigInteger batch = targets.stream().reduce(BigInteger.ZERO, BigInteger::add);
                List<BigInteger> wholes = List.copyOf(new TreeSet<>(hand.nearest(batch)));
                BigInteger others =
                        shown.stream().reduce(BigInteger.ZERO, BigInteger::add).subtract(shown.get(rest));
                BigInteger left = wholes.get(random.nextInt(wholes.size())).subtract(others);
                shown.set(rest, left.signum() < 0 ? shown.get(rest) : left);
            } else if (way == 2) {
                List<List<BigInteger>> sets = new ArrayList<>(hand.byLargestRemainders());
                sets.sort((a, b) -> a.toString().compareTo(b.toString()));
                return sets.get(random.nextInt(sets.size()));
            }
            return shown;
        }

        private Formula formula() {
            BigInteger batch = targets.stream().reduce(BigInteger.ZERO, BigInteger::add);
            FormulaBuilder builder = Formula.inPercent("set");
            for (int i = 0; i < targets.size(); i++) {
                Ingredient ingredient = Ingredient.of("line " + i);
                if (i == rest) {
                    builder.quantitySufficient(ingredient);
                } else {
                    builder.line(ingredient, MassFraction.of(Ratio.of(targets.get(i), batch)));
                }
            }
            return builder.build();
        }

        private Claim claim(List<BigInteger> shown) {
            Formula formula = formula();
            Ratio batch = Ratio.of(targets.stream().reduce(BigInteger.ZERO, BigInteger::add), below);
            Ratio grams = unit.equals("g") ? batch : batch.dividedBy(1000);
            Claim claim = Claim.about(formula, BatchSize.ofMass(Amount.grams(grams)));
            for (int i = 0; i < shown.size(); i++) {
                claim = claim.withFigure(formula.lines().get(i), Figure.parse(shown.get(i) + " " + unit));
            }
            return claim;
        }

        /** What the library says against what the whole numbers say; returns the latter. */
        boolean check(List<BigInteger> shown) {
            boolean legitimate = hand.isLegitimate(shown, rest);
            Verification verification = Verification.of(claim(shown));
            if (legitimate) {
                assertThat(verification.habit())
                        .as("%s %s", this, shown)
                        .hasValueSatisfying(
                                habit -> assertThat(habit.isPlainRounding()).isTrue());
                assertThat(verification.mixesTies()).as("%s %s", this, shown).isEqualTo(!hand.isByOneRule(shown, rest));
                assertThat(verification.outcome())
                        .as("%s %s", this, shown)
                        .isEqualTo(
                                shown.contains(BigInteger.ZERO) ? Outcome.SHOWS_NOTHING_FOR_SOME_LINES : Outcome.HOLDS);
            } else {
                Outcome byHabit =
                        shown.contains(BigInteger.ZERO) ? Outcome.SHOWS_NOTHING_FOR_SOME_LINES : Outcome.HOLDS_BY_HABIT;
                assertThat(verification.outcome())
                        .as("%s %s", this, shown)
                        .isEqualTo(isByHabit(shown) ? byHabit : Outcome.DOES_NOT_HOLD);
            }
            return legitimate;
        }

        private boolean isByHabit(List<BigInteger> shown) {
            BigInteger largest = Collections.max(targets);
            return hand.restFree(shown, targets.indexOf(largest))
                    || hand.restFree(shown, shown.size() - 1)
                    || isBySignificantDigits(shown);
        }

        private boolean isBySignificantDigits(List<BigInteger> shown) {
            for (int digits = 2; digits <= 6; digits++) {
                boolean all = true;
                for (int i = 0; i < shown.size(); i++) {
                    BigDecimal exact = new BigDecimal(targets.get(i)).divide(new BigDecimal(below));
                    BigDecimal figure = new BigDecimal(shown.get(i));
                    all &= isRounded(exact, digits, RoundingMode.HALF_UP, figure)
                            || isRounded(exact, digits, RoundingMode.HALF_DOWN, figure);
                }
                if (all) {
                    return true;
                }
            }
            return false;
        }

        private static boolean isRounded(BigDecimal exact, int digits, RoundingMode mode, BigDecimal figure) {
            return exact.round(new MathContext(digits, mode)).compareTo(figure) == 0;
        }
    }
}
