package io.github.formulationmath.quantity;

import io.github.formulationmath.number.Ratio;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The units of a mass in a volume: any unit of mass over any unit of volume, with or without a number before the volume. A
 * density is told in them and so is a concentration; what they are worth stands here alone.
 *
 * <p>Written with a stroke ({@code g/L}, {@code mg/100 mL}), with "per", or with the power of the metre or litre ({@code g·L⁻¹},
 * {@code kg m-3}).
 */
final class PerVolume {

    /** Volumes by the metre that nobody measures at a bench, in millilitres. */
    private static final Map<String, Ratio> CUBES = Map.of("m3", Ratio.of(1_000_000), "dm3", Ratio.of(1000));

    // Possessive quantifiers wherever what follows cannot be in them: no backtracking worth the name.
    private static final Pattern OVER = Pattern.compile("([^/]++)/([^/]++)|(.+?) per (.+)");
    private static final Pattern POWER = Pattern.compile("([^ ·⋅*]++)[ ·⋅*]++([^ ·⋅*]+?)-([13])");
    private static final Pattern VOLUME = Pattern.compile("([0-9]++(?:\\.[0-9]++)?)? *+(.*+)");

    private PerVolume() {}

    /** How many grams in a millilitre one of a unit is; empty if it is no such unit. */
    static Optional<Ratio> gramsPerMillilitre(String unit, char decimalMark) {
        String plain = exponents(unit.replace(decimalMark, '.'));
        Matcher over = OVER.matcher(plain);
        if (over.matches()) {
            boolean stroke = over.group(1) != null;
            return of(over.group(stroke ? 1 : 3), over.group(stroke ? 2 : 4));
        }
        Matcher power = POWER.matcher(plain);
        return power.matches()
                ? of(power.group(1), power.group(2) + (power.group(3).equals("3") ? "3" : ""))
                : Optional.empty();
    }

    /** Powers in plain digits. */
    private static String exponents(String unit) {
        return unit.replace('³', '3').replace('¹', '1').replace('⁻', '-').replace("^", "");
    }

    private static Optional<Ratio> of(String mass, String volume) {
        Matcher counted = VOLUME.matcher(volume.strip());
        if (!counted.matches()) {
            return Optional.empty();
        }
        Ratio count = counted.group(1) == null ? Ratio.ONE : Ratio.parse(counted.group(1));
        if (count.isZero()) {
            return Optional.empty();
        }
        Optional<Ratio> millilitres = millilitres(counted.group(2)).map(count::times);
        return sized(mass.strip(), Measured.MASS).flatMap(grams -> millilitres.map(grams::dividedBy));
    }

    private static Optional<Ratio> millilitres(String name) {
        return Optional.ofNullable(CUBES.get(UnitNames.plain(name))).or(() -> sized(name, Measured.VOLUME));
    }

    private static Optional<Ratio> sized(String name, Measured kind) {
        return UnitNames.known(name).filter(scale -> scale.kind() == kind).map(UnitScale::factor);
    }
}
