package io.github.formulationmath.chemistry;

import static io.github.formulationmath.support.WorkingAssertions.assertSelfChecking;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.number.Rounding;
import io.github.formulationmath.reference.ReferenceTable;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.openscience.cdk.interfaces.IMolecularFormula;
import org.openscience.cdk.silent.SilentChemObjectBuilder;
import org.openscience.cdk.tools.manipulator.MolecularFormulaManipulator;

/**
 * Molar masses and factors "as acid" against the Chemistry Development Kit 2.9, a general-purpose chemistry library with
 * its own table of isotopes and natural abundances, and against the derived factors of shared/reference.
 */
class MolarMassReferenceTest {

    /** Two editions of the atomic weights, and abundances instead of weights: they differ by parts in ten thousand. */
    private static final double EDITIONS = 3e-4;

    static Stream<String> formulasOfTheBundledTable() {
        List<ReferenceTable.Row> rows = ReferenceTable.read("shared/limits/eu-1223-2009-2024-02-substances.csv")
                .rows();
        return rows.stream()
                .map(row -> row.text("molecular_formula"))
                .filter(text -> !text.isEmpty())
                .distinct();
    }

    @ParameterizedTest
    @MethodSource("formulasOfTheBundledTable")
    void every_formula_of_the_bundled_table_has_the_molar_mass_of_the_chemistry_library(String text) {
        MolarMass ours = MolarMass.of(MolecularFormula.parse(text));
        double theirs = 0;
        for (String part : text.split("·")) {
            String atoms = part.replaceFirst("^[0-9.]+", "");
            String times = part.substring(0, part.length() - atoms.length());
            IMolecularFormula formula =
                    MolecularFormulaManipulator.getMolecularFormula(atoms, SilentChemObjectBuilder.getInstance());
            theirs += (times.isEmpty() ? 1 : Double.parseDouble(times))
                    * MolecularFormulaManipulator.getMass(formula, MolecularFormulaManipulator.MolWeight);
        }
        assertThat(ours.gramsPerMole().doubleValue()).isCloseTo(theirs, within(theirs * EDITIONS));
    }

    static List<ReferenceTable.Row> factors() {
        return ReferenceTable.read("shared/reference/as-acid-factors.csv").rows();
    }

    /** Derived from QUAM example A2 and IUPAC 2007, see the head of the table; half a unit of the last digit. */
    @ParameterizedTest
    @MethodSource("factors")
    void factors_as_acid_agree_to_all_digits_of_the_reference_table(ReferenceTable.Row row) {
        GravimetricFactor factor = GravimetricFactor.of(
                MolecularFormula.parse(row.text("formula")), MolecularFormula.parse(row.text("acid_formula")));
        assertPrinted(factor.substance().gramsPerMole(), row.text("molar_mass"));
        assertPrinted(factor.reference().gramsPerMole(), row.text("acid_molar_mass"));
        assertPrinted(factor.factor(), row.text("factor"));
        assertPrinted(
                factor.fromReference(Ratio.parse(row.text("limit_as_acid_percent"))),
                row.text("limit_as_salt_percent"));
        assertSelfChecking(factor);
    }

    /** Food Additives Data Book, p. 732: sorbic acid 112.13 g/mol. */
    @Test
    void sorbic_acid_has_its_handbook_molar_mass() {
        assertPrinted(MolarMass.of(MolecularFormula.parse("C6H8O2")).gramsPerMole(), "112.13");
    }

    @Test
    void all_elements_but_those_without_a_standard_weight_are_there() {
        assertThat(Set.of("H", "C", "N", "O", "Na", "K", "Ag", "Hg"))
                .allSatisfy(element -> assertThat(
                                AtomicMasses.iupac2007().massOf(element).signum())
                        .isPositive());
    }

    private static void assertPrinted(Ratio value, String printed) {
        int places = printed.length() - printed.indexOf('.') - 1;
        assertThat(Rounding.toDecimalPlaces(places).format(value)).isEqualTo(printed);
    }
}
