package io.github.formulationmath.number;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Collections;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What is quoted of a long text or list. */
class ExcerptTest {

    private static final String LONG = "x".repeat(900_000);

    @Test
    void a_list_is_quoted_in_part_with_the_number_of_the_others() {
        assertThat(Excerpt.ofAll(List.of())).isEmpty();
        assertThat(Excerpt.ofAll(List.of(1, 2, 3))).isEqualTo("1, 2, 3");
        assertThat(Excerpt.ofAll(Collections.nCopies(100_000, LONG)))
                .hasSizeLessThan(450)
                .matches("(x{60}\\.\\.\\.x{20} \\(900000 characters\\), )*x{60}\\.\\.\\.x{20} \\(900000 characters\\)"
                        + " and 9999[0-9] more");
        for (int size = 1; size < 200; size++) {
            String text = Excerpt.ofAll(Collections.nCopies(size, "Aqua"));
            int more = text.contains(" and ") ? Integer.parseInt(text.replaceAll("\\D", "")) : 0;
            assertThat(text.split("Aqua", -1).length - 1 + more).isEqualTo(size);
        }
    }

    @Test
    void short_values_are_quoted_whole() {
        assertThat(Excerpt.of(Ratio.of(1, 3))).isEqualTo("1/3");
        assertThat(Excerpt.of("x".repeat(100))).isEqualTo("x".repeat(100));
        assertThat(Excerpt.of("x".repeat(101)))
                .isEqualTo("x".repeat(60) + "..." + "x".repeat(20) + " (101 characters)");
    }

    @Test
    void a_list_of_300_characters_is_quoted_whole_and_one_more_is_not() {
        // Five of 50 characters and four commas with a space make 258.
        List<String> five = Collections.nCopies(5, "x".repeat(50));
        String listed = String.join(", ", five);
        assertThat(Excerpt.ofAll(with(five, "y".repeat(42)))).isEqualTo(listed + ", " + "y".repeat(42));
        assertThat(Excerpt.ofAll(with(five, "y".repeat(43)))).isEqualTo(listed + " and 1 more");
    }

    private static List<String> with(List<String> some, String last) {
        return Stream.concat(some.stream(), Stream.of(last)).toList();
    }

    /** A drop takes two places of a text in Java. */
    @Test
    void no_character_is_cut_in_two() {
        String drop = "\uD83D\uDCA7";
        assertThat(Excerpt.of("x".repeat(59) + drop + "y".repeat(60)))
                .isEqualTo("x".repeat(59) + "..." + "y".repeat(20) + " (121 characters)");
        assertThat(Excerpt.of("x".repeat(80) + drop + "y".repeat(19)))
                .isEqualTo("x".repeat(60) + "..." + drop + "y".repeat(19) + " (101 characters)");
    }
}
