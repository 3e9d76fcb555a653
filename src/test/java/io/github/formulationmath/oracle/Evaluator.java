package io.github.formulationmath.oracle;

import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads one side of a printed line and works it out: numbers with units, symbols whose values are known, + − · / ( ) | |
 * √( ) min( ; ) max( ; ) round( to a multiple of …, …) and statistical functions. A fraction is written without spaces, a
 * division with spaces.
 */
final class Evaluator {

    private static final Pattern NUMBER = Pattern.compile("[0-9]+(\\.[0-9]+)?(/[0-9]+)?");
    private static final Pattern UNIT =
            Pattern.compile(" (?!to )([^\\s0-9()|;,=≈<≤≥>+−:][^\\s()|;,:]*|/[^\\s()|;,:]+)");
    private static final Pattern CALL = Pattern.compile("([^\\s()|;]+)\\(");
    private static final Pattern GRID = Pattern.compile(
            " to (?:a multiple of|([0-9]+) significant digits \\(a multiple of) ([^,]*?)\\)?, ([a-z0 ]+)");
    private static final Map<String, RoundingMode> MODES = Map.of(
            "ties to even", RoundingMode.HALF_EVEN,
            "ties away from 0", RoundingMode.HALF_UP,
            "ties towards 0", RoundingMode.HALF_DOWN,
            "away from 0", RoundingMode.UP,
            "towards 0", RoundingMode.DOWN,
            "upwards", RoundingMode.CEILING,
            "downwards", RoundingMode.FLOOR,
            "no digits lost", RoundingMode.UNNECESSARY);

    private final Units units;
    private final List<Map.Entry<String, Quantity>> symbols;
    private final String text;
    private final List<Fraction> leaves = new ArrayList<>();
    private boolean inSymbols;
    private int at;

    private Evaluator(String text, Units units, Map<String, Quantity> symbols) {
        this.text = Units.inOneWord(text);
        this.units = units;
        // The longest first, so that m_12 is not read as m_1.
        this.symbols = new ArrayList<>(symbols.entrySet());
        this.symbols.sort((a, b) -> b.getKey().length() - a.getKey().length());
    }

    static Quantity evaluate(String text, Units units, Map<String, Quantity> symbols) {
        return read(text, units, symbols).value();
    }

    /**
     * What was read.
     *
     * @param value the value
     * @param leaves the values of its numbers and symbols, in order
     * @param inSymbols whether there is a symbol among them
     */
    record Side(Quantity value, List<Fraction> leaves, boolean inSymbols) {

        /** The numbers put in are those that the symbols stand for, each in its place. */
        void requireSameLeaves(Side numbers, String line) {
            if (inSymbols && !leaves.equals(numbers.leaves)) {
                throw new OracleException(
                        "the numbers " + numbers.leaves + " are not those of the symbols, " + leaves + ", in " + line);
            }
        }
    }

    static Side read(String text, Units units, Map<String, Quantity> symbols) {
        Evaluator evaluator = new Evaluator(text.trim(), units, symbols);
        Quantity result = evaluator.sum();
        if (evaluator.at < evaluator.text.length()) {
            throw evaluator.unreadable("an operator");
        }
        return new Side(result, evaluator.leaves, evaluator.inSymbols);
    }

    private Quantity sum() {
        Quantity total = product();
        while (true) {
            if (skip(" + ")) {
                total = total.plus(product());
            } else if (skip(" − ")) {
                total = total.minus(product());
            } else {
                return total;
            }
        }
    }

    private Quantity product() {
        Quantity total = operand();
        while (true) {
            if (skip(" · ")) {
                total = total.times(operand());
            } else if (skip(" / ")) {
                total = total.over(operand());
            } else {
                return total;
            }
        }
    }

