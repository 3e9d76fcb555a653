package io.github.formulationmath.reckoning;

/**
 * What sort of quantity a number in a working is. Numbers are kept in one canonical unit per kind; the reader's choice
 * of units is made when the working is printed, for all numbers of a kind at once.
 */
public enum Kind {
    /** A mass; kept in grams. */
    MASS("g"),
    /** A volume; kept in millilitres. */
    VOLUME("mL"),
    /** Mass per volume; kept in grams per millilitre. */
    DENSITY("g/mL"),
    /** A mass fraction, tolerance or other share of a whole; kept as a plain fraction, shown in percent. */
    SHARE("%"),
    /** A difference of two shares of one whole; kept as a plain fraction, shown in percentage points, pp. */
    SHARE_DIFFERENCE("pp"),
    /** A plain number: a count, a number of divisions, a factor. */
    NUMBER(""),
    /** The square of a mass, as variances of masses are; kept in grams squared. */
    MASS_SQUARED("g²"),
    /** A molar mass; kept in grams per mole. */
    MOLAR_MASS("g/mol"),
    /** An amount of substance; kept in moles. */
    SUBSTANCE("mol"),
    /** Alkali taken up per mass of fat, as KOH; kept as grams per gram, shown in mg KOH/g. */
    ALKALI_NUMBER("mg KOH/g"),
    /** Iodine taken up per mass of fat; kept as grams per gram, shown in g I2/100 g. */
    IODINE_NUMBER("g I2/100 g"),
    /** An amount of substance per volume; kept in moles per millilitre, shown in mol/L. */
    SUBSTANCE_CONCENTRATION("mol/L"),
    /** An amount of money in whatever currency the caller uses. */
    MONEY(""),
    /** Money per mass; kept per gram. */
    MONEY_PER_MASS("/g"),
    /** A temperature; kept in degrees Celsius. */
    TEMPERATURE("°C");

    private final String canonicalUnit;

    Kind(String canonicalUnit) {
        this.canonicalUnit = canonicalUnit;
    }

    /**
     * The text of the unit in which numbers of this kind are shown unless the reader asks for another.
     *
     * @return the unit as printed after the number, empty for plain numbers
     */
    public String canonicalUnit() {
        return canonicalUnit;
    }
}
