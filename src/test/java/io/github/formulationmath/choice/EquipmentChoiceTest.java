package io.github.formulationmath.choice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import io.github.formulationmath.batch.Batch;
import io.github.formulationmath.batch.BatchSize;
import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.plan.Tolerances;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.size.Criterion;
import io.github.formulationmath.support.Formulas;
import io.github.formulationmath.support.WorkingAssertions;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.weighing.Vessel;
import io.github.formulationmath.weighing.WeighingMethod;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Examples worked by hand, and what is said where nothing serves. */
final class EquipmentChoiceTest {

    private static final Formula LOTION = Formulas.thickenedLotion("Oat lotion");
    private static final Formula BALM = Formulas.sunflowerBalm("Balm");
    private static final Equipment KITCHEN =
            Equipment.balance(Balance.of("1 g", "5 kg").named("kitchen"), "0 EUR");
    private static final Equipment BENCH =
            Equipment.balance(Balance.of("0.1 g", "2 kg").named("bench"), "29.90 EUR");
    private static final Equipment POCKET =
            Equipment.balance(Balance.of("0.01 g", "200 g").named("pocket"), "18.50 EUR");
    private static final Equipment BEAKER = Equipment.pot(Vessel.of("beaker", "214 g"), "0 EUR");
    private static final Equipment CUP = Equipment.pot(Vessel.of("cup", "20 g"), "3.20 EUR");
    private static final Equipment BOAT = Equipment.boat(Vessel.of("boat", "2 g"), "0.80 EUR");
    private static final List<Equipment> ALL = List.of(KITCHEN, BENCH, POCKET, BEAKER, CUP, BOAT);

    private static EquipmentChoice both() {
        return EquipmentChoice.of(
                ALL, List.of(Demand.of(LOTION, "20 g", "200 g", "5 %"), Demand.of(BALM, "10 g", "100 g", "5 %")));
    }

    @Test
    void a_fine_balance_and_a_boat_beside_the_kitchen_balance_are_cheapest() {
        EquipmentAnswer answer = both().cheapest();

        assertThat(answer.toBuy()).containsExactly(POCKET, BOAT);
        assertThat(answer.price()).hasToString("19.3 EUR");
        assertThat(answer).hasToString("pocket and boat for 19.3 EUR; smallest batches Oat lotion 20 g, Balm 10 g");
        assertThat(answer.clauses().stream().map(EquipmentClause::toString))
                .contains("Oat lotion needs one of {bench, pocket}", "Oat lotion needs one of {bench, cup, boat}");
        assertThat(answer.isProven()).isTrue();
        WorkingAssertions.assertSelfChecking(answer.price());
        WorkingAssertions.assertSelfChecking(answer.totalSize());
        answer.plans().forEach(plan -> WorkingAssertions.assertSelfChecking(plan));
    }

    @Test
    void without_a_least_size_the_size_tells_which_line_pushed_it_up() {
        Demand demand = Demand.of(BALM, "0 g", "100 g", "5 %");
        ServingPlan plan =
                EquipmentChoice.of(ALL, List.of(demand)).cheapest().plans().get(0);

        // 0.5 % of 40/21 g is 0.01 g less 1/21 of it: one step of the pocket balance, 5 % too much.
        assertThat(plan.size().canonical()).isEqualTo(Ratio.of(40, 21));
        WorkingAssertions.assertSelfChecking(plan);
    }

