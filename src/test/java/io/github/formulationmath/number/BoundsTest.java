package io.github.formulationmath.number;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.formulationmath.support.NullTester;
import io.github.formulationmath.support.ValueContract;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class BoundsTest implements ValueContract<Bounds> {

    private static final Ratio TWO = Ratio.of(2);
    private static final Ratio FIVE = Ratio.of(5);

    @Override
    public List<Bounds> different() {
        return List.of(
                Bounds.closed(TWO, FIVE), Bounds.atLeast(TWO), Bounds.atMost(FIVE), Bounds.point(TWO), Bounds.all());
    }

    @Override
    public List<Bounds> same() {
        return List.of(
                Bounds.atLeast(TWO).intersection(Bounds.atMost(FIVE)).orElseThrow(),
                Bounds.atLeast(Ratio.ONE).times(TWO),
                Bounds.all().intersection(Bounds.atMost(FIVE)).orElseThrow(),
                Bounds.closed(TWO, TWO),
                Bounds.all().times(TWO));
    }

    @Test
    void ends_belong_to_the_interval() {
        Bounds bounds = Bounds.closed(TWO, FIVE);
        assertThat(List.of(Ratio.ONE, TWO, Ratio.of(7, 2), FIVE, Ratio.of(6)).stream()
                        .map(bounds::contains))
                .containsExactly(false, true, true, true, false);
        assertThat(Bounds.all().contains(FIVE)).isTrue();
        assertThat(bounds.lower()).contains(TWO);
        assertThat(Bounds.atLeast(TWO).upper()).isEmpty();
    }

    @Test
    void enclosing_and_meeting_follow_the_ends() {
        assertThat(Bounds.atLeast(TWO).encloses(Bounds.closed(TWO, FIVE))).isTrue();
        assertThat(Bounds.closed(TWO, FIVE).encloses(Bounds.atLeast(TWO))).isFalse();
        assertThat(Bounds.closed(TWO, FIVE).encloses(Bounds.atMost(FIVE))).isFalse();
        assertThat(Bounds.all().encloses(Bounds.all())).isTrue();
        assertThat(Bounds.closed(TWO, FIVE).encloses(Bounds.closed(TWO, FIVE))).isTrue();
        assertThat(Bounds.atMost(FIVE).encloses(Bounds.atMost(FIVE))).isTrue();
        assertThat(Bounds.atMost(FIVE).encloses(Bounds.atMost(Ratio.of(6)))).isFalse();
        assertThat(Bounds.atLeast(TWO).encloses(Bounds.atLeast(Ratio.ONE))).isFalse();
        assertThat(Bounds.atLeast(TWO).encloses(Bounds.atMost(FIVE))).isFalse();
        assertThat(Bounds.atMost(TWO).intersection(Bounds.atLeast(TWO))).contains(Bounds.point(TWO));
        assertThat(Bounds.atMost(TWO).intersection(Bounds.atLeast(FIVE))).isEmpty();
        assertThat(Bounds.closed(TWO, FIVE)).hasToString("[2, 5]");
        assertThat(Bounds.all()).hasToString("(−∞, ∞)");
    }

    @Test
    void nonsense_is_refused() {
        assertThatThrownBy(() -> Bounds.closed(FIVE, TWO)).hasMessageContaining("5 lies above upper end 2");
        assertThatThrownBy(() -> Bounds.all().times(Ratio.ZERO)).hasMessageContaining("factor is 0");
    }

    @Test
    void null_is_refused_by_name() throws IllegalAccessException {
        NullTester tester = new NullTester(Map.of(Ratio.class, Ratio.ONE, Bounds.class, Bounds.all()));
        assertThat(tester.test(Bounds.class, Bounds.point(TWO))).isGreaterThan(7);
    }
}
