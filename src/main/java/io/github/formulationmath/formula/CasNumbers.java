package io.github.formulationmath.formula;

import java.util.Objects;
import java.util.regex.Pattern;

/** The form of CAS registry numbers: two to seven digits, two digits, and a check digit (common practice). */
final class CasNumbers {

    private static final Pattern FORM = Pattern.compile("[1-9][0-9]{1,6}-[0-9]{2}-[0-9]");

    private CasNumbers() {}

    static String require(String number) {
        Objects.requireNonNull(number, "number");
        if (!FORM.matcher(number).matches()) {
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
        return !text.isEmpty()
                && Character.isDigit(text.charAt(0))
                && FORM.matcher(text).matches()
                && checkDigit(text) == text.charAt(text.length() - 1) - '0';
    }

    /** The sum of the digits before the last, each times its place counted from the right, modulo 10. */
    private static int checkDigit(String number) {
        String digits = number.replace("-", "");
        int sum = 0;
        for (int i = digits.length() - 2; i >= 0; i--) {
            sum += (digits.charAt(i) - '0') * (digits.length() - 1 - i);
        }
        return sum % 10;
    }
}
