package io.github.formulationmath.batch;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.formula.Ingredient;
import io.github.formulationmath.formula.LineAmount;
import io.github.formulationmath.formula.Substance;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.number.Rounding;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.Density;
import io.github.formulationmath.quantity.FormulationUnits;
import io.github.formulationmath.quantity.MassFraction;
import io.github.formulationmath.support.Formulas;
import io.github.formulationmath.support.WorkingAssertions;
import javax.measure.quantity.Mass;
import org.junit.jupiter.api.Test;

class BatchTest {

    private static final Formula LOTION = Formula.inPercent("Oat lotion")
            .quantitySufficient(Ingredient.of("Aqua").withDensity(Density.ofGramsPerMillilitre("1")))
            .line(Ingredient.of("Glycerin").withDensity(Density.ofGramsPerMillilitre("1.25")), "2.5 %")
            .line(Ingredient.of("Oil").withDensity(Density.ofGramsPerMillilitre("0.9")), "18 %")
            .build();

    private static Ratio grams(Batch batch, String line) {
        return batch.line(line).mass().in(FormulationUnits.GRAM);
    }

    @Test
    void a_mass_is_shared_out_exactly() {
        Batch batch = Batch.of(LOTION, BatchSize.ofMass("400 g"));
        assertThat(grams(batch, "Glycerin")).isEqualTo(Ratio.of(10));
        assertThat(batch.lines().stream().map(line -> line.mass().canonical()).reduce(Ratio.ZERO, Ratio::plus))
                .isEqualTo(Ratio.of(400));
        batch.lines().forEach(WorkingAssertions::assertSelfChecking);
        WorkingAssertions.assertSelfChecking(batch);
    }

    @Test
    void packs_with_overage() {
        Batch batch = Batch.of(LOTION, BatchSize.ofPacks(12, Amount.mass("50 g"), MassFraction.ofPercent("5")));
        assertThat(batch.mass()).isEqualTo(Amount.mass("630 g"));
        WorkingAssertions.assertSelfChecking(batch);
    }

    @Test
    void the_stock_of_one_ingredient_fixes_the_batch() {
        Batch batch = Batch.of(LOTION, BatchSize.ofStock(LOTION.line("Oil"), Amount.mass("45 g")));
        assertThat(batch.mass()).isEqualTo(Amount.mass("250 g"));
        assertThat(grams(batch, "Oil")).isEqualTo(Ratio.of(45));
        WorkingAssertions.assertSelfChecking(batch);
        FormulaLine foreign = Formulas.only("other", "Oil").line("Oil");
        assertThatThrownBy(() -> Batch.of(LOTION, BatchSize.ofStock(foreign, Amount.mass("45 g"))))
                .hasMessageContaining("not a line of \"Oat lotion\"");
    }

    @Test
    void a_volume_at_a_density() {
        Batch batch =
                Batch.of(LOTION, BatchSize.ofVolume(Amount.volume("500 mL"), Density.ofGramsPerMillilitre("0.98")));
        assertThat(batch.mass()).isEqualTo(Amount.mass("490 g"));
        WorkingAssertions.assertSelfChecking(batch);
    }

    @Test
    void a_volume_by_the_densities_of_the_ingredients() {
        Batch batch = Batch.of(LOTION, BatchSize.ofVolume(Amount.volume("1015 mL")));
        // 0.795/1 + 0.025/1.25 + 0.18/0.9 = 0.795 + 0.02 + 0.2 = 1.015 mL per gram.
        assertThat(batch.mass()).isEqualTo(Amount.mass("1000 g"));
        WorkingAssertions.assertSelfChecking(batch);
        Formula unknown = Formulas.only("unknown", "Aqua");
        assertThatThrownBy(() -> Batch.of(unknown, BatchSize.ofVolume(Amount.volume("1 L"))))
                .hasMessageContaining("Aqua has no density");
    }

    @Test
    void a_batch_written_down_as_masses_is_the_same_formula() {
        Formula back = Batch.of(LOTION, BatchSize.ofMass("123.4 g")).asMasses();
        assertThat(back.lines().stream().map(FormulaLine::fraction))
                .isEqualTo(LOTION.lines().stream().map(FormulaLine::fraction).toList());
    }

