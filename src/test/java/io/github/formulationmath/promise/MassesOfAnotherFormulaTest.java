package io.github.formulationmath.promise;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.formulationmath.batch.Batch;
import io.github.formulationmath.batch.BatchSize;
import io.github.formulationmath.choice.BalanceAssignment;
import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.FormulaBuilder;
import io.github.formulationmath.formula.Ingredient;
import io.github.formulationmath.label.Label;
import io.github.formulationmath.label.LabelRule;
import io.github.formulationmath.limit.Conformity;
import io.github.formulationmath.limit.LimitChecker;
import io.github.formulationmath.limit.Product;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.plan.ExpectedProduct;
import io.github.formulationmath.plan.Tolerances;
import io.github.formulationmath.plan.WeighingPlan;
import io.github.formulationmath.pot.LineAddition;
import io.github.formulationmath.pot.MadeBatch;
import io.github.formulationmath.pot.Reading;
import io.github.formulationmath.pot.Readings;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.MassFraction;
import io.github.formulationmath.support.Checkers;
import io.github.formulationmath.support.HandWeighed;
import io.github.formulationmath.weighing.Addition;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.weighing.MadeMasses;
import io.github.formulationmath.weighing.Vessel;
import io.github.formulationmath.weighing.Weighed;
import io.github.formulationmath.weighing.WeighingMethod;
import io.github.formulationmath.weighing.WeighingStation;
import java.util.List;
import javax.measure.quantity.Mass;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;

/**
 * A formula's verdict never comes from another formula's masses. The formulas are too strong by construction: of 100 000
 * parts of the pot, more than 1 000 are phenoxyethanol, whose cap is 1 % (Regulation (EC) No 1223/2009, Annex V, entry 29).
 */
class MassesOfAnotherFormulaTest {

    private static final int PARTS = 100_000;
    private static final int CAP = 1_000;
    private static final Balance TENTH = Balance.of("0.1 g", "2 kg");
    private static final Balance THOUSANDTH = Balance.of("0.001 g", "2 kg");
    private static final LimitChecker CHECKER = Checkers.of(Product.leaveOn().on("face"));
    private static final List<String> NAMES =
            List.of("Phenoxyethanol", "Glycerin", "Aqua", "Cetearyl Alcohol", "Squalane");

    /** A formula whose first line has so many parts; the other lines share the rest. */
    private static Formula formula(String first, int parts, int lines, String phase) {
        FormulaBuilder draft = Formula.inPercent("F").phase(phase);
        draft.line(Ingredient.of(first), MassFraction.of(Ratio.of(parts, PARTS)));
        for (int i = 2; i < lines; i++) {
            draft.line(Ingredient.of(NAMES.get(i)), MassFraction.of(Ratio.of(1, 10)));
        }
        return draft.quantitySufficient(NAMES.get(lines == 2 ? 2 : 1)).build();
    }

    private static List<Weighed> everyWay(Formula formula) {
        Batch batch = Batch.of(formula, BatchSize.ofMass("500 g"));
        WeighingPlan plan = WeighingPlan.of(batch, TENTH);
        List<Reading> readings = plan.lines().stream()
                .map(line -> Reading.of(line.target().line(), line.reading()))
                .toList();
        Readings taken = Readings.of(plan, WeighingMethod.TARE_EACH, readings);
        MadeBatch made = MadeBatch.of(taken);
        Amount<Mass> little = Amount.mass("0.1 g");
        return List.of(
                ExpectedProduct.of(plan, WeighingMethod.TARE_EACH),
                ExpectedProduct.of(plan, WeighingMethod.CUMULATIVE),
                BalanceAssignment.of(
                        batch,
                        List.of(WeighingStation.inVessel(THOUSANDTH, Vessel.of("pot", "100 g"))),
                        Tolerances.of("99 %")),
                made,
                made.plus(List.of(LineAddition.of(formula.lines().get(0), little))));
    }

