package io.github.formulationmath.pot;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowable;

import io.github.formulationmath.batch.Batch;
import io.github.formulationmath.batch.BatchSize;
import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.plan.WeighingPlan;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.weighing.Balance;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Readings as they are typed: names with digits and commas, and every mistake told at once. */
class TypedReadingsTest {

    private static final Formula FORMULA = Formula.inPercent("Lotion")
            .quantitySufficient("Aqua")
            .line("1,2-Hexanediol", "2 %")
            .line("PEG-40 Hydrogenated Castor Oil", "1 %")
            .line("CI 77891", "0.5 %")
            .line("Aqua Lavandula", "10 %")
            .build();

    private static final WeighingPlan PLAN =
            WeighingPlan.of(Batch.of(FORMULA, BatchSize.ofMass("200 g")), Balance.of("0.1 g", "500 g"));

    @Test
    void names_may_have_digits_commas_and_other_names_in_them() {
        Readings read = Readings.parse(
                PLAN,
                "aqua 173 g; 1,2-Hexanediol: 4.0 g\nPEG-40 hydrogenated castor oil 2.1 g\r\n; CI 77891  1 g;Aqua Lavandula 20.0 g;");
        assertThat(read.isOpen()).isFalse();
        assertThat(read.taken().stream().map(each -> each.shown().orElseThrow()))
                .containsExactly(
                        Amount.mass("173 g"),
                        Amount.mass("4 g"),
                        Amount.mass("2.1 g"),
                        Amount.mass("1 g"),
                        Amount.mass("20 g"));
        assertThat(read)
                .isEqualTo(
                        Readings.of(PLAN, io.github.formulationmath.weighing.WeighingMethod.TARE_EACH, read.taken()));
    }

    @Test
    void what_is_not_typed_is_still_to_come() {
        Readings read = Readings.parse(PLAN, "Aqua 173 g");
        assertThat(read.isOpen()).isTrue();
        assertThat(read.toCome()).hasSize(4);
        assertThat(Readings.parse(PLAN, "Aqua 1 3/5 oz".replace("1 3/5 oz", "8 7/10 g"))
                        .taken())
                .containsExactly(Reading.of(FORMULA.line("Aqua"), "8.7 g"));
    }

    /** What a plan prints of its readings is read again. */
    @Test
    void a_plan_is_typed_as_it_prints() {
        String printed =
                String.join("; ", PLAN.lines().stream().map(Object::toString).toList());
        assertThat(Readings.parse(PLAN, printed)).isEqualTo(Readings.asPlanned(PLAN));
    }

    @Test
    void every_mistake_is_told_with_what_was_typed() {
        assertThatThrownBy(() -> Readings.parse(
                        PLAN,
                        "Aqua 173; Hexanediol 4 g; CI 77891; CI 77891 1.05 g; Aqua Lavandula 20 mL; Aqua 900 g;"
                                + " PEG-40 Hydrogenated Castor Oil 2 g; 3 g"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageStartingWith("7 of the readings are wrong: ")
                .hasMessageContaining("\"Aqua 173\": ", "the unit is missing")
                .hasMessageContaining("\"Hexanediol 4 g\": ")
                .hasMessageContaining("no line for Hexanediol")
                .hasMessageContaining("\"CI 77891\": ")
                .hasMessageContaining("\"CI 77891 1.05 g\": shown is 1.05 g")
                .hasMessageContaining("\"Aqua Lavandula 20 mL\": ")
                .hasMessageContaining("\"Aqua 900 g\": ")
                .hasMessageContaining("more than the balance carries (")
                .hasMessageContaining("\"3 g\": ");
        assertThatThrownBy(() -> Readings.parse(PLAN, " ;\n ")).hasMessageContaining("text is blank");
        assertThatThrownBy(() -> Readings.parse(PLAN, "Aqua 173 g; Aqua 2 g"))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void very_long_texts_are_refused_quickly_and_shortly() {
        String many = "Aqua x; ".repeat(20_000) + "1".repeat(50_000) + " g; " + "a ".repeat(100_000);
        Throwable refused = catchThrowable(() -> Readings.parse(PLAN, many));
        assertThat(refused).isInstanceOf(IllegalArgumentException.class);
        assertThat(refused.getMessage()).hasSizeLessThan(6_000);
        assertThatCode(() -> Readings.parse(PLAN, List.of("Aqua 173 g").get(0))).doesNotThrowAnyException();
    }
}
