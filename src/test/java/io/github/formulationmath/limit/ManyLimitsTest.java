package io.github.formulationmath.limit;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.formula.Substance;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.MassFraction;
import io.github.formulationmath.support.CpuTime;
import io.github.formulationmath.support.ManyLines;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** As many limits as lines: of the product, and of a phase; hours if every limit looked at every line. */
class ManyLimitsTest {

    private static final int MANY = 10_000;

    private static LimitTable table(int lines) {
        List<UsageLimit> limits = new ArrayList<>();
        List<GroupMember> all = new ArrayList<>();
        for (int i = 0; i < lines; i++) {
            SubstanceGroup own = SubstanceGroup.of("line " + i);
            limits.add(UsageLimit.of("P" + i, own, LimitKind.MAXIMUM, MassFraction.ofPercent("50")));
            limits.add(UsageLimit.of("O" + i, own, LimitKind.MAXIMUM, MassFraction.ofPercent("50"))
                    .inPhase("oil"));
            all.add(GroupMember.of(Substance.of("line " + i)));
        }
        limits.add(UsageLimit.of("ALL", SubstanceGroup.of("all", all), LimitKind.MAXIMUM, MassFraction.ofPercent("50"))
                .counting(SumRule.SUM));
        return LimitTable.of("house", limits);
    }

    @Test
    void as_many_limits_as_lines() {
        Formula formula = ManyLines.inTwoPhases(MANY);
        LimitTable table = table(MANY);
        CpuTime.assertWithin(Duration.ofMinutes(5), () -> {
            for (DecisionRule rule : List.of(DecisionRule.worstCase(), DecisionRule.guardBand())) {
                LimitChecker checker = LimitChecker.of(table, Product.leaveOn(), rule);
                LimitReport report = checker.check(ManyLines.exactly(formula));
                assertThat(report.verdict("ALL").orElseThrow().conformity()).isEqualTo(Conformity.EXCEEDS);
                assertThat(report.binding().orElseThrow().acceptableTarget()).isPresent();
            }
        });
    }

    @Test
    void shares_of_a_phase_are_those_added_up_by_hand() {
        Formula formula = ManyLines.inTwoPhases(20);
        LimitReport report = LimitChecker.of(table(20), Product.leaveOn(), DecisionRule.simpleAcceptance())
                .check(formula);
        Ratio oil = Ratio.ZERO;
        for (FormulaLine line : formula.phases().get(0).lines()) {
            oil = oil.plus(line.fraction());
        }
        for (FormulaLine line : formula.lines()) {
            int i = line.index();
            assertThat(report.verdict("P" + i).orElseThrow().share().canonical())
                    .isEqualTo(line.fraction());
            Ratio ofOil = i < 10 ? line.fraction().dividedBy(oil) : Ratio.ZERO;
            assertThat(report.verdict("O" + i).orElseThrow().share().canonical())
                    .isEqualTo(ofOil);
        }
        assertThat(report.verdict("ALL").orElseThrow().share().canonical()).isEqualTo(Ratio.ONE);
    }
}
