package io.github.formulationmath.quantity;

import io.github.formulationmath.number.Excerpt;
import io.github.formulationmath.number.NumberTextException;
import io.github.formulationmath.number.Ratio;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.stream.Stream;

/** Shares as text: a number, one of %, ‰, ppm, and the basis; a mass in a volume also in units that say both. */
final class ShareText {

    /** What a share is of what; the basis that may be left unsaid is w/w alone. */
    enum Basis {
        W_W("w/w", "MassFraction", "m/m", "wt/wt"),
        W_V("w/v", "MassConcentration", "m/v", "wt/vol"),
        V_V("v/v", "VolumeFraction", "vol/vol");

        private final String suffix;
        private final String type;
        private final List<String> spellings;

        Basis(String suffix, String type, String... others) {
            this.suffix = suffix;
            this.type = type;
            this.spellings = Stream.concat(Stream.of(suffix), Stream.of(others))
                    .flatMap(spelling -> Stream.of(spelling, "(" + spelling + ")"))
                    .toList();
        }

        /** How many characters at the end of a unit say this basis; 0 if it says another or nothing. */
        int saidIn(String unit) {
            for (String spelling : spellings) {
                int from = unit.length() - spelling.length();
                if (unit.regionMatches(true, from, spelling, 0, spelling.length())) {
                    return spelling.length();
                }
            }
            return 0;
        }
    }

    private ShareText() {}

    /** Reads a share and makes a value of it with the text as written; what the value refuses is not proposed either. */
    static <T> T parse(String text, char decimalMark, Basis expected, BiFunction<Ratio, String, T> make) {
        return AmountText.orProposals(
                text,
                decimalMark,
                typed -> make.apply(read(typed, decimalMark, expected), written(typed, decimalMark)),
                typed -> proposals(typed, decimalMark, expected),
                examples(expected));
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
                : List.of("0.5 % " + expected.suffix, expected == Basis.W_V ? "5 g/L" : "200 ppm " + expected.suffix);
    }

    private static Ratio read(String text, char decimalMark, Basis expected) {
        AmountText.NumberAndRest parts = AmountText.NumberAndRest.split(signBehind(text), decimalMark);
        String unit = parts.rest();
        Basis said = null;
        for (Basis basis : Basis.values()) {
            int suffix = basis.saidIn(unit);
            if (suffix > 0) {
                said = basis;
                unit = unit.substring(0, unit.length() - suffix).stripTrailing();
            }
        }
        Optional<Ratio> share = share(unit);
        Optional<Ratio> inVolume = share.isPresent() ? share : PerVolume.gramsPerMillilitre(unit, decimalMark);
        if (said == null) {
            said = share.isEmpty() && inVolume.isPresent() ? Basis.W_V : Basis.W_W;
        }
        if (said != expected) {
            throw wrongBasis(text, said, expected);
        }
        Optional<Ratio> factor = said == Basis.W_V ? inVolume : share;
        if (factor.isEmpty()) {
            throw noShare(text, UnitNames.quoted(unit), expected);
        }
        return parts.number().times(factor.get());
    }

    /** Number formats of some languages, as of Turkish, put the sign before the number. */
    private static String signBehind(String text) {
        String typed = text.strip();
        return typed.startsWith("%") && typed.indexOf('%', 1) < 0 ? typed.substring(1) + " %" : text;
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

    private static Optional<Ratio> share(String unit) {
        return UnitNames.known(unit)
                .filter(scale -> scale.kind() == Measured.NUMBER)
                .map(UnitScale::factor);
    }

    private static NumberTextException noShare(String text, String unit, Basis expected) {
        return expected == Basis.W_V
                ? AmountText.refused(
                        text,
                        "refusal.text.no-concentration",
                        "{unit} is not a unit of a mass in a volume that is read here: %, ‰ or ppm with w/v behind it, or a mass"
                                + " per volume such as g/L, mg/mL or g/100 mL",
                        "unit",
                        unit)
                : AmountText.refused(
                        text,
                        "refusal.text.no-share",
                        "{unit} is not a unit of a share that is read here: %, ‰ or ppm",
                        "unit",
                        unit);
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
