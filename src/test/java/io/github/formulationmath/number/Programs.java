package io.github.formulationmath.number;

import java.util.Arrays;
import java.util.List;

/** Linear programs of tests, with their numbers as text. */
final class Programs {

    private Programs() {}

    static LinearProgram program(List<Ratio> costs, LinearProgram.Row... rows) {
        return new LinearProgram(costs, List.of(rows));
    }

    static LinearProgram.Row row(String least, String... coefficients) {
        return new LinearProgram.Row(ratios(coefficients), Ratio.parse(least));
    }

    static List<Ratio> ratios(String... numbers) {
        return Arrays.stream(numbers).map(Ratio::parse).toList();
    }

    static LinearProgram.Answer.Optimal optimal(LinearProgram program) {
        return (LinearProgram.Answer.Optimal) program.solve();
    }
}
