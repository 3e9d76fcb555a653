package io.github.formulationmath.snippet;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/**
 * One statement of a snippet.
 *
 * @param code the statement without its semicolon
 * @param comment what the line says behind it after two slashes, or nothing
 */
public record Statement(String code, String comment) {

    private static final Pattern DECLARATION =
            Pattern.compile("(?s)(final\\s+)?[A-Za-z][\\w.]*(<[^=]*>)?(\\[])*\\s+\\w+\\s*=.*");
    private static final Pattern MEMBER =
            Pattern.compile("(?s)(public |private |static |record |enum |interface |class ).*\\}");

    /** Parts code at its semicolons; those in literals, parentheses and blocks do not count. */
    public static List<Statement> of(String code) {
        List<Statement> statements = new ArrayList<>();
        int start = 0;
        int depth = 0;
        for (int i = 0; i < code.length(); i++) {
            char c = code.charAt(i);
            if (c == '"' || c == '\'') {
                i = endOfLiteral(code, i);
            } else if ("([{".indexOf(c) >= 0) {
                depth++;
            } else if (")]}".indexOf(c) >= 0) {
                depth--;
            } else if (c == ';' && depth == 0) {
                int end = code.indexOf('\n', i) < 0 ? code.length() : code.indexOf('\n', i);
                String rest = code.substring(i + 1, end).strip();
                boolean commented = rest.startsWith("//");
                statements.add(new Statement(
                        code.substring(start, i).strip(),
                        commented ? rest.substring(2).strip() : ""));
                i = commented ? end : i;
                start = i + 1;
            }
        }
        if (start < code.length() && !code.substring(start).isBlank()) {
            statements.add(new Statement(code.substring(start).strip(), ""));
        }
        return statements;
    }

    private static int endOfLiteral(String code, int start) {
        int i = start + 1;
        while (i < code.length() && code.charAt(i) != code.charAt(start)) {
            i += code.charAt(i) == '\\' ? 2 : 1;
        }
        return i;
    }

    /** Whether it names something for what follows. */
    public boolean isDeclaration() {
        return DECLARATION.matcher(code).matches() || code.startsWith("var ");
    }

    /** Whether it is a member of a class, which is compiled and not run. */
    public boolean isMember() {
        return MEMBER.matcher(code).matches();
    }
}
