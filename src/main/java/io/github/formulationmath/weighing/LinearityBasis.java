package io.github.formulationmath.weighing;

/**
 * Of what a stated linearity is: of one indication, or of a net reading, which is the difference of two indications.
 *
 * <p>Example: ±0.15 mg of an indication are up to 0.30 mg in a net reading, and 2 · 0.15²/3 mg² in its variance; ±0.15 mg
 * of a net reading are 0.15 mg, and 0.15²/3 mg².
 *
 * <p>Source: EURACHEM/CITAC Guide CG 4 (QUAM:2012), example A2: the linearity of the data sheet is counted twice, once for
 * the tare and once for the gross mass.
 */
public enum LinearityBasis {
    /** Of each indication: what the balance shows for what rests on it. Data sheets mean this as a rule. */
    INDICATION,
    /** Of a reading that counts from a tare: what the display shows of an addition alone. */
    NET_READING
}
