package io.github.formulationmath.verification;

import java.util.Locale;

/** The known slips of bench calculations. Each is computed by a class of its own from the same planning code. */
public enum Slip {
    /** Shares of a phase taken of that phase instead of the whole batch. */
    WRONG_WHOLE,
    /** Parts read as percent. */
    PARTS_AS_PERCENT,
    /** Millilitres read as grams, as if everything had the density of 1 g/mL. */
    MILLILITRES_AS_GRAMS,
    /** One ounce taken for another: avoirdupois, troy, or a fluid ounce of water. */
    OUNCE_EXCHANGED,
    /** The US fluid ounce taken for the imperial one, or the other way round. */
    FLUID_OUNCE_EXCHANGED,
    /** Rounded to a finer step first, and the outcome rounded again. */
    ROUNDED_TWICE,
    /** Cut off instead of rounded. */
    TRUNCATED,
    /** The overage left out. */
    OVERAGE_LEFT_OUT,
    /** The overage added twice. */
    OVERAGE_TWICE,
    /** The q.s. line not adjusted to the other lines: it has what belongs to one of them, to a phase, or to all. */
    REST_NOT_ADJUSTED,
    /** The strength of a supplied solution ignored. */
    STRENGTH_IGNORED,
    /** Sodium hydroxide and potassium hydroxide exchanged. */
    ALKALI_EXCHANGED,
    /** A density used upside down. */
    DENSITY_INVERTED,
    /** The share of one line taken of the mass of a phase it is not in. */
    OTHER_PHASE,
    /** The decimal point of one figure moved by one place. */
    DECIMAL_POINT_MOVED,
    /** Two neighbouring digits of one figure exchanged. */
    DIGITS_EXCHANGED;

    /** The key of its name in the wording. */
    String key() {
        return "slip." + name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
