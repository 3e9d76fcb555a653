package io.github.formulationmath.snippet;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.lang.reflect.InvocationTargetException;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;
import javax.tools.DiagnosticCollector;
import javax.tools.FileObject;
import javax.tools.ForwardingJavaFileManager;
import javax.tools.JavaCompiler;
import javax.tools.JavaFileManager;
import javax.tools.JavaFileObject;
import javax.tools.SimpleJavaFileObject;
import javax.tools.StandardJavaFileManager;
import javax.tools.ToolProvider;

/**
 * Compiles all snippets in one go, in memory, and runs them. Each is a class of its own, which sees every package of the
 * library and the names of the setting (a formula, a balance, a plan …), so that one that does not compile keeps none of
 * the others from being run.
 */
public final class SnippetCompiler {

    static final String SETTING = "snippets.Setting";

    private static final Path SETTING_SOURCE = Path.of("src", "test", "resources", "snippets", "Setting.java");

    private SnippetCompiler() {}

    /** What became of each snippet, in order. */
    public static List<Outcome> outcomes(List<Snippet> snippets) {
        Map<String, String> sources = new LinkedHashMap<>();
        List<String> packages = packages();
        for (int i = 0; i < snippets.size(); i++) {
            sources.put("S" + i, snippets.get(i).source("S" + i, packages));
        }
        Map<String, String> refused = new HashMap<>();
        Map<String, byte[]> classes = compile(sources, packages, refused);
        if (!refused.isEmpty()) {
            sources.keySet().removeAll(refused.keySet());
            classes = compile(sources, packages, refused);
        }
        return run(snippets.size(), classes, refused);
    }

    private static List<Outcome> run(int count, Map<String, byte[]> classes, Map<String, String> refused) {
        ClassLoader loader = new Loader(classes);
        List<Outcome> outcomes = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            String why = refused.get("S" + i);
            outcomes.add(why == null ? run(loader, "S" + i) : new Outcome.NotJava(why));
        }
        return outcomes;
    }

    private static Outcome run(ClassLoader loader, String className) {
        Seen seen = new Seen();
        try {
            loader.loadClass(className).getMethod("run", Seen.class).invoke(null, seen);
            return new Outcome.Ran(seen);
        } catch (InvocationTargetException e) {
            return new Outcome.Threw(e.getCause());
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException(className, e);
        }
    }

    private static Map<String, byte[]> compile(
            Map<String, String> sources, List<String> packages, Map<String, String> refused) {
        JavaCompiler compiler = Objects.requireNonNull(ToolProvider.getSystemJavaCompiler(), "a JDK is needed");
        DiagnosticCollector<JavaFileObject> found = new DiagnosticCollector<>();
        List<JavaFileObject> files = new ArrayList<>();
        sources.forEach((name, code) -> files.add(new Source(name, code)));
        files.add(new Source("Setting", setting(packages)));
        List<String> options = List.of("-cp", classPath(), "-proc:none", "-implicit:none", "-XDcompilePolicy=simple");
        try (StandardJavaFileManager standard = compiler.getStandardFileManager(found, Locale.ROOT, null);
                Memory memory = new Memory(standard)) {
            compiler.getTask(null, memory, found, options, null, files).call();
            found.getDiagnostics().stream()
                    .filter(message -> message.getKind() == javax.tools.Diagnostic.Kind.ERROR)
                    .forEach(message -> refused.merge(
                            nameOf(message.getSource()), message.getMessage(Locale.ROOT), (a, b) -> a + "; " + b));
            if (refused.containsKey("Setting") || refused.containsKey("?")) {
                throw new AssertionError(SETTING_SOURCE + ": " + refused.get("Setting") + refused.get("?"));
            }
            return memory.classes();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String nameOf(JavaFileObject source) {
        return source instanceof Source snippet ? snippet.name : "?";
    }

    /** The names that every snippet may use without saying so. */
    private static String setting(List<String> packages) {
        try {
            String code = Files.readString(SETTING_SOURCE);
            StringBuilder imports = new StringBuilder("package snippets;\n");
            packages.forEach(name -> imports.append("import ").append(name).append(".*;\n"));
            return imports + code;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String classPath() {
        return System.getProperty("surefire.test.class.path", System.getProperty("java.class.path"));
    }

    /** The packages of the library and a few of the JDK. */
    private static List<String> packages() {
        Path root = Path.of("src", "main", "java");
        try (Stream<Path> files = Files.walk(root)) {
            return Stream.concat(
                            Stream.of(
                                    "java.util",
                                    "java.util.stream",
                                    "java.math",
                                    "java.time",
                                    "javax.measure.quantity"),
                            files.filter(file -> file.endsWith("package-info.java"))
                                    .map(file -> root.relativize(file.getParent())
                                            .toString()
                                            .replace('/', '.')
                                            .replace('\\', '.'))
                                    .sorted())
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static final class Source extends SimpleJavaFileObject {

        private final String name;
        private final String code;

        Source(String name, String code) {
            super(URI.create("snippet:///" + name + ".java"), Kind.SOURCE);
            this.name = name;
            this.code = code;
        }

        @Override
        public CharSequence getCharContent(boolean ignoreEncodingErrors) {
            return code;
        }
    }

    private static final class Compiled extends SimpleJavaFileObject {

        private final ByteArrayOutputStream bytes = new ByteArrayOutputStream();

        Compiled(String className) {
            super(URI.create("snippet:///" + className.replace('.', '/') + ".class"), Kind.CLASS);
        }

        @Override
        public OutputStream openOutputStream() {
            return bytes;
        }
    }

    private static final class Memory extends ForwardingJavaFileManager<StandardJavaFileManager> {

        private final Map<String, Compiled> written = new HashMap<>();

        Memory(StandardJavaFileManager standard) {
            super(standard);
        }

        @Override
        public JavaFileObject getJavaFileForOutput(
                JavaFileManager.Location location, String className, JavaFileObject.Kind kind, FileObject sibling) {
            return written.computeIfAbsent(className, Compiled::new);
        }

        Map<String, byte[]> classes() {
            Map<String, byte[]> classes = new HashMap<>();
            written.forEach((name, file) -> classes.put(name, file.bytes.toByteArray()));
            return classes;
        }
    }

    private static final class Loader extends ClassLoader {

        private final Map<String, byte[]> classes;

        Loader(Map<String, byte[]> classes) {
            super(Seen.class.getClassLoader());
            this.classes = classes;
        }

        @Override
        protected Class<?> findClass(String name) throws ClassNotFoundException {
            byte[] bytes = classes.get(name);
            if (bytes == null) {
                throw new ClassNotFoundException(name);
            }
            return defineClass(name, bytes, 0, bytes.length);
        }
    }
}
