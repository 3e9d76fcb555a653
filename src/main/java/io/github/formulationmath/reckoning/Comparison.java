package io.github.formulationmath.reckoning;

import io.github.formulationmath.number.Ratio;

/** The relations between two numbers that decide something. */
public enum Comparison {
    /** a &lt; b. */
    LESS("<"),
    /** a ≤ b. */
    AT_MOST("≤"),
    /** a = b. */
    EQUAL("="),
    /** a ≥ b. */
    AT_LEAST("≥"),
    /** a &gt; b. */
    GREATER(">");

    private final String sign;

    Comparison(String sign) {
        this.sign = sign;
    }

    /**
     * The sign as printed.
     *
     * @return one character
     */
    public String sign() {
        return sign;
    }

    /**
     * Whether the relation holds.
     *
     * @param left the number on the left
     * @param right the number on the right
     * @return true if it holds, decided exactly
     */
    public boolean holds(Ratio left, Ratio right) {
        int order = left.compareTo(right);
        return switch (this) {
            case LESS -> order < 0;
            case AT_MOST -> order <= 0;
            case EQUAL -> order == 0;
            case AT_LEAST -> order >= 0;
            case GREATER -> order > 0;
        };
    }
}
