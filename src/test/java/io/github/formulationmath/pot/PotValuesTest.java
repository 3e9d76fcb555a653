package io.github.formulationmath.pot;

import static io.github.formulationmath.pot.Lotion.g;
import static io.github.formulationmath.pot.Lotion.line;
import static org.assertj.core.api.Assertions.assertThat;

import io.github.formulationmath.support.ValueContract;
import io.github.formulationmath.weighing.Balance;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Readings and additions are equal if they say the same, and unequal if they differ in anything at all. */
final class PotValuesTest implements ValueContract<Object> {

    private static final Balance FINE = Balance.of("0.01 g", "50 g").named("fine");

    private static final Instant NOON = Instant.parse("2025-05-02T12:00:00Z");

    @Override
    public List<Object> different() {
        return List.of(
                Reading.of(line("Aqua"), "1 g"),
                Reading.of(line("Aqua"), "2 g"),
                Reading.of(line("Glycerin"), "1 g"),
                Reading.leftOut(line("Aqua")),
                Reading.notWrittenDown(line("Aqua")),
                Lotion.tared("1.0"),
                Lotion.tared("2.0"),
                LineAddition.of(line("Aqua"), g("1")),
                LineAddition.of(line("Aqua"), g("2")),
                LineAddition.of(line("Glycerin"), g("1")));
    }

    @Override
    public List<Object> same() {
        return different();
    }

    /** When and on which balance is not in the text of a reading, but in the reading. */
    @Test
    void a_time_and_a_balance_tell_readings_apart() {
        Reading bare = Reading.of(line("Aqua"), "1 g");
        assertThat(bare.at(NOON)).isNotEqualTo(bare).isEqualTo(bare.at(NOON));
        assertThat(bare.on(FINE)).isNotEqualTo(bare).isEqualTo(bare.on(FINE)).isNotEqualTo(bare.at(NOON));
    }
}
