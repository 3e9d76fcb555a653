package io.github.formulationmath.verification;

import io.github.formulationmath.chemistry.MolarMass;
import io.github.formulationmath.chemistry.MolecularFormula;
import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.formula.Substance;
import io.github.formulationmath.number.Ratio;
import java.util.Collections;
import java.util.List;
import java.util.stream.Stream;

/**
 * The mass of the one alkali shown for the other. The molar masses are exact, or as rounded in common tables. The names are
 * those on labels and bottles (common practice, no published source); lye by itself may be either.
 */
final class AlkaliExchanged {

    private static final Substance SODIUM = Substance.of("Sodium Hydroxide")
            .withCas("1310-73-2")
            .withSynonyms("NaOH", "Sodium Hydroxide (NaOH)", "Caustic Soda", "Soda Lye", "Sodium Lye");
    private static final Substance POTASSIUM = Substance.of("Potassium Hydroxide")
            .withCas("1310-58-3")
            .withSynonyms("KOH", "Potassium Hydroxide (KOH)", "Caustic Potash", "Potash Lye", "Potassium Lye");
    private static final Substance EITHER = Substance.of("Lye");

    private AlkaliExchanged() {}

    static Stream<Hypothesis> ways(Shown shown) {
        return shown.suspects().stream().flatMap(wrong -> of(shown, wrong.formulaLine()));
    }

    private static Stream<Hypothesis> of(Shown shown, FormulaLine line) {
        boolean either = contains(line, EITHER);
        boolean sodium = contains(line, SODIUM) || either;
        boolean potassium = contains(line, POTASSIUM) || either;
        return sodium == potassium && !either
                ? Stream.empty()
                : potassiumPerSodium()
                        .flatMap(factor -> Stream.concat(
                                sodium ? exchanged(shown, line, "NaOH → KOH", factor) : Stream.empty(),
                                potassium
                                        ? exchanged(shown, line, "KOH → NaOH", Ratio.ONE.dividedBy(factor))
                                        : Stream.empty()));
    }

    private static Stream<Hypothesis> exchanged(Shown shown, FormulaLine line, String detail, Ratio factor) {
        return Hypothesis.changed(shown, detail, List.of(line), any -> factor);
    }

    private static Stream<Ratio> potassiumPerSodium() {
        Ratio exact = molarMass("KOH").dividedBy(molarMass("NaOH"));
        return Stream.of(exact, Ratio.of(5611, 4000), Ratio.of(561, 400), Ratio.of(56, 40));
    }

    private static Ratio molarMass(String formula) {
        return MolarMass.of(MolecularFormula.parse(formula)).gramsPerMole();
    }

    /** In the material, or as the name of the material itself. */
    private static boolean contains(FormulaLine line, Substance alkali) {
        return Stream.concat(Stream.of(Substance.of(line.name())), line.ingredient().parts().keySet().stream())
                .anyMatch(written -> !Collections.disjoint(written.keys(), alkali.keys()));
    }
}
