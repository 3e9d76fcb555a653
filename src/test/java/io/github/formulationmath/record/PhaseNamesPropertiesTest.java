package io.github.formulationmath.record;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.plan.Tolerances;
import io.github.formulationmath.support.PhaseSpellings;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;

/** A phase is the same phase in every spelling that is one name, and no other. */
class PhaseNamesPropertiesTest {

    private static Formula formula(String oilPhase) {
        return Formula.inPercent("F")
                .phase("water")
                .quantitySufficient("Aqua")
                .line("Glycerin", "3 %")
                .phase(oilPhase)
                .line("Oil", "12 %")
                .line("Glycerin", "2 %")
                .build();
    }

    @Property(tries = 200)
    void one_phase_in_every_spelling(@ForAll long seed) {
        Random random = new Random(seed);
        Formula first = formula(PhaseSpellings.next(random));
        Formula second = formula(PhaseSpellings.next(random));
        String asked = PhaseSpellings.next(random);
        FormulaLine glycerin = first.line(asked, "Glycerin");
        assertThat(glycerin.position()).isEqualTo(4);
        assertThat(glycerin.isInPhase(asked)).isTrue();
        assertThat(glycerin.isInPhase("water")).isFalse();
        assertThat(VersionComparison.of(first, second).changes()).isEmpty();
        Tolerances tolerances = Tolerances.of("5 %")
                .withPhase(PhaseSpellings.next(random), "4 %")
                .withPhase(asked, "1 %");
        assertThat(tolerances.byPhase()).containsOnlyKeys(asked);
        assertThat(tolerances.forLine(glycerin)).hasToString("1 %");
        assertThat(tolerances.forLine(first.line("water", "Glycerin"))).hasToString("5 %");
    }
}
