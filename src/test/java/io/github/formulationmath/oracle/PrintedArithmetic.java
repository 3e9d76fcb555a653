package io.github.formulationmath.oracle;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.w3c.dom.Document;

/** Works out every line of a printed working and holds each side against the next. */
public final class PrintedArithmetic {

    private static final Pattern EQUALS = Pattern.compile(" ([=≈]) ");
    private static final Pattern COMPARES = Pattern.compile("^(.*) ([<≤=≥>]) (.*?)(?:: (holds|does not hold))?$");
    private static final Pattern DECIMAL = Pattern.compile("−?([0-9]+)(?:\\.([0-9]+))?(?: [^ ]+)?");
    private static final Pattern REMARK = Pattern.compile("Rounding (?:(added|took away) (.*)|(changed nothing))\\.");

    private static final Pattern ROUNDING = Pattern.compile(
            "round\\((.*) to (?:a multiple of|[0-9]+ significant digits \\(a multiple of) [^,]*, [a-z0 ]+\\)");

    private final Units units = new Units();
    private final Map<String, Quantity> values = new HashMap<>();

    private PrintedArithmetic() {}

    /**
     * Works out the plain text of a working, printed in English, to the depth of everything.
     *
     * @param page what was printed
     * @param expected each symbol of the working and its exact value in canonical units; the answer under the empty name
     * @param comparisons how many comparisons the working holds
     * @throws OracleException if a line cannot be read or is not true, or if the page says other values
     */
    public static void verifyText(String page, Map<String, String> expected, int comparisons) {
        verify(PrintedWorking.fromText(page), expected, comparisons);
    }

    /**
     * Works out the Markdown of a working, as {@link #verifyText}.
     *
     * @param page what was printed
     * @param expected each symbol of the working and its exact value
     * @param comparisons how many comparisons the working holds
     * @throws OracleException if a line cannot be read or is not true, or if the page says other values
     */
    public static void verifyMarkdown(String page, Map<String, String> expected, int comparisons) {
        verify(new MarkdownReader().read(page), expected, comparisons);
    }

    /**
     * Works out the LaTeX of a working, as {@link #verifyText}.
     *
     * @param page what was printed
     * @param expected each symbol of the working and its exact value
     * @param comparisons how many comparisons the working holds
     * @throws OracleException if a line cannot be read or is not true, or if the page says other values
     */
    public static void verifyLatex(String page, Map<String, String> expected, int comparisons) {
        verify(new LatexReader().read(page), expected, comparisons);
    }

    /**
     * Works out the HTML page of a working, as {@link #verifyText}.
     *
     * @param page what was printed, parsed
     * @param expected each symbol of the working and its exact value
     * @param comparisons how many comparisons the working holds
     * @throws OracleException if a line cannot be read or is not true, or if the page says other values
     */
    public static void verifyHtml(Document page, Map<String, String> expected, int comparisons) {
        verify(new HtmlReader().read(page), expected, comparisons);
    }

    static void verify(PrintedWorking page, Map<String, String> expected, int comparisons) {
        Map<String, Quantity> found = new PrintedArithmetic().workedOut(page);
        expected.forEach((label, value) -> {
            Quantity printed = found.get(label);
            if (printed == null || !printed.value().equals(Fraction.read(value))) {
                throw new OracleException("the page says that \"" + label + "\" is " + printed + ", it is " + value);
            }
        });
        if (found.size() != expected.size() || page.comparisons().size() != comparisons) {
            throw new OracleException("the page has the symbols " + found.keySet() + " and "
                    + page.comparisons().size() + " comparisons, the working " + expected.keySet() + " and "
                    + comparisons);
        }
    }

    private Map<String, Quantity> workedOut(PrintedWorking page) {
        page.givens().forEach(this::define);
        page.steps().forEach(this::step);
        page.comparisons().forEach(this::comparison);
        answer(page.answer());
        return values;
    }

    static boolean isOutcome(String line) {
        Matcher m = COMPARES.matcher(line);
        return m.matches() && m.group(4) != null;
    }

    private void step(PrintedWorking.Step step) {
        define(step.chain());
        if (!step.remark().isEmpty()) {
            remark(step);
        }
    }

    /** label = … = … ≈ …: all sides but the first are worked out, and the label stands for the exact result. */
    private void define(String chain) {
        Matcher sign = EQUALS.matcher(chain);
        if (!sign.find()) {
            throw new OracleException("no equals sign in \"" + chain + "\"");
        }
        String label = chain.substring(0, sign.start()).trim();
        Quantity value = chain(chain, chain.substring(sign.end()));
        if (values.put(label, value) != null) {
            throw new OracleException("the symbol " + label + " is defined twice");
        }
    }

    private void answer(String chain) {
        values.put("", chain(chain, chain.startsWith("= ") ? chain.substring(2) : chain));
    }

