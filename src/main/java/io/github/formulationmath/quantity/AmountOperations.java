package io.github.formulationmath.quantity;

import io.github.formulationmath.number.Ratio;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.Unit;

/** What an {@link Amount} can do that follows from its few basic operations: above all, its face to JSR 385. */
abstract sealed class AmountOperations<Q extends Quantity<Q>> implements Quantity<Q> permits Amount {

    abstract Amount<Q> self();

    /**
     * This amount a whole number of times.
     *
     * @param factor the factor
     * @return the exact product
     * @throws IllegalArgumentException if this is a temperature in °C or °F
     */
    public Amount<Q> times(long factor) {
        return self().times(Ratio.of(factor));
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
        return self().dividedBy(divisor);
    }

    /**
     * This amount without its sign.
     *
     * @return the amount, or its opposite if it is below 0
     * @throws IllegalArgumentException if this is a temperature below 0 °C or 0 °F
     */
    public Amount<Q> abs() {
        return signum() < 0 ? self().unaryMinus() : self();
    }

    /**
     * The sign of the value in this amount's own unit.
     *
     * @return -1, 0 or 1
     */
    public int signum() {
        return self().exactValue().signum();
    }

    /**
     * Whether the value in this amount's own unit is 0.
     *
     * @return true for 0
     */
    public boolean isZero() {
        return self().exactValue().isZero();
    }

    /**
     * The value as the plainest standard number type that holds it exactly: {@link Long}, {@link java.math.BigInteger},
     * {@link java.math.BigDecimal}, or for thirds and the like the rational number of the reference implementation.
     */
    @Override
    public Number getValue() {
        return ExactNumbers.numberOf(self().exactValue());
    }

    /** Always absolute; a temperature difference is an amount in kelvin. */
    @Override
    public Scale getScale() {
        return Scale.ABSOLUTE;
    }

    @Override
    public Amount<Q> add(Quantity<Q> augend) {
        return self().plus(Amount.from(Objects.requireNonNull(augend, "augend")));
    }

    @Override
    public Amount<Q> subtract(Quantity<Q> subtrahend) {
        return self().minus(Amount.from(Objects.requireNonNull(subtrahend, "subtrahend")));
    }

    @Override
    public Amount<Q> multiply(Number multiplier) {
        return self().times(ExactNumbers.ratioOf(Objects.requireNonNull(multiplier, "multiplier")));
    }

    @Override
    public Amount<Q> divide(Number divisor) {
        return self().dividedBy(ExactNumbers.ratioOf(Objects.requireNonNull(divisor, "divisor")));
    }

    @Override
    public Amount<Q> negate() {
        return self().unaryMinus();
    }

    /** The exact product, in the product of the units: 25 % of 200 g is {@code share.multiply(mass).asType(Mass.class)}. */
    @Override
    public Amount<?> multiply(Quantity<?> multiplier) {
        Amount<?> other = unshifted(Amount.from(Objects.requireNonNull(multiplier, "multiplier")));
        Unit<?> unit = unshifted(self()).getUnit().multiply(other.getUnit());
        return withUnit(self().exactValue().times(other.exactValue()), unit);
    }

    /** The exact quotient, in the quotient of the units. */
    @Override
    public Amount<?> divide(Quantity<?> divisor) {
        Amount<?> other = unshifted(Amount.from(Objects.requireNonNull(divisor, "divisor")));
        Unit<?> unit = unshifted(self()).getUnit().divide(other.getUnit());
        return withUnit(self().exactValue().dividedBy(other.exactValue()), unit);
    }

    @Override
    public Amount<?> inverse() {
        return withUnit(
                self().exactValue().reciprocal(), unshifted(self()).getUnit().inverse());
    }

    @Override
    public <T extends Quantity<T>> Amount<T> asType(Class<T> type) {
        return Amount.of(self().exactValue(), getUnit().asType(Objects.requireNonNull(type, "type")));
    }

    /** Whether another quantity, of whatever maker and unit, has exactly the same size. */
    @Override
    public boolean isEquivalentTo(Quantity<Q> that) {
        Amount<Q> other = Amount.from(Objects.requireNonNull(that, "that"));
        return self().scale().meets(other.scale()) && self().compareTo(other) == 0;
    }

    private static Amount<?> unshifted(Amount<?> amount) {
        return amount.requireUnshifted("multiplied or divided", "convert it with to(KELVIN) first");
    }

    private static Amount<?> withUnit(Ratio value, Unit<?> unit) {
        UnitScale scale = UnitScale.of(unit);
        // A quotient of like things is a plain number, whatever units it came from.
        return scale.kind() == Kind.NUMBER && !scale.known()
                ? Amount.of(scale.toCounted(value), FormulationUnits.ONE)
                : Amount.ofScale(value, scale);
    }
}
