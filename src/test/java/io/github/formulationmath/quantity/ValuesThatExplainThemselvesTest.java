package io.github.formulationmath.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.number.Rounding;
import io.github.formulationmath.reckoning.Kind;
import io.github.formulationmath.reckoning.Phrase;
import io.github.formulationmath.reckoning.Reckoning;
import io.github.formulationmath.reckoning.Source;
import io.github.formulationmath.reckoning.Symbol;
import io.github.formulationmath.reckoning.Working;
import io.github.formulationmath.support.ValueContract;
import javax.measure.quantity.Mass;
import org.junit.jupiter.api.Test;

class ValuesThatExplainThemselvesTest {

    private static final Phrase QUESTION = Phrase.of("question.given-value");

    /** Twice a reading: the plainest owner of a figure. */
    private record Twice(Amount<Mass> reading) {

        Amount<Mass> mass() {
            return reading.times(2).withWorking(twice -> QUESTION, this, Twice::massIn);
        }

        Amount<Mass> wrong() {
            return reading.times(3).withWorking(twice -> QUESTION, this, Twice::massIn);
        }

        private <V> V massIn(Reckoning<V> r) {
            return r.named(Symbol.of("m", "line-mass", Kind.MASS), r.product(r.literal(2), r.known(reading)));
        }
    }

    private final Amount<Mass> mass = new Twice(Amount.mass("1.25 g")).mass();

    @Test
    void an_amount_tells_how_it_came_about() {
        Working working = mass.working();
        working.check();
        assertThat(working.answer().value()).isEqualTo(Ratio.parse("2.5"));
        assertThat(working.steps()).hasSize(2);
        assertThat(working.toString()).contains("1.25 g").contains("2.5 g");
    }

    @Test
    void what_was_derived_is_told_from_what_was_given() {
        Amount<Mass> given = Amount.mass("2.5 g");
        assertThat(given.isGiven()).isTrue();
        assertThat(mass.isGiven()).isFalse();
        assertThat(given.withWorking(mass.origin()).isGiven()).isFalse();
        assertThat(given.withWorking(mass.origin()).working().steps()).hasSize(2);
        assertThat(mass.inUnitOf(Amount.mass("1 oz")).working().steps()).hasSize(2);
        assertThat(given.withoutWorking()).isSameAs(given);
    }

    /** The rest of a formula that has one other line. */
    private record Rest(MassFraction other) {

        MassFraction share() {
            return MassFraction.of(Ratio.ONE.minus(other.fraction()))
                    .withWorking(rest -> QUESTION, this, Rest::shareIn);
        }

        private <V> V shareIn(Reckoning<V> r) {
            return r.named(Symbol.of("w", "line-mass", Kind.SHARE), r.difference(r.literal(1), r.known(other)));
        }
    }

    @Test
    void a_share_tells_how_it_came_about_and_can_forget_it() {
        MassFraction share = new Rest(MassFraction.parse("2.50 %")).share();
        assertThat(share).isEqualTo(MassFraction.ofPercent("97.5"));
        assertThat(share.working().steps()).hasSize(2);
        MassFraction alone = share.withoutWorking();
        assertThat(alone).isEqualTo(share);
        assertThat(alone.working().steps()).hasSize(1);
        assertThat(alone.withoutWorking()).isSameAs(alone);
    }

    @Test
    void a_share_says_whether_it_was_written_or_handed_over() {
        assertThat(MassFraction.parse("2.50 %").source()).isEqualTo(Source.written("2.50 %"));
        assertThat(MassFraction.of(Ratio.of(1, 40)).source()).isEqualTo(Source.user());
    }

    @Test
    void equality_hash_and_text_look_at_value_and_unit_only() {
        Amount<Mass> given = Amount.mass("2.5 g");
        assertThat(mass).isEqualTo(given).hasSameHashCodeAs(given).hasToString("2.5 g");
        assertThat(mass.compareTo(given)).isZero();
    }

    @Test
    void another_unit_keeps_the_working_and_arithmetic_forgets_it() {
        assertThat(mass.to(FormulationUnits.OUNCE).working().steps()).hasSize(2);
        assertThat(mass.rounded(Rounding.toDecimalPlaces(1)).working().steps()).hasSize(2);
        assertThat(mass.rounded(Rounding.toDecimalPlaces(0)).working().steps()).hasSize(1);
        assertThat(mass.plus(mass).working().steps()).hasSize(1);
        assertThat(mass.withoutWorking().working().steps()).hasSize(1);
    }

    @Test
    void a_relation_that_leads_elsewhere_is_not_shown() {
        Amount<Mass> wrong = new Twice(Amount.mass("1.25 g")).wrong();
        assertThatThrownBy(wrong::working).isInstanceOf(IllegalStateException.class);
        assertThatThrownBy(() -> mass.withWorking(wrong.origin()))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("2.5 g");
    }

    @Test
    void what_was_given_says_so_with_its_text() {
        assertThat(Amount.mass("2.50 oz").working().answer().value()).isEqualTo(Ratio.parse("70.8738078125"));
        assertThat(MassFraction.parse("0.50 %").working().steps().get(0).source())
                .isEqualTo(Source.written("0.50 %"));
        assertThat(Amount.temperature("20 °C").working().answer().value()).isEqualTo(Ratio.of(20));
        assertThat(Money.parse("12.50 EUR").origin().number()).isEqualTo(Ratio.parse("12.5"));
    }

    @Test
    void a_serialized_form_comes_back_equal_and_as_given() throws Exception {
        Amount<Mass> back = ValueContract.copy(mass);
        assertThat(back).isEqualTo(mass);
        assertThat(back.working().steps()).hasSize(1);
    }

    @Test
    void intervals_and_money_refuse_what_cannot_meet() {
        Interval<Amount<Mass>> interval = Interval.of(Amount.mass("2.4 g"), Amount.mass("2.6 g"));
        assertThat(interval.contains(mass)).isTrue();
        assertThat(interval.contains(Amount.mass("2.7 g"))).isFalse();
        assertThat(interval).hasToString("[2.4 g, 2.6 g]");
        assertThatThrownBy(() -> Interval.of(Amount.mass("2 g"), Amount.mass("1 g")))
                .hasMessageContaining("least is 2 g and greatest is 1 g");
        assertThatThrownBy(() -> Money.parse("1 EUR").plus(Money.parse("1 CHF")))
                .hasMessageContaining("two currencies");
        assertThatThrownBy(() -> Money.parse("12.50")).hasMessageContaining("12.50 EUR");
        assertThatThrownBy(() -> Money.of(Ratio.ONE, "E R")).hasMessageContaining("currency");
        assertThat(Money.parse("12.50 EUR").times(Ratio.of(3)).dividedBy(Ratio.of(7)))
                .hasToString("75/14 EUR");
        assertThat(Money.parse("75/14 EUR").rounded(Rounding.toDecimalPlaces(2)))
                .isEqualTo(Money.parse("5.36 EUR"));
    }
}
