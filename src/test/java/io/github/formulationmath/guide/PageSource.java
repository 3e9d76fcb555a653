package io.github.formulationmath.guide;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/**
 * The Java blocks of a page as one class: the blocks run in order in one scope, as a reader would type them, and each is
 * told apart by a mark that it prints first.
 *
 * @param page the page
 * @param className the name of the class
 */
record PageSource(GuidePage page, String className) {

    /** Printed before what a block prints; no page can contain it. */
    static final char MARK = '\u0001';

    private static final Pattern IMPORT = Pattern.compile("import [\\w.*]+;");

    static PageSource of(GuidePage page) {
        return new PageSource(page, "Page_" + page.path().toString().replaceAll("\\W", "_"));
    }

    List<Fence> blocks() {
        return page.in("java");
    }

    /** The source. Without imports of its own, a page uses those that every page may use. */
    String source(List<String> packages) {
        List<String> imports = new ArrayList<>();
        StringBuilder body = new StringBuilder();
        for (Fence block : blocks()) {
            append(block, imports, body);
        }
        packages.forEach(name -> imports.add("import " + name + ".*;"));
        return String.join("\n", imports) + "\npublic final class " + className + " {\n"
                + "public static void run() throws Exception {\n{\n" + body + "}\n}\n}\n";
    }

    private void append(Fence block, List<String> imports, StringBuilder body) {
        if (block.startsAnew()) {
            body.append("}\n{\n");
        }
        body.append("System.out.print('\\u0001');\n");
        for (String line : block.content()) {
            if (IMPORT.matcher(line).matches()) {
                if (!imports.contains(line)) {
                    imports.add(line);
                }
                body.append('\n');
            } else {
                body.append(line).append('\n');
            }
        }
    }

    /** Where a line of the source came from, so that a compiler's message can name the page. */
    String describe() {
        return page + " (class " + className + ")";
    }
}
