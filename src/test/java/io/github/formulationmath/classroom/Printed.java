package io.github.formulationmath.classroom;

import io.github.formulationmath.reckoning.Style;
import java.math.BigDecimal;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;

/** Reads numbers off what is printed, as somebody with the paper in hand does. */
final class Printed {

    static final Style STYLE = Style.steps();

    private static final Pattern NUMBER = Pattern.compile("[0-9]+(?:\\.[0-9]+)?");

    private Printed() {}

    /** The numbers of a text in order, without those of the digits asked for, which stand behind the last question mark. */
    static List<BigDecimal> numbers(String text) {
        return NUMBER.matcher(text.contains("? Answer") ? text.substring(0, text.lastIndexOf("? Answer")) : text)
                .results()
                .map(MatchResult::group)
                .map(BigDecimal::new)
                .toList();
    }

    static BigDecimal number(String text) {
        return numbers(text).get(0);
    }

    /** The digits without point and zeros at either end. */
    static String digits(BigDecimal number) {
        return number.stripTrailingZeros().unscaledValue().toString();
    }
}
