package io.github.formulationmath.chemistry;

import io.github.formulationmath.number.Excerpt;
import io.github.formulationmath.number.Ratio;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Map;
import java.util.TreeMap;

/** Reads the text of a molecular formula from left to right; used once. */
final class MolecularFormulaText {

    /** Longer texts are no formulas. */
    static final int MAX_LENGTH = 500;

    /** Six digits: more atoms of a kind than any formula has, and no overflow. */
    private static final int MAX_DIGITS = 6;

    private static final char MIDDLE_DOT = '\u00b7';

    private final String text;
    private int at;

    MolecularFormulaText(String text) {
        this.text = text;
    }

    /** The atoms of the whole text. */
    Map<String, Ratio> read() {
        if (text.isEmpty()) {
            throw new IllegalArgumentException("text is empty: a molecular formula looks like C7H5NaO2");
        }
        if (text.length() > MAX_LENGTH) {
            throw new IllegalArgumentException(
                    "text has " + text.length() + " characters: at most " + MAX_LENGTH + " are read");
        }
        Map<String, Ratio> all = part();
        while (at < text.length()) {
            at++;
            Ratio times = leadingCount();
            addTo(all, part(), times);
        }
        return all;
    }

    /** Everything up to the next dot or the end. */
    private Map<String, Ratio> part() {
        Deque<Map<String, Ratio>> open = new ArrayDeque<>();
        open.push(new TreeMap<>());
        while (at < text.length() && !isDot(text.charAt(at))) {
            char c = text.charAt(at);
            if (c == '(') {
                at++;
                open.push(new TreeMap<>());
            } else if (c == ')') {
                close(open);
            } else {
                add(open.element(), element(), count());
            }
        }
        if (open.size() > 1) {
            throw wrong("a bracket is not closed");
        }
        if (open.element().isEmpty()) {
            throw wrong("an element symbol is missing");
        }
        return open.element();
    }

    private void close(Deque<Map<String, Ratio>> open) {
        if (open.size() == 1) {
            throw wrong("a bracket is closed that was not opened");
        }
        if (open.element().isEmpty()) {
            throw wrong("a bracket holds nothing");
        }
        at++;
        Map<String, Ratio> inner = open.pop();
        addTo(open.element(), inner, count());
    }

    private String element() {
        int start = at;
        if (!isBetween(text.charAt(at), 'A', 'Z')) {
            throw wrong("an element symbol begins with a capital letter");
        }
        at++;
        while (at < text.length() && isBetween(text.charAt(at), 'a', 'z')) {
            at++;
        }
        if (at - start > 2) {
            at = start;
            throw wrong("an element symbol has one or two letters");
        }
        return text.substring(start, at);
    }

    private Ratio count() {
        int start = at;
        skipDigits();
        return start == at ? Ratio.ONE : number(start);
    }

    private Ratio leadingCount() {
        int start = at;
        skipDigits();
        if (at > start && at + 1 < text.length() && text.charAt(at) == '.' && isDigit(text.charAt(at + 1))) {
            at++;
            skipDigits();
        }
        return start == at ? Ratio.ONE : number(start);
    }

    private void skipDigits() {
        while (at < text.length() && isDigit(text.charAt(at))) {
            at++;
        }
    }

    private Ratio number(int start) {
        if (at - start > MAX_DIGITS) {
            at = start;
            throw wrong("a count has more than " + MAX_DIGITS + " digits");
        }
        String digits = text.substring(start, at);
        Ratio count = digits.indexOf('.') < 0 ? Ratio.of(Integer.parseInt(digits)) : Ratio.parse(digits);
        if (count.isZero()) {
            at = start;
            throw wrong("a count is 0");
        }
        return count;
    }

    private static void addTo(Map<String, Ratio> sum, Map<String, Ratio> more, Ratio times) {
        for (Map.Entry<String, Ratio> one : more.entrySet()) {
            add(sum, one.getKey(), one.getValue().times(times));
        }
    }

    private static void add(Map<String, Ratio> sum, String element, Ratio count) {
        Ratio before = sum.put(element, count);
        if (before != null) {
            sum.put(element, before.plus(count));
        }
    }

    private static boolean isDot(char c) {
        return c == MIDDLE_DOT || c == '.';
    }

    private static boolean isDigit(char c) {
        return isBetween(c, '0', '9');
    }

    private static boolean isBetween(char c, char first, char last) {
        return c >= first && c <= last;
    }

    private IllegalArgumentException wrong(String what) {
        return new IllegalArgumentException("text is \"" + Excerpt.of(text) + "\": at character " + (at + 1) + ", "
                + what + "; a molecular formula looks like C7H5NaO2, Ca(C7H5O2)2 or CuSO4\u00b75H2O");
    }
}
