package io.github.formulationmath.guide;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import io.github.formulationmath.snippet.Outcome;
import io.github.formulationmath.snippet.SnippetCompiler;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** Compiles and runs every example of the Javadoc, and holds the values that it states against those that it gives. */
class JavadocExamplesTest {

    @TestFactory
    Stream<DynamicTest> every_example_runs_and_gives_what_it_says() {
        List<JavadocExample> examples = JavadocExamples.all();
        assertThat(examples).hasSizeGreaterThan(50);
        List<Outcome> outcomes = outcomes(examples);
        return IntStream.range(0, examples.size())
                .mapToObj(i -> dynamicTest(
                        examples.get(i).snippet().place(),
                        () -> assertThat(examples.get(i).faults(outcomes.get(i)))
                                .as(examples.get(i).snippet().place())
                                .isEmpty()));
    }

    private static List<Outcome> outcomes(List<JavadocExample> examples) {
        return SnippetCompiler.outcomes(
                examples.stream().map(JavadocExample::snippet).toList());
    }

    @Test
    void a_wrong_example_is_noticed() {
        assertThat(faults("Example: {@code Ratio.of(1, 3).times(400)} is 400/3."))
                .isEmpty();
        assertThat(faults("Example: {@code Ratio.of(1, 3).times(400)} is {@code 400/3}, exactly."))
                .isEmpty();
        assertThat(faults("Example: {@code Ratio.of(1, 3).times(400)} is 400/31."))
                .hasSize(1);
        assertThat(faults("Example: {@code Ratio.of(1, 3).thrice()}."))
                .singleElement()
                .asString()
                .contains("does not compile");
        assertThat(faults("Example: {@code Ratio.of(1, 0)}."))
                .singleElement()
                .asString()
                .contains("throws");
        assertThat(faults("Example: {@code Ratio.of(1, 3).equals(Ratio.ONE)}.")).hasSize(1);
        assertThat(
                        faults(
                                "<pre>{@code\n * Ratio third = Ratio.of(1, 3);   // a third\n * third.times(3);   // 1\n * }</pre>"))
                .isEmpty();
        assertThat(faults("<pre>{@code\n * Ratio third = Ratio.of(1, 3);\n * third.times(3);   // 2\n * }</pre>"))
                .hasSize(1);
        assertThat(JavadocExamples.in("A.java", "/** {@code m = w · M(x)}, {@code w}. */"))
                .isEmpty();
    }

    private static List<String> faults(String javadoc) {
        List<JavadocExample> examples = JavadocExamples.in("number/Made.java", "/**\n * " + javadoc + "\n */");
        assertThat(examples).hasSize(1);
        return examples.get(0).faults(outcomes(examples).get(0));
    }
}
