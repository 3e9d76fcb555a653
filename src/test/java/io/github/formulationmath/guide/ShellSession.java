package io.github.formulationmath.guide;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import jdk.jshell.tool.JavaShellToolBuilder;

/** What JShell says to the lines that a page shows, in one session with the startup file of the documentation. */
final class ShellSession {

    static final String PROMPT = "jshell> ";

    private static final Path STARTUP = GuidePages.DOCS.resolve("formulation-math.jsh");

    /** What JShell prints instead of a prompt when prompts are captured. */
    private static final String CAPTURED = "\u0005";

    private ShellSession() {}

    /** What the prompt shows for each block of a page, prompts and answers, as the page must show it. */
    static List<List<String>> of(List<Fence> blocks) throws Exception {
        List<String> inputs =
                blocks.stream().flatMap(block -> inputs(block).stream()).toList();
        List<String> answers = answers(inputs, classPath());
        List<List<String>> shown = new ArrayList<>();
        int next = 0;
        for (Fence block : blocks) {
            List<String> lines = new ArrayList<>();
            for (String input : inputs(block)) {
                lines.add(PROMPT + input);
                lines.addAll(answer(input, answers.get(next++)));
            }
            shown.add(lines);
        }
        return shown;
    }

    /** Types what blocks of a page show and one line more, against another class path; what is answered is not looked at. */
    static void run(List<Fence> blocks, String classPath, String last) throws Exception {
        List<String> inputs = new ArrayList<>();
        blocks.forEach(block -> inputs.addAll(inputs(block)));
        inputs.add(last);
        answers(inputs, classPath);
    }

    /** Without the echo of what was typed and the lines that say where in the library an exception was thrown. */
    private static List<String> answer(String input, String printed) {
        return printed.strip()
                .lines()
                .filter(line -> !line.equals(input) && !line.startsWith("|        at "))
                .toList();
    }

    private static List<String> inputs(Fence block) {
        return block.content().stream()
                .filter(line -> line.startsWith(PROMPT))
                .map(line -> line.substring(PROMPT.length()))
                .toList();
    }

    private static List<String> answers(List<String> inputs, String classPath) throws Exception {
        String typed = String.join("\n", inputs) + "\n/exit 0\n";
        ByteArrayOutputStream printed = new ByteArrayOutputStream();
        Map<String, String> preferences = new HashMap<>();
        JavaShellToolBuilder.builder()
                .in(new ByteArrayInputStream(typed.getBytes(StandardCharsets.UTF_8)), null)
                .out(new PrintStream(printed, true, StandardCharsets.UTF_8))
                .persistence(preferences)
                .locale(Locale.ROOT)
                .promptCapture(true)
                .run(
                        "-R-Dfile.encoding=UTF-8",
                        "--class-path",
                        classPath,
                        "--startup",
                        "DEFAULT",
                        "--startup",
                        STARTUP.toString());
        String[] parts =
                printed.toString(StandardCharsets.UTF_8).replace("\r\n", "\n").split(CAPTURED, -1);
        if (parts.length < inputs.size() + 2) {
            throw new AssertionError("JShell answered " + (parts.length - 2) + " of " + inputs.size() + " lines:\n"
                    + String.join("\n", parts));
        }
        return List.of(parts).subList(1, inputs.size() + 1);
    }

    static String classPath() {
        return System.getProperty("surefire.test.class.path", System.getProperty("java.class.path"));
    }
}
