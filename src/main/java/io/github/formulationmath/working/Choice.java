package io.github.formulationmath.working;

/**
 * One of the answers to a blank, ready to print.
 *
 * @param letter the letter before it; empty if it stands alone
 * @param value the value
 * @param verdict what the key says of it; empty on a sheet
 * @param right whether the key marks it as right
 */
record Choice(String letter, String value, String verdict, boolean right) {

    /** The letter, the bracket and the value. */
    String answer() {
        return letter.isEmpty() ? value : letter + ") " + value;
    }

    /** The verdict with what parts it from the answer. */
    String comment() {
        return verdict.isEmpty() ? "" : ": " + verdict;
    }
}
