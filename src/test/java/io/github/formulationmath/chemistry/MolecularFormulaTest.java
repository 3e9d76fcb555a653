package io.github.formulationmath.chemistry;

import static io.github.formulationmath.support.WorkingAssertions.assertSelfChecking;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatNullPointerException;

import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.reckoning.Source;
import java.util.Map;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.LongRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class MolecularFormulaTest {

    @Test
    void a_plain_formula_counts_its_atoms() {
        MolecularFormula benzoate = MolecularFormula.parse("C7H5NaO2");
        assertThat(benzoate.counts())
                .containsExactlyInAnyOrderEntriesOf(
                        Map.of("C", Ratio.of(7), "H", Ratio.of(5), "Na", Ratio.ONE, "O", Ratio.of(2)));
        assertThat(benzoate.count("K")).isEmpty();
        assertThat(benzoate).hasToString("C7H5NaO2");
    }

    @ParameterizedTest
    @CsvSource({
        "CuSO4.5H2O, CuSO9H10",
        "CuSO4·5H2O, CuSO9H10",
        "Ca(C7H5O2)2, C14H10CaO4",
        "Al2(SO4)3·18H2O, Al2S3O30H36",
        "Fe4(Fe(CN)6)3, Fe7C18N18",
        "CH3COOH, C2H4O2",
        "NaCl·KCl, NaKCl2"
    })
    void brackets_and_hydrates_are_worked_out(String text, String sameAtoms) {
        assertThat(MolecularFormula.parse(text))
                .isEqualTo(MolecularFormula.parse(sameAtoms))
                .hasSameHashCodeAs(MolecularFormula.parse(sameAtoms));
    }

    @Test
    void a_hemihydrate_has_half_a_water() {
        MolecularFormula plaster = MolecularFormula.parse("CaSO4.0.5H2O");
        assertThat(plaster).isEqualTo(MolecularFormula.parse("CaSO4·0.5H2O"));
        assertThat(plaster.count("O")).contains(Ratio.of(9, 2));
        assertThat(plaster.count("H")).contains(Ratio.ONE);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                " ",
                "c7h6o2",
                "C7H6O2·",
                "·H2O",
                "C7(H6",
                "C7H6)O2",
                "()",
                "C0",
                "H-O",
                "Xyz",
                "C٧",
                "NaCl+",
                "C1234567",
                "C..O",
                "2"
            })
    void what_is_no_formula_is_refused_with_the_place(String text) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> MolecularFormula.parse(text))
                .withMessageContaining("molecular formula");
    }

    @Test
    void hostile_texts_are_refused_at_once() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> MolecularFormula.parse("(".repeat(1_000_000)))
                .withMessageContaining("at most 500");
        assertThatIllegalArgumentException().isThrownBy(() -> MolecularFormula.parse("(".repeat(400)));
        assertThatNullPointerException()
                .isThrownBy(() -> MolecularFormula.parse(null))
                .withMessage("text");
    }

    @Test
    void an_unknown_element_is_named() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> MolarMass.of(MolecularFormula.parse("C7H5Xx")))
                .withMessageContaining("\"Xx\"");
    }

    /** 7 · 12.0107 + 6 · 1.00794 + 2 · 15.9994, by hand. */
    @Test
    void the_molar_mass_of_benzoic_acid_is_the_example_of_the_class() {
        MolarMass benzoic = MolarMass.of(MolecularFormula.parse("C7H6O2"));
        assertThat(benzoic.gramsPerMole()).isEqualTo(Ratio.parse("122.12134"));
        assertThat(benzoic).hasToString("C7H6O2: 122.12134 g/mol").isEqualTo(MolarMass.of(benzoic.formula()));
        assertSelfChecking(benzoic);
    }

    /** Magnesium benzoate carries two of the acid; all equivalents are counted. */
    @Test
    void a_salt_of_two_acids_counts_twice() {
        GravimetricFactor factor = GravimetricFactor.of(
                MolarMass.of(MolecularFormula.parse("Mg(C7H5O2)2")),
                MolarMass.of(MolecularFormula.parse("C7H6O2")),
                Ratio.of(2));
        assertThat(factor.factor()).isEqualTo(Ratio.parse("244.24268").dividedBy(Ratio.parse("266.5318")));
        assertThat(factor.units()).isEqualTo(Ratio.of(2));
        assertSelfChecking(factor);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> GravimetricFactor.of(factor.substance(), factor.reference(), Ratio.ZERO));
    }

    @Test
    void other_atomic_masses_may_be_given() {
        AtomicMasses rough = AtomicMasses.of(Source.user(), Map.of("H", Ratio.ONE, "O", Ratio.of(16)));
        MolarMass water = MolarMass.of(MolecularFormula.parse("H2O"), rough);
        assertThat(water.gramsPerMole()).isEqualTo(Ratio.of(18));
        assertThat(rough).isEqualTo(AtomicMasses.of(Source.user(), Map.of("O", Ratio.of(16), "H", Ratio.ONE)));
        assertThatIllegalArgumentException().isThrownBy(() -> AtomicMasses.of(Source.user(), Map.of()));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> AtomicMasses.of(Source.user(), Map.of("H", Ratio.ZERO)))
                .withMessageContaining("above 0");
    }

    @Property
    void a_share_goes_to_the_reference_and_back_exactly(
            @ForAll @LongRange(min = 0, max = 1_000_000_000L) long numerator,
            @ForAll @LongRange(min = 1, max = 1_000_000_000L) long denominator) {
        GravimetricFactor factor =
                GravimetricFactor.of(MolecularFormula.parse("C6H7KO2"), MolecularFormula.parse("C6H8O2"));
        Ratio share = Ratio.of(numerator, denominator);
        assertThat(factor.fromReference(factor.toReference(share))).isEqualTo(share);
        assertThat(factor.toReference(factor.fromReference(share))).isEqualTo(share);
    }
}
