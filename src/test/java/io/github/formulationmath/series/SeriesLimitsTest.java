package io.github.formulationmath.series;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.Ingredient;
import io.github.formulationmath.formula.Substance;
import io.github.formulationmath.limit.Conformity;
import io.github.formulationmath.limit.DecisionRule;
import io.github.formulationmath.limit.GroupMember;
import io.github.formulationmath.limit.LimitChecker;
import io.github.formulationmath.limit.LimitKind;
import io.github.formulationmath.limit.LimitReport;
import io.github.formulationmath.limit.LimitTable;
import io.github.formulationmath.limit.Product;
import io.github.formulationmath.limit.SubstanceGroup;
import io.github.formulationmath.limit.UsageLimit;
import io.github.formulationmath.limit.Verdict;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.plan.Bench;
import io.github.formulationmath.plan.PlannedLine;
import io.github.formulationmath.plan.WeighingPlan;
import io.github.formulationmath.pot.Readings;
import io.github.formulationmath.quantity.MassFraction;
import io.github.formulationmath.support.Trials;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.weighing.WeighingMethod;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Limits over all versions of a series: each share counted from several lines, in base and portion, against every corner of the weighings. */
final class SeriesLimitsTest {

    private static final int CASES = 12 * Math.max(1, Integer.getInteger("formulationmath.cases", 1) / 10);

    /** Tenths of the substance in each material. */
    private static final Map<String, Integer> TENTHS = Map.of("rest", 0, "one", 3, "two", 0, "own", 7);

    private static Ingredient material(String name) {
        int tenths = TENTHS.getOrDefault(name, 0);
        return tenths == 0
                ? Ingredient.of(name)
                : Ingredient.blend(name)
                        .part("Phenoxyethanol", tenths * 10 + " %")
                        .part("Caprylyl Glycol", 100 - tenths * 10 + " %")
                        .build();
    }

    private static TrialSeries series(Random random) {
        int one = 1 + random.nextInt(6);
        int two = 1 + random.nextInt(9);
        List<Formula> versions = new ArrayList<>();
        for (int j = 0; j < 2; j++) {
            versions.add(Formula.inPercent("version " + j)
                    .quantitySufficient(material("rest"))
                    .line(material("one"), one + " %")
                    .line(material("two"), two + " %")
                    .line(material("own"), 1 + random.nextInt(9) + " %")
                    .build());
        }
        return TrialSeries.of(versions, Bench.of(Balance.of("1 g", "600 g")), 20 + random.nextInt(30) + " g", "30 %");
    }

    private static LimitChecker cap(Ratio share) {
        UsageLimit limit = UsageLimit.of(
                "HOUSE-1",
                SubstanceGroup.of("phenoxyethanol", List.of(GroupMember.of(Substance.of("Phenoxyethanol")))),
                LimitKind.MAXIMUM,
                MassFraction.of(share));
        return LimitChecker.of(
                LimitTable.of("House limits", List.of(limit)), Product.leaveOn(), DecisionRule.worstCase());
    }

    /** The share above and below, as whole numbers. */
    private static Ratio share(List<PlannedLine> base, int b, List<PlannedLine> own, int o) {
        long inBase = 0;
        long ofBase = 0;
        for (int i = 0; i < base.size(); i++) {
            long mass = corner(base.get(i), b >> i & 1);
            ofBase += mass;
            inBase += mass * TENTHS.getOrDefault(base.get(i).name(), 0);
        }
        long there = 0;
        long all = 0;
        for (int i = 0; i < own.size(); i++) {
            long mass = corner(own.get(i), o >> i & 1);
            all += mass;
            there += i == 0
                    ? mass * inBase
                    : mass * ofBase * TENTHS.getOrDefault(own.get(i).name(), 0);
        }
        return Ratio.of(
                BigInteger.valueOf(there),
                BigInteger.valueOf(all).multiply(BigInteger.valueOf(ofBase)).multiply(BigInteger.TEN));
    }

    private static long corner(PlannedLine line, int bit) {
        return Math.max(0, line.divisions().numerator().longValueExact() + 2L * bit - 1);
    }

