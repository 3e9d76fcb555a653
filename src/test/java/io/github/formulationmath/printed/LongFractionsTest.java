package io.github.formulationmath.printed;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.concurrent.Callable;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/**
 * Nobody has to divide by hand: where a page, an answer or a refusal has a fraction of more than a few digits, its decimal
 * stands beside it. Values alone, which are read again, are exact; in a working each has its decimal where it is worked out.
 */
class LongFractionsTest {

    private static final int FEW_DIGITS = 6;

    private static final Pattern FRACTION = Pattern.compile("(?<![0-9./])([0-9]+)/([0-9]+)(?![0-9/])");

    /** A decimal, in a page of LaTeX, too, and the word that opens the exact fraction after it. */
    private static final Pattern BESIDE = Pattern.compile("(?:≈|approx\\})[^≈]{1,50}\\([^)≈]*$");

    /** What is read again or was written so, and so is printed without loss; variances, which nobody reads without their root; alone, as a part of a line, or as ends of an interval. */
    private static final Set<String> VALUES = Set.of(
            "Amount",
            "Money",
            "MassFraction",
            "VolumeFraction",
            "MassConcentration",
            "Density",
            "Weight",
            "Share",
            "Parts",
            "FormulaLine",
            "Formula",
            "Claim",
            "Phase",
            "OfMass",
            "OfStock",
            "Derived");

    private static final int CASES = 2 * Integer.getInteger("formulationmath.cases", 1);

    @Test
    void a_fraction_of_many_digits_has_its_decimal_beside_it() {
        Map<String, String> found = new TreeMap<>();
        for (long seed = 50; seed < 50 + CASES; seed++) {
            for (Workshop.Units units : new Workshop.Units[] {Workshop.OUNCES, Workshop.KILOGRAMS}) {
                for (Map.Entry<String, Callable<?>> asked :
                        Workshop.answers(units, seed).entrySet()) {
                    Everything.of(asked.getKey(), UnitsOfTheBenchTest.answer(asked.getValue()), 2, (way, text) -> {
                        if (!isExact(way)) {
                            alone(text)
                                    .ifPresent(at -> found.putIfAbsent(
                                            UnitsOfTheBenchTest.last(way),
                                            way + ": " + UnitsOfTheBenchTest.excerpt(text, at)));
                        }
                    });
                }
            }
        }
        assertThat(found.values().stream().map(each -> "\n" + each)).isEmpty();
    }

    private static boolean isExact(String way) {
        String printer = way.contains(" (") ? way.substring(way.lastIndexOf(" (") + 2, way.length() - 1) : "";
        return way.contains(" working") || VALUES.contains(printer);
    }

    /** An act, such as (EC) No 1223/2009 or (EU) 2023/1490. */
    private static boolean isAct(Matcher m) {
        return (m.group(1) + " " + m.group(2)).matches("(?:19|20)[0-9]{2} [0-9]{1,4}|[0-9]{1,4} (?:19|20)[0-9]{2}");
    }

    /** Where a long fraction stands without a decimal: neither behind it nor, as in "≈ 3.14 g (exactly 22/7 g)", before it. */
    private static Optional<Integer> alone(String page) {
        Matcher m = FRACTION.matcher(page);
        while (m.find()) {
            boolean isLong = m.group(1).length() + m.group(2).length() > FEW_DIGITS && !isAct(m);
            String behind = page.substring(m.end(), Math.min(page.length(), m.end() + 16));
            String before = page.substring(Math.max(0, m.start() - 80), m.start());
            if (isLong && !behind.contains("≈") && !BESIDE.matcher(before).find()) {
                return Optional.of(m.start());
            }
        }
        return Optional.empty();
    }
}
