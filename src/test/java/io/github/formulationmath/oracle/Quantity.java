package io.github.formulationmath.oracle;

import java.util.Map;
import java.util.TreeMap;

/**
 * A number of basic units.
 *
 * @param value the number
 * @param units the power of each basic unit; none of them 0
 * @param exact false if a statistical function had a part in it
 */
record Quantity(Fraction value, Map<String, Integer> units, boolean exact) {

    static Quantity plain(Fraction value) {
        return new Quantity(value, Map.of(), true);
    }

    Quantity plus(Quantity o) {
        return like(o, "added to", value.plus(o.value));
    }

    Quantity minus(Quantity o) {
        return like(o, "taken from", value.minus(o.value));
    }

    Quantity times(Quantity o) {
        return new Quantity(value.times(o.value), combined(o, 1), exact && o.exact);
    }

    Quantity over(Quantity o) {
        return new Quantity(value.over(o.value), combined(o, -1), exact && o.exact);
    }

    Quantity with(Fraction newValue) {
        return new Quantity(newValue, units, exact);
    }

    /** A zero may lack its unit; anything else must have the same one. */
    void requireLike(Quantity o, String what) {
        boolean zero = value.equals(Fraction.ZERO) || o.value.equals(Fraction.ZERO);
        if (!units.equals(o.units) && !zero) {
            throw new OracleException(this + " cannot be " + what + " " + o + ": the units differ");
        }
    }

    Quantity root() {
        Map<String, Integer> halves = new TreeMap<>();
        units.forEach((unit, power) -> {
            if (power % 2 != 0) {
                throw new OracleException("the root of " + this + " has no unit");
            }
            halves.put(unit, power / 2);
        });
        return new Quantity(value.root(), halves, exact);
    }

    private Quantity like(Quantity o, String what, Fraction result) {
        requireLike(o, what);
        return new Quantity(result, units.isEmpty() ? o.units : units, exact && o.exact);
    }

    private Map<String, Integer> combined(Quantity o, int sign) {
        Map<String, Integer> sum = new TreeMap<>(units);
        o.units.forEach((unit, power) -> sum.merge(unit, sign * power, Integer::sum));
        sum.values().removeIf(power -> power == 0);
        return sum;
    }

    @Override
    public String toString() {
        return value + (units.isEmpty() ? "" : " " + units);
    }
}
