package io.github.formulationmath.pot;

import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.number.Excerpt;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.plan.PlannedLine;
import io.github.formulationmath.plan.WeighingPlan;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.weighing.WeighingMethod;
import java.time.Instant;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.IntConsumer;
import javax.measure.quantity.Mass;

/**
 * What no display can have shown in that order is a mistake, and is said before anything is computed from it.
 *
 * @param isOpen whether lines are still to come
 * @param at is told the index of the reading that is looked at, for those who say where in a document it stands
 */
record ReadingsCheck(WeighingPlan plan, WeighingMethod method, boolean isOpen, IntConsumer at) {

    private static final int WHOLE_LIST = -1;

    void check(List<Reading> readings) {
        Set<Integer> seen = new HashSet<>();
        each(readings, reading -> requireLine(reading, seen));
        requireTimesInOrder(readings);
        each(readings, reading -> reading.requireOnDisplayOf(balance(reading)));
        switch (method) {
            case CUMULATIVE -> {
                if (!isOpen) {
                    requireEveryLine(seen);
                }
                requireRising(readings);
            }
            case TARE_EACH -> requireCarriedTogether(readings);
            case FROM_BOAT, BY_DIFFERENCE -> each(readings, this::requireCarriedApart);
        }
    }

    private void each(List<Reading> readings, Consumer<Reading> check) {
        for (int i = 0; i < readings.size(); i++) {
            check.accept(told(readings, i));
        }
        at.accept(WHOLE_LIST);
    }

    private Reading told(List<Reading> readings, int index) {
        at.accept(index);
        return readings.get(index);
    }

    private void requireLine(Reading reading, Set<Integer> seen) {
        FormulaLine line = reading.line();
        if (!plan.formula().has(line)) {
            throw new IllegalArgumentException("a reading is given for " + Excerpt.of(line) + ", which is no line of \""
                    + Excerpt.of(plan.batch().formula().name()) + "\": take the line from that formula");
        }
        if (!seen.add(line.position())) {
            throw new IllegalArgumentException("two readings are given for " + Excerpt.of(line.name())
                    + ": add up what was poured in several goes");
        }
    }

    private void requireTimesInOrder(List<Reading> readings) {
        Instant before = Instant.MIN;
        for (int i = 0; i < readings.size(); i++) {
            Reading reading = told(readings, i);
            Instant time = reading.time().orElse(before);
            if (time.isBefore(before)) {
                throw new IllegalArgumentException("the reading of "
                        + Excerpt.of(reading.line().name()) + " was taken at " + time
                        + ", before the one that precedes it (" + before + "): put the readings into the order in which"
                        + " they were taken");
            }
            before = time;
        }
    }

    private void requireEveryLine(Set<Integer> seen) {
        at.accept(WHOLE_LIST);
        plan.batch().formula().lines().stream()
                .filter(line -> !seen.contains(line.position()))
                .findFirst()
                .ifPresent(line -> {
                    throw new IllegalArgumentException("no reading is given for " + Excerpt.of(line.name())
                            + ": cumulative readings need every line at its place in the order; give leftOut(line) or"
                            + " notWrittenDown(line) for it");
                });
    }

    private void requireRising(List<Reading> readings) {
        Amount<Mass> most = plan.bench().balance().capacityUnder(plan.bench().vessel());
        Amount<Mass> before = null;
        for (int i = 0; i < readings.size(); i++) {
            Reading reading = told(readings, i);
            if (Readings.methodOf(plan, method, reading) != WeighingMethod.CUMULATIVE) {
                requireCarriedApart(reading);
                before = null;
                continue;
            }
            if (reading.balance().isPresent()
                    && !balance(reading).equals(plan.bench().balance())) {
                throw new IllegalArgumentException(
                        Excerpt.of(reading) + " was read on another balance: cumulative readings are taken on one");
            }
            if (reading.kind() != Reading.Kind.SHOWN) {
                continue;
            }
            Amount<Mass> shown = shown(reading);
            if (before != null && shown.compareTo(before) < 0) {
                throw new IllegalArgumentException("the cumulative reading after "
                        + Excerpt.of(reading.line().name()) + " is " + Excerpt.of(shown) + ", below the one before it ("
                        + Excerpt.of(before)
                        + "): something was taken out or the balance was tared; weigh again, or record it as tared"
                        + " readings");
            }
            requireCarried(reading, shown, most, true);
            before = shown;
        }
    }

    /** Tared or not, everything so far rests on the pan; lines weighed elsewhere do not count, for they may be added later. */
    private void requireCarriedTogether(List<Reading> readings) {
        Amount<Mass> most = plan.bench().balance().capacityUnder(plan.bench().vessel());
        Amount<Mass> soFar = most.minus(most);
        for (int i = 0; i < readings.size(); i++) {
            Reading reading = told(readings, i);
            if (reading.balance().isPresent() || !plan.line(reading.line()).isOnBench()) {
                requireCarriedApart(reading);
            } else {
                soFar = soFar.plus(shown(reading));
                requireCarried(reading, soFar, most, true);
            }
        }
    }

    /** Weighed elsewhere, a line is alone on its balance, in its boat if that is known. */
    private void requireCarriedApart(Reading reading) {
        PlannedLine line = plan.line(reading.line());
        boolean asPlanned = reading.balance().isEmpty() && !line.isOnBench();
        Amount<Mass> most = asPlanned ? line.station().room() : balance(reading).capacity();
        requireCarried(reading, shown(reading), most, asPlanned);
    }

    private static void requireCarried(Reading reading, Amount<Mass> load, Amount<Mass> most, boolean isBesideVessel) {
        if (load.compareTo(most) > 0) {
            String name = Excerpt.of(reading.line().name());
            boolean isAlone = load.compareTo(shown(reading)) == 0;
            Reading.requireCarried(isAlone ? name : name + " and what was weighed before", load, most, isBesideVessel);
        }
    }

    private Balance balance(Reading reading) {
        return reading.balance().orElse(plan.line(reading.line()).balance());
    }

    private static Amount<Mass> shown(Reading reading) {
        return reading.shown().orElse(Amount.grams(Ratio.ZERO));
    }
}
