package io.github.formulationmath.choice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.support.Formulas;
import io.github.formulationmath.support.WorkingAssertions;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.weighing.Vessel;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Sets of one price, what is told of them, and what is said of a search that was broken off. */
class SetsToBuyTest {

    /** Weighs one load and no other. */
    private static Equipment only(String name, String load, String price) {
        Balance balance = Balance.of("0.01 g", load).withMinimumLoad(Amount.mass(load));
        return Equipment.balance(balance.named(name), price);
    }

    private static Demand one(String name, String size) {
        return Demand.of(Formulas.only(name, "Oil"), size, size, "5 %");
    }

    private static final Formula UNEVEN =
            Formula.inParts("uneven").line("Oil", "1000").line("Colour", "1").build();

    /** Three loads that eleven balances each weigh, one that takes two balances, one that a cheap and a dear one weigh. */
    private static EquipmentChoice manyAlike() {
        List<Equipment> all = new ArrayList<>();
        for (String load : List.of("10 g", "20 g", "30 g")) {
            IntStream.range(0, 11).forEach(i -> all.add(only(load + " number " + i, load, "1 EUR")));
        }
        all.add(only("cheap", "50 g", "1 EUR"));
        all.add(only("dear", "50 g", "5 EUR"));
        all.add(only("fine", "1 g", "3 EUR"));
        all.add(Equipment.balance(
                Balance.of("1 g", "1001 g")
                        .withMinimumLoad(Amount.mass("1000 g"))
                        .named("large"),
                "4 EUR"));
        all.add(only("old", "70 g", "0 EUR"));
        return EquipmentChoice.of(
                all,
                List.of(
                        one("ten", "10 g"),
                        one("twenty", "20 g"),
                        one("thirty", "30 g"),
                        Demand.of(UNEVEN, "1001 g", "1001 g", "5 %"),
                        one("fifty", "50 g")));
    }

    private static List<String> names(List<Equipment> set) {
        return set.stream().map(Equipment::name).toList();
    }

    /** After 1000 sets that all fail, what cannot be spared is left, the dearest spared first: 1 + 1 + 1 + 1 + 3 + 4 EUR. */
    @Test
    void a_search_that_is_broken_off_still_serves_and_says_so() {
        EquipmentAnswer answer = manyAlike().cheapest();
        assertThat(answer.servesAll()).isTrue();
        assertThat(answer.price()).hasToString("11 EUR");
        assertThat(names(answer.equipment()))
                .hasSize(7)
                .contains("cheap", "fine", "large", "old")
                .doesNotContain("dear");
        assertThat(names(answer.toBuy())).doesNotContain("old");
        assertThat(answer.isProven()).isFalse();
        assertThat(answer.toString()).endsWith(" (a cheaper set may be there: the search was broken off)");
    }

    @Test
    void a_budget_that_is_just_enough_buys_what_a_broken_off_search_found_and_a_cent_less_buys_less() {
        EquipmentAnswer enough = manyAlike().within("11 EUR");
        assertThat(enough.servesAll()).isTrue();
        assertThat(enough.price()).hasToString("11 EUR");
        assertThat(enough.isProven()).isFalse();
        EquipmentAnswer less = manyAlike().within("10.99 EUR");
        // Four of the five are served for 1 + 1 + 1 + 1 EUR.
        assertThat(less.plans()).hasSize(4);
        assertThat(less.unserved().get(0).demand().formula()).isEqualTo(UNEVEN);
        assertThat(less.price()).hasToString("4 EUR");
        assertThat(less.isProven()).isFalse();
    }

    private static final Equipment COARSE =
            Equipment.balance(Balance.of("1 g", "500 g").named("coarse"), "9 EUR");
    private static final Equipment FINE =
            Equipment.balance(Balance.of("0.1 g", "500 g").named("fine"), "9 EUR");
    private static final Equipment FINE_TOO =
            Equipment.balance(Balance.of("0.1 g", "500 g").named("fine too"), "9 EUR");
    private static final Demand BALM = Demand.of(Formulas.balm("balm"), "0 g", "400 g", "25 %");

