package io.github.formulationmath.refusal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import io.github.formulationmath.snippet.Outcome;
import io.github.formulationmath.snippet.SnippetCompiler;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/**
 * Bad input is refused by an exception that names the argument, the value, its unit and what would help; and what is said
 * to help does. The corpus is in {@code src/test/resources/refusals}.
 */
class RefusalsTest {

    private static final int LONGEST_MESSAGE = 600;

    private static final List<Refusal> ROWS = Refusal.all();

    @Test
    void the_corpus_is_large() {
        assertThat(ROWS).hasSizeGreaterThanOrEqualTo(120);
        assertThat(ROWS).extracting(Refusal::call).doesNotHaveDuplicates();
    }

    @Test
    void what_can_burn_has_a_file_of_its_own() {
        assertThat(ROWS).filteredOn(row -> row.place().startsWith("soap.txt")).hasSizeGreaterThanOrEqualTo(40);
    }

    @TestFactory
    Stream<DynamicTest> bad_input_is_refused_with_argument_value_and_remedy() {
        List<Outcome> outcomes =
                SnippetCompiler.outcomes(ROWS.stream().map(Refusal::bad).toList());
        return IntStream.range(0, ROWS.size())
                .mapToObj(i -> dynamicTest(
                        ROWS.get(i).place() + " " + ROWS.get(i).call(),
                        () -> assertRefused(ROWS.get(i), outcomes.get(i))));
    }

    private static void assertRefused(Refusal row, Outcome outcome) {
        assertThat(outcome).isInstanceOf(Outcome.Threw.class);
        Throwable thrown = ((Outcome.Threw) outcome).thrown();
        assertThat(thrown.getClass().getSimpleName()).as(thrown.getMessage()).isEqualTo(row.exception());
        assertThat(thrown).message().contains(row.needed()).hasSizeLessThan(LONGEST_MESSAGE);
    }

    @TestFactory
    Stream<DynamicTest> what_is_said_to_help_does() {
        List<Outcome> outcomes =
                SnippetCompiler.outcomes(ROWS.stream().map(Refusal::right).toList());
        return IntStream.range(0, ROWS.size())
                .mapToObj(i -> dynamicTest(
                        ROWS.get(i).place() + " " + ROWS.get(i).instead(),
                        () -> assertThat(outcomes.get(i)).isInstanceOf(Outcome.Ran.class)));
    }

    @Test
    void a_refusal_that_says_too_little_is_noticed() {
        Refusal row = new Refusal("here", "", "IllegalArgumentException", "mass", "-5 g", "above 0", "");
        Outcome good = new Outcome.Threw(new IllegalArgumentException("mass is -5 g: it must be above 0"));
        assertRefused(row, good);
        for (Throwable weak : List.of(
                new IllegalArgumentException("mass is -5 g"),
                new IllegalArgumentException("-5 g: it must be above 0"),
                new IllegalStateException("mass is -5 g: it must be above 0"))) {
            assertThatCode(() -> assertRefused(row, new Outcome.Threw(weak))).isInstanceOf(AssertionError.class);
        }
    }
}
