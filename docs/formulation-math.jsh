// Starts JShell with the library at hand:
//   jshell --class-path ... --startup DEFAULT --startup docs/formulation-math.jsh
import io.github.formulationmath.amendment.*;
import io.github.formulationmath.analysis.*;
import io.github.formulationmath.annex.*;
import io.github.formulationmath.batch.*;
import io.github.formulationmath.chemistry.*;
import io.github.formulationmath.choice.*;
import io.github.formulationmath.classroom.*;
import io.github.formulationmath.csv.*;
import io.github.formulationmath.document.*;
import io.github.formulationmath.emulsion.*;
import io.github.formulationmath.exercise.*;
import io.github.formulationmath.formula.*;
import io.github.formulationmath.json.*;
import io.github.formulationmath.label.*;
import io.github.formulationmath.limit.*;
import io.github.formulationmath.mend.*;
import io.github.formulationmath.number.*;
import io.github.formulationmath.packing.*;
import io.github.formulationmath.plan.*;
import io.github.formulationmath.pot.*;
import io.github.formulationmath.quantity.*;
import io.github.formulationmath.reckoning.*;
import io.github.formulationmath.record.*;
import io.github.formulationmath.series.*;
import io.github.formulationmath.sheet.*;
import io.github.formulationmath.shelf.*;
import io.github.formulationmath.simulation.*;
import io.github.formulationmath.size.*;
import io.github.formulationmath.soap.*;
import io.github.formulationmath.solution.*;
import io.github.formulationmath.verification.*;
import io.github.formulationmath.weighing.*;
import java.time.*;
import javax.measure.quantity.*;

// A formula, a balance and a plan to play with.
Formula lotion = Formula.inPercent("Oat lotion").
        phase("water").quantitySufficient("Aqua").line("Glycerin", "3.33 %").
        phase("oil").line("Avena Sativa Kernel Oil", "12 %").line("Glyceryl Stearate SE", "5 %").
        build();
Balance balance = Balance.of("0.1 g", "2 kg");
WeighingPlan plan = WeighingPlan.of(Batch.of(lotion, BatchSize.ofMass("180 g")), balance);

/** Prints a working. */
void show(Working working) { System.out.print(working.document().print(Format.TEXT)); }

/** Prints the working of a result. */
void why(Explained result) { show(result.working()); }

/** Prints the working of a smallest batch, or why there is none. */
void why(MinimumBatch batch) {
    if (batch instanceof MinimumBatch.Found found) { show(found.working()); } else { System.out.println(batch); }
}
void why(MinimumBatch.Found found) { show(found.working()); }

/** Prints the workings of both ends of a window, or what would open it. */
void why(BatchWindow window) {
    window.smallest().ifPresent(end -> show(end.working()));
    window.largest().ifPresent(end -> show(end.working()));
    if (window.smallest().isEmpty()) { System.out.println(window); }
}

/** Prints the sheet of a plan. */
void sheet(WeighingPlan plan) { System.out.print(BatchSheet.of(plan).print(Format.TEXT)); }

/** Prints the sheet of a soap on the balance above: what to weigh, the judgement on hydroxide, the cautions. */
void sheet(LyeCalculation lye) {
    System.out.print(SoapSheet.of(lye.soap(), lye.expectedOn(balance, WeighingMethod.TARE_EACH)).print(Format.TEXT));
}

/** Prints the sheet of a series of trials. */
void sheet(SeriesPlan plan) { System.out.print(SeriesSheet.of(plan).print(Format.TEXT)); }

/** A plan on the balance at hand. */
WeighingPlan plan(Formula formula, String mass) { return WeighingPlan.of(Batch.of(formula, BatchSize.ofMass(mass)), balance); }
