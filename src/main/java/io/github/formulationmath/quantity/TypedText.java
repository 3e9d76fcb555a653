package io.github.formulationmath.quantity;

import java.text.Normalizer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What people and machines type for the same text: digits of other scripts, fractions in one character, spaces that do not
 * break, the minus of the typographer, grouped digits. Only what can mean one thing is put into the plain form.
 */
final class TypedText {

    /** Marks that say in which direction a text runs, as number formats of such languages write them. */
    private static final String DIRECTIONS = "\u200e\u200f\u061c";

    /** Spaces that hold two parts of one number together, or a number and its unit. */
    private static final String HOLDING = "[\u00a0\u202f\u2009]";

    /** Groups of three, or of two before the last three; the mark that parts them is the same throughout. */
    private static final Pattern GROUPED =
            Pattern.compile("(?<![0-9.,'\u2019\u060c\u066c])([1-9][0-9]{0,2})(?:(([.,'\u2019\u060c\u066c]|" + HOLDING
                    + "))[0-9]{3}(?:\\2[0-9]{3})*+|(([.,]))[0-9]{2}(?:\\4[0-9]{2}(?![0-9]))*+\\4[0-9]{3})(?![0-9])");

    private static final Pattern SPACES = Pattern.compile(" {2,}+");

    private TypedText() {}

    /** The plain form with groups of digits joined, as far as that can mean one thing only. */
    static String plain(String text, char decimalMark) {
        return spaced(ungrouped(digits(text), decimalMark)).replace('\u066b', decimalMark);
    }

    /** Plain digits, spaces, signs and slashes for those of other scripts and keyboards. */
    static String characters(String text) {
        return spaced(digits(text));
    }

    /** Plain digits, and no marks of direction; the spaces that hold groups of digits together are there still. */
    private static String digits(String text) {
        StringBuilder plain = new StringBuilder(text.length());
        text.codePoints().forEach(c -> {
            if (Character.isDigit(c)) {
                plain.append(Character.digit(c, 10));
            } else if (DIRECTIONS.indexOf(c) < 0) {
                plain.appendCodePoint(c);
            }
        });
        return plain.toString();
    }

    /** The other plain characters, and one space where there are several. */
    private static String spaced(String text) {
        StringBuilder plain = new StringBuilder(text.length());
        text.codePoints().forEach(c -> {
            if (c < 128) {
                plain.append(c == '\t' ? ' ' : (char) c);
            } else {
                plain.append(plain(c));
            }
        });
        return SPACES.matcher(plain).replaceAll(" ").strip();
    }

    private static String plain(int c) {
        String known = Normalizer.normalize(Character.toString(c), Normalizer.Form.NFKC);
        if (known.indexOf('\u2044') > 0) {
            return " " + known.replace('\u2044', '/');
        }
        if (Character.getType(c) == Character.SPACE_SEPARATOR) {
            return " ";
        }
        return switch (c) {
            case '\u2212', '\u2010', '\u2011' -> "-";
            case '\u066a' -> "%";
            case '\u0609' -> "‰";
            case '\u2044', '\u2215' -> "/";
            case '\u2103', '\u2109' -> known;
            default -> c >= '\uff01' && c <= '\uff5e' ? known : Character.toString(c);
        };
    }

    /**
     * Without the marks between groups of digits, where they can be nothing else: a mark that is no decimal mark anywhere, one
     * that comes twice, or one before another that is the decimal mark. A single comma or point before three digits could be
     * either and stays.
     */
    private static String ungrouped(String text, char decimalMark) {
        Matcher m = GROUPED.matcher(text);
        if (!m.find()) {
            return text;
        }
        m.reset();
        StringBuilder all = new StringBuilder(text.length());
        while (m.find()) {
            String mark = m.group(2) == null ? m.group(4) : m.group(2);
            boolean known = mark.charAt(0) != '.' && mark.charAt(0) != ',';
            boolean twice = m.group().indexOf(mark) != m.group().lastIndexOf(mark);
            boolean beforeDecimals = m.end() + 1 < text.length()
                    && text.charAt(m.end()) == decimalMark
                    && Character.isDigit(text.charAt(m.end() + 1));
            boolean certain =
                    mark.charAt(0) == decimalMark ? twice && !beforeDecimals : known || twice || beforeDecimals;
            m.appendReplacement(
                    all, Matcher.quoteReplacement(certain ? m.group().replace(mark, "") : m.group()));
        }
        return m.appendTail(all).toString();
    }
}
