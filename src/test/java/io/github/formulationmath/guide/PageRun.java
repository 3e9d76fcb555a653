package io.github.formulationmath.guide;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.lang.reflect.InvocationTargetException;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;

/** Runs a compiled page and tells what each of its blocks printed. */
final class PageRun {

    private PageRun() {}

    /** The outputs of the Java blocks of a page, in order. */
    static List<String> outputs(PageSource page, Path classes) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        PrintStream before = System.out;
        try (URLClassLoader loader =
                new URLClassLoader(new URL[] {classes.toUri().toURL()})) {
            System.setOut(new PrintStream(bytes, true, StandardCharsets.UTF_8));
            loader.loadClass(page.className()).getMethod("run").invoke(null);
        } catch (InvocationTargetException e) {
            throw new AssertionError(page.page() + " throws " + e.getCause(), e.getCause());
        } catch (ReflectiveOperationException | IOException e) {
            throw new IllegalStateException(page.describe(), e);
        } finally {
            System.setOut(before);
        }
        String printed = bytes.toString(StandardCharsets.UTF_8).replace("\r\n", "\n");
        List<String> parts = List.of(printed.split(String.valueOf(PageSource.MARK), -1));
        return parts.subList(1, parts.size());
    }
}
