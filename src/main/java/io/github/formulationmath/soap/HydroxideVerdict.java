package io.github.formulationmath.soap;

/**
 * What the arithmetic shows of hydroxide that is left when all has reacted, completely and evenly. Never that a soap is
 * neutral or safe: soap is alkaline, and carbonate counts as free alkali (ISO 684).
 */
public enum HydroxideVerdict {
    /** With every input inside its bounds, none is left. */
    NO_HYDROXIDE_LEFT,
    /** For some values inside the bounds none is left, for others some is; or not every line is declared. */
    NOT_SHOWN,
    /** With every input inside its bounds, some is left: it burns. */
    HYDROXIDE_LEFT
}
