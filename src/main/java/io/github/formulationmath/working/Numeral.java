package io.github.formulationmath.working;

/**
 * A number ready to print.
 *
 * @param negative whether a minus goes before it
 * @param digits the decimal, or what stands above the line of a fraction
 * @param below what stands below the line of a fraction; empty for a decimal
 * @param unit the unit; empty if there is none
 * @param bold whether it stands out, where the format can do that
 */
record Numeral(boolean negative, String digits, String below, String unit, boolean bold) {

    /** A line to write on: in type of ten characters to the inch it is 30 mm wide. */
    private static final String LINE = "_".repeat(12);

    Numeral(boolean negative, String digits, String below, String unit) {
        this(negative, digits, below, unit, false);
    }

    static Numeral blank(String unit) {
        return new Numeral(false, LINE, "", unit);
    }

    boolean isBlank() {
        return digits.equals(LINE);
    }

    Numeral inBold() {
        return new Numeral(negative, digits, below, unit, true);
    }

    boolean isFraction() {
        return !below.isEmpty();
    }
}
