package io.github.formulationmath.size;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.plan.Tolerances;
import io.github.formulationmath.quantity.MassFraction;
import io.github.formulationmath.support.RandomFormulas;
import io.github.formulationmath.weighing.Balance;
import java.util.Arrays;
import org.chocosolver.solver.Model;
import org.chocosolver.solver.variables.IntVar;
import org.junit.jupiter.api.Test;

/** A general-purpose constraint solver (choco) is told the definition of a batch as made, and finds the same smallest. */
class MadeWithinSolverTest {

    private static final int LARGEST = 2000;

    /** Whole n_i that add up to N, with |n_i/N − a_i/A| ≤ (p/q)·a_i/A, for the smallest N. */
    private static int smallestTotal(long[] parts, int p, int q) {
        int whole = (int) Arrays.stream(parts).sum();
        Model model = new Model();
        IntVar total = model.intVar("N", 1, LARGEST);
        IntVar[] readings = model.intVarArray("n", parts.length, 0, LARGEST);
        model.sum(readings, "=", total).post();
        for (int i = 0; i < parts.length; i++) {
            int a = (int) parts[i];
            IntVar[] both = {readings[i], total};
            model.scalar(both, new int[] {q * whole, -(q + p) * a}, "<=", 0).post();
            model.scalar(both, new int[] {q * whole, -(q - p) * a}, ">=", 0).post();
        }
        model.setObjective(Model.MINIMIZE, total);
        int best = -1;
        while (model.getSolver().solve()) {
            best = total.getValue();
        }
        return best;
    }

    @Test
    void a_general_solver_finds_the_same_smallest_batch() {
        RandomFormulas random = new RandomFormulas(71);
        for (int run = 0; run < 150; run++) {
            long[] parts = random.parts(40);
            int p = 2 + random.below(15);
            MinimumBatch.Found found = (MinimumBatch.Found) MinimumBatch.of(
                    RandomFormulas.formula(parts),
                    Balance.of("1 g", "10 kg"),
                    Criterion.madeWithin(Tolerances.of(MassFraction.of(Ratio.of(p, 100)))));
            assertThat(found.smallest().canonical())
                    .as("%s within %d %%", Arrays.toString(parts), p)
                    .isEqualTo(Ratio.of(smallestTotal(parts, p, 100)));
        }
    }
}
