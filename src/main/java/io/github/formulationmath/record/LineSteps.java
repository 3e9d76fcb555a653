package io.github.formulationmath.record;

import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.working.Subject;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import javax.measure.quantity.Mass;

/**
 * In which steps each line can be added, in the order of the formula: those of the balance of the line. On another balance
 * than that of the bench a line is weighed in one go, and so at most what that balance carries; on the bench the room in
 * the pot is the limit.
 */
record LineSteps(MadeBatch made) {

    private MadeLine line(int line) {
        return made.lines().get(line);
    }

    private Balance balance(int line) {
        return line(line).balance();
    }

    /** The step of a line in grams. */
    Ratio step(int line) {
        return balance(line).readability().canonical();
    }

    /** The steps of all lines in grams. */
    List<Ratio> steps() {
        return made.lines().stream()
                .map(line -> line.balance().readability().canonical())
                .toList();
    }

    Subject subject(int line) {
        return line(line).line();
    }

    boolean areAllAlike() {
        return steps().stream().distinct().count() == 1;
    }

    /** −x_i ≥ −c for every line that is weighed in one go on a balance of its own. */
    List<PotRow> carried() {
        List<PotRow> rows = new ArrayList<>();
        for (int i = 0; i < made.lines().size(); i++) {
            if (!line(i).isOnBench()) {
                rows.add(new PotRow(
                        Ratio.ZERO,
                        Map.of(i, Ratio.of(-1)),
                        balance(i).capacity().canonical().unaryMinus()));
            }
        }
        return rows;
    }

    /** What the display of the balance of a line reads for whole steps of it. */
    LineAddition shown(int line, Ratio grams) {
        return LineAddition.of(line(line), balance(line).readability().times(grams.dividedBy(step(line))));
    }

    /** Everything together, in the unit of the balance of the bench. */
    Amount<Mass> total(List<Ratio> grams) {
        return Amount.grams(grams.stream().reduce(Ratio.ZERO, Ratio::plus))
                .to(made.plan().bench().balance().readability().getUnit());
    }
}
