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
        superscript
                .chars()
                .forEach(c -> plain.append(DIGITS.indexOf(c) < 0 ? sign(c) : (char) ('0' + DIGITS.indexOf(c))));
        return Integer.parseInt(plain.toString());
    }

    /** A minus; what is neither sign nor digit makes the whole text no number. */
    private static char sign(int c) {
        return c == '⁻' ? '-' : '?';
    }
}
