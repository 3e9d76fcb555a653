package io.github.formulationmath.choice;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.support.Formulas;
import io.github.formulationmath.weighing.Balance;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What shows that no cheaper set does as much: as few clauses as it takes, each of its own demand or total. */
class SetProofsTest {

    private static final Formula UNEVEN =
            Formula.inParts("uneven").line("Oil", "1000").line("Colour", "1").build();

    /** Serves alone from 1.6 g of colour on, which one step of 2 g reads a quarter too large: 1601.6 g. */
    private static final Equipment WIDE = balance("wide", "2 g", "6 kg", "1 EUR");

    /** Serves from 1001 g on beside one that carries the pot. */
    private static final Equipment FINE = balance("fine", "0.01 g", "1.5 g", "1.50 EUR");

    /** Of no use alone. */
    private static final Equipment COARSE = balance("coarse", "10 g", "1.5 kg", "0.50 EUR");

    private static Equipment balance(String name, String step, String capacity, String price) {
        return Equipment.balance(Balance.of(step, capacity).named(name), price);
    }

    private static EquipmentChoice choice() {
        return EquipmentChoice.of(List.of(WIDE, FINE, COARSE), List.of(Demand.of(UNEVEN, "1001 g", "5005 g", "25 %")));
    }

    private static List<String> told(EquipmentAnswer answer) {
        return answer.clauses().stream().map(EquipmentClause::toString).toList();
    }

    /** The cheapest first: with the coarse one there, either of the others would do, and the wide one is the cheaper. */
    @Test
    void what_is_cheap_and_of_no_use_does_not_stand_in_the_proof() {
        EquipmentAnswer answer = choice().cheapest();
        assertThat(answer.toBuy()).containsExactly(WIDE);
        assertThat(told(answer)).containsExactly("uneven needs one of {wide, fine}");
    }

    @Test
    void a_smaller_total_is_proven_by_what_it_needs_and_each_demand_by_what_it_needs_itself() {
        List<EquipmentAnswer> front = choice().front();
        assertThat(front).extracting(each -> each.totalSize().toString()).containsExactly("1601.6 g", "1001 g");
        assertThat(front.get(0).toBuy()).containsExactly(WIDE);
        EquipmentAnswer smaller = front.get(1);
        assertThat(smaller.toBuy()).containsExactly(FINE, COARSE);
        assertThat(told(smaller))
                .containsExactlyInAnyOrder(
                        "uneven needs one of {wide, fine}",
                        "uneven needs one of {wide, coarse}",
                        "batches of less than 1601.6 g together need one of {fine}");
        assertThat(smaller.clauses())
                .filteredOn(clause -> clause.demand().isPresent())
                .allMatch(clause -> clause.totalBelow().isEmpty());
    }

    /** A display of 1 g does not read 1.5 to 1.75 g of tocopherol within 5 %: what costs as much as the first fails. */
    @Test
    void a_set_that_was_found_twice_is_told_once() {
        EquipmentAnswer answer = EquipmentChoice.of(
                        List.of(
                                balance("tenth", "0.1 g", "2 kg", "5 EUR"),
                                balance("whole", "1 g", "2 kg", "5 EUR"),
                                balance("pocket", "0.01 g", "200 g", "3 EUR")),
                        List.of(Demand.of(Formulas.balm("balm"), "300 g", "350 g", "5 %")))
                .cheapest();
        assertThat(answer.toBuy()).extracting(Equipment::name).containsExactly("tenth");
        assertThat(answer.othersOfThatPrice()).isEmpty();
        assertThat(answer.isProven()).isTrue();
    }

    private static Equipment loads(String name, String least, String most, String price) {
        Balance balance = Balance.of("0.01 g", most).withMinimumLoad(Amount.mass(least));
        return Equipment.balance(balance.named(name), price);
    }

    private static Demand one(String name, String size) {
        return Demand.of(Formulas.only(name, "Oil"), size, size, "5 %");
    }

    /**
     * 10 · 10 · 11 sets of one price, one in eleven of which fails. Without the others the dearest would be spared first, the
     * one that weighs both 50 kg and 60 kg among them, for 1.50 EUR more.
     */
    @Test
    void of_the_sets_that_a_broken_off_search_found_one_that_serves_is_taken() {
        List<Equipment> all = new ArrayList<>();
        all.add(loads("both", "50 kg", "60 kg", "1.50 EUR"));
        all.add(loads("fifty", "50 kg", "50 kg", "1.50 EUR"));
        all.add(loads("sixty", "60 kg", "60 kg", "1.50 EUR"));
        all.add(loads("oil only", "1000 g", "1001 g", "1 EUR"));
        all.add(loads("colour only", "1 g", "1 g", "0.50 EUR"));
        for (int i = 0; i < 10; i++) {
            all.add(loads("uneven " + i, "1 g", "1001 g", "1 EUR"));
            all.add(loads("twenty " + i, "20 kg", "20 kg", "1 EUR"));
            all.add(loads("thirty " + i, "30 kg", "30 kg", "1 EUR"));
        }
        EquipmentAnswer answer = EquipmentChoice.of(
                        all,
                        List.of(
                                one("twenty", "20 kg"),
                                one("thirty", "30 kg"),
                                Demand.of(UNEVEN, "1001 g", "1001 g", "5 %"),
                                one("fifty", "50 kg"),
                                one("sixty", "60 kg")))
                .cheapest();
        assertThat(answer.isProven()).isFalse();
        assertThat(answer.servesAll()).isTrue();
        assertThat(answer.price()).hasToString("4.5 EUR");
        assertThat(answer.toBuy())
                .extracting(Equipment::name)
                .contains("both")
                .doesNotContain("oil only", "colour only");
    }
}
