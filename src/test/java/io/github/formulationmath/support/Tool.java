package io.github.formulationmath.support;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.File;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.TimeUnit;

/**
 * A program of the machine. A test that needs one is skipped where it is missing, but with {@code
 * -Dformulationmath.tools=required}, as {@code .ci/run} says it, it fails there.
 */
public final class Tool {

    private static final boolean REQUIRED = "required".equals(System.getProperty("formulationmath.tools"));

    private static final Map<String, Optional<Tool>> KNOWN = new ConcurrentHashMap<>();

    private final Path program;

    private Tool(Path program) {
        this.program = program;
    }

    /** Whether a missing tool is a failure. */
    public static boolean areRequired() {
        return REQUIRED;
    }

    /** The program; without it the test ends here, as a failure if tools are required. */
    public static Tool of(String name) {
        Optional<Tool> found = KNOWN.computeIfAbsent(name, Tool::find);
        if (REQUIRED) {
            assertThat(found).as("the program " + name).isPresent();
        }
        assumeTrue(found.isPresent(), name + " is not there");
        return found.orElseThrow();
    }

    /** On the path, and willing to start. */
    private static Optional<Tool> find(String name) {
        return Arrays.stream(System.getenv().getOrDefault("PATH", "").split(File.pathSeparator))
                .map(folder -> Path.of(folder, name))
                .filter(Files::isExecutable)
                .map(Tool::new)
                .filter(Tool::starts)
                .findFirst();
    }

    private boolean starts() {
        try {
            return run(List.of("--version")).status() == 0;
        } catch (UncheckedIOException e) {
            return false;
        }
    }

    /** What a program printed, and its exit status. */
    public record Run(String output, int status) {}

    /** Runs the program; it has ten minutes. */
    public Run run(List<String> arguments) {
        List<String> command = new ArrayList<>(List.of(program.toString()));
        command.addAll(arguments);
        try {
            Path output = Files.createTempFile("tool", ".txt");
            Process process = new ProcessBuilder(command)
                    .redirectErrorStream(true)
                    .redirectOutput(output.toFile())
                    .start();
            boolean ended = process.waitFor(10, TimeUnit.MINUTES);
            process.destroyForcibly();
            String printed = Files.readString(output, StandardCharsets.UTF_8);
            Files.delete(output);
            assertThat(ended).as(command.get(0) + " goes on and on").isTrue();
            return new Run(printed, process.exitValue());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (InterruptedException e) {
            throw new IllegalStateException(e);
        }
    }
}
