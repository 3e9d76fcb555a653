package io.github.formulationmath.shelf;

import io.github.formulationmath.formula.SubstanceName;
import io.github.formulationmath.number.Excerpt;
import io.github.formulationmath.packing.PriceList.Offer;
import io.github.formulationmath.quantity.Amount;
import java.io.Serial;
import java.io.Serializable;
import java.time.LocalDate;
import java.util.Objects;
import java.util.Optional;
import javax.measure.quantity.Mass;
import org.jspecify.annotations.Nullable;

/**
 * One lot of a material: what is left of it, what it was bought for, until when it is to be used, and since when it is open.
 *
 * <p>Example: {@code Lot.of("Glycerin", "G-17", "180 g").boughtAt(Offer.of("12.50 EUR", "250 g")).useBy("2027-03-31")}.
 *
 * <p>Immutable and thread-safe.
 */
public final class Lot implements Serializable {

    @Serial
    private static final long serialVersionUID = 1L;

    private final String ingredientName;
    private final String code;
    private final Amount<Mass> left;
    private final @Nullable Offer bought;
    private final @Nullable LocalDate useBy;
    private final @Nullable LocalDate opened;

    private Lot(
            String ingredientName,
            String code,
            Amount<Mass> left,
            @Nullable Offer bought,
            @Nullable LocalDate useBy,
            @Nullable LocalDate opened) {
        this.ingredientName = ingredientName;
        this.code = code;
        this.left = left;
        this.bought = bought;
        this.useBy = useBy;
        this.opened = opened;
    }

    /**
     * A lot.
     *
     * @param ingredientName the ingredient, in any spelling that {@link SubstanceName} forgives
     * @param code what stands on it: the lot number, or a name of one's own
     * @param left how much can still be taken from it, at least 0
     * @return the lot, without price and dates
     * @throws IllegalArgumentException if a text is blank, or the mass negative
     */
    public static Lot of(String ingredientName, String code, Amount<Mass> left) {
        requireText("ingredientName", ingredientName);
        requireText("code", code);
        return new Lot(
                ingredientName, code, Amount.requireNotNegative("left", left).withoutWorking(), null, null, null);
    }

    /**
     * A lot, its mass as text.
     *
     * @param ingredientName the ingredient
     * @param code what stands on it
     * @param left how much can still be taken from it, for example {@code "180 g"}
     * @return the lot, without price and dates
     * @throws IllegalArgumentException if a text is blank or no mass, or the mass negative
     */
    public static Lot of(String ingredientName, String code, String left) {
        return of(ingredientName, code, Amount.mass(left));
    }

    private static void requireText(String name, String text) {
        if (Objects.requireNonNull(text, name).isBlank()) {
            throw new IllegalArgumentException(name + " is blank: write down what stands on the lot");
        }
    }

    /**
     * The same lot with what it was bought for; what is taken from it costs its part of that.
     *
     * @param offer price and contents as bought; not what is left
     * @return the lot with its price
     */
    public Lot boughtAt(Offer offer) {
        return new Lot(ingredientName, code, left, Objects.requireNonNull(offer, "offer"), useBy, opened);
    }

    /**
     * The same lot with the day until which it is to be used.
     *
     * @param day the day
     * @return the lot with the day
     */
    public Lot useBy(LocalDate day) {
        return new Lot(ingredientName, code, left, bought, Objects.requireNonNull(day, "day"), opened);
    }

    /**
     * The same lot with the day until which it is to be used, as text.
     *
     * @param day for example {@code "2027-03-31"}
     * @return the lot with the day
     * @throws IllegalArgumentException if the text is no date
     */
    public Lot useBy(String day) {
        return useBy(Shelf.date("day", day));
    }

    /**
     * The same lot with the day on which it was opened.
     *
     * @param day the day
     * @return the lot with the day
     */
    public Lot openedOn(LocalDate day) {
        return new Lot(ingredientName, code, left, bought, useBy, Objects.requireNonNull(day, "day"));
    }

    /**
     * The same lot with the day on which it was opened, as text.
     *
     * @param day for example {@code "2026-11-02"}
     * @return the lot with the day
     * @throws IllegalArgumentException if the text is no date
     */
    public Lot openedOn(String day) {
        return openedOn(Shelf.date("day", day));
    }

    /**
     * The same lot with another mass left.
     *
     * @param mass how much can still be taken from it, at least 0
     * @return the lot with the mass
     * @throws IllegalArgumentException if the mass is negative
     */
    public Lot withLeft(Amount<Mass> mass) {
        Amount.requireNotNegative("mass", mass);
        return new Lot(ingredientName, code, mass.withoutWorking(), bought, useBy, opened);
    }

    /**
     * The ingredient.
     *
     * @return its name as given
     */
    public String ingredientName() {
        return ingredientName;
    }

    /**
     * What stands on the lot.
     *
     * @return the lot number, or a name of one's own
     */
    public String code() {
        return code;
    }

    /**
     * How much can still be taken from it.
     *
     * @return the mass, at least 0
     */
    public Amount<Mass> left() {
        return left;
    }

    /**
     * What it was bought for.
     *
     * @return price and contents; empty if not known
     */
    public Optional<Offer> bought() {
        return Optional.ofNullable(bought);
    }

    /**
     * Until when it is to be used.
     *
     * @return the day; empty if none was given
     */
    public Optional<LocalDate> useByDay() {
        return Optional.ofNullable(useBy);
    }

    /**
     * Since when it is open.
     *
     * @return the day; empty if it is not, or not known
     */
    public Optional<LocalDate> openedDay() {
        return Optional.ofNullable(opened);
    }

    String normalName() {
        return SubstanceName.normalise(ingredientName);
    }

    @Serial
    private Object readResolve() {
        try {
            return of(ingredientName, code, left).with(bought, useBy, opened);
        } catch (IllegalArgumentException e) {
            throw new IllegalStateException("a lot of " + Excerpt.of(ingredientName) + " was not written whole", e);
        }
    }

    private Lot with(@Nullable Offer offer, @Nullable LocalDate last, @Nullable LocalDate first) {
        return new Lot(ingredientName, code, left, offer, last, first);
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Lot that
                && ingredientName.equals(that.ingredientName)
                && code.equals(that.code)
                && left.equals(that.left)
                && Objects.equals(bought, that.bought)
                && Objects.equals(useBy, that.useBy)
                && Objects.equals(opened, that.opened);
    }

    @Override
    public int hashCode() {
        return Objects.hash(ingredientName, code, left, bought, useBy, opened);
    }

    @Override
    public String toString() {
        return ingredientName + " " + code + ", " + left.toldExactly()
                + (useBy == null ? "" : ", use by " + useBy)
                + (opened == null ? "" : ", opened " + opened);
    }
}
