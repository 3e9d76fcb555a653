package io.github.formulationmath.json;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What shows only in a JVM of its own: a class path without Jackson, and a small heap. */
final class OwnJvmTest {

    @ParameterizedTest
    @ValueSource(strings = {"0", "2", "5", "7"})
    void everything_but_reading_json_works_without_jackson_and_that_says_what_is_missing(String first)
            throws Exception {
        String classPath = Arrays.stream(System.getProperty("java.class.path").split(File.pathSeparator))
                .filter(entry -> !entry.contains("jackson"))
                .collect(Collectors.joining(File.pathSeparator));
        String output = run(classPath, "-Xmx128m", WithoutJackson.class, first);
        assertThat(output).contains("made 400.3 g, MENDED");
        assertThat(output.lines().filter(line -> line.startsWith("refused: ")))
                .hasSize(4)
                .allMatch(line -> line.contains("add the dependency com.fasterxml.jackson.core:jackson-core"));
        assertThat(output.lines().filter(line -> line.startsWith("worked: "))).hasSize(5);
    }

    @Test
    void a_document_of_a_hundred_megabytes_is_refused_in_a_heap_of_96() throws Exception {
        assertThat(run(System.getProperty("java.class.path"), "-Xmx96m", LargeDocument.class))
                .contains("refused: the document: it is not JSON that can be read")
                .contains("exceeds the maximum allowed");
    }

    private static String run(String classPath, String heap, Class<?> main, String... arguments)
            throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                heap,
                "-cp",
                classPath,
                main.getName()));
        command.addAll(List.of(arguments));
        Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
        String output = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(process.waitFor()).as(output).isZero();
        return output;
    }
}
