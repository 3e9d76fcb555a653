package io.github.formulationmath.working;

import java.util.Map;

/** Makes a text harmless in a format: it is shown as it is and does nothing. */
final class Escape {

    private static final String MARKDOWN = "\\`*_{}[]()#+-.!|~$:@=\"'^";

    private static final Map<Integer, String> LATEX = LatexCharacters.map();

    private Escape() {}

    static String html(String text) {
        StringBuilder out = new StringBuilder(text.length() + 16);
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            switch (c) {
                case '&' -> out.append("&amp;");
                case '<' -> out.append("&lt;");
                case '>' -> out.append("&gt;");
                case '"' -> out.append("&quot;");
                case '\'' -> out.append("&#39;");
                default -> out.append(c);
            }
        }
        return out.toString();
    }

    /** For running text and the cells of tables; CommonMark lets any ASCII punctuation mark follow a backslash. */
    static String markdown(String text) {
        StringBuilder out = new StringBuilder(text.length() + 16);
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            switch (c) {
                case '&' -> out.append("&amp;");
                case '<' -> out.append("&lt;");
                case '>' -> out.append("&gt;");
                default -> out.append(MARKDOWN.indexOf(c) >= 0 ? "\\" : "").append(c);
            }
        }
        return out.toString();
    }

    static String latex(String text) {
        StringBuilder out = new StringBuilder(text.length() + 16);
        text.codePoints().forEach(c -> {
            String command = LATEX.get(c);
            if (command == null) {
                out.appendCodePoint(c);
            } else {
                out.append(command);
            }
        });
        return out.toString();
    }
}
