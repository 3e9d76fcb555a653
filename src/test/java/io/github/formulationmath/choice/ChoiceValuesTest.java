package io.github.formulationmath.choice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import io.github.formulationmath.batch.Batch;
import io.github.formulationmath.batch.BatchSize;
import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.Ingredient;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.plan.Tolerances;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.Density;
import io.github.formulationmath.reckoning.Entry;
import io.github.formulationmath.reckoning.Phrase;
import io.github.formulationmath.support.Formulas;
import io.github.formulationmath.support.ValueContract;
import io.github.formulationmath.support.WorkingAssertions;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.weighing.Vessel;
import io.github.formulationmath.weighing.WeighingStation;
import java.util.List;
import java.util.Optional;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

/** Equality and texts of what is asked about equipment and dilutions, and of what is answered. */
class ChoiceValuesTest {

    private static final Formula BALM = Formulas.balm("balm");
    private static final Equipment KITCHEN =
            Equipment.balance(Balance.of("1 g", "5 kg").named("kitchen"), "0 EUR");
    private static final Equipment POCKET =
            Equipment.balance(Balance.of("0.01 g", "200 g").named("pocket"), "18.50 EUR");
    private static final Equipment POT = Equipment.pot(Vessel.of("pot", "50 g"), "3 EUR");
    private static final Equipment BOAT = Equipment.boat(Vessel.of("boat", "2 g"), "0.80 EUR");

    private static ServingPlan plan(Demand demand, Equipment... things) {
        return EquipmentChoice.of(List.of(things), List.of(demand))
                .serving(List.of(things))
                .plans()
                .get(0);
    }

    private static Demand hundred() {
        return Demand.of(Formulas.balm("balm"), "100 g", "400 g", "5 %");
    }

    @Nested
    class OfAServingPlan implements ValueContract<ServingPlan> {

        @Override
        public List<ServingPlan> different() {
            return List.of(
                    plan(hundred(), KITCHEN, POCKET, BOAT),
                    plan(Demand.of(BALM, "110 g", "400 g", "5 %"), KITCHEN, POCKET, BOAT),
                    plan(hundred(), POCKET, BOAT),
                    plan(Demand.of(Formulas.balm("salve"), "100 g", "400 g", "5 %"), KITCHEN, POCKET, BOAT));
        }

        @Override
        public List<ServingPlan> same() {
            return different();
        }
    }

    /** The same demand at the same size in the same pot, and one line goes elsewhere; and the same lines in another pot. */
    @Test
    void a_plan_differs_by_its_demand_by_a_line_and_by_its_pot() {
        Equipment other = Equipment.boat(Vessel.of("spoon", "2 g"), "0.80 EUR");
        ServingPlan plan = plan(hundred(), KITCHEN, POCKET, BOAT);
        assertThat(plan).isNotEqualTo(plan(hundred(), KITCHEN, POCKET, other));
        assertThat(plan).isNotEqualTo(plan(Demand.of(BALM, "100 g", "401 g", "5 %"), KITCHEN, POCKET, BOAT));
        assertThat(plan).isNotEqualTo(plan(hundred(), KITCHEN, POCKET, BOAT, POT));
        assertThat(plan.hashCode())
                .isNotEqualTo(plan(hundred(), KITCHEN, POCKET, other).hashCode());
    }

    /** 79.5 g of oil are off by 0.63 % on 1 g, 20 g of wax by nothing, half a gram of tocopherol goes to the boat. */
    @Test
    void a_plan_tells_where_each_line_is_weighed_and_what_is_made() {
        ServingPlan plan = plan(hundred(), KITCHEN, POCKET, BOAT);
        assertThat(plan).hasToString("balm, 100 g: Oil, Wax on kitchen; Tocopherol on pocket from a boat");
        assertThat(plan.demand()).isEqualTo(hundred());
        assertThat(plan.formula()).isEqualTo(BALM);
        assertThat(plan.lines()).extracting(each -> each.line().name()).containsExactly("Oil", "Wax", "Tocopherol");
        WeighingStation kitchen = plan.pot();
        assertThat(plan.lines().get(0)).hasToString("Oil on " + kitchen);
        assertThat(plan.stations())
                .containsExactly(
                        kitchen,
                        WeighingStation.fromBoat(
                                Balance.of("0.01 g", "200 g").named("pocket"), Vessel.of("boat", "2 g")));
        assertThat(plan.masses().additions()).hasSize(3);
        assertThat(plan.masses().total().canonical()).isEqualTo(Ratio.parse("100.5"));
        assertThat(plan.lines().get(0).addition().reading()).hasToString("80 g");
        assertThat(plan.lines().get(0).addition().reading().origin().question().key())
                .isEqualTo("question.reading");
        WorkingAssertions.assertSelfChecking(plan);
        assertThat(plan.working().toString()).contains("C = 5000 g").contains("No smaller size");
    }

