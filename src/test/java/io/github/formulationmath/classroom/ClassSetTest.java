package io.github.formulationmath.classroom;

import static io.github.formulationmath.support.Golden.assertGolden;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import io.github.formulationmath.document.Document;
import io.github.formulationmath.document.Format;
import io.github.formulationmath.reckoning.Style;
import io.github.formulationmath.reckoning.Wording;
import io.github.formulationmath.support.HtmlChecks;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ClassSetTest {

    private static final List<Topic> ALL = List.of(Topic.values());

    /** The same on every Java: these texts were printed once and stay. */
    @Test
    void sheets_keys_and_list_are_as_they_were() {
        ClassSet set = ClassSet.named("Creams", ALL, List.of("Robin", "Kim"), 2026);
        assertGolden("classroom/sheet.txt", text(set.pages(1, Style.steps())));
        assertGolden("classroom/key.txt", set.key(1, Style.steps()).print(Format.TEXT));
        assertGolden("classroom/list.txt", set.list(Style.steps()).print(Format.TEXT));
        assertGolden("classroom/page.html", set.pages(2, Style.steps()).get(2).print(Format.HTML));
        assertGolden("classroom/page.tex", set.pages(2, Style.steps()).get(2).print(Format.LATEX));
        assertGolden("classroom/page.md", set.pages(2, Style.steps()).get(2).print(Format.MARKDOWN));
    }

    private static String text(List<Document> pages) {
        return pages.stream().map(page -> page.print(Format.TEXT)).collect(Collectors.joining("\n"));
    }

    /** Left in {@code target/print} for {@code src/build/print.sh}: as many pages of paper as the name says, no more. */
    @ParameterizedTest
    @ValueSource(strings = {"en", "de", "fr"})
    void sheets_and_keys_can_be_printed_in_three_languages(String language) throws IOException {
        Path folder = Files.createDirectories(Path.of("target", "print"));
        Style style = Style.steps().with(Wording.of(Locale.forLanguageTag(language)));
        int learners = language.equals("en") ? 24 : 3;
        ClassSet set = ClassSet.numbered("Creams, second week", ALL, learners, 2026);
        String sheets = set.sheets(style, Format.HTML);
        int pages = sheets.split("<article", -1).length - 1;
        assertThat(pages).isBetween(3 * learners, 80 * learners / 24);
        assertThat(sheets).contains("<html lang=\"" + language + "\"");
        Files.writeString(folder.resolve("class-" + pages + "-" + language + ".html"), sheets);
        String keys = ClassSet.numbered("Creams, second week", ALL, 3, 2026).keys(style, Format.HTML);
        Files.writeString(folder.resolve("keys-" + language + ".html"), keys);
    }

    /** Three pages for twelve exercises: 72 for a class of 24. A browser takes no more, says {@code src/build/print.sh}. */
    @Test
    void a_class_of_24_takes_at_most_80_pages() {
        for (long seed : new long[] {1, 2026, -9}) {
            ClassSet set = ClassSet.numbered("Creams, second week", ALL, 24, seed);
            int pages = 0;
            for (int learner = 1; learner <= 24; learner++) {
                pages += set.pages(learner, Style.steps()).size();
            }
            assertThat(pages).isEqualTo(72);
            String html = set.sheets(Style.steps(), Format.HTML);
            assertThat(html.split("<article", -1)).hasSize(pages + 1);
        }
    }

    @Test
    void a_learner_keeps_the_sheet_when_others_join() {
        ClassSet few = ClassSet.numbered("class", ALL, 2, 3);
        ClassSet more = ClassSet.numbered("class", ALL, 5, 3);
        assertThat(text(more.pages(2, Style.steps()))).isEqualTo(text(few.pages(2, Style.steps())));
        ClassSet one = ClassSet.numbered("class", List.of(Topic.OUNCES), 2, 3);
        assertThat(one.exercises(2).get(0)).hasToString(few.exercises(2).get(9).toString());
    }

    /** No two learners of a class have the same letters, and no topic has the same letter everywhere. */
    @Test
    void nothing_is_to_be_copied_from_a_neighbour() {
        ClassSet set = ClassSet.numbered("class", ALL, 24, 1);
        Set<String> letters = new TreeSet<>();
        for (int learner = 1; learner <= 24; learner++) {
            letters.add(
                    set.exercises(learner).stream().map(Exercise::rightLetter).collect(Collectors.joining()));
        }
        assertThat(letters).hasSize(24);
        for (int topic = 0; topic < ALL.size(); topic++) {
            int at = topic;
            assertThat(letters.stream().map(word -> word.charAt(at)).distinct()).hasSizeGreaterThan(2);
        }
    }

    @Test
    void a_key_says_why_each_wrong_answer_is_wrong() {
        ClassSet set = ClassSet.numbered("class", ALL, 3, 8);
        for (Exercise exercise : set.exercises(3)) {
            for (String letter : List.of("a", "b", "c", "d")) {
                assertThat(exercise.explanation(letter, Style.steps()).equals("right"))
                        .isEqualTo(letter.equals(exercise.rightLetter()));
            }
            exercise.working().check();
        }
        assertThatIllegalArgumentException()
                .isThrownBy(() -> set.exercises(3).get(0).explanation("e", Style.steps()))
                .withMessageContaining("e: give one of a, b, c and d");
    }

    @Test
    void a_sheet_tells_no_answer() {
        ClassSet set = ClassSet.numbered("class", ALL, 1, 8);
        String sheet = text(set.pages(1, Style.steps()));
        assertThat(sheet).doesNotContain("right:", "mistake", "Right is", "class-exercise");
        assertThat(sheet.split("\\[ ] [a-d]\\)", -1)).hasSize(12 * 4 + 1);
    }

    @Test
    void digits_follow_the_locale() {
        Style german = Style.steps().with(Locale.GERMANY);
        ClassSet set = ClassSet.numbered("class", ALL, 1, 8);
        assertThat(set.exercises(1).get(0).choices(german))
                .allMatch(choice -> choice.matches("[0-9.]+,[0-9]{2}\u00A0g"));
        assertThat(set.exercises(1).get(0).question(german)).doesNotContainPattern("[0-9][.][0-9]");
    }

    @Test
    void points_are_the_teachers() {
        ClassSet set = ClassSet.numbered("class", ALL, 1, 8).withPoints(Topic.ALKALI, 10);
        assertThat(text(set.pages(1, Style.steps())))
                .contains("Points: ______ of\n34", "Alkali for a fat (points: 10)");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> set.withPoints(Topic.ALKALI, 0))
                .withMessageContaining("newPoints is 0");
    }

    @Test
    void what_makes_no_class_is_refused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> ClassSet.numbered("class", ALL, 0, 1))
                .withMessageContaining("learners is 0");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> ClassSet.numbered("class", List.of(), 1, 1))
                .withMessageContaining("Topic.SCALING");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> ClassSet.numbered("class", List.of(Topic.PARTS, Topic.PARTS), 1, 1))
                .withMessageContaining("PARTS twice");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> ClassSet.named("class", ALL, Collections.nCopies(1001, "Kim"), 1))
                .withMessageContaining("1001");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> ClassSet.numbered("class", ALL, 2, 1).exercises(3))
                .withMessageContaining("between 1 and 2");
    }

    @Tag("long")
    @Test
    void sheets_can_be_read_by_everybody() {
        ClassSet set = ClassSet.numbered("class", ALL, 1, 8);
        set.pages(1, Style.steps()).forEach(page -> HtmlChecks.assertAccessible(page.print(Format.HTML)));
        HtmlChecks.assertAccessible(set.key(1, Style.steps()).print(Format.HTML));
    }
}
