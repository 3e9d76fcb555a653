package io.github.formulationmath.record;

/**
 * The check character of ISO/IEC 7064, hybrid system MOD 37,36: one letter or digit over letters and digits, which finds
 * every wrong character and nearly every exchange of neighbours (the system is stated from memory; the test holds a
 * published example).
 */
final class CheckCharacter {

    private static final String ALPHABET = "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ";
    private static final int MODULUS = ALPHABET.length();

    private CheckCharacter() {}

    static char of(String text) {
        int product = MODULUS;
        for (int i = 0; i < text.length(); i++) {
            int sum = (product + valueOf(text.charAt(i))) % MODULUS;
            product = (sum == 0 ? MODULUS : sum) * 2 % (MODULUS + 1);
        }
        return ALPHABET.charAt((MODULUS + 1 - product) % MODULUS);
    }

    static boolean isInAlphabet(char c) {
        return valueOf(c) >= 0;
    }

    private static int valueOf(char c) {
        return ALPHABET.indexOf(c);
    }
}
