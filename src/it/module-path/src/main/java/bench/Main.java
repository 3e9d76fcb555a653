package bench;

import io.github.formulationmath.document.Format;
import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.plan.Bench;
import io.github.formulationmath.plan.Closure;
import io.github.formulationmath.plan.PlannedLine;
import io.github.formulationmath.plan.WeighingPlan;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.batch.Batch;
import io.github.formulationmath.batch.BatchSize;
import io.github.formulationmath.weighing.Balance;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import javax.measure.Quantity;
import javax.measure.quantity.Mass;

/** Plans a batch and hands an amount to code that knows JSR 385 only; prints into the file that is named to it. */
public final class Main {

    private Main() {}

    public static void main(String[] args) throws IOException {
        try (PrintStream out = new PrintStream(args[0], StandardCharsets.UTF_8)) {
            print(out);
        }
    }

    private static void print(PrintStream out) {
        Formula lotion = Formula.inPercent("Oat lotion")
                .quantitySufficient("Aqua")
                .line("Glycerin", "3.33 %")
                .line("Avena Sativa Kernel Oil", "12 %")
                .build();
        WeighingPlan plan = WeighingPlan.of(
                Batch.of(lotion, BatchSize.ofMass("123.4 g")),
                Bench.of(Balance.of("0.1 g", "2 kg")).closing(Closure.CLOSED));
        for (PlannedLine line : plan.lines()) {
            out.println(line.name() + ": " + line.target().mass() + " -> " + line.reading());
        }
        out.print(plan.line("Glycerin").target().working().document().print(Format.TEXT));
        out.println(unitOf(Amount.mass("1 lb")));
    }

    private static String unitOf(Quantity<Mass> quantity) {
        return quantity.getUnit().toString();
    }
}
