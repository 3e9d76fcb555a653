package io.github.formulationmath.limit;

import java.util.Locale;

/** The one rule by which names are alike: letter case and spacing are forgiven, nothing else. */
final class LimitNames {

    private LimitNames() {}

    /** Upper case, every run of white space one space, none at the ends and none beside a hyphen or a slash. */
    static String normalise(String name) {
        String upper = isUpperCaseAscii(name) ? name : name.toUpperCase(Locale.ROOT);
        StringBuilder kept = null;
        int length = upper.length();
        for (int i = 0; i < length; i++) {
            char c = upper.charAt(i);
            boolean drop = isSpace(c) && (i == 0 || i == length - 1 || isSpace(upper.charAt(i + 1)) || binds(upper, i));
            if (drop && kept == null) {
                kept = new StringBuilder(length).append(upper, 0, i);
            } else if (!drop && kept != null) {
                kept.append(isSpace(c) ? ' ' : c);
            } else if (kept == null && c != ' ' && isSpace(c)) {
                kept = new StringBuilder(length).append(upper, 0, i).append(' ');
            }
        }
        return kept == null ? upper : kept.toString();
    }

    /** The form of a word of a scope: {@code Face cream} and {@code face-cream} are {@code face_cream}. */
    static String term(String word) {
        return word.strip().toLowerCase(Locale.ROOT).replaceAll("[\\s_-]+", "_");
    }

    /** Whether the next or last character that is no space is a hyphen or a slash. */
    private static boolean binds(String text, int space) {
        int before = space;
        while (before >= 0 && isSpace(text.charAt(before))) {
            before--;
        }
        int after = space;
        while (after < text.length() && isSpace(text.charAt(after))) {
            after++;
        }
        return before < 0 || after >= text.length() || isJoint(text.charAt(before)) || isJoint(text.charAt(after));
    }

    private static boolean isJoint(char c) {
        return c == '-' || c == '/';
    }

    private static boolean isSpace(char c) {
        return c == ' ' || c == '\t' || c == '\n' || c == '\r' || c == '\u00a0';
    }

    private static boolean isUpperCaseAscii(String name) {
        for (int i = 0; i < name.length(); i++) {
            char c = name.charAt(i);
            if (c >= 'a' && c <= 'z' || c > 127) {
                return false;
            }
        }
        return true;
    }
}
