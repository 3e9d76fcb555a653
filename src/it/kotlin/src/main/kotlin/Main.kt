import io.github.formulationmath.formula.Formula
import io.github.formulationmath.number.Ratio
import io.github.formulationmath.plan.Bench
import io.github.formulationmath.plan.Closure
import io.github.formulationmath.plan.WeighingPlan
import io.github.formulationmath.quantity.Amount
import io.github.formulationmath.batch.Batch
import io.github.formulationmath.batch.BatchSize
import io.github.formulationmath.weighing.Balance
import java.io.PrintStream

/** Prints into the file that is named to it. */
fun main(args: Array<String>) {
    System.setOut(PrintStream(args[0], "UTF-8"))
    val third = Ratio.of(1, 3)
    println("${third + Ratio.of(1, 6)} ${third - Ratio.of(1, 6)} ${third * third} ${third / Ratio.of(2)} ${-third}")

    val poured = Amount.mass("12.5 g") + Amount.mass("1 oz") * Ratio.of(2)
    println("$poured, heavier than 69 g: ${poured > Amount.mass("69 g")}")

    val lotion = Formula.inPercent("Oat lotion")
        .quantitySufficient("Aqua")
        .line("Glycerin", "3.33 %")
        .build()
    val plan = WeighingPlan.of(
        Batch.of(lotion, BatchSize.ofMass("180 g")),
        Bench.of(Balance.of("0.1 g", "2 kg")).closing(Closure.CLOSED),
    )
    plan.lines().forEach { println("${it.name()}: ${it.reading()}") }

    // Nullness is declared: no "!!" is needed, and an Optional says where there may be nothing.
    val name: String = plan.batch().formula().name()
    println(name + ", " + lotion.quantitySufficientLine().map { it.name() }.orElse("no q.s. line"))
}
