package io.github.formulationmath.verification;

import io.github.formulationmath.chemistry.MolarMass;
import io.github.formulationmath.chemistry.MolecularFormula;
import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.formula.Substance;
import io.github.formulationmath.number.Ratio;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** The mass of the one alkali shown for the other. The molar masses are exact, or as rounded in common tables. */
final class AlkaliExchanged implements SlipModel {

    private static final Substance SODIUM = Substance.of("Sodium Hydroxide");
    private static final Substance POTASSIUM = Substance.of("Potassium Hydroxide");

    @Override
    public Stream<Hypothesis> figures(Claim claim, List<Ratio> right) {
        return claim.formula().lines().stream().flatMap(line -> of(claim.formula(), line, right));
    }

    private static Stream<Hypothesis> of(Formula formula, FormulaLine line, List<Ratio> right) {
        boolean sodium = contains(formula, line, SODIUM);
        if (sodium == contains(formula, line, POTASSIUM)) {
            return Stream.empty();
        }
        return potassiumPerSodium().map(factor -> {
            List<Ratio> grams = new ArrayList<>(right);
            Ratio mass = right.get(line.position() - 1);
            grams.set(line.position() - 1, sodium ? mass.times(factor) : mass.dividedBy(factor));
            return Hypothesis.of(Slip.ALKALI_EXCHANGED, sodium ? "NaOH → KOH" : "KOH → NaOH", grams);
        });
    }

    private static Stream<Ratio> potassiumPerSodium() {
        Ratio exact = molarMass("KOH").dividedBy(molarMass("NaOH"));
        return Stream.of(exact, Ratio.of(5611, 4000), Ratio.of(561, 400), Ratio.of(56, 40));
    }

    private static Ratio molarMass(String formula) {
        return MolarMass.of(MolecularFormula.parse(formula)).gramsPerMole();
    }

    private static boolean contains(Formula formula, FormulaLine line, Substance substance) {
        return formula.substances()
                .find(substance)
                .filter(one -> !one.strengthIn(line.ingredient()).isZero())
                .isPresent();
    }
}
