package io.github.formulationmath.reckoning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;

import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.support.Workings;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** An origin is one figure of one object, and says how its number came about. */
class OriginTest {

    private static final Origin.Figure<Object> FOUR = new Grams(4);
    private static final Origin.Figure<Object> FIVE = new Grams(5);

    /** A figure that is the same number of grams whoever is asked. */
    private record Grams(long grams) implements Origin.Figure<Object> {

        @Override
        public <V> V in(Object owner, Reckoning<V> r) {
            return r.given(Workings.LINE, Ratio.of(grams), Source.user());
        }
    }

    private static Origin origin(Object owner, Origin.Figure<Object> figure) {
        return Origin.of(any -> Phrase.of("question.line-mass", "Wax"), Ratio.of(4), owner, figure);
    }

    @Test
    void two_origins_are_equal_if_they_are_the_same_figure_of_the_same_object() {
        List<Object> owner = List.of("a");
        Origin origin = origin(owner, FOUR);
        assertThat(origin)
                .isEqualTo(origin(owner, FOUR))
                .hasSameHashCodeAs(origin(owner, FOUR))
                .isNotEqualTo(origin(List.of("a"), FOUR))
                .isNotEqualTo(origin(owner, FIVE))
                .isNotEqualTo(origin(owner, new Grams(4)))
                .isNotEqualTo(owner)
                .isNotEqualTo(null);
    }

    /** Of a hundred objects hardly two share a place in a hash table. */
    @Test
    void hash_codes_tell_owners_apart_and_figures_too() {
        Object owner = new Object();
        assertThat(IntStream.range(0, 100)
                        .map(i -> origin(new Object(), FOUR).hashCode())
                        .distinct()
                        .count())
                .isGreaterThan(90);
        assertThat(IntStream.range(0, 100)
                        .map(i -> origin(owner, new Grams(i)).hashCode())
                        .distinct()
                        .count())
                .isGreaterThan(90);
    }

    @Test
    void an_origin_reads_as_its_question_and_its_number() {
        assertThat(origin("a", FOUR)).hasToString("How much of Wax goes into the batch? 4");
    }

    @Test
    void a_given_number_is_its_own_origin() {
        Source label = Source.written("40 g");
        Origin given = Origin.given(Workings.LINE, Subject.of("3", "Wax"), Ratio.of(40), label);
        assertThat(given.question()).isEqualTo(Phrase.of("question.given-value"));
        assertThat(given.number()).isEqualTo(Ratio.of(40));
        assertThat(given.derive(Reckoning.plain())).isEqualTo(Ratio.of(40));
        Working working = given.working();
        assertThat(working.question()).hasToString("Which value was given?");
        assertThat(working.answer()).isEqualTo(working.steps().get(0)).hasToString("m_3 = 40");
        assertThat(working.steps()).extracting(Step::source).containsExactly(label);
    }

    @Test
    void what_is_explained_has_the_working_of_its_origin() {
        Explained explained = () -> origin("a", FOUR);
        assertThat(explained.working().answer()).hasToString("m = 4");
        assertThat(explained.working().question()).isEqualTo(Phrase.of("question.line-mass", "Wax"));
        Explained wrong = () -> origin("a", FIVE);
        assertThatIllegalStateException()
                .isThrownBy(wrong::working)
                .withMessage("the working leads to 5, the result is 4");
    }

    @Test
    void a_publication_has_a_title_and_a_place_in_it() {
        Source source = Source.published("JCGM 100:2008", "F.2.2.1");
        assertThat(source.title()).isEqualTo("JCGM 100:2008");
        assertThat(source.locator()).isEqualTo("F.2.2.1");
        assertThat(source.citation()).isEqualTo("JCGM 100:2008, F.2.2.1");
        assertThat(Source.written("2.50 %").title()).isEmpty();
        assertThat(Source.written("2.50 %").locator()).isEmpty();
        assertThat(Source.user()).hasToString("given");
        assertThat(Source.written("2.50 %")).hasToString("given as 2.50 %");
    }
}
