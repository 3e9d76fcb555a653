package io.github.formulationmath.series;

import static io.github.formulationmath.support.Trials.COARSE;
import static io.github.formulationmath.support.Trials.FIVE;
import static io.github.formulationmath.support.Trials.way;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.formulationmath.document.Format;
import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.plan.Bench;
import io.github.formulationmath.plan.Closure;
import io.github.formulationmath.plan.PlannedLine;
import io.github.formulationmath.plan.WeighingPlan;
import io.github.formulationmath.pot.MadeBatch;
import io.github.formulationmath.pot.Reading;
import io.github.formulationmath.pot.Readings;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.weighing.WeighingMethod;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** A series by hand: its ways, its options, what is refused, what is compared afterwards. */
final class TrialSeriesTest {

    private static Amount<javax.measure.quantity.Mass> grams(String number) {
        return Amount.mass(number + " g");
    }

    @Test
    void a_base_makes_five_trials_of_less_than_a_third() {
        TrialSeries series = TrialSeries.of(FIVE, COARSE, "20 g", "5 %");
        assertThat(way(series, SeriesPlan.Way.FROM_SCRATCH).total()).isEqualTo(grams("391.4"));
        SeriesPlan best = series.best().orElseThrow();
        assertThat(best.way()).isEqualTo(SeriesPlan.Way.FROM_BASE);
        assertThat(best.total().compareTo(grams("113"))).isNegative();
        assertThat(best.isLeast()).isTrue();
        assertThat(series.upTo("250 g").best()).contains(best);
        assertThat(best).hasSameHashCodeAs(series.best().orElseThrow());
        assertThat(best.toString()).startsWith("all from one base, ").contains("Plain 22.2 g with 5.9 g of base");
        assertThat(series).hasToString("[Plain, Richer, Rich, Scent, More scent], each of at least 20 g");
    }

    @Test
    void what_is_made_adds_up() {
        SeriesPlan plan = TrialSeries.of(FIVE, COARSE, "20 g", "5 %").best().orElseThrow();
        Ratio readings = plan.base().orElseThrow().total().canonical();
        for (Trial trial : plan.trials()) {
            readings = readings.plus(trial.plan().total().canonical())
                    .minus(trial.portionOfBase().orElseThrow().reading().canonical());
        }
        Ratio needs = plan.needs().values().stream().map(Amount::canonical).reduce(Ratio.ZERO, Ratio::plus);
        assertThat(needs).isEqualTo(readings);
        assertThat(plan.needs().keySet())
                .containsExactlyElementsOf(
                        FIVE.get(0).lines().stream().map(line -> line.name()).toList());
        assertThat(plan.leftOfBase().orElseThrow().signum()).isPositive();
        assertThat(plan.total().working().document().print(Format.TEXT)).contains("S = B + M_1 − b_1");
    }

    @Test
    void every_share_is_inside_its_bounds_and_tells_its_working() {
        SeriesPlan plan = TrialSeries.of(FIVE, COARSE, "20 g", "5 %").best().orElseThrow();
        for (Trial trial : plan.trials()) {
            Ratio sum = Ratio.ZERO;
            for (Trial.Share share : trial.lines()) {
                assertThat(share.bounds().contains(share.share()))
                        .as("%s", share)
                        .isTrue();
                Ratio off =
                        share.share().canonical().minus(share.line().fraction()).abs();
                assertThat(off).isLessThanOrEqualTo(share.line().fraction().times(Ratio.of(5, 100)));
                sum = sum.plus(share.share().canonical());
            }
            assertThat(sum).isEqualTo(Ratio.ONE);
        }
        assertThat(plan.trial("plain")
                        .line("Parfum")
                        .share()
                        .working()
                        .document()
                        .print(Format.TEXT))
                .contains("s_6 = φ_6 · P / T");
        assertThat(plan.trial("Plain").line("Parfum").bounds().greatest())
                .isEqualByComparingTo(
                        plan.trial("Plain").line("Parfum").bounds().greatest());
    }

