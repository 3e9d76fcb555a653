package io.github.formulationmath.shelf;

import io.github.formulationmath.batch.Batch;
import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.SubstanceName;
import io.github.formulationmath.number.Excerpt;
import io.github.formulationmath.plan.WeighingPlan;
import io.github.formulationmath.pot.Readings;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.size.Sizes;
import java.io.Serial;
import java.io.Serializable;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import javax.measure.quantity.Mass;
import org.jspecify.annotations.Nullable;

/**
 * The lots on a shelf, in one currency.
 *
 * <p>Example: {@code Shelf.of(List.of(Lot.of("Glycerin", "G-17", "180 g"), Lot.of("Glycerin", "G-21", "250 g")))}.
 *
 * <p>Immutable and thread-safe.
 */
public final class Shelf implements Serializable {

    @Serial
    private static final long serialVersionUID = 1L;

    /** In the order of use; none of the two days comes last. */
    private static final Comparator<Lot> USE_FIRST = Comparator.comparing(
                    (Lot lot) -> lot.useByDay().orElse(LocalDate.MAX))
            .thenComparing(lot -> lot.openedDay().orElse(LocalDate.MAX));

    private final List<Lot> lots;

    private Shelf(Collection<Lot> lots) {
        this.lots = List.copyOf(lots);
    }

    /**
     * A shelf.
     *
     * @param lots the lots, none at all for an empty shelf
     * @return the shelf
     * @throws IllegalArgumentException if two lots of one ingredient have one code, or prices are in two currencies
     */
    public static Shelf of(List<Lot> lots) {
        Shelf shelf = new Shelf(Objects.requireNonNull(lots, "lots"));
        Set<String> codes = new HashSet<>();
        Set<String> currencies = new HashSet<>();
        for (Lot lot : shelf.lots) {
            if (!codes.add(lot.normalName() + "\n" + lot.code())) {
                throw new IllegalArgumentException("lots has two of " + Excerpt.of(lot.ingredientName()) + " called "
                        + Excerpt.of(lot.code()) + ": put their masses together, or give each a code of its own");
            }
            lot.bought().ifPresent(offer -> currencies.add(offer.price().currency()));
        }
        if (currencies.size() > 1) {
            throw new IllegalArgumentException(
                    "lots has prices in " + currencies + ": give all in one currency, nothing is exchanged here");
        }
        return shelf;
    }

    /**
     * The same shelf with one more lot.
     *
     * @param lot the lot
     * @return the shelf with the lot behind those before
     * @throws IllegalArgumentException if there is such a code of the ingredient, or the price is in another currency
     */
    public Shelf with(Lot lot) {
        List<Lot> all = new ArrayList<>(lots);
        all.add(Objects.requireNonNull(lot, "lot"));
        return of(all);
    }

    /**
     * The lots.
     *
     * @return an unmodifiable list in the order given
     */
    public List<Lot> lots() {
        return lots;
    }

    /**
     * The lots of an ingredient that count, in the order in which they are to be used.
     *
     * @param ingredientName the ingredient, in any spelling that {@link SubstanceName} forgives
     * @param picking the day, and whether a lot counts on its use-by day
     * @return an unmodifiable list; empty if there is none
     */
    public List<Lot> lotsOf(String ingredientName, Picking picking) {
        String normal = SubstanceName.normalise(Objects.requireNonNull(ingredientName, "ingredientName"));
        Objects.requireNonNull(picking, "picking");
        return lots.stream()
                .filter(lot -> lot.normalName().equals(normal) && picking.counts(lot))
                .sorted(USE_FIRST)
                .toList();
    }

    /**
     * All lots that count, in the order in which they are to be used: what to think of first when choosing what to make.
     *
     * @param picking the day, and whether a lot counts on its use-by day
     * @return an unmodifiable list
     */
    public List<Lot> useFirst(Picking picking) {
        Objects.requireNonNull(picking, "picking");
        return lots.stream().filter(picking::counts).sorted(USE_FIRST).toList();
    }

