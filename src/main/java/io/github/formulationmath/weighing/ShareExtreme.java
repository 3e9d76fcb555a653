package io.github.formulationmath.weighing;

import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.reckoning.Kind;
import io.github.formulationmath.reckoning.Phrase;
import io.github.formulationmath.reckoning.Reckoning;
import io.github.formulationmath.reckoning.Symbol;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import javax.measure.quantity.Dimensionless;
import org.jspecify.annotations.Nullable;

/**
 * A true extreme of a share y = Σ c·m / Σ m over everything the masses may be: searched for once, and worked out again at
 * the corner where it was found.
 *
 * <p>Masses are affine in independent variables x, each with an interval of its own. With N(x) = Σ c·m, D(x) = Σ m &gt; 0:
 * some x has y(x) &gt; t exactly if max (N − tD) &gt; 0, and N − tD, being affine in x, takes its maximum at the corner that
 * takes for each variable the end its sign asks for. Begin with any corner and its t; while that maximum is above 0, go
 * on to the corner where it is taken: its y is strictly larger. There are finitely many corners, so this ends, with a
 * corner that no x beats (W. Dinkelbach, On nonlinear fractional programming, Management Science 13 (1967) 492-498; from
 * memory). All of it in exact arithmetic. The least value is minus the largest of −y.
 *
 * <p>For independent masses and one line this gives the closed form: m_i at one end, all others at the other. The variables
 * that do not enter the lines with a strength matter through their sum alone, and are taken together as one variable: a
 * share costs as much as the lines that it is of, not as the whole has.
 */
final class ShareExtreme {

    private static final Symbol LOWEST = Symbol.of("φ_lo", "lowest-made-share", Kind.SHARE);
    private static final Symbol HIGHEST = Symbol.of("φ_hi", "highest-made-share", Kind.SHARE);

    private final MadeShare share;
    private final boolean largest;
    private final MassBox box;
    private final Map<Integer, Integer> places = new HashMap<>();
    private final List<Axis> axes = new ArrayList<>();
    private final Ratio fixedPart;
    private final @Nullable Corner corner;
    private final Ratio value;

    /** A variable, and how the part and the total change with it. */
    private record Axis(Ratio lower, Ratio upper, Ratio inPart, Ratio inTotal) {

        Ratio end(boolean high) {
            return high ? upper : lower;
        }
    }

    /** The end of each axis, and part and total there. */
    private record Corner(BitSet high, Ratio part, Ratio total) {

        Ratio share() {
            return part.dividedBy(total);
        }
    }

    ShareExtreme(MadeShare share, boolean largest) {
        this.share = share;
        this.largest = largest;
        this.box = share.whole().box();
        this.fixedPart = box.fixed(share.weights());
        Ratio hull = hull();
        this.corner = cornerWithin(hull);
        this.value = corner == null ? hull : corner.share();
    }

    /** The least or the largest strength: no share can leave the interval between them. */
    private Ratio hull() {
        int lines = share.whole().size();
        List<Ratio> strengths = new ArrayList<>();
        share.weights().forEach(lines, (line, weight) -> strengths.add(weight));
        if (strengths.size() < lines) {
            strengths.add(Ratio.ZERO);
        }
        return strengths.stream().reduce(largest ? Ratio::max : Ratio::min).orElseThrow();
    }

    /** The corner with the extreme share; none if the masses reach so far down that the hull is all that can be said. */
    private @Nullable Corner cornerWithin(Ratio hull) {
        // The search needs a total above 0 wherever it goes. Only where masses share errors can the sum come down to 0
        // without every mass being cut off there.
        if ((box.sharesAnything() ? box.least() : box.most()).signum() <= 0) {
            return null;
        }
        layOutAxes();
        Corner found = extreme();
        return found.share().compareTo(hull) * direction() > 0 ? null : found;
    }

    private int direction() {
        return largest ? 1 : -1;
    }

    private void layOutAxes() {
        Ratio least = box.least();
        Ratio most = box.most();
        MassBox.Felt felt = box.felt(share.weights());
        for (int i = 0; i < felt.size(); i++) {
            MassBox.Variable variable = box.variables().get(felt.variable(i));
            places.put(felt.variable(i), axes.size());
            axes.add(new Axis(variable.lower(), variable.upper(), felt.factor(i), variable.inTotal()));
            least = least.minus(variable.inTotal(false));
            most = most.minus(variable.inTotal(true));
        }
        // What all other variables together, and the fixed parts, add to the total: the part does not feel which of
        // them
        // it comes from, so N − tD is largest where this sum is at one of its ends.
        axes.add(new Axis(least, most, Ratio.ZERO, Ratio.ONE));
    }

    private Corner extreme() {
        BitSet high = new BitSet();
        for (int i = 0; i < axes.size(); i++) {
            high.set(i, axes.get(i).inTotal().signum() > 0);
        }
        Corner best = at(high);
        while (true) {
            Corner next = bestFor(best.share());
            // N − tD is 0 at the best corner so far; no corner where it is more, in this direction, means no x has it.
            Ratio gain = next.part().minus(best.share().times(next.total()));
            if (gain.signum() * direction() <= 0) {
                return best;
            }
            best = next;
        }
    }

    /** The corner where part − t · total goes furthest: each variable alone decides, for the sum is affine in it. */
    private Corner bestFor(Ratio t) {
        BitSet high = new BitSet();
        for (int i = 0; i < axes.size(); i++) {
            Axis axis = axes.get(i);
            high.set(i, axis.inPart().minus(t.times(axis.inTotal())).signum() * direction() > 0);
        }
        return at(high);
    }

    private Corner at(BitSet high) {
        Ratio part = fixedPart;
        Ratio total = Ratio.ZERO;
        for (int i = 0; i < axes.size(); i++) {
            Ratio end = axes.get(i).end(high.get(i));
            part = part.plus(axes.get(i).inPart().times(end));
            total = total.plus(axes.get(i).inTotal().times(end));
        }
        return new Corner(high, part, total);
    }

    /** Whether a variable of the box is at its upper end in a corner. */
    private boolean isHigh(Corner at, int variable) {
        Integer place = places.get(variable);
        return place != null
                ? at.high().get(place)
                : box.variables().get(variable).isHighFor(at.high().get(axes.size() - 1));
    }

    Amount<Dimensionless> share() {
        return MadeShare.percent(value).withWorking(ShareExtreme::question, this, ShareExtreme::in);
    }

    private Phrase question() {
        return Phrase.of(
                largest ? "question.highest-made-share" : "question.lowest-made-share",
                share.subject().name());
    }

    private <V> V in(Reckoning<V> r) {
        Symbol symbol = largest ? HIGHEST : LOWEST;
        Corner at = corner;
        if (at == null) {
            r.note(() -> Phrase.of("note.share-cut"));
            return r.named(symbol, share.subject(), r.literal(value));
        }
        MassRelations relations = share.whole().relations();
        V part = relations.weighted(r, share.weights(), line -> massAt(r, at, line));
        V total = relations.weighted(r, Weights.TOTAL, line -> massAt(r, at, line));
        return r.named(symbol, share.subject(), r.quotient(part, total));
    }

    private <V> V massAt(Reckoning<V> r, Corner at, int line) {
        if (box.isShared(line)) {
            return share.whole().relations().massAt(r, line, entry -> isHigh(at, box.variableOf(entry.term())));
        }
        AdditionError error = share.whole().additions().get(line);
        return r.known(isHigh(at, box.massOf(line)) ? error.highest() : error.lowest());
    }
}
