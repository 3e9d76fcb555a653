package io.github.formulationmath.weighing;

import io.github.formulationmath.number.Ratio;
import java.util.ArrayList;
import java.util.List;

/** Collects blocks of trials and says when their figures have settled (JCGM 101:2008, 7.9.4). */
final class Stability {

    private final double probability;
    private final int digits;
    private final List<SortedTrials> blocks = new ArrayList<>();
    private final List<double[]> figures = new ArrayList<>();
    private double count;
    private double mean;
    private double squares;

    Stability(double probability, int digits) {
        this.probability = probability;
        this.digits = digits;
    }

    void add(SortedTrials block) {
        CoverageInterval interval = block.symmetric(probability);
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
        return uncertainty > 0
                ? NumericalTolerance.of(Ratio.from(uncertainty), digits).doubleValue()
                : 0;
    }

    /** Steps f to k: at least two blocks, and twice the standard deviation of each mean figure within the tolerance. */
    boolean isReached() {
        if (figures.size() < 2) {
            return false;
        }
        double tolerance = tolerance();
        for (int figure = 0; figure < 4; figure++) {
            if (2 * deviationOfMean(figure) > tolerance) {
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

    MonteCarloResult result() {
        SortedTrials all = SortedTrials.of(blocks, mean, squares);
        return new MonteCarloResult(all, probability, tolerance(), isReached());
    }
}
