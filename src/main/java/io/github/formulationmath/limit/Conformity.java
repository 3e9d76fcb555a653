package io.github.formulationmath.limit;

/** What a decision rule says of a share and a limit. Ordered from the best to the worst. */
public enum Conformity {
    /** Shown to keep the limit. */
    WITHIN,
    /** It cannot be said: a figure is missing. */
    NOT_ASSESSABLE,
    /** May keep the limit or not; the weighing is too uncertain to show that it does. */
    NOT_SHOWN_WITHIN,
    /** Below a lowest effective share. */
    FALLS_SHORT,
    /** Above a highest share, or above the share from which something has to be declared. */
    EXCEEDS,
    /** The entry allows the substance in other products only. */
    PROHIBITED;

    /**
     * The key of the words for it in the wording.
     *
     * @return the key
     */
    String key() {
        return "verdict." + name().toLowerCase(java.util.Locale.ROOT).replace('_', '-');
    }
}
