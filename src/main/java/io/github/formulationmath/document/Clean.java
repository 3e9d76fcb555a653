package io.github.formulationmath.document;

import java.util.ArrayDeque;
import java.util.BitSet;
import java.util.Deque;
import java.util.Objects;

/** Texts of people, such as the names of ingredients, made fit to be printed. */
final class Clean {

    private static final int ISOLATE = 0x2068;
    private static final int END = 0x2069;

    private Clean() {}

    /**
     * A text that cannot leave its place: line ends and other controls become spaces, controls of the writing direction
     * U+FFFD, and a text with letters written from right to left is isolated from what surrounds it. What has been cleaned
     * stays as it is.
     */
    static String text(String text) {
        int[] characters = text.codePoints().toArray();
        BitSet isolates = isolates(characters);
        StringBuilder kept = new StringBuilder(text.length());
        boolean exposed = false;
        int depth = 0;
        for (int i = 0; i < characters.length; i++) {
            int c = characters[i];
            if (isolates.get(i)) {
                kept.appendCodePoint(c);
                depth += c == ISOLATE ? 1 : -1;
            } else {
                kept.appendCodePoint(harmless(c));
                exposed |= depth == 0 && isRightToLeft(c);
            }
        }
        return exposed ? "\u2068" + kept + "\u2069" : kept.toString();
    }

    /** The same for an argument that must not be null. */
    static String text(String text, String name) {
        return text(Objects.requireNonNull(text, name));
    }

    private static int harmless(int c) {
        if (Character.isISOControl(c) || c == '\u2028' || c == '\u2029') {
            return ' ';
        }
        return isNoise(c) ? '\uFFFD' : c;
    }

    /** Where isolates begin and end, each with its other end: those move nothing outside of them. */
    private static BitSet isolates(int[] characters) {
        BitSet pairs = new BitSet();
        Deque<Integer> open = new ArrayDeque<>();
        for (int i = 0; i < characters.length; i++) {
            if (characters[i] == ISOLATE) {
                open.push(i);
            } else if (characters[i] == END && !open.isEmpty()) {
                pairs.set(open.pop());
                pairs.set(i);
            }
        }
        return pairs;
    }

    private static boolean isRightToLeft(int c) {
        byte direction = Character.getDirectionality(c);
        return direction == Character.DIRECTIONALITY_RIGHT_TO_LEFT
                || direction == Character.DIRECTIONALITY_RIGHT_TO_LEFT_ARABIC;
    }

    private static boolean isNoise(int c) {
        return c >= 0x202A && c <= 0x202E
                || c >= 0x2066 && c <= 0x2069
                || c == 0xFEFF
                || (c & 0xFFFE) == 0xFFFE
                || Character.getType(c) == Character.SURROGATE;
    }
}
