package io.github.formulationmath.plan;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.reckoning.Phrase;
import io.github.formulationmath.reckoning.Reckoning;
import io.github.formulationmath.reckoning.Working;
import io.github.formulationmath.support.RandomFormulas;
import io.github.formulationmath.support.WorkingParts;
import io.github.formulationmath.weighing.Balance;
import java.util.List;
import javax.measure.quantity.Mass;
import org.junit.jupiter.api.Test;

/** Three equal lines on a display of 1 g: 8 g are 2.67 g each, which read 3 g, 9 g in all; 7 g read 6 g. */
class PlannedLoadTest {

    private static final Formula THREE = RandomFormulas.formula(1, 1, 1);
    private static final Bench BENCH = Bench.of(Balance.of("1 g", "2 kg"));
    private static final PlannedLoad LOAD = PlannedLoad.of(THREE, BENCH);
    private static final Amount<Mass> ROOM = Amount.mass("8 g");

    private static Ratio most(PlannedLoad load, String room) {
        return load.most(Reckoning.plain(), Amount.mass(room).canonical());
    }

    private static Working shown(String batch) {
        return Working.of(
                Phrase.of("question.least-capacity"),
                r -> LOAD.shown(r, r.literal(ROOM.canonical()), Amount.mass(batch)));
    }

    private static List<String> decisions(Working working) {
        return WorkingParts.decisions(working).stream()
                .map(each -> each.left().value() + " " + each.comparison().sign() + " "
                        + each.right().value() + " " + each.holds())
                .toList();
    }

    @Test
    void a_batch_loads_its_mass_or_its_readings_whichever_is_more() {
        assertThat(LOAD.forBatch(Amount.mass("8 g"))).isEqualTo(Amount.mass("9 g"));
        assertThat(LOAD.forBatch(Amount.mass("7 g"))).isEqualTo(Amount.mass("7 g"));
    }

    @Test
    void a_load_of_exactly_the_room_is_allowed_and_nothing_above() {
        assertThat(LOAD.allows(Amount.mass("9 g"), Amount.mass("8 g"))).isTrue();
        assertThat(LOAD.allows(Amount.mass("8.999 g"), Amount.mass("8 g"))).isFalse();
        assertThat(LOAD.allows(Amount.mass("7 g"), Amount.mass("7 g"))).isTrue();
        assertThat(LOAD.allows(Amount.mass("7 g"), Amount.mass("7.001 g"))).isFalse();
    }

    @Test
    void the_largest_batch_is_the_room_or_the_largest_whole_number_of_steps_whose_readings_fit() {
        assertThat(most(LOAD, "9 g")).isEqualTo(Ratio.of(9));
        assertThat(most(LOAD, "8 g")).isEqualTo(Ratio.of(7));
        assertThat(most(new PlannedLoad(THREE, List.of(BENCH), Amount.mass("2 g")), "8 g"))
                .isEqualTo(Ratio.of(6));
        assertThat(most(new PlannedLoad(THREE, List.of(BENCH), Amount.mass("100 g")), "8 g"))
                .isEqualTo(Ratio.ZERO);
    }

    @Test
    void the_largest_whole_number_is_shown_to_fit_and_the_next_not_to() {
        Working working = shown("7 g");
        assertThat(working.answer().value()).isEqualTo(Ratio.of(7));
        assertThat(decisions(working)).containsExactly("7 ≤ 8 true", "9 > 8 true");
    }

    @Test
    void a_batch_between_two_whole_numbers_is_shown_to_fit() {
        Working working = shown("7.4 g");
        assertThat(working.answer().value()).isEqualTo(Ratio.of(37, 5));
        assertThat(decisions(working)).containsExactly("7.4 ≤ 8 true");
    }
}
