package io.github.formulationmath.analysis;

import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.soap.Alkali;
import java.util.List;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Volume;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** What no reading can be is refused, with what would help. */
@DisplayName("Titrations that cannot be")
class TitrationRefusalsTest {

    private static final Titrant ACID = Titrant.of("HCl", "0.5 N", "1.0023");
    private static final Estimate<Mass> FAT = Estimate.mass("2 g");

    private static Estimate<Volume> mL(String number) {
        return Estimate.volume(number + " mL");
    }

    private static void refused(ThrowingCallable call, String... parts) {
        assertThatIllegalArgumentException().isThrownBy(call).withMessageContainingAll(parts);
    }

    @Test
    void numbers_without_unit() {
        refused(() -> Estimate.volume("5.2"), "5.2");
        refused(() -> Estimate.mass("1.8976"), "1.8976");
        refused(() -> mL("5.2").standard("0.02"), "0.02");
        refused(() -> mL("5.2").standard("0.02 g"), "0.02 g", "measure different things", "mL");
        refused(() -> Titrant.of("HCl", "0.5", "1"), "\"0.5\"", "mol/L", "\"0.1 mol/L\"");
        refused(() -> Titration.of(ACID, mL("1")).acidValue(FAT).expanded("0.95"), "0.95", "\"95 %\"");
    }

    @Test
    void a_solution_without_factor() {
        refused(() -> Titrant.of("HCl", "0.5 N", " "), "factor of HCl is missing", "standardise");
        refused(() -> Titrant.of("HCl", "0.5 N", "5.61"), "factor of HCl is 5.61", "near 1");
        refused(() -> Titrant.of(" ", "0.5 N", "1"), "name is blank");
        refused(() -> Titrant.of("HCl", "0 N", "1"), "concentration is 0 N", "above 0");
        refused(() -> ACID.standard("-0.001"), "factor of HCl", "-0.001", "at least 0");
    }

    @Test
    void negative_volumes_and_no_mass() {
        refused(() -> Titration.of(ACID, mL("-0.1")), "volume of titrant for the sample", "-0.1 mL", "at least 0");
        refused(() -> Titration.of(ACID, mL("1")).acidValue(Estimate.mass("0 g")), "mass of the sample", "0 g");
        refused(() -> mL("1").rectangular("-0.1 mL"), "halfWidth", "-0.1 mL", "at least 0");
        refused(() -> mL("1").standard("0.1 mL", "0.5"), "degreesOfFreedom is 0.5", "at least 1");
        refused(() -> Estimate.ofReadings(List.of(Amount.volume("1 mL"))), "two or more", "standard(…)");
    }

    @Test
    void blank_and_sample_exchanged() {
        refused(
                () -> BackTitration.of(ACID, mL("18.95"), mL("25.60")),
                "volume for the blank is 18.95 mL",
                "25.6 mL for the sample",
                "exchanged",
                "Titration");
        refused(() -> Titration.of(ACID, mL("0.1"), mL("5.2")), "5.2 mL for the solvent", "exchanged", "BackTitration");
        refused(
                () -> BackTitration.of(ACID, mL("5"), mL("5")).saponificationEquivalent(FAT),
                "consumed nothing",
                "no saponification equivalent");
    }

    @Test
    void acids_above_all_that_saponifies() {
        refused(
                () -> BackTitration.of(ACID, mL("25"), mL("24")).esterValue(FAT, Titration.of(ACID, mL("9")), FAT),
                "ester value is -",
                "mg KOH/g",
                "same fat");
    }

    @Test
    void end_points_that_no_lye_has() {
        refused(
                () -> LyeAssay.of(Alkali.SODIUM_HYDROXIDE, ACID, mL("24"), mL("0.4"), FAT),
                "volume for methyl orange is 0.4 mL",
                "24 mL for phenolphthalein",
                "add the two");
        refused(
                () -> LyeAssay.of(Alkali.SODIUM_HYDROXIDE, ACID, mL("10"), mL("20.1"), FAT),
                "20.1 mL",
                "more than twice",
                "hydrogen carbonate");
    }

    @Test
    void an_uncertainty_of_nothing() {
        refused(() -> Titration.of(ACID, mL("5.2")).acidValue(FAT).expanded("95 %"), "uncertainty is 0", "standard(…)");
        refused(() -> Titration.of(ACID, mL("5.2")).acidValue(FAT).expanded("100 %"), "100 %", "between 0 and 100 %");
    }

    @Test
    void one_solution_with_two_uncertainties() {
        Titrant once = Titrant.of("HCl", "0.5 N", "1").standard("0.001");
        Titrant again = Titrant.of("HCl", "0.5 N", "1").standard("0.002");
        refused(
                () -> BackTitration.of(once, mL("25"), mL("11")).esterValue(FAT, Titration.of(again, mL("1")), FAT),
                "f(HCl)",
                "another name");
    }
}
