package io.github.formulationmath.reference;

import io.github.formulationmath.emulsion.Hlb;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.Density;
import io.github.formulationmath.quantity.Interval;
import io.github.formulationmath.quantity.MassConcentration;
import io.github.formulationmath.quantity.MassFraction;
import io.github.formulationmath.quantity.Money;
import io.github.formulationmath.soap.AlkaliNumber;
import io.github.formulationmath.soap.IodineValue;
import io.github.formulationmath.solution.Ph;
import java.util.LinkedHashMap;
import java.util.Map;

/** What the library has for each figure of a table, as plain numbers in the unit of the table. */
final class Figures {

    private static final AlkaliNumber MILLIGRAM = AlkaliNumber.parse("1 mg KOH/g");

    private final Map<String, Range> all = new LinkedHashMap<>();

    /** From the least to the greatest; of a plain figure both are the same. */
    record Range(Ratio least, Ratio greatest) {}

    Map<String, Range> all() {
        return all;
    }

    /** Takes a figure down: an amount, a share, a number, or an interval of these. */
    Figures add(String name, Object figure) {
        Range range = figure instanceof Interval<?> interval
                ? new Range(number(interval.least()), number(interval.greatest()))
                : new Range(number(figure), number(figure));
        if (all.put(name, range) != null) {
            throw new IllegalArgumentException(name + " stands twice");
        }
        return this;
    }

    /** Grams, millilitres, shares of one, mg KOH/g, g/L, kg/m³, pH and the like, as the table has them. */
    private static Ratio number(Object figure) {
        if (figure instanceof Ratio ratio) {
            return ratio;
        } else if (figure instanceof Amount<?> amount) {
            return amount.symbol().equals("%") ? amount.exactValue().dividedBy(100) : amount.canonical();
        } else if (figure instanceof MassFraction share) {
            return share.fraction();
        } else if (figure instanceof MassConcentration concentration) {
            return concentration.gramsPerMillilitre().times(1000);
        } else if (figure instanceof Density density) {
            return density.gramsPerMillilitre().times(1000);
        } else if (figure instanceof AlkaliNumber number) {
            return number.relativeTo(MILLIGRAM);
        } else if (figure instanceof Money money) {
            return money.number();
        } else if (figure instanceof IodineValue || figure instanceof Ph || figure instanceof Hlb) {
            return Ratio.parse(figure.toString().split(" ", 2)[0]);
        }
        throw new IllegalArgumentException("no number in " + figure);
    }
}
