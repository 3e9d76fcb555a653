package io.github.formulationmath.number;

import java.io.InvalidObjectException;
import java.io.ObjectInputStream;
import java.io.Serial;
import java.io.Serializable;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * An exact rational number, always in lowest terms with a positive denominator.
 *
 * <p>Nothing is ever rounded: sums, differences, products and quotients of ratios are exact, thirds stay thirds. Digits
 * are lost only by {@link #rounded(Rounding)}, which must be told how, and by {@link #doubleValue()}. It is no {@link
 * Number}: whoever prints a Number takes what it prints for a decimal, and 1/3 in a JSON document is none.
 *
 * <p>Example: {@code Ratio.parse("1").dividedBy(3).times(400)} is 400/3; rounded to two decimal places it is 133.33.
 *
 * <p>Numbers whose numerator and denominator fit 64 bits are computed in 64 bits; larger ones in {@link BigInteger}. The
 * two ways give the same results and are equal to each other.
 *
 * <p>{@code equals} means the same number: 0.5, 1/2 and 2/4 are equal. Immutable and thread-safe.
 */
public final class Ratio implements Comparable<Ratio>, Serializable {
    /** The number 0. */
    public static final Ratio ZERO = new Ratio(0, 1);

    /** The number 1. */
    public static final Ratio ONE = new Ratio(1, 1);

    @Serial
    private static final long serialVersionUID = 1L;

    private static final BigInteger FIVE = BigInteger.valueOf(5);

    private final long num;

    private final long den;

    private final @Nullable BigRatio big;

    private Ratio(long num, long den) {
        this.num = num;
        this.den = den;
        this.big = null;
    }

    private Ratio(BigRatio big) {
        this.num = 0;
        this.den = 0;
        this.big = big;
    }

    /**
     * A whole number.
     *
     * @param value the number
     * @return the same number, exactly
     */
    public static Ratio of(long value) {
        return value == Long.MIN_VALUE ? ofBig(BigInteger.valueOf(value), BigInteger.ONE) : new Ratio(value, 1);
    }

    /**
     * A fraction of two whole numbers.
     *
     * @param numerator the number above the line
     * @param denominator the number below the line, not 0
     * @return the fraction in lowest terms
     * @throws ArithmeticException if the denominator is 0
     */
    public static Ratio of(long numerator, long denominator) {
        if (numerator == Long.MIN_VALUE || denominator == Long.MIN_VALUE) {
            return of(BigInteger.valueOf(numerator), BigInteger.valueOf(denominator));
        }
        if (denominator == 0) {
            throw zeroDenominator(Long.toString(numerator));
        }
        long g = Longs.gcd(numerator, denominator);
        return denominator < 0
                ? new Ratio(-(numerator / g), -(denominator / g))
                : new Ratio(numerator / g, denominator / g);
    }

    /**
     * A whole number of any size.
     *
     * @param value the number
     * @return the same number, exactly
     */
    public static Ratio of(BigInteger value) {
        return ofBig(Objects.requireNonNull(value, "value"), BigInteger.ONE);
    }

    /**
     * A fraction of two whole numbers of any size.
     *
     * @param numerator the number above the line
     * @param denominator the number below the line, not 0
     * @return the fraction in lowest terms
     * @throws ArithmeticException if the denominator is 0
     */
    public static Ratio of(BigInteger numerator, BigInteger denominator) {
        Objects.requireNonNull(numerator, "numerator");
        Objects.requireNonNull(denominator, "denominator");
        if (denominator.signum() == 0) {
            throw zeroDenominator(numerator.toString());
        }
        BigInteger sign = BigInteger.valueOf(denominator.signum());
        BigInteger g = numerator.gcd(denominator).multiply(sign);
        return ofBig(numerator.divide(g), denominator.divide(g));
    }

    /**
     * A decimal number, exactly.
     *
     * @param value the decimal; its scale between -{@value RatioText#MAX_EXPONENT} and {@value RatioText#MAX_EXPONENT}
     * @return the same number
     * @throws IllegalArgumentException if the scale lies outside that range, so that a hostile exponent cannot fill the
     *     memory
     */
    public static Ratio of(BigDecimal value) {
        Objects.requireNonNull(value, "value");
        RatioText.requireExponent(-(long) value.scale(), value.unscaledValue().bitLength() + " bits");
        return ofDecimal(value);
    }

