package io.github.formulationmath.document;

import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * The characters that mean something to LaTeX, or that its text fonts lack, and how they are written: in running text with
 * the commands of LaTeX, and in formulas with those that the renderers of web pages know too, and no others.
 */
final class LatexCharacters {

    private static final String GREEK = "αβγδεζηθικλμνξοπρστυφχψω";
    private static final List<String> GREEK_NAMES = List.of(
            ("alpha beta gamma delta varepsilon zeta eta theta iota kappa lambda mu nu xi o pi rho sigma tau upsilon"
                            + " varphi chi psi omega")
                    .split(" "));

    private static final Map<Integer, String> TEXT = text();
    private static final Map<Integer, String> FORMULA = formula();

    private LatexCharacters() {}

    /** How characters are written in running text. */
    static Map<Integer, String> map() {
        return TEXT;
    }

    /** Words within a formula, upright: letters as text, and each sign as a formula has it. */
    static String inFormula(String words) {
        StringBuilder out = new StringBuilder(words.length() + 16);
        StringBuilder letters = new StringBuilder();
        words.codePoints().forEach(c -> {
            String sign = FORMULA.get(c);
            if (sign == null) {
                letters.appendCodePoint(c);
            } else {
                out.append(asText(letters)).append(sign);
                letters.setLength(0);
            }
        });
        return out.append(asText(letters)).toString();
    }

    private static String asText(CharSequence letters) {
        return letters.isEmpty() ? "" : "\\text{" + letters + "}";
    }

    private static Map<Integer, String> text() {
        Map<Integer, String> map = new HashMap<>();
        for (char c : new char[] {'{', '}', '$', '&', '#', '_', '%'}) {
            map.put((int) c, "\\" + c);
        }
        put(map, "\\", "{}", "\\", "textbackslash", "^", "textasciicircum", "~", "textasciitilde", "<", "textless");
        put(map, "\\", "{}", ">", "textgreater", "|", "textbar", "\"", "textquotedbl", "`", "textasciigrave");
        put(map, "\\", "{}", "'", "textquotesingle", "·", "textperiodcentered");
        // No ligature of two hyphens.
        map.put((int) '-', "{-}");
        both(map);
        put(map, "\\ensuremath{", "}", signs());
        put(map, "\\ensuremath{", "}", greek());
        return Map.copyOf(map);
    }

    private static Map<Integer, String> formula() {
        Map<Integer, String> map = new HashMap<>();
        for (char c : new char[] {'{', '}', '$', '&', '#', '_', '%'}) {
            map.put((int) c, "\\" + c);
        }
        put(map, "{", "}", "\\", "\\backslash", "^", "\\wedge", "~", "\\sim", "<", "<", ">", ">", "|", "\\vert");
        put(map, "{", "}", "·", "\\cdot", "`", "\\text{\u2018}", "\"", "\\text{\u201D}", "'", "\\text{\u2019}");
        both(map);
        put(map, "{", "}", signs());
        put(map, "{", "}", greek());
        map.put((int) '′', "'");
        return Map.copyOf(map);
    }

    private static void both(Map<Integer, String> map) {
        // Letters of the other direction are isolated by the engine, not by these.
        map.put(0x2068, "");
        map.put(0x2069, "");
        map.put(0xFFFD, "?");
        map.put((int) Linear.UNBROKEN, "~");
    }

    private static void put(Map<Integer, String> map, String before, String after, String... pairs) {
        for (int i = 0; i < pairs.length; i += 2) {
            map.put(pairs[i].codePointAt(0), before + pairs[i + 1] + after);
        }
    }

    private static String[] signs() {
        String signs =
                "− - × \\times ≈ \\approx ≤ \\le ≥ \\ge √ \\surd ′ {}' ⁻ {}^- ° {}^\\circ µ \\mu ∞ \\infty … \\dots → \\to"
                        + " ± \\pm ¹ {}^1 ² {}^2 ³ {}^3 ⁰ {}^0 ⁴ {}^4 ⁵ {}^5 ⁶ {}^6 ⁷ {}^7 ⁸ {}^8 ⁹ {}^9 ₀ {}_0 ₁ {}_1 ₂ {}_2 ₃ {}_3 ₄ {}_4 ₅ {}_5 ₆ {}_6 ₇ {}_7 ₈ {}_8 ₉ {}_9"
                        + " ⁺ {}^+ ⁼ {}^= ⁽ {}^( ⁾ {}^) ⁿ {}^n ₊ {}_+ ₋ {}_- ₌ {}_= ₍ {}_( ₎ {}_)";
        return signs.split(" ");
    }

    private static String[] greek() {
        StringBuilder pairs = new StringBuilder(
                "Γ \\Gamma Δ \\Delta Θ \\Theta Λ \\Lambda Ξ \\Xi Π \\Pi Σ \\Sigma" + " Φ \\Phi Ψ \\Psi Ω \\Omega");
        for (int i = 0; i < GREEK_NAMES.size(); i++) {
            char letter = GREEK.charAt(i);
            pairs.append(' ').append(letter).append(letter == 'ο' ? " " : " \\").append(GREEK_NAMES.get(i));
        }
        return pairs.toString().split(" ");
    }
}
