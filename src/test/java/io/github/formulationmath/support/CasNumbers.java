package io.github.formulationmath.support;

/** CAS numbers as anybody can check them. */
public final class CasNumbers {

    private CasNumbers() {}

    /** The sum of the digits times their places from the right, the check digit left out, ends in the check digit. */
    public static boolean hasCheckDigit(String number) {
        String digits = number.replace("-", "");
        int sum = 0;
        for (int place = 1; place < digits.length(); place++) {
            sum += place * (digits.charAt(digits.length() - 1 - place) - '0');
        }
        return sum % 10 == digits.charAt(digits.length() - 1) - '0';
    }
}
