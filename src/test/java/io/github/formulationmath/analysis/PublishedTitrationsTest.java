package io.github.formulationmath.analysis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.formulationmath.chemistry.AtomicMasses;
import io.github.formulationmath.chemistry.MolarMass;
import io.github.formulationmath.chemistry.MolecularFormula;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.number.Rounding;
import io.github.formulationmath.reckoning.Explained;
import io.github.formulationmath.reckoning.Source;
import io.github.formulationmath.soap.Alkali;
import io.github.formulationmath.soap.AlkaliGrade;
import io.github.formulationmath.soap.AlkaliNumber;
import io.github.formulationmath.soap.Evidence;
import java.math.RoundingMode;
import java.util.Map;
import javax.measure.quantity.Mass;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/**
 * Titrations that were published, and what was printed of them. W. H. Simmons and H. A. Appleton, The Handbook of Soap Manufacture,
 * 1908, cut their results off where a reader expects them rounded; that is told beside each.
 */
@DisplayName("Titrations as published")
class PublishedTitrationsTest {

    private static final MolecularFormula OLEIC = MolecularFormula.parse("C18H34O2");

    /** The weights of the book: C 12, H 1, O 16, so that oleic acid has 282. */
    private static final MolarMass OLEIC_OF_1908 = MolarMass.of(
            OLEIC,
            AtomicMasses.of(
                    Source.published("Simmons and Appleton 1908", "chapter II"),
                    Map.of("C", Ratio.of(12), "H", Ratio.of(1), "O", Ratio.of(16))));

    private static final Estimate<Mass> FAT = Estimate.mass("1.8976 g");
    private static final Titration ACIDS = Titration.of(Titrant.of("KOH", "0.1 N", "1"), Estimate.volume("5.2 mL"));
    private static final BackTitration SAPONIFIED =
            BackTitration.of(Titrant.of("HCl", "1 N", "1"), Estimate.volume("25.6 mL"), Estimate.volume("18.95 mL"));

    private static String rounded(Explained value, Ratio unit, int places, RoundingMode mode) {
        return Rounding.toDecimalPlaces(places)
                .with(mode)
                .format(value.origin().number().dividedBy(unit));
    }

    private static String percent(Explained value, int places, RoundingMode mode) {
        return rounded(value, Ratio.of(1, 100), places, mode);
    }

    private static String milligrams(Explained value, int places, RoundingMode mode) {
        return rounded(value, Ratio.of(1, 1000), places, mode);
    }

    @Test
    void free_acids_of_1908_are_cut_off_and_not_rounded() {
        var then = ACIDS.freeFattyAcids(FAT, OLEIC_OF_1908);
        assertThat(percent(then, 4, RoundingMode.HALF_EVEN)).isEqualTo("7.7277");
        assertThat(percent(then, 2, RoundingMode.DOWN)).as("as printed").isEqualTo("7.72");
        assertThat(percent(then, 2, RoundingMode.HALF_EVEN)).isEqualTo("7.73");

        var now = ACIDS.freeFattyAcids(FAT, MolarMass.of(OLEIC));
        assertThat(percent(now, 4, RoundingMode.HALF_EVEN)).isEqualTo("7.7403");
    }

    @Test
    void acid_value_of_1908_is_cut_off_and_not_rounded() {
        var value = ACIDS.acidValue(FAT);
        assertThat(milligrams(value, 4, RoundingMode.HALF_EVEN)).isEqualTo("15.3746");
        assertThat(milligrams(value, 1, RoundingMode.DOWN)).as("as printed").isEqualTo("15.3");
        assertThat(milligrams(value, 1, RoundingMode.HALF_EVEN)).isEqualTo("15.4");
    }

    @Test
    void saponification_equivalent_of_1908_is_cut_off_and_not_rounded() {
        var value = SAPONIFIED.saponificationEquivalent(FAT);
        assertThat(rounded(value, Ratio.ONE, 3, RoundingMode.HALF_EVEN)).isEqualTo("285.353");
        assertThat(rounded(value, Ratio.ONE, 1, RoundingMode.DOWN))
                .as("as printed")
                .isEqualTo("285.3");
        assertThat(rounded(value, Ratio.ONE, 1, RoundingMode.HALF_EVEN)).isEqualTo("285.4");
    }

    /** Here 56.1 for 56.10564 moves the third decimal and the printed digit stands either way. */
    @Test
    void saponification_value_of_1908() {
        var value = SAPONIFIED.saponificationValue(FAT);
        assertThat(milligrams(value, 3, RoundingMode.HALF_EVEN)).isEqualTo("196.618");
        assertThat(milligrams(value, 1, RoundingMode.HALF_EVEN))
                .as("as printed")
                .isEqualTo("196.6");
    }

    /** 196.618 − 15.375: of the same fat, the book gives both and not their difference. */
    @Test
    void ester_value_is_what_the_free_acids_leave() {
        var value = SAPONIFIED.esterValue(FAT, ACIDS, FAT);
        assertThat(milligrams(value, 3, RoundingMode.HALF_EVEN)).isEqualTo("181.243");
    }

