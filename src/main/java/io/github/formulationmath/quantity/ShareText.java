package io.github.formulationmath.quantity;

import io.github.formulationmath.number.NumberTextException;
import io.github.formulationmath.number.Ratio;

/** Shares as text: a number, one of %, ‰, ppm, and the basis. */
final class ShareText {

    /** What a share is of what; the basis that may be left unsaid is w/w alone. */
    enum Basis {
        W_W("w/w", "MassFraction"),
        W_V("w/v", "MassConcentration"),
        V_V("v/v", "VolumeFraction");

        private final String suffix;
        private final String type;

        Basis(String suffix, String type) {
            this.suffix = suffix;
            this.type = type;
        }
    }

    private ShareText() {}

    static Ratio parse(String text, Basis expected) {
        AmountText.NumberAndRest parts = AmountText.NumberAndRest.split(text, '.');
        String unit = parts.rest();
        Basis said = Basis.W_W;
        for (Basis basis : Basis.values()) {
            if (unit.endsWith(basis.suffix)) {
                said = basis;
                unit = unit.substring(0, unit.length() - basis.suffix.length()).stripTrailing();
            }
        }
        if (said != expected) {
            throw wrongBasis(text, said, expected);
        }
        return parts.number().times(factor(text, unit));
    }

    private static NumberTextException wrongBasis(String text, Basis said, Basis expected) {
        return new NumberTextException(
                text,
                "this is a share " + said.suffix + ", where " + expected.suffix + " is needed: read it with "
                        + said.type + ".parse and convert it through a Density"
                        + (said == Basis.W_W ? ", or write " + expected.suffix + " behind it" : ""));
    }

    private static Ratio factor(String text, String unit) {
        return switch (unit) {
            case "%" -> Ratio.of(1, 100);
            case "‰" -> Ratio.of(1, 1000);
            case "ppm" -> Ratio.of(1, 1_000_000);
            default ->
                throw new NumberTextException(
                        text, "\"" + unit + "\" is not a unit of a share that is read here: %, ‰ or ppm");
        };
    }

    static Ratio requireShare(String name, Ratio fraction) {
        if (fraction.signum() < 0 || fraction.compareTo(Ratio.ONE) > 0) {
            throw new IllegalArgumentException(
                    name + " is " + fraction.times(100)
                            + " %: it must lie between 0 % and 100 %; check the number, and for a converted share the densities");
        }
        return fraction;
    }
}
