package io.github.formulationmath.benchmarks;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.FormulaBuilder;
import io.github.formulationmath.formula.Ingredient;
import io.github.formulationmath.limit.DecisionRule;
import io.github.formulationmath.limit.LimitChecker;
import io.github.formulationmath.limit.LimitReport;
import io.github.formulationmath.limit.LimitTable;
import io.github.formulationmath.limit.Product;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.MassFraction;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * One check is one formula of 20 lines against the whole bundled table, all five annexes: every line looked up, everything
 * that is limited added up on the basis of its limit, a verdict for every limit that counts something, sorted, and the list
 * of substances without a limit. 100 000 different formulas are checked in turn, each made before the clock starts, or one
 * again and again, as when its author tries amounts; names are in normal form since the formula was built.
 *
 * <p>Of the 20 lines about a fifth are substances the table limits: preservatives as such and as salts, fragrance
 * allergens, UV filters. The rest are oils, humectants and the like, which have to be looked up all the same.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(2)
public class LimitBenchmark {

    private static final int FORMULAS = 100_000;
    private static final int LINES = 20;
    private static final List<String> LIMITED = List.of(
            "Phenoxyethanol",
            "Sodium Benzoate",
            "Potassium Sorbate",
            "Benzyl Alcohol",
            "Linalool",
            "Limonene",
            "Citral",
            "Geraniol",
            "Titanium Dioxide",
            "Salicylic Acid");

    private final List<Formula> formulas = new ArrayList<>(FORMULAS);
    private LimitChecker checker;
    private int next;

    /** Makes the formulas and the checker. */
    @Setup
    public void prepare() {
        Random random = new Random(20240225);
        for (int i = 0; i < FORMULAS; i++) {
            formulas.add(formula(random));
        }
        checker = LimitChecker.of(
                LimitTable.eu2024February(),
                Product.leaveOn().on("face").ofKind("face_cream").inForm("cream"),
                DecisionRule.worstCase());
    }

    private static Formula formula(Random random) {
        FormulaBuilder draft = Formula.inPercent("formula").phase("all").quantitySufficient("Aqua");
        for (int line = 1; line < LINES; line++) {
            boolean limited = random.nextInt(5) == 0;
            String name =
                    limited ? LIMITED.get(random.nextInt(LIMITED.size())) : "Unlimited Oil " + random.nextInt(500);
            draft.phase("phase " + line)
                    .line(Ingredient.of(name), MassFraction.of(Ratio.of(1 + random.nextInt(400), 10_000)));
        }
        return draft.build();
    }

    /** The check of one formula that was checked before. */
    @Benchmark
    public LimitReport checkAgain() {
        return checker.check(formulas.get(0));
    }

    /** The check of one formula after another. */
    @Benchmark
    public LimitReport check() {
        next = next + 1 == FORMULAS ? 0 : next + 1;
        return checker.check(formulas.get(next));
    }
}
