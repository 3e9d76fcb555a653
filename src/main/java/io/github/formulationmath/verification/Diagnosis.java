package io.github.formulationmath.verification;

import io.github.formulationmath.verification.Verification.Cause;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What would explain figures that disagree: a slip is a cause only if it reproduces every figure within its own rounding. A
 * figure in which no digit counts explains nothing: where there are no others, there is no cause.
 *
 * @param causes the slips that reproduce every figure, the closest first
 * @param runnerUp the closest of the others, if it explains at least half of what there is to explain
 */
record Diagnosis(List<Cause> causes, Optional<Cause> runnerUp) {

    static final Diagnosis NONE = new Diagnosis(List.of(), Optional.empty());

    static Diagnosis of(Shown shown) {
        List<Cause> causes = new ArrayList<>();
        List<Cause> others = new ArrayList<>();
        Stream.of(Slip.values())
                .flatMap(slip -> Fit.best(slip, shown).stream())
                .sorted(Fit.BEST)
                .filter(fit -> fit.figures() > 0)
                .map(Fit::cause)
                .forEach(cause -> (cause.explainsAll() ? causes : others).add(cause));
        return new Diagnosis(
                List.copyOf(causes),
                others.stream()
                        .filter(cause -> explainsHalf(cause, shown.wrong().size()))
                        .findFirst());
    }

    /** What explains less is met by chance, and would only mislead. */
    private static boolean explainsHalf(Cause cause, int unexplained) {
        int left = cause.missed().size();
        return left < unexplained && left <= unexplained - left;
    }
}
