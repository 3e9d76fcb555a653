package io.github.formulationmath.verification;

import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.number.Ratio;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;

/**
 * How well a hypothesis reproduces what was shown.
 *
 * @param hypothesis the hypothesis
 * @param missed how many figures it does not reproduce
 * @param figures how many wrong figures speak for it: those it reproduces, but for 0 and for a q.s. line that follows from
 *     the others
 * @param worst how far off the farthest figure is, in steps
 */
record Fit(Hypothesis hypothesis, int missed, int figures, Ratio worst) {

    /** Fewest figures missed, then most that speak for it, then closest; of two that are alike the first. */
    static final Comparator<Fit> BEST = Comparator.comparingInt(Fit::missed)
            .thenComparing(Fit::figures, Comparator.reverseOrder())
            .thenComparing(Fit::worst)
            .thenComparing(fit -> fit.hypothesis().slip());

    static Fit of(Shown shown, Hypothesis hypothesis) {
        int missed = shown.wrong().size();
        int figures = 0;
        Ratio worst = shown.worstBeside(hypothesis.grams().keySet());
        for (Map.Entry<Integer, Ratio> changed : hypothesis.grams().entrySet()) {
            ShownLine line = shown.at(changed.getKey());
            if (line != null) {
                Ratio number = line.numberFor(changed.getValue());
                boolean reproduced = reproduces(shown, hypothesis, line, number);
                missed += (reproduced ? 0 : 1) - (line.isWrong() ? 1 : 0);
                figures += reproduced && speaks(hypothesis, line) ? 1 : 0;
                worst = closesAsRest(shown, hypothesis, line) ? worst : worst.max(line.distanceTo(number));
            }
        }
        return new Fit(hypothesis, missed, figures, worst);
    }

    private static boolean speaks(Hypothesis hypothesis, ShownLine line) {
        return line.isWrong()
                && line.digits() > 0
                && !(hypothesis.restFollows() && line.line().isQuantitySufficient());
    }

    private static boolean reproduces(Shown shown, Hypothesis hypothesis, ShownLine line, Ratio number) {
        return hypothesis.display().mayShow(number, line.step(), line.figure().number())
                || closesAsRest(shown, hypothesis, line);
    }

    /** The batch less the other figures as shown, and not as they were before rounding, is what the q.s. line takes, too. */
    private static boolean closesAsRest(Shown shown, Hypothesis hypothesis, ShownLine line) {
        return hypothesis.restFollows() && line.line().isQuantitySufficient() && shown.restCloses();
    }

    Cause cause(Shown shown) {
        List<FormulaLine> misses = new ArrayList<>();
        int digits = 0;
        for (ShownLine line : shown.lines()) {
            Ratio grams = hypothesis.grams().get(line.line().position());
            boolean explained =
                    grams == null ? !line.isWrong() : reproduces(shown, hypothesis, line, line.numberFor(grams));
            if (!explained) {
                misses.add(line.line());
            } else if (speaks(hypothesis, line)) {
                digits += line.digits();
            }
        }
        return new Cause(
                hypothesis.slip(), hypothesis.detail(), hypothesis.restFollows(), misses, worst, figures, digits);
    }
}