    @Test
    void the_bounds_of_a_verdict_are_every_corner_and_decide() {
        int tried = 0;
        for (int seed = 0; seed < CASES; seed++) {
            SeriesPlan plan = Trials.wayIfAny(series(new Random(seed)), SeriesPlan.Way.FROM_BASE)
                    .orElse(null);
            if (plan == null) {
                continue;
            }
            tried++;
            List<PlannedLine> base = plan.base().orElseThrow().lines();
            for (int j = 0; j < 2; j++) {
                Trial trial = plan.trials().get(j);
                List<PlannedLine> own = trial.plan().lines();
                Ratio least = share(base, 0, own, 0);
                Ratio most = least;
                for (int b = 0; b < 1 << base.size(); b++) {
                    for (int o = 0; o < 1 << own.size(); o++) {
                        Ratio share = share(base, b, own, o);
                        least = least.min(share);
                        most = most.max(share);
                    }
                }
                String about = "seed " + seed + ": " + trial;
                Verdict verdict = verdict(plan, j, most);
                assertThat(verdict.conformity()).as(about).isEqualTo(Conformity.WITHIN);
                assertThat(verdict.lowest().canonical()).as(about).isEqualTo(least);
                assertThat(verdict.highest().orElseThrow().canonical())
                        .as(about)
                        .isEqualTo(most);
                assertThat(verdict.share().canonical()).as(about).isBetween(least, most);
                Ratio little = Ratio.of(1, 1_000_000_000);
                assertThat(verdict(plan, j, most.minus(little)).conformity())
                        .as(about)
                        .isEqualTo(Conformity.NOT_SHOWN_WITHIN);
                assertThat(verdict(plan, j, least).conformity())
                        .as(about)
                        .isEqualTo(least.equals(most) ? Conformity.WITHIN : Conformity.NOT_SHOWN_WITHIN);
                if (least.signum() > 0) {
                    assertThat(verdict(plan, j, least.minus(little)).conformity())
                            .as(about)
                            .isEqualTo(Conformity.EXCEEDS);
                }
                assertThat(verdict.headroom().working().document().toString()).contains("y_hi");
            }
        }
        assertThat(tried).isGreaterThan(CASES / 3);
    }

    private static Verdict verdict(SeriesPlan plan, int trial, Ratio limit) {
        List<LimitReport> all = plan.check(cap(limit));
        assertThat(all).hasSize(plan.trials().size());
        return all.get(trial).verdicts().get(0);
    }

    /** The masses one by one leave a share no less room than is sure, so that a rule by uncertainty is on the safe side, too. */
    @Test
    void the_masses_one_by_one_contain_what_is_sure() {
        SeriesPlan plan = Trials.way(series(new Random(1)), SeriesPlan.Way.FROM_BASE);
        for (Trial trial : plan.trials()) {
            for (Trial.Share share : trial.lines()) {
                var rough = trial.masses().madeShare(share.index());
                assertThat(rough.share()).isEqualTo(share.share());
                assertThat(rough.bounds().contains(share.bounds().least())).isTrue();
                assertThat(rough.bounds().contains(share.bounds().greatest())).isTrue();
            }
            assertThatThrownBy(() -> trial.sureShare(Map.of(0, Ratio.of(-1))))
                    .isInstanceOf(IllegalArgumentException.class);
            assertThatThrownBy(() -> trial.sureShare(Map.of(9, Ratio.ONE)))
                    .isInstanceOf(IndexOutOfBoundsException.class);
        }
    }

    @Test
    void what_was_made_is_checked_by_its_readings() {
        SeriesPlan plan = Trials.way(series(new Random(1)), SeriesPlan.Way.FROM_BASE);
        WeighingPlan first = plan.trials().get(0).plan();
        SeriesReadings series = SeriesReadings.begun(plan)
                .with(Readings.asPlanned(plan.base().orElseThrow()))
                .with(Readings.asPlanned(first));
        Trial made = series.made("version 0");
        for (Trial.Share share : made.lines()) {
            assertThat(share.bounds())
                    .isEqualTo(plan.trials().get(0).lines().get(share.index()).bounds());
        }
        LimitChecker checker = cap(Ratio.of(1, 2));
        assertThat(checker.check(made).verdicts().get(0).highest())
                .isEqualTo(plan.check(checker).get(0).verdicts().get(0).highest());
        assertThatThrownBy(() -> series.made("version 1"))
                .isInstanceOf(IllegalStateException.class)
                .hasMessageContaining("not finished");
    }

    @Test
    void a_version_by_itself_is_checked_as_any_plan_is() {
        SeriesPlan plan = Trials.way(series(new Random(1)), SeriesPlan.Way.FROM_SCRATCH);
        Trial trial = plan.trials().get(0);
        var expected = io.github.formulationmath.plan.ExpectedProduct.of(trial.plan(), WeighingMethod.TARE_EACH);
        LimitChecker checker = cap(Ratio.of(1, 20));
        Verdict own = checker.check(trial).verdicts().get(0);
        Verdict usual = checker.check(expected).verdicts().get(0);
        assertThat(own.highest()).isEqualTo(usual.highest());
        assertThat(own.lowest()).isEqualTo(usual.lowest());
        assertThat(own.conformity()).isEqualTo(usual.conformity());
    }
}