    /** One step of the display is 0.5 % of the batch, a quarter of it too much: 160 g by steps of 1 g, 16 g by 0.1 g. */
    @Test
    void sets_of_one_price_are_all_told_once_and_a_front_tells_those_of_one_size() {
        EquipmentChoice choice = EquipmentChoice.of(List.of(COARSE, FINE, FINE_TOO), List.of(BALM));
        EquipmentAnswer cheapest = choice.cheapest();
        assertThat(cheapest.toBuy()).containsExactly(COARSE);
        assertThat(cheapest.othersOfThatPrice()).containsExactly(List.of(FINE), List.of(FINE_TOO));
        assertThat(cheapest.totalSize()).hasToString("160 g");
        EquipmentAnswer front = choice.front().get(0);
        assertThat(choice.front()).hasSize(1);
        assertThat(front.toBuy()).containsExactly(FINE);
        assertThat(front.othersOfThatPrice()).containsExactly(List.of(FINE_TOO));
        assertThat(front.totalSize()).hasToString("16 g");
        assertThat(front.clauses().stream().map(Object::toString))
                .as("the price is told to be the least, not the total")
                .containsExactly("balm needs one of {coarse, fine, fine too}");
    }

    @Test
    void within_a_budget_the_smaller_batch_is_taken_at_one_price_and_the_first_at_one_size() {
        EquipmentAnswer answer = EquipmentChoice.of(List.of(COARSE, FINE, FINE_TOO), List.of(BALM))
                .within("9 EUR");
        assertThat(answer.toBuy()).containsExactly(FINE);
        assertThat(answer.othersOfThatPrice()).containsExactlyInAnyOrder(List.of(COARSE), List.of(FINE_TOO));
        assertThat(answer.isProven()).isTrue();
    }

    /** Two demands for 2 EUR each, of which the budget serves one: the cheaper one, wherever it stands. */
    @Test
    void of_as_many_demands_the_cheapest_are_served() {
        List<Equipment> all = List.of(only("dear", "10 g", "3 EUR"), only("cheap", "20 g", "2 EUR"));
        Demand ten = one("ten", "10 g");
        Demand twenty = one("twenty", "20 g");
        for (List<Demand> order : List.of(List.of(ten, twenty), List.of(twenty, ten))) {
            EquipmentAnswer answer = EquipmentChoice.of(all, order).within("4 EUR");
            assertThat(names(answer.toBuy())).containsExactly("cheap");
            assertThat(answer.plans()).extracting(ServingPlan::demand).containsExactly(twenty);
            assertThat(answer.unserved().get(0).toString())
                    .isEqualTo("ten: not served by this set; with dear for 3 EUR more it would be");
        }
    }

    /** Of two demands as cheap as each other the one with the smaller batch. */
    @Test
    void of_as_many_demands_at_one_price_the_smallest_batches_are_made() {
        List<Equipment> all = List.of(only("first", "20 g", "2 EUR"), only("second", "10 g", "2 EUR"));
        EquipmentAnswer answer = EquipmentChoice.of(all, List.of(one("twenty", "20 g"), one("ten", "10 g")))
                .within("3 EUR");
        assertThat(names(answer.toBuy())).containsExactly("second");
        assertThat(answer.totalSize().canonical()).isEqualTo(Ratio.of(10));
        WorkingAssertions.assertSelfChecking(answer.totalSize());
        WorkingAssertions.assertSelfChecking(answer.price());
    }