    /**
     * A school exercise (ques10.com, "Find the saponification value of an oil sample 1.5g"): 25 and 15 mL of 0.5 N acid, printed 186.67.
     * It reckons with 56 for KOH; with 56.10564 it is 187.02, so that the two digits behind the point are none.
     */
    @Test
    void school_exercise_with_a_rounded_molar_mass() {
        var value = BackTitration.of(
                        Titrant.of("HCl", "0.5 N", "1"), Estimate.volume("25 mL"), Estimate.volume("15 mL"))
                .saponificationValue(Estimate.mass("1.5 g"));
        assertThat(milligrams(value, 2, RoundingMode.HALF_EVEN)).isEqualTo("187.02");
        Ratio with56 = value.origin().number().times(56).dividedBy(Ratio.parse("56.10564"));
        assertThat(Rounding.toDecimalPlaces(2).format(with56.times(1000)))
                .as("as printed")
                .isEqualTo("186.67");
    }

    /**
     * Potassium hydroxide, USP 28 to 35: each mL of 1 N acid is 56.11 mg of total alkali as KOH, each mL of it in the step of methyl orange
     * 138.2 mg of K2CO3. Of a gram they are 5.611 % and 13.82 %.
     */
    @Test
    void pharmacopoeial_factors_of_potassium_hydroxide() {
        LyeAssay assay = LyeAssay.of(
                Alkali.POTASSIUM_HYDROXIDE,
                Titrant.of("HCl", "1 N", "1"),
                Estimate.volume("2 mL"),
                Estimate.volume("3 mL"),
                Estimate.mass("1 g"));
        assertThat(percent(assay.totalAlkali(), 3, RoundingMode.HALF_EVEN)).isEqualTo("16.832");
        assertThat(Rounding.toSignificantDigits(4)
                        .format(assay.totalAlkali()
                                .origin()
                                .number()
                                .times(1000)
                                .dividedBy(3)))
                .isEqualTo("56.11");
        assertThat(Rounding.toSignificantDigits(4)
                        .format(assay.carbonate().origin().number().times(1000)))
                .isEqualTo("138.2");
        assertThat(Rounding.toSignificantDigits(4)
                        .format(assay.hydroxide().origin().number().times(1000)))
                .as("the first step less the second, 1 mL")
                .isEqualTo("56.11");
    }

    /** Total alkali counts the carbonate at k = 2 M(KOH)/M(K2CO3), so that the three shares hang together. */
    @Test
    void total_alkali_is_hydroxide_and_what_the_carbonate_counts_as() {
        LyeAssay assay = LyeAssay.of(
                Alkali.SODIUM_HYDROXIDE,
                Titrant.of("HCl", "1 N", "0.9987"),
                Estimate.volume("24.35 mL"),
                Estimate.volume("24.60 mL"),
                Estimate.mass("1.0012 g"));
        Ratio k = Alkali.SODIUM_HYDROXIDE
                .molarMass()
                .gramsPerMole()
                .times(2)
                .dividedBy(Alkali.SODIUM_HYDROXIDE.carbonateMolarMass().gramsPerMole());
        assertThat(assay.hydroxide()
                        .value()
                        .fraction()
                        .plus(k.times(assay.carbonate().value().fraction())))
                .isEqualTo(assay.totalAlkali().value().fraction());
    }

    /** By hand, with k = 1.959964: 96.15234 ± 0.38276 % and 2.64309 ± 0.58611 %. */
    @Test
    void an_assay_is_a_grade_within_its_coverage() {
        AlkaliGrade grade = LyeAssay.of(
                        Alkali.SODIUM_HYDROXIDE,
                        Titrant.of("HCl", "1 N", "0.9987").standard("0.0008"),
                        Estimate.volume("24.35 mL").standard("0.02 mL"),
                        Estimate.volume("24.60 mL").standard("0.02 mL"),
                        Estimate.mass("1.0012 g").standard("0.0002 g"))
                .grade(AlkaliGrade.Form.SOLID, "95 %", Source.user());
        assertThat(grade.evidence()).isEqualTo(Evidence.COVERAGE_INTERVAL);
        assertThat(grade.hydroxide()).hasToString("[95.7695 %, 96.5351 %]");
        assertThat(grade.carbonate()).hasToString("[2.0569 %, 3.2293 %]");
    }

    /** 126.90447 · 0.1 · 10 / 1000 g of iodine in half a gram: the customary 12.69 for 0.1 N and 100 g. */
    @Test
    void iodine_value_counts_one_atom_to_a_thiosulfate() {
        var value = BackTitration.of(
                        Titrant.of("Na2S2O3", "0.1 mol/L", "1"), Estimate.volume("40 mL"), Estimate.volume("30 mL"))
                .iodineValue(Estimate.mass("0.5 g"));
        assertThat(value.value()).hasToString("25.380894 g I2/100 g");
    }

