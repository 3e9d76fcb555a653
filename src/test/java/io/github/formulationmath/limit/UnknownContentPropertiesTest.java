package io.github.formulationmath.limit;

import static io.github.formulationmath.limit.LimitCases.millionths;
import static io.github.formulationmath.support.WorkingAssertions.assertSelfChecking;
import static org.assertj.core.api.Assertions.assertThat;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.FormulaBuilder;
import io.github.formulationmath.formula.Ingredient;
import io.github.formulationmath.formula.Substance;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.reckoning.Source;
import io.github.formulationmath.support.HandWeighed;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.weighing.WeighingMethod;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;

/**
 * A limit "as Quat" on Quat itself and on two substances that hold an unknown part of it: the share is an interval, and
 * what it says holds for every content inside.
 */
class UnknownContentPropertiesTest {

    private static final Balance TENTH = Balance.of("0.1 g", "2 kg");

    private static LimitChecker checker(LimitKind kind, int limit, DecisionRule rule) {
        SubstanceGroup group = SubstanceGroup.of(
                "quats",
                List.of(
                        GroupMember.of(Substance.of("Quat")),
                        GroupMember.of(Substance.of("Bromide of it")),
                        GroupMember.of(Substance.of("Saccharinate of it"))));
        UsageLimit row = UsageLimit.of("Q", group, kind, millionths(limit))
                .on(LimitBasis.as("quat"))
                .counting(SumRule.SUM);
        return LimitChecker.of(LimitTable.of("house", List.of(row)), Product.leaveOn(), rule);
    }

    private static LimitChecker told(LimitChecker checker, Random random) {
        return checker.withContent("Bromide of it", "quat", content(random), Source.user())
                .withContent("Saccharinate of it", "quat", content(random), Source.user());
    }

    /** Above 0 and at most 1, the ends often. */
    private static Ratio content(Random random) {
        return switch (random.nextInt(4)) {
            case 0 -> Ratio.ONE;
            case 1 -> Ratio.of(1, 1_000_000);
            default -> Ratio.of(1 + random.nextInt(999), 1000);
        };
    }

    private static Formula formula(int itself, int bromide, int saccharinate) {
        FormulaBuilder draft = Formula.inPercent("F");
        draft.quantitySufficient("Aqua").line(Ingredient.of("Quat"), millionths(itself));
        if (bromide > 0) {
            draft.line(Ingredient.of("Bromide of it"), millionths(bromide));
        }
        if (saccharinate > 0) {
            draft.line(Ingredient.of("Saccharinate of it"), millionths(saccharinate));
        }
        return draft.build();
    }

    private static int share(Random random) {
        return random.nextInt(4) == 0 ? 0 : random.nextInt(20_000);
    }

    /** Decided in whole millionths, before the library is asked. */
    @Property(tries = 300)
    void the_verdict_on_paper_follows_from_the_two_ends(@ForAll long seed) {
        Random random = new Random(seed);
        int itself = 1 + share(random);
        int unknown = share(random);
        int more = share(random);
        int limit = 1 + random.nextInt(50_000);
        boolean upper = random.nextBoolean();
        int low = itself;
        int high = itself + unknown + more;
        Conformity expected = upper
                ? low > limit ? Conformity.EXCEEDS : high <= limit ? Conformity.WITHIN : Conformity.NOT_ASSESSABLE
                : high < limit ? Conformity.FALLS_SHORT : low >= limit ? Conformity.WITHIN : Conformity.NOT_ASSESSABLE;
        LimitChecker checker = checker(upper ? LimitKind.MAXIMUM : LimitKind.MINIMUM, limit, DecisionRule.worstCase());
        Verdict verdict =
                checker.check(formula(itself, unknown, more)).binding().orElseThrow();
        assertThat(verdict.conformity()).isEqualTo(expected);
        assertThat(verdict.share().canonical()).isEqualTo(Ratio.of(low, 1_000_000));
        assertThat(verdict.lowest().canonical()).isEqualTo(Ratio.of(low, 1_000_000));
        assertThat(verdict.highest().map(Amount::canonical)).contains(Ratio.of(high, 1_000_000));
        assertSelfChecking(verdict);
        assertSelfChecking(verdict.headroom());
        assertThat(verdict.headroom().signum() >= 0).isEqualTo(expected == Conformity.WITHIN);
    }

    @Property(tries = 200)
    void every_content_inside_gives_the_verdict_of_the_interval_also_on_a_balance(@ForAll long seed) {
        Random random = new Random(seed);
        DecisionRule rule = List.of(DecisionRule.simpleAcceptance(), DecisionRule.guardBand(), DecisionRule.worstCase())
                .get(random.nextInt(3));
        LimitKind kind = random.nextBoolean() ? LimitKind.MAXIMUM : LimitKind.MINIMUM;
        LimitChecker unknown = checker(kind, 1 + random.nextInt(40_000), rule);
        HandWeighed weighed = HandWeighed.exactly(
                formula(1 + share(random), share(random), share(random)), "400 g", TENTH, WeighingMethod.TARE_EACH);
        Verdict interval = unknown.check(weighed).binding().orElseThrow();
        Verdict exact = told(unknown, random).check(weighed).binding().orElseThrow();
        assertThat(interval.bounds().encloses(exact.bounds())).isTrue();
        if (interval.conformity() != Conformity.NOT_ASSESSABLE) {
            assertThat(exact.conformity()).isEqualTo(interval.conformity());
        }
    }

    /** Lines of 8 g and more, on a display of 0.1 g: the band of each is far less than itself. */
    @Property(tries = 150)
    void what_is_known_alone_and_exceeds_beyond_the_band_exceeds_whatever_the_rest(@ForAll long seed) {
        Random random = new Random(seed);
        int itself = 20_000 + random.nextInt(100_000);
        int limit = 1 + random.nextInt(2 * itself);
        DecisionRule rule = DecisionRule.guardBand();
        LimitChecker unknown = checker(LimitKind.MAXIMUM, limit, rule);
        Formula formula = formula(itself, 20_000 + share(random), 20_000 + share(random));
        HandWeighed weighed = HandWeighed.exactly(formula, "400 g", TENTH, WeighingMethod.TARE_EACH);
        Verdict interval = unknown.check(weighed).binding().orElseThrow();
        Verdict least = unknown.withContent("Bromide of it", "quat", Ratio.of(1, 1_000_000_000), Source.user())
                .withContent("Saccharinate of it", "quat", Ratio.of(1, 1_000_000_000), Source.user())
                .check(weighed)
                .binding()
                .orElseThrow();
        Verdict most = unknown.withContent("Bromide of it", "quat", Ratio.ONE, Source.user())
                .withContent("Saccharinate of it", "quat", Ratio.ONE, Source.user())
                .check(weighed)
                .binding()
                .orElseThrow();
        if (least.conformity() == most.conformity() && least.conformity() != Conformity.NOT_SHOWN_WITHIN) {
            assertThat(interval.conformity()).isEqualTo(least.conformity());
        }
        if (limit < itself / 2) {
            assertThat(interval.conformity()).isEqualTo(Conformity.EXCEEDS);
        }
    }
}
