package io.github.formulationmath.limit;

import static io.github.formulationmath.support.Checkers.FACE_CREAM;
import static io.github.formulationmath.support.WorkingAssertions.assertSelfChecking;
import static org.assertj.core.api.Assertions.assertThat;

import io.github.formulationmath.chemistry.MolecularFormula;
import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.Ingredient;
import io.github.formulationmath.formula.Substance;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.MassFraction;
import io.github.formulationmath.reckoning.Wording;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Group rules that the bundled table does not need, on tables made in code. */
class SumOfRatiosTest {

    private static final SubstanceGroup BOTH = SubstanceGroup.of(
            "acids",
            List.of(
                    GroupMember.of(Substance.of("Benzoic Acid")),
                    GroupMember.of(Substance.of("Sorbic Acid")),
                    GroupMember.of(Substance.of("Lactic Acid"))));

    private static UsageLimit single(String id, String name, String percent) {
        return UsageLimit.of(id, SubstanceGroup.of(name), LimitKind.MAXIMUM, MassFraction.ofPercent(percent));
    }

    private static LimitChecker checker(UsageLimit... limits) {
        return LimitChecker.of(LimitTable.of("house", List.of(limits)), FACE_CREAM, DecisionRule.worstCase());
    }

    private static Formula two(String benzoic, String sorbic) {
        return Formula.inPercent("F")
                .quantitySufficient("Aqua")
                .line("Benzoic Acid", benzoic)
                .line("Sorbic Acid", sorbic)
                .build();
    }

    /** 0.25/0.5 + 0.3/0.6 = 1: just kept; anything more is not. */
    @Test
    void shares_of_own_limits_are_added() {
        UsageLimit sum = UsageLimit.of("SUM", BOTH, LimitKind.MAXIMUM, MassFraction.WHOLE)
                .counting(SumRule.SUM_OF_RATIOS);
        LimitChecker checker = checker(single("B", "Benzoic Acid", "0.5"), single("S", "Sorbic Acid", "0.6"), sum);
        Verdict kept = checker.check(two("0.25 %", "0.3 %")).verdict("SUM").orElseThrow();
        assertThat(kept.share().canonical()).isEqualTo(Ratio.ONE);
        assertThat(kept.conformity()).isEqualTo(Conformity.WITHIN);
        assertSelfChecking(kept);
        Verdict beyond = checker.check(two("0.25 %", "0.301 %")).verdict("SUM").orElseThrow();
        assertThat(beyond.conformity()).isEqualTo(Conformity.EXCEEDS);
        assertThat(beyond.limitingShareOf(beyond.lines().get(1)).map(Amount::canonical))
                .contains(Ratio.parse("0.003"));
    }

    @Test
    void a_member_without_an_own_limit_cannot_be_assessed() {
        UsageLimit sum = UsageLimit.of("SUM", BOTH, LimitKind.MAXIMUM, MassFraction.WHOLE)
                .counting(SumRule.SUM_OF_RATIOS);
        LimitChecker checker = checker(single("B", "Benzoic Acid", "0.5"), sum);
        Verdict verdict = checker.check(two("0.1 %", "0.1 %")).verdict("SUM").orElseThrow();
        assertThat(verdict.conformity()).isEqualTo(Conformity.NOT_ASSESSABLE);
        assertThat(String.join("\n", verdict.describe(Wording.english()))).contains("Sorbic Acid has none here");
    }

    @Test
    void a_material_as_supplied_counts_whole_and_once_whether_by_its_name_or_by_what_it_holds() {
        Ingredient blend = Ingredient.blend("Acid blend")
                .part("Benzoic Acid", "40 %")
                .part("Sorbic Acid", "40 %")
                .rest("Aqua");
        Formula formula = Formula.inPercent("F")
                .quantitySufficient("Aqua")
                .line(blend, MassFraction.parse("1 %"))
                .build();
        UsageLimit byContent = UsageLimit.of("C", BOTH, LimitKind.MAXIMUM, MassFraction.ofPercent("1"))
                .counting(SumRule.SUM)
                .on(LimitBasis.asSupplied());
        UsageLimit byName = single("N", "ACID BLEND", "0.9").on(LimitBasis.asSupplied());
        LimitReport report = checker(byContent, byName).check(formula);
        assertThat(report.verdict("C").orElseThrow().share().canonical()).isEqualTo(Ratio.parse("0.01"));
        assertThat(report.verdict("C").orElseThrow().conformity()).isEqualTo(Conformity.WITHIN);
        assertThat(report.verdict("N").orElseThrow().conformity()).isEqualTo(Conformity.EXCEEDS);
    }

    @Test
    void a_salt_and_its_hydrate_are_told_apart_by_their_number_and_else_taken_strictly() {
        MolecularFormula acid = MolecularFormula.parse("C8H8O4");
        GroupMember dry = GroupMember.of(Substance.of("Salt").withCas("4418-26-2"))
                .inForm("anhydrous")
                .withFormula(MolecularFormula.parse("C8H7NaO4"), Ratio.ONE);
        GroupMember wet = GroupMember.of(Substance.of("Salt").withCas("532-32-1"))
                .inForm("monohydrate")
                .withFormula(MolecularFormula.parse("C8H7NaO4·H2O"), Ratio.ONE);
        UsageLimit limit = UsageLimit.of(
                        "L",
                        SubstanceGroup.of("salts", List.of(wet, dry)),
                        LimitKind.MAXIMUM,
                        MassFraction.ofPercent("1"))
                .on(LimitBasis.as("the acid", acid))
                .citing(Citation.of("House rule", LocalDate.of(2024, 1, 1)))
                .saying(EntryText.conditions("not in sprays"))
                .within(Scope.leaveOn().withAreas("face", "hands"));
        Verdict unsaid = verdict(limit, Substance.of("Salt"));
        Verdict stated = verdict(limit, Substance.of("Salt").withCas("532-32-1"));
        assertThat(unsaid.share()).isGreaterThan(stated.share());
        assertThat(unsaid.remarks())
                .anySatisfy(remark -> assertThat(remark.key()).contains("form-guessed"))
                .anySatisfy(remark -> assertThat(remark.arguments()).contains("anhydrous"));
        assertThat(stated.remarks()).isEmpty();
        assertThat(String.join("\n", stated.describe(Wording.english())))
                .contains("Conditions: not in sprays", "House rule (snapshot of 2024-01-01)");
    }

    private static Verdict verdict(UsageLimit limit, Substance substance) {
        Formula formula = Formula.inPercent("F")
                .quantitySufficient("Aqua")
                .line(Ingredient.of("Salt as bought", substance), MassFraction.parse("1 %"))
                .build();
        return checker(limit).check(formula).binding().orElseThrow();
    }
}
