package io.github.formulationmath.shelf;

import java.io.Serializable;
import java.time.LocalDate;
import java.util.Objects;

/**
 * How one takes from a shelf: on which day, whether a lot still counts on its use-by day, and whether one line of a batch may be taken from
 * several lots.
 *
 * <p>Lots are used in this order: that which is to be used by the earlier day first, those without such a day last; of equal ones an
 * opened lot before an unopened one, the one opened earlier first; then as the shelf lists them.
 *
 * <p>Example: {@code Picking.on("2026-11-26").withOneLotPerLine()}.
 *
 * <p>Immutable and thread-safe.
 *
 * @param day the day on which it is taken; lots to be used by an earlier day do not count
 * @param countsOnUseByDay whether a lot counts on its use-by day itself
 * @param mixesLots whether a line may be taken from several lots
 */
public record Picking(LocalDate day, boolean countsOnUseByDay, boolean mixesLots) implements Serializable {

    /**
     * Refuses null.
     *
     * @param day the day on which it is taken
     * @param countsOnUseByDay whether a lot counts on its use-by day itself
     * @param mixesLots whether a line may be taken from several lots
     */
    public Picking {
        Objects.requireNonNull(day, "day");
    }

    /**
     * On a day; lots count on their use-by day, and a line may be taken from several lots.
     *
     * @param day the day
     * @return the picking
     */
    public static Picking on(LocalDate day) {
        return new Picking(day, true, true);
    }

    /**
     * On a day, as text.
     *
     * @param day for example {@code "2026-11-26"}
     * @return the picking
     * @throws IllegalArgumentException if the text is no date
     */
    public static Picking on(String day) {
        return on(Shelf.date("day", day));
    }

    /**
     * The same, each line being taken from one lot; one lot may still serve several lines.
     *
     * @return the picking
     */
    public Picking withOneLotPerLine() {
        return new Picking(day, countsOnUseByDay, false);
    }

    /**
     * The same, a lot counting until the day before its use-by day.
     *
     * @return the picking
     */
    public Picking beforeUseByDay() {
        return new Picking(day, false, mixesLots);
    }

    boolean counts(Lot lot) {
        return lot.left().signum() > 0
                && lot.useByDay()
                        .map(last -> countsOnUseByDay ? !day.isAfter(last) : day.isBefore(last))
                        .orElse(true);
    }

    @Override
    public String toString() {
        return "on " + day + (countsOnUseByDay ? "" : ", before the use-by day")
                + (mixesLots ? "" : ", each line from one lot");
    }
}
