package io.github.formulationmath.mend;

import io.github.formulationmath.number.LinearProgram;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.pot.LineAddition;
import io.github.formulationmath.pot.MadeBatch;
import io.github.formulationmath.pot.MadeLine;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.Interval;
import io.github.formulationmath.weighing.ErrorModel;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import javax.measure.quantity.Mass;

/**
 * What additions that displays show put into the pot, most likely: {@code s·x − ρ} of every x above 0, where ρ stays in the
 * boat of the line and s corrects for the air. It is what {@link MadeBatch#plus} makes of them, so that what is advised to be
 * within is within once it was poured.
 *
 * @param scales s of every line
 * @param left ρ of every line, in grams
 * @param steps the step of its display, in grams
 */
record NetAdditions(List<Ratio> scales, List<Ratio> left, List<Ratio> steps) {

    static NetAdditions of(MadeBatch made) {
        List<Ratio> scales = new ArrayList<>();
        List<Ratio> left = new ArrayList<>();
        for (MadeLine line : made.lines()) {
            ErrorModel errors = line.balance().errors();
            Interval<Amount<Mass>> residue = errors.residue();
            boolean plain = residue.greatest().isZero()
                    && errors.buoyancy().equals(ErrorModel.readabilityOnly().buoyancy());
            // Two additions far above what stays behind tell both numbers.
            Ratio far = residue.greatest()
                    .canonical()
                    .plus(line.balance().readability().canonical())
                    .times(2);
            Ratio once = plain ? far : net(made, line, far);
            Ratio scale = plain
                    ? Ratio.ONE
                    : net(made, line, far.times(2)).minus(once).dividedBy(far);
            scales.add(scale);
            left.add(scale.times(far).minus(once));
        }
        return new NetAdditions(
                scales,
                left,
                made.lines().stream()
                        .map(line -> line.balance().readability().canonical())
                        .toList());
    }

    private static Ratio net(MadeBatch made, MadeLine line, Ratio shown) {
        return made.plus(List.of(LineAddition.of(line, Amount.grams(shown))))
                .line(line.line())
                .mass()
                .canonical()
                .minus(line.mass().canonical());
    }

    /** The lines of which something stays in the boat. */
    List<Integer> leaving() {
        return IntStream.range(0, left.size())
                .filter(j -> left.get(j).signum() > 0)
                .boxed()
                .toList();
    }

    /** What one addition puts in; at least 0. */
    Ratio net(int line, Ratio shown) {
        return shown.isZero()
                ? shown
                : scales.get(line).times(shown).minus(left.get(line)).max(Ratio.ZERO);
    }

    List<Ratio> net(List<Ratio> shown) {
        return IntStream.range(0, shown.size())
                .mapToObj(j -> net(j, shown.get(j)))
                .toList();
    }

    /** What a display has to show for so much to be put in. */
    Ratio shown(int line, Ratio net) {
        return net.isZero() ? net : net.plus(left.get(line)).dividedBy(scales.get(line));
    }

    /** A row about what is in the pot, as one about what displays show, when those lines of all that leave something are added to. */
    LinearProgram.Row shown(PotConstraint.Row row, Set<Integer> added) {
        Ratio least = row.least();
        for (int j : added) {
            least = least.plus(row.coefficient(j).times(left.get(j)));
        }
        Ratio unit = scales.get(0);
        return new LinearProgram.Row(
                IntStream.range(0, scales.size())
                        .mapToObj(j -> row.coefficient(j).times(scales.get(j).dividedBy(unit)))
                        .toList(),
                least.dividedBy(unit));
    }

    /** That just those lines are added to, each by more than stays behind, and the others that leave something are not. */
    List<LinearProgram.Row> choosing(Set<Integer> added) {
        List<LinearProgram.Row> rows = new ArrayList<>();
        for (int line : leaving()) {
            boolean is = added.contains(line);
            Ratio step = steps.get(line);
            Ratio least = left.get(line)
                    .dividedBy(scales.get(line))
                    .dividedBy(step)
                    .toWhole(RoundingMode.CEILING)
                    .max(Ratio.ONE)
                    .times(step);
            rows.add(new LinearProgram.Row(
                    IntStream.range(0, scales.size())
                            .mapToObj(j -> j == line ? Ratio.of(is ? 1 : -1) : Ratio.ZERO)
                            .toList(),
                    is ? least : Ratio.ZERO));
        }
        return rows;
    }

    /** The most that displays may show together, if so much may be put in. */
    Ratio mostShown(Ratio room) {
        Ratio scale = scales.stream().reduce(scales.get(0), Ratio::min);
        return left.stream().reduce(room, Ratio::plus).dividedBy(scale);
    }
}
