package io.github.formulationmath.simulation;

import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.number.Rounding;
import java.util.ArrayList;
import java.util.List;

/** Collects blocks of trials and says when their figures have settled (JCGM 101:2008, 7.9.4). */
final class Stability {

    private final double probability;
    private final int digits;
    private final int leastBlocks;
    private final int deviations;
    private final List<SortedTrials> blocks = new ArrayList<>();
    private final List<double[]> figures = new ArrayList<>();
    private double count;
    private double mean;
    private double squares;

    /** As the standard has it: two blocks, two standard deviations. */
    static Stability ofStandard(double probability, int digits) {
        return new Stability(probability, digits, 2, 2);
    }

    /** Ten blocks, three standard deviations: what is settled so is settled by the standard too, and rarely by luck. */
    static Stability safe(double probability, int digits) {
        return new Stability(probability, digits, MonteCarlo.LEAST_BLOCKS, 3);
    }

    private Stability(double probability, int digits, int leastBlocks, int deviations) {
        this.probability = probability;
        this.digits = digits;
        this.leastBlocks = leastBlocks;
        this.deviations = deviations;
    }

    void add(SortedTrials block) {
        SortedTrials.Ends interval = block.symmetric(probability);
        blocks.add(block);
        figures.add(new double[] {block.mean(), block.standardDeviation(), interval.low(), interval.high()});
        double size = block.size();
        double step = block.mean() - mean;
        double together = count + size;
        mean += step * size / together;
        squares += block.squares() + step * step * count * size / together;
        count = together;
    }

    long trials() {
        return blocks.stream().mapToLong(SortedTrials::size).sum();
    }

    double tolerance() {
        double uncertainty = Math.sqrt(squares / (count - 1));
        return uncertainty > 0 ? tolerance(Ratio.from(uncertainty), digits).doubleValue() : 0;
    }

    /**
     * The numerical tolerance of an uncertainty: half a unit of the last digit that counts. Written c · 10^l with c of so many
     * digits, it is 10^l / 2: 0.00035 g with two digits is 35 · 10⁻⁵ g, its tolerance 0.000005 g (JCGM 101:2008, 7.9.2).
     */
    static Ratio tolerance(Ratio uncertainty, int significantDigits) {
        Rounding digits = Rounding.toSignificantDigits(significantDigits);
        return digits.stepFor(digits.apply(uncertainty)).dividedBy(2);
    }

    /** Steps f to k: enough blocks, and some standard deviations of each mean figure within the tolerance. */
    boolean isReached() {
        if (figures.size() < leastBlocks) {
            return false;
        }
        double tolerance = tolerance();
        for (int figure = 0; figure < 4; figure++) {
            if (deviations * deviationOfMean(figure) > tolerance) {
                return false;
            }
        }
        return true;
    }

    private double deviationOfMean(int figure) {
        int h = figures.size();
        double sum = 0;
        for (double[] block : figures) {
            sum += block[figure];
        }
        double average = sum / h;
        double deviations = 0;
        for (double[] block : figures) {
            double deviation = block[figure] - average;
            deviations += deviation * deviation;
        }
        return Math.sqrt(deviations / h / (h - 1));
    }

    /** All trials together. */
    SortedTrials all() {
        return SortedTrials.of(blocks, mean, squares);
    }
}
