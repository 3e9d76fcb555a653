package io.github.formulationmath.emulsion;

import io.github.formulationmath.number.Ratio;

/**
 * Groups that like water, with the number that Davies gave each (J. T. Davies, Proc. 2nd Int. Congress of Surface Activity, London
 * 1957; read in two encyclopedias that quote it, which differ in one digit, see {@link #SULFATE_SODIUM}). Oxyethylene and oxypropylene
 * are left out: their numbers were not read anywhere.
 */
public enum DaviesGroup {
    /** −SO₄Na: 38.7; one copy prints 38.6, with which sodium lauryl sulfate would have 39.9 instead of the 40 that it is said to have. */
    SULFATE_SODIUM("38.7"),
    /** −COOK. */
    CARBOXYLATE_POTASSIUM("21.1"),
    /** −COONa. */
    CARBOXYLATE_SODIUM("19.1"),
    /** N of a tertiary amine. */
    TERTIARY_AMINE("9.4"),
    /** Ester on a sorbitan ring. */
    ESTER_ON_SORBITAN("6.8"),
    /** Free ester. */
    ESTER("2.4"),
    /** −COOH. */
    CARBOXYL("2.1"),
    /** Free −OH. */
    HYDROXYL("1.9"),
    /** −O−. */
    ETHER("1.3"),
    /** −OH on a sorbitan ring. */
    HYDROXYL_ON_SORBITAN("0.5");

    private final Ratio number;

    DaviesGroup(String number) {
        this.number = Ratio.parse(number);
    }

    Ratio number() {
        return number;
    }
}