    @Test
    void candidates_are_of_one_currency_and_sixty_at_most() {
        List<Demand> demands = List.of(one("ten", "10 g"));
        List<Equipment> sixty = new ArrayList<>();
        IntStream.range(0, 60).forEach(i -> sixty.add(only("number " + i, "10 g", (1 + i) + " EUR")));
        assertThat(EquipmentChoice.of(sixty, demands).cheapest().price()).hasToString("1 EUR");
        sixty.add(Equipment.boat(Vessel.of("boat", "1 g"), "1 EUR"));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> EquipmentChoice.of(sixty, demands))
                .withMessageContaining("candidates are 61, more than 60: leave out");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> EquipmentChoice.of(
                        List.of(only("one", "10 g", "1 EUR"), only("two", "10 g", "1 CHF")), demands))
                .withMessageContaining("two currencies");
    }

    /** 60 candidates are the most: where there are so many, no opening is tried that would be one more. */
    @Test
    void what_is_not_served_by_sixty_things_is_told_without_a_sixty_first() {
        List<Equipment> sixty = new ArrayList<>();
        IntStream.range(0, 59).forEach(i -> sixty.add(only("number " + i, "10 g", "1 EUR")));
        sixty.add(Equipment.pot(Vessel.of("pot", "5 g"), "1 EUR"));
        Unserved why = EquipmentChoice.of(sixty, List.of(one("ten", "10 g")))
                .cheapest()
                .unserved()
                .get(0);
        assertThat(why.openings()).isEmpty();
        assertThat(why).hasToString("ten: " + why.reason());
    }

    @Test
    void a_lighter_pot_is_told_to_be_what_is_missing() {
        Equipment scale = Equipment.balance(Balance.of("0.1 g", "100 g").named("scale"), "5 EUR");
        Equipment pot = Equipment.pot(Vessel.of("pot", "90.1 g"), "1 EUR");
        Unserved why = EquipmentChoice.of(List.of(scale, pot), List.of(one("ten", "10 g")))
                .cheapest()
                .unserved()
                .get(0);
        assertThat(why.reason())
                .hasToString("no size from 10 g to 10 g at which every line passes is also carried and held");
        assertThat(why.openings().stream().map(Object::toString))
                .contains("a lighter or larger pot would do")
                .doesNotContain("a lighter or larger boat would do");
        Equipment lighter = Equipment.pot(Vessel.of("pot", "90 g"), "1 EUR");
        assertThat(EquipmentChoice.of(List.of(scale, lighter), List.of(one("ten", "10 g")))
                        .cheapest()
                        .servesAll())
                .isTrue();
    }

    /** The fine balance carries 10 g of colour, and a boat of 9.1 g leaves room for 0.9 g. */
    @Test
    void a_lighter_boat_is_told_to_be_what_is_missing() {
        Equipment large = Equipment.balance(Balance.of("10 g", "2 kg").named("large"), "5 EUR");
        Equipment fine = Equipment.balance(Balance.of("0.01 g", "10 g").named("fine"), "5 EUR");
        Demand demand = Demand.of(UNEVEN, "1001 g", "1001 g", "5 %");
        Equipment heavy = Equipment.boat(Vessel.of("boat", "9.1 g"), "1 EUR");
        Unserved why = EquipmentChoice.of(List.of(large, fine, heavy), List.of(demand))
                .cheapest()
                .unserved()
                .get(0);
        assertThat(why.openings().stream().map(Object::toString))
                .contains("a lighter or larger boat would do")
                .doesNotContain("a lighter or larger pot would do");
        Equipment light = Equipment.boat(Vessel.of("boat", "9 g"), "1 EUR");
        assertThat(EquipmentChoice.of(List.of(large, fine, light), List.of(demand))
                        .cheapest()
                        .servesAll())
                .isTrue();
    }

    @Test
    void what_was_not_among_the_candidates_is_said_and_what_was_is_not() {
        EquipmentChoice bare = EquipmentChoice.of(List.of(FINE), List.of(BALM));
        assertThat(bare.notConsidered().stream().map(Object::toString))
                .containsExactly(
                        "no pot is among the candidates: one is taken that weighs nothing and holds everything",
                        "no boat is among the candidates: one is taken that weighs nothing and holds everything");
        EquipmentChoice whole = EquipmentChoice.of(
                List.of(
                        FINE,
                        Equipment.pot(Vessel.of("pot", "90 g"), "0 EUR"),
                        Equipment.boat(Vessel.of("boat", "2 g"), "0 EUR")),
                List.of(BALM));
        assertThat(whole.notConsidered()).isEmpty();
    }
}
