package io.github.formulationmath.falsefine;

import static io.github.formulationmath.support.Made.massBounds;

import io.github.formulationmath.falsefine.Corners.Way;
import io.github.formulationmath.falsefine.MadeCase.Event;
import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.plan.ExpectedProduct;
import io.github.formulationmath.plan.WeighingPlan;
import io.github.formulationmath.pot.Evaporation;
import io.github.formulationmath.pot.LineAddition;
import io.github.formulationmath.pot.MadeBatch;
import io.github.formulationmath.pot.MadeLine;
import io.github.formulationmath.pot.Reading;
import io.github.formulationmath.pot.Readings;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.support.Made;
import java.util.ArrayList;
import java.util.List;
import javax.measure.quantity.Mass;

/** Asks the library what surely lies in the pot. */
final class MadeJudge {

    private MadeJudge() {}

    /** Whether something is called sure that is not: what lies in the pot is outside its bounds. */
    static boolean excludes(MadeCase asked) {
        Formula formula = asked.weighing().recipe().formula();
        WeighingPlan plan = asked.weighing().plan(formula);
        return asked.event() == Event.PLANNED ? excludes(asked, plan) : excludes(asked, pot(asked, plan));
    }

    private static boolean excludes(MadeCase asked, WeighingPlan plan) {
        ExpectedProduct product = ExpectedProduct.of(plan, asked.weighing().method());
        for (int i = 0; i < asked.truth().length; i++) {
            if (Answers.isOutside(
                            asked.share(i), Made.bounds(product.lines().get(i).bounds()))
                    || Answers.isOutside(grams(asked, i), massBounds(product.masses(), i))) {
                return true;
            }
        }
        return false;
    }

    private static boolean excludes(MadeCase asked, MadeBatch pot) {
        for (int i = 0; i < asked.truth().length; i++) {
            MadeLine line = pot.lines().get(i);
            if (Answers.isOutside(
                            asked.share(i),
                            line.shareBounds().least().fraction(),
                            line.shareBounds().greatest().fraction())
                    || Answers.isOutside(
                            grams(asked, i),
                            line.massBounds().least().canonical(),
                            line.massBounds().greatest().canonical())) {
                return true;
            }
        }
        return false;
    }

    private static Exact grams(MadeCase asked, int line) {
        return asked.weighing().gramsOfHalves(asked.truth()[line]);
    }

    private static MadeBatch pot(MadeCase asked, WeighingPlan plan) {
        Formula formula = plan.batch().formula();
        MadeBatch poured = MadeBatch.of(Readings.of(plan, asked.weighing().method(), taken(asked, formula)));
        if (asked.event() == Event.ADDED) {
            Amount<Mass> amount = Amount.mass(asked.weighing().steps(asked.amount()));
            return poured.plus(List.of(LineAddition.of(formula.lines().get(asked.line()), amount)));
        }
        if (asked.event() == Event.EVAPORATED) {
            Amount<Mass> content = Amount.mass(asked.weighing().steps(asked.amount()));
            return Evaporation.of(poured, content, formula.lines().get(0)).notAddedBack();
        }
        return poured;
    }

    private static List<Reading> taken(MadeCase asked, Formula formula) {
        boolean cumulative = asked.weighing().scale().way() == Way.CUMULATIVE;
        List<Reading> taken = new ArrayList<>();
        long sum = 0;
        for (int i = 0; i < asked.readings().length; i++) {
            sum = asked.readings()[i] + (cumulative ? sum : 0);
            if (asked.event() != Event.MISSING || asked.line() != i) {
                taken.add(Reading.of(formula.lines().get(i), asked.weighing().steps(sum)));
            } else {
                taken.add(Reading.notWrittenDown(formula.lines().get(i)));
            }
        }
        return taken;
    }
}
