package io.github.formulationmath.working;

/** Writes one formula in one format, piece by piece, from left to right. */
interface Notation {

    /** Whether a quotient is drawn with a line and needs no brackets. */
    boolean drawsFractions();

    void label(Step step);

    void number(Numeral numeral);

    /** One of + − · / between two operands. */
    void operator(String sign);

    /** One of = ≈ &lt; ≤ ≥ &gt;. */
    void relation(String sign);

    void openBracket();

    void closeBracket();

    void openBars();

    void closeBars();

    void openRoot();

    void closeRoot();

    void openFraction();

    void fractionLine();

    void closeFraction();

    /** A name and an opening bracket. */
    void openCall(String name);

    void separator();

    void closeCall();

    /** Words that end the call of a rounding, and the closing bracket. */
    void closeRounding(String words);
}