    @Test
    void sizes_must_be_above_zero() {
        assertThatThrownBy(() -> BatchSize.ofMass("0 g")).hasMessageContaining("mass is 0 g");
        assertThatThrownBy(() -> BatchSize.ofPacks(0, Amount.mass("5 g"), MassFraction.ofPercent("0")))
                .hasMessageContaining("packs is 0");
        assertThatThrownBy(() -> BatchSize.ofVolume(Amount.volume("-1 mL"))).hasMessageContaining("above 0");
    }

    /** US Navy, Hospital Corpsman (NAVEDTRA 14295): 38 % of 120 g is 45.60 g. */
    @Test
    void percent_of_a_mass_by_the_handbook() {
        Formula formula = Formula.inPercent("handbook")
                .line("drug", "38 %")
                .quantitySufficient("base")
                .build();
        assertThat(grams(Batch.of(formula, BatchSize.ofMass("120 g")), "drug")).isEqualTo(Ratio.parse("45.60"));
    }

    /** US Army Medical Department, Subcourse MD0802: 240 g of 4 % (w/w) hold 9.6 g. */
    @Test
    void solute_per_weight_by_the_handbook() {
        Formula formula = Formula.inPercent("handbook")
                .line("drug", "4 %")
                .quantitySufficient("base")
                .build();
        assertThat(grams(Batch.of(formula, BatchSize.ofMass("240 g")), "drug")).isEqualTo(Ratio.parse("9.6"));
    }

    /** US Army Medical Department, Subcourse MD0802, dilution by weight: 454 g of 20 % make 648.57142 g of 14 %. */
    @Test
    void dilution_by_weight_by_the_handbook() {
        Ingredient twenty =
                Ingredient.blend("ointment 20 %").part("drug", "20 %").rest("base");
        Formula pure = Formula.inPercent("14 %")
                .line("drug", "14 %")
                .quantitySufficient("base")
                .build();
        Formula diluted = Formula.inPercent("14 % from 20 %")
                .line(twenty, "70 %")
                .quantitySufficient("base")
                .build();
        assertThat(diluted.composition()
                        .shareOf(Substance.of("drug"))
                        .orElseThrow()
                        .share())
                .isEqualTo(pure.line("drug").share());
        Batch batch = Batch.of(diluted, BatchSize.ofStock(diluted.line("ointment 20 %"), Amount.mass("454 g")));
        assertThat(batch.mass().canonical().rounded(Rounding.toDecimalPlaces(5).with(java.math.RoundingMode.DOWN)))
                .isEqualTo(Ratio.parse("648.57142"));
        assertThat(grams(batch, "base")).isEqualTo(batch.mass().canonical().minus(Ratio.of(454)));
    }

    /** US Navy, Hospital Corpsman (NAVEDTRA 10669-C), enlarging 32-fold: 3 parts of 4 become 96 of 128. */
    @Test
    void enlarging_by_the_handbook() {
        Formula formula = Formula.inParts("enlarge")
                .line("first", "3")
                .line("second", "1")
                .line("vehicle", "28")
                .build();
        Batch batch = Batch.of(formula, BatchSize.ofStock(formula.line("second"), Amount.mass("32 g")));
        assertThat(grams(batch, "first")).isEqualTo(Ratio.of(96));
        assertThat(batch.mass().canonical()).isEqualTo(Ratio.of(32 * 32));
    }

    @Test
    void a_formula_or_a_size_made_of_results_keeps_nothing_of_where_they_came_from() {
        Formula half = Formula.inPercent("half")
                .quantitySufficient("Aqua")
                .line("Glycerin", "50 %")
                .build();
        Batch first = Batch.of(half, BatchSize.ofMass("10 g"));
        Formula again = first.asMasses();
        Amount<Mass> written = ((LineAmount.Weight) again.line("Aqua").amount()).mass();
        assertThat(written.withoutWorking()).isSameAs(written);
        BatchSize.OfMass size =
                (BatchSize.OfMass) BatchSize.ofMass(first.line("Aqua").mass());
        assertThat(size.mass().withoutWorking()).isSameAs(size.mass());
    }
}
