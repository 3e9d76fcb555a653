package io.github.formulationmath.reckoning;

/** Powers as small raised digits. */
final class Superscript {

    private static final String DIGITS = "⁰¹²³⁴⁵⁶⁷⁸⁹";

    private Superscript() {}

    static String of(int power) {
        StringBuilder raised = new StringBuilder();
        Integer.toString(power).chars().forEach(c -> raised.append(c == '-' ? '⁻' : DIGITS.charAt(c - '0')));
        return raised.toString();
    }

    static int power(String superscript) {
        StringBuilder plain = new StringBuilder();
        superscript.chars().forEach(c -> plain.append(plain(c)));
        return Integer.parseInt(plain.toString());
    }

    /** A digit or a minus on the line; what is neither makes the whole text no number. */
    private static char plain(int c) {
        int digit = DIGITS.indexOf(c);
        return digit >= 0 ? (char) ('0' + digit) : c == '⁻' ? '-' : '?';
    }
}
