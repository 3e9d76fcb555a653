package io.github.formulationmath.falsefine;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.mend.Correction;
import io.github.formulationmath.mend.CorrectionRules;
import io.github.formulationmath.mend.DisplayedAdditions;
import io.github.formulationmath.plan.Tolerances;
import io.github.formulationmath.pot.LineAddition;
import io.github.formulationmath.pot.MadeBatch;
import io.github.formulationmath.pot.Reading;
import io.github.formulationmath.pot.Readings;
import io.github.formulationmath.quantity.MassFraction;
import java.util.ArrayList;
import java.util.List;

/** Asks the library what a pot needs. */
final class MendingJudge {

    private MendingJudge() {}

    /** Nothing to do; or mended by additions that do not mend it. */
    static boolean callsFine(MendingCase asked) {
        Formula formula = asked.weighing().recipe().formula();
        CorrectionRules rules = CorrectionRules.within(Tolerances.of(asked.percent() + " %"))
                .withCap(
                        Recipe.substance(
                                Spelling.of(asked.named().name(), asked.named().cas())),
                        MassFraction.parse(Texts.percent(asked.cap(), 6)));
        Correction correction = Correction.smallest(pot(asked.weighing(), formula, asked.readings()), rules);
        return switch (correction.outcome()) {
            case NOTHING_TO_DO -> true;
            case BEST_POSSIBLE, OBSTRUCTED -> false;
            case MENDED -> !asked.isKept(after(asked, correction.additions())) || isFalselyShown(asked, correction);
        };
    }

    /** On the display it is called within, and is not. */
    private static boolean isFalselyShown(MendingCase asked, Correction correction) {
        DisplayedAdditions shown = correction.onDisplay();
        return shown.isWithin() && !asked.isKept(after(asked, shown.additions()));
    }

    private static Exact[] after(MendingCase asked, List<LineAddition> additions) {
        Exact[] masses = new Exact[asked.readings().length];
        for (int i = 0; i < masses.length; i++) {
            masses[i] = asked.weighing().gramsOfHalves(2 * asked.readings()[i]);
        }
        for (LineAddition addition : additions) {
            int line = addition.line().index();
            masses[line] = masses[line].plus(Answers.grams(addition.mass()));
        }
        return masses;
    }

    static MadeBatch pot(Weighing weighing, Formula formula, long[] readings) {
        List<Reading> taken = new ArrayList<>();
        for (FormulaLine line : formula.lines()) {
            taken.add(Reading.of(line, weighing.steps(readings[line.index()])));
        }
        return MadeBatch.of(Readings.of(weighing.plan(formula), weighing.method(), taken));
    }
}
