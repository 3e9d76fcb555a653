package io.github.formulationmath.pot;

import io.github.formulationmath.number.Bounds;
import io.github.formulationmath.plan.WeighingPlan;
import io.github.formulationmath.weighing.Addition;
import io.github.formulationmath.weighing.MadeMasses;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/** What the displays hide: where the mass and the share of each line in the pot are sure to lie. */
sealed interface PotErrors permits PouredErrors, BoxErrors {

    /** The mass of a line in grams; lines count from 0. */
    Bounds massBounds(int line);

    /** The share of a line. */
    Bounds shareBounds(int line);

    /** How uncertain the mass of a line is by itself. */
    Spread spread(int line);

    /** The same after more was weighed in, each addition by itself on its balance or that of its line, tared before it. */
    PotErrors plus(List<LineAddition> additions, WeighingPlan plan);

    /** How many lines there are. */
    int size();

    /** One mass per line for a check of limits: as weighed where that can be told line by line, else each by itself. */
    default MadeMasses masses(List<MadeLine> lines) {
        List<Addition> additions = new ArrayList<>(lines.size());
        int calibrated = (int) IntStream.range(0, size())
                .filter(i -> !spread(i).scale().isZero())
                .count();
        for (int i = 0; i < lines.size(); i++) {
            additions.add(BoxErrors.addition(lines.get(i), spread(i), calibrated));
        }
        return MadeMasses.of(additions);
    }

    /** The errors behind readings, of which the masses were made. */
    static PotErrors of(Readings readings, List<PotMass> masses) {
        PouredErrors poured = PouredErrors.of(readings);
        return masses.stream().anyMatch(PotMass::isAssumed) ? BoxErrors.withGuesses(poured, readings, masses) : poured;
    }

    /** The same once the whole pot was weighed: what is missing of it went off from one line. */
    default PotErrors weighedAgain(int lossy, Bounds total, Spread ofTotal) {
        return BoxErrors.weighedAgain(this, lossy, total, ofTotal);
    }
}
