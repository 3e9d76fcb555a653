package io.github.formulationmath.quantity;

import io.github.formulationmath.number.Ratio;
import java.util.List;
import javax.measure.Unit;
import javax.measure.UnitConverter;
import tech.units.indriya.function.AddConverter;
import tech.units.indriya.function.PowerOfIntConverter;
import tech.units.indriya.function.RationalConverter;

/**
 * The exact line {@code y = factor · x + offset} from a unit to its SI unit, read from the whole numbers inside the
 * steps of its converter. No step is ever asked to convert: that could round by a setting that any code in the JVM can
 * change.
 */
record ConverterWalk(Ratio factor, Ratio offset) {

    private static final int MAX_EXPONENT = 1000;

    static ConverterWalk of(Unit<?> unit) {
        Ratio factor = Ratio.ONE;
        Ratio offset = Ratio.ZERO;
        List<? extends UnitConverter> steps = steps(unit);
        // The step listed last is applied first.
        for (int i = steps.size() - 1; i >= 0; i--) {
            UnitConverter step = steps.get(i);
            if (step instanceof AddConverter add) {
                offset = offset.plus(ExactNumbers.ratioOf(add.getOffset()));
            } else {
                Ratio times = factorOf(step, unit);
                factor = factor.times(times);
                offset = offset.times(times);
            }
        }
        return new ConverterWalk(factor, offset);
    }

    private static List<? extends UnitConverter> steps(Unit<?> unit) {
        try {
            return unit.getConverterToAny(unit.getSystemUnit()).getConversionSteps();
        } catch (javax.measure.IncommensurableException | RuntimeException e) {
            throw new IllegalArgumentException(
                    "unit " + UnitScale.nameOf(unit) + " cannot be led back to its SI unit: " + e.getMessage(), e);
        }
    }

    private static Ratio factorOf(UnitConverter step, Unit<?> unit) {
        if (step.isIdentity()) {
            return Ratio.ONE;
        }
        if (step instanceof RationalConverter rational) {
            return Ratio.of(rational.getDividend(), rational.getDivisor());
        }
        if (step instanceof PowerOfIntConverter power && Math.abs(power.getExponent()) <= MAX_EXPONENT) {
            return power(power.getBase(), power.getExponent());
        }
        throw new IllegalArgumentException("unit " + UnitScale.nameOf(unit)
                + " is not defined by a ratio of whole numbers, so amounts in it cannot be exact (step "
                + step.getClass().getSimpleName() + "): use a unit of FormulationUnits");
    }

    private static Ratio power(int base, int exponent) {
        Ratio size = Ratio.of(java.math.BigInteger.valueOf(base).pow(Math.abs(exponent)));
        return exponent < 0 ? size.reciprocal() : size;
    }
}