    @Test
    void a_balance_without_a_name_is_called_by_step_and_capacity() {
        Equipment nameless = Equipment.balance(Balance.of("0.1 g", "2 kg"), "5 EUR");
        assertThat(nameless.name()).isEqualTo("balance 0.1 g to 2 kg");
        assertThat(plan(hundred(), nameless)).hasToString("balm, 100 g: Oil, Wax, Tocopherol on balance 0.1 g to 2 kg");
    }

    @Test
    void equipment_is_told_with_its_price_which_is_not_negative() {
        assertThat(POCKET).hasToString("pocket, 18.5 EUR");
        assertThat(POT).hasToString("pot, 3 EUR");
        assertThat(BOAT).hasToString("boat, 0.8 EUR");
        assertThat(KITCHEN.isOwned()).isTrue();
        assertThat(POT.isOwned()).isFalse();
        for (ThrowingCallable below : List.<ThrowingCallable>of(
                () -> Equipment.balance(Balance.of("1 g", "5 kg"), "-0.01 EUR"),
                () -> Equipment.pot(Vessel.of("pot", "50 g"), "-0.01 EUR"),
                () -> Equipment.boat(Vessel.of("boat", "2 g"), "-0.01 EUR"))) {
            assertThatIllegalArgumentException()
                    .isThrownBy(below)
                    .withMessage("price is -0.01 EUR: it must be at least 0");
        }
    }