    /**
     * The lots that are past their day.
     *
     * @param picking the day, and whether a lot counts on its use-by day
     * @return an unmodifiable list in the order given, of those of which something is left
     */
    public List<Lot> past(Picking picking) {
        Objects.requireNonNull(picking, "picking");
        return lots.stream()
                .filter(lot -> lot.left().signum() > 0 && !picking.counts(lot))
                .toList();
    }

    /**
     * The largest batch that the shelf gives, by exact masses, with all that limits it.
     *
     * @param formula the formula
     * @param picking how it is taken
     * @return the batch, 0 if an ingredient is missing
     * @throws IllegalArgumentException if each line is to come from one lot and there are too many ways to deal the lines of an
     *     ingredient to its lots
     */
    public LargestBatch largest(Formula formula, Picking picking) {
        return LargestBatch.of(
                this, Objects.requireNonNull(formula, "formula"), Objects.requireNonNull(picking, "picking"));
    }

    /**
     * What can be made at all: the smallest passing size of each formula against what the shelf gives, and the largest passing
     * size that it gives.
     *
     * @param repertoire the sizes that pass, formula by formula, as a {@link io.github.formulationmath.size.Criterion} gives them
     * @param picking how it is taken
     * @return an unmodifiable list in the order given
     * @throws IllegalArgumentException as for {@link #largest}
     */
    public List<Makeable> makeable(List<Sizes> repertoire, Picking picking) {
        Objects.requireNonNull(picking, "picking");
        return Objects.requireNonNull(repertoire, "repertoire").stream()
                .map(sizes -> Makeable.of(sizes, largest(sizes.formula(), picking)))
                .toList();
    }

    /**
     * Which lot goes into which line of a batch, by its exact masses, in the order of use.
     *
     * @param batch the batch
     * @param picking how it is taken
     * @return what is taken, and what is short
     */
    public Taking take(Batch batch, Picking picking) {
        Objects.requireNonNull(batch, "batch");
        return Taking.of(this, Taking.Need.of(batch), Objects.requireNonNull(picking, "picking"));
    }

    /**
     * Which lot goes into which line of a plan, by what the display must read, in the order of use. Readings may ask for more or less
     * than the exact masses.
     *
     * @param plan the plan
     * @param picking how it is taken
     * @return what is taken, and what is short
     */
    public Taking take(WeighingPlan plan, Picking picking) {
        Objects.requireNonNull(plan, "plan");
        return Taking.of(this, Taking.Need.of(plan), Objects.requireNonNull(picking, "picking"));
    }

    /**
     * Which lot went into which line, by what the displays read, in the order of use. {@link Taking#notedIn} writes it down.
     *
     * @param readings what was read; of a line that nobody wrote down, or that is still to come, nothing is taken
     * @param picking how it was taken
     * @return what was taken, and what is short
     */
    public Taking take(Readings readings, Picking picking) {
        Objects.requireNonNull(readings, "readings");
        return Taking.of(this, Taking.Need.of(readings), Objects.requireNonNull(picking, "picking"));
    }

    /** The shelf with so much left of a lot. */
    Shelf withLeft(Lot lot, Amount<Mass> left) {
        return new Shelf(lots.stream()
                .map(each -> each.equals(lot) ? each.withLeft(left) : each)
                .toList());
    }

    static LocalDate date(String name, String text) {
        try {
            return LocalDate.parse(Objects.requireNonNull(text, name));
        } catch (DateTimeParseException e) {
            throw new IllegalArgumentException(
                    name + " is \"" + Excerpt.of(text) + "\", no day: write year, month and day like 2026-11-26", e);
        }
    }

    Optional<String> currency() {
        return lots.stream()
                .flatMap(lot -> lot.bought().stream())
                .map(offer -> offer.price().currency())
                .findFirst();
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Shelf that && lots.equals(that.lots);
    }

    @Override
    public int hashCode() {
        return lots.hashCode();
    }

    @Override
    public String toString() {
        return lots.toString();
    }
}
