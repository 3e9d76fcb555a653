package io.github.formulationmath.reckoning;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.number.Rounding;
import io.github.formulationmath.reckoning.Entry.Comparison;
import io.github.formulationmath.support.Workings;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A relation run plain gives the numbers by hand, and the same as when it is recorded. */
class PlainReckoningTest {

    private static final Ratio TENTH = Ratio.of(1, 10);

    /** (7 + 3 − 4) · 5 / 8 = 3.75 → 3.8 at a tenth; |3.8 − 9| = 5.2; √(5.2² ) = 5.2; the least of 5.2, 6 and 7. */
    private static <V> V relation(Reckoning<V> r) {
        V seven = r.given(Workings.LINE, Ratio.of(7), Source.user());
        V rest = r.difference(r.sum(seven, r.literal(3)), r.literal(Ratio.of(4)));
        V eighths = r.named(Workings.READING, r.quotient(r.product(rest, r.literal(5)), r.literal(8)));
        V rounded = r.rounded(eighths, Rounding.toMultipleOf(TENTH));
        V size = r.absolute(r.difference(rounded, r.literal(9)));
        V root = r.root(r.product(size, size));
        V least = r.minimum(List.of(root, r.literal(6), seven));
        return r.holds(least, Comparison.LESS, r.literal(6)) ? r.maximum(List.of(least, r.literal(1))) : r.literal(-1);
    }

    @Test
    void the_numbers_are_those_by_hand_and_of_the_record() {
        Reckoning<Ratio> plain = Reckoning.plain();
        Ratio number = relation(plain);
        assertThat(number).isEqualTo(Ratio.parse("5.2"));
        assertThat(plain.number(number)).isEqualTo(number);
        Working recorded = Working.of(Phrase.of("question.reading", "Wax"), number, PlainReckoningTest::relation);
        assertThat(recorded.answer().value()).isEqualTo(number);
        assertThat(recorded.steps()).hasSize(2);
    }

    @Test
    void comparisons_hold_or_not() {
        Reckoning<Ratio> r = Reckoning.plain();
        assertThat(r.holds(Ratio.ONE, Comparison.LESS, Ratio.of(2))).isTrue();
        assertThat(r.holds(Ratio.of(2), Comparison.LESS, Ratio.ONE)).isFalse();
        assertThat(r.sum(List.of())).isEqualTo(Ratio.ZERO);
        assertThat(r.sum(List.of(Ratio.ONE, Ratio.of(2), Ratio.of(3)))).isEqualTo(Ratio.of(6));
    }

    @Test
    void a_known_result_is_its_number() {
        Explained earlier = () -> Origin.of(
                test -> Phrase.of("question.reading", "Wax"), Ratio.parse("5.2"), this, PlainReckoningTest::ofTheTest);
        assertThat(Reckoning.plain().known(earlier)).isEqualTo(Ratio.parse("5.2"));
    }

    /** 1.5 kg, of which the canonical number is 1500. */
    @Test
    void a_quantity_is_its_number_of_grams_whatever_its_unit_and_source() {
        InUnit jar = new InUnit() {
            @Override
            public Ratio canonical() {
                return Ratio.of(1500);
            }

            @Override
            public String symbol() {
                return "kg";
            }

            @Override
            public Ratio unitSize() {
                return Ratio.of(1000);
            }
        };
        Reckoning<Ratio> r = Reckoning.plain();
        Subject none = Subject.none();
        assertThat(r.given(Workings.BATCH, jar, Source.user())).isEqualTo(Ratio.of(1500));
        assertThat(r.given(Workings.BATCH, none, jar, Source.user())).isEqualTo(Ratio.of(1500));
        assertThat(r.displayStep(Workings.STEP, none, jar, Source.user())).isEqualTo(Ratio.of(1500));
        assertThat(r.given(Workings.BATCH, none, jar, () -> nobodyRecords())).isEqualTo(Ratio.of(1500));
        assertThat(r.given(Workings.BATCH, none, Ratio.of(7), () -> nobodyRecords()))
                .isEqualTo(Ratio.of(7));
    }

    private static Source nobodyRecords() {
        throw new AssertionError("a source is made only if somebody records it");
    }

    private <V> V ofTheTest(Reckoning<V> r) {
        return relation(r);
    }
}
