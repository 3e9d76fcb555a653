package io.github.formulationmath.verification;

import io.github.formulationmath.chemistry.MolarMass;
import io.github.formulationmath.chemistry.MolecularFormula;
import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.number.Ratio;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/** The mass of the one alkali shown for the other. The molar masses are exact, or as rounded in common tables. */
final class AlkaliExchanged implements SlipModel {

    private static final String SODIUM = "sodium hydroxide";
    private static final String POTASSIUM = "potassium hydroxide";

    @Override
    public Stream<Hypothesis> figures(Claim claim, List<Ratio> right) {
        return claim.formula().lines().stream().flatMap(line -> of(line, right));
    }

    private static Stream<Hypothesis> of(FormulaLine line, List<Ratio> right) {
        boolean sodium = contains(line, SODIUM);
        if (sodium == contains(line, POTASSIUM)) {
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

    private static boolean contains(FormulaLine line, String substance) {
        return line.ingredient().parts().keySet().stream()
                .anyMatch(part -> part.name().toLowerCase(Locale.ROOT).equals(substance));
    }
}
