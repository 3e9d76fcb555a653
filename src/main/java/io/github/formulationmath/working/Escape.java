package io.github.formulationmath.working;

import java.util.HashMap;
import java.util.Map;

/** Makes a text harmless in a format: it is shown as it is and does nothing. */
final class Escape {

    private static final Map<Integer, String> TAGS = Map.of((int) '&', "&amp;", (int) '<', "&lt;", (int) '>', "&gt;");
    private static final Map<Integer, String> HTML = html();
    private static final Map<Integer, String> MARKDOWN = markdown();
    private static final Map<Integer, String> LATEX = LatexCharacters.map();

    private Escape() {}

    static String html(String text) {
        return replaced(text, HTML);
    }

    /** For running text and the cells of tables; CommonMark lets any ASCII punctuation mark follow a backslash. */
    static String markdown(String text) {
        return replaced(text, MARKDOWN);
    }

    static String latex(String text) {
        return replaced(text, LATEX);
    }

    private static Map<Integer, String> html() {
        Map<Integer, String> map = new HashMap<>(TAGS);
        map.put((int) '"', "&quot;");
        map.put((int) '\'', "&#39;");
        return Map.copyOf(map);
    }

    private static Map<Integer, String> markdown() {
        Map<Integer, String> map = new HashMap<>(TAGS);
        "\\`*_{}[]()#+-.!|~$:@=\"'^".chars().forEach(c -> map.put(c, "\\" + (char) c));
        return Map.copyOf(map);
    }

    private static String replaced(String text, Map<Integer, String> replacements) {
        StringBuilder out = new StringBuilder(text.length() + 16);
        text.codePoints().forEach(c -> {
            String replacement = replacements.get(c);
            if (replacement == null) {
                out.appendCodePoint(c);
            } else {
                out.append(replacement);
            }
        });
        return out.toString();
    }
}
