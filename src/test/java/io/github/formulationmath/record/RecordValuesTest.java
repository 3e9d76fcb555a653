package io.github.formulationmath.record;

import static io.github.formulationmath.pot.Lotion.g;
import static io.github.formulationmath.pot.Lotion.line;
import static io.github.formulationmath.record.BatchRecordTest.NOON;
import static org.assertj.core.api.Assertions.assertThat;

import io.github.formulationmath.packing.PackFill;
import io.github.formulationmath.pot.LineAddition;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import org.junit.jupiter.api.Test;

/** Values are equal if they say the same, and unequal if they differ in anything at all. */
final class RecordValuesTest {

    private static final List<Supplier<Object>> VALUES = List.of(
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
}
