package io.github.formulationmath.falsefine;

import io.github.formulationmath.falsefine.Corners.Scale;
import io.github.formulationmath.falsefine.Corners.Way;
import io.github.formulationmath.falsefine.Recipe.Row;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * What was read, and what lies in the pot: masses that the readings allow, at a corner of all errors. Whoever says that it is
 * surely something else is wrong.
 *
 * @param weighing the plan and the balance
 * @param readings what was read of every line, in steps
 * @param event what happened beside
 * @param line to which line
 * @param amount in steps: what was added, or the content that the balance shows now
 * @param signs the corner
 * @param truth what lies in the pot, in half steps
 */
record MadeCase(Weighing weighing, long[] readings, Event event, int line, long amount, int signs, long[] truth)
        implements Proven {

    /** What happened beside pouring. */
    enum Event {
        /** Not poured yet: a plan. */
        PLANNED,
        /** All was written down. */
        WRITTEN,
        /** One line was not; it was poured as planned, or what was poured with its neighbour is known. */
        MISSING,
        /** The first line lost something; the pot was weighed. */
        EVAPORATED,
        /** More was added to the tared pot. */
        ADDED
    }

    @Override
    public boolean holds() {
        Scale scale = weighing.scale();
        long[] poured = Corners.at(readings, scale, signs);
        return switch (event) {
            case PLANNED, WRITTEN -> Arrays.equals(poured, truth);
            case MISSING -> isMissing(poured);
            case EVAPORATED -> isEvaporated(poured);
            case ADDED -> isAdded(poured);
        };
    }

    private boolean isMissing(long[] poured) {
        if (Arrays.equals(poured, truth)) {
            return true;
        }
        int next = line + 1;
        return weighing.scale().way() == Way.CUMULATIVE
                && truth[line] >= 0
                && truth[next] >= 0
                && truth[line] + truth[next] == poured[line] + poured[next];
    }

    private boolean isEvaporated(long[] poured) {
        long off = Math.abs(Corners.total(truth) - 2 * amount);
        return truth[0] >= 0 && truth[0] <= poured[0] && off <= weighing.scale().net() && isRest(poured, 0);
    }

    private boolean isAdded(long[] poured) {
        long more = truth[line] - poured[line];
        return Math.abs(more - 2 * amount) <= weighing.scale().net() && isRest(poured, line);
    }

    private boolean isRest(long[] poured, int but) {
        for (int i = 0; i < poured.length; i++) {
            if (i != but && poured[i] != truth[i]) {
                return false;
            }
        }
        return true;
    }

    static MadeCase any(Dice dice) {
        while (true) {
            MadeCase made = attempt(dice, dice.of(Event.values()));
            if (made != null && made.holds()) {
                return made;
            }
        }
    }

    private static MadeCase attempt(Dice dice, Event event) {
        Weighing weighing = Weighing.of(dice, recipe(dice), Corners.scale(dice));
        long[] readings = weighing.readings();
        int line = dice.between(0, readings.length - 1);
        if (event != Event.PLANNED) {
            for (int i = 0; i < readings.length; i++) {
                boolean assumed = event == Event.MISSING && i == line;
                readings[i] = assumed ? readings[i] : Math.max(1, readings[i] + dice.between(-3, 3));
            }
        }
        int signs = dice.between(0, (1 << (readings.length + 1)) - 1);
        long[] truth = Corners.at(readings, weighing.scale(), signs);
        if (Arrays.stream(truth).anyMatch(mass -> mass < 0) || Corners.total(truth) == 0) {
            return null;
        }
        long amount = happen(dice, weighing.scale(), event, line, readings, signs, truth);
        return new MadeCase(weighing, readings, event, line, amount, signs, truth);
    }

    private static long happen(
            Dice dice, Scale scale, Event event, int line, long[] readings, int signs, long[] truth) {
        long net = scale.net();
        if (event == Event.ADDED) {
            long amount = dice.between(1L, 100L);
            truth[line] += 2 * amount + (dice.oneIn(2) ? Math.min(2 * amount, net) * -1 : net);
            return amount;
        }
        if (event == Event.MISSING && scale.way() == Way.CUMULATIVE && line < truth.length - 1) {
            long both = truth[line] + truth[line + 1];
            truth[line] = dice.of(0L, both, dice.between(0L, both));
            truth[line + 1] = both - truth[line];
        }
        if (event == Event.EVAPORATED) {
            return evaporate(dice, scale, readings, signs, truth);
        }
        return 0;
    }

    /** The content shown is less than what was read, by no more than the line had. */
    private static long evaporate(Dice dice, Scale scale, long[] readings, int signs, long[] truth) {
        long read = Arrays.stream(readings).sum();
        long content = read - dice.between(1L, Math.max(1, readings[0] / 2));
        long error = scale.way() == Way.CUMULATIVE
                ? (dice.oneIn(2) ? 1 : -1) * scale.indication(1) - Corners.error(scale, signs, 0)
                : (dice.oneIn(2) ? 1 : -1) * scale.net();
        truth[0] = 2 * content + error - (Corners.total(truth) - truth[0]);
        return content;
    }

    private static Recipe recipe(Dice dice) {
        List<Row> rows = new ArrayList<>();
        rows.add(Recipe.plain("Aqua", "all", 0));
        for (String name : dice.shuffled(List.of("Glycerin", "Urea", "Squalane", "Panthenol"))
                .subList(0, dice.between(1, 4))) {
            rows.add(Recipe.plain(name, "all", dice.between(100_000, 15_000_000)));
        }
        return new Recipe(List.copyOf(rows));
    }

    /** The share of a line, of what lies in the pot. */
    Exact share(int index) {
        return Exact.of(truth[index], Corners.total(truth));
    }

    @Override
    public String toString() {
        return weighing + ", read " + Arrays.toString(readings) + ", " + event + " of line " + (line + 1) + ": "
                + amount + ", in the pot (half steps) " + Arrays.toString(truth);
    }
}
