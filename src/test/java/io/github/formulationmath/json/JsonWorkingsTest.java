package io.github.formulationmath.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatNullPointerException;

import com.fasterxml.jackson.core.type.TypeReference;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.number.Rounding;
import io.github.formulationmath.reckoning.Phrase;
import io.github.formulationmath.reckoning.Reckoning;
import io.github.formulationmath.reckoning.Source;
import io.github.formulationmath.reckoning.Subject;
import io.github.formulationmath.reckoning.Term;
import io.github.formulationmath.reckoning.Working;
import io.github.formulationmath.support.Workings;
import java.io.IOException;
import java.io.StringWriter;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** A working as JSON, and the writer of all JSON of the library. */
final class JsonWorkingsTest {

    @Test
    void a_line_mass_is_four_lines_that_anybody_can_follow() throws IOException {
        List<String> lines = lines(Workings.lineMass());
        assertThat(lines)
                .containsExactly(
                        "given w_3 = 0.025 1", "given M = 400 g", "product [1, 2] = 10", "step m_3 [3] = 10 g");
    }

    /** What is used twice is written once. */
    @Test
    void a_term_has_one_line() throws IOException {
        Working square = Working.of(Phrase.of("question.readings-total"), r -> {
            Term two = r.literal(2);
            Term four = r.product(two, two);
            return r.sum(four, four);
        });
        assertThat(lines(square)).containsExactly("number = 2", "product [1, 1] = 4", "sum [2, 2] = 8");
    }

    /** 12.35 is 123.5 steps of 0.1; a half goes to the even number. To three digits 1234.5 is on a grid of 10. */
    @Test
    void a_rounding_says_what_it_did() throws IOException {
        assertThat(rounded("12.35", Rounding.toMultipleOf(Ratio.parse("0.1"))))
                .containsEntry("mode", "half-even")
                .containsEntry("step", "0.1")
                .containsEntry("divisions", "123.5")
                .containsEntry("whole", "124")
                .containsEntry("value", "12.4")
                .doesNotContainKey("digits");
        assertThat(rounded("1234.5", Rounding.toSignificantDigits(3)))
                .containsEntry("digits", "3")
                .containsEntry("step", "10")
                .containsEntry("divisions", "123.45")
                .containsEntry("whole", "123")
                .containsEntry("value", "1230");
        assertThat(rounded("1/3", Rounding.none()))
                .containsEntry("mode", "none")
                .doesNotContainKey("step");
    }

    private static Map<String, Object> rounded(String value, Rounding rounding) throws IOException {
        Working working = Working.of(
                Phrase.of("question.readings-total"),
                (Reckoning<Term> r) -> r.rounded(r.literal(Ratio.parse(value)), rounding));
        return new ObjectMapper()
                .convertValue(
                        ((List<?>) read(working).get("lines")).get(1), new TypeReference<Map<String, Object>>() {});
    }

    private static List<String> lines(Working working) throws IOException {
        return ((List<?>) read(working).get("lines"))
                .stream()
                        .map(line -> (Map<?, ?>) line)
                        .map(line -> line.get("is") + or(line, " ", "name") + or(line, " ", "of") + " = "
                                + line.get("value") + or(line, " ", "unit"))
                        .toList();
    }

    private static String or(Map<?, ?> line, String before, String field) {
        return line.containsKey(field) ? before + line.get(field) : "";
    }

    private static Map<?, ?> read(Working working) throws IOException {
        return new ObjectMapper().readValue(Json.ofWorking(working), Map.class);
    }

    @Test
    void half_a_character_is_refused() {
        Working broken = Working.of(
                Phrase.of("question.readings-total"),
                (Reckoning<Term> r) ->
                        r.given(Workings.LINE, Subject.of("1", "half \uD834 of a clef"), Ratio.ONE, Source.user()));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Json.ofWorking(broken))
                .withMessageContaining("half of a surrogate pair")
                .withMessageContaining("mend the name");
        assertThatNullPointerException().isThrownBy(() -> Json.ofWorking(null)).withMessage("working");
    }

    /** Another reader finds every character as it was; RFC 8785, section 3.2.2.2, says which are escaped, and how. */
    @Test
    void every_character_comes_back() throws IOException {
        StringBuilder all = new StringBuilder("𝄞");
        for (char c = 0; c < Character.MIN_SURROGATE; c++) {
            all.append(c);
        }
        String json = written(Written.of("text", all.toString()), false);
        assertThat(new ObjectMapper().readTree(json).get("text").asText()).isEqualTo(all.toString());
        assertThat(written(List.of("\u20ac$\u000F\nA'B\"\\\\\"/"), true))
                .isEqualTo("[\"\u20ac$\\u000f\\nA'B\\\"\\\\\\\\\\\"/\"]");
    }

    @Test
    void the_canonical_form_has_its_fields_in_order() throws IOException {
        Written document =
                Written.of("b", "1").with("a", List.of(Written.of("d", "2").with("c", "")));
        assertThat(written(document, false)).isEqualTo("{\"b\":\"1\",\"a\":[{\"d\":\"2\",\"c\":\"\"}]}");
        assertThat(written(document, true)).isEqualTo("{\"a\":[{\"c\":\"\",\"d\":\"2\"}],\"b\":\"1\"}");
    }

    private static String written(Object document, boolean canonical) throws IOException {
        StringWriter text = new StringWriter();
        if (canonical) {
            JsonWriter.writeCanonical(document, text);
        } else {
            JsonWriter.write(document, text);
        }
        return text.toString();
    }
}
