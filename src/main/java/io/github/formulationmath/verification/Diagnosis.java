package io.github.formulationmath.verification;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What would explain figures that disagree. A slip is a cause only if it reproduces every figure within its own rounding;
 * slips that do are told together, since these figures cannot tell them apart. Whether the figures tell a cause, or only
 * allow it, {@link Cause#isTold()} says. A figure in which no digit counts explains nothing: where there are no others,
 * there is no cause.
 *
 * <p>Immutable and thread-safe.
 */
public final class Diagnosis {

    private final boolean needed;
    private final List<Cause> causes;
    private final List<Cause> others;

    private Diagnosis(boolean needed, List<Cause> causes, List<Cause> others) {
        this.needed = needed;
        this.causes = List.copyOf(causes);
        this.others = List.copyOf(others);
    }

    static Diagnosis none() {
        return new Diagnosis(false, List.of(), List.of());
    }

    static Diagnosis of(Shown shown) {
        Map<Slip, Fit> best = new EnumMap<>(Slip.class);
        for (SlipModel model : SlipModel.ALL) {
            model.figures(shown)
                    .map(hypothesis -> Fit.of(shown, hypothesis))
                    .forEach(fit ->
                            best.merge(fit.hypothesis().slip(), fit, (a, b) -> Fit.BEST.compare(a, b) <= 0 ? a : b));
        }
        int unexplained = shown.wrong().size();
        List<Cause> causes = new ArrayList<>();
        List<Cause> others = new ArrayList<>();
        best.values().stream().sorted(Fit.BEST).map(fit -> fit.cause(shown)).forEach(cause -> {
            if (cause.digits() > 0 && cause.explainsAll()) {
                causes.add(cause);
            } else if (cause.digits() > 0 && explainsHalf(cause, unexplained)) {
                others.add(cause);
            }
        });
        return new Diagnosis(true, causes, others);
    }

    /** What explains less is met by chance, and would only mislead. */
    private static boolean explainsHalf(Cause cause, int unexplained) {
        int left = cause.missed().size();
        return left < unexplained && left <= unexplained - left;
    }

    /**
     * The slips that reproduce every figure.
     *
     * @return the closest first; empty if no known slip explains the figures, or if nothing needs explaining
     */
    public List<Cause> causes() {
        return causes;
    }

    /**
     * Whether one slip alone explains the figures.
     *
     * @return false if none does, or if several do and cannot be told apart
     */
    public boolean isUnique() {
        return causes.size() == 1;
    }

    /**
     * The next best: the slip that comes closest among those that do not reproduce every figure. One that leaves more than
     * half of the wrong figures unexplained is not told.
     *
     * @return the slip, if one explains at least half of what there is to explain
     */
    public Optional<Cause> runnerUp() {
        return others.stream().findFirst();
    }

    @Override
    public String toString() {
        String none = needed ? "no known slip explains this" : "nothing to explain";
        return causes.isEmpty() ? none : causes.toString();
    }
}
