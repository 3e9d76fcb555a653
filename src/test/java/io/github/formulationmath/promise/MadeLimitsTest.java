package io.github.formulationmath.promise;

import static io.github.formulationmath.pot.Lotion.g;
import static io.github.formulationmath.pot.Lotion.line;
import static org.assertj.core.api.Assertions.assertThat;

import io.github.formulationmath.formula.Substance;
import io.github.formulationmath.limit.Conformity;
import io.github.formulationmath.limit.Verdict;
import io.github.formulationmath.mend.Correction;
import io.github.formulationmath.mend.CorrectionRules;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.plan.Tolerances;
import io.github.formulationmath.pot.Evaporation;
import io.github.formulationmath.pot.Lotion;
import io.github.formulationmath.pot.MadeBatch;
import io.github.formulationmath.quantity.Interval;
import io.github.formulationmath.quantity.MassFraction;
import io.github.formulationmath.support.Checkers;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Phenoxyethanol is capped at 1 % (EU Annex V, entry 29, in the table's snapshot of February 2024); the blend has 90 % of it. */
final class MadeLimitsTest {

    private static Verdict phenoxyethanol(MadeBatch made) {
        List<Verdict> verdicts = Checkers.LEAVE_ON.check(made).verdictsFor("Phenoxyethanol");
        assertThat(verdicts).hasSize(1);
        return verdicts.get(0);
    }

    @Test
    void limits_are_checked_on_what_was_made() {
        assertThat(phenoxyethanol(Lotion.made("316.0", "12.0", "48.0", "20.0", "4.0"))
                        .conformity())
                .isEqualTo(Conformity.WITHIN);
        Verdict exceeded = phenoxyethanol(Lotion.made("316.0", "12.0", "48.0", "20.0", "8.0"));
        assertThat(exceeded.conformity()).isEqualTo(Conformity.EXCEEDS);
        assertThat(exceeded.share().canonical()).isEqualTo(Ratio.parse("7.2").dividedBy(Ratio.of(404)));
        // 4.45 · 0.9/400.4 = 1.0002 %; within one step of the display on either side.
        assertThat(phenoxyethanol(Lotion.made("316.0", "12.0", "48.0", "20.0", "4.4"))
                        .conformity())
                .isEqualTo(Conformity.NOT_SHOWN_WITHIN);
    }

    @Test
    void after_a_correction_the_limit_is_checked_again() {
        MadeBatch made = Lotion.made("316.0", "12.0", "48.0", "20.0", "4.8");
        assertThat(phenoxyethanol(made).conformity()).isNotEqualTo(Conformity.WITHIN);
        Correction correction = Correction.smallest(
                made,
                CorrectionRules.within(Tolerances.of("10 %"))
                        .withCap(Substance.of("Phenoxyethanol"), MassFraction.parse("0.95 %")));
        MadeBatch after = correction.onDisplay().after();
        assertThat(phenoxyethanol(after).conformity()).isEqualTo(Conformity.WITHIN);
    }

    @Test
    void after_evaporation_every_line_is_taken_anywhere_in_its_bounds() {
        MadeBatch made = Lotion.made("316.0", "12.0", "48.0", "20.0", "4.2");
        MadeBatch left = Evaporation.of(made, g("360"), line("Aqua")).notAddedBack();
        Verdict verdict = phenoxyethanol(left);
        assertThat(verdict.conformity()).isEqualTo(Conformity.EXCEEDS);
        Interval<MassFraction> blend = left.line("Preservative blend").shareBounds();
        Ratio strength = Ratio.parse("0.9");
        assertThat(blend.least().fraction().times(strength))
                .isGreaterThanOrEqualTo(verdict.lowest().canonical());
        assertThat(blend.greatest().fraction().times(strength))
                .isLessThanOrEqualTo(verdict.highest().orElseThrow().canonical());
    }
}
