package io.github.formulationmath.working;

/**
 * A number ready to print.
 *
 * @param negative whether a minus goes before it
 * @param digits the decimal, or what stands above the line of a fraction
 * @param below what stands below the line of a fraction; empty for a decimal
 * @param unit the unit; empty if there is none
 */
record Numeral(boolean negative, String digits, String below, String unit) {

    boolean isFraction() {
        return !below.isEmpty();
    }
}
