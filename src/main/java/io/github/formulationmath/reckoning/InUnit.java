package io.github.formulationmath.reckoning;

import io.github.formulationmath.number.Ratio;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** A quantity with the unit that somebody wrote it in: a working is told in the units of what it was given. */
public interface InUnit {

    /**
     * The quantity as a number.
     *
     * @return the exact number of the canonical unit of its {@link Kind}
     */
    Ratio canonical();

    /**
     * The unit as printed.
     *
     * @return its symbol
     */
    String symbol();

    /**
     * How large the unit is.
     *
     * @return the canonical units that make one, above 0
     */
    Ratio unitSize();

    /**
     * The text of a unit that is a product of powers of others, as the SI Brochure writes it (9th edition, 5.2): {@code g²/mL}, {@code
     * J/(kg·K)}, {@code g⁻¹}.
     *
     * @param powers the symbol of each and its power; those of power 0 go without saying
     * @return the unit as printed; empty if nothing is left of it
     */
    static String product(Map<String, Integer> powers) {
        List<String> above = factors(powers, 1);
        List<String> below = factors(powers, -1);
        if (above.isEmpty()) {
            return powers.entrySet().stream()
                    .filter(factor -> factor.getValue() < 0)
                    .map(factor -> factor.getKey() + Superscript.of(factor.getValue()))
                    .collect(Collectors.joining("·"));
        }
        String divisor = String.join("·", below);
        return String.join("·", above)
                + (below.isEmpty() ? "" : below.size() == 1 ? "/" + divisor : "/(" + divisor + ")");
    }

    private static List<String> factors(Map<String, Integer> powers, int sign) {
        return powers.entrySet().stream()
                .filter(factor -> Integer.signum(factor.getValue()) == sign)
                .map(factor -> factor.getKey()
                        + (factor.getValue() == sign ? "" : Superscript.of(Math.abs(factor.getValue()))))
                .toList();
    }

    /**
     * The power that a superscript says.
     *
     * @param superscript such as ² or ⁻¹
     * @return the power
     * @throws NumberFormatException if it is none
     */
    static int power(String superscript) {
        return Superscript.power(superscript);
    }
}
