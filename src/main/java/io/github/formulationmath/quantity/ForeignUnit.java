package io.github.formulationmath.quantity;

import io.github.formulationmath.number.Ratio;
import javax.measure.Unit;

/** A unit of another maker that measures like none of the {@link KnownUnit}s. */
record ForeignUnit(Unit<?> unit, Measured kind, Ratio factor, Ratio offset, String symbol) implements UnitScale {

    static ForeignUnit of(Unit<?> unit) {
        Measured kind = Measured.of(unit);
        ConverterWalk walk = ConverterWalk.of(unit);
        Ratio factor = walk.factor().times(kind.countedPerSystemUnit());
        return new ForeignUnit(
                unit,
                kind,
                factor,
                walk.offset().times(kind.countedPerSystemUnit()),
                CompoundUnit.write(unit, kind, factor));
    }

    /** A unit that measures like a counting unit would have been taken for it. */
    @Override
    public boolean isCounting() {
        return false;
    }

    @Override
    public boolean isSameAs(UnitScale other) {
        return other instanceof ForeignUnit that
                && factor.equals(that.factor)
                && offset.equals(that.offset)
                && meets(that);
    }
}
