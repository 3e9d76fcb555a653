package io.github.formulationmath.limit;

/** How many letters have to be put in, left out or exchanged to make one name of another (Levenshtein distance). */
final class SpellingDistance {

    private SpellingDistance() {}

    /** The distance, or any number above {@code most} as soon as it is known to be above it. */
    static int between(String a, String b, int most) {
        if (Math.abs(a.length() - b.length()) > most) {
            return most + 1;
        }
        int[] above = new int[b.length() + 1];
        for (int j = 0; j <= b.length(); j++) {
            above[j] = j;
        }
        int least = 0;
        for (int i = 0; i < a.length() && least <= most; i++) {
            least = nextRow(above, a.charAt(i), b, i + 1);
        }
        return least > most ? least : above[b.length()];
    }

    /** Puts the next row in place of the one above, and tells its least number: rows never go below it again. */
    private static int nextRow(int[] above, char letter, String b, int first) {
        int diagonal = above[0];
        above[0] = first;
        int least = first;
        for (int j = 1; j <= b.length(); j++) {
            int exchanged = diagonal + (letter == b.charAt(j - 1) ? 0 : 1);
            diagonal = above[j];
            above[j] = Math.min(exchanged, 1 + Math.min(above[j], above[j - 1]));
            least = Math.min(least, above[j]);
        }
        return least;
    }
}
