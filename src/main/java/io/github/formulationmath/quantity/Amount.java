package io.github.formulationmath.quantity;

import io.github.formulationmath.number.Excerpt;
import io.github.formulationmath.number.NumberText;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.number.Rounding;
import io.github.formulationmath.reckoning.Explained;
import io.github.formulationmath.reckoning.InUnit;
import io.github.formulationmath.reckoning.Kind;
import io.github.formulationmath.reckoning.Origin;
import io.github.formulationmath.reckoning.Origin.Figure;
import io.github.formulationmath.reckoning.Phrase;
import io.github.formulationmath.reckoning.Working;
import java.io.InvalidObjectException;
import java.io.NotSerializableException;
import java.io.ObjectInputStream;
import java.io.Serial;
import java.io.Serializable;
import java.util.Objects;
import java.util.function.Function;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Volume;
import org.jspecify.annotations.Nullable;

/**
 * An exact number with a unit: a JSR 385 quantity whose arithmetic never rounds.
 *
 * <p>{@code equals} means the same unit and the same exact value, so 1 kg is not equal to 1000 g; {@link
 * #isEquivalentTo} and {@link #compareTo} look through units. A unit that measures exactly the same as one of {@link
 * FormulationUnits} (a kilogram put together from a prefix and the gram) is taken for it.
 *
 * <p>Example: {@code Amount.mass("12.5 g").times(3)} is 37.5 g; in ounces it is exactly 37.5/28.349523125 oz, and
 * {@code Amount.mass("37.5 g").to(FormulationUnits.OUNCE).rounded(Rounding.toDecimalPlaces(2))} is 1.32 oz.
 *
 * <p>A temperature in °C or °F is a point on a scale, not an amount of something: it converts and compares, a difference
 * in kelvin may be added to it or taken from it, and two of them subtract to a difference in kelvin; sums, products and
 * quotients are refused.
 *
 * <p>Immutable and thread-safe.
 *
 * @param <Q> what is measured, such as {@link Mass}
 */
