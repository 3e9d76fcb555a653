package io.github.formulationmath.quantity;

import io.github.formulationmath.number.Excerpt;
import io.github.formulationmath.number.NumberTextException;
import io.github.formulationmath.number.Ratio;
import java.util.List;
import java.util.function.BiFunction;
import java.util.stream.Stream;

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

    /** Reads a share and makes a value of it with the text as written; what the value refuses is not proposed either. */
    static <T> T parse(String text, char decimalMark, Basis expected, BiFunction<Ratio, String, T> make) {
        return new TextReader<T>(
                        typed -> make.apply(read(typed, decimalMark, expected), written(typed, decimalMark)),
                        typed -> proposals(typed, decimalMark, expected),
                        examples(expected).stream()
                                .map(example -> example.replace('.', decimalMark))
                                .toList())
                .read(text);
    }

    /** The digits as written, with the decimal point of data. */
    private static String written(String text, char decimalMark) {
        return text.strip().replace(decimalMark, '.');
    }

    /** A share that is said to be of another basis is not proposed as one of this. */
    private static Stream<String> proposals(String text, char decimalMark, Basis expected) {
        return Repairs.of(text, decimalMark)
                .flatMap(share ->
                        expected == Basis.W_W ? Stream.of(share) : Stream.of(share, share + " " + expected.suffix));
    }

    private static List<String> examples(Basis expected) {
        return expected == Basis.W_W
                ? List.of("0.5 %", "200 ppm")
                : List.of("0.5 % " + expected.suffix, "200 ppm " + expected.suffix);
    }

    private static Ratio read(String text, char decimalMark, Basis expected) {
        AmountText.NumberAndRest parts = AmountText.NumberAndRest.split(text, decimalMark);
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
        return AmountText.refused(
                text,
                "refusal.text.basis",
                "this is a share {basis}, where {expected} is needed: read it with {type}.parse and convert it through"
                        + " a Density",
                "basis",
                said.suffix,
                "expected",
                expected.suffix,
                "type",
                said.type);
    }

    private static Ratio factor(String text, String unit) {
        return UnitNames.known(unit)
                .filter(scale -> scale.kind() == Measured.NUMBER)
                .map(UnitScale::factor)
                .orElseThrow(() -> AmountText.refused(
                        text,
                        "refusal.text.no-share",
                        "{unit} is not a unit of a share that is read here: %, ‰ or ppm",
                        "unit",
                        UnitNames.quoted(unit)));
    }

    static Ratio requireShare(String name, Ratio fraction) {
        if (fraction.signum() < 0 || fraction.compareTo(Ratio.ONE) > 0) {
            throw new IllegalArgumentException(name + " is " + Excerpt.of(fraction.times(100))
                    + " %: it must lie between 0 % and 100 %; check the "
                    + (fraction.signum() < 0 ? "sign" : "number, and if it was converted, the densities"));
        }
        return fraction;
    }
}
