package io.github.formulationmath.quantity;

import io.github.formulationmath.number.Ratio;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicLong;
import tech.units.indriya.function.RationalNumber;

/** The one place where numbers of other types come in and go out, exactly. */
final class ExactNumbers {

    private ExactNumbers() {}

    /** The number itself; for binary floating point, the decimal that it is written as. */
    static Ratio ratioOf(Number number) {
        if (number instanceof BigDecimal decimal) {
            return Ratio.of(decimal);
        }
        if (number instanceof BigInteger whole) {
            return Ratio.of(whole);
        }
        if (number instanceof RationalNumber rational) {
            return Ratio.of(rational.getDividend(), rational.getDivisor());
        }
        if (number instanceof Double binary) {
            return Ratio.from(binary);
        }
        if (number instanceof Float binary) {
            return Ratio.from(binary);
        }
        return whole(number);
    }

    private static Ratio whole(Number number) {
        if (number instanceof Long
                || number instanceof Integer
                || number instanceof Short
                || number instanceof Byte
                || number instanceof AtomicLong
                || number instanceof AtomicInteger) {
            return Ratio.of(number.longValue());
        }
        throw new IllegalArgumentException("value " + number + " has the unknown number type "
                + number.getClass().getName() + ": use BigDecimal, or a method that takes a Ratio");
    }

    /** The plainest standard type that holds the number exactly. */
    static Number numberOf(Ratio value) {
        if (value.isInteger()) {
            BigInteger whole = value.numerator();
            return value.fitsLongs() ? (Number) whole.longValueExact() : whole;
        }
        return value.isDecimal() ? value.toBigDecimal() : RationalNumber.of(value.numerator(), value.denominator());
    }
}