public final class Amount<Q extends Quantity<Q>>
        implements Quantity<Q>, Explained, InUnit, Comparable<Amount<Q>>, Serializable {
    @Serial
    private static final long serialVersionUID = 1L;

    private final Ratio value;

    private final UnitScale scale;

    private final transient @Nullable Origin origin;

    private Amount(Ratio value, UnitScale scale) {
        this(value, scale, null);
    }

    private Amount(Ratio value, UnitScale scale, @Nullable Origin origin) {
        this.value = value;
        this.scale = scale;
        this.origin = origin;
    }

    /**
     * An amount from an exact number and a unit.
     *
     * @param value the number of units
     * @param unit the unit
     * @param <Q> what is measured
     * @return the amount
     * @throws IllegalArgumentException if the unit is not defined by a rational factor
     */
    public static <Q extends Quantity<Q>> Amount<Q> of(Ratio value, Unit<Q> unit) {
        Objects.requireNonNull(value, "value");
        return new Amount<>(value, UnitScale.of(Objects.requireNonNull(unit, "unit")));
    }

    /**
     * An amount from a number as text and a unit.
     *
     * @param number the number of units, as {@link Ratio#parse(String)} reads it
     * @param unit the unit
     * @param <Q> what is measured
     * @return the amount
     * @throws io.github.formulationmath.number.NumberTextException if the text is not a number
     * @throws IllegalArgumentException if the unit is not defined by a rational factor
     */
    public static <Q extends Quantity<Q>> Amount<Q> of(String number, Unit<Q> unit) {
        return of(Ratio.parse(Objects.requireNonNull(number, "number")), unit);
    }

    /**
     * An amount from a whole number and a unit.
     *
     * @param value the number of units
     * @param unit the unit
     * @param <Q> what is measured
     * @return the amount
     * @throws IllegalArgumentException if the unit is not defined by a rational factor
     */
    public static <Q extends Quantity<Q>> Amount<Q> of(long value, Unit<Q> unit) {
        return of(Ratio.of(value), unit);
    }

    /**
     * The same amount as any JSR 385 quantity. A {@code float} or {@code double} value is read as the decimal that it is
     * written as.
     *
     * @param quantity the quantity of any maker
     * @param <Q> what is measured
     * @return the amount
     * @throws IllegalArgumentException if the value is not finite or of an unknown number type, the unit is not defined
     *     by a rational factor, or the quantity is a temperature difference in a unit with a shifted zero
     */
    public static <Q extends Quantity<Q>> Amount<Q> from(Quantity<Q> quantity) {
        if (Objects.requireNonNull(quantity, "quantity") instanceof Amount<Q> amount) {
            return amount;
        }
        Amount<Q> amount = of(ExactNumbers.ratioOf(quantity.getValue()), quantity.getUnit());
        if (amount.scale.isShifted() && quantity.getScale() == Scale.RELATIVE) {
            throw new IllegalArgumentException(Excerpt.of(amount) + " is given as a difference, which "
                    + amount.scale.symbol() + " cannot show: give it in K");
        }
        return amount;
    }

    /**
     * A mass from its text, such as {@code "12.5 g"} or {@code "1 3/4 oz"}.
     *
     * @param text number and unit, as {@link AmountFormat#standard()} reads them
     * @return the mass
     * @throws io.github.formulationmath.number.NumberTextException if the text is not a mass
     */
    public static Amount<Mass> mass(String text) {
        return AmountFormat.standard().parseMass(text);
    }

    /**
     * A volume from its text, such as {@code "30 mL"}.
     *
     * @param text number and unit, as {@link AmountFormat#standard()} reads them
     * @return the volume
     * @throws io.github.formulationmath.number.NumberTextException if the text is not a volume
     */
    public static Amount<Volume> volume(String text) {
        return AmountFormat.standard().parseVolume(text);
    }

    /**
     * A temperature from its text, such as {@code "75 °C"}.
     *
     * @param text number and unit, as {@link AmountFormat#standard()} reads them
     * @return the temperature
     * @throws io.github.formulationmath.number.NumberTextException if the text is not a temperature
     */
    public static Amount<Temperature> temperature(String text) {
        return AmountFormat.standard().parseTemperature(text);
    }

    /**
     * A mass in grams.
     *
     * @param value the number of grams
     * @return the mass
     */
    public static Amount<Mass> grams(Ratio value) {
        return new Amount<>(Objects.requireNonNull(value, "value"), KnownUnit.GRAM);
    }

    /**
     * A volume in millilitres.
     *
     * @param value the number of millilitres
     * @return the volume
     */
    public static Amount<Volume> millilitres(Ratio value) {
        return new Amount<>(Objects.requireNonNull(value, "value"), KnownUnit.MILLILITRE);
    }

    /**
     * A number in percent.
     *
     * @param value how many hundredths
     * @return the amount
     */
    public static Amount<Dimensionless> percent(Ratio value) {
        return new Amount<>(Objects.requireNonNull(value, "value"), KnownUnit.PERCENT);
    }

    /** The scale must be one that measures this kind of quantity. */
    static <Q extends Quantity<Q>> Amount<Q> ofScale(Ratio value, UnitScale scale) {
        return new Amount<>(value, scale);
    }

    /**
     * The exact number of units.
     *
     * @return the value in this amount's own unit
     */
    public Ratio exactValue() {
        return value;
    }

    /**
     * The exact number of another unit.
     *
     * @param unit the unit to count in
     * @return the value in that unit
     * @throws UnitMismatchException if the unit measures something else (possible through raw types only)
     */
    public Ratio in(Unit<Q> unit) {
        return inScale(UnitScale.of(Objects.requireNonNull(unit, "unit")));
    }

    /**
     * The exact number of the unit that amounts of this kind are counted in: grams, millilitres, the number one, kelvin.
     * What relations reckon with; unlike {@link #in} it needs no unit object.
     *
     * @return the value in that unit
     */
    @Override
    public Ratio canonical() {
        return scale.toCounted(value);
    }

    @Override
    public Ratio unitSize() {
        return scale.factor();
    }

    /** How the amount came about, told in its own unit unless a display has another. */
    @Override
    public Working working() {
        Working working = origin().working();
        return switch (scale.kind()) {
            case MASS -> working.in(Kind.MASS, this);
            case VOLUME -> working.in(Kind.VOLUME, this);
            default -> working;
        };
    }

    /**
     * The same amount in the unit in which parts of it are weighed: grams for kilograms, ounces for pounds, millilitres for litres.
     *
     * @return the amount, in its own unit if that has no such part
     */
    public Amount<Q> inSmallerUnit() {
        KnownUnit smaller = KnownUnit.partOf(scale);
        return smaller == null ? this : new Amount<>(inScale(smaller), smaller, origin);
    }

    /**
     * The same amount, able to tell how it came about. Two amounts that differ in that alone are equal.
     *
     * @param question what the amount answers
     * @param owner whose amount it is
     * @param figure the relation that made it, leading to {@link #canonical()}
     * @param <T> whose amount it is
     * @return the amount with its working
     */
    public <T> Amount<Q> withWorking(Function<? super T, Phrase> question, T owner, Figure<? super T> figure) {
        return new Amount<>(value, scale, Origin.of(question, canonical(), owner, figure));
    }

    /**
     * The same amount with the working of another value that it is the text or unit of.
     *
     * @param from the origin, of the same number
     * @return the amount with its working
     * @throws IllegalArgumentException if the origin explains another number
     */
    public Amount<Q> withWorking(Origin from) {
        if (!Objects.requireNonNull(from, "from").number().equals(canonical())) {
            throw new IllegalArgumentException("origin explains " + Excerpt.of(from.number()) + ", the amount is "
                    + Excerpt.of(this) + ": give the origin of this number");
        }
        return new Amount<>(value, scale, from);
    }

    /**
     * The same amount as if it were given, so that nothing it came from is kept in memory for its sake.
     *
     * @return the amount alone
     */
    public Amount<Q> withoutWorking() {
        return origin == null ? this : new Amount<>(value, scale);
    }

    /**
     * Whether nothing explains the amount, so that a working says no more than that it was given.
     *
     * @return true if it has no working of its own
     */
    public boolean isGiven() {
        return origin == null;
    }

    /** Where the amount comes from; of one that was given, only that it was. */
    @Override
    public Origin origin() {
        return origin != null ? origin : scale.kind().given(this);
    }

    private Ratio inScale(UnitScale target) {
        return target.isSameAs(scale) ? value : target.fromCounted(counted(target));
    }

    /** The value in the counting unit, after checking that a unit measures the same. */
    private Ratio counted(UnitScale other) {
        if (!scale.meets(other)) {
            throw UnitMismatchException.between(scale, other);
        }
        return scale.toCounted(value);
    }

    /**
     * The same amount in another unit, exactly, with the same working.
     *
     * @param unit the unit to convert to
     * @return the equivalent amount
     * @throws UnitMismatchException if the unit measures something else (possible through raw types only)
     */
    @Override
    public Amount<Q> to(Unit<Q> unit) {
        UnitScale target = UnitScale.of(Objects.requireNonNull(unit, "unit"));
        return new Amount<>(inScale(target), target, origin);
    }

    /**
     * The same amount in the unit of another, exactly, with the same working; unlike {@link #to} it needs no unit object.
     *
     * @param other the amount whose unit it takes
     * @return the equivalent amount
     * @throws UnitMismatchException if the other measures something else (possible through raw types only)
     */
    public Amount<Q> inUnitOf(Amount<Q> other) {
        UnitScale target = Objects.requireNonNull(other, "other").scale;
        return new Amount<>(inScale(target), target, origin);
    }

    /**
     * This amount plus another, in this amount's unit.
     *
     * @param other the amount to add
     * @return the exact sum
     * @throws UnitMismatchException if the other measures something else (possible through raw types only)
     * @throws IllegalArgumentException if the other is a temperature in °C or °F: give a difference, in kelvin
     */
    public Amount<Q> plus(Amount<Q> other) {
        Objects.requireNonNull(other, "other").requireUnshifted("added to " + this, "give the difference in K");
        return shiftedBy(other, other.value);
    }

    /**
     * This amount minus another, in this amount's unit; the difference of two temperatures in °C or °F is in kelvin.
     *
     * @param other the amount to take away
     * @return the exact difference
     * @throws UnitMismatchException if the other measures something else (possible through raw types only)
     */
    public Amount<Q> minus(Amount<Q> other) {
        Objects.requireNonNull(other, "other");
        if (other.scale.isShifted()) {
            return ofScale(counted(other.scale).minus(other.counted(scale)), KnownUnit.KELVIN);
        }
        return shiftedBy(other, other.value.unaryMinus());
    }

    /** Adds a signed number of another amount's unshifted units. */
    private Amount<Q> shiftedBy(Amount<Q> other, Ratio step) {
        if (scale.isSameAs(other.scale)) {
            return new Amount<>(value.plus(step), scale);
        }
        Ratio moved = counted(other.scale).plus(step.times(other.scale.factor()));
        return new Amount<>(scale.fromCounted(moved), scale);
    }

    /**
     * This amount a number of times.
     *
     * @param factor the factor
     * @return the exact product
     * @throws IllegalArgumentException if this is a temperature in °C or °F
     */
    public Amount<Q> times(Ratio factor) {
        Objects.requireNonNull(factor, "factor");
        return new Amount<>(requireUnshifted("multiplied").value.times(factor), scale);
    }

    /**
     * This amount divided by a number.
     *
     * @param divisor the divisor, not 0
     * @return the exact quotient
     * @throws ArithmeticException if the divisor is 0
     * @throws IllegalArgumentException if this is a temperature in °C or °F
     */
    public Amount<Q> dividedBy(Ratio divisor) {
        Objects.requireNonNull(divisor, "divisor");
        requireUnshifted("divided");
        if (divisor.isZero()) {
            throw cannotBeDividedBy(divisor);
        }
        return new Amount<>(value.dividedBy(divisor), scale);
    }

    private ArithmeticException cannotBeDividedBy(Object divisor) {
        return new ArithmeticException(
                Excerpt.of(this) + " cannot be divided by " + divisor + ": the divisor must be another number");
    }

    /**
     * How many times another amount goes into this one.
     *
     * @param other the amount to compare with, not 0
     * @return the exact quotient, a pure number
     * @throws ArithmeticException if the other amount is 0
     * @throws UnitMismatchException if the other measures something else (possible through raw types only)
     * @throws IllegalArgumentException if either is a temperature in °C or °F
     */
    public Ratio ratioTo(Amount<Q> other) {
        Objects.requireNonNull(other, "other").requireUnshifted("compared as a ratio");
        requireUnshifted("compared as a ratio");
        if (other.isZero()) {
            throw cannotBeDividedBy(other);
        }
        return scale.isSameAs(other.scale)
                ? value.dividedBy(other.value)
                : counted(other.scale).dividedBy(other.counted(scale));
    }

    /**
     * This amount with the other sign.
     *
     * @return the negated amount
     * @throws IllegalArgumentException if this is a temperature in °C or °F
     */
    public Amount<Q> unaryMinus() {
        return new Amount<>(requireUnshifted("negated").value.unaryMinus(), scale);
    }

    /**
     * This amount with its value, in its own unit, rounded; it keeps its working if nothing was lost.
     *
     * @param rounding the grid and the mode
     * @return the rounded amount in the same unit
     * @throws ArithmeticException if the rounding refuses to lose digits and would have to
     */
    public Amount<Q> rounded(Rounding rounding) {
        Ratio rounded = Objects.requireNonNull(rounding, "rounding").apply(value);
        return rounded.equals(value) ? this : new Amount<>(rounded, scale);
    }

    /** The unit; the first time it is asked of any amount, the reference implementation of the units starts. */
    @Override
    public Unit<Q> getUnit() {
        // The factories take unit and scale together, so the kind is right.
        @SuppressWarnings("unchecked")
        Unit<Q> unit = (Unit<Q>) scale.unit();
        return unit;
    }

    /**
     * The symbol of the unit, as {@link #toString()} prints it; unlike {@link #getUnit()} it needs no unit object.
     *
     * @return the symbol; empty for a pure number
     */
    @Override
    public String symbol() {
        return scale.symbol();
    }

    UnitScale scale() {
        return scale;
    }

    /**
     * This amount a whole number of times.
     *
     * @param factor the factor
     * @return the exact product
     * @throws IllegalArgumentException if this is a temperature in °C or °F
     */
    public Amount<Q> times(long factor) {
        return times(Ratio.of(factor));
    }

    /**
     * {@link Amount#dividedBy(Ratio)} under the name that Kotlin's {@code /} looks for.
     *
     * @param divisor the divisor, not 0
     * @return the exact quotient
     * @throws ArithmeticException if the divisor is 0
     * @throws IllegalArgumentException if this is a temperature in °C or °F
     */
    public Amount<Q> div(Ratio divisor) {
        return dividedBy(divisor);
    }

    /**
     * This amount without its sign.
     *
     * @return the amount, or its opposite if it is below 0
     * @throws IllegalArgumentException if this is a temperature below 0 °C or 0 °F
     */
    public Amount<Q> abs() {
        return signum() < 0 ? unaryMinus() : this;
    }

    /**
     * The sign of the value in this amount's own unit.
     *
     * @return -1, 0 or 1
     */
    public int signum() {
        return value.signum();
    }

    /**
     * Whether the value in this amount's own unit is 0.
     *
     * @return true for 0
     */
    public boolean isZero() {
        return value.isZero();
    }

    /**
     * The value as the plainest standard number type that holds it exactly: {@link Long}, {@link java.math.BigInteger},
     * {@link java.math.BigDecimal}, or for thirds and the like the rational number of the reference implementation.
     */
    @Override
    public Number getValue() {
        return ExactNumbers.numberOf(value);
    }

    /** Always absolute; a temperature difference is an amount in kelvin. */
    @Override
    public Scale getScale() {
        return Scale.ABSOLUTE;
    }

    @Override
    public Amount<Q> add(Quantity<Q> augend) {
        return plus(Amount.from(Objects.requireNonNull(augend, "augend")));
    }

    @Override
    public Amount<Q> subtract(Quantity<Q> subtrahend) {
        return minus(Amount.from(Objects.requireNonNull(subtrahend, "subtrahend")));
    }

    @Override
    public Amount<Q> multiply(Number multiplier) {
        return times(ExactNumbers.ratioOf(Objects.requireNonNull(multiplier, "multiplier")));
    }

    @Override
    public Amount<Q> divide(Number divisor) {
        return dividedBy(ExactNumbers.ratioOf(Objects.requireNonNull(divisor, "divisor")));
    }

    @Override
    public Amount<Q> negate() {
        return unaryMinus();
    }

    /** The exact product, in the product of the units: 25 % of 200 g is {@code share.multiply(mass).asType(Mass.class)}. */
    @Override
    public Amount<?> multiply(Quantity<?> multiplier) {
        Amount<?> other = unshifted(Amount.from(Objects.requireNonNull(multiplier, "multiplier")));
        Unit<?> unit = unshifted(this).getUnit().multiply(other.getUnit());
        return withUnit(value.times(other.value), unit);
    }

    /** The exact quotient, in the quotient of the units. */
    @Override
    public Amount<?> divide(Quantity<?> divisor) {
        Amount<?> other = unshifted(Amount.from(Objects.requireNonNull(divisor, "divisor")));
        Unit<?> unit = unshifted(this).getUnit().divide(other.getUnit());
        return withUnit(value.dividedBy(other.value), unit);
    }

    @Override
    public Amount<?> inverse() {
        return withUnit(value.reciprocal(), unshifted(this).getUnit().inverse());
    }

    @Override
    public <T extends Quantity<T>> Amount<T> asType(Class<T> type) {
        return Amount.of(value, getUnit().asType(Objects.requireNonNull(type, "type")));
    }

    /** Whether another quantity, of whatever maker and unit, has exactly the same size. */
    @Override
    public boolean isEquivalentTo(Quantity<Q> that) {
        Amount<Q> other = Amount.from(Objects.requireNonNull(that, "that"));
        return scale.meets(other.scale()) && compareTo(other) == 0;
    }

    private static Amount<?> unshifted(Amount<?> amount) {
        return amount.requireUnshifted("multiplied or divided", "convert it with to(KELVIN) first");
    }

    private static Amount<?> withUnit(Ratio value, Unit<?> unit) {
        UnitScale scale = UnitScale.of(unit);
        // A quotient of like things is a plain number, whatever units it came from.
        return scale instanceof ForeignUnit && scale.kind() == Measured.NUMBER
                ? Amount.of(scale.toCounted(value), FormulationUnits.ONE)
                : Amount.ofScale(value, scale);
    }

    Amount<Q> requireUnshifted(String done, String remedy) {
        if (scale.isShifted()) {
            throw new IllegalArgumentException(
                    Excerpt.of(this) + " is a point on a scale and cannot be " + done + ": " + remedy);
        }
        return this;
    }

    private Amount<Q> requireUnshifted(String done) {
        return requireUnshifted(done, "convert it with to(KELVIN) first");
    }

    /**
     * Passes an argument on, if it is above 0.
     *
     * @param name the name of the argument, for the message
     * @param amount the argument
     * @param <Q> what is measured
     * @return the amount
     * @throws IllegalArgumentException if the amount is not above 0
     */
    public static <Q extends Quantity<Q>> Amount<Q> requirePositive(String name, Amount<Q> amount) {
        if (Objects.requireNonNull(amount, Objects.requireNonNull(name, "name")).signum() <= 0) {
            throw new IllegalArgumentException(name + " is " + Excerpt.of(amount) + ": it must be above 0");
        }
        return amount;
    }

    /**
     * Passes an argument on, if it is at least 0.
     *
     * @param name the name of the argument, for the message
     * @param amount the argument
     * @param <Q> what is measured
     * @return the amount
     * @throws IllegalArgumentException if the amount is negative
     */
    public static <Q extends Quantity<Q>> Amount<Q> requireNotNegative(String name, Amount<Q> amount) {
        if (Objects.requireNonNull(amount, Objects.requireNonNull(name, "name")).signum() < 0) {
            throw new IllegalArgumentException(name + " is " + Excerpt.of(amount) + ": it must be at least 0");
        }
        return amount;
    }

    /**
     * Compares by size, through units: 1 kg and 1000 g compare as 0 without being equal.
     *
     * @param other the amount to compare with
     * @return below 0, 0 or above 0, as this amount is smaller, equivalent or larger
     * @throws UnitMismatchException if the other measures something else (possible through raw types only)
     */
    @Override
    public int compareTo(Amount<Q> other) {
        Objects.requireNonNull(other, "other");
        return scale.isSameAs(other.scale)
                ? value.compareTo(other.value)
                : counted(other.scale).compareTo(other.counted(scale));
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Amount<?> that && value.equals(that.value) && scale.isSameAs(that.scale);
    }

    @Override
    public int hashCode() {
        return Objects.hash(value, scale.factor());
    }

    /**
     * The text for people, for a prompt or a page; what is to be read again is {@link #toString()}.
     *
     * @return {@code 1.025 g} or {@code ≈ 0.666667 g}, as {@link NumberText#of(Ratio, String)}
     */
    public String told() {
        return NumberText.of(value, symbol());
    }

    /**
     * The text for people without loss, with a decimal beside a fraction.
     *
     * @return {@code 1.025 g} or {@code 2/3 g ≈ 0.666667 g}, as {@link NumberText#exact}
     */
    public String toldExactly() {
        return NumberText.exact(value, symbol());
    }

    /**
     * Exact value, space, symbol: {@code 12.5 g}, {@code 400/3 mL}, {@code 25 g²}. {@link AmountFormat#standard()} reads it again, but for a pure
     * number, and a unit of another maker that it does not know.
     */
    @Override
    public String toString() {
        return AmountFormat.standard().format(this);
    }

    @Serial
    private Object writeReplace() throws NotSerializableException {
        if (scale instanceof ForeignUnit) {
            throw new NotSerializableException(
                    this + " has a unit that is not one of FormulationUnits: convert it with to(…) first");
        }
        return new SerializedAmount(value, scale.symbol());
    }

    @Serial
    private void readObject(ObjectInputStream in) throws InvalidObjectException {
        throw new InvalidObjectException("an Amount is read through its serialized form only");
    }
}