    /** The value of the last exact side. */
    private Quantity chain(String whole, String sides) {
        Matcher sign = EQUALS.matcher(sides);
        int from = 0;
        String relation = "=";
        Quantity value = null;
        Evaluator.Side above = null;
        while (true) {
            boolean more = sign.find();
            String side = sides.substring(from, more ? sign.start() : sides.length());
            Evaluator.Side here = read(whole, side);
            if (above != null) {
                above.requireSameLeaves(here, whole);
            }
            above = here;
            Quantity next = here.value();
            if (value == null || isSame(value, next)) {
                value = next;
            } else if (!relation.equals("≈") || !isRoundedTo(value, side)) {
                throw new OracleException("\"" + side + "\" is not what stands before it, " + value + ", in " + whole);
            } else if (!value.exact()) {
                value = new Quantity(next.value(), next.units(), true);
            }
            if (!more) {
                return value;
            }
            relation = sign.group(1);
            from = sign.end();
        }
    }

    private boolean isSame(Quantity a, Quantity b) {
        a.requireLike(b, "equal to");
        if (a.exact() && b.exact()) {
            return a.value().equals(b.value());
        }
        Fraction tolerance = a.value().size().over(Fraction.whole(1_000_000_000_000L));
        return a.value().minus(b.value()).size().compareTo(tolerance) <= 0;
    }

    /** Whether a decimal is within half a unit of its last digit; zeros at the end of a whole number may be filling. */
    private boolean isRoundedTo(Quantity exact, String side) {
        Matcher decimal = DECIMAL.matcher(side);
        if (!decimal.matches()) {
            return false;
        }
        String whole = decimal.group(1);
        String places = decimal.group(2);
        int exponent = places != null
                ? -places.length()
                : whole.length() - whole.replaceAll("0+$", "").length();
        Quantity printed = evaluate(side, side);
        exact.requireLike(printed, "rounded to");
        Fraction number =
                Fraction.read((side.startsWith("−") ? "-" : "") + whole + (places == null ? "" : "." + places));
        Fraction unit = number.equals(Fraction.ZERO)
                ? Fraction.whole(1)
                : printed.value().over(number);
        Fraction half =
                Fraction.whole(10).power(exponent).over(Fraction.whole(2)).times(unit.size());
        return exact.value().minus(printed.value()).size().compareTo(half) <= 0;
    }

    private void comparison(List<String> lines) {
        if (lines.size() < 2) {
            throw new OracleException("a comparison in symbols or in numbers is missing: " + lines);
        }
        Evaluator.Side left = null;
        Evaluator.Side right = null;
        String sign = null;
        for (String line : lines) {
            Matcher m = COMPARES.matcher(line);
            if (!m.matches()) {
                throw new OracleException("no comparison in \"" + line + "\"");
            }
            left = same(left, read(line, m.group(1)), line);
            right = same(right, read(line, m.group(3)), line);
            left.value().requireLike(right.value(), "compared with");
            if (sign != null && !sign.equals(m.group(2))) {
                throw new OracleException("not the sign that stands above it: " + line);
            }
            sign = m.group(2);
            boolean holds = holds(left.value().value().compareTo(right.value().value()), m.group(2));
            if (m.group(4) != null && holds != m.group(4).equals("holds")) {
                throw new OracleException("the outcome is wrong: " + line);
            }
        }
    }

    private Evaluator.Side same(Evaluator.Side above, Evaluator.Side here, String line) {
        if (above != null) {
            above.requireSameLeaves(here, line);
            if (!isSame(above.value(), here.value())) {
                throw new OracleException("one side is not what stands above it: " + line);
            }
        }
        return here;
    }

    private static boolean holds(int order, String sign) {
        return switch (sign) {
            case "<" -> order < 0;
            case "≤" -> order <= 0;
            case "=" -> order == 0;
            case "≥" -> order >= 0;
            default -> order > 0;
        };
    }

    private void remark(PrintedWorking.Step step) {
        Matcher m = REMARK.matcher(step.remark());
        if (!m.matches()) {
            throw new OracleException("cannot read the remark \"" + step.remark() + "\"");
        }
        String numbers = EQUALS.split(step.chain())[2];
        Matcher rounding = ROUNDING.matcher(numbers);
        if (!rounding.matches()) {
            throw new OracleException("a remark on a rounding below " + step.chain());
        }
        Quantity before = evaluate(step.chain(), rounding.group(1));
        Quantity after = evaluate(step.chain(), numbers);
        Fraction change = after.value().minus(before.value());
        Fraction said = m.group(3) != null
                ? Fraction.ZERO
                : evaluate(step.remark(), m.group(2)).value();
        if (!change.equals("took away".equals(m.group(1)) ? said.negated() : said)) {
            throw new OracleException("the remark \"" + step.remark() + "\" is wrong: the change is " + change);
        }
    }

    private Quantity evaluate(String line, String side) {
        return read(line, side).value();
    }

    private Evaluator.Side read(String line, String side) {
        try {
            return Evaluator.read(side, units, values);
        } catch (ArithmeticException e) {
            throw new OracleException("cannot work out \"" + side + "\" in " + line, e);
        }
    }
}
