package io.github.formulationmath.shelf;

import static io.github.formulationmath.support.Lots.NEWER;
import static io.github.formulationmath.support.Lots.OIL;
import static io.github.formulationmath.support.Lots.OLDER;
import static io.github.formulationmath.support.Lots.SHELF;
import static io.github.formulationmath.support.Lots.WATER;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;

import io.github.formulationmath.batch.Batch;
import io.github.formulationmath.batch.BatchSize;
import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.packing.PriceList.Offer;
import io.github.formulationmath.plan.Bench;
import io.github.formulationmath.plan.Tolerances;
import io.github.formulationmath.plan.WeighingPlan;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.size.Criterion;
import io.github.formulationmath.support.WorkingAssertions;
import io.github.formulationmath.weighing.Balance;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A shelf of our own, worked by hand. */
final class ShelfTest {

    private static final Formula LOTION = Formula.inPercent("Oat lotion")
            .phase("water")
            .quantitySufficient("Aqua")
            .line("Glycerin", "3 %")
            .phase("oil")
            .line("Avena Sativa Kernel Oil", "10 %")
            .phase("cool-down")
            .line("Glycerin", "2 %")
            .build();
    private static final Picking TODAY = Picking.on("2026-11-26");

    @Test
    void all_lines_and_lots_of_an_ingredient_count_together() {
        LargestBatch largest = SHELF.largest(LOTION, TODAY);

        assertThat(largest.mass()).isEqualTo(Amount.mass("400 g"));
        assertThat(largest.limiting()).containsExactly("Glycerin");
        assertThat(largest.next()).contains(Amount.mass("500 g"));
        assertThat(largest).hasToString("Oat lotion: 400 g, limited by Glycerin; with 5 g more Glycerin 500 g");
        WorkingAssertions.assertSelfChecking(largest);
    }

    @Test
    void a_line_from_one_lot_each_allows_what_the_best_dealing_does() {
        LargestBatch largest = SHELF.largest(LOTION, TODAY.withOneLotPerLine());

        // 3 % from 12 g and 2 % from 8 g: 400 g both; the other way round 266.67 g, and both from one lot 240 g.
        assertThat(largest.mass()).isEqualTo(Amount.mass("400 g"));
        WorkingAssertions.assertSelfChecking(largest);
        Taking taking = SHELF.take(Batch.of(LOTION, BatchSize.ofMass("400 g")), TODAY.withOneLotPerLine());
        assertThat(taking.isEnough()).isTrue();
        assertThat(taking.lotsOf(LOTION.line("water", "Glycerin"))).containsExactly(OLDER);
        assertThat(taking.lotsOf(LOTION.line("cool-down", "Glycerin"))).containsExactly(NEWER);
    }

    @Test
    void lots_are_used_in_order_named_and_paid_for() {
        Taking taking = SHELF.take(Batch.of(LOTION, BatchSize.ofMass("300 g")), TODAY);

        assertThat(taking)
                .hasToString("Aqua: 255 g of tap; Glycerin: 9 g of G-17; Avena Sativa Kernel Oil: 30 g of O-3;"
                        + " Glycerin: 3 g of G-17 and 3 g of G-21");
        // 12 g at 0.05, 3 g at 0.04, 30 g at 0.09 EUR.
        assertThat(taking.cost()).hasToString("3.42 EUR");
        WorkingAssertions.assertSelfChecking(taking);
        assertThat(taking.left().lots().get(3).left()).isEqualTo(Amount.mass("0 g"));
        assertThat(taking.left().lots().get(0).left()).isEqualTo(Amount.mass("5 g"));
        assertThat(taking.left().useFirst(TODAY)).doesNotContain(OLDER);
        assertThat(SHELF.useFirst(TODAY)).containsExactly(OLDER, NEWER, OIL, WATER);
    }

