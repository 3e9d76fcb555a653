package io.github.formulationmath.series;

import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.number.Bounds;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.Interval;
import io.github.formulationmath.reckoning.Kind;
import io.github.formulationmath.reckoning.Reckoning;
import io.github.formulationmath.reckoning.Source;
import io.github.formulationmath.reckoning.Symbol;
import io.github.formulationmath.weighing.MadeMasses;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Mass;
import org.jspecify.annotations.Nullable;

/**
 * What is in a trial, and between which ends: {@code s = (φ·P + a)/T}, with the share φ of the line in the base, the masses P of base and
 * a of the line weighed into the trial, and T of everything weighed there.
 *
 * <p>For any masses of the portion s is straight in φ, so that it is extreme where φ is; for any φ it is a quotient of two sums of
 * masses, whose extremes {@link MadeMasses#quotient} finds. Errors of the base and of the portion have nothing in common, each being
 * weighed by itself, so that every such corner can happen.
 *
 * <p>The difference of two trials from one base is {@code s_1(φ) − s_2(φ)}. For given φ its greatest is the greatest s_1 less the least
 * s_2, as their portions have nothing in common; that is a maximum of straight lines in φ, convex, and greatest at an end of φ. It is
 * taken at the same end for both, so that it is never wider than the difference of the two intervals.
 */
final class Delivery {

    private static final Symbol IN_BASE = Symbol.of("φ", "share-in-base", Kind.SHARE);
    private static final Symbol PORTION = Symbol.of("P", "portion-of-base", Kind.MASS);
    private static final Symbol BESIDE = Symbol.of("a", "weighed-beside-base", Kind.MASS);
    private static final Symbol TOTAL = Symbol.of("T", "weighed-into-trial", Kind.MASS);
    private static final Symbol SHARE = Symbol.of("s", "delivered-share", Kind.SHARE);

    private final Portion portion;
    private final MadeMasses own;
    private final @Nullable MadeMasses base;

    Delivery(Portion portion, MadeMasses own, Optional<MadeMasses> base) {
        this.portion = portion;
        this.own = own;
        this.base = portion.hasBase() ? base.orElseThrow() : null;
    }

    /** The share of a line of the version, every error at its middle. */
    Amount<Dimensionless> share(FormulaLine line) {
        return percent(share(Reckoning.plain(), line));
    }

    <V> V share(Reckoning<V> r, FormulaLine line) {
        int beside = portion.ownPlace(line.index());
        int inBase = portion.placeInBase(line.index());
        List<V> parts = new ArrayList<>();
        if (base != null && inBase >= 0) {
            // The lines of base, portion and version bear the same numbers: what is known of base and portion, their
            // plans tell.
            V share = r.given(IN_BASE, line, base.madeShare(inBase).share().canonical(), Source.user());
            V mass = r.given(PORTION, estimate(0), Source.user());
            parts.add(r.product(share, mass));
        }
        if (beside >= 0) {
            parts.add(r.given(BESIDE, line, estimate(beside), Source.user()));
        }
        V there = parts.isEmpty() ? r.literal(0) : r.sum(parts);
        return r.named(SHARE, line, r.quotient(there, r.given(TOTAL, own.total(), Source.user())));
    }

    private Amount<Mass> estimate(int place) {
        return own.additions().get(place).estimate();
    }

    /** Where the share of a line is sure to lie. */
    Interval<Amount<Dimensionless>> bounds(FormulaLine line) {
        return percent(bounds(line.index()));
    }

    private Bounds bounds(int line) {
        List<Ratio> ends = endsInBase(line);
        Ratio least = at(line, ends.get(0)).lower().orElseThrow();
        Ratio greatest = at(line, ends.get(1)).upper().orElseThrow();
        return Bounds.closed(least, greatest);
    }

    /** The ends of the share of a line in the base; 0 if it is not there. */
    private List<Ratio> endsInBase(int line) {
        int inBase = portion.placeInBase(line);
        if (base == null || inBase < 0) {
            return List.of(Ratio.ZERO, Ratio.ZERO);
        }
        Interval<Amount<Dimensionless>> share = base.madeShare(inBase).bounds();
        return List.of(share.least().canonical(), share.greatest().canonical());
    }

    /** The ends of the share in the trial, were its share in the base known. */
    private Bounds at(int line, Ratio inBase) {
        Map<Integer, Ratio> there = new HashMap<>();
        Map<Integer, Ratio> all = new HashMap<>();
        IntStream.range(0, own.size()).forEach(i -> all.put(i, Ratio.ONE));
        if (inBase.signum() > 0) {
            there.put(0, inBase);
        }
        if (portion.ownPlace(line) >= 0) {
            there.put(portion.ownPlace(line), Ratio.ONE);
        }
        if (own.sum(all).least().signum() <= 0) {
            return Bounds.closed(Ratio.ZERO, Ratio.ONE);
        }
        Interval<Ratio> ends = own.quotient(there, all);
        return Bounds.closed(
                ends.least().max(Ratio.ZERO), ends.greatest().min(Ratio.ONE).max(Ratio.ZERO));
    }

    /** Where a share of this trial less one of another is sure to lie; a line that is missing has the share 0. */
    Interval<Amount<Dimensionless>> less(@Nullable FormulaLine line, Delivery other, @Nullable FormulaLine otherLine) {
        if (line == null || otherLine == null || !sharesBase(line, other, otherLine)) {
            Bounds mine = line == null ? NOTHING : bounds(line.index());
            Bounds theirs = otherLine == null ? NOTHING : other.bounds(otherLine.index());
            return percent(
                    Bounds.closed(lower(mine).minus(upper(theirs)), upper(mine).minus(lower(theirs))));
        }
        Ratio least = null;
        Ratio greatest = null;
        for (Ratio end : endsInBase(line.index())) {
            Bounds mine = at(line.index(), end);
            Bounds theirs = other.at(otherLine.index(), end);
            Ratio low = lower(mine).minus(upper(theirs));
            Ratio high = upper(mine).minus(lower(theirs));
            least = least == null ? low : least.min(low);
            greatest = greatest == null ? high : greatest.max(high);
        }
        return percent(Bounds.closed(least == null ? Ratio.ZERO : least, greatest == null ? Ratio.ZERO : greatest));
    }

    private static final Bounds NOTHING = Bounds.closed(Ratio.ZERO, Ratio.ZERO);

    /** Whether both have the line from the very same base. */
    @SuppressWarnings("ReferenceEquality") // a base that is equal, but was made again, shares no errors
    private boolean sharesBase(FormulaLine line, Delivery other, FormulaLine otherLine) {
        return base != null
                && base == other.base
                && portion.placeInBase(line.index()) >= 0
                && portion.placeInBase(line.index()) == other.portion.placeInBase(otherLine.index());
    }

    private static Ratio lower(Bounds bounds) {
        return bounds.lower().orElseThrow();
    }

    private static Ratio upper(Bounds bounds) {
        return bounds.upper().orElseThrow();
    }

    static Amount<Dimensionless> percent(Ratio fraction) {
        return Amount.percent(fraction.times(100));
    }

    private static Interval<Amount<Dimensionless>> percent(Bounds fractions) {
        return Interval.of(percent(lower(fractions)), percent(upper(fractions)));
    }
}
