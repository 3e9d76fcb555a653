package io.github.formulationmath.guide;

import io.github.formulationmath.formula.Formula;
import java.io.IOException;
import java.io.StringWriter;
import java.net.URI;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.measure.Quantity;
import javax.tools.DiagnosticCollector;
import javax.tools.JavaCompiler;
import javax.tools.JavaFileObject;
import javax.tools.SimpleJavaFileObject;
import javax.tools.ToolProvider;

/** Compiles pages against the library and what its users get with it, and against nothing else. */
final class PageCompiler {

    private PageCompiler() {}

    /** Writes the classes of pages into a folder; a warning is an error. */
    static void compile(List<PageSource> pages, Path classes) {
        JavaCompiler compiler = Objects.requireNonNull(ToolProvider.getSystemJavaCompiler(), "a JDK is needed");
        List<String> packages = packages();
        DiagnosticCollector<JavaFileObject> found = new DiagnosticCollector<>();
        List<InMemory> sources = pages.stream()
                .map(page -> new InMemory(page.className(), page.source(packages)))
                .toList();
        List<String> options = List.of("-d", classes.toString(), "-cp", classPath(), "-Xlint:all", "-Werror");
        StringWriter log = new StringWriter();
        if (!compiler.getTask(log, null, found, options, null, sources).call()) {
            throw new AssertionError(found.getDiagnostics().stream()
                    .map(message -> message.getSource() + ": " + message.getMessage(Locale.ROOT) + "\n    "
                            + lineOf(message.getSource(), message.getLineNumber()))
                    .collect(Collectors.joining("\n", log + "\n", "")));
        }
    }

    private static String lineOf(JavaFileObject source, long line) {
        return source instanceof InMemory code && line > 0
                ? code.code.lines().skip(line - 1).findFirst().orElse("")
                : "";
    }

    static String classPath() {
        return Stream.of(Formula.class, Quantity.class)
                .map(PageCompiler::locationOf)
                .collect(Collectors.joining(System.getProperty("path.separator")));
    }

    private static String locationOf(Class<?> type) {
        try {
            return Path.of(type.getProtectionDomain()
                            .getCodeSource()
                            .getLocation()
                            .toURI())
                    .toString();
        } catch (URISyntaxException e) {
            throw new IllegalStateException(e);
        }
    }

    /** The packages that pages may use without saying so: the library's own and a few of the JDK. */
    static List<String> packages() {
        Path root = Path.of("src/main/java");
        try (Stream<Path> files = Files.walk(root)) {
            return Stream.concat(
                            Stream.of("java.util", "java.util.stream", "java.math", "javax.measure.quantity"),
                            files.filter(Files::isDirectory)
                                    .filter(PageCompiler::holdsTypes)
                                    .map(folder -> root.relativize(folder)
                                            .toString()
                                            .replace('/', '.')
                                            .replace('\\', '.'))
                                    .sorted())
                    .toList();
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }

    private static boolean holdsTypes(Path folder) {
        try (Stream<Path> files = Files.list(folder)) {
            return files.anyMatch(file -> file.toString().endsWith(".java"));
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }

    /** A source that is nowhere on disk. */
    private static final class InMemory extends SimpleJavaFileObject {

        private final String code;

        InMemory(String className, String code) {
            super(URI.create("page:///" + className + ".java"), Kind.SOURCE);
            this.code = code;
        }

        @Override
        public CharSequence getCharContent(boolean ignoreEncodingErrors) {
            return code;
        }
    }
}
