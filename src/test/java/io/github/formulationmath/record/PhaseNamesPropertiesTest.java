package io.github.formulationmath.record;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.plan.Tolerances;
import java.text.Normalizer;
import java.util.Locale;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;

/** A phase is the same phase in every spelling that is one name, and no other. */
class PhaseNamesPropertiesTest {

    private static final String OIL = "Ph\u00e9-oil phase";

    /** Letter case, Unicode form, what is not seen, and the kind of space: drawn here, forgiven there. */
    private static String spelt(Random random) {
        String text = random.nextBoolean() ? OIL : Normalizer.normalize(OIL, Normalizer.Form.NFD);
        text = random.nextBoolean() ? text.toUpperCase(Locale.ROOT) : text;
        text = text.replace(" ", random.nextBoolean() ? " " : "\u00a0 ");
        text = text.replace("-", random.nextBoolean() ? "-" : "\u2011");
        return (random.nextBoolean() ? "" : "\u200b") + text + (random.nextBoolean() ? "" : " ");
    }

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
        Formula first = formula(spelt(random));
        Formula second = formula(spelt(random));
        String asked = spelt(random);
        FormulaLine glycerin = first.line(asked, "Glycerin");
        assertThat(glycerin.position()).isEqualTo(4);
        assertThat(glycerin.isInPhase(asked)).isTrue();
        assertThat(glycerin.isInPhase("water")).isFalse();
        assertThat(VersionComparison.of(first, second).changes()).isEmpty();
        Tolerances tolerances =
                Tolerances.of("5 %").withPhase(spelt(random), "4 %").withPhase(asked, "1 %");
        assertThat(tolerances.byPhase()).containsOnlyKeys(asked);
        assertThat(tolerances.forLine(glycerin)).hasToString("1 %");
        assertThat(tolerances.forLine(first.line("water", "Glycerin"))).hasToString("5 %");
    }
}
