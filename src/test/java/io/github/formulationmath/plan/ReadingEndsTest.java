package io.github.formulationmath.plan;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.reckoning.Reckoning;
import io.github.formulationmath.support.Formulas;
import io.github.formulationmath.support.RandomFormulas;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The ends of the readings within tolerance, reckoned by hand. */
class ReadingEndsTest {

    private static final Ratio HUNDRED = Ratio.of(100);

    /** Of 100 divisions 80 ± 1 % are 79.2 to 80.8, and 20 ± 5 % are 19 to 21. */
    private static final ReadingEnds EXACT =
            new ReadingEnds(Formulas.oilAndWax("balm"), Tolerances.of("5 %").withLine("Oil", "1 %"), Ratio.ZERO);

    private static boolean hold(ReadingEnds ends, long... readings) {
        List<Ratio> all = Arrays.stream(readings).mapToObj(Ratio::of).toList();
        return ends.hold(all, HUNDRED);
    }

    private static List<Ratio> ends(ReadingEnds ends, int line) {
        Reckoning<Ratio> plain = Reckoning.plain();
        return List.of(
                ends.least(plain, ends.formula().lines().get(line), HUNDRED),
                ends.most(plain, ends.formula().lines().get(line), HUNDRED));
    }

    @Test
    void the_ends_are_the_whole_divisions_within_tolerance() {
        assertThat(ends(EXACT, 0)).containsExactly(Ratio.of(80), Ratio.of(80));
        assertThat(ends(EXACT, 1)).containsExactly(Ratio.of(19), Ratio.of(21));
    }

    @Test
    void readings_at_their_ends_hold_and_one_division_beyond_does_not() {
        assertThat(hold(EXACT, 80, 19)).isTrue();
        assertThat(hold(EXACT, 80, 21)).isTrue();
        assertThat(hold(EXACT, 80, 18)).isFalse();
        assertThat(hold(EXACT, 80, 22)).isFalse();
        assertThat(hold(EXACT, 79, 20)).isFalse();
        assertThat(hold(EXACT, 81, 20)).isFalse();
    }

    /**
     * Three lines, each half a division off at most: with N + e = 100.5 and N − e = 99.5 the line at 50 % takes from
     * 0.45 · 100.5 + 0.5 = 45.725 to 0.55 · 99.5 − 0.5 = 54.225, the one at 20 % from 18.59 to 21.39.
     */
    @Test
    void an_error_of_the_readings_narrows_the_ends() {
        ReadingEnds ends = new ReadingEnds(RandomFormulas.formula(5, 3, 2), Tolerances.of("10 %"), Ratio.of(1, 2));
        assertThat(ends(ends, 0)).containsExactly(Ratio.of(46), Ratio.of(54));
        assertThat(ends(ends, 2)).containsExactly(Ratio.of(19), Ratio.of(21));
    }
}
