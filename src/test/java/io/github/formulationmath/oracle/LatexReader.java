package io.github.formulationmath.oracle;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Finds the arithmetic in the LaTeX of a working and writes it along the line. */
final class LatexReader {

    private static final Pattern PART = Pattern.compile(
            "\\\\subsection\\*\\{(Given|Working|Answer)}|^\\$(.*?)\\$ &|\\\\begin\\{align\\*}\n(.*?)\\\\end\\{align\\*}(?:\n\n(Rounding [^\n]*))?",
            Pattern.DOTALL | Pattern.MULTILINE);
    private static final String LETTERS =
            "alpha α beta β gamma γ delta δ varepsilon ε zeta ζ eta η theta θ iota ι kappa κ lambda λ "
                    + "mu μ nu ν xi ξ pi π rho ρ sigma σ tau τ upsilon υ varphi φ chi χ psi ψ omega ω Gamma Γ "
                    + "Delta Δ Theta Θ Lambda Λ Xi Ξ Pi Π Sigma Σ Phi Φ Psi Ψ Omega Ω";
    private static final Map<String, String> COMMANDS = commands();

    private static Map<String, String> commands() {
        Map<String, String> map = new HashMap<>(Map.of(
                "\\cdot", "·", "\\approx", "≈", "\\le", "≤", "\\ge", "≥", "\\left", "", "\\right", "", "\\lvert", "|"));
        map.putAll(Map.of(
                "\\rvert",
                "|",
                "\\quad",
                ":",
                "\\qquad",
                "",
                "\\circ",
                "°",
                "\\times",
                "×",
                "\\infty",
                "∞",
                "\\textbar",
                "|"));
        Matcher letter = Pattern.compile("(\\S+) (\\S)").matcher(LETTERS);
        while (letter.find()) {
            map.put("\\" + letter.group(1), letter.group(2));
        }
        return map;
    }

    private final PrintedWorking.Builder found = new PrintedWorking.Builder();

    PrintedWorking read(String page) {
        String section = "";
        Matcher part = PART.matcher(page);
        while (part.find()) {
            if (part.group(1) != null) {
                section = part.group(1);
            } else if (part.group(2) != null) {
                found.givens.add(tidy(new Scanner(part.group(2)).rest()));
            } else if (section.equals("Answer")) {
                found.answer = String.join(" ", lines(part.group(3)));
            } else {
                String remark = part.group(4);
                found.block(lines(part.group(3)), remark == null ? "" : tidy(new Scanner(remark).rest()));
            }
        }
        return found.build();
    }

    /** A line that begins with the sign of alignment belongs to the one above. */
    private static List<String> lines(String block) {
        List<String> lines = new ArrayList<>();
        for (String line : block.split("\\\\\\\\\n")) {
            boolean carried = line.startsWith(" &")
                    || !lines.isEmpty() && lines.get(lines.size() - 1).indexOf('&') < 0;
            if (carried) {
                lines.set(lines.size() - 1, lines.get(lines.size() - 1) + " " + line);
            } else {
                lines.add(line);
            }
        }
        return lines.stream().map(line -> tidy(new Scanner(line).rest())).toList();
    }

    private static String tidy(String text) {
        return text.replaceAll(" +", " ")
                .replace("( ", "(")
                .replace(" )", ")")
                .replace(" ;", ";")
                .replace(" :", ":")
                .replaceAll("(^|[(=≈<≤≥>|;] ?)-", "$1−")
                .replace(" - ", " − ")
                .strip();
    }

    /** Reads commands with their arguments in braces. */
    private static final class Scanner {

        private final String text;
        private int at;

        Scanner(String text) {
            this.text = text;
        }

        String rest() {
            StringBuilder out = new StringBuilder();
            while (at < text.length() && text.charAt(at) != '}') {
                one(out);
            }
            return out.toString();
        }

        private void one(StringBuilder out) {
            char c = text.charAt(at);
            if (c == '\\') {
                command(out);
            } else if (c == '{') {
                out.append(braces());
            } else {
                at++;
                if (c == '^' && "123-".indexOf(text.charAt(at)) >= 0) {
                    out.append("¹²³⁻".charAt("123-".indexOf(text.charAt(at++))));
                    return;
                }
                out.append(
                        c == '\'' ? "′" : c == '&' || c == '\n' || c == '~' ? ' ' : c == '^' ? "" : String.valueOf(c));
            }
        }

        private String braces() {
            if (text.charAt(at) != '{') {
                throw new OracleException("expected { at " + text.substring(at));
            }
            at++;
            String inside = rest();
            at++;
            return inside;
        }

        private void command(StringBuilder out) {
            Matcher name = Pattern.compile("\\\\([A-Za-z]+|.)", Pattern.DOTALL).matcher(text);
            name.find(at);
            at = name.end();
            at += name.group().endsWith("vert") && text.startsWith(" ", at) ? 1 : 0;
            switch (name.group()) {
                case "\\tfrac" -> out.append(braces()).append('/').append(braces());
                case "\\frac" ->
                    out.append("((")
                            .append(braces())
                            .append(") / (")
                            .append(braces())
                            .append("))");
                case "\\sqrt" -> out.append("√(").append(braces()).append(')');
                case "\\text", "\\operatorname", "\\ensuremath" -> out.append(braces());
                case "\\,", "\\ " -> out.append(' ');
                default -> out.append(COMMANDS.getOrDefault(name.group(), name.group(1)));
            }
        }
    }
}