    @Property(tries = 300)
    void masses_of_another_formula_are_refused_and_its_own_are_judged(
            @ForAll @IntRange(min = 2 * CAP, max = 20 * CAP) int strong,
            @ForAll @IntRange(min = 1, max = CAP / 2) int weak,
            @ForAll @IntRange(min = 2, max = 5) int lines,
            @ForAll @IntRange(min = 2, max = 5) int otherLines,
            @ForAll boolean sameName,
            @ForAll boolean samePhase) {
        Formula exceeding = formula("Phenoxyethanol", strong, lines, "all");
        Formula harmless = formula(
                sameName ? "Phenoxyethanol" : "Glyceryl Stearate", weak, otherLines, samePhase ? "all" : "other");
        for (Weighed own : everyWay(exceeding)) {
            assertThat(CHECKER.check(own).verdict("EU-V-29").orElseThrow().conformity())
                    .isEqualTo(Conformity.EXCEEDS);
        }
        for (Weighed other : everyWay(harmless)) {
            Weighed wrong = new HandWeighed(exceeding, other.masses());
            assertThatIllegalArgumentException().isThrownBy(() -> CHECKER.check(wrong));
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> Label.of(LabelRule.eu()).list(wrong));
        }
    }

    /** The case that read WITHIN: 3 % preservative, judged by the masses of a formula with 0.5 % glycerin. */
    @Example
    void the_message_names_both_lines_and_the_way_out() {
        Formula cream = Formula.inPercent("cream")
                .line("Phenoxyethanol", "3 %")
                .quantitySufficient("Aqua")
                .build();
        Formula other = Formula.inPercent("other")
                .line("Glycerin", "0.5 %")
                .quantitySufficient("Oil")
                .build();
        Weighed wrong = new HandWeighed(cream, everyWay(other).get(0).masses());
        assertThatThrownBy(() -> CHECKER.check(wrong))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("mass 1 of weighed is of Glycerin 0.5 %")
                .hasMessageContaining("line 1 of \"cream\" is Phenoxyethanol 3 %")
                .hasMessageContaining("ExpectedProduct");
    }

    /** One name, two compositions: a name is not enough. */
    @Example
    void a_material_of_the_same_name_that_holds_something_else_is_another_line() {
        Formula mild = blend("0.1 %");
        Formula strong = blend("50 %");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> CHECKER.check(
                        new HandWeighed(strong, everyWay(mild).get(0).masses())));
    }

    private static Formula blend(String strength) {
        return Formula.inPercent("B")
                .line(
                        Ingredient.blend("Preservative")
                                .part("Phenoxyethanol", strength)
                                .rest("Glycerin"),
                        MassFraction.ofPercent("3"))
                .quantitySufficient("Aqua")
                .build();
    }

    @Example
    void masses_that_only_bear_the_names_of_the_lines_belong_to_no_formula() {
        Formula formula = formula("Phenoxyethanol", 3 * CAP, 2, "all");
        MadeMasses named = MadeMasses.of(formula.lines().stream()
                .map(line -> Addition.of(line.name(), Amount.mass("1 g"), Amount.mass("1 g"), TENTH))
                .toList());
        assertThatIllegalArgumentException()
                .isThrownBy(() -> CHECKER.check(new HandWeighed(formula, named)))
                .withMessageContaining("no line of a formula");
    }

    @Example
    void lines_in_another_order_are_refused() {
        Formula formula = formula("Phenoxyethanol", 3 * CAP, 2, "all");
        List<Addition> additions =
                HandWeighed.exactly(formula, "500 g", TENTH, WeighingMethod.TARE_EACH).masses().additions().stream()
                        .map(error -> error.addition())
                        .toList();
        MadeMasses swapped = MadeMasses.of(List.of(additions.get(1), additions.get(0)));
        assertThatIllegalArgumentException().isThrownBy(() -> CHECKER.check(new HandWeighed(formula, swapped)));
    }
}
