package io.github.formulationmath.exercise;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.number.Rounding;
import io.github.formulationmath.reckoning.Phrase;
import io.github.formulationmath.reckoning.Reckoning;
import io.github.formulationmath.reckoning.Subject;
import io.github.formulationmath.reckoning.Term;
import io.github.formulationmath.reckoning.Working;
import io.github.formulationmath.support.WeighedLine;
import io.github.formulationmath.support.Workings;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import org.junit.jupiter.api.Test;

/** Which values are left blank, so that no other gives them away. */
class BlankChoiceTest {

    /** 6.76 % of 125 g is 8.45 g or 84.5 divisions, of which 84 are shown. */
    private static final Working TIE = WeighedLine.of("0.0676", "125", "0.1");

    /** 4 % of 125 g is 5 g or 50 divisions; the rounding changes nothing. */
    private static final Working EXACT = WeighedLine.of("0.04", "125", "0.1");

    private static List<String> blanks(Worksheet worksheet) {
        return worksheet.blanks().stream().map(blank -> blank.step().label()).toList();
    }

    private static Set<String> overSeeds(Working working, int count) {
        Set<String> found = new TreeSet<>();
        for (int seed = 0; seed < 50; seed++) {
            found.add(String.join(" ", blanks(Worksheet.of(working, count, seed))));
        }
        return found;
    }

    @Test
    void a_label_takes_the_values_along_that_give_it_away() {
        assertThat(blanks(Worksheet.of(TIE, Set.of("m_5"), 1))).containsExactly("m_5", "x_5");
        assertThat(blanks(Worksheet.of(TIE, Set.of("n_5"), 1))).containsExactly("n_5", "r_5");
        assertThat(blanks(Worksheet.of(TIE, Set.of("r_5"), 1))).containsExactly("r_5");
        assertThat(blanks(Worksheet.of(EXACT, Set.of("m_5"), 1))).containsExactly("m_5", "x_5", "n_5", "r_5");
    }

    @Test
    void a_given_value_is_worked_back_from_the_line_that_uses_it() {
        assertThat(blanks(Worksheet.of(TIE, Set.of("M"), 1))).containsExactly("M");
        assertThat(blanks(Worksheet.of(TIE, Set.of("w_5", "x_5"), 1))).containsExactly("w_5", "x_5");
    }

    @Test
    void a_count_chooses_among_those_that_nothing_gives_away() {
        assertThat(overSeeds(TIE, 1)).containsExactly("r_5", "x_5");
        assertThat(overSeeds(TIE, 2)).containsExactly("m_5 x_5", "n_5 r_5", "x_5 r_5");
        assertThat(overSeeds(TIE, 4)).containsExactly("m_5 x_5 n_5 r_5");
        assertThat(overSeeds(EXACT, 2)).containsExactly("n_5 r_5");
    }

    /** A step of another line, worked out before and after those of line 5. */
    @Test
    void the_line_that_was_asked_about_comes_first() {
        Working working = Working.of(Phrase.of("question.reading", "Cetearyl Alcohol"), r -> {
            r.named(Workings.LINE, Subject.of("1", "Aqua"), r.literal(7));
            r.named(Workings.BATCH, Subject.of("2", "Glycerin"), r.literal(8));
            return WeighedLine.reading(r, "0.0676", "125", "0.1");
        });
        assertThat(overSeeds(working, 4)).containsExactly("m_5 x_5 n_5 r_5");
        assertThat(overSeeds(working, 5)).containsExactly("M_2 m_5 x_5 n_5 r_5", "m_1 m_5 x_5 n_5 r_5");
    }

    /** What has to be blank for a value of the line to be blank comes before what has not. */
    @Test
    void next_comes_what_would_give_the_line_away() {
        Working working = Working.of(Phrase.of("question.reading", "Cetearyl Alcohol"), r -> {
            Term m = r.named(Workings.LINE, WeighedLine.SUBJECT, r.literal(7));
            r.named(Workings.LINE, Subject.of("1", "Aqua"), r.literal(7));
            r.named(Workings.BATCH, r.sum(m, r.literal(2)));
            return r.named(Workings.READING, WeighedLine.SUBJECT, r.rounded(r.literal(1), Rounding.toDecimalPlaces(0)));
        });
        assertThat(overSeeds(working, 2)).containsExactly("M r_5");
        assertThat(overSeeds(working, 3)).containsExactly("m_5 M r_5");
    }

    private static List<String> takenAlong(Function<Reckoning<Term>, Function<Term, Term>> later) {
        Working working = Working.of(Phrase.of("question.readings-total"), r -> {
            Term m = r.named(Workings.LINE, r.literal(7));
            return r.named(Workings.READING, later.apply(r).apply(m));
        });
        return blanks(Worksheet.of(working, Set.of("m"), 1));
    }

    @Test
    void what_gives_a_value_away() {
        Rounding tens = Rounding.toMultipleOf(Ratio.of(10));
        assertThat(takenAlong(r -> m -> m)).containsExactly("m", "r");
        assertThat(takenAlong(r -> m -> r.difference(r.product(m, r.literal(3)), r.literal(1))))
                .containsExactly("m", "r");
        assertThat(takenAlong(r -> m -> r.rounded(m, tens))).containsExactly("m");
        assertThat(takenAlong(r -> m -> r.rounded(m, tens.with(java.math.RoundingMode.DOWN))))
                .containsExactly("m");
        assertThat(takenAlong(r -> m -> r.maximum(List.of(m, r.literal(8))))).containsExactly("m");
        assertThat(takenAlong(r -> m -> r.maximum(List.of(m, r.literal(6))))).containsExactly("m", "r");
        assertThat(takenAlong(r -> m -> r.minimum(List.of(m, r.literal(6))))).containsExactly("m");
        assertThat(takenAlong(r -> m -> r.minimum(List.of(m, r.literal(8))))).containsExactly("m", "r");
        assertThat(takenAlong(r -> m -> r.sum(m, m))).containsExactly("m", "r");
    }
}