    /** A decimal whose scale is known to be small enough. */
    static Ratio ofDecimal(BigDecimal value) {
        return value.scale() <= 0
                ? of(value.unscaledValue().multiply(BigInteger.TEN.pow(-value.scale())))
                : of(value.unscaledValue(), BigInteger.TEN.pow(value.scale()));
    }

    /**
     * The number that a {@code double} is written as: the shortest decimal that identifies it, as {@link
     * Double#toString(double)} specifies it since Java 19; earlier releases give the same here. So {@code from(0.1)} is
     * 0.1, not the binary fraction nearest to it.
     *
     * @param value a finite number
     * @return the decimal number, exactly
     * @throws IllegalArgumentException if the value is infinite or not a number
     */
    public static Ratio from(double value) {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("value is " + value + ": a finite number is needed");
        }
        return of(Doubles.shortest(value));
    }

    /**
     * The number that a {@code float} is written as, as {@link #from(double)} does it: {@code from(0.1f)} is 0.1.
     *
     * @param value a finite number
     * @return the decimal number, exactly
     * @throws IllegalArgumentException if the value is infinite or not a number
     */
    public static Ratio from(float value) {
        if (!Float.isFinite(value)) {
            throw new IllegalArgumentException("value is " + value + ": a finite number is needed");
        }
        return of(Doubles.shortest(value));
    }

    /**
     * Reads a number as people write it, in one fixed form whatever the locale: digits with an optional decimal point
     * ({@code 12.5}), an optional power of ten ({@code 1e-3}), a fraction ({@code 3/4}) or a whole number and a fraction
     * ({@code 1 3/4}). The whole text must be used up; spaces may stand around it. No grouping marks, no decimal comma.
     *
     * @param text the number as text, at most {@value RatioText#MAX_LENGTH} characters
     * @return the number, exactly
     * @throws NumberTextException if the text is not such a number; the message quotes it and shows where it fails
     */
    public static Ratio parse(String text) {
        return RatioText.parse(Objects.requireNonNull(text, "text"));
    }

    static Ratio ofBig(BigInteger numerator, BigInteger denominator) {
        boolean small = numerator.bitLength() < Long.SIZE && denominator.bitLength() < Long.SIZE;
        return small && numerator.longValue() != Long.MIN_VALUE
                ? new Ratio(numerator.longValue(), denominator.longValue())
                : new Ratio(new BigRatio(numerator, denominator));
    }

    private static ArithmeticException zeroDenominator(String numerator) {
        return new ArithmeticException(
                "the denominator of " + Excerpt.of(numerator) + "/0 is 0: it must be another number");
    }

    /**
     * The number above the line, in lowest terms; it carries the sign.
     *
     * @return the numerator
     */
    public BigInteger numerator() {
        return big == null ? BigInteger.valueOf(num) : big.num();
    }

    /**
     * The number below the line, in lowest terms.
     *
     * @return the denominator, at least 1
     */
    public BigInteger denominator() {
        return big == null ? BigInteger.valueOf(den) : big.den();
    }

    /**
     * Whether numerator and denominator both fit a {@code long}, so that fast paths may be taken.
     *
     * @return true if {@link #numerator()} and {@link #denominator()} convert to {@code long} exactly
     */
    public boolean fitsLongs() {
        return big == null;
    }

    /**
     * The numerator as a {@code long}, for fast paths.
     *
     * @return the numerator
     * @throws ArithmeticException if not {@link #fitsLongs()}
     */
    public long longNumerator() {
        return big == null ? num : big.num().longValueExact();
    }

    /**
     * The denominator as a {@code long}, for fast paths.
     *
     * @return the denominator, at least 1
     * @throws ArithmeticException if not {@link #fitsLongs()}
     */
    public long longDenominator() {
        return big == null ? den : big.den().longValueExact();
    }

    /** Whether it is 1, which changes no factor. */
    private boolean isOne() {
        return big == null && num == 1 && den == 1;
    }

    /**
     * This number plus another.
     *
     * @param other the number to add
     * @return the exact sum
     */
    public Ratio plus(Ratio other) {
        if (Objects.requireNonNull(other, "other").isZero()) {
            return this;
        }
        if (isZero()) {
            return other;
        }
        return big == null && other.big == null
                ? Longs.add(num, den, other.num, other.den)
                : BigRatio.add(numerator(), denominator(), other.numerator(), other.denominator());
    }

    /**
     * This number minus another.
     *
     * @param other the number to take away
     * @return the exact difference
     */
    public Ratio minus(Ratio other) {
        if (Objects.requireNonNull(other, "other").isZero()) {
            return this;
        }
        return big == null && other.big == null
                ? Longs.add(num, den, -other.num, other.den)
                : BigRatio.add(numerator(), denominator(), other.numerator().negate(), other.denominator());
    }

    /**
     * This number times another.
     *
     * @param other the factor
     * @return the exact product
     */
    public Ratio times(Ratio other) {
        if (Objects.requireNonNull(other, "other").isOne()) {
            return this;
        }
        if (isOne()) {
            return other;
        }
        return big == null && other.big == null
                ? Longs.multiply(num, den, other.num, other.den)
                : BigRatio.multiply(numerator(), denominator(), other.numerator(), other.denominator());
    }

    /**
     * This number times a whole number.
     *
     * @param factor the factor
     * @return the exact product
     */
    public Ratio times(long factor) {
        return times(of(factor));
    }

    /**
     * This number divided by another.
     *
     * @param divisor the divisor, not 0
     * @return the exact quotient
     * @throws ArithmeticException if the divisor is 0
     */
    public Ratio dividedBy(Ratio divisor) {
        if (Objects.requireNonNull(divisor, "divisor").isZero()) {
            throw new ArithmeticException(
                    Excerpt.of(this) + " cannot be divided by 0: the divisor must be another number");
        }
        if (big == null && divisor.big == null) {
            return divisor.num < 0
                    ? Longs.multiply(num, den, -divisor.den, -divisor.num)
                    : Longs.multiply(num, den, divisor.den, divisor.num);
        }
        BigInteger below = divisor.denominator();
        return BigRatio.multiply(
                numerator(),
                denominator(),
                divisor.signum() < 0 ? below.negate() : below,
                divisor.numerator().abs());
    }

    /**
     * This number divided by a whole number.
     *
     * @param divisor the divisor, not 0
     * @return the exact quotient
     * @throws ArithmeticException if the divisor is 0
     */
    public Ratio dividedBy(long divisor) {
        return dividedBy(of(divisor));
    }

    /**
     * {@link #dividedBy(Ratio)} under the name that Kotlin's {@code /} looks for.
     *
     * @param divisor the divisor, not 0
     * @return the exact quotient
     * @throws ArithmeticException if the divisor is 0
     */
    public Ratio div(Ratio divisor) {
        return dividedBy(divisor);
    }

    /**
     * One divided by this number.
     *
     * @return the reciprocal
     * @throws ArithmeticException if this number is 0
     */
    public Ratio reciprocal() {
        return ONE.dividedBy(this);
    }

    /**
     * The smallest number that is a whole multiple of this and of another: for fractions in lowest terms the least common
     * multiple of the numerators over the greatest common divisor of the denominators.
     *
     * @param other the other number, above 0 as this is
     * @return the least common multiple; that of 3/4 and 1/6 is 3/2
     * @throws ArithmeticException if one of the two is 0 or less
     */
    public Ratio leastCommonMultiple(Ratio other) {
        if (Math.min(signum(), Objects.requireNonNull(other, "other").signum()) <= 0) {
            throw new ArithmeticException("the least common multiple of " + Excerpt.of(this) + " and "
                    + Excerpt.of(other) + " is asked for: both must be above 0");
        }
        BigInteger common = numerator().gcd(other.numerator());
        return of(
                numerator().divide(common).multiply(other.numerator()),
                denominator().gcd(other.denominator()));
    }

    /**
     * This number with the other sign.
     *
     * @return the negated number
     */
    public Ratio unaryMinus() {
        return big == null ? new Ratio(-num, den) : ofBig(big.num().negate(), big.den());
    }

    /**
     * The size of this number, without its sign.
     *
     * @return the absolute value
     */
    public Ratio abs() {
        return signum() < 0 ? unaryMinus() : this;
    }

    /**
     * The sign: -1, 0 or 1.
     *
     * @return the sign of this number
     */
    public int signum() {
        return big == null ? Long.signum(num) : big.num().signum();
    }

    /**
     * Whether this number is 0.
     *
     * @return true for 0
     */
    public boolean isZero() {
        return signum() == 0;
    }

    /**
     * Whether this is a whole number.
     *
     * @return true if the denominator is 1
     */
    public boolean isInteger() {
        return big == null ? den == 1 : big.den().equals(BigInteger.ONE);
    }

    /**
     * Whether this number can be written with a finite number of decimals.
     *
     * @return true if the denominator has no prime factor but 2 and 5
     */
    public boolean isDecimal() {
        return decimalPlaces() >= 0;
    }

    /**
     * The nearest whole number under a rounding mode.
     *
     * @param mode what to do with the part after the point, and with ties
     * @return the rounded whole number
     * @throws ArithmeticException if the mode is {@link RoundingMode#UNNECESSARY} and this is no whole number
     */
    public Ratio toWhole(RoundingMode mode) {
        Objects.requireNonNull(mode, "mode");
        return big == null ? of(Longs.divide(num, den, mode)) : of(big.toWhole(mode));
    }

    /**
     * The largest whole number that is not above this one.
     *
     * @return the floor
     */
    public Ratio floor() {
        return toWhole(RoundingMode.FLOOR);
    }

    /**
     * The smallest whole number that is not below this one.
     *
     * @return the ceiling
     */
    public Ratio ceil() {
        return toWhole(RoundingMode.CEILING);
    }

    /**
     * This number rounded as told.
     *
     * @param rounding the grid and the mode
     * @return the rounded number
     * @throws ArithmeticException as {@link Rounding#apply(Ratio)}
     */
    public Ratio rounded(Rounding rounding) {
        return Objects.requireNonNull(rounding, "rounding").apply(this);
    }

    /**
     * The square root, correctly rounded, half even, to significant digits; a tie cannot occur unless the root is exact.
     *
     * <p>Example: the root of 1/12 to six digits is 0.288675.
     *
     * @param digits significant digits of the result, from 1 to {@value Rounding#MAX_DIGITS}
     * @return the root, exact if it has no more digits than asked for
     * @throws ArithmeticException if this number is negative
     * @throws IllegalArgumentException if digits is out of range
     */
    public Ratio sqrt(int digits) {
        Rounding rounding = Rounding.toSignificantDigits(digits);
        if (signum() < 0) {
            throw new ArithmeticException("the square root of " + Excerpt.of(this) + " is not a real number");
        }
        if (isZero()) {
            return this;
        }
        // Scaled by 100^k the whole root has two digits more than asked for; a lost rest is kept as a sticky half unit.
        int k = Math.max(0, digits + 2 - Math.floorDiv(magnitude(), 2));
        BigInteger scale = BigInteger.TEN.pow(k);
        Ratio scaled = times(of(scale.multiply(scale)));
        BigInteger whole = scaled.toWhole(RoundingMode.FLOOR).numerator().sqrt();
        boolean exact = of(whole.multiply(whole)).equals(scaled);
        Ratio root = of(whole.shiftLeft(1).add(exact ? BigInteger.ZERO : BigInteger.ONE), scale.shiftLeft(1));
        return rounding.apply(root);
    }

    @Override
    public int compareTo(Ratio other) {
        Objects.requireNonNull(other, "other");
        if (big == null && other.big == null) {
            return Longs.compareProducts(num, other.den, other.num, den);
        }
        return numerator()
                .multiply(other.denominator())
                .compareTo(other.numerator().multiply(denominator()));
    }

    /**
     * The smaller of this number and another.
     *
     * @param other the other number
     * @return whichever is smaller; this one if they are equal
     */
    public Ratio min(Ratio other) {
        return compareTo(other) <= 0 ? this : other;
    }

    /**
     * The larger of this number and another.
     *
     * @param other the other number
     * @return whichever is larger; this one if they are equal
     */
    public Ratio max(Ratio other) {
        return compareTo(other) >= 0 ? this : other;
    }

    /**
     * The nearest {@code double}, correctly rounded (ties to even).
     *
     * @return the number; infinite only if out of its range
     */
    public double doubleValue() {
        return big == null && Longs.isExactDouble(num) && Longs.isExactDouble(den)
                ? (double) num / den
                : Doubles.nearest(numerator(), denominator());
    }

    /**
     * This whole number as a {@code long}.
     *
     * @return the same number
     * @throws ArithmeticException if it is no whole number or does not fit
     */
    public long toLongExact() {
        if (!isInteger()) {
            throw new ArithmeticException(Excerpt.of(this)
                    + " is not a whole number: round it first, for example with rounded(toDecimalPlaces(0))");
        }
        try {
            return numerator().longValueExact();
        } catch (ArithmeticException e) {
            throw (ArithmeticException)
                    new ArithmeticException(Excerpt.of(this) + " does not fit the 64 bits of a long").initCause(e);
        }
    }

    /**
     * This number as a decimal, exactly.
     *
     * @return the decimal without trailing zeros after the point
     * @throws ArithmeticException if it has no finite decimal form; round it first
     */
    public BigDecimal toBigDecimal() {
        int places = decimalPlaces();
        if (places < 0) {
            throw new ArithmeticException(Excerpt.of(this)
                    + " has no finite decimal form: round it first, for example with rounded(toDecimalPlaces(4))");
        }
        return new BigDecimal(numerator()).divide(new BigDecimal(denominator()), places, RoundingMode.UNNECESSARY);
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Ratio that && num == that.num && den == that.den && Objects.equals(big, that.big);
    }

    @Override
    public int hashCode() {
        return big == null ? Long.hashCode(num * 31 + den) : big.hashCode();
    }

    /**
     * The shortest exact form: {@code 12.5}, {@code -3}, {@code 400/3}. {@link #parse(String)} reads it again, up to
     * {@value RatioText#MAX_LENGTH} characters.
     */
    @Override
    public String toString() {
        return RatioText.format(this);
    }

    /** A ratio of 64-bit numbers that are in lowest terms already, the denominator above 0. */
    static Ratio ofLowestTerms(long num, long den) {
        return new Ratio(num, den);
    }

    /** How many decimals this number needs, or -1 if they never end. */
    int decimalPlaces() {
        BigInteger d = denominator();
        int twos = d.getLowestSetBit();
        BigInteger rest = d.shiftRight(twos);
        int fives = 0;
        while (!rest.equals(BigInteger.ONE)) {
            BigInteger[] parts = rest.divideAndRemainder(FIVE);
            if (parts[1].signum() != 0) {
                return -1;
            }
            rest = parts[0];
            fives++;
        }
        return Math.max(twos, fives);
    }

    /** The power of ten at which the first significant digit stands: the largest e with 10^e ≤ |this|, this not 0. */
    int magnitude() {
        BigInteger n = numerator().abs();
        BigInteger d = denominator();
        int e = n.toString().length() - d.toString().length();
        boolean isAtLeast = e >= 0
                ? n.compareTo(d.multiply(BigInteger.TEN.pow(e))) >= 0
                : n.multiply(BigInteger.TEN.pow(-e)).compareTo(d) >= 0;
        return isAtLeast ? e : e - 1;
    }

    /** The multiple of a step nearest under a mode, the step above 0: {@code step · whole(this / step)}. */
    Ratio toMultipleOf(Ratio step, RoundingMode mode) {
        return big == null && step.big == null
                ? Longs.toMultipleOf(num, den, step.num, step.den, mode)
                : of(steps(step, mode)).times(step);
    }

    /** How often a step goes into this number: nothing need cancel for that. */
    private BigInteger steps(Ratio step, RoundingMode mode) {
        return BigRatio.divide(
                BigRatio.times(numerator(), step.denominator()), BigRatio.times(denominator(), step.numerator()), mode);
    }

    @Serial
    private Object writeReplace() {
        return new SerializedRatio(numerator(), denominator());
    }

    @Serial
    private void readObject(ObjectInputStream in) throws InvalidObjectException {
        throw new InvalidObjectException("a Ratio is read through its serialized form only");
    }
}
