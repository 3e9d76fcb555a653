package io.github.formulationmath.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.formulationmath.number.NumberTextException;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.number.Rounding;
import io.github.formulationmath.reckoning.Kind;
import io.github.formulationmath.reckoning.Phrase;
import io.github.formulationmath.reckoning.Reckoning;
import io.github.formulationmath.reckoning.Source;
import io.github.formulationmath.reckoning.Symbol;
import io.github.formulationmath.support.ValueContract;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class MoneyTest implements ValueContract<Money> {

    /** All in one currency, for only those have an order. */
    @Override
    public List<Money> different() {
        return List.of(
                Money.parse("12.50 EUR"),
                Money.parse("0 EUR"),
                Money.parse("-3 EUR"),
                Money.parse("1/3 EUR"),
                Money.parse("100 EUR"),
                Money.parse("0.01 EUR"));
    }

    @Override
    public List<Money> same() {
        return List.of(
                Money.of(Ratio.of(25, 2), "EUR"),
                Money.parse("3 EUR").plus(Money.parse("-3 EUR")),
                Money.parse("3 EUR").times(Ratio.of(-1)),
                Money.parse("1 EUR").dividedBy(Ratio.of(3)),
                AmountFormat.with(',').parseMoney("100,00 EUR"),
                Money.parse("0.0149 EUR").rounded(Rounding.toDecimalPlaces(2)));
    }

    @Test
    void a_sum_has_its_number_and_its_currency() {
        Money price = Money.parse("12.50 EUR");
        assertThat(price.number()).isEqualTo(Ratio.of(25, 2));
        assertThat(price.currency()).isEqualTo("EUR");
        assertThat(price.plus(Money.parse("0.75 EUR"))).isEqualTo(Money.parse("13.25 EUR"));
        assertThat(price.compareTo(Money.parse("12.49 EUR"))).isPositive();
        assertThat(price.compareTo(Money.parse("12.51 EUR"))).isNegative();
        assertThat(price.rounded(Rounding.toDecimalPlaces(1))).isSameAs(price);
    }

    @Test
    void the_same_number_in_another_currency_is_another_sum_and_cannot_be_compared() {
        Money euros = Money.parse("5 EUR");
        Money francs = Money.parse("5 CHF");
        assertThat(euros).isNotEqualTo(francs);
        assertThatThrownBy(() -> euros.compareTo(francs))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage(
                        "5 EUR and 5 CHF are in two currencies: give both in one of them, nothing is exchanged here");
    }

    @Test
    void a_currency_has_at_most_24_letters_or_signs() {
        String longest = "abcdefghijklmnopqrstuvwx";
        assertThat(Money.of(Ratio.ONE, longest).currency()).isEqualTo(longest);
        assertThat(Money.parse("3 €")).hasToString("3 €");
        for (String none : List.of("", longest + "y", "E R", "EU2")) {
            assertThatThrownBy(() -> Money.of(Ratio.ONE, none))
                    .isInstanceOf(IllegalArgumentException.class)
                    .hasMessage(
                            "currency is \"" + none + "\": it must be 1 to 24 letters or currency signs, such as EUR");
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"12.50", "EUR", " EUR", "12.50 ", "12.50EUR", ""})
    void a_text_without_number_space_and_currency_is_told_how_to_write_it(String text) {
        assertThatThrownBy(() -> Money.parse(text))
                .isInstanceOf(NumberTextException.class)
                .hasMessageContaining("a number, a space and a currency are needed, such as \"12.50 EUR\"");
    }

    @Test
    void people_read_a_decimal_beside_a_fraction() {
        assertThat(Money.parse("0.60 EUR").toldExactly()).isEqualTo("0.6 EUR");
        assertThat(Money.parse("2/3 EUR").toldExactly()).isEqualTo("2/3 EUR ≈ 0.666667 EUR");
    }

    /** Two packs of one price: the plainest owner of a cost. */
    private record Pair(Money price) {

        Money cost() {
            return price.times(Ratio.of(2)).withWorking(pair -> Phrase.of("question.given-value"), this, Pair::costIn);
        }

        private <V> V costIn(Reckoning<V> r) {
            return r.named(Symbol.of("m", "line-mass", Kind.MONEY), r.product(r.literal(2), r.known(price)));
        }
    }

    @Test
    void a_cost_tells_how_it_came_about_and_a_price_that_it_was_given() {
        Money cost = new Pair(Money.parse("12.50 EUR")).cost();
        assertThat(cost).isEqualTo(Money.parse("25 EUR"));
        assertThat(cost.working().steps()).hasSize(2);
        assertThat(cost.working().answer().value()).isEqualTo(Ratio.of(25));
        assertThat(cost.plus(cost).working().steps()).hasSize(1);
        assertThat(Money.parse("12.50 EUR").working().steps().get(0).source()).isEqualTo(Source.written("12.5 EUR"));
    }
}
