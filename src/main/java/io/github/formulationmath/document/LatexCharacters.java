package io.github.formulationmath.document;

import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** The characters that mean something to LaTeX, or that its text fonts lack, and how they are written. */
final class LatexCharacters {

    private static final String GREEK = "αβγδεζηθικλμνξοπρστυφχψω";
    private static final List<String> GREEK_NAMES = List.of(
            ("alpha beta gamma delta varepsilon zeta eta theta iota kappa lambda mu nu xi o pi rho sigma tau upsilon"
                            + " varphi chi psi omega")
                    .split(" "));

    private LatexCharacters() {}

    static Map<Integer, String> map() {
        Map<Integer, String> map = new HashMap<>();
        for (char c : new char[] {'{', '}', '$', '&', '#', '_', '%'}) {
            map.put((int) c, "\\" + c);
        }
        text(map, "\\", "textbackslash", "^", "textasciicircum", "~", "textasciitilde", "<", "textless");
        text(map, ">", "textgreater", "|", "textbar", "\"", "textquotedbl", "`", "textasciigrave");
        text(map, "'", "textquotesingle", "·", "textperiodcentered");
        // No ligature of two hyphens.
        map.put((int) '-', "{-}");
        // Letters of the other direction are isolated by the engine, not by these.
        map.put(0x2068, "");
        map.put(0x2069, "");
        map.put(0xFFFD, "?");
        map.put((int) Linear.UNBROKEN, "~");
        signs(map);
        greek(map);
        return Map.copyOf(map);
    }

    private static void text(Map<Integer, String> map, String... pairs) {
        put(map, "\\", "{}", pairs);
    }

    private static void math(Map<Integer, String> map, String... pairs) {
        put(map, "\\ensuremath{", "}", pairs);
    }

    private static void put(Map<Integer, String> map, String before, String after, String... pairs) {
        for (int i = 0; i < pairs.length; i += 2) {
            map.put(pairs[i].codePointAt(0), before + pairs[i + 1] + after);
        }
    }

    private static void signs(Map<Integer, String> map) {
        math(map, "−", "-", "×", "\\times", "≈", "\\approx", "≤", "\\le", "≥", "\\ge", "√", "\\surd", "′", "{}'");
        math(map, "²", "{}^2", "³", "{}^3", "¹", "{}^1", "⁻", "{}^-", "°", "{}^\\circ", "µ", "\\mu", "∞", "\\infty");
        math(map, "…", "\\dots", "₂", "{}_2", "₃", "{}_3", "→", "\\to", "±", "\\pm");
    }

    private static void greek(Map<Integer, String> map) {
        for (int i = 0; i < GREEK_NAMES.size(); i++) {
            math(map, GREEK.substring(i, i + 1), i == GREEK.indexOf('ο') ? "o" : "\\" + GREEK_NAMES.get(i));
        }
        math(map, "Γ", "\\Gamma", "Δ", "\\Delta", "Θ", "\\Theta", "Λ", "\\Lambda", "Ξ", "\\Xi", "Π", "\\Pi");
        math(map, "Σ", "\\Sigma", "Φ", "\\Phi", "Ψ", "\\Psi", "Ω", "\\Omega");
    }
}
