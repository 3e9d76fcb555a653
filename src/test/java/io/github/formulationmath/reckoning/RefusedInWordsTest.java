package io.github.formulationmath.reckoning;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.formulationmath.number.NumberTextException;
import io.github.formulationmath.number.Refusal;
import io.github.formulationmath.number.Sentence;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** A refusal in the words of a reader: what is put in, what is passed on, what to write instead, and where it stands. */
class RefusedInWordsTest {

    private static final Sentence LONG = NumberTextException.longerThan(60);

    /** A refusal with a place and a reason, as the reader of a table has them. */
    private record InTable(Sentence said, Optional<Refusal> because, Optional<Place> place) implements Refusal {

        static InTable at(Place place) {
            return new InTable(LONG, Optional.empty(), Optional.of(place));
        }

        @Override
        public String getMessage() {
            return said.getMessage();
        }
    }

    private static Sentence reading(String reason) {
        return Sentence.of("refusal.number-text", "{text}: {reason}", "text", "\"1 2\"", "reason", reason);
    }

    private static NumberTextException refused(String... remedies) {
        return new NumberTextException("abc", LONG, List.of(remedies));
    }

    @Test
    void a_refusal_that_the_wording_does_not_know_speaks_english() {
        Sentence own = Sentence.of("refusal.of-an-application", "{many} is too many", "many", "12.5");
        assertThat(Wording.german().text(own)).isEqualTo("12.5 is too many");
    }

    @Test
    void the_place_stands_before_the_sentence_with_the_file_if_there_is_one() {
        InTable pasted = InTable.at(new Refusal.Place("", 3, 7));
        assertThat(Wording.english().text(pasted)).isEqualTo("line 3, column 7: longer than 60 characters");
        assertThat(Wording.german().text(pasted)).startsWith("Zeile 3, Spalte 7: ");
        InTable filed = InTable.at(new Refusal.Place("prices.csv", 3, 7));
        assertThat(Wording.english().text(filed)).isEqualTo("prices.csv, line 3, column 7: longer than 60 characters");
    }

    @Test
    void what_is_passed_on_is_put_into_the_same_words() {
        InTable passing = new InTable(reading("in English"), Optional.of(LONG), Optional.empty());
        assertThat(Wording.english().text(passing)).isEqualTo("\"1 2\": longer than 60 characters");
        assertThat(Wording.german().text(passing))
                .isEqualTo("\"1 2\": " + Wording.german().text(LONG))
                .doesNotContain("in English", "longer");
    }

    @Test
    void a_reason_that_is_no_refusal_is_put_in_as_it_is() {
        InTable reasoning = new InTable(reading("the ink is blurred"), Optional.empty(), Optional.empty());
        assertThat(Wording.german().text(reasoning)).isEqualTo("\"1 2\": the ink is blurred");
    }

    @Test
    void what_to_write_instead_is_one_text_or_several_with_an_or_before_the_last() {
        assertThat(Wording.english().text(refused("a"))).isEqualTo("\"abc\": longer than 60 characters; write a");
        assertThat(Wording.english().text(refused("a", "b"))).endsWith("; write a or b");
        assertThat(Wording.english().text(refused("a", "b", "c"))).endsWith("; write a, b or c");
        assertThat(Wording.german().text(refused("a", "b", "c"))).endsWith("a, b oder c");
        assertThat(Wording.french().text(refused("a", "b"))).endsWith("a ou b");
        assertThat(Wording.english().text(NumberTextException.withExamples("abc", LONG, List.of())))
                .isEqualTo("\"abc\": longer than 60 characters; write it like ");
    }

    /** A German reader reads 12,5 g; but who typed 12.5 is shown what was typed. */
    @Test
    void amounts_have_the_comma_of_the_language_and_what_was_typed_stays() {
        Sentence overload = Sentence.of("refusal.overload", "{batch}", "batch", "12.5 g", "vessel", "Becher 2.5");
        assertThat(Wording.german().text(overload)).startsWith("12,5 g in Becher 2.5 ");
        Sentence tooLong = Sentence.of("refusal.text.too-long", "{most}", "most", "12.5");
        assertThat(Wording.german().text(tooLong)).contains("12.5").doesNotContain("12,5");
        Sentence unread = Sentence.of("refusal.number-text.of", "{of}: {reason}", "of", "12.5 g", "reason", "12.5");
        assertThat(Wording.german().text(unread)).isEqualTo("12.5 g: 12.5");
    }

    @Test
    void a_field_that_is_missing_leaves_its_name() {
        Sentence overload = Sentence.of("refusal.overload", "{batch}", "batch", "12.5 g");
        assertThat(Wording.english().text(overload)).startsWith("12.5 g in {vessel} overloads the balance");
    }
}
