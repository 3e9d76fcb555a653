package io.github.formulationmath.verification;

import io.github.formulationmath.scaling.BatchLine;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Says of each figure how it agrees, given the habit under which all do, if there is one. */
final class FigureChecks {

    private FigureChecks() {}

    static List<FigureCheck> of(Shown shown, Habits.@Nullable Found found) {
        List<FigureCheck> checks = new ArrayList<>();
        for (BatchLine line : shown.batch().lines()) {
            ShownLine figure = shown.at(line.line().position());
            if (figure != null) {
                checks.add(new FigureCheck(
                        line, figure.figure(), figure.exact(), figure.step(), agreement(figure, found)));
            }
        }
        return List.copyOf(checks);
    }

    private static Agreement agreement(ShownLine shown, Habits.@Nullable Found found) {
        if (shown.isWrong() && found == null) {
            return Agreement.DISAGREES;
        }
        if (shown.figure().showsNothing()) {
            return Agreement.SHOWS_NOTHING;
        }
        if (shown.distance().isZero()) {
            return Agreement.AGREES;
        }
        if (!shown.isWrong()) {
            return shown.figure().isBinary()
                            && shown.step().equals(shown.figure().ownStep())
                    ? Agreement.AGREES_AS_BINARY
                    : Agreement.AGREES_AS_ROUNDED;
        }
        return found != null && found.habit().isPlainRounding()
                ? Agreement.AGREES_AS_CLOSED
                : Agreement.AGREES_BY_HABIT;
    }
}
