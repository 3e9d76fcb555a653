package io.github.formulationmath.limit;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads the free text of the raw annex exports, as far as a machine can without guessing. */
final class PrintedText {

    /** A percentage with the basis printed after it in brackets, both as text; the decimal comma is made a point. */
    record Printed(String percent, String basis) {}

    private static final Pattern SPACE = Pattern.compile("\\s+", Pattern.UNICODE_CHARACTER_CLASS);
    private static final Pattern LETTER = Pattern.compile("\\s*\\(?([a-z])\\)\\s*(.*)");
    private static final Pattern ONE_LIMIT =
            Pattern.compile("(\\d+(?:[.,]\\d+)?)\\s?%(?:\\s*\\(([^()]*)\\))?\\s*[.;]?");
    private static final Pattern PERCENT = Pattern.compile("(\\d+(?:[.,]\\d+)?)\\s?%");
    private static final Pattern MILLIGRAM_PER_KILOGRAM = Pattern.compile("(\\d+)\\s?mg/kg");

    private PrintedText() {}

    /** The text with soft hyphens removed and every run of white space made one space: what the tables carry. */
    static String normalised(String text) {
        return SPACE.matcher(text.replace("\u00ad", "").replace("\u200b", ""))
                .replaceAll(" ")
                .strip();
    }

    /** The parts of a cell printed as {@code a) … b) …}, each letter at a line start; empty if it is not so printed. */
    static Map<String, String> lettered(String cell) {
        Map<String, String> parts = new LinkedHashMap<>();
        String letter = "";
        for (String line : cell.replace("\u00ad", "").split("\n")) {
            Matcher start = LETTER.matcher(line);
            if (start.matches()) {
                letter = start.group(1);
                parts.put(letter, start.group(2));
            } else if (!letter.isEmpty()) {
                parts.merge(letter, line, (before, more) -> before + " " + more);
            } else if (!line.isBlank()) {
                return Map.of();
            }
        }
        parts.replaceAll((key, part) -> normalised(part));
        return parts;
    }

    /**
     * The limits of a concentration cell by letter (the empty letter if there is none), or nothing at all if any part of
     * the cell holds more than one percentage with an optional basis in brackets.
     */
    static Optional<Map<String, Printed>> limits(String cell) {
        Map<String, String> parts = lettered(cell);
        Map<String, Printed> limits = new LinkedHashMap<>();
        for (Map.Entry<String, String> part : (parts.isEmpty() ? Map.of("", normalised(cell)) : parts).entrySet()) {
            Matcher one = ONE_LIMIT.matcher(part.getValue());
            if (!one.matches()) {
                return Optional.empty();
            }
            String basis = one.group(2) == null ? "" : normalised(one.group(2));
            limits.put(part.getKey(), new Printed(point(one.group(1)), basis));
        }
        return Optional.of(limits);
    }

    /** Every percentage in a text, in order, with the decimal comma made a point; mg/kg are turned into percent. */
    static List<String> percentages(String text) {
        List<String> found = new ArrayList<>();
        Matcher percent = PERCENT.matcher(text);
        while (percent.find()) {
            found.add(point(percent.group(1)));
        }
        Matcher ppm = MILLIGRAM_PER_KILOGRAM.matcher(text);
        while (ppm.find()) {
            found.add(new BigDecimal(ppm.group(1))
                    .movePointLeft(4)
                    .stripTrailingZeros()
                    .toPlainString());
        }
        return found;
    }

    private static String point(String decimal) {
        return decimal.replace(',', '.');
    }
}
