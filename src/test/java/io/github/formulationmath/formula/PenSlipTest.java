package io.github.formulationmath.formula;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import org.junit.jupiter.api.Test;

/** Counted as a whole table counts them, without bands and early ends, and with a digit that holds as a step of many. */
class PenSlipTest {

    private static final int CASES = 20_000 * Math.max(1, Integer.getInteger("formulationmath.cases", 1) / 10);

    private static int slips(String one, String other, int most) {
        return new PenSlip(most, false).between(one, other, 0, other.length());
    }

    @Test
    void letters_put_in_taken_out_and_exchanged_are_counted() {
        assertThat(slips("KITTEN", "SITTING", 9)).isEqualTo(3);
        assertThat(slips("", "ABC", 9)).isEqualTo(3);
        assertThat(slips("ABC", "", 3)).isEqualTo(3);
        assertThat(slips("", "", 0)).isZero();
        assertThat(slips("ABC", "ABC", 9)).isZero();
        assertThat(slips("ABC", "ABC", 0)).isZero();
        assertThat(slips("ABC", "ABD", 0)).isEqualTo(1);
        assertThat(slips("KITTEN", "SITTING", 3)).isEqualTo(3);
        assertThat(slips("KITTEN", "SITTING", 2)).isEqualTo(3);
        assertThat(slips("ABC", "ABCDEF", 2)).isEqualTo(3);
        assertThat(slips("AB", "BA", 1)).isEqualTo(1);
        assertThat(slips("CHOLROFROM", "CHLOROFORM", 3)).isEqualTo(2);
    }

    @Test
    void one_letter_in_six_may_be_wrong_and_one_at_least() {
        assertThat(PenSlip.allowed(0)).isEqualTo(1);
        assertThat(PenSlip.allowed(11)).isEqualTo(1);
        assertThat(PenSlip.allowed(12)).isEqualTo(2);
        assertThat(PenSlip.allowed(18)).isEqualTo(3);
    }

    @Test
    void one_search_counts_like_a_whole_table_each_time() {
        Random random = new Random(20261126);
        for (int most = 0; most <= 5; most++) {
            for (boolean digitsHold : new boolean[] {false, true}) {
                PenSlip slip = new PenSlip(most, digitsHold);
                for (int i = 0; i < CASES / 12; i++) {
                    String one = word(random);
                    String other = random.nextInt(4) == 0 ? word(random) : changed(one, random);
                    int expected = Math.min(most + 1, table(one, other, digitsHold));
                    assertThat(slip.between(one, "12" + other + "A1", 2, 2 + other.length()))
                            .as(one + " and " + other + " up to " + most + (digitsHold ? ", digits hold" : ""))
                            .isEqualTo(expected);
                }
            }
        }
    }

    private static String word(Random random) {
        StringBuilder word = new StringBuilder();
        for (int i = random.nextInt(12); i > 0; i--) {
            word.append("ABC12".charAt(random.nextInt(5)));
        }
        return word.toString();
    }

    private static String changed(String name, Random random) {
        StringBuilder changed = new StringBuilder(name);
        for (int i = random.nextInt(4); i > 0 && changed.length() > 1; i--) {
            int at = random.nextInt(changed.length() - 1);
            switch (random.nextInt(4)) {
                case 0 -> changed.setCharAt(at, "AB1".charAt(random.nextInt(3)));
                case 1 -> changed.deleteCharAt(at);
                case 2 -> changed.insert(at, "AB1".charAt(random.nextInt(3)));
                default -> changed.insert(at, changed.charAt(at + 1)).deleteCharAt(at + 2);
            }
        }
        return changed.toString();
    }

    private static int table(String a, String b, boolean digitsHold) {
        int[][] table = new int[a.length() + 1][b.length() + 1];
        for (int i = 0; i <= a.length(); i++) {
            for (int j = 0; j <= b.length(); j++) {
                int best = i + j == 0 ? 0 : Integer.MAX_VALUE;
                if (i > 0) {
                    best = Math.min(best, table[i - 1][j] + price(a.charAt(i - 1), digitsHold));
                }
                if (j > 0) {
                    best = Math.min(best, table[i][j - 1] + price(b.charAt(j - 1), digitsHold));
                }
                if (i > 0 && j > 0) {
                    char one = a.charAt(i - 1);
                    char other = b.charAt(j - 1);
                    int price = one == other ? 0 : Math.max(price(one, digitsHold), price(other, digitsHold));
                    best = Math.min(best, table[i - 1][j - 1] + price);
                }
                if (i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1)) {
                    int price = Math.min(price(a.charAt(i - 1), digitsHold), price(b.charAt(j - 1), digitsHold));
                    best = Math.min(best, table[i - 2][j - 2] + price);
                }
                table[i][j] = best;
            }
        }
        return table[a.length()][b.length()];
    }

    private static int price(char sign, boolean digitsHold) {
        return digitsHold && Character.isDigit(sign) ? 1_000 : 1;
    }
}
