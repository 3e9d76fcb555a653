package io.github.formulationmath.exercise;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.reckoning.Phrase;
import io.github.formulationmath.reckoning.Reckoning;
import io.github.formulationmath.reckoning.Source;
import io.github.formulationmath.reckoning.Step;
import io.github.formulationmath.reckoning.Symbol;
import io.github.formulationmath.reckoning.Term;
import io.github.formulationmath.reckoning.Working;
import io.github.formulationmath.support.Workings;
import java.util.function.Function;
import org.junit.jupiter.api.Test;

/** Which wrong answers a learner could believe. */
class PlausibleTest {

    private static Plausible of(Symbol symbol, String right) {
        Working working = Working.of(Phrase.of("question.line-mass", "Wax"), given(symbol, right));
        Step step = working.steps().stream()
                .filter(s -> s.symbol().equals(symbol))
                .findFirst()
                .orElseThrow();
        return new Plausible(step, working);
    }

    private static Function<Reckoning<Term>, Term> given(Symbol symbol, String right) {
        return r -> {
            r.given(Workings.BATCH, Ratio.of(100), Source.user());
            return r.given(symbol, Ratio.parse(right), Source.user());
        };
    }

    private static boolean believable(Plausible plausible, String wrong) {
        return plausible.test(Ratio.parse(wrong));
    }

    @Test
    void a_part_is_at_most_the_whole_of_the_sheet() {
        Plausible part = of(Workings.LINE, "40");
        assertThat(believable(part, "50")).isTrue();
        assertThat(believable(part, "100")).isTrue();
        assertThat(believable(part, "100.5")).isFalse();
        assertThat(believable(part, "-50")).isFalse();
        assertThat(believable(part, "0")).isTrue();
        assertThat(believable(of(Workings.BATCH, "100"), "1000")).isTrue();
    }

    @Test
    void a_share_is_at_most_everything() {
        Plausible share = of(Workings.SHARE, "0.4");
        assertThat(believable(share, "1")).isTrue();
        assertThat(believable(share, "1.01")).isFalse();
        assertThat(believable(of(Workings.SHARE, "1"), "1.01")).isFalse();
        assertThat(believable(of(Workings.SHARE, "1.2"), "1.3")).isTrue();
        assertThat(believable(of(Workings.FACTOR, "4"), "4000")).isTrue();
    }

    @Test
    void a_long_number_among_short_ones_gives_itself_away() {
        Plausible shortOne = of(Workings.LINE, "40");
        assertThat(believable(shortOne, "1/3")).isFalse();
        assertThat(believable(shortOne, "12.3456789012")).isTrue();
        assertThat(believable(shortOne, "12.34567890123")).isFalse();
        assertThat(believable(of(Workings.LINE, "40/3"), "1/3")).isTrue();
    }
}
