package io.github.formulationmath.limit;

import static io.github.formulationmath.limit.LimitCases.check;
import static io.github.formulationmath.limit.LimitCases.formula;
import static io.github.formulationmath.limit.LimitCases.millionths;
import static io.github.formulationmath.limit.LimitCases.shares;
import static io.github.formulationmath.limit.LimitCases.verdicts;
import static org.assertj.core.api.Assertions.assertThat;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.FormulaBuilder;
import io.github.formulationmath.formula.Ingredient;
import io.github.formulationmath.limit.LimitCases.Said;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;

/** Laws of the outcome, with wrong and right things built from integers. */
class LimitOutcomePropertiesTest {

    @Property(tries = 60)
    void more_of_anything_that_has_no_least_share_never_makes_the_outcome_milder(@ForAll long seed) {
        Random random = new Random(seed);
        Product product = Said.random(random).product();
        Map<String, Integer> shares = shares(random);
        Map<String, Integer> more = new LinkedHashMap<>(shares);
        List<String> names = List.copyOf(shares.keySet());
        more.merge(names.get(random.nextInt(names.size())), 1 + random.nextInt(200_000), Integer::sum);
        assertThat(check(product, formula(more)).outcome())
                .isGreaterThanOrEqualTo(check(product, formula(shares)).outcome());
    }

    @Property(tries = 60)
    void telling_what_a_material_consists_of_loses_no_verdict_on_the_material(@ForAll long seed) {
        Random random = new Random(seed);
        Product product = Said.random(random).product();
        String material = LimitCases.NAMES.get(random.nextInt(LimitCases.NAMES.size()));
        String constituent = LimitCases.NAMES.get(random.nextInt(LimitCases.NAMES.size()));
        int share = 1 + random.nextInt(300_000);
        Formula plain = formula(Map.of(material, share));
        Formula precise = Formula.inPercent("F")
                .quantitySufficient("Aqua")
                .line(
                        Ingredient.blend(material)
                                .part(constituent, (1 + random.nextInt(99)) + " %")
                                .rest("Jojoba Esters"),
                        millionths(share))
                .build();
        if (constituent.equals(material)) {
            return;
        }
        LimitReport before = check(product, plain);
        LimitReport after = check(product, precise);
        Map<String, Conformity> found = verdicts(after);
        verdicts(before).forEach((verdict, conformity) -> {
            assertThat(found).containsKey(verdict);
            if (conformity != Conformity.NOT_ASSESSABLE) {
                assertThat(found.get(verdict)).isGreaterThanOrEqualTo(conformity);
            }
        });
    }

    /** A table of our own: caps of 1 to 99 999 millionths, some for leave-on products, without a word to read. */
    private static LimitTable house(int[] caps) {
        List<UsageLimit> limits = new ArrayList<>();
        for (int i = 0; i < caps.length; i++) {
            UsageLimit limit =
                    UsageLimit.of("H-" + i, SubstanceGroup.of(name(i)), LimitKind.MAXIMUM, millionths(caps[i]));
            limits.add(
                    i % 2 == 0
                            ? limit
                            : limit.within(
                                    Scope.leaveOn().withAreas("face", "hands").withForms("not:spray")));
        }
        return LimitTable.of("house", limits);
    }

    /** Names so far apart that none looks like a slip of another. */
    private static String name(int i) {
        return "House material " + String.valueOf((char) ('A' + i)).repeat(12);
    }

    private static Formula house(int[] shares, int extra) {
        FormulaBuilder draft = Formula.inPercent("House");
        draft.quantitySufficient("Aqua").line(Ingredient.of("Squalane"), millionths(extra));
        for (int i = 0; i < shares.length; i++) {
            draft.line(Ingredient.of(name(i)), millionths(shares[i]));
        }
        return draft.build();
    }

    @Property(tries = 300)
    void right_by_construction_is_passed_and_one_millionth_too_much_is_not(@ForAll long seed) {
        Random random = new Random(seed);
        int[] caps = random.ints(4, 1, 100_000).toArray();
        int[] shares = new int[caps.length];
        for (int i = 0; i < caps.length; i++) {
            shares[i] = random.nextInt(5) == 0 ? caps[i] : 1 + random.nextInt(caps[i]);
        }
        Product product =
                Product.leaveOn().on(random.nextBoolean() ? "face" : "hands").inForm("cream");
        LimitChecker checker = LimitChecker.of(house(caps), product, DecisionRule.worstCase());
        LimitReport clean = checker.check(house(shares, 1 + random.nextInt(100_000)));
        assertThat(clean.outcome()).isEqualTo(LimitOutcome.NO_COUNTED_LIMIT_PASSED);
        assertThat(clean.withoutLimit()).extracting(Object::toString).containsExactly("Aqua", "Squalane");
        int wrong = random.nextInt(caps.length);
        shares[wrong] = caps[wrong] + 1;
        LimitReport broken = checker.check(house(shares, 1));
        assertThat(broken.outcome()).isEqualTo(LimitOutcome.EXCEEDS);
        assertThat(broken.binding().orElseThrow().limit().id()).isEqualTo("H-" + wrong);
    }

    @Property(tries = 100)
    void what_is_not_stated_leaves_the_outcome_open(@ForAll long seed) {
        Random random = new Random(seed);
        int[] caps = random.ints(2, 2, 100_000).toArray();
        int[] shares = {caps[0], caps[1]};
        for (Product vague : List.of(
                Product.leaveOn(),
                Product.leaveOn().on("face"),
                Product.leaveOn().inForm("cream"))) {
            LimitChecker checker = LimitChecker.of(house(caps), vague, DecisionRule.worstCase());
            assertThat(checker.check(house(shares, 1)).outcome()).isEqualTo(LimitOutcome.CONDITIONS_OPEN);
            assertThat(checker.check(house(new int[] {caps[0], caps[1] + 1}, 1)).outcome())
                    .isEqualTo(LimitOutcome.EXCEEDS);
        }
    }

    @Property(tries = 50)
    void a_lowest_effective_share_that_is_not_reached_is_a_limit_passed(@ForAll long seed) {
        int least = 2 + new Random(seed).nextInt(90_000);
        LimitTable table = LimitTable.of(
                "house", List.of(UsageLimit.of("L", SubstanceGroup.of(name(0)), LimitKind.MINIMUM, millionths(least))));
        LimitChecker checker = LimitChecker.of(table, Product.leaveOn(), DecisionRule.simpleAcceptance());
        assertThat(checker.check(house(new int[] {least - 1}, 1)).outcome()).isEqualTo(LimitOutcome.EXCEEDS);
        assertThat(checker.check(house(new int[] {least}, 1)).outcome())
                .isEqualTo(LimitOutcome.NO_COUNTED_LIMIT_PASSED);
    }
}
