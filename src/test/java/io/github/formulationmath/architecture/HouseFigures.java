package io.github.formulationmath.architecture;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Prints the figures of the house, as docs/architecture.md shows them: code lines without comments and blank lines, files
 * of each room, public types, members that take or give a bare number, and the types of the library that each of the five
 * paths loads. Run from the top of the project after {@code mvn test-compile}.
 */
public final class HouseFigures {

    private static final Path MAIN = Path.of("src", "main", "java", "io", "github", "formulationmath");
    private static final Path SIGNATURE = Path.of("src", "build", "api-signature.txt");

    /** Outside the rooms where numbers live, a member that shows one of these says no unit. */
    private static final Pattern BARE = Pattern.compile(
            "\\b(io\\.github\\.formulationmath\\.number\\.(Ratio|Bounds)|double|long|int"
                    + "|java\\.math\\.BigDecimal|java\\.lang\\.(Integer|Long|Double)|java\\.util\\.Optional(Int|Long|Double))\\b");

    private static final Set<String> ROOMS_OF_NUMBERS = Set.of("number", "working", "reckoning");

    private HouseFigures() {}

    /**
     * Prints the figures.
     *
     * @param args not used
     * @throws IOException if a file cannot be read
     * @throws InterruptedException if a path is interrupted
     */
    public static void main(String[] args) throws IOException, InterruptedException {
        Map<String, Integer> files = new TreeMap<>();
        Map<String, Integer> lines = new TreeMap<>();
        codeLinesByFile().forEach((file, count) -> {
            String room = file.substring(0, file.indexOf('/'));
            files.merge(room, 1, Integer::sum);
            lines.merge(room, count, Integer::sum);
        });
        files.forEach((room, count) -> say("%-14s %3d files %6d code lines", room, count, lines.get(room)));
        say("code lines without comments: %d", sum(lines));
        say(
                "files: %d, largest room: %d",
                sum(files), files.values().stream().max(Integer::compare).orElseThrow());
        signature();
        String[] paths = {"text to reading", "smallest closed batch", "verdict", "repair", "working to page"};
        for (int i = 0; i < paths.length; i++) {
            Set<String> loaded = typesLoaded(Integer.toString(i + 1));
            long outer = loaded.stream().filter(name -> !name.contains("$")).count();
            say("types loaded, %s: %d, and %d inside them", paths[i], outer, loaded.size() - outer);
        }
    }

    /** Code lines by file, from the package of the library on. */
    static Map<String, Integer> codeLinesByFile() throws IOException {
        Map<String, Integer> lines = new TreeMap<>();
        try (Stream<Path> all = Files.walk(MAIN)) {
            for (Path file : all.filter(HouseFigures::isSource).toList()) {
                lines.put(MAIN.relativize(file).toString().replace('\\', '/'), codeLines(Files.readString(file)));
            }
        }
        return lines;
    }

    private static boolean isSource(Path file) {
        String name = file.getFileName().toString();
        return name.endsWith(".java") && !name.equals("package-info.java");
    }

    /** Lines that hold anything but comment and white space. */
    static int codeLines(String source) {
        String code = source.replaceAll(
                "(?s)(\"\"\".*?\"\"\"|\"(?:\\\\.|[^\"\\\\\n])*\"|'(?:\\\\.|[^'\\\\\n])+')|/\\*.*?\\*/|//[^\n]*", "$1");
        return (int) code.lines().filter(line -> !line.isBlank()).count();
    }

    private static void signature() throws IOException {
        List<String> results = new ArrayList<>();
        List<String> arguments = new ArrayList<>();
        Set<String> types = new TreeSet<>();
        for (String line : Files.readAllLines(SIGNATURE)) {
            String[] parts = line.split(" \\| ", 2);
            String room = parts[0].substring(Ladder.ROOT.length() + 1).split("\\.")[0];
            if (parts[1].matches("(class|interface|enum).*")) {
                types.add(parts[0]);
            } else if (!ROOMS_OF_NUMBERS.contains(room) && parts[1].contains("(")) {
                String shown = parts[1].replace("int hashCode()", "").replace("int compareTo(", "(");
                int open = shown.indexOf('(');
                if (open > 0 && BARE.matcher(shown.substring(0, open)).find()) {
                    results.add(line);
                } else if (open >= 0 && BARE.matcher(shown.substring(open)).find()) {
                    arguments.add(line);
                }
            }
        }
        say(
                "public types: %d, of them top-level: %d",
                types.size(), types.stream().filter(t -> !t.contains("$")).count());
        say("bare numbers: %d results, %d more lines with arguments", results.size(), arguments.size());
    }

    private static Set<String> typesLoaded(String path) throws IOException, InterruptedException {
        Process process = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-Xshare:auto",
                        "-Xlog:class+load:stdout",
                        "-cp",
                        System.getProperty("java.class.path"),
                        FivePaths.class.getName(),
                        path)
                .redirectErrorStream(true)
                .start();
        Set<String> loaded = new TreeSet<>();
        String output = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        if (process.waitFor() != 0) {
            throw new UncheckedIOException(new IOException(output.substring(Math.max(0, output.length() - 2_000))));
        }
        for (String line : output.split("\n")) {
            var name = Pattern.compile("(" + Ladder.ROOT.replace(".", "\\.") + "\\.[\\w.]+)((?:\\$\\w+)*) source: \\S+")
                    .matcher(line);
            if (name.find() && !name.group(1).startsWith(Ladder.ROOT + ".architecture")) {
                loaded.add(name.group(1));
                loaded.add(name.group(1) + name.group(2));
            }
        }
        return loaded;
    }

    private static int sum(Map<String, Integer> counts) {
        return counts.values().stream().mapToInt(Integer::intValue).sum();
    }

    private static void say(String text, Object... values) {
        System.out.println(String.format(Locale.ROOT, text, values));
    }
}
