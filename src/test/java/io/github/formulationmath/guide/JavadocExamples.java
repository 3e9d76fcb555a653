package io.github.formulationmath.guide;

import io.github.formulationmath.snippet.Snippet;
import io.github.formulationmath.snippet.Statement;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Cuts the examples out of the Javadoc of the library: blocks {@code <pre>{@code …}</pre>}, and inline code that calls
 * something and holds nothing but ASCII outside its literals. Formulas hold other characters ({@code m = w · M}); the few
 * that do not are {@linkplain #FORMULAS listed}.
 */
final class JavadocExamples {

    /** Looks like a call and is none. */
    private static final List<String> FORMULAS = List.of(
            "Ca(C7H5O2)2", // a molecule
            "c = m(part) / V(whole)", // the definition of a concentration: m and V are quantities
            "w = m(part) / m(whole)", // the definition of a share by mass
            "n = round(x)"); // a step as a working prints it

    private static final Path MAIN = Path.of("src", "main", "java");
    private static final Pattern COMMENT = Pattern.compile("(?s)/\\*\\*.*?\\*/");
    private static final Pattern BLOCK = Pattern.compile("(?s)<pre>\\{@code\\n(.*?)\\}</pre>");
    private static final Pattern INLINE = Pattern.compile("\\{@code\\s+((?:[^{}]|\\{[^{}]*\\})*)\\}");
    private static final Pattern LITERAL = Pattern.compile("\"(?:\\\\.|[^\"\\\\])*\"");
    private static final Pattern CALL = Pattern.compile("[A-Za-z_]\\w*\\(");
    private static final Pattern ASCII = Pattern.compile("\\p{ASCII}*");
    private static final Pattern IMPORT = Pattern.compile("(?m)^import [\\w.]+;$");

    private JavadocExamples() {}

    /** Every example of the library, by file. */
    static List<JavadocExample> all() {
        try (Stream<Path> files = Files.walk(MAIN)) {
            return files.filter(file -> file.toString().endsWith(".java"))
                    .sorted()
                    .flatMap(file -> in(MAIN.relativize(file).toString().replace('\\', '/'), read(file)).stream())
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String read(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The examples of a source file. */
    static List<JavadocExample> in(String file, String source) {
        List<String> imports = imports(file, source);
        List<JavadocExample> examples = new ArrayList<>();
        COMMENT.matcher(source).results().forEach(comment -> {
            String place =
                    file + ":" + (source.substring(0, comment.start()).lines().count() + 1);
            String text = comment.group().replaceAll("\\n[ \\t]*\\*(?!/) ?", "\n");
            BLOCK.matcher(text)
                    .results()
                    .forEach(block -> examples.add(new JavadocExample(Snippet.of(place, imports, block.group(1)), "")));
            String prose = BLOCK.matcher(text).replaceAll("").replaceAll("\\s+", " ");
            INLINE.matcher(prose)
                    .results()
                    .filter(code -> isJava(code.group(1).strip()))
                    .forEach(code -> examples.add(inline(place, imports, prose, code)));
        });
        return examples;
    }

    private static JavadocExample inline(String place, List<String> imports, String prose, MatchResult code) {
        Snippet snippet = new Snippet(
                place, imports, Statement.of(code.group(1).replace(" .", ".").strip()));
        return new JavadocExample(snippet, prose.substring(code.end()).strip());
    }

    private static boolean isJava(String code) {
        String bare = LITERAL.matcher(code).replaceAll("\"\"");
        return !FORMULAS.contains(code)
                && CALL.matcher(bare).find()
                && ASCII.matcher(bare).matches();
    }

    /** Those of the file, and the static members of its type. */
    private static List<String> imports(String file, String source) {
        List<String> imports =
                IMPORT.matcher(source).results().map(MatchResult::group).collect(Collectors.toList());
        String type = file.substring(0, file.length() - ".java".length()).replace('/', '.');
        String name = type.substring(type.lastIndexOf('.') + 1);
        if (Pattern.compile("(?m)^public [\\w ]*(class|interface|enum|record) " + name + "\\b")
                .matcher(source)
                .find()) {
            imports.add("import static " + type + ".*;");
        }
        return imports;
    }
}
