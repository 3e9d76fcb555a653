package io.github.formulationmath.limit;

import static io.github.formulationmath.limit.LimitCases.millionths;
import static org.assertj.core.api.Assertions.assertThat;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.FormulaBuilder;
import io.github.formulationmath.formula.Ingredient;
import io.github.formulationmath.formula.Substance;
import io.github.formulationmath.support.Checkers;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;

/**
 * What a table shows to be one substance, in whichever of its rows, is counted as one by all of them, in whatever
 * spellings the formula has it.
 */
class TableIdentityPropertiesTest {

    private static final String CAS = "100-51-6";
    private static final List<String> NAMES =
            List.of("Oleum alpha", "Beta extractum", "Gamma tincture", "Delta resinoid");
    private static final List<String> UNSEEN = List.of("", "\u200B", "\uFEFF", "\u00AD", "\u2060");

    /** Rows that tie the four names together, each two of them, by a synonym or by the number; and one with the cap. */
    private static LimitTable table(Random random, int cap, boolean oneRow) {
        List<GroupMember> ties = new ArrayList<>();
        for (int i = 1; i < NAMES.size(); i++) {
            String other = NAMES.get(random.nextInt(i));
            if (random.nextBoolean()) {
                ties.add(GroupMember.of(Substance.of(NAMES.get(i)).withSynonyms(other)));
            } else {
                ties.add(GroupMember.of(Substance.of(NAMES.get(i)).withCas(CAS)));
                ties.add(GroupMember.of(Substance.of(other).withCas(CAS)));
            }
        }
        Collections.shuffle(ties, random);
        List<UsageLimit> limits = new ArrayList<>();
        if (oneRow) {
            limits.add(UsageLimit.of("H", SubstanceGroup.of("ties", ties), LimitKind.MAXIMUM, millionths(cap)));
        } else {
            limits.add(UsageLimit.of("H", SubstanceGroup.of(NAMES.get(0)), LimitKind.MAXIMUM, millionths(cap)));
            for (GroupMember tie : ties) {
                limits.add(UsageLimit.of(
                        "T" + limits.size(),
                        SubstanceGroup.of("tie", List.of(tie)),
                        LimitKind.MAXIMUM,
                        millionths(900_000)));
            }
        }
        Collections.shuffle(limits, random);
        return LimitTable.of("house", limits);
    }

    private static String unseen(String name, Random random) {
        int at = 1 + random.nextInt(name.length() - 1);
        return name.substring(0, at) + UNSEEN.get(random.nextInt(UNSEEN.size())) + name.substring(at);
    }

    private static Formula formula(Random random, int[] shares) {
        FormulaBuilder draft = Formula.inPercent("F");
        draft.quantitySufficient("Aqua");
        for (int i = 0; i < shares.length; i++) {
            Substance written = random.nextInt(4) == 0
                    ? Substance.of("Trade " + i).withSynonyms(unseen(NAMES.get(i), random))
                    : Substance.of(unseen(NAMES.get(i), random));
            draft.line(Ingredient.of("Material " + i, written), millionths(shares[i]));
        }
        return draft.build();
    }

    @Property(tries = 400)
    void one_millionth_above_the_cap_exceeds_it_and_the_cap_itself_does_not(@ForAll long seed) {
        Random random = new Random(seed);
        int[] shares = random.ints(NAMES.size(), 1, 50_000).toArray();
        int sum = java.util.Arrays.stream(shares).sum();
        boolean oneRow = random.nextBoolean();
        LimitReport wrong = LimitChecker.of(
                        table(new Random(seed), sum - 1, oneRow), Product.leaveOn(), DecisionRule.worstCase())
                .check(formula(random, shares));
        assertThat(wrong.outcome()).isEqualTo(LimitOutcome.EXCEEDS);
        assertThat(wrong.withoutLimit()).extracting(Substance::name).containsExactly("Aqua");
        LimitReport right = LimitChecker.of(
                        table(new Random(seed), sum, oneRow), Product.leaveOn(), DecisionRule.worstCase())
                .check(formula(random, shares));
        assertThat(right.outcome()).isEqualTo(LimitOutcome.NO_COUNTED_LIMIT_PASSED);
    }

    @Property(tries = 200)
    void a_stated_purpose_reaches_all_of_the_substance_or_none_of_it(@ForAll long seed) {
        Random random = new Random(seed);
        UsageLimit cap = UsageLimit.of(
                        "H",
                        SubstanceGroup.of(
                                "alcohol",
                                List.of(GroupMember.of(
                                        Substance.of("Oleum alpha").withCas(CAS)))),
                        LimitKind.MAXIMUM,
                        millionths(3000))
                .within(Scope.any().withPurpose("preservative"));
        Formula formula = Formula.inPercent("F")
                .quantitySufficient("Aqua")
                .line(Ingredient.of(unseen("Oleum alpha", random)), millionths(1 + random.nextInt(3000)))
                .line(Ingredient.of("Trade", Substance.of("Trade").withCas(CAS)), millionths(3000))
                .build();
        LimitTable table = LimitTable.of("house", List.of(cap));
        for (String name : List.of("Oleum alpha", "Something else", CAS)) {
            LimitReport lifted = LimitChecker.of(
                            table, Product.leaveOn().using(name, "other_than_preservative"), DecisionRule.worstCase())
                    .check(formula);
            boolean reaches = !name.equals("Something else");
            assertThat(lifted.outcome()).isEqualTo(reaches ? LimitOutcome.CONDITIONS_OPEN : LimitOutcome.EXCEEDS);
            assertThat(lifted.verdicts()).hasSize(reaches ? 0 : 1);
        }
    }

    /** The number of zinc oxide is that of its nano form as well. */
    @Test
    void a_substance_is_not_taken_for_its_nano_form_unless_only_the_number_says_what_it_is() {
        LimitChecker checker = Checkers.of(Product.leaveOn().on("face"));
        Formula plain = Formula.inPercent("F")
                .quantitySufficient("Aqua")
                .line("Zinc Oxide", "5 %")
                .build();
        assertThat(checker.check(plain).verdicts())
                .extracting(verdict -> verdict.limit().id())
                .contains("EU-VI-30")
                .doesNotContain("EU-VI-30a");
        Formula number = Formula.inPercent("F")
                .quantitySufficient("Aqua")
                .line(Ingredient.of("Powder", Substance.of("Powder").withCas("1314-13-2")), "5 %")
                .build();
        assertThat(checker.check(number).verdicts())
                .extracting(verdict -> verdict.limit().id())
                .contains("EU-VI-30", "EU-VI-30a");
    }
}