    private Quantity operand() {
        if (skip("−")) {
            Quantity positive = operand();
            leaves.set(leaves.size() - 1, leaves.get(leaves.size() - 1).negated());
            return positive.with(positive.value().negated());
        }
        if (skip("(")) {
            return closed(sum(), ")");
        }
        if (skip("|")) {
            Quantity inside = closed(sum(), "|");
            return inside.with(inside.value().size());
        }
        if (skip("√(")) {
            return closed(sum(), ")").root();
        }
        Matcher number = matcher(NUMBER);
        if (number.lookingAt()) {
            at = number.end();
            Quantity leaf = withUnit(Fraction.read(number.group()));
            leaves.add(leaf.value());
            return leaf;
        }
        Matcher call = matcher(CALL);
        return call.lookingAt() ? call(call) : symbol();
    }

    private Quantity withUnit(Fraction number) {
        Matcher unit = matcher(UNIT);
        if (!unit.lookingAt() || unit.group(1).equals("·") || unit.group(1).equals("/")) {
            return Quantity.plain(number);
        }
        at = unit.end();
        return Quantity.plain(number).times(units.read(unit.group(1)));
    }

    private Quantity call(Matcher call) {
        at = call.end();
        Quantity first = sum();
        if (call.group(1).equals("round")) {
            return rounded(first);
        }
        List<Quantity> arguments = new ArrayList<>(List.of(first));
        while (skip("; ")) {
            arguments.add(sum());
        }
        return closed(applied(call.group(1), arguments), ")");
    }

    private static Quantity applied(String name, List<Quantity> arguments) {
        if (name.equals("min") || name.equals("max")) {
            arguments.forEach(a -> a.requireLike(arguments.get(0), "compared with"));
            int sign = name.equals("min") ? 1 : -1;
            return arguments.stream()
                    .min((a, b) -> sign * a.value().compareTo(b.value()))
                    .orElseThrow();
        }
        double[] numbers =
                arguments.stream().mapToDouble(a -> a.value().toDouble()).toArray();
        Fraction value = Fraction.read(new java.math.BigDecimal(Functions.apply(name, numbers)).toPlainString());
        return new Quantity(value, Map.of(), false);
    }

    private Quantity rounded(Quantity value) {
        Matcher grid = matcher(GRID);
        RoundingMode mode = grid.lookingAt() ? MODES.get(grid.group(3)) : null;
        if (mode == null) {
            throw unreadable("a grid and a rounding mode");
        }
        at = grid.end();
        Quantity step = evaluate(grid.group(2), units, Map.of());
        value.requireLike(step, "rounded to a multiple of");
        if (grid.group(1) != null) {
            requireSignificantDigits(value.value().size(), step.value(), Integer.parseInt(grid.group(1)));
        }
        return closed(value.with(value.value().over(step.value()).toWhole(mode).times(step.value())), ")");
    }

    /** The grid of so many significant digits is that power of ten which leaves so many digits before it. */
    private void requireSignificantDigits(Fraction size, Fraction step, int digits) {
        Fraction most = step.times(Fraction.whole(10).power(digits));
        boolean fits = size.compareTo(most) < 0 && size.compareTo(most.over(Fraction.whole(10))) >= 0;
        if (!fits && !size.equals(Fraction.ZERO)) {
            throw unreadable("a grid of " + digits + " significant digits");
        }
    }

    private Quantity symbol() {
        for (Map.Entry<String, Quantity> symbol : symbols) {
            if (text.startsWith(symbol.getKey(), at)) {
                at += symbol.getKey().length();
                leaves.add(symbol.getValue().value());
                inSymbols = true;
                return symbol.getValue();
            }
        }
        throw unreadable("a number or a known symbol");
    }

    private Quantity closed(Quantity inside, String bracket) {
        if (!skip(bracket)) {
            throw unreadable(bracket);
        }
        return inside;
    }

    private boolean skip(String token) {
        boolean there = text.startsWith(token, at);
        at += there ? token.length() : 0;
        return there;
    }

    private Matcher matcher(Pattern pattern) {
        return pattern.matcher(text).region(at, text.length());
    }

    private OracleException unreadable(String expected) {
        return new OracleException("expected " + expected + " at \"" + text.substring(at) + "\" in \"" + text + "\"");
    }
}
