package io.github.formulationmath.architecture;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The sources of the library as text, without their comments. */
final class Sources {

    private static final Pattern TEXT =
            Pattern.compile("(?s)\"\"\".*?\"\"\"|\"(?:\\\\.|[^\"\\\\\n])*\"|'(?:\\\\.|[^'\\\\\n])+'");

    static final Path MAIN = Path.of("src", "main", "java", "io", "github", "formulationmath");

    private Sources() {}

    /** By file, as {@code room/Type.java}. */
    static Map<String, String> code() {
        Map<String, String> code = new TreeMap<>();
        try (Stream<Path> all = Files.walk(MAIN)) {
            for (Path file :
                    all.filter(path -> path.toString().endsWith(".java")).toList()) {
                code.put(MAIN.relativize(file).toString().replace('\\', '/'), withoutComments(Files.readString(file)));
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return code;
    }

    static String withoutComments(String source) {
        return source.replaceAll(
                "(?s)(\"\"\".*?\"\"\"|\"(?:\\\\.|[^\"\\\\\n])*\"|'(?:\\\\.|[^'\\\\\n])+')|/\\*.*?\\*/|//[^\n]*", "$1");
    }

    /** What stands between quotes in a source without comments, text blocks among it, each text on a line of its own. */
    static String texts(String code) {
        return TEXT.matcher(code)
                .results()
                .map(MatchResult::group)
                .filter(text -> text.startsWith("\""))
                .map(text -> text.startsWith("\"\"\"")
                        ? text.substring(3, text.length() - 3)
                        : text.substring(1, text.length() - 1))
                .collect(Collectors.joining("\n"));
    }

    /** The room that a file or a class stands in. */
    static String room(String file) {
        return file.substring(0, file.indexOf('/'));
    }
}
