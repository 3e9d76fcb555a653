package io.github.formulationmath.limit;

/** What the percentage of a limit is. */
public enum LimitKind {
    /** Highest allowed: exactly the limit is within it. */
    MAXIMUM("max"),
    /** Lowest effective: exactly the limit is enough. */
    MINIMUM("min"),
    /** To be named in the ingredient list when exceeded: exactly the limit need not be named. */
    DECLARE_ABOVE("declare_above"),
    /** A warning is due when exceeded: exactly the limit needs none. */
    WARN_ABOVE("warn_above");

    private final String code;

    LimitKind(String code) {
        this.code = code;
    }

    /**
     * The word for it in a table of limits.
     *
     * @return for example {@code max}
     */
    public String code() {
        return code;
    }

    /**
     * Whether the limit is kept by staying at or below it.
     *
     * @return true for all but the lowest effective share
     */
    public boolean isUpper() {
        return this != MINIMUM;
    }

    /**
     * Whether going beyond it breaks a rule for what is made, not only for what is printed on it.
     *
     * @return true for highest and lowest shares
     */
    public boolean restrictsContents() {
        return this == MAXIMUM || this == MINIMUM;
    }

    /** The end of what is not known that does the most harm. */
    End harmful() {
        return isUpper() ? End.HIGHEST : End.LOWEST;
    }

    /** Which end of what may be, where contents are known only in part. */
    enum End {
        /** What is known alone. */
        LOWEST,
        /** What is known, and all the rest at the greatest content possible. */
        HIGHEST
    }
}
