package io.github.formulationmath.formula;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;

/** What is close is what a plain table of distances (optimal string alignment) says is close, written here once more. */
class LooseNamesTest {

    private static final String LETTERS = "ABCD";

    private static String word(Random random, int least, int most) {
        StringBuilder word = new StringBuilder();
        for (int i = least + random.nextInt(most - least + 1); i > 0; i--) {
            word.append(LETTERS.charAt(random.nextInt(LETTERS.length())));
        }
        return word.toString();
    }

    private static int distance(String a, String b) {
        int[][] table = new int[a.length() + 1][b.length() + 1];
        for (int i = 0; i <= a.length(); i++) {
            for (int j = 0; j <= b.length(); j++) {
                if (i == 0 || j == 0) {
                    table[i][j] = i + j;
                } else {
                    int same = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
                    table[i][j] = Math.min(table[i - 1][j - 1] + same, 1 + Math.min(table[i - 1][j], table[i][j - 1]));
                    boolean swapped =
                            i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1);
                    table[i][j] = swapped ? Math.min(table[i][j], 1 + table[i - 2][j - 2]) : table[i][j];
                }
            }
        }
        return table[a.length()][b.length()];
    }

    @Property(tries = 200)
    void what_is_close_is_close(@ForAll long seed) {
        Random random = new Random(seed);
        List<String> names = new ArrayList<>();
        for (int i = 0; i < 12; i++) {
            names.add(word(random, 1, 15));
        }
        LooseNames loose = LooseNames.read(LooseNames.text(names));
        for (int i = 0; i < 20; i++) {
            String asked = random.nextBoolean() ? word(random, 3, 15) : changed(names.get(random.nextInt(12)), random);
            int furthest = asked.length() < 12 ? 1 : 2;
            boolean close =
                    asked.length() > furthest && names.stream().anyMatch(name -> distance(name, asked) <= furthest);
            assertThat(loose.haveCloseTo(asked)).as(asked + " in " + names).isEqualTo(close);
            assertThat(loose.have(asked)).as(asked + " in " + names).isEqualTo(names.contains(asked));
        }
    }

    private static String changed(String name, Random random) {
        StringBuilder changed = new StringBuilder(name + "AB");
        for (int i = random.nextInt(3); i > 0; i--) {
            changed.setCharAt(random.nextInt(changed.length()), 'D');
        }
        return changed.toString();
    }

    @Test
    void spellings_are_one() {
        LooseNames loose = LooseNames.read(LooseNames.text(List.of("Isobutylparaben", "Sulfanilamide")));
        assertThat(loose.have("isobutyl paraben")).isTrue();
        assertThat(loose.have("Sulphanilamide (INN)")).isTrue();
        assertThat(loose.have("Butylparaben")).isFalse();
        assertThat(loose.haveCloseTo("y".repeat(500))).isFalse();
        assertThat(loose).hasToString("2 names");
    }

    @Test
    void a_text_that_is_no_such_list_is_refused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> LooseNames.read("BBB\nA\n"))
                .withMessageContaining("character 5");
        assertThatIllegalArgumentException().isThrownBy(() -> LooseNames.read("BBB"));
        assertThat(LooseNames.read("").have("A")).isFalse();
    }
}
