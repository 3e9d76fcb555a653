package io.github.formulationmath.quantity;

import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.reckoning.InUnit;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.measure.Unit;
import org.jspecify.annotations.Nullable;
import tech.units.indriya.AbstractUnit;
import tech.units.indriya.function.MultiplyConverter;
import tech.units.indriya.unit.Units;

/**
 * Units that are products, quotients and powers of others, as text: {@code g²}, {@code J/(kg·K)}, {@code g⁻¹}. What is written
 * is read again as the same unit; what two readers could take for two units, such as {@code J/kg·K}, is not read.
 */
final class CompoundUnit {

    /** More factors or a higher power are a slip. */
    private static final int MOST_FACTORS = 12;

    // Possessive quantifiers: no backtracking, whatever the text.
    private static final Pattern SCALED =
            Pattern.compile("\\(× ([0-9]++(?:/[0-9]++)?+) ([^()]++(?:\\([^()]++\\))?+)\\)");
    private static final Pattern COMPOUND = Pattern.compile("([^/()]++)(?:/(?:\\(([^/()]++)\\)|([^/()·⋅*]++)))?+");
    private static final Pattern FACTOR =
            Pattern.compile("([^0-9^⁰¹²³⁴⁵⁶⁷⁸⁹⁻]++)(?:\\^?+(-?[0-9]{1,2})|(⁻?[⁰¹²³⁴⁵⁶⁷⁸⁹]{1,2}))?+");
    private static final Pattern TIMES = Pattern.compile(" ?+[·⋅*] ?+");
    private static final Pattern SIGNS = Pattern.compile("[/()^·⋅*×⁰¹²³⁴⁵⁶⁷⁸⁹⁻]|\\p{L}[0-9]");

    /** Units of the SI that no bench has, and that stand in what is derived; by symbol. */
    private static final Map<String, Unit<?>> OTHERS = Map.ofEntries(
            Map.entry("m", Units.METRE),
            Map.entry("s", Units.SECOND),
            Map.entry("min", Units.MINUTE),
            Map.entry("h", Units.HOUR),
            Map.entry("mol", Units.MOLE),
            Map.entry("A", Units.AMPERE),
            Map.entry("cd", Units.CANDELA),
            Map.entry("N", Units.NEWTON),
            Map.entry("Pa", Units.PASCAL),
            Map.entry("J", Units.JOULE),
            Map.entry("W", Units.WATT),
            Map.entry("V", Units.VOLT),
            Map.entry("Hz", Units.HERTZ));

    /** The powers of ten before the symbols of the SI that are met with them. */
    private static final Map<String, Integer> PREFIXES =
            Map.of("M", 6, "k", 3, "h", 2, "d", -1, "c", -2, "m", -3, "µ", -6, "n", -9);

    private CompoundUnit() {}

    /** Whether a name is that of a unit put together, or of one that stands in them, and not of a unit of the bench. */
    static boolean mayBe(String name) {
        return SIGNS.matcher(name).find() || single(name).isPresent();
    }

    /** The unit of a text, whatever it measures. */
    static UnitScale find(String text, String name) {
        return read(name)
                .map(UnitScale::of)
                .orElseThrow(() -> AmountText.refused(
                        text,
                        "refusal.text.unit-product",
                        "{unit} is no product of units that is read here: write g/mL, J/(kg·K), g² or g⁻¹, and temperatures in K",
                        "unit",
                        UnitNames.quoted(name)));
    }

    /** The unit of a text; empty if it is none. */
    private static Optional<Unit<?>> read(String text) {
        Matcher scaled = SCALED.matcher(text);
        if (scaled.matches()) {
            Ratio factor = Ratio.parse(scaled.group(1));
            return product(scaled.group(2)).map(unit -> times(unit, factor));
        }
        return product(text);
    }

    private static Optional<Unit<?>> product(String text) {
        Matcher m = COMPOUND.matcher(text);
        if (!m.matches()) {
            return Optional.empty();
        }
        String below = m.group(2) == null ? m.group(3) : m.group(2);
        Optional<Unit<?>> above = factors(m.group(1));
        return below == null ? above : above.flatMap(unit -> factors(below).map(divisor -> unit.divide(divisor)));
    }

