package io.github.formulationmath.soap;

/** Which ends of the ranges an amount of alkali is reckoned with. */
public enum Reckoned {
    /**
     * The middle of every range, as recipes usually are: about the shortfall asked for, and for one lot in the range much less
     * of it.
     */
    WITH_THE_MIDDLES,
    /** The ends that leave most hydroxide: the shortfall is at least the one asked for, whatever the lot. */
    FOR_EVERY_LOT
}
