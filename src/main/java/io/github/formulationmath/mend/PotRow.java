package io.github.formulationmath.mend;

import io.github.formulationmath.number.LinearProgram;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.reckoning.Reckoning;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.IntStream;

/**
 * A condition {@code Σ a_j·x_j ≥ b} of a pot in numbers, of which most coefficients are the same: it is held against additions
 * in as many steps as it has others, whatever the number of lines.
 *
 * @param common the coefficient of all lines that have none of their own
 * @param own the coefficients of the others, by line, from 0
 * @param least the right side b
 */
record PotRow(Ratio common, Map<Integer, Ratio> own, Ratio least) {

    static PotRow of(PotConstraint condition, int lines) {
        Reckoning<Ratio> plain = Reckoning.plain();
        Map<Integer, Ratio> own = new TreeMap<>();
        condition.own().forEach(line -> own.put(line, condition.coefficient(plain, line)));
        Ratio common = IntStream.range(0, lines)
                .filter(line -> !own.containsKey(line))
                .mapToObj(line -> condition.coefficient(plain, line))
                .findFirst()
                .orElse(Ratio.ZERO);
        return new PotRow(common, Collections.unmodifiableMap(own), condition.least(plain));
    }

    Ratio coefficient(int line) {
        return own.getOrDefault(line, common);
    }

    /** The lines that matter to it. */
    IntStream lines(int all) {
        return common.isZero()
                ? own.keySet().stream().mapToInt(line -> line)
                : IntStream.range(0, all).filter(line -> !coefficient(line).isZero());
    }

    /** How much of b is passed by additions with that total: not below 0 if the condition is kept. */
    Ratio slack(List<Ratio> x, Ratio total) {
        Ratio sum = common.times(total).minus(least);
        for (Map.Entry<Integer, Ratio> each : own.entrySet()) {
            sum = sum.plus(each.getValue().minus(common).times(x.get(each.getKey())));
        }
        return sum;
    }

    /** The same as a row of a linear program. */
    LinearProgram.Row dense(int lines) {
        return new LinearProgram.Row(
                IntStream.range(0, lines).mapToObj(this::coefficient).toList(), least);
    }
}
