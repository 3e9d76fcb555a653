package io.github.formulationmath.record;

import static io.github.formulationmath.pot.Lotion.g;
import static io.github.formulationmath.pot.Lotion.line;
import static io.github.formulationmath.record.BatchRecordTest.NOON;
import static org.assertj.core.api.Assertions.assertThat;

import io.github.formulationmath.mend.Correction;
import io.github.formulationmath.mend.CorrectionRules;
import io.github.formulationmath.mend.Obstacle;
import io.github.formulationmath.packing.Filling;
import io.github.formulationmath.packing.PackFill;
import io.github.formulationmath.packing.PriceList.Offer;
import io.github.formulationmath.plan.Tolerances;
import io.github.formulationmath.pot.LineAddition;
import io.github.formulationmath.pot.Lotion;
import io.github.formulationmath.pot.MadeBatch;
import io.github.formulationmath.pot.Reading;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.Density;
import io.github.formulationmath.weighing.Balance;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.junit.jupiter.api.Test;

/** Values are equal if they say the same, and unequal if they differ in anything at all. */
final class RecordValuesTest {

    private static final Balance FINE = Balance.of("0.01 g", "50 g").named("fine");

    private static final List<Supplier<Object>> VALUES = List.of(
            () -> Reading.of(line("Aqua"), "1 g"),
            () -> Reading.of(line("Aqua"), "2 g"),
            () -> Reading.of(line("Glycerin"), "1 g"),
            () -> Reading.of(line("Aqua"), "1 g").at(NOON),
            () -> Reading.of(line("Aqua"), "1 g").on(FINE),
            () -> Reading.leftOut(line("Aqua")),
            () -> Reading.notWrittenDown(line("Aqua")),
            () -> Lotion.tared("1.0"),
            () -> Lotion.tared("2.0"),
            () -> LineAddition.of(line("Aqua"), g("1")),
            () -> LineAddition.of(line("Aqua"), g("2")),
            () -> LineAddition.of(line("Glycerin"), g("1")),
            () -> new Obstacle(Obstacle.Kind.CAP, "x", Optional.empty()),
            () -> new Obstacle(Obstacle.Kind.CAP, "y", Optional.empty()),
            () -> new Obstacle(Obstacle.Kind.STOCK_OUT, "x", Optional.empty()),
            () -> new Obstacle(Obstacle.Kind.STOCK_OUT, "x", Optional.of(g("1"))),
            () -> PackFill.ofMass("1 g"),
            () -> PackFill.ofVolume(Amount.volume("1 mL"), Density.ofGramsPerMillilitre("1")),
            () -> PackFill.ofVolume(Amount.volume("1 mL"), Density.ofGramsPerMillilitre("2")),
            () -> PackFill.ofVolume(Amount.volume("2 mL"), Density.ofGramsPerMillilitre("1")),
            () -> Filling.of(g("10"), g("1"), PackFill.ofMass("1 g")),
            () -> Filling.of(g("11"), g("1"), PackFill.ofMass("1 g")),
            () -> Filling.of(g("10"), g("2"), PackFill.ofMass("1 g")),
            () -> Filling.of(g("10"), g("1"), PackFill.ofMass("2 g")),
            () -> Offer.of("1 EUR", "1 g"),
            () -> Offer.of("2 EUR", "1 g"),
            () -> Offer.of("1 EUR", "2 g"),
            () -> BenchEntry.observation("x"),
            () -> BenchEntry.observation("y"),
            () -> BenchEntry.observation("x").at(NOON),
            () -> BenchEntry.addition(LineAddition.of(line("Aqua"), g("1"))),
            () -> BenchEntry.addition(LineAddition.of(line("Aqua"), g("2"))),
            () -> BenchEntry.addition(LineAddition.of(line("Glycerin"), g("1"))),
            () -> BenchEntry.weighedAgain(g("1"), line("Aqua")),
            () -> Amendment.of("a", NOON, "x"),
            () -> Amendment.of("b", NOON, "x"),
            () -> Amendment.of("a", NOON.plusSeconds(1), "x"),
            () -> Amendment.of("a", NOON, "y"),
            () -> BatchCode.of("A", BatchRecordTest.CODE.day(), 1),
            () -> BatchCode.of("B", BatchRecordTest.CODE.day(), 1),
            () -> BatchCode.of("A", BatchRecordTest.CODE.day().plusDays(1), 1),
            () -> BatchCode.of("A", BatchRecordTest.CODE.day(), 2),
            BatchRecordTest::record,
            () -> BatchRecordTest.record().with(BenchEntry.observation("more")),
            () -> BatchRecordTest.record().filled(g("9"), PackFill.ofMass("50 g")),
            () -> BatchRecordTest.record().amended(Amendment.of("a", NOON.plusSeconds(999), "x")));

    @Test
    void values_are_equal_only_to_what_says_the_same() {
        List<Object> first = new ArrayList<>(VALUES.stream().map(Supplier::get).toList());
        List<Object> second = VALUES.stream().map(Supplier::get).toList();
        for (int i = 0; i < first.size(); i++) {
            for (int j = 0; j < second.size(); j++) {
                assertThat(first.get(i).equals(second.get(j)))
                        .as("%s and %s", first.get(i), second.get(j))
                        .isEqualTo(i == j);
            }
            assertThat(first.get(i)).hasSameHashCodeAs(second.get(i)).isNotEqualTo(null);
            assertThat(first.get(i).toString()).isNotBlank();
        }
    }

    @Test
    void rules_and_results_say_what_they_are() {
        CorrectionRules rules = CorrectionRules.within(Tolerances.of("5 %"))
                .freezing(line("Aqua"))
                .withStock(line("Glycerin"), g("1"))
                .withRoomFor(g("500"));
        assertThat(rules.toString()).contains("frozen", "stock", "room for 500 g");
        assertThat(rules.room()).contains(g("500"));
        MadeBatch made = Lotion.made("316.0", "13.5", "48.0", "20.0", "4.0");
        assertThat(Correction.restoring(made, rules).newMass()).isEqualTo(g("450"));
        assertThat(Correction.restoring(made, rules).obstacles().toString()).contains("LINE_FROZEN Aqua, short by");
        assertThat(made.toString()).contains("as made");
    }
}
