package io.github.formulationmath.shelf;

import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.reckoning.Reckoning;
import java.util.ArrayList;
import java.util.List;

/** Which lot each line of an ingredient is taken from: the way among all that allows the largest batch; of equal ones the first. */
record Dealing(List<Integer> lotOfLine) {

    private static final int MOST_WAYS = 200_000;

    static Dealing best(List<FormulaLine> lines, List<Lot> lots) {
        long ways = 1;
        for (int i = 0; i < lines.size(); i++) {
            ways *= lots.size();
            if (ways > MOST_WAYS) {
                throw new IllegalArgumentException(
                        "picking takes each line from one lot, and there are more than " + MOST_WAYS
                                + " ways to deal " + lines.size() + " lines of "
                                + lines.get(0).name() + " to " + lots.size()
                                + " lots: let lots be mixed, or leave lots out");
            }
        }
        Dealing best = null;
        for (long way = 0; way < ways; way++) {
            Dealing each = at(way, lines.size(), lots.size());
            boolean isMore = best == null || each.most(lines, lots).compareTo(best.most(lines, lots)) > 0;
            best = isMore ? each : best;
        }
        if (best == null) {
            throw new IllegalStateException("no line to deal");
        }
        return best;
    }

    /** The digits of the number of a way; the first line is the slowest. */
    private static Dealing at(long way, int lines, int lots) {
        List<Integer> lot = new ArrayList<>();
        long rest = way;
        for (int i = 0; i < lines; i++) {
            lot.add(0, (int) (rest % lots));
            rest /= lots;
        }
        return new Dealing(List.copyOf(lot));
    }

    Ratio most(List<FormulaLine> lines, List<Lot> lots) {
        return most(Reckoning.plain(), lines, lots);
    }

    /** The least, over the lots that serve a line, of what is left of it over the shares it serves. */
    <V> V most(Reckoning<V> r, List<FormulaLine> lines, List<Lot> lots) {
        List<V> each = new ArrayList<>();
        for (int z = 0; z < lots.size(); z++) {
            List<V> shares = new ArrayList<>();
            for (int i = 0; i < lines.size(); i++) {
                if (lotOfLine.get(i) == z) {
                    shares.add(r.known(lines.get(i)));
                }
            }
            if (!shares.isEmpty()) {
                each.add(r.quotient(LargestBatch.stock(r, lines.get(0), z, lots.get(z)), r.sum(shares)));
            }
        }
        return r.minimum(each);
    }
}
