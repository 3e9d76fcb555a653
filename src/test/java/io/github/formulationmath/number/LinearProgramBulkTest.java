package io.github.formulationmath.number;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.ojalgo.optimisation.Expression;
import org.ojalgo.optimisation.ExpressionsBasedModel;
import org.ojalgo.optimisation.Optimisation;

/**
 * Ten thousand random programs against an independent solver (ojAlgo 56): no answer of ours may leave a row unkept, and
 * none of the other solver's may be smaller. The other solver works in floating point, so it is held to the programs of
 * ordinary scale; on the others our own answer is checked exactly and against the same program unscaled.
 */
final class LinearProgramBulkTest {

    private static final int CASES = 2_500;

    /** How far a floating-point optimum may be off before the two are said to differ. */
    private static final double RELATIVE = 1e-7;

    private final Random random = new Random(20_261_125);

    @Test
    void ordinary_programs_agree_with_the_other_solver() {
        for (int i = 0; i < CASES; i++) {
            compare(random(() -> Ratio.of(random.nextInt(41) - 20, 1 + random.nextInt(9))));
        }
    }

    @Test
    void degenerate_programs_agree_with_the_other_solver() {
        for (int i = 0; i < CASES; i++) {
            // Few different small numbers, many zeros, and some rows twice: ties everywhere.
            LinearProgram program = random(() -> Ratio.of(Math.max(0, random.nextInt(6) - 3) - random.nextInt(2)));
            List<LinearProgram.Row> rows = new ArrayList<>(program.rows());
            rows.addAll(program.rows().subList(0, rows.size() / 2));
            compare(new LinearProgram(program.costs(), rows));
        }
    }

    @Test
    void programs_of_additions_agree_with_the_other_solver() {
        for (int i = 0; i < CASES; i++) {
            compare(additions());
        }
    }

    @Test
    void badly_scaled_programs_have_the_answer_of_the_program_unscaled() {
        for (int i = 0; i < CASES; i++) {
            LinearProgram program = additions();
            LinearProgram scaled = scaled(program);
            LinearProgram.Answer plain = program.solve();
            LinearProgram.Answer answer = scaled.solve();
            assertThat(answer.getClass()).isEqualTo(plain.getClass());
            if (answer instanceof LinearProgram.Answer.Optimal optimal) {
                assertThat(optimal.cost()).isEqualTo(((LinearProgram.Answer.Optimal) plain).cost());
                requireKept(scaled, optimal);
            }
        }
    }

    /** Every row times its own power of ten, from 1e-12 to 1e13. */
    private LinearProgram scaled(LinearProgram program) {
        List<LinearProgram.Row> rows = new ArrayList<>();
        for (LinearProgram.Row row : program.rows()) {
            Ratio factor = Ratio.parse("1e" + (random.nextInt(26) - 12));
            rows.add(new LinearProgram.Row(
                    row.coefficients().stream().map(c -> c.times(factor)).toList(),
                    row.least().times(factor)));
        }
        return new LinearProgram(program.costs(), rows);
    }

    private LinearProgram random(Supplier<Ratio> number) {
        int unknowns = 1 + random.nextInt(7);
        int count = 1 + random.nextInt(9);
        List<Ratio> costs = IntStream.range(0, unknowns)
                .mapToObj(j -> Ratio.of(random.nextInt(5)))
                .toList();
        List<LinearProgram.Row> rows = new ArrayList<>();
        for (int k = 0; k < count; k++) {
            List<Ratio> coefficients =
                    IntStream.range(0, unknowns).mapToObj(j -> number.get()).toList();
            rows.add(new LinearProgram.Row(coefficients, number.get()));
        }
        return new LinearProgram(costs, rows);
    }

    /** Readings off by up to a fifth, a tolerance, and now and then a line that cannot be added to. */
    private LinearProgram additions() {
        int lines = 2 + random.nextInt(9);
        List<Ratio> parts = IntStream.range(0, lines)
                .mapToObj(i -> Ratio.of(1 + random.nextInt(300)))
                .toList();
        Ratio whole = parts.stream().reduce(Ratio.ZERO, Ratio::plus);
        List<Ratio> made = parts.stream()
                .map(p -> p.times(Ratio.of(800 + random.nextInt(401), 1000)))
                .toList();
        Ratio total = made.stream().reduce(Ratio.ZERO, Ratio::plus);
        Ratio tolerance = Ratio.of(random.nextInt(60), 1000);
        List<LinearProgram.Row> rows = new ArrayList<>();
        for (int i = 0; i < lines; i++) {
            Ratio low = parts.get(i).dividedBy(whole).times(Ratio.ONE.minus(tolerance));
            Ratio high = parts.get(i).dividedBy(whole).times(Ratio.ONE.plus(tolerance));
            rows.add(row(lines, i, Ratio.ONE, low.unaryMinus(), low.times(total).minus(made.get(i))));
            rows.add(row(lines, i, Ratio.ONE.unaryMinus(), high, made.get(i).minus(high.times(total))));
            if (random.nextInt(12) == 0) {
                rows.add(row(lines, i, Ratio.ONE.unaryMinus(), Ratio.ZERO, Ratio.ZERO));
            }
        }
        return new LinearProgram(
                IntStream.range(0, lines).mapToObj(i -> Ratio.ONE).toList(), rows);
    }

    private static LinearProgram.Row row(int lines, int own, Ratio ownPart, Ratio each, Ratio least) {
        return new LinearProgram.Row(
                IntStream.range(0, lines)
                        .mapToObj(j -> j == own ? each.plus(ownPart) : each)
                        .toList(),
                least);
    }

    private static void compare(LinearProgram program) {
        LinearProgram.Answer ours = program.solve();
        Optimisation.Result theirs = solveElsewhere(program);
        if (ours instanceof LinearProgram.Answer.Optimal optimal) {
            requireKept(program, optimal);
            assertThat(theirs.getState().isFeasible()).as("%s", program).isTrue();
            double cost = optimal.cost().doubleValue();
            assertThat(theirs.getValue())
                    .as("%s", program)
                    .isCloseTo(cost, org.assertj.core.data.Offset.offset(RELATIVE * Math.max(1, Math.abs(cost))));
        } else {
            assertThat(theirs.getState().isFeasible()).as("%s", program).isFalse();
        }
    }

    private static void requireKept(LinearProgram program, LinearProgram.Answer.Optimal answer) {
        assertThat(answer.values()).allMatch(v -> v.signum() >= 0);
        for (LinearProgram.Row row : program.rows()) {
            Ratio left = Ratio.ZERO;
            for (int j = 0; j < answer.values().size(); j++) {
                left = left.plus(row.coefficients().get(j).times(answer.values().get(j)));
            }
            assertThat(left).isGreaterThanOrEqualTo(row.least());
        }
    }

    private static Optimisation.Result solveElsewhere(LinearProgram program) {
        ExpressionsBasedModel model = new ExpressionsBasedModel();
        for (int j = 0; j < program.costs().size(); j++) {
            model.newVariable("x" + j).lower(0).weight(program.costs().get(j).doubleValue());
        }
        for (int k = 0; k < program.rows().size(); k++) {
            LinearProgram.Row row = program.rows().get(k);
            Expression expression =
                    model.newExpression("r" + k).lower(row.least().doubleValue());
            for (int j = 0; j < row.coefficients().size(); j++) {
                expression.set(j, row.coefficients().get(j).doubleValue());
            }
        }
        return model.minimise();
    }
}
