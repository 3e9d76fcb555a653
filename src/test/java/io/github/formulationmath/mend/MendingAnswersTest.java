package io.github.formulationmath.mend;

import static io.github.formulationmath.pot.Lotion.g;
import static io.github.formulationmath.pot.Lotion.line;
import static org.assertj.core.api.Assertions.assertThat;

import io.github.formulationmath.plan.Tolerances;
import io.github.formulationmath.pot.Lotion;
import io.github.formulationmath.pot.MadeBatch;
import org.junit.jupiter.api.Test;

/** What rules and corrections say of themselves. */
final class MendingAnswersTest {

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
