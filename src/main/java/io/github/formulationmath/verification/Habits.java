package io.github.formulationmath.verification;

import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.number.Rounding;
import io.github.formulationmath.quantity.FormulationUnits;
import io.github.formulationmath.verification.Verification.RoundingHabit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/** Looks for the habit by which the figures of a claim are ours, plain roundings before others. */
final class Habits {

    /**
     * A habit under which all figures agree.
     *
     * @param habit the habit
     * @param detail the number of significant digits; else empty
     * @param mixedTies whether no one rule for ties gives all the figures
     * @param totalAgrees whether the total is right under it, too; true if there is none
     */
    record Found(RoundingHabit habit, String detail, boolean mixedTies, boolean totalAgrees) {}

    private static final Ratio OUNCE = FormulationUnits.factorOf(FormulationUnits.OUNCE);
    private static final Ratio ROUND_OUNCE = Ratio.parse("28.35");
    private static final Ratio HALF_GRAM = Ratio.of(1, 2);
    private static final int FEWEST_DIGITS = 2;
    private static final int MOST_DIGITS = 6;

    private final Shown shown;
    private final FigureSet set;
    private final @Nullable Figure total;

    private Habits(Shown shown) {
        this.shown = shown;
        this.set = shown.toOnePlace();
        this.total = shown.claim().total().orElse(null);
    }

    /** The first habit that gives figures and total; if there is none, the first that gives the figures. */
    static Optional<Found> of(Shown shown) {
        Habits habits = new Habits(shown);
        List<Supplier<Optional<Found>>> ways = List.of(
                habits::plain,
                habits::restElsewhere,
                habits::roundOunce,
                habits::halfGrams,
                habits::digits,
                habits::coarserWhenLarger);
        @Nullable Found first = null;
        for (Supplier<Optional<Found>> way : ways) {
            Optional<Found> found = way.get();
            if (found.filter(Found::totalAgrees).isPresent()) {
                return found;
            }
            first = first == null ? found.orElse(null) : first;
        }
        return Optional.ofNullable(first).map(habits::withCoarserTotal);
    }

    /** A total is larger than the figures, and may be shown to fewer places than they are. */
    private Found withCoarserTotal(Found found) {
        if (total == null
                || !FigureSet.isRounded(
                        set.batch(), ownStepOfTotal(), total.number().times(total.unitSize()))) {
            return found;
        }
        RoundingHabit habit = found.habit().isPlainRounding() ? RoundingHabit.COARSER_WHEN_LARGER : found.habit();
        return new Found(habit, found.detail(), found.mixedTies(), true);
    }

    private Optional<Found> plain() {
        return plain(set).map(found -> told(found, set.batch(), stepOfTotal()));
    }

    /** A set that one rule gives is not put down to mixed ties. */
    private Optional<Found> plain(FigureSet of) {
        int rest = shown.restPlace();
        boolean each = of.eachIsNearest();
        boolean qs = rest >= 0 && of.takesRest(rest);
        if (each && !of.mixesTies(-1)) {
            return found(RoundingHabit.EACH_TO_NEAREST);
        }
        if (qs && !of.mixesTies(rest)) {
            return found(RoundingHabit.QS_TAKES_REST);
        }
        if (of.sharesRemainders()) {
            return found(RoundingHabit.LARGEST_REMAINDERS);
        }
        return each || qs
                ? Optional.of(
                        new Found(each ? RoundingHabit.EACH_TO_NEAREST : RoundingHabit.QS_TAKES_REST, "", true, false))
                : Optional.empty();
    }

    private Optional<Found> restElsewhere() {
        List<Ratio> right = shown.right();
        int largest = right.indexOf(right.stream().reduce(Ratio.ZERO, Ratio::max));
        Optional<Found> found = set.takesRest(largest)
                ? found(RoundingHabit.LARGEST_LINE_TAKES_REST)
                : set.takesRest(right.size() - 1) ? found(RoundingHabit.LAST_LINE_TAKES_REST) : Optional.empty();
        return found.map(habit -> told(habit, set.batch(), stepOfTotal()));
    }