    private static Optional<Unit<?>> factors(String text) {
        String[] all = TIMES.split(text.strip(), -1);
        if (all.length > MOST_FACTORS) {
            return Optional.empty();
        }
        Unit<?> product = AbstractUnit.ONE;
        for (String each : all) {
            Optional<Unit<?>> factor = power(each);
            if (factor.isEmpty()) {
                return Optional.empty();
            }
            product = product.multiply(factor.orElseThrow());
        }
        return Optional.of(product);
    }

    private static Optional<Unit<?>> power(String text) {
        Optional<Unit<?>> plain = single(text);
        Matcher m = FACTOR.matcher(text);
        if (plain.isPresent() || !m.matches()) {
            return plain;
        }
        int power = m.group(2) != null
                ? Integer.parseInt(m.group(2))
                : InUnit.power(Objects.requireNonNullElse(m.group(3), "¹"));
        return power == 0 ? Optional.empty() : single(m.group(1)).map(unit -> unit.pow(power));
    }

    /** A unit of the bench without a shifted zero, or one of the SI with or without a prefix. */
    private static Optional<Unit<?>> single(String name) {
        Optional<UnitScale> known = UnitNames.known(name);
        if (known.isPresent()) {
            return known.filter(scale -> !scale.isShifted()).map(UnitScale::unit);
        }
        Unit<?> other = OTHERS.get(name);
        if (other != null || name.length() < 2) {
            return Optional.ofNullable(other);
        }
        Integer exponent = PREFIXES.get(name.substring(0, 1));
        Unit<?> prefixed = OTHERS.get(name.substring(1));
        return exponent == null || prefixed == null ? Optional.empty() : Optional.of(times(prefixed, power(exponent)));
    }

    private static Ratio power(int exponent) {
        return Ratio.parse("1e" + exponent);
    }

    private static Unit<?> times(Unit<?> unit, Ratio factor) {
        return unit.transform(MultiplyConverter.ofRational(factor.numerator(), factor.denominator()));
    }

    /** The text of a unit, which is read as that unit and as no other; its own symbol, if that is not read at all. */
    static String write(Unit<?> unit, Measured kind, Ratio factor) {
        String own = UnitScale.name(unit).orElse("");
        Map<? extends Unit<?>, Integer> parts = unit.getBaseUnits();
        String text = parts == null ? own : text(parts);
        if (isRead(text, unit)) {
            return text;
        }
        String prefixed = prefixed(unit);
        if (isRead(prefixed, unit)) {
            return prefixed;
        }
        if (!own.isEmpty() && UnitNames.known(own).isEmpty() && !mayBe(own)) {
            return own;
        }
        Unit<?> system = unit.getSystemUnit();
        Map<? extends Unit<?>, Integer> base = system.getBaseUnits();
        String si = kind == Measured.OTHER
                ? base == null ? UnitScale.name(system).orElse("SI") : text(base)
                : kind.countingSymbol();
        String times = factor.isInteger() ? factor.toString() : factor.numerator() + "/" + factor.denominator();
        return "(× " + times + " " + si + ")";
    }

    private static boolean isRead(String text, Unit<?> unit) {
        Optional<Unit<?>> read = text.isEmpty() ? Optional.empty() : read(text);
        return read.filter(other -> isSame(other, unit)).isPresent();
    }

    private static boolean isSame(Unit<?> one, Unit<?> other) {
        ConverterWalk walk = ConverterWalk.of(other);
        return one.isCompatible(other) && ConverterWalk.of(one).equals(walk);
    }

    private static String text(Map<? extends Unit<?>, Integer> parts) {
        Map<String, Integer> powers = new LinkedHashMap<>();
        parts.forEach((unit, power) -> powers.merge(symbol(unit), power, Integer::sum));
        return InUnit.product(powers);
    }

    private static String symbol(Unit<?> unit) {
        @Nullable KnownUnit known = FormulationUnits.find(unit);
        return known != null ? known.symbol() : UnitScale.name(unit).orElseGet(() -> prefixed(unit));
    }

    /** A unit that is a power of ten of one with a symbol; empty if it is none. */
    private static String prefixed(Unit<?> unit) {
        Unit<?> system = unit.getSystemUnit();
        String symbol = UnitScale.name(system).orElse("");
        if (!OTHERS.containsKey(symbol)) {
            return "";
        }
        Ratio factor = ConverterWalk.of(unit).factor();
        return PREFIXES.entrySet().stream()
                .filter(prefix -> power(prefix.getValue()).equals(factor))
                .map(prefix -> prefix.getKey() + symbol)
                .findFirst()
                .orElse("");
    }
}
