package io.github.formulationmath.snippet;

import java.util.List;

/**
 * Java in a text.
 *
 * @param place where it stands, for people
 * @param imports lines of imports that its surroundings have
 * @param statements the code
 */
public record Snippet(String place, List<String> imports, List<Statement> statements) {

    /** A snippet from code as it stands in the text. */
    public static Snippet of(String place, List<String> imports, String code) {
        return new Snippet(place, imports, Statement.of(code));
    }

    /** A class whose method {@code run} runs the statements and hands their values to a {@link Seen}. */
    String source(String className, List<String> packages) {
        StringBuilder members = new StringBuilder();
        StringBuilder body = new StringBuilder();
        for (int i = 0; i < statements.size(); i++) {
            Statement statement = statements.get(i);
            if (statement.isMember()) {
                members.append(statement.code()).append('\n');
            } else if (statement.isDeclaration()) {
                body.append(statement.code()).append(";\n");
            } else {
                body.append("seen.take(")
                        .append(i)
                        .append(", () -> ")
                        .append(statement.code())
                        .append(");\n");
            }
        }
        StringBuilder head = new StringBuilder();
        imports.forEach(line -> head.append(line).append('\n'));
        packages.forEach(name -> head.append("import ").append(name).append(".*;\n"));
        return head + "import static " + SnippetCompiler.SETTING + ".*;\npublic final class " + className + " {\n"
                + members + "public static void run(" + Seen.class.getName() + " seen) throws Exception {\n" + body
                + "}\n}\n";
    }
}
