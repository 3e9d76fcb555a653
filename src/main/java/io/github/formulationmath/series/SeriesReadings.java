package io.github.formulationmath.series;

import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.number.Excerpt;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.plan.WeighingPlan;
import io.github.formulationmath.pot.MadeBatch;
import io.github.formulationmath.pot.Readings;
import io.github.formulationmath.quantity.Amount;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import javax.measure.quantity.Mass;
import org.jspecify.annotations.Nullable;

/**
 * A series while it is made: what was read of the base and of each trial so far, any of them half-done. It can be kept and taken up again.
 *
 * <p>Example: {@code SeriesReadings.begun(seriesPlan).toCome()}.
 *
 * <p>Immutable and thread-safe.
 */
public final class SeriesReadings {

    private final SeriesPlan plan;
    private final List<Readings> readings;

    private SeriesReadings(SeriesPlan plan, List<Readings> readings) {
        this.plan = plan;
        this.readings = List.copyOf(readings);
    }

    /**
     * A series of which nothing was weighed yet.
     *
     * @param plan the plan
     * @return the series, everything still to come
     */
    public static SeriesReadings begun(SeriesPlan plan) {
        return new SeriesReadings(Objects.requireNonNull(plan, "plan"), List.of());
    }

    /**
     * The series with what was read of its base or of a trial, instead of what was read of it before.
     *
     * @param read the readings, of all lines or begun
     * @return the series
     * @throws IllegalArgumentException if they are of no plan of the series, or of a trial from the base while readings of the base are
     *     missing
     */
    public SeriesReadings with(Readings read) {
        Objects.requireNonNull(read, "read");
        if (plans().noneMatch(read.plan()::equals)) {
            throw new IllegalArgumentException("read is of " + Excerpt.of(read.plan())
                    + ", no plan of this series: take plan().base() or plan().trial(name).plan()");
        }
        boolean isFromBase = plan.trials().stream()
                .anyMatch(trial ->
                        trial.portionOfBase().isPresent() && trial.plan().equals(read.plan()));
        if (isFromBase && plan.base().flatMap(this::finished).isEmpty()) {
            throw new IllegalArgumentException(
                    "read is of " + Excerpt.of(read.plan().formula().name())
                            + ", which takes a portion of the base, and readings of the base are missing: give those first");
        }
        List<Readings> all = new ArrayList<>();
        plans().forEach(own -> Optional.of(read)
                .filter(each -> each.plan().equals(own))
                .or(() -> of(own))
                .ifPresent(all::add));
        return new SeriesReadings(plan, all);
    }

    private Stream<WeighingPlan> plans() {
        return Stream.concat(plan.base().stream(), plan.trials().stream().map(Trial::plan));
    }

    private Optional<Readings> of(WeighingPlan own) {
        return readings.stream().filter(read -> read.plan().equals(own)).findFirst();
    }

    /** What was read by a plan, if all of it is. */
    private Optional<Readings> finished(WeighingPlan own) {
        return of(own).filter(read -> !read.isOpen());
    }

    /**
     * The plan.
     *
     * @return what is weighed
     */
    public SeriesPlan plan() {
        return plan;
    }

    /**
     * What was read so far.
     *
     * @return an unmodifiable list, the base first, then the trials in their order, those that were begun
     */
    public List<Readings> readings() {
        return readings;
    }

    /**
     * What was read of the base.
     *
     * @return its readings; empty if there is no base or it was not begun
     */
    public Optional<Readings> base() {
        return plan.base().flatMap(this::of);
    }

    /**
     * What was read of a trial.
     *
     * @param versionName the name of its version
     * @return its readings; empty if it was not begun
     * @throws IllegalArgumentException if no version is called so
     */
    public Optional<Readings> forTrial(String versionName) {
        return of(plan.trial(versionName).plan());
    }

    /**
     * What is still to be weighed, or to be finished.
     *
     * @return an unmodifiable list of plans, the base first
     */
    public List<WeighingPlan> toCome() {
        return plans().filter(own -> finished(own).isEmpty()).toList();
    }

    /**
     * The base and the trials that are finished, as they were made.
     *
     * @return an unmodifiable list, the base first
     */
    public List<MadeBatch> made() {
        return plans().flatMap(own -> finished(own).stream()).map(MadeBatch::of).toList();
    }

    /**
     * A trial as it was made: its shares lie where the readings of base and portion leave them, and a checker of limits takes it.
     *
     * @param versionName the name of its version
     * @return the trial
     * @throws IllegalArgumentException if no version is called so
     * @throws IllegalStateException if it is not finished
     */
    public Trial made(String versionName) {
        Trial planned = plan.trial(versionName);
        MadeBatch own = finished(planned.plan())
                .map(MadeBatch::of)
                .orElseThrow(() -> new IllegalStateException("the trial of "
                        + Excerpt.of(planned.formula().name()) + " is not finished: readings of it are missing"));
        return planned.made(own.masses(), base().map(read -> MadeBatch.of(read).masses()));
    }

    /**
     * What differs between the trials that are finished.
     *
     * @return their comparison
     * @throws IllegalArgumentException if fewer than two trials are finished
     */
    public SeriesComparison comparison() {
        return SeriesComparison.of(plan, made());
    }

    /**
     * What is left of the base after the portions that were weighed so far, as the displays read.
     *
     * @return the mass, with what stays in the vessel; empty if there is no base or it is not finished
     */
    public Optional<Amount<Mass>> leftOfBase() {
        return plan.base().flatMap(this::finished).map(read -> {
            Amount<Mass> left = Amount.grams(Ratio.ZERO)
                    .inUnitOf(read.plan().bench().balance().readability());
            for (FormulaLine line : read.plan().formula().lines()) {
                left = left.plus(
                        read.poured(line).orElse(read.plan().batch().line(line).mass()));
            }
            for (Trial trial : plan.trials()) {
                Optional<Amount<Mass>> portion =
                        trial.portionOfBase().flatMap(line -> of(trial.plan()).flatMap(own -> own.poured(line.line())));
                left = portion.isPresent() ? left.minus(portion.get()) : left;
            }
            return left;
        });
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof SeriesReadings that && plan.equals(that.plan) && readings.equals(that.readings);
    }

    @Override
    public int hashCode() {
        return Objects.hash(plan, readings);
    }

    /** What is done, and what is still to come. */
    @Override
    public String toString() {
        List<String> missing = toCome().stream()
                .map(own -> of(own).map(read -> own.formula().name() + " from "
                                + read.toCome().get(0).name() + " on")
                        .orElse(own.formula().name()))
                .toList();
        return plan + (missing.isEmpty() ? "; all weighed" : "; still to come: " + String.join(", ", missing));
    }
}
