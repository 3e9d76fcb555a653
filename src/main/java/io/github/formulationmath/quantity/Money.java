package io.github.formulationmath.quantity;

import io.github.formulationmath.number.Excerpt;
import io.github.formulationmath.number.NumberText;
import io.github.formulationmath.number.NumberTextException;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.number.Rounding;
import io.github.formulationmath.reckoning.Explained;
import io.github.formulationmath.reckoning.Kind;
import io.github.formulationmath.reckoning.Origin;
import io.github.formulationmath.reckoning.Origin.Figure;
import io.github.formulationmath.reckoning.Phrase;
import io.github.formulationmath.reckoning.Source;
import io.github.formulationmath.reckoning.Subject;
import io.github.formulationmath.reckoning.Symbol;
import java.io.Serial;
import java.io.Serializable;
import java.util.Objects;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * An exact sum of money in a currency that the caller names: {@code 12.50 EUR}. Nothing is exchanged: two currencies never
 * meet.
 *
 * <p>{@code equals} means the same exact number in the same currency. Immutable and thread-safe.
 */
public final class Money implements Explained, Comparable<Money>, Serializable {

    @Serial
    private static final long serialVersionUID = 1L;

    private static final Symbol GIVEN = Symbol.of("x", "given-value", Kind.MONEY);
    private static final int LONGEST_CURRENCY = 24;

    private final Ratio number;
    private final String currency;
    private final transient @Nullable Origin origin;

    private Money(Ratio number, String currency, @Nullable Origin origin) {
        this.number = number;
        this.currency = currency;
        this.origin = origin;
    }

    /**
     * A sum of money.
     *
     * @param number how many of the currency's units
     * @param currency its name or code, such as {@code EUR}: 1 to 24 letters or currency signs, without spaces
     * @return the sum
     * @throws IllegalArgumentException if the currency is blank, too long, or holds anything else
     */
    public static Money of(Ratio number, String currency) {
        Objects.requireNonNull(number, "number");
        if (Objects.requireNonNull(currency, "currency").isEmpty()
                || currency.length() > LONGEST_CURRENCY
                || !currency.codePoints().allMatch(Money::mayStandInCurrency)) {
            throw new IllegalArgumentException("currency is \"" + Excerpt.of(currency) + "\": it must be 1 to "
                    + LONGEST_CURRENCY + " letters or currency signs, such as EUR");
        }
        return new Money(number, currency, null);
    }

    private static boolean mayStandInCurrency(int c) {
        return Character.isLetter(c) || Character.getType(c) == Character.CURRENCY_SYMBOL;
    }

    /**
     * Reads a number and a currency: {@code "12.50 EUR"}.
     *
     * @param text the number as {@link Ratio#parse(String)} reads it, a space, the currency
     * @return the sum
     * @throws NumberTextException if the text is not of that form
     * @throws IllegalArgumentException if the currency is none, as {@link #of} tells
     */
    public static Money parse(String text) {
        return parse(text, AmountFormat.standard());
    }

    static Money parse(String text, AmountFormat format) {
        int space = Objects.requireNonNull(text, "text").lastIndexOf(' ');
        if (space < 1 || space == text.length() - 1) {
            throw AmountText.refused(
                    text,
                    "refusal.text.no-money",
                    "a number, a space and a currency are needed, such as \"12.50 EUR\"");
        }
        return of(format.parseNumber(text.substring(0, space)), text.substring(space + 1));
    }

    /**
     * The exact number of the currency's units.
     *
     * @return the number
     */
    public Ratio number() {
        return number;
    }

    /**
     * The currency.
     *
     * @return its name or code as given
     */
    public String currency() {
        return currency;
    }

    /**
     * This sum and another.
     *
     * @param other the other, in the same currency
     * @return the exact sum
     * @throws IllegalArgumentException if the other is in another currency
     */
    public Money plus(Money other) {
        return new Money(number.plus(sameCurrency(other).number), currency, null);
    }

    /**
     * This sum a number of times.
     *
     * @param factor the factor
     * @return the exact product
     */
    public Money times(Ratio factor) {
        return new Money(number.times(Objects.requireNonNull(factor, "factor")), currency, null);
    }

    /**
     * This sum in so many parts.
     *
     * @param divisor the divisor, not 0
     * @return the exact quotient
     * @throws ArithmeticException if the divisor is 0
     */
    public Money dividedBy(Ratio divisor) {
        return new Money(number.dividedBy(Objects.requireNonNull(divisor, "divisor")), currency, null);
    }

    /**
     * This sum rounded; it keeps its working if nothing was lost.
     *
     * @param rounding the grid and the mode
     * @return the rounded sum
     */
    public Money rounded(Rounding rounding) {
        Ratio rounded = Objects.requireNonNull(rounding, "rounding").apply(number);
        return rounded.equals(number) ? this : new Money(rounded, currency, null);
    }

    private Money sameCurrency(Money other) {
        if (!currency.equals(Objects.requireNonNull(other, "other").currency)) {
            throw new IllegalArgumentException(this + " and " + other
                    + " are in two currencies: give both in one of them, nothing is exchanged here");
        }
        return other;
    }

    /**
     * The same sum, able to tell how it came about. Two sums that differ in that alone are equal.
     *
     * @param question what the sum answers
     * @param owner whose sum it is
     * @param figure the relation that made it, leading to {@link #number()}
     * @param <T> whose sum it is
     * @return the sum with its working
     */
    public <T> Money withWorking(Function<? super T, Phrase> question, T owner, Figure<? super T> figure) {
        return new Money(number, currency, Origin.of(question, number, owner, figure));
    }

    /** Where the sum comes from; of one that was given, only that it was. */
    @Override
    public Origin origin() {
        return origin != null ? origin : Origin.given(GIVEN, Subject.none(), number, Source.written(toString()));
    }

    /**
     * Compares by size.
     *
     * @throws IllegalArgumentException if the other is in another currency
     */
    @Override
    public int compareTo(Money other) {
        return number.compareTo(sameCurrency(other).number);
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Money that && number.equals(that.number) && currency.equals(that.currency);
    }

    @Override
    public int hashCode() {
        return 31 * number.hashCode() + currency.hashCode();
    }

    /**
     * The text for people without loss, with a decimal beside a fraction.
     *
     * @return {@code 0.60 EUR} or {@code 2/3 EUR ≈ 0.666667 EUR}, as {@link NumberText#exact}
     */
    public String toldExactly() {
        return NumberText.exact(number, currency);
    }

    /** The exact number, a space, the currency; {@link #parse} reads it again. */
    @Override
    public String toString() {
        return number + " " + currency;
    }
}
