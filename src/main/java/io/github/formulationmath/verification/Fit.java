package io.github.formulationmath.verification;

import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.verification.Verification.Cause;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * How well a hypothesis reproduces what was shown.
 *
 * @param slip the slip
 * @param hypothesis the way in which it was made
 * @param shown what was shown
 * @param missed how many figures it does not reproduce
 * @param figures how many wrong figures speak for it: those it reproduces, but for 0 and for a q.s. line that follows from
 *     the others
 */
record Fit(Slip slip, Hypothesis hypothesis, Shown shown, int missed, int figures) {

    /** Fewest figures missed, then most that speak for it, then closest; of two that are alike the first. */
    static final Comparator<Fit> BEST = Comparator.comparingInt(Fit::missed)
            .thenComparing(Fit::figures, Comparator.reverseOrder())
            .thenComparing(Fit::closest);

    /** The best way to make a slip, if there is any. */
    static Optional<Fit> best(Slip slip, Shown shown) {
        return slip.ways(shown)
                .map(hypothesis -> of(slip, hypothesis, shown))
                .reduce((a, b) -> BEST.compare(a, b) <= 0 ? a : b);
    }

    private static Fit of(Slip slip, Hypothesis hypothesis, Shown shown) {
        int missed = shown.wrong().size();
        int figures = 0;
        for (Map.Entry<Integer, Ratio> changed : hypothesis.grams().entrySet()) {
            FigureCheck line = shown.at(changed.getKey());
            if (line != null) {
                boolean reproduced = reproduces(shown, hypothesis, line, line.numberFor(changed.getValue()));
                missed += (reproduced ? 0 : 1) - (line.isWrong() ? 1 : 0);
                figures += reproduced && speaks(hypothesis, line) ? 1 : 0;
            }
        }
        return new Fit(slip, hypothesis, shown, missed, figures);
    }

    /** What nothing speaks for is never told, so how close it comes is not worked out. */
    private Ratio closest() {
        return figures == 0 ? Ratio.ZERO : worst();
    }

    /** How far off the farthest figure is, in steps. */
    private Ratio worst() {
        Ratio worst = shown.worstBeside(hypothesis.grams().keySet());
        for (Map.Entry<Integer, Ratio> changed : hypothesis.grams().entrySet()) {
            FigureCheck line = shown.at(changed.getKey());
            if (line != null && !closesAsRest(shown, hypothesis, line)) {
                worst = worst.max(line.distanceTo(line.numberFor(changed.getValue())));
            }
        }
        return worst;
    }

    private static boolean speaks(Hypothesis hypothesis, FigureCheck line) {
        return line.isWrong() && line.digits() > 0 && !follows(hypothesis, line);
    }

    private static boolean follows(Hypothesis hypothesis, FigureCheck line) {
        return hypothesis.restFollows() && line.formulaLine().isQuantitySufficient();
    }

    private static boolean reproduces(Shown shown, Hypothesis hypothesis, FigureCheck line, Ratio number) {
        return hypothesis
                        .display()
                        .mayShow(number, line.step().exactValue(), line.figure().number())
                || closesAsRest(shown, hypothesis, line);
    }

    /** The batch less the other figures as shown, and not as they were before rounding, is what the q.s. line takes, too. */
    private static boolean closesAsRest(Shown shown, Hypothesis hypothesis, FigureCheck line) {
        return follows(hypothesis, line) && shown.restCloses();
    }

    Cause cause() {
        List<FormulaLine> misses = new ArrayList<>();
        int digits = 0;
        for (FigureCheck line : shown.lines()) {
            Ratio grams = hypothesis.grams().get(line.formulaLine().position());
            boolean explained =
                    grams == null ? !line.isWrong() : reproduces(shown, hypothesis, line, line.numberFor(grams));
            if (!explained) {
                misses.add(line.formulaLine());
            } else if (speaks(hypothesis, line)) {
                digits += line.digits();
            }
        }
        return new Cause(slip, hypothesis.detail(), hypothesis.restFollows(), misses, worst(), figures, digits);
    }
}
