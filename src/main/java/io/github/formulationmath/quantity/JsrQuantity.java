package io.github.formulationmath.quantity;

import io.github.formulationmath.number.Ratio;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.Unit;

/** The face that an {@link Amount} shows to JSR 385, in terms of its own exact arithmetic. */
abstract sealed class JsrQuantity<Q extends Quantity<Q>> implements Quantity<Q> permits Amount {

    abstract Amount<Q> self();

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
        return Amount.ofScale(value, UnitScale.of(unit));
    }
}