    @Test
    void a_demand_tells_its_sizes_and_refuses_those_that_are_none() {
        Demand demand = hundred();
        assertThat(demand).hasToString("balm at 100 g to 400 g, rounding of each line within ± 5 %");
        assertThat(demand.inStepsOf("5 g"))
                .hasToString("balm at 100 g to 400 g in steps of 5 g, rounding of each line within ± 5 %");
        assertThat(Demand.of(BALM, "0 g", "1 g", "5 %").sizes().least()).isEqualTo(Amount.mass("0 g"));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Demand.of(BALM, "0 g", "0 g", "5 %"))
                .withMessageContaining("sizes.greatest");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Demand.of(BALM, "-1 g", "1 g", "5 %"))
                .withMessageContaining("sizes.least");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> demand.inStepsOf("0 g"))
                .withMessageContaining("step");
    }

    @Test
    void a_clause_tells_who_needs_what() {
        List<Equipment> two = List.of(POT, BOAT);
        assertThat(new EquipmentClause(Optional.of(hundred()), Optional.empty(), two))
                .hasToString("balm needs one of {pot, boat}");
        assertThat(new EquipmentClause(Optional.empty(), Optional.of(Amount.mass("12.5 g")), two))
                .hasToString("batches of less than 12.5 g together need one of {pot, boat}");
        assertThat(new EquipmentClause(Optional.empty(), Optional.empty(), two))
                .hasToString("all need one of {pot, boat}");
    }

    @Test
    void what_is_not_served_tells_why_and_each_opening() {
        Phrase reason = Phrase.of("unserved.by-this-set");
        assertThat(new Unserved(hundred(), reason, List.of())).hasToString("balm: not served by this set");
        assertThat(new Unserved(
                        hundred(),
                        reason,
                        List.of(Phrase.of("opening.lighter-pot"), Phrase.of("opening.lighter-boat"))))
                .hasToString("balm: not served by this set; a lighter or larger pot would do;"
                        + " or a lighter or larger boat would do");
    }

    @Test
    void an_answer_tells_what_to_buy_and_the_price_is_explained() {
        EquipmentChoice choice =
                EquipmentChoice.of(List.of(KITCHEN, POCKET, BOAT), List.of(Demand.of(BALM, "20 g", "90 g", "5 %")));
        assertThat(choice).hasToString("1 formula, [kitchen, 0 EUR, pocket, 18.5 EUR, boat, 0.8 EUR]");
        EquipmentAnswer none = choice.within("0 EUR");
        assertThat(none.toString())
                .isEqualTo(
                        "nothing to buy; not served: balm: not served by this set; with pocket for 18.5 EUR more it would be");
        assertThat(none.isProven()).isTrue();
        assertThat(none.totalSize().canonical()).isEqualTo(Ratio.ZERO);
        EquipmentAnswer answer = choice.cheapest();
        assertThat(answer).hasToString("pocket for 18.5 EUR; smallest batches balm 20 g");
        assertThat(answer.isProven()).isTrue();
        assertThat(answer.origin().question().key()).isEqualTo("question.equipment-price");
        assertThat(answer.price().working().toString())
                .contains("pocket")
                .contains("balm needs one of {pocket}")
                .doesNotContain("kitchen =");
        assertThat(answer.totalSize().origin().question().key()).isEqualTo("question.sizes-together");
    }

    /** One step of 1 g is 0.5 % of it, 5 % too much, from 1/(0.005 · 1.05) g on, which is 190.476… g. */
    @Test
    void a_size_is_told_in_few_digits_that_serve_as_well() {
        assertThat(plan(Demand.of(BALM, "0 g", "400 g", "5 %"), KITCHEN).toString())
                .startsWith("balm, 190.5 g: ");
        assertThat(plan(Demand.of(BALM, "0 g", "190.48 g", "5 %"), KITCHEN).toString())
                .as("190.5 g is more than was wanted")
                .startsWith("balm, 190.48 g: ");
    }

    @Test
    void a_plan_shows_that_the_pot_is_carried_and_the_size_not_less_than_was_wanted() {
        assertThat(plan(hundred(), KITCHEN, POCKET, BOAT, POT).working().entries())
                .filteredOn(Entry.Decision.class::isInstance)
                .extracting(each -> {
                    Entry.Decision decision = (Entry.Decision) each;
                    return decision.left().value()
                            + decision.comparison().sign()
                            + decision.right().value();
                })
                .containsExactly("100≥100", "150≤5000");
    }

    @Test
    void a_price_and_a_total_number_what_they_add_up() {
        EquipmentAnswer answer = EquipmentChoice.of(
                        List.of(KITCHEN, POCKET, POT, BOAT),
                        List.of(
                                Demand.of(BALM, "20 g", "90 g", "5 %"),
                                Demand.of(Formulas.oilAndWax("wax"), "30 g", "90 g", "5 %")))
                .cheapest();
        assertThat(answer.price()).hasToString("21.5 EUR");
        assertThat(answer.price().working().toString()).contains("p_2", "p_3").doesNotContain("p_1", "p_4");
        assertThat(answer.totalSize()).hasToString("50 g");
        assertThat(answer.totalSize().working().toString())
                .contains("M_1", "M_2")
                .doesNotContain("M_0");
    }

    @Test
    void a_volume_is_considered_where_every_density_is_known() {
        Formula dense = Formula.inPercent("dense")
                .line(Ingredient.of("Oil").withDensity(Density.parse("0.9 g/mL")), "100 %")
                .build();
        Equipment jar = Equipment.pot(Vessel.of("jar", "50 g").holding("100 mL"), "1 EUR");
        List<Demand> both = List.of(Demand.of(dense, "10 g", "90 g", "5 %"), Demand.of(BALM, "20 g", "90 g", "5 %"));
        assertThat(EquipmentChoice.of(List.of(KITCHEN, jar, BOAT), both).notConsidered().stream()
                        .map(Object::toString))
                .containsExactly("the volume of jar was not considered for balm: densities are missing");
    }

    private static DilutedBatch diluted(String size, String... lines) {
        DilutedBatch diluted = DilutedBatch.of(Batch.of(Formulas.balm("balm"), BatchSize.ofMass(size)));
        for (String line : lines) {
            diluted = diluted.diluting(
                    BALM.line(line), BALM.line("Oil"), Balance.of("0.1 g", "2 kg"), Tolerances.of("5 %"));
        }
        return diluted;
    }

    @Nested
    class OfADilutedBatch implements ValueContract<DilutedBatch> {

        @Override
        public List<DilutedBatch> different() {
            return List.of(diluted("100 g"), diluted("100 g", "Tocopherol"), diluted("120 g", "Tocopherol"));
        }

        @Override
        public List<DilutedBatch> same() {
            return different();
        }
    }

    @Test
    void a_dilution_that_is_not_needed_says_why() {
        Batch batch = Batch.of(BALM, BatchSize.ofMass("100 g"));
        Predilution none = Predilution.of(
                batch, BALM.line("Wax"), BALM.line("Oil"), Balance.of("0.1 g", "2 kg"), Amount.mass("20 g"));
        assertThat(none).hasToString("Wax, 20 g, needs no dilution: the balance weighs from 20 g on");
        assertThat(Predilution.of(
                        batch, BALM.line("Wax"), BALM.line("Oil"), Balance.of("0.1 g", "2 kg"), Amount.mass("20.1 g")))
                .isInstanceOf(PredilutionPlan.class);
    }

    @Test
    void a_set_of_candidates_is_a_word_with_a_bit_for_each() {
        EquipmentList list = new EquipmentList(List.of(KITCHEN, POT, BOAT));
        assertThat(list.everything()).isEqualTo(0b111);
        assertThat(list.owned()).isEqualTo(0b001);
        assertThat(list.of(0b110)).containsExactly(POT, BOAT);
        EquipmentList longer = list.with(POCKET);
        assertThat(longer.everything()).isEqualTo(0b1111);
        assertThat(longer.of(0b1110)).containsExactly(POT, BOAT, POCKET);
    }

    /** As above from 190.476… g on; 190.5 g would be more than the balance carries. */
    @Test
    void a_larger_size_that_would_be_served_is_told_in_digits_that_are_carried_too() {
        for (String capacity : List.of("190.48 g", "191 g")) {
            Equipment scale = Equipment.balance(Balance.of("1 g", capacity).named("scale"), "5 EUR");
            Unserved why = EquipmentChoice.of(List.of(scale), List.of(Demand.of(BALM, "0 g", "100 g", "5 %")))
                    .cheapest()
                    .unserved()
                    .get(0);
            assertThat(why.openings().get(0))
                    .hasToString("from " + (capacity.equals("191 g") ? "190.5 g" : capacity) + " on it would be");
        }
    }
}
