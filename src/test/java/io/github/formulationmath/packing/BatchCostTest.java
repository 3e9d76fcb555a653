package io.github.formulationmath.packing;

import static io.github.formulationmath.pot.Lotion.g;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.number.Rounding;
import io.github.formulationmath.packing.BatchCost.Purchase;
import io.github.formulationmath.packing.PriceList.Offer;
import io.github.formulationmath.pot.Lotion;
import io.github.formulationmath.quantity.Money;
import io.github.formulationmath.support.WorkingAssertions;
import java.math.BigDecimal;
import java.math.MathContext;
import org.junit.jupiter.api.Test;

final class BatchCostTest {

    private static final PriceList PRICES = PriceList.empty()
            .with("Aqua", Offer.of("0 EUR", "1 kg"))
            .with("Glycerin", Offer.of("12.50 EUR", "250 g"))
            .with("Glycerin", Offer.of("1.90 EUR", "10 g"))
            .with("Avena Sativa Kernel Oil", Offer.of("9.99 EUR", "100 mL".replace("mL", "g")))
            .with("Glyceryl Stearate SE", Offer.of("7 EUR", "3 oz"))
            .with("Preservative blend", Offer.of("5.25 EUR", "30 g"));

    private static final Rounding CENTS = Rounding.toDecimalPlaces(2);

    private static BatchCost planned() {
        return BatchCost.of(Lotion.PLAN.batch(), PRICES, CENTS);
    }

    @Test
    void a_line_costs_its_share_of_a_pack() {
        BatchCost cost = planned();
        // 12 g at 12.50 for 250 g.
        assertThat(cost.lines().get(1).cost()).isEqualTo(Money.parse("0.6 EUR"));
        assertThat(cost.shown(cost.lines().get(1).cost())).isEqualTo("0.60 EUR");
        cost.lines().forEach(line -> WorkingAssertions.assertSelfChecking(line.cost()));
        WorkingAssertions.assertSelfChecking(cost);
        WorkingAssertions.assertSelfChecking(cost.perPack(7).working());
        assertThat(cost.perPack(7).times(Ratio.of(7))).isEqualTo(cost.total());
    }

    /** The total once more by {@link BigDecimal} to 40 digits. */
    @Test
    void the_total_is_the_sum_of_the_exact_costs() {
        MathContext digits = new MathContext(40);
        BigDecimal total = new BigDecimal("12")
                .multiply(new BigDecimal("12.50"))
                .divide(new BigDecimal("250"), digits)
                .add(new BigDecimal("48").multiply(new BigDecimal("9.99")).divide(new BigDecimal("100"), digits))
                .add(new BigDecimal("20").multiply(new BigDecimal("7")).divide(new BigDecimal("85.048569375"), digits))
                .add(new BigDecimal("4").multiply(new BigDecimal("5.25")).divide(new BigDecimal("30"), digits));
        assertThat(planned().shown(planned().total()))
                .isEqualTo(total.setScale(2, java.math.RoundingMode.HALF_EVEN).toPlainString() + " EUR");
    }

    @Test
    void whole_packs_are_bought_of_the_cheapest_offer() {
        BatchCost cost = planned();
        Purchase glycerin = cost.purchases().get(1);
        assertThat(glycerin.packs()).isEqualTo(Ratio.of(2));
        assertThat(glycerin.cost()).isEqualTo(Money.parse("3.80 EUR"));
        assertThat(glycerin.leftOver()).isEqualTo(g("8"));
        assertThat(cost.purchaseCost()).isEqualTo(Money.parse("26.04 EUR"));
        cost.purchases().forEach(purchase -> WorkingAssertions.assertSelfChecking(purchase.cost()));
        WorkingAssertions.assertSelfChecking(cost.purchaseCost().working());
    }

    @Test
    void what_was_really_put_in_is_what_it_costs() {
        BatchCost cost = BatchCost.of(Lotion.made("316.0", "25.0", "48.0", "20.0", "4.0"), PRICES, CENTS);
        assertThat(cost.lines().get(1).cost()).isEqualTo(Money.parse("1.25 EUR"));
        // Three packs of 10 g: 5.70.
        assertThat(cost.purchases().get(1).packs()).isEqualTo(Ratio.of(3));
        WorkingAssertions.assertSelfChecking(cost);
    }

    @Test
    void what_has_no_price_is_named() {
        assertThatThrownBy(() -> BatchCost.of(Lotion.PLAN.batch(), PriceList.empty(), CENTS))
                .hasMessageContaining("no offer for Aqua");
        assertThatThrownBy(() -> Offer.of("-1 EUR", "1 g")).hasMessageContaining("-1");
        assertThatThrownBy(() -> PRICES.with("Talc", Offer.of("1 CHF", "1 g")))
                .hasMessage("offers has prices in [EUR, CHF]: give all in one currency, nothing is exchanged here");
        assertThatThrownBy(() -> Offer.of("1 EUR", "0 g")).hasMessageContaining("0 g");
        assertThatThrownBy(() -> planned().perPack(0)).hasMessageContaining("0");
    }

    @Test
    void the_rounding_is_the_one_passed_in() {
        assertThat(planned().rounding()).isEqualTo(CENTS);
        assertThat(planned().shown(Money.parse("1/3 EUR"))).isEqualTo("0.33 EUR");
        BatchCost exact = BatchCost.of(Lotion.PLAN.batch(), PRICES, Rounding.none());
        assertThat(exact.shown(Money.parse("1/3 EUR"))).isEqualTo("1/3 EUR");
    }
}
