package io.github.formulationmath.record;

import static io.github.formulationmath.pot.Lotion.g;
import static io.github.formulationmath.pot.Lotion.line;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.packing.PackFill;
import io.github.formulationmath.plan.ToleranceVerdict;
import io.github.formulationmath.plan.Tolerances;
import io.github.formulationmath.pot.LineAddition;
import io.github.formulationmath.pot.Lotion;
import io.github.formulationmath.pot.Reading;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.support.ValueContract;
import io.github.formulationmath.support.WorkingAssertions;
import java.time.Instant;
import java.time.LocalDate;
import org.junit.jupiter.api.Test;

public final class BatchRecordTest {

    public static final Instant NOON = Instant.parse("2026-11-25T12:00:00Z");
    public static final BatchCode CODE = BatchCode.of("OATLOT", LocalDate.of(2026, 11, 25), 1);

    public static BatchRecord record() {
        return BatchRecord.of(
                        CODE,
                        Lotion.tared("316.0", "12.3", "48.0", "20.0", "4.0"),
                        Tolerances.of("5 %").withLine("Glycerin", "2.0 %"))
                .with(BenchEntry.observation("Smooth; thickened at 45 °C.").at(NOON))
                .with(BenchEntry.weighedAgain(g("391.2"), line("Aqua")).at(NOON.plusSeconds(60)))
                .with(BenchEntry.addition(LineAddition.of(line("Aqua"), g("9.1")))
                        .at(NOON.plusSeconds(120)))
                .filled(g("8"), PackFill.ofMass("50 g"));
    }

    @Test
    void a_record_tells_what_was_made() {
        BatchRecord record = record();
        assertThat(record.madeAtFirst().mass()).isEqualTo(g("400.3"));
        assertThat(record.made().mass()).isEqualTo(g("400.3"));
        assertThat(record.made().line("Aqua").mass()).isEqualTo(g("316"));
        assertThat(record.filling().orElseThrow().fullPacks()).isEqualTo(7);
        assertThat(record.filling().orElseThrow().lastPack()).isEqualTo(g("42.3"));
        assertThat(record.deviations().get(1).verdict()).isEqualTo(ToleranceVerdict.OUTSIDE_AS_READ);
        WorkingAssertions.assertSelfChecking(record.made());
        record.deviations().forEach(WorkingAssertions::assertSelfChecking);
    }

    @Test
    void a_record_goes_forward() {
        BatchRecord record = record();
        assertThatThrownBy(() -> record.with(BenchEntry.observation("earlier").at(NOON)))
                .hasMessageContaining("before what precedes it (2026-11-25T12:02:00Z)");
        assertThatThrownBy(() -> record.amended(Amendment.of("the maker", NOON, "earlier")))
                .hasMessageContaining("an amendment has the time");
        Reading.of(line("Aqua"), "1 g").at(NOON);
        assertThatThrownBy(() -> record.with(BenchEntry.addition(LineAddition.of(line("Aqua"), g("0.05")))))
                .hasMessageContaining("no multiple of the step");
        assertThatThrownBy(() -> record.with(BenchEntry.weighedAgain(g("500"), line("Aqua"))))
                .hasMessageContaining("was the vessel weighed with it");
        Formula other = Formula.inPercent("Other").line("Talc", "100 %").build();
        assertThatThrownBy(() -> record.with(BenchEntry.addition(LineAddition.of(other.line("Talc"), g("1")))))
                .hasMessageContaining("Talc");
    }

    @Test
    void the_first_amendment_closes_it() {
        BatchRecord open = record();
        BatchRecord closed =
                open.amended(Amendment.of("the maker", NOON.plusSeconds(600), "The oil was of another lot."));
        assertThat(open.amendments()).isEmpty();
        assertThat(closed.amendments()).hasSize(1);
        assertThat(closed).isNotEqualTo(open);
        assertThatThrownBy(() -> closed.with(BenchEntry.observation("too late")))
                .isInstanceOf(IllegalStateException.class)
                .hasMessageContaining("another amendment");
        assertThatThrownBy(() -> closed.filled(g("1"), PackFill.ofMass("1 g")))
                .isInstanceOf(IllegalStateException.class);
        assertThatThrownBy(() -> Amendment.of(" ", NOON, "x")).hasMessageContaining("who is blank");
        assertThatThrownBy(() -> Amendment.of("me", NOON, "x".repeat(10_001))).hasMessageContaining("10001");
    }

    @Test
    void a_hundred_thousand_amendments_are_kept() throws Exception {
        BatchRecord record = record();
        for (int i = 0; i < 100_000; i++) {
            record = record.amended(Amendment.of("the maker", NOON.plusSeconds(600 + i), "amendment " + i));
        }
        assertThat(record.amendments()).hasSize(100_000);
        assertThat(record.amendments().get(99_999).text()).isEqualTo("amendment 99999");
        assertThat(ValueContract.copy(record)).isEqualTo(record).hasSameHashCodeAs(record);
    }

    @Test
    void versions_and_batches_are_compared_line_by_line() {
        Formula next = Formula.inPercent("Oat lotion, second version")
                .phase("water")
                .quantitySufficient("Aqua")
                .line("Glycerin", "3.5 %")
                .phase("oil")
                .line("Avena Sativa Kernel Oil", "12.0 %")
                .phase("cool-down")
                .line(Lotion.PRESERVATIVE, "1 %")
                .line("Tocopherol", "0.2 %")
                .build();
        VersionComparison comparison = VersionComparison.of(Lotion.FORMULA, next);
        assertThat(comparison.lines()).hasSize(6);
        assertThat(comparison.changes())
                .extracting(VersionComparison.LineDifference::name, VersionComparison.LineDifference::change)
                .containsExactly(
                        org.assertj.core.groups.Tuple.tuple("Aqua", VersionComparison.LineDifference.Change.CHANGED),
                        org.assertj.core.groups.Tuple.tuple(
                                "Glycerin", VersionComparison.LineDifference.Change.CHANGED),
                        org.assertj.core.groups.Tuple.tuple(
                                "Glyceryl Stearate SE", VersionComparison.LineDifference.Change.REMOVED),
                        org.assertj.core.groups.Tuple.tuple(
                                "Tocopherol", VersionComparison.LineDifference.Change.ADDED));
        assertThat(comparison.lines().stream()
                        .map(line -> line.difference().canonical())
                        .reduce(Ratio.ZERO, Ratio::plus))
                .isEqualTo(Ratio.ZERO);
        comparison.lines().forEach(WorkingAssertions::assertSelfChecking);
        assertThat(comparison.changes().get(1).difference())
                .isEqualTo(Amount.percent(Ratio.parse("0.005").times(100)));
        BatchRecord record = record();
        assertThat(VersionComparison.of(record, record).changes()).isEmpty();
        assertThat(VersionComparison.of(record.madeAtFirst(), record.made()).changes())
                .isEmpty();
    }
}
