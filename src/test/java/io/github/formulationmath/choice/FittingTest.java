package io.github.formulationmath.choice;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.Ingredient;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.Density;
import io.github.formulationmath.support.Formulas;
import io.github.formulationmath.support.WorkingAssertions;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.weighing.Vessel;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Which sizes a bench takes, by hand: a tenth of the batch, B, goes from a boat where a display of 1 g rounds it by more than
 * 0.45 % of it, and A, the rest, stays in the pot.
 */
class FittingTest {

    private static final Formula TWO =
            Formula.inPercent("two").line("A", "90 %").line("B", "10 %").build();
    private static final Equipment KITCHEN =
            Equipment.balance(Balance.of("1 g", "5 kg").named("kitchen"), "0 EUR");
    private static final Equipment BOAT = Equipment.boat(Vessel.of("boat", "2 g"), "0 EUR");
    private static final Equipment POT = Equipment.pot(Vessel.of("pot", "100 g"), "0 EUR");

    private static Equipment fine(String capacity) {
        return Equipment.balance(Balance.of("0.1 g", capacity).named("fine"), "0 EUR");
    }

    private static Demand demand(String least, String greatest) {
        return Demand.of(TWO, least, greatest, "0.45 %");
    }

    private static Fitting fitting(Demand demand, Equipment... things) {
        return new Fitting(demand, new EquipmentList(List.of(things)));
    }

    private static Fitting.Served all(Fitting fitting, int things) {
        return fitting.on((1L << things) - 1).orElseThrow();
    }

    private static boolean alike(Fitting fitting, int things, String grams) {
        return fitting.servesAlike(all(fitting, things), Ratio.parse(grams));
    }

    @Test
    void a_size_is_served_alike_if_every_line_passes_where_it_was() {
        Fitting fitting = fitting(demand("104 g", "300 g"), KITCHEN, fine("13 g"), BOAT);
        Fitting.Served served = all(fitting, 3);
        assertThat(served.grams()).isEqualTo(Ratio.of(104));
        assertThat(served.places()).containsExactly(new Fitting.Place(0, null), new Fitting.Place(1, 2));
        assertThat(alike(fitting, 3, "104")).as("the size itself").isTrue();
        assertThat(alike(fitting, 3, "103.9")).as("less than was wanted").isFalse();
        assertThat(alike(fitting, 3, "105")).as("94.5 g of A on 1 g").isFalse();
        assertThat(alike(fitting, 3, "104.5")).as("10.45 g of B on 0.1 g").isFalse();
        assertThat(alike(fitting, 3, "106.6"))
                .as("95.94 g of A and 10.66 g of B")
                .isTrue();
        assertThat(alike(fitting, 3, "110")).as("11 g in a boat of 2 g on 13 g").isTrue();
        assertThat(alike(fitting, 3, "110.1")).as("more than 11 g there").isFalse();
    }

    @Test
    void a_size_beside_the_step_is_not_served_alike() {
        Demand stepped = demand("104 g", "300 g").inStepsOf("1 g");
        Fitting fitting = fitting(stepped, KITCHEN, fine("13 g"), BOAT);
        assertThat(alike(fitting, 3, "107")).isTrue();
        assertThat(alike(fitting, 3, "106.6")).isFalse();
    }

    @Test
    void a_size_that_the_pot_or_the_range_does_not_hold_is_not_served_alike() {
        Equipment weak = Equipment.balance(Balance.of("1 g", "208 g").named("weak"), "0 EUR");
        Fitting onWeak = fitting(demand("104 g", "300 g"), weak, fine("13 g"), BOAT, POT);
        assertThat(alike(onWeak, 4, "108")).isTrue();
        assertThat(alike(onWeak, 4, "109")).isFalse();
        Fitting onStrong = fitting(demand("104 g", "300 g"), KITCHEN, fine("13 g"), BOAT, POT);
        assertThat(alike(onStrong, 4, "109")).isTrue();
        Fitting ranged = fitting(demand("104 g", "108 g"), KITCHEN, fine("13 g"), BOAT, POT);
        assertThat(alike(ranged, 4, "108")).isTrue();
        assertThat(alike(ranged, 4, "109")).isFalse();
    }

    /** 11 mL of 1 g/mL are 11 g, a tenth of 110 g. */
    @Test
    void a_boat_holds_a_line_up_to_its_volume_if_the_density_is_known() {
        Equipment small = Equipment.boat(Vessel.of("small", "2 g").holding("11 mL"), "0 EUR");
        Formula dense = Formula.inPercent("dense")
                .line("A", "90 %")
                .line(Ingredient.of("B").withDensity(Density.parse("1 g/mL")), "10 %")
                .build();
        Fitting known = fitting(Demand.of(dense, "104 g", "300 g", "0.45 %"), KITCHEN, fine("200 g"), small);
        assertThat(alike(known, 3, "110")).isTrue();
        assertThat(alike(known, 3, "110.1")).isFalse();
        Fitting unknown = fitting(demand("104 g", "300 g"), KITCHEN, fine("200 g"), small);
        assertThat(alike(unknown, 3, "110.1")).isTrue();
    }

    @Test
    void a_line_that_a_boat_just_holds_is_weighed_from_it() {
        assertThat(fitting(demand("107 g", "107 g"), KITCHEN, fine("12.7 g"), BOAT)
                        .serves(7))
                .isTrue();
        assertThat(fitting(demand("107 g", "107 g"), KITCHEN, fine("12.69 g"), BOAT)
                        .serves(7))
                .isFalse();
    }