    @Test
    void a_budget_buys_what_serves_most() {
        assertThat(both().within("19.29 EUR").plans()).isEmpty();
        assertThat(both().within("19.30 EUR").plans()).hasSize(2);
        EquipmentAnswer none = both().within("0 EUR");
        assertThat(none.toBuy()).isEmpty();
        assertThat(none.unserved()).hasSize(2);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> both().within("-1 EUR"))
                .withMessageContaining("budget is -1 EUR");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> both().within("20 CHF"))
                .withMessageContaining("two currencies");
    }

    @Test
    void buying_what_serves_most_for_its_price_is_dearer() {
        // Powders of 1, 0.1 and 0.01 g in 100 g: the middle balance serves two of three for little, the finest all.
        Formula[] powders = Stream.of("1 %", "0.1 %", "0.01 %")
                .map(share -> Formula.inPercent("with " + share)
                        .quantitySufficient("Aqua")
                        .line("Powder", share)
                        .build())
                .toArray(Formula[]::new);
        List<Demand> demands = Stream.of(powders)
                .map(formula -> Demand.of(formula, "100 g", "100 g", "5 %"))
                .toList();
        Equipment middle = Equipment.balance(Balance.of("0.1 g", "1 kg").named("middle"), "10 EUR");
        Equipment finest = Equipment.balance(Balance.of("0.01 g", "500 g").named("finest"), "16 EUR");
        EquipmentAnswer answer =
                EquipmentChoice.of(List.of(middle, finest), demands).cheapest();

        // One by one: "middle" serves 2 for 10, "finest" 3 for 16; 2/10 is more than 3/16, and then "finest" is needed
        // too: 26.
        assertThat(answer.toBuy()).containsExactly(finest);
        assertThat(answer.price()).hasToString("16 EUR");
    }

    @Test
    void where_each_line_by_itself_goes_to_another_pot_one_pot_is_found() {
        Formula formula = Formula.inPercent("Paste")
                .line("P", "25 %")
                .line("Q", "60 %")
                .line("R", "15 %")
                .build();
        Equipment fine = Equipment.balance(Balance.of("0.1 g", "600 g").named("K"), "10 EUR");
        Equipment coarse = Equipment.balance(Balance.of("1 g", "5 kg").named("L"), "10 EUR");
        Equipment small = Equipment.pot(Vessel.of("small", "100 g"), "1 EUR");
        Equipment large = Equipment.pot(Vessel.of("large", "500 g"), "1 EUR");
        Equipment heavy = Equipment.boat(Vessel.of("heavy boat", "590 g"), "1 EUR");
        EquipmentAnswer answer = EquipmentChoice.of(
                        List.of(fine, coarse, small, large, heavy),
                        List.of(Demand.of(formula, "1200 g", "1200 g", "1 %")))
                .cheapest();

        // Of P, 300 g, the finer balance is off least; but a pot of 1200 g does not go on it: the batch stays on the
        // other.
        ServingPlan plan = answer.plans().get(0);
        assertThat(answer.price()).hasToString("11 EUR");
        assertThat(plan.stations()).containsExactly(plan.pot());
        assertThat(plan.pot().balance().name()).isEqualTo("L");
        assertThat(answer.othersOfThatPrice()).containsExactly(List.of(coarse, large));
    }

    @Test
    void one_more_balance_never_serves_less() {
        Formula pair = Formula.inParts("Pair").line("A", "1.5").line("B", "7.5").build();
        Demand demand = Demand.of(pair, "9 g", "9 g", "1 %");
        Equipment half = Equipment.balance(Balance.of("0.5 g", "100 g").named("half"), "5 EUR");
        Equipment fifth = Equipment.balance(Balance.of("0.2 g", "100 g").named("fifth"), "0 EUR");
        EquipmentAnswer answer =
                EquipmentChoice.of(List.of(half, fifth), List.of(demand)).cheapest();

        assertThat(answer.toBuy()).containsExactly(half);
        assertThat(answer.plans().get(0).lines())
                .allSatisfy(line -> assertThat(line.station().balance().name()).isEqualTo("half"));
    }

    /** What is told to be missing within a budget is bought: then it serves, and nothing cheaper beside the set does. */
    @Test
    void what_a_budget_lacks_is_told_with_its_price() {
        Equipment lab = Equipment.balance(Balance.of("0.1 g", "500 g").named("lab"), "14 EUR");
        Equipment pocket = Equipment.balance(Balance.of("0.01 g", "200 g").named("pocket"), "18 EUR");
        Equipment boat = Equipment.boat(Vessel.of("boat", "2 g"), "2 EUR");
        EquipmentChoice choice = EquipmentChoice.of(
                List.of(KITCHEN, BEAKER, lab, pocket, boat), List.of(Demand.of(LOTION, "20 g", "30 g", "2 %")));
        EquipmentAnswer none = choice.within("5 EUR");
        assertThat(none.unserved().get(0).openings()).hasToString("[with pocket + boat for 20 EUR more it would be]");
        assertThat(choice.serving(List.of(pocket, boat)).servesAll()).isTrue();
        assertThat(choice.serving(List.of(boat)).unserved().get(0).openings())
                .hasToString("[with pocket for 18 EUR more it would be]");
    }

    @Test
    void what_would_open_it_was_tried() {
        EquipmentAnswer answer = EquipmentChoice.of(
                        List.of(KITCHEN, BEAKER), List.of(Demand.of(LOTION, "20 g", "200 g", "5 %")))
                .cheapest();

        assertThat(answer.servesAll()).isFalse();
        assertThat(answer.plans()).isEmpty();
        Unserved why = answer.unserved().get(0);
        assertThat(why.reason())
                .hasToString("Xanthan Gum is within what was asked on no balance at a size from 20 g to 200 g");
        assertThat(why.openings().stream().map(Object::toString))
                .containsExactly("from 317.5 g on it would be", "a balance of 0.5 g that carries 424 g would do");
        Equipment told = Equipment.balance(Balance.of("0.5 g", "424 g").named("told"), "9 EUR");
        assertThat(EquipmentChoice.of(
                                List.of(KITCHEN, BEAKER, told), List.of(Demand.of(LOTION, "20 g", "200 g", "5 %")))
                        .cheapest()
                        .servesAll())
                .isTrue();
        Equipment coarser = Equipment.balance(Balance.of("1 g", "10 kg").named("coarser"), "9 EUR");
        assertThat(EquipmentChoice.of(
                                List.of(KITCHEN, BEAKER, coarser), List.of(Demand.of(LOTION, "20 g", "200 g", "5 %")))
                        .cheapest()
                        .servesAll())
                .isFalse();
    }

    @Test
    void the_front_ends_where_everything_together_ends() {
        List<EquipmentAnswer> front = EquipmentChoice.of(ALL, List.of(Demand.of(LOTION, "0 g", "5 kg", "5 %")))
                .front();

        assertThat(front.get(0).price()).hasToString("0 EUR");
        // One step of 1 g is 0.3 % of it, 5 % too much: 1/(0.003 · 1.05) g; and of 0.01 g a hundredth of that, were
        // Aqua within as well.
        assertThat(front.get(0).totalSize().canonical()).isEqualTo(Ratio.of(20000, 63));
        EquipmentAnswer last = front.get(front.size() - 1);
        assertThat(last.totalSize())
                .isEqualTo(EquipmentChoice.of(ALL, List.of(Demand.of(LOTION, "0 g", "5 kg", "5 %")))
                        .serving(ALL)
                        .totalSize());
    }

    @Test
    void the_whole_error_of_an_addition_may_be_asked_for() {
        Criterion whole = Criterion.errorBound(Tolerances.of("5 %"), WeighingMethod.TARE_EACH);
        ServingPlan plan = EquipmentChoice.of(ALL, List.of(Demand.of(LOTION, "20 g", "800 g", whole)))
                .cheapest()
                .plans()
                .get(0);

        // 0.005 + 0.005 + 0.005 g are 5 % of 0.3 % of 100 g.
        assertThat(plan.size().canonical()).isEqualTo(Ratio.of(100));
        Batch batch = plan.batch();
        assertThat(BalanceAssignment.of(batch, plan.stations(), Tolerances.of("5 %"))
                        .unassigned())
                .isEmpty();
        WorkingAssertions.assertSelfChecking(plan);
    }

    @Test
    void pots_and_boats_hold_what_their_volume_and_the_densities_allow() {
        Formula oils = Formula.inPercent("Oils")
                .line(oil("Oil A"), "90 %")
                .line(oil("Oil B"), "10 %")
                .build();
        Equipment jar = Equipment.pot(Vessel.of("jar", "50 g").holding("100 mL"), "1 EUR");
        Equipment bowl = Equipment.pot(Vessel.of("bowl", "50 g").holding("200 mL"), "2 EUR");
        List<Equipment> candidates = List.of(BENCH, jar, bowl);

        // 100 mL of 0.9 g/mL are 90 g.
        assertThat(EquipmentChoice.of(candidates, List.of(Demand.of(oils, "90 g", "90 g", "5 %")))
                        .cheapest()
                        .toBuy())
                .containsExactly(BENCH, jar);
        assertThat(EquipmentChoice.of(candidates, List.of(Demand.of(oils, "90.1 g", "91 g", "5 %")))
                        .cheapest()
                        .toBuy())
                .containsExactly(BENCH, bowl);
        assertThat(
                        EquipmentChoice.of(candidates, List.of(Demand.of(LOTION, "90.1 g", "91 g", "5 %")))
                                .notConsidered()
                                .stream()
                                .map(Object::toString))
                .contains("the volume of jar was not considered for Oat lotion: densities are missing");
    }

    private static io.github.formulationmath.formula.Ingredient oil(String name) {
        return io.github.formulationmath.formula.Ingredient.of(name)
                .withDensity(io.github.formulationmath.quantity.Density.parse("0.9 g/mL"));
    }

    @Test
    void a_least_load_is_kept() {
        Equipment shy = Equipment.balance(
                Balance.of("0.01 g", "500 g")
                        .withMinimumLoad(Amount.mass("0.3 g"))
                        .named("shy"),
                "5 EUR");
        ServingPlan plan = EquipmentChoice.of(List.of(shy), List.of(Demand.of(LOTION, "20 g", "400 g", "5 %")))
                .cheapest()
                .plans()
                .get(0);

        assertThat(plan.size().canonical()).isEqualTo(Ratio.of(100));
        assertThat(Batch.of(LOTION, BatchSize.ofMass(plan.size()))
                        .line("Xanthan Gum")
                        .mass()
                        .canonical())
                .isEqualTo(Ratio.of(3, 10));
        WorkingAssertions.assertSelfChecking(plan);
    }

    @Test
    void what_cannot_be_chosen_from_is_refused() {
        List<Demand> demand = List.of(Demand.of(LOTION, "20 g", "200 g", "5 %"));

        assertThatIllegalArgumentException()
                .isThrownBy(() -> EquipmentChoice.of(List.of(BEAKER), demand))
                .withMessageContaining("at least one balance is needed");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> EquipmentChoice.of(List.of(BENCH, BENCH), demand))
                .withMessageContaining("two things called \"bench\"");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> EquipmentChoice.of(ALL, List.of()))
                .withMessageContaining("demands is empty");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Equipment.boat(Vessel.of("boat", "2 g"), "-1 EUR"))
                .withMessageContaining("price is -1 EUR");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> EquipmentChoice.of(
                                ALL,
                                List.of(Demand.of(LOTION, "20 g", "200 g", Criterion.madeWithin(Tolerances.of("5 %")))))
                        .cheapest())
                .withMessageContaining("looks at lines together");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> both().serving(List.of(Equipment.boat(Vessel.of("spoon", "2 g"), "1 EUR"))))
                .withMessageContaining("none of the candidates");
    }
}
