package io.github.formulationmath.guide;

import java.io.ByteArrayOutputStream;
import java.io.File;
import java.io.IOException;
import java.io.PrintStream;
import java.io.UncheckedIOException;
import java.net.MalformedURLException;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javax.tools.ToolProvider;

/**
 * Every working that the documentation asks for, and the working of every number that it touches: the pages run against the
 * library with two classes that remember what is made of them, and what was remembered is written into a folder, as
 * {@code page-17.json}, {@code .tex} and {@code .html}.
 */
public final class GuideWorkings {

    private static final Path RECKONING = Path.of("src/main/java/io/github/formulationmath/reckoning");

    /** More numbers are met in a loop over thousands of batch sizes, and tell nothing new. */
    private static final int MOST_OF_A_PAGE = 300;

    private static final String SEEN = "io.github.formulationmath.reckoning.Seen";

    private static final String SEEN_SOURCE = """
            package io.github.formulationmath.reckoning;

            import io.github.formulationmath.document.Format;
            import io.github.formulationmath.json.Json;
            import java.nio.file.Files;
            import java.nio.file.Path;
            import java.util.ArrayList;
            import java.util.LinkedHashMap;
            import java.util.LinkedHashSet;
            import java.util.List;
            import java.util.Map;
            import java.util.Set;

            public final class Seen {

                private static final Set<Origin> ORIGINS = new LinkedHashSet<>();
                private static final List<Working> WORKINGS = new ArrayList<>();
                private static boolean closed;

                static synchronized void see(Origin origin) {
                    if (!closed && ORIGINS.size() < MOST) {
                        ORIGINS.add(origin);
                    }
                }

                static synchronized void see(Working working) {
                    if (!closed) {
                        WORKINGS.add(working);
                    }
                }

                /** Writes what was seen, each working once, and forgets it. */
                public static synchronized int write(String folder, String page) throws Exception {
                    closed = true;
                    Map<String, Working> told = new LinkedHashMap<>();
                    for (Working working : WORKINGS) {
                        told.putIfAbsent(Json.ofWorking(working), working);
                    }
                    for (Origin origin : ORIGINS) {
                        Working working = origin.working();
                        told.putIfAbsent(Json.ofWorking(working), working);
                    }
                    int number = 0;
                    for (Map.Entry<String, Working> each : told.entrySet()) {
                        Path base = Path.of(folder, page + "-" + ++number);
                        Files.writeString(Path.of(base + ".json"), each.getKey());
                        document(base + ".tex", each.getValue(), Format.LATEX);
                        document(base + ".html", each.getValue(), Format.HTML);
                    }
                    ORIGINS.clear();
                    WORKINGS.clear();
                    closed = false;
                    return number;
                }

                private static void document(String file, Working working, Format format) throws Exception {
                    Files.writeString(Path.of(file), working.document(Style.everything()).print(format));
                }
            }
            """.replace("MOST)", MOST_OF_A_PAGE + ")");

    private GuideWorkings() {}

    /** Empties the folder, runs the pages, those for JShell too if asked, and gives the JSON files. */
    public static List<Path> into(Path folder, Path scratch, boolean shell) throws Exception {
        empty(folder);
        Path patched = patched(Files.createDirectories(scratch.resolve("patched")));
        List<PageSource> pages =
                GuidePages.withJava().stream().map(PageSource::of).toList();
        Path classes = Files.createDirectories(scratch.resolve("pages"));
        PageCompiler.compile(pages, classes);
        for (PageSource page : pages) {
            run(page, List.of(patched, classes), folder);
        }
        if (shell) {
            for (GuidePage page : GuidePages.all()) {
                type(page, patched, folder);
            }
        }
        return files(folder, ".json");
    }

    private static void type(GuidePage page, Path patched, Path folder) throws Exception {
        List<Fence> blocks = page.in("jshell");
        if (!blocks.isEmpty()) {
            String write = SEEN + ".write(\"" + folder.toAbsolutePath() + "\", \"jshell_" + name(page) + "\")";
            ShellSession.run(blocks, patched + File.pathSeparator + ShellSession.classPath(), write);
        }
    }

    static List<Path> files(Path folder, String ending) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(file -> file.toString().endsWith(ending))
                    .sorted()
                    .toList();
        }
    }

    private static void empty(Path folder) throws IOException {
        Files.createDirectories(folder);
        try (Stream<Path> old = Files.list(folder)) {
            old.sorted(Comparator.reverseOrder()).forEach(GuideWorkings::delete);
        }
    }

    private static void delete(Path file) {
        try {
            Files.delete(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String name(GuidePage page) {
        return page.path().toString().replaceAll("\\W", "_");
    }

    /** Origin and Working as they are, and each new one is seen. */
    private static Path patched(Path to) throws IOException {
        Path sources = Files.createDirectories(to.resolve("source"));
        List<String> files = new ArrayList<>();
        files.add(source(sources, "Origin", "this.figure = figure;"));
        files.add(source(sources, "Working", "this.answer = answer;"));
        files.add(Files.writeString(sources.resolve("Seen.java"), SEEN_SOURCE).toString());
        Path classes = Files.createDirectories(to.resolve("classes"));
        List<String> arguments = new ArrayList<>(
                List.of("-nowarn", "-proc:none", "-d", classes.toString(), "-cp", ShellSession.classPath()));
        arguments.addAll(files);
        int status = Objects.requireNonNull(ToolProvider.getSystemJavaCompiler(), "a JDK is needed")
                .run(null, null, null, arguments.toArray(String[]::new));
        if (status != 0) {
            throw new AssertionError("the classes that remember do not compile");
        }
        return classes;
    }

    private static String source(Path to, String type, String last) throws IOException {
        String source = Files.readString(RECKONING.resolve(type + ".java"));
        if (source.split(Pattern.quote(last), -1).length != 2) {
            throw new AssertionError(type + " does not say once: " + last);
        }
        return Files.writeString(to.resolve(type + ".java"), source.replace(last, last + " Seen.see(this);"))
                .toString();
    }

    private static void run(PageSource page, List<Path> first, Path folder) throws Exception {
        List<URL> urls = new ArrayList<>();
        for (Path path : first) {
            urls.add(path.toUri().toURL());
        }
        for (String entry : ShellSession.classPath().split(File.pathSeparator)) {
            urls.add(url(entry));
        }
        PrintStream before = System.out;
        Thread thread = Thread.currentThread();
        ClassLoader own = thread.getContextClassLoader();
        try (URLClassLoader loader =
                new URLClassLoader(urls.toArray(URL[]::new), ClassLoader.getPlatformClassLoader())) {
            thread.setContextClassLoader(loader);
            System.setOut(new PrintStream(new ByteArrayOutputStream(), true, StandardCharsets.UTF_8));
            loader.loadClass(page.className()).getMethod("run").invoke(null);
            loader.loadClass(SEEN)
                    .getMethod("write", String.class, String.class)
                    .invoke(null, folder.toString(), name(page.page()));
        } finally {
            System.setOut(before);
            thread.setContextClassLoader(own);
        }
    }

    private static URL url(String entry) throws MalformedURLException {
        return Path.of(entry).toUri().toURL();
    }
}
