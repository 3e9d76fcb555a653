package io.github.formulationmath.solution;

import io.github.formulationmath.chemistry.MolarMass;
import io.github.formulationmath.chemistry.MolecularFormula;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.number.Rounding;
import io.github.formulationmath.quantity.Interval;
import io.github.formulationmath.quantity.MassConcentration;
import io.github.formulationmath.reckoning.Source;

/** What several tests of acids need. */
final class Acids {

    static final MolarMass ACETIC = mass("C2H4O2");
    static final MolarMass ACETATE = mass("C2H3NaO2");
    static final MolarMass NAOH = mass("NaOH");

    private Acids() {}

    static MolarMass mass(String formula) {
        return MolarMass.of(MolecularFormula.parse(formula));
    }

    static AcidConstants acid(String... pks) {
        return AcidConstants.at25Celsius("acid", Source.published("test", ""), exact(pks));
    }

    static AcidConstants ammonium(String... pks) {
        return AcidConstants.ofBaseAt25Celsius("base", Source.published("test", ""), exact(pks));
    }

    private static String[] exact(String... pks) {
        String[] pairs = new String[2 * pks.length];
        for (int i = 0; i < pks.length; i++) {
            pairs[2 * i] = pks[i];
            pairs[2 * i + 1] = "0";
        }
        return pairs;
    }

    static ChargeBalance water(String pkw) {
        return ChargeBalance.of(acid(pkw));
    }

    static MassConcentration moles(Ratio perLitre, MolarMass of) {
        return MassConcentration.ofGramsPerMillilitre(
                perLitre.times(of.gramsPerMole()).dividedBy(1000));
    }

    static MassConcentration moles(String perLitre, MolarMass of) {
        return moles(Ratio.parse(perLitre), of);
    }

    /** Both ends to so many places, which must be the same. */
    static String both(Interval<Ph> ph, int places) {
        Rounding rounding = Rounding.toDecimalPlaces(places);
        String least = rounding.format(ph.least().value());
        String greatest = rounding.format(ph.greatest().value());
        return least.equals(greatest) ? least : least + " to " + greatest;
    }
}