    @Test
    void what_is_kept_out_is_weighed_into_every_trial() {
        TrialSeries series = TrialSeries.of(FIVE, COARSE, "20 g", "5 %");
        SeriesPlan plan = way(series.withoutInBase("PARFUM"), SeriesPlan.Way.FROM_BASE);
        assertThat(plan.base().orElseThrow().formula().lines()).noneMatch(line -> line.isNamed("Parfum"));
        for (Trial trial : plan.trials()) {
            assertThat(trial.plan().formula().lines()).anyMatch(line -> line.isNamed("Parfum"));
        }
        assertThatThrownBy(() -> series.withoutInBase("Parfume"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("ingredientName is Parfume, which no version has: name it as the formulas do");
    }

    @Test
    void stock_total_vessel_step_and_balance_are_kept() {
        TrialSeries series = TrialSeries.of(FIVE, COARSE, "20 g", "5 %");
        SeriesPlan free = series.best().orElseThrow();
        Amount<javax.measure.quantity.Mass> glycerin = free.needs().get("Glycerin");
        assertThat(series.withStock("glycerin", glycerin).best()).contains(free);
        assertThat(series.upTo("112.9 g").best()).isEmpty();
        assertThat(series.upTo("112.9 g").obstacles().toString()).contains("the least that can be made in all is");
        assertThat(series.withStock("Glycerin", "1 g").obstacles().toString())
                .contains("Glycerin: ", " would be taken, and there is 1 g");
        SeriesPlan spilt = series.withLeftInVessel("3 g").best().orElseThrow();
        assertThat(spilt.leftOfBase().orElseThrow()).isGreaterThanOrEqualTo(grams("3"));
        for (Trial trial : series.inStepsOf("5 g").best().orElseThrow().trials()) {
            assertThat(trial.size().canonical().dividedBy(5).isInteger()).isTrue();
        }
        Balance fine = Balance.of("0.01 g", "200 g").named("fine");
        SeriesPlan two = way(series.withBaseOn(Bench.of(fine)), SeriesPlan.Way.FROM_BASE);
        assertThat(two.base().orElseThrow().bench().balance()).isEqualTo(fine);
        assertThat(two.total()).isLessThanOrEqualTo(free.total());
        SeriesPlan closed =
                way(TrialSeries.of(FIVE, COARSE.closing(Closure.CLOSED), "20 g", "5 %"), SeriesPlan.Way.FROM_BASE);
        assertThat(closed.trials()).allMatch(trial -> trial.plan().closes());
        assertThat(series.by(WeighingMethod.CUMULATIVE).best().orElseThrow().method())
                .isEqualTo(WeighingMethod.CUMULATIVE);
    }

    @Test
    void what_cannot_be_made_is_told_with_its_smallest_line() {
        TrialSeries series = TrialSeries.of(FIVE.subList(0, 2), Bench.of(Balance.of("1 g", "60 g")), "20 g", "1 %");
        assertThat(series.best()).isEmpty();
        assertThat(series.obstacles()).hasSize(2);
        assertThat(series.obstacles().get(0).toString())
                .isEqualTo(
                        "Plain: at no size that the balance and the vessel take do its shares keep their tolerance in"
                                + " steps of 1 g; Parfum is the smallest line. Take a finer balance or a wider tolerance.");
    }

    @Test
    void what_makes_no_series_is_refused() {
        assertThatThrownBy(() -> TrialSeries.of(FIVE.subList(0, 1), COARSE, "20 g", "5 %"))
                .hasMessageStartingWith("versions are 1: a series has 2 to 12 of them");
        assertThatThrownBy(() -> TrialSeries.of(List.of(FIVE.get(0), FIVE.get(0)), COARSE, "20 g", "5 %"))
                .hasMessageStartingWith("versions has two called \"Plain\"");
        assertThatThrownBy(() -> TrialSeries.of(FIVE, COARSE.closing(Closure.QS_TAKES_REST), "20 g", "5 %"))
                .hasMessageStartingWith("bench closes by QS_TAKES_REST");
        assertThatThrownBy(() -> TrialSeries.of(FIVE, COARSE, "0 g", "5 %")).hasMessageStartingWith("least is 0 g");
        assertThatThrownBy(() -> TrialSeries.of(FIVE, COARSE, "20 g", "5 %").by(WeighingMethod.FROM_BOAT))
                .hasMessageStartingWith("method is FROM_BOAT");
        assertThatThrownBy(() -> TrialSeries.of(FIVE, COARSE, "20 g", "5 %")
                        .best()
                        .orElseThrow()
                        .trial("Plan"))
                .hasMessageStartingWith("versionName is \"Plan\", which is none of the versions: they are Plain, ");
    }

    /** Everything as planned, but for some lines that read another number of steps. */
    private static MadeBatch made(WeighingPlan plan, Map<String, Integer> off) {
        List<Reading> readings = new ArrayList<>();
        for (PlannedLine line : plan.lines()) {
            Ratio steps = line.divisions().plus(Ratio.of(off.getOrDefault(line.name(), 0)));
            readings.add(
                    Reading.of(line.line(), plan.bench().balance().readability().times(steps)));
        }
        return MadeBatch.of(Readings.of(plan, WeighingMethod.TARE_EACH, readings));
    }

    @Test
    void afterwards_purpose_and_weighing_are_told_apart() {
        SeriesPlan plan = way(TrialSeries.of(FIVE, COARSE, "60 g", "5 %"), SeriesPlan.Way.FROM_BASE);
        MadeBatch base = made(plan.base().orElseThrow(), Map.of());
        MadeBatch first = made(plan.trial("Plain").plan(), Map.of("Avena Sativa Kernel Oil", 9));
        MadeBatch second = made(plan.trial("Richer").plan(), Map.of());
        SeriesComparison comparison = SeriesComparison.of(plan, List.of(second, base, first));
        List<SeriesComparison.Difference> lines = comparison.between("Plain", "Richer");
        assertThat(lines.stream().map(SeriesComparison.Difference::name).toList())
                .containsExactly(
                        "Aqua",
                        "Glycerin",
                        "Avena Sativa Kernel Oil",
                        "Glyceryl Stearate SE",
                        "Phenoxyethanol",
                        "Parfum");
        assertThat(lines.get(1).finding()).isEqualTo(SeriesComparison.Finding.SHOWN);
        assertThat(lines.get(1).onPurpose().exactValue()).isEqualTo(Ratio.of(2));
        assertThat(lines.get(2).finding()).isEqualTo(SeriesComparison.Finding.BY_WEIGHING);
        assertThat(lines.get(2).byWeighing().signum()).isNegative();
        assertThat(lines.get(2).toString())
                .startsWith("Avena Sativa Kernel Oil: alike on purpose, but weighed differently");
        assertThat(lines.get(5).finding()).isEqualTo(SeriesComparison.Finding.ALIKE);
        for (SeriesComparison.Difference line : lines) {
            assertThat(line.made().minus(line.onPurpose())).isEqualByComparingTo(line.byWeighing());
            assertThat(line.bounds().contains(line.made())).isTrue();
        }
        // told from the other side everything is the other way round
        List<SeriesComparison.Difference> back = comparison.between("Richer", "Plain");
        assertThat(back.get(1).bounds().least())
                .isEqualByComparingTo(lines.get(1).bounds().greatest().unaryMinus());
        assertThat(new HashSet<>(SeriesComparison.of(plan).between("Plain", "Plain").stream()
                        .map(SeriesComparison.Difference::finding)
                        .toList()))
                .containsExactly(SeriesComparison.Finding.ALIKE);
    }

    @Test
    void a_wrong_way_and_a_hidden_difference_are_told() {
        Formula a = Formula.inPercent("A")
                .quantitySufficient("Aqua")
                .line("Glycerin", "10 %")
                .build();
        Formula b = Formula.inPercent("B")
                .quantitySufficient("Aqua")
                .line("Glycerin", "10.2 %")
                .build();
        Formula c = Formula.inPercent("C")
                .quantitySufficient("Aqua")
                .line("Glycerin", "20 %")
                .line("Xanthan Gum", "5 %")
                .build();
        TrialSeries series = TrialSeries.of(List.of(a, b, c), Bench.of(Balance.of("1 g", "600 g")), "100 g", "5 %");
        SeriesPlan plan = way(series, SeriesPlan.Way.FROM_SCRATCH);
        SeriesComparison planned = SeriesComparison.of(plan);
        assertThat(planned.between("A", "B").get(1).finding()).isEqualTo(SeriesComparison.Finding.NOT_SHOWN);
        SeriesComparison.Difference added = planned.between("A", "C").get(2);
        assertThat(added.name()).isEqualTo("Xanthan Gum");
        assertThat(added.phase()).isEqualTo("A");
        assertThat(added.finding()).isEqualTo(SeriesComparison.Finding.SHOWN);
        assertThat(planned.between("C", "A").get(2).onPurpose().exactValue()).isEqualTo(Ratio.of(-5));
        MadeBatch much = made(plan.trial("A").plan(), Map.of("Glycerin", 15));
        MadeBatch little = made(plan.trial("C").plan(), Map.of("Glycerin", -8));
        assertThat(SeriesComparison.of(plan, List.of(much, little))
                        .between("A", "C")
                        .get(1)
                        .finding())
                .isEqualTo(SeriesComparison.Finding.OPPOSITE);
    }

    @Test
    void what_was_not_made_after_the_series_is_not_compared() {
        SeriesPlan plan = TrialSeries.of(FIVE, COARSE, "20 g", "5 %").best().orElseThrow();
        MadeBatch base = made(plan.base().orElseThrow(), Map.of());
        MadeBatch first = made(plan.trial("Plain").plan(), Map.of());
        MadeBatch second = made(plan.trial("Richer").plan(), Map.of());
        assertThatThrownBy(() -> SeriesComparison.of(plan, List.of(first, second)))
                .hasMessageContaining("but not the base: add the batch that was made after plan.base()");
        assertThatThrownBy(() -> SeriesComparison.of(plan, List.of(base, first)))
                .hasMessage("made has 1 trials of this series: two are needed to compare them");
        assertThatThrownBy(() -> SeriesComparison.of(plan, List.of(base, first, first, second)))
                .hasMessage("made has Plain twice: say which of the two is to be compared");
        MadeBatch other =
                made(WeighingPlan.of(plan.trial("Plain").plan().batch(), COARSE.closing(Closure.CLOSED)), Map.of());
        assertThatThrownBy(() -> SeriesComparison.of(plan, List.of(base, first, second, other)))
                .hasMessageContaining("of which only 3 were made after a plan of this series");
        SeriesComparison two = SeriesComparison.of(plan, List.of(base, first, second));
        assertThat(two).hasToString("comparison of [Plain, Richer]");
        assertThatThrownBy(() -> two.between("Plain", "Scent"))
                .hasMessage("second is \"Scent\", of which no batch was given: add what was made of it");
    }
}