    @Test
    void readings_may_ask_for_more() {
        WeighingPlan plan =
                WeighingPlan.of(Batch.of(LOTION, BatchSize.ofMass("390 g")), Bench.of(Balance.of("5 g", "5 kg")));
        Taking taking = SHELF.take(plan, TODAY);

        // 11.7 and 7.8 g of Glycerin read 10 and 10 g.
        assertThat(taking.isEnough()).isTrue();
        assertThat(taking.lotsOf(LOTION.line("water", "Glycerin"))).containsExactly(OLDER);
        assertThat(SHELF.take(
                                WeighingPlan.of(
                                        Batch.of(LOTION, BatchSize.ofMass("400 g")),
                                        Bench.of(Balance.of("7 g", "5 kg"))),
                                TODAY)
                        .shortages())
                .singleElement()
                .hasToString("Glycerin 1 g");
    }

    @Test
    void on_its_use_by_day_a_lot_is_in_or_out_as_said() {
        Picking last = Picking.on("2026-12-31");

        assertThat(SHELF.largest(LOTION, last).mass()).isEqualTo(Amount.mass("400 g"));
        assertThat(SHELF.largest(LOTION, last.beforeUseByDay()).mass()).isEqualTo(Amount.mass("160 g"));
        assertThat(SHELF.past(Picking.on("2027-01-01"))).containsExactly(OLDER);
    }

    @Test
    void what_can_be_made_at_all_is_told_for_a_repertoire() {
        Formula balm = Formula.inPercent("Balm")
                .line("Cera Alba", "20 %")
                .quantitySufficient("Aqua")
                .build();
        Bench bench = Bench.of(Balance.of("0.1 g", "2 kg"));
        Criterion within = Criterion.roundingWithin(Tolerances.of("5 %"));
        List<Makeable> all = SHELF.makeable(List.of(within.on(LOTION, bench), within.on(balm, bench)), TODAY);

        assertThat(all.get(0)).hasToString("Oat lotion: up to 400 g");
        assertThat(all.get(1).isMakeable()).isFalse();
        // One step of 0.1 g is 20 % of it, 5 % too much.
        assertThat(all.get(1)).hasToString("Balm: not to be made; missing Cera Alba 0.09524 g");
        assertThat(all.get(1).limit().mass().isZero()).isTrue();
    }

    @Test
    void batches_one_after_another_are_counted() {
        assertThat(SHELF.largest(LOTION, TODAY).batchesOf(Amount.mass("150 g"))).isEqualTo(2);
        Formula plain = Formula.inPercent("Plain")
                .quantitySufficient("Aqua")
                .line("Glycerin", "5 %")
                .build();
        // 12 and 8 g of Glycerin in batches of 5 g each: two and one; mixed, four.
        LargestBatch parted = SHELF.largest(plain, TODAY.withOneLotPerLine());
        assertThat(parted.batchesOf(Amount.mass("100 g"))).isEqualTo(3);
        assertThat(SHELF.largest(plain, TODAY).batchesOf(Amount.mass("100 g"))).isEqualTo(4);
        assertThatIllegalArgumentException()
                .isThrownBy(
                        () -> SHELF.largest(LOTION, TODAY.withOneLotPerLine()).batchesOf(Amount.mass("100 g")))
                .withMessageContaining("stands in several lines");
    }

    @Test
    void what_is_wrong_is_refused_with_a_remedy() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> SHELF.with(Lot.of("GLYCERIN", "G-17", "1 g")))
                .withMessageContaining("give each a code of its own");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> SHELF.with(Lot.of("Wax", "W", "1 g").boughtAt(Offer.of("1 CHF", "1 g"))))
                .withMessageContaining("one currency");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> OIL.useBy("31.12.2026"))
                .withMessageContaining("write year, month and day");
        assertThatIllegalArgumentException().isThrownBy(() -> Lot.of("Wax", " ", "1 g"));
        assertThatIllegalArgumentException().isThrownBy(() -> Lot.of("Wax", "W", "-1 g"));
        Shelf unpriced = Shelf.of(List.of(WATER, OIL, Lot.of("Glycerin", "gift", "90 g")));
        assertThatIllegalStateException()
                .isThrownBy(() -> unpriced.take(Batch.of(LOTION, BatchSize.ofMass("100 g")), TODAY)
                        .cost())
                .withMessageContaining("lot gift of Glycerin has no price");
        assertThatIllegalStateException()
                .isThrownBy(() -> SHELF.take(Batch.of(LOTION, BatchSize.ofMass("500 g")), TODAY)
                        .cost())
                .withMessageContaining("short of");
    }
}
