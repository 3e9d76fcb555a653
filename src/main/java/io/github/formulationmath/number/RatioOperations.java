package io.github.formulationmath.number;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Objects;

/** What a {@link Ratio} can do that follows from its few basic operations. */
abstract sealed class RatioOperations permits Ratio {

    abstract Ratio self();

    /**
     * This number times a whole number.
     *
     * @param factor the factor
     * @return the exact product
     */
    public Ratio times(long factor) {
        return self().times(Ratio.of(factor));
    }

    /**
     * This number divided by a whole number.
     *
     * @param divisor the divisor, not 0
     * @return the exact quotient
     * @throws ArithmeticException if the divisor is 0
     */
    public Ratio dividedBy(long divisor) {
        return self().dividedBy(Ratio.of(divisor));
    }

    /**
     * {@link Ratio#dividedBy(Ratio)} under the name that Kotlin's {@code /} looks for.
     *
     * @param divisor the divisor, not 0
     * @return the exact quotient
     * @throws ArithmeticException if the divisor is 0
     */
    public Ratio div(Ratio divisor) {
        return self().dividedBy(divisor);
    }

    /**
     * The size of this number, without its sign.
     *
     * @return the absolute value
     */
    public Ratio abs() {
        return self().signum() < 0 ? self().unaryMinus() : self();
    }

    /**
     * One divided by this number.
     *
     * @return the reciprocal
     * @throws ArithmeticException if this number is 0
     */
    public Ratio reciprocal() {
        return Ratio.ONE.dividedBy(self());
    }

    /**
     * Whether this number is 0.
     *
     * @return true for 0
     */
    public boolean isZero() {
        return self().signum() == 0;
    }

    /**
     * The largest whole number that is not above this one.
     *
     * @return the floor
     */
    public Ratio floor() {
        return self().toWhole(RoundingMode.FLOOR);
    }

    /**
     * The smallest whole number that is not below this one.
     *
     * @return the ceiling
     */
    public Ratio ceil() {
        return self().toWhole(RoundingMode.CEILING);
    }

    /**
     * This number rounded as told.
     *
     * @param rounding the grid and the mode
     * @return the rounded number
     * @throws ArithmeticException as {@link Rounding#apply(Ratio)}
     */
    public Ratio rounded(Rounding rounding) {
        return Objects.requireNonNull(rounding, "rounding").apply(self());
    }

    /**
     * The smaller of this number and another.
     *
     * @param other the other number
     * @return whichever is smaller; this one if they are equal
     */
    public Ratio min(Ratio other) {
        return self().compareTo(other) <= 0 ? self() : other;
    }

    /**
     * The larger of this number and another.
     *
     * @param other the other number
     * @return whichever is larger; this one if they are equal
     */
    public Ratio max(Ratio other) {
        return self().compareTo(other) >= 0 ? self() : other;
    }

    /**
     * Whether this number can be written with a finite number of decimals.
     *
     * @return true if the denominator has no prime factor but 2 and 5
     */
    public boolean isDecimal() {
        return WholeNumbers.decimalPlaces(self().denominator()) >= 0;
    }

    /**
     * This number as a decimal, exactly.
     *
     * @return the decimal without trailing zeros after the point
     * @throws ArithmeticException if it has no finite decimal form; round it first
     */
    public BigDecimal toBigDecimal() {
        int places = WholeNumbers.decimalPlaces(self().denominator());
        if (places < 0) {
            throw new ArithmeticException(Excerpt.of(this)
                    + " has no finite decimal form: round it first, for example with rounded(toDecimalPlaces(4))");
        }
        return new BigDecimal(self().numerator())
                .divide(new BigDecimal(self().denominator()), places, RoundingMode.UNNECESSARY);
    }

    /**
     * This whole number as a {@code long}.
     *
     * @return the same number
     * @throws ArithmeticException if it is no whole number or does not fit
     */
    public long toLongExact() {
        if (!self().isInteger()) {
            throw new ArithmeticException(Excerpt.of(this)
                    + " is not a whole number: round it first, for example with rounded(toDecimalPlaces(0))");
        }
        try {
            return self().numerator().longValueExact();
        } catch (ArithmeticException e) {
            throw (ArithmeticException)
                    new ArithmeticException(Excerpt.of(this) + " does not fit the 64 bits of a long").initCause(e);
        }
    }
}