    @Test
    void every_value_shows_its_working() {
        for (Explained value : new Explained[] {
            ACIDS.acidValue(FAT),
            ACIDS.freeFattyAcids(FAT, MolarMass.of(OLEIC)).value(),
            ACIDS.freeAlkali(FAT, Alkali.SODIUM_HYDROXIDE),
            SAPONIFIED.saponificationValue(FAT),
            SAPONIFIED.saponificationEquivalent(FAT),
            SAPONIFIED.esterValue(FAT, ACIDS, FAT),
            SAPONIFIED.iodineValue(FAT)
        }) {
            value.working().check();
            assertThat(value.working().toString()).contains("mass of the sample");
        }
        assertThat(ACIDS.acidValue(FAT).value())
                .isEqualTo(AlkaliNumber.parse(
                        ACIDS.acidValue(FAT).origin().number().times(1000) + " mg KOH/g"));
    }

    /**
     * JCGM 100:2008, G.4.1, example: a product of three inputs known to 0.25, 0.57 and 0.82 % from 10, 5 and 15 observations. Printed: 1.03 %,
     * 19.0 degrees of freedom, t(19) = 2.09, U = 2.2 %. Without rounding in between it is 18.9987 degrees, so that one who cuts
     * to the whole number below has t(18) = 2.10; U stays 2.2 %.
     */
    @Test
    void guide_example_of_a_product_of_three_inputs() {
        var titrant = Titrant.of("KOH", "1 N", "1").standard("0.0082", "14");
        var value = Titration.of(titrant, Estimate.volume("10 mL").standard("0.025 mL", "9"))
                .acidValue(Estimate.mass("10 g").standard("0.057 g", "4"));
        Ratio relative = value.budget()
                .variance()
                .sqrt(12)
                .dividedBy(value.origin().number().times(1000));
        Ratio degrees = value.budget().effectiveDegreesOfFreedom().orElseThrow();
        assertThat(Rounding.toDecimalPlaces(2).format(relative.times(100)))
                .as("as printed")
                .isEqualTo("1.03");
        assertThat(Rounding.toDecimalPlaces(4).format(degrees)).isEqualTo("18.9987");
        assertThat(Rounding.toDecimalPlaces(1).format(degrees)).as("as printed").isEqualTo("19.0");
        Ratio k = value.expanded("95 %").coverageFactor().factor();
        assertThat(Rounding.toDecimalPlaces(2).format(k)).isEqualTo("2.10");
        assertThat(Rounding.toDecimalPlaces(1).format(k.times(relative).times(100)))
                .as("as printed")
                .isEqualTo("2.2");
    }

    /**
     * JCGM 100:2008, H.1.6, end gauge: 25, 9.7, 2.9 and 16.6 nm with 18, 25.6, 50 and 2 degrees of freedom. Printed: 32 nm, 16.7 degrees, cut
     * to 16, t(16) = 2.92, U = 93 nm. One volume with these four sources has the same, in mL; 16.76 degrees, of which the guide prints 16.7.
     */
    @Test
    void guide_example_of_the_end_gauge() {
        var volume = Estimate.volume("1000 mL")
                .standard("25 mL", "18")
                .standard("9.7 mL", "25.6")
                .standard("2.9 mL", "50")
                .standard("16.6 mL", "2");
        var value = Titration.of(Titrant.of("KOH", "1 N", "1"), volume).acidValue(Estimate.mass("1 g"));
        Ratio each =
                value.origin().number(); // in g/g; its budget is in mg/g, so that the quotient is u of a litre in mL
        Ratio u = value.budget().variance().sqrt(12).dividedBy(each);
        assertThat(Rounding.toDecimalPlaces(0).format(u)).as("as printed").isEqualTo("32");
        Ratio degrees = value.budget().effectiveDegreesOfFreedom().orElseThrow();
        assertThat(Rounding.toDecimalPlaces(2).format(degrees)).isEqualTo("16.76");
        assertThat(Rounding.toDecimalPlaces(1).with(RoundingMode.DOWN).format(degrees))
                .as("as printed")
                .isEqualTo("16.7");
        Ratio k = value.expanded("99 %").coverageFactor().factor();
        assertThat(Rounding.toDecimalPlaces(2).format(k)).as("as printed").isEqualTo("2.92");
        assertThat(Rounding.toDecimalPlaces(0).with(RoundingMode.UP).format(k.times(u)))
                .as("as printed")
                .isEqualTo("93");
    }

    /** A share above the whole is a slip of the bench; what is said of it is of readings, and not of densities. */
    @Test
    void more_than_there_is_names_the_readings() {
        LyeAssay assay = LyeAssay.of(
                Alkali.SODIUM_HYDROXIDE,
                Titrant.of("HCl", "1 mol/L", "1"),
                Estimate.volume("50 mL"),
                Estimate.volume("50.2 mL"),
                Estimate.mass("1 g"));
        assertThatThrownBy(assay::hydroxide)
                .hasMessage(
                        "the readings make 199.186 %, more than there is: look for a slip in the mass of the sample, the"
                                + " factor, the nominal concentration or the volumes");
    }
}
