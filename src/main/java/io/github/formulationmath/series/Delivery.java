package io.github.formulationmath.series;

import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.number.Bounds;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.Interval;
import io.github.formulationmath.reckoning.Kind;
import io.github.formulationmath.reckoning.Reckoning;
import io.github.formulationmath.reckoning.Source;
import io.github.formulationmath.reckoning.Subject;
import io.github.formulationmath.reckoning.Symbol;
import io.github.formulationmath.weighing.Addition;
import io.github.formulationmath.weighing.AdditionError;
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
        return percent(bounds(only(line)));
    }

    /** Where the share of something is sure to lie that lines of the version, by their index, contain in different strengths. */
    Interval<Amount<Dimensionless>> sureShare(Map<Integer, Ratio> strengths) {
        return percent(bounds(strengths));
    }

    private static Map<Integer, Ratio> only(FormulaLine line) {
        return Map.of(line.index(), Ratio.ONE);
    }

    private Bounds bounds(Map<Integer, Ratio> strengths) {
        List<Ratio> ends = endsInBase(strengths);
        Ratio least = at(strengths, ends.get(0)).lower().orElseThrow();
        Ratio greatest = at(strengths, ends.get(1)).upper().orElseThrow();
        return Bounds.closed(least, greatest);
    }

    /** The ends of the share in the base; 0 if nothing of it is there. */
    private List<Ratio> endsInBase(Map<Integer, Ratio> strengths) {
        Map<Integer, Ratio> there = new HashMap<>();
        strengths.forEach((line, strength) -> {
            if (portion.placeInBase(line) >= 0) {
                there.put(portion.placeInBase(line), strength);
            }
        });
        if (base == null || there.isEmpty()) {
            return List.of(Ratio.ZERO, Ratio.ZERO);
        }
        Interval<Amount<Dimensionless>> share =
                base.madeShare(Subject.none(), there).bounds();
        return List.of(share.least().canonical(), share.greatest().canonical());
    }

    /** The ends of the share in the trial, were its share in the base known. */
    private Bounds at(Map<Integer, Ratio> strengths, Ratio inBase) {
        Map<Integer, Ratio> there = new HashMap<>();
        Map<Integer, Ratio> all = new HashMap<>();
        IntStream.range(0, own.size()).forEach(i -> all.put(i, Ratio.ONE));
        if (inBase.signum() > 0) {
            there.put(0, inBase);
        }
        strengths.forEach((line, strength) -> {
            if (portion.ownPlace(line) >= 0) {
                there.put(portion.ownPlace(line), strength);
            }
        });
        Ratio strongest = strengths.values().stream().reduce(Ratio.ZERO, Ratio::max);
        if (own.sum(all).least().signum() <= 0) {
            return Bounds.closed(Ratio.ZERO, strongest);
        }
        Interval<Ratio> ends = own.quotient(there, all);
        return Bounds.closed(
                ends.least().max(Ratio.ZERO), ends.greatest().min(strongest).max(Ratio.ZERO));
    }

    /**
     * The masses of the lines of the version one by one, {@code φ·P + a} each between the ends that those of φ, P and a set, whatever the
     * others are. All that comes with the portion being off together, they say less of a share than {@link #sureShare}.
     */
    MadeMasses masses() {
        if (base == null) {
            return own;
        }
        Ratio unbounded = base.additions().stream()
                .map(error -> error.unbounded().canonical())
                .reduce(Ratio.ZERO, Ratio::plus)
                .dividedBy(base.total().canonical());
        return MadeMasses.of(portion.version().lines().stream()
                .map(line -> roughly(line, unbounded))
                .toList());
    }

    /**
     * The mass of a line between its ends.
     *
     * @param ofBase a standard deviation of the share in the base by what nothing bounds
     */
    private Addition roughly(FormulaLine line, Ratio ofBase) {
        Ratio least = Ratio.ZERO;
        Ratio most = Ratio.ZERO;
        Ratio deviation = Ratio.ZERO;
        if (portion.placeInBase(line.index()) >= 0) {
            AdditionError poured = own.additions().get(0);
            List<Ratio> ends = endsInBase(only(line));
            least = ends.get(0).times(poured.bounds().least().canonical());
            most = ends.get(1).times(poured.bounds().greatest().canonical());
            deviation =
                    poured.unbounded().canonical().plus(ofBase.times(estimate(0).canonical()));
        }
        if (portion.ownPlace(line.index()) >= 0) {
            AdditionError beside = own.additions().get(portion.ownPlace(line.index()));
            least = least.plus(beside.bounds().least().canonical());
            most = most.plus(beside.bounds().greatest().canonical());
            deviation = deviation.plus(beside.unbounded().canonical());
        }
        Ratio middle = share(Reckoning.plain(), line).times(own.total().canonical());
        Ratio error = most.minus(middle).max(middle.minus(least)).max(Ratio.ZERO);
        return Addition.within(line, line.subscript(), told(middle), told(error), told(deviation));
    }

    /** In the unit in which the trial is weighed. */
    private Amount<Mass> told(Ratio grams) {
        return Amount.grams(grams).inUnitOf(own.total());
    }

    /** Where a share of this trial less one of another is sure to lie; a line that is missing has the share 0. */
    Interval<Amount<Dimensionless>> less(@Nullable FormulaLine line, Delivery other, @Nullable FormulaLine otherLine) {
        if (line == null || otherLine == null || !sharesBase(line, other, otherLine)) {
            Bounds mine = line == null ? NOTHING : bounds(only(line));
            Bounds theirs = otherLine == null ? NOTHING : other.bounds(only(otherLine));
            return percent(
                    Bounds.closed(lower(mine).minus(upper(theirs)), upper(mine).minus(lower(theirs))));
        }
        Ratio least = null;
        Ratio greatest = null;
        for (Ratio end : endsInBase(only(line))) {
            Bounds mine = at(only(line), end);
            Bounds theirs = other.at(only(otherLine), end);
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
