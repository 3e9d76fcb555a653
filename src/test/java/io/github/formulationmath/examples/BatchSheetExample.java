package io.github.formulationmath.examples;

import io.github.formulationmath.batch.Batch;
import io.github.formulationmath.batch.BatchSize;
import io.github.formulationmath.document.Document;
import io.github.formulationmath.document.Format;
import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.Ingredient;
import io.github.formulationmath.plan.Bench;
import io.github.formulationmath.plan.Closure;
import io.github.formulationmath.plan.ExpectedProduct;
import io.github.formulationmath.plan.Tolerances;
import io.github.formulationmath.plan.WeighingPlan;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.MassFraction;
import io.github.formulationmath.sheet.BatchSheet;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.weighing.Vessel;
import io.github.formulationmath.weighing.WeighingMethod;

/** The main job: a hand cream in percent, eight jars of it, on a balance that shows 0.1 g. */
public final class BatchSheetExample {

    private BatchSheetExample() {}

    /** A hand cream of our own, water to make up 100 %. */
    public static Formula handCream() {
        Ingredient preservative = Ingredient.blend("Preservative blend")
                .part("Phenoxyethanol", "90 %")
                .rest("Ethylhexylglycerin");
        return Formula.inPercent("Oat hand cream")
                .phase("A, water")
                .quantitySufficient("Aqua")
                .line("Glycerin", "4 %")
                .line("Xanthan Gum", "0.25 %")
                .phase("B, oil")
                .line("Avena Sativa Kernel Oil", "11.5 %")
                .line("Butyrospermum Parkii Butter", "6 %")
                .line("Glyceryl Stearate SE", "4.5 %")
                .line("Cetearyl Alcohol", "2 %")
                .phase("C, below 40 °C")
                .line(preservative, "0.9 %")
                .line("Tocopherol", "0.5 %")
                .build();
    }

    /** The plan for eight jars of 50 g with 3 % to spare. */
    public static WeighingPlan plan() {
        Batch batch = Batch.of(handCream(), BatchSize.ofPacks(8, Amount.mass("50 g"), MassFraction.ofPercent("3")));
        Bench bench = Bench.of(Balance.of("0.1 g", "2 kg"))
                .with(Vessel.of("glass beaker", "214 g"))
                .closing(Closure.CLOSED);
        return WeighingPlan.of(batch, bench);
    }

    /** Its sheet, with what it is sure to make if each line may be off by 5 % of itself. */
    public static Document sheet() {
        return BatchSheet.of(ExpectedProduct.of(plan(), WeighingMethod.TARE_EACH), Tolerances.of("5 %"));
    }

    /** Prints the batch sheet. */
    public static void main(String[] args) {
        System.out.print(sheet().print(Format.TEXT));
    }
}