    /** Below 10.7 g the finer balance is not to be used, and above it does not carry B: 107 g is the only size. */
    @Test
    void a_least_load_pushes_the_size_up_to_what_the_boat_just_holds() {
        Equipment shy = Equipment.balance(
                Balance.of("0.1 g", "12.7 g")
                        .withMinimumLoad(Amount.mass("10.7 g"))
                        .named("shy"),
                "0 EUR");
        Fitting.Served served = all(fitting(demand("106 g", "108 g"), KITCHEN, shy, BOAT), 3);
        assertThat(served.grams()).isEqualTo(Ratio.of(107));
        assertThat(served.pushed()).as("no window of a rounding starts there").isEmpty();
    }

    /** One step of 0.1 g is 0.5 % of 16 g, a quarter of it too much: 16 g and the tray of 4 g are all that 20 g carry. */
    @Test
    void the_first_pot_and_balance_serve_a_size_that_they_just_carry() {
        Equipment tray = Equipment.pot(Vessel.of("tray", "4 g"), "0 EUR");
        Equipment other = Equipment.pot(Vessel.of("other tray", "4 g"), "0 EUR");
        Equipment one = Equipment.balance(Balance.of("0.1 g", "20 g").named("one"), "0 EUR");
        Equipment two = Equipment.balance(Balance.of("0.1 g", "20 g").named("two"), "0 EUR");
        Demand balm = Demand.of(Formulas.balm("balm"), "10 g", "40 g", "25 %");
        Fitting.Served served = all(fitting(balm, tray, one, other, two), 4);
        assertThat(served.grams()).isEqualTo(Ratio.of(16));
        assertThat(served.main()).isEqualTo(1);
        assertThat(served.pot()).isZero();
        assertThat(served.places()).hasSize(3).containsOnly(new Fitting.Place(1, null));
        assertThat(served.pushed().map(Amount::canonical)).contains(Ratio.of(16));
        Equipment less = Equipment.balance(Balance.of("0.1 g", "19.9 g").named("less"), "0 EUR");
        assertThat(fitting(balm, tray, less).serves(3)).isFalse();
    }

    @Test
    void a_step_takes_the_size_beyond_what_pushed_it() {
        Equipment tenth = Equipment.balance(Balance.of("0.1 g", "1 kg").named("tenth"), "0 EUR");
        Demand stepped =
                Demand.of(Formulas.balm("balm"), "0 g", "400 g", "25 %").inStepsOf("6 g");
        EquipmentAnswer answer =
                EquipmentChoice.of(List.of(tenth), List.of(stepped)).cheapest();
        assertThat(answer.totalSize()).hasToString("18 g");
        WorkingAssertions.assertSelfChecking(answer.plans().get(0));
        assertThat(all(fitting(stepped, tenth), 1).pushed()).isEmpty();
        Demand free = Demand.of(Formulas.balm("balm"), "0 g", "400 g", "25 %");
        assertThat(all(fitting(free, tenth), 1).pushed().map(Amount::canonical)).contains(Ratio.of(16));
        Demand exact = Demand.of(Formulas.balm("balm"), "0 g", "400 g", "25 %").inStepsOf("4 g");
        assertThat(all(fitting(exact, tenth), 1).pushed().map(Amount::canonical))
                .contains(Ratio.of(16));
    }

    private static final Demand OIL = Demand.of(Formulas.only("oil", "Oil"), "0 g", "10 g", "25 %");

    /** One step of 0.1 g is a quarter too much for 0.08 g. */
    @Test
    void the_first_window_of_all_pushes_from_nothing() {
        Equipment tenth = Equipment.balance(Balance.of("0.1 g", "1 kg").named("tenth"), "0 EUR");
        Fitting.Served served = all(fitting(OIL, tenth), 1);
        assertThat(served.grams()).isEqualTo(Ratio.parse("0.08"));
        assertThat(served.pushed().map(Amount::canonical)).contains(Ratio.parse("0.08"));
    }

    @Test
    void a_least_load_that_pushes_from_nothing_is_no_window() {
        Equipment shy = Equipment.balance(
                Balance.of("0.1 g", "1 kg").withMinimumLoad(Amount.mass("5 g")).named("shy"), "0 EUR");
        Fitting.Served served = all(fitting(OIL, shy), 1);
        assertThat(served.grams()).isEqualTo(Ratio.of(5));
        assertThat(served.pushed()).isEmpty();
    }

    /** Two steps of 0.1 g and one of 0.2 g are a quarter too much for 0.16 g: the one in the pot is told. */
    @Test
    void a_size_that_two_balances_push_to_is_told_of_the_one_under_the_pot() {
        Equipment tenth = Equipment.balance(Balance.of("0.1 g", "1 kg").named("tenth"), "0 EUR");
        Equipment fifth = Equipment.balance(Balance.of("0.2 g", "1 kg").named("fifth"), "0 EUR");
        Demand oil = Demand.of(Formulas.only("oil", "Oil"), "0.14 g", "10 g", "25 %");
        Fitting.Served served = all(fitting(oil, tenth, fifth), 2);
        assertThat(served.grams()).isEqualTo(Ratio.parse("0.16"));
        assertThat(served.places()).containsExactly(new Fitting.Place(0, null));
        assertThat(served.pushed().orElseThrow().working().toString())
                .contains("d = 0.1 g")
                .doesNotContain("d = 0.2 g");
    }

    @Test
    void of_boats_that_carry_as_much_the_first_is_taken() {
        Equipment spoon = Equipment.boat(Vessel.of("spoon", "2 g"), "0 EUR");
        Equipment heavy = Equipment.boat(Vessel.of("heavy", "2.5 g"), "0 EUR");
        Demand demand = demand("104 g", "300 g");
        assertThat(all(fitting(demand, KITCHEN, fine("13 g"), heavy, BOAT, spoon), 5)
                        .places())
                .containsExactly(new Fitting.Place(0, null), new Fitting.Place(1, 3));
    }
}
