package io.github.formulationmath.formula;

import io.github.formulationmath.number.Excerpt;
import java.text.Normalizer;
import java.util.Locale;
import java.util.Objects;

/**
 * The one rule by which two spellings are the same name, of a substance as of a material.
 *
 * <p>Forgiven are letter case, compatibility and canonical Unicode forms (full-width letters, ligatures, composed or
 * decomposed accents) and characters that are not seen (zero-width characters, direction marks, soft hyphens), as in the
 * identifier caseless match of the Unicode Standard, section 3.13; and besides, because names are copied from documents:
 * the kind of space and how many, spaces at the ends and beside hyphens, slashes, commas and brackets, the kind of dash
 * and of apostrophe, and the dot of an I, which depends on the language of the keyboard. Nothing else: a letter more or
 * less is another name, and so is a letter of another alphabet that looks alike.
 *
 * <p>Example: {@code "Glycerin"}, {@code " GLYCERIN"} and {@code "gly\u00adcerin"} are one name, {@code "Glycerine"} is
 * another.
 */
public final class SubstanceName {

    /** Longer texts are no names. */
    static final int MAX_LENGTH = 500;

    private static final char DOT_ABOVE = '\u0307';

    private SubstanceName() {}

    /**
     * The form in which names are compared.
     *
     * @param name the name as written
     * @return the name in capital letters, spaced evenly; the same text for every spelling of one name, itself included;
     *     empty if nothing of the name can be seen
     */
    public static String normalise(String name) {
        Objects.requireNonNull(name, "name");
        return isPlain(name) ? spaced(name, true) : normaliseAny(name);
    }

    /**
     * Whether two spellings are the same name.
     *
     * @param name a name as written
     * @param other another
     * @return true if their normal forms are equal
     */
    public static boolean areAlike(String name, String other) {
        return normalise(name).equals(normalise(other));
    }

    /** A text that can be a name, of a substance as of a material, a phase or a product; else why it cannot. */
    static String require(String argument, String name) {
        Objects.requireNonNull(name, argument);
        if (name.length() > MAX_LENGTH) {
            throw new IllegalArgumentException(
                    argument + " has " + name.length() + " characters: at most " + MAX_LENGTH + " are allowed");
        }
        if (isPlain(name) ? name.isBlank() : normalise(name).isEmpty()) {
            throw new IllegalArgumentException(argument + " is blank: give a name"
                    + (name.isBlank() ? "" : ", with a letter or a digit that can be seen"));
        }
        for (int i = 0; i < name.length(); i++) {
            if (isLineBreak(name.charAt(i))) {
                throw new IllegalArgumentException(argument + " has a line break after \""
                        + Excerpt.of(name.substring(0, i)) + "\": write the name on one line");
            }
        }
        return name;
    }

    /** A name in normal form without accents, for a search; with and without them are two names. */
    static String withoutAccents(String normal) {
        if (isPlain(normal)) {
            return normal;
        }
        StringBuilder kept = new StringBuilder(normal.length());
        Normalizer.normalize(normal, Normalizer.Form.NFD)
                .codePoints()
                .filter(c -> Character.getType(c) != Character.NON_SPACING_MARK)
                .forEach(kept::appendCodePoint);
        return kept.toString();
    }

    /** The mandatory breaks of the Unicode Standard, Annex 14. */
    private static boolean isLineBreak(char c) {
        return c >= '\n' && c <= '\r' || c == '\u0085' || c == '\u2028' || c == '\u2029';
    }

    private static String normaliseAny(String name) {
        String seen = visible(Normalizer.normalize(visible(name), Normalizer.Form.NFKD));
        String capital = seen.toLowerCase(Locale.ROOT).toUpperCase(Locale.ROOT);
        String plain = undotted(visible(Normalizer.normalize(capital, Normalizer.Form.NFKD)));
        return Normalizer.normalize(spaced(plain, false), Normalizer.Form.NFC);
    }

    private static boolean isPlain(String name) {
        for (int i = 0; i < name.length(); i++) {
            char c = name.charAt(i);
            if (c > '~' || c < ' ') {
                return false;
            }
        }
        return true;
    }

    /** Without what is not seen; dashes, apostrophes and spaces of one kind each. */
    private static String visible(String text) {
        StringBuilder kept = new StringBuilder(text.length());
        int i = 0;
        while (i < text.length()) {
            int c = text.codePointAt(i);
            if (!isInvisible(c)) {
                kept.appendCodePoint(plain(c));
            }
            i += Character.charCount(c);
        }
        return kept.toString();
    }

    /** Formats, controls and the other code points that the Unicode Standard lets be ignored by default. */
    private static boolean isInvisible(int c) {
        int type = Character.getType(c);
        return type == Character.FORMAT
                || type == Character.CONTROL && !isSpace(c)
                || c == 0x034F // combining grapheme joiner
                || c == 0x115F
                || c == 0x1160
                || c == 0x3164
                || c == 0xFFA0 // fillers of Hangul syllables
                || c == 0x17B4
                || c == 0x17B5 // Khmer inherent vowels
                || c >= 0x180B && c <= 0x180F
                || c >= 0xFE00 && c <= 0xFE0F
                || c >= 0xFFF0 && c <= 0xFFF8
                || c >= 0xE0000 && c <= 0xE0FFF; // variation selectors and tags
    }

    private static int plain(int c) {
        if (isSpace(c)) {
            return ' ';
        }
        if (Character.getType(c) == Character.DASH_PUNCTUATION || c == 0x2212) {
            return '-';
        }
        return switch (c) {
            case 0x2018, 0x2019, 0x201B, 0x02B9, 0x02BC, 0x2032 -> '\'';
            case 0x2044, 0x2215 -> '/';
            default -> c;
        };
    }

    /** White space of every kind, and the blank of Braille, which prints as one. */
    private static boolean isSpace(int c) {
        return Character.isWhitespace(c) || Character.isSpaceChar(c) || c == 0x0085 || c == 0x2800;
    }

    private static String undotted(String capital) {
        return capital.indexOf(DOT_ABOVE) < 0 ? capital : capital.replace("I" + DOT_ABOVE, "I");
    }

    /** Every run of spaces one space, none at the ends and none beside a joint; and letters of ASCII in capitals, if asked for. */
    private static String spaced(String text, boolean capitals) {
        char[] kept = new char[text.length()];
        int length = 0;
        boolean pending = false;
        boolean changed = false;
        for (int i = 0; i < kept.length; i++) {
            char c = text.charAt(i);
            if (c == ' ') {
                pending = true;
                continue;
            }
            if (capitals && c >= 'a' && c <= 'z') {
                c = (char) (c - ('a' - 'A'));
                changed = true;
            }
            if (pending && length > 0 && !isJoint(c) && !isJoint(kept[length - 1])) {
                kept[length++] = ' ';
            }
            kept[length++] = c;
            pending = false;
        }
        return changed || length < kept.length ? new String(kept, 0, length) : text;
    }

    private static boolean isJoint(char c) {
        return c < 'A' ? c == '-' || c == '/' || c == ',' || c == '(' || c == ')' : c == '[' || c == ']';
    }
}
