package io.github.formulationmath.formula;

import java.util.Objects;

/** The form of CAS registry numbers: two to seven digits, two digits, and a check digit (common practice). */
final class CasNumbers {

    /** Two digits and one, each behind a hyphen. */
    private static final int TAIL = "-00-0".length();

    private CasNumbers() {}

    static String require(String number) {
        Objects.requireNonNull(number, "number");
        if (!isFormed(number)) {
            throw new IllegalArgumentException("number is \"" + number + "\": a CAS number looks like 56-81-5");
        }
        int check = number.charAt(number.length() - 1) - '0';
        if (checkDigit(number) != check) {
            throw new IllegalArgumentException("number is \"" + number + "\": the check digit should be "
                    + checkDigit(number) + "; look for a slip of the pen");
        }
        return number;
    }

    /** Whether a text is a number that could have been given out. */
    static boolean isNumber(String text) {
        return isFormed(text) && checkDigit(text) == text.charAt(text.length() - 1) - '0';
    }

    /** Looked at without a pattern: it is asked of every name of a table. */
    private static boolean isFormed(String text) {
        int first = text.length() - TAIL;
        if (first < 2 || first > 7 || text.charAt(0) < '1') {
            return false;
        }
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            boolean hyphen = i == first || i == first + 3;
            if (hyphen ? c != '-' : c < '0' || c > '9') {
                return false;
            }
        }
        return true;
    }

    /** The sum of the digits before the last, each times its place counted from the right, modulo 10. */
    private static int checkDigit(String number) {
        int sum = 0;
        int place = 1;
        for (int i = number.length() - 2; i >= 0; i--) {
            if (number.charAt(i) != '-') {
                sum += (number.charAt(i) - '0') * place++;
            }
        }
        return sum % 10;
    }
}
