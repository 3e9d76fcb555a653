package io.github.formulationmath.guide;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/**
 * The page of twenty questions keeps its promise: each is typed in at most three lines, and what comes back is for a person.
 * That the answers are those of the library is held by {@link UserGuideTest}, which runs the page at JShell.
 */
class TwentyQuestionsTest {

    private static final int MOST_LINES = 3;

    /** {@code Blend[masses=…]}, the text of a record that nobody worded. */
    private static final Pattern RAW = Pattern.compile("[A-Z][A-Za-z]+\\[[a-z][A-Za-z]*=");

    /** An exact fraction with a unit and no decimal beside it. */
    private static final Pattern BARE_FRACTION = Pattern.compile("\\d+/\\d+ ?(g|oz|%|mL)(?! ≈)");

    private final GuidePage page = GuidePage.read(GuidePages.DOCS.resolve("twenty-questions.md"));

    /** The blocks under each heading, in order; the first are above the first question. */
    private List<List<Fence>> questions() {
        List<List<Fence>> questions = new ArrayList<>();
        List<Integer> headings = new ArrayList<>();
        for (int i = 0; i < page.lines().size(); i++) {
            if (page.lines().get(i).startsWith("## ")) {
                headings.add(i);
                questions.add(new ArrayList<>());
            }
        }
        for (Fence fence : page.in("jshell")) {
            int question = (int)
                    headings.stream().filter(line -> line < fence.firstLine()).count();
            if (question > 0) {
                questions.get(question - 1).add(fence);
            }
        }
        return questions;
    }

    @Test
    void there_are_twenty_and_each_takes_three_lines_at_most() {
        List<List<Fence>> questions = questions();
        assertThat(questions).hasSize(20);
        for (int i = 0; i < questions.size(); i++) {
            assertThat(questions.get(i)).as("question %d", i + 1).isNotEmpty();
            assertThat(questions.get(i).stream()
                            .flatMap(block -> block.content().stream())
                            .filter(line -> line.startsWith(ShellSession.PROMPT)))
                    .as("question %d", i + 1)
                    .hasSizeBetween(1, MOST_LINES);
        }
    }

    @Test
    void every_answer_is_whole_and_worded() {
        for (Fence block : questions().stream().flatMap(List::stream).toList()) {
            String last = block.content().get(block.content().size() - 1);
            assertThat(last).as(page.at(block)).doesNotStartWith(ShellSession.PROMPT);
            for (String line : block.content()) {
                if (line.startsWith(ShellSession.PROMPT)) {
                    continue;
                }
                assertThat(line).as(page.at(block)).doesNotStartWith("|  Error").doesNotContainPattern(RAW);
                // A refusal shows what may be typed: 1 3/4 oz.
                assertThat(line.startsWith("|  Exception") ? "" : line)
                        .as(page.at(block))
                        .doesNotContainPattern(BARE_FRACTION);
                assertThat(line.contains(" ... ") && !isOfAVariable(line))
                        .as(line)
                        .isFalse();
            }
        }
    }

    /** What JShell says of a variable is cut short; a question is not answered there. */
    private static boolean isOfAVariable(String line) {
        return line.contains(" ==> ") && !line.startsWith("$");
    }
}