    /** The q.s. line may still be what the others leave, to the finest place. */
    private Optional<Found> coarserWhenLarger() {
        FigureSet bySize = shown.coarserWhenLarger();
        int rest = shown.restPlace();
        boolean each = bySize.eachIsNearest();
        if (!each && !(shown.restCloses() && bySize.othersAreNearest(rest))) {
            return Optional.empty();
        }
        Found found = new Found(RoundingHabit.COARSER_WHEN_LARGER, "", bySize.mixesTies(each ? -1 : rest), false);
        return Optional.of(told(found, set.batch(), ownStepOfTotal()));
    }

    private Optional<Found> roundOunce() {
        boolean asked = shown.claim().massUnit().filter("oz"::equals).isPresent();
        long inOunces = shown.lines().stream()
                .filter(line -> line.figure().symbol().equals("oz"))
                .count();
        if (asked ? inOunces > 0 : inOunces < shown.lines().size() || inOunces == 0) {
            return Optional.empty();
        }
        FigureSet scaled = set.scaled(asked ? ROUND_OUNCE.dividedBy(OUNCE) : OUNCE.dividedBy(ROUND_OUNCE));
        Ratio batch = total != null && total.symbol().equals("oz") == asked ? set.batch() : scaled.batch();
        return plain(scaled)
                .map(found -> new Found(RoundingHabit.OUNCE_OF_28_35_GRAMS, "", found.mixedTies(), false))
                .map(found -> told(found, batch, stepOfTotal()));
    }

    private Optional<Found> halfGrams() {
        if (shown.claim().balance().isPresent()
                || !shown.lines().stream().allMatch(line -> isHalfGrams(line.figure()))) {
            return Optional.empty();
        }
        FigureSet halves =
                set.withSteps(shown.lines().stream().map(line -> HALF_GRAM).toList());
        Ratio step = total != null && isHalfGrams(total) ? ownStepOfTotal().max(HALF_GRAM) : ownStepOfTotal();
        return plain(halves)
                .map(found -> new Found(RoundingHabit.HALF_GRAMS, "", found.mixedTies(), false))
                .map(found -> told(found, set.batch(), step));
    }

    private static boolean isHalfGrams(Figure figure) {
        return figure.symbol().equals("g")
                && figure.number().dividedBy(HALF_GRAM).isInteger();
    }

    /** With the most digits that will do, and no fewer than were written; fractions have none. */
    private Optional<Found> digits() {
        if (shown.lines().stream().anyMatch(line -> line.figure().decimal() == null)) {
            return Optional.empty();
        }
        int written = shown.lines().stream()
                .mapToInt(line -> line.figure().digitsWritten())
                .max()
                .orElse(0);
        for (int digits = MOST_DIGITS; digits >= Math.max(FEWEST_DIGITS, written); digits--) {
            Rounding rounding = Rounding.toSignificantDigits(digits);
            List<Ratio> steps = new ArrayList<>();
            for (FigureCheck line : shown.lines()) {
                steps.add(rounding.stepFor(line.expected().exactValue())
                        .times(line.figure().gramsPerUnit(line.formulaLine())));
            }
            FigureSet coarser = set.withSteps(steps);
            if (coarser.eachIsNearest()) {
                Ratio step = total == null || total.digitsWritten() > digits
                        ? Ratio.ZERO
                        : rounding.stepFor(set.batch().dividedBy(total.unitSize()))
                                .times(total.unitSize());
                Found found = new Found(
                        RoundingHabit.SIGNIFICANT_DIGITS, String.valueOf(digits), coarser.mixesTies(-1), false);
                return Optional.of(told(found, set.batch(), step.max(ownStepOfTotal())));
            }
        }
        return Optional.empty();
    }

    private static Optional<Found> found(RoundingHabit habit) {
        return Optional.of(new Found(habit, "", false, false));
    }

    private Ratio stepOfTotal() {
        return total == null ? Ratio.ZERO : shown.stepOf(total).times(total.unitSize());
    }

    private Ratio ownStepOfTotal() {
        return total == null ? Ratio.ZERO : total.ownStep().times(total.unitSize());
    }

    private Found told(Found found, Ratio batch, Ratio step) {
        boolean agrees =
                total == null || FigureSet.isRounded(batch, step, total.number().times(total.unitSize()));
        return new Found(found.habit(), found.detail(), found.mixedTies(), agrees);
    }
}
