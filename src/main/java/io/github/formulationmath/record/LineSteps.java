package io.github.formulationmath.record;

import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.working.Subject;
import java.io.Serializable;
import java.math.BigInteger;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import javax.measure.quantity.Mass;

/**
 * In which steps each line can be added, in the order of the formula: those of the balance of the line. On another balance
 * than that of the bench a line is weighed in one go, and so at most what that balance carries; on the bench the room in
 * the pot is the limit.
 */
record LineSteps(MadeBatch made) implements Serializable {

    private MadeLine line(int line) {
        return made.lines().get(line);
    }

    Balance balance(int line) {
        return line(line).balance();
    }

    /** The step of a line in grams. */
    Ratio step(int line) {
        return balance(line).gramsPerDivision();
    }

    /** The greatest amount in grams of which the steps of all lines are multiples: so is every total of additions. */
    Ratio common() {
        Ratio common = step(0);
        for (int i = 1; i < made.lines().size(); i++) {
            common = common(common, step(i));
        }
        return common;
    }

    private static Ratio common(Ratio a, Ratio b) {
        if (a.equals(b)) {
            return a;
        }
        BigInteger crossed =
                a.numerator().multiply(b.denominator()).gcd(b.numerator().multiply(a.denominator()));
        return Ratio.of(crossed, a.denominator().multiply(b.denominator()));
    }

    Subject subject(int line) {
        return line(line).line();
    }

    boolean areAllAlike() {
        return made.lines().stream()
                .allMatch(line -> line.balance().gramsPerDivision().equals(step(0)));
    }

    /** Whether of any two steps one is a multiple of the other. */
    boolean divideEachOther() {
        List<Ratio> ascending = made.lines().stream()
                .map(line -> line.balance().gramsPerDivision())
                .distinct()
                .sorted()
                .toList();
        return IntStream.range(1, ascending.size())
                .allMatch(i -> ascending.get(i).dividedBy(ascending.get(i - 1)).isInteger());
    }

    /** A number of grams in steps of a line. */
    Ratio inSteps(int line, Ratio grams, RoundingMode mode) {
        return grams.dividedBy(step(line)).toWhole(mode);
    }

    /** The most steps of a line that are weighed in one go; a number that is larger is cut down to it. */
    Ratio atMostCarried(int line, Ratio steps) {
        return line(line).isOnBench()
                ? steps
                : steps.min(inSteps(line, balance(line).gramsCapacity(), RoundingMode.FLOOR));
    }

    /** Whether every line can be weighed in one go on its balance. */
    boolean areCarried(List<Ratio> steps) {
        for (int i = 0; i < steps.size(); i++) {
            if (!atMostCarried(i, steps.get(i)).equals(steps.get(i))) {
                return false;
            }
        }
        return true;
    }

    List<Ratio> grams(List<Ratio> steps) {
        List<Ratio> grams = new ArrayList<>(steps.size());
        for (int i = 0; i < steps.size(); i++) {
            grams.add(steps.get(i).times(step(i)));
        }
        return grams;
    }

    /** What the display of the balance of a line reads after some steps. */
    LineAddition shown(int line, Ratio steps) {
        return LineAddition.of(line(line), balance(line).readability().times(steps));
    }

    /** All steps together, in the unit of the balance of the bench. */
    Amount<Mass> total(List<Ratio> steps) {
        Ratio grams = grams(steps).stream().reduce(Ratio.ZERO, Ratio::plus);
        return Amount.grams(grams)
                .to(made.plan().bench().balance().readability().getUnit());
    }
}
