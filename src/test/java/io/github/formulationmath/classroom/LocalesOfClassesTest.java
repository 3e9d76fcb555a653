package io.github.formulationmath.classroom;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.formulationmath.document.Document;
import io.github.formulationmath.document.Format;
import io.github.formulationmath.quantity.AmountFormat;
import io.github.formulationmath.reckoning.Style;
import io.github.formulationmath.reckoning.Wording;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** A class in German or French has the same numbers on sheets, keys and list as one in English, with a comma, and reads them. */
class LocalesOfClassesTest {

    private static final Pattern NUMBER = Pattern.compile("[0-9]+(?:[.,][0-9]+)?");
    private static final Pattern POINT = Pattern.compile("[0-9]\\.[0-9]");
    private static final int LEARNERS = 6;
    private static final ClassSet SET = ClassSet.numbered("Emulsion", List.of(Topic.values()), LEARNERS, 2026);

    private static List<Wording> others() {
        return List.of(Wording.german(), Wording.french());
    }

    private static List<String> pages(Wording words) {
        Style style = Style.steps().with(words);
        List<String> all = new ArrayList<>();
        for (int learner = 1; learner <= LEARNERS; learner++) {
            all.add(text(SET.pages(learner, style)));
            all.add(text(List.of(SET.key(learner, style))));
        }
        all.add(text(List.of(SET.list(style))));
        return all;
    }

    /** A language of longer words may need a page more: the numbers of sheet and pages are none of the exercises. */
    private static String text(List<Document> pages) {
        return pages.stream()
                .map(page -> page.print(Format.TEXT)
                        .replaceAll("(?i)(?:sheet|blatt|fiche) [0-9]+|[0-9]+ (?:of|von|sur) [0-9]+", ""))
                .collect(Collectors.joining("\n"));
    }

    private static String numbers(String text) {
        return NUMBER.matcher(text)
                .results()
                .map(found -> found.group())
                .sorted()
                .collect(Collectors.joining(" "));
    }

    @Test
    void sheets_keys_and_list_have_the_same_numbers_with_a_comma() {
        List<String> english = pages(Wording.english());
        assertThat(english.stream().filter(POINT.asPredicate())).hasSizeGreaterThanOrEqualTo(2 * LEARNERS);
        for (Wording words : others()) {
            List<String> pages = pages(words);
            assertThat(pages).hasSameSizeAs(english);
            for (int i = 0; i < pages.size(); i++) {
                assertThat(pages.get(i)).doesNotContainPattern(POINT);
                assertThat(numbers(pages.get(i)))
                        .isEqualTo(numbers(english.get(i)).replace('.', ','));
            }
        }
    }

    /** What a learner copies from the sheet can be typed in again. */
    @Test
    void choices_are_read_in_the_locale_as_the_same_amounts() {
        int read = 0;
        for (Wording words : others()) {
            Style style = Style.steps().with(words);
            AmountFormat local = AmountFormat.forLocale(words.locale());
            for (int learner = 1; learner <= LEARNERS; learner++) {
                for (Exercise exercise : SET.exercises(learner)) {
                    List<String> english = exercise.choices(Style.steps());
                    List<String> other = exercise.choices(style);
                    for (int i = 0; i < english.size(); i++) {
                        if (english.get(i).matches(".*\\p{L}$|.*%$")
                                && !english.get(i).contains("pp")) {
                            assertThat(local.parse(other.get(i)))
                                    .as(other.get(i))
                                    .isEqualTo(AmountFormat.standard().parse(english.get(i)));
                            read++;
                        }
                    }
                }
            }
        }
        assertThat(read).isGreaterThan(100);
    }

    @Test
    void the_question_bank_has_them_too() {
        for (Wording words : others()) {
            String bank = SET.moodleXml(Style.steps().with(words));
            assertThat(bank.replaceAll("&lt;[^&]*&gt;|<\\?xml[^>]*>", ""))
                    .doesNotContainPattern(">[^<]*[0-9]\\.[0-9][^<]*<");
        }
    }
}
