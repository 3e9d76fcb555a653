package io.github.formulationmath.quantity;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * What a refused text may have meant, with the decimal mark and the units of its reader. These are proposals, for a person to
 * choose from: nothing is ever read this way.
 */
final class Repairs {

    // Possessive quantifiers: no backtracking. Sign, body, power of ten, the rest.
    private static final Pattern FRACTION = Pattern.compile("([+-]?) ?((?:[0-9]++[ -]++)?[0-9]++/[0-9]++)()(.*+)");
    private static final Pattern DECIMAL =
            Pattern.compile("([+-]?) ?([0-9.,'\u2019\u066b\u066c_ ]++)((?:[eE][+-]?[0-9]++)?)(.*+)");

    private static final Pattern GROUPS =
            Pattern.compile("[1-9][0-9]{0,2}(?:([.,'\u2019\u066c_ ])[0-9]{3})(?:\\1[0-9]{3})*+");
    private static final Pattern DIGITS = Pattern.compile("[0-9]*+");
    private static final String DECIMAL_MARKS = ".,\u066b";

    private Repairs() {}

    static Stream<String> of(String text, char decimalMark) {
        String clean = clean(text);
        Matcher m = FRACTION.matcher(clean);
        if (m.matches()) {
            return combined(m, List.of(m.group(2).replaceAll("[ -]++", " ")));
        }
        m = DECIMAL.matcher(clean);
        return m.matches() ? combined(m, numbers(m.group(2).strip(), decimalMark)) : Stream.empty();
    }

    private static Stream<String> combined(Matcher m, List<String> numbers) {
        List<String> units = UnitNames.meantBy(m.group(4).strip()).toList();
        return numbers.stream()
                .flatMap(number -> units.stream().map(unit -> (m.group(1) + number + m.group(3) + " " + unit).strip()));
    }

    /** The last mark as the decimal mark, and all marks as grouping marks, as far as the digits allow it. */
    private static List<String> numbers(String body, char decimalMark) {
        String number = body.replaceAll("[.,'\u2019\u066b\u066c_ ]++$", "");
        int last = -1;
        for (int i = 0; i < number.length(); i++) {
            last = DECIMAL_MARKS.indexOf(number.charAt(i)) >= 0 ? i : last;
        }
        List<String> found = new ArrayList<>();
        if (last >= 0) {
            String whole = number.substring(0, last);
            String decimals = number.substring(last + 1);
            boolean once = whole.indexOf(number.charAt(last)) < 0;
            if (once && isWhole(whole) && DIGITS.matcher(decimals).matches()) {
                found.add(digits(whole) + decimalMark + decimals);
            }
        }
        if (isWhole(number)) {
            found.add(digits(number));
        }
        return found;
    }

    private static boolean isWhole(String number) {
        return DIGITS.matcher(number).matches() || GROUPS.matcher(number).matches();
    }

    private static String digits(String number) {
        return number.replaceAll("[^0-9]++", "");
    }

    /** As {@link TypedText#characters}, and invisible characters go. */
    private static String clean(String text) {
        StringBuilder clean = new StringBuilder();
        text.codePoints().filter(c -> Character.getType(c) != Character.FORMAT).forEach(c -> {
            boolean blank = Character.isWhitespace(c) || Character.isISOControl(c);
            clean.appendCodePoint(blank ? ' ' : c == '\u2013' ? '-' : c);
        });
        return TypedText.characters(clean.toString());
    }
}
