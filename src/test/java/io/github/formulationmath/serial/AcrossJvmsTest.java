package io.github.formulationmath.serial;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * What a JVM of one release writes, another reads: from the oldest to the newest JDK that stand beside the one that runs the
 * tests, and back, in other languages and time zones. With one JDK alone the test is skipped, and says so.
 */
class AcrossJvmsTest {

    private static final Pattern RELEASE = Pattern.compile("JAVA_VERSION=\"(\\d+).*", Pattern.DOTALL);

    @TempDir
    private static Path folder;

    private record Jdk(Path home, int release) {}

    @Test
    void from_the_oldest_to_the_newest_and_back() throws Exception {
        List<Jdk> jdks = jdks();
        assumeTrue(
                jdks.size() > 1,
                "there is only one JDK beside " + System.getProperty("java.home") + ": nothing to compare");
        Jdk oldest = jdks.get(0);
        Jdk newest = jdks.get(jdks.size() - 1);
        Path there = folder.resolve("oldest.ser");
        Path back = folder.resolve("newest.ser");
        run(oldest, "tr", "Asia/Kathmandu", "write", there);
        run(newest, "ar", "America/St_Johns", "read", there);
        run(newest, "de", "UTC", "write", back);
        run(oldest, "hi", "Pacific/Kiritimati", "read", back);
    }

    private static void run(Jdk jdk, String language, String zone, String what, Path file)
            throws IOException, InterruptedException {
        Process process = new ProcessBuilder(
                        jdk.home().resolve("bin").resolve("java").toString(),
                        "-Duser.language=" + language,
                        "-Duser.timezone=" + zone,
                        "-cp",
                        classPath(),
                        SerialMain.class.getName(),
                        what,
                        file.toString())
                .redirectErrorStream(true)
                .start();
        String output = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(process.waitFor()).as(output).isZero();
        assertThat(output).contains(what + " on " + jdk.release());
    }

    private static String classPath() {
        return System.getProperty("surefire.test.class.path", System.getProperty("java.class.path"));
    }

    /** The JDKs of release 17 or newer in the folder that holds the running one, oldest first, one for each release. */
    private static List<Jdk> jdks() throws IOException {
        Path running = Path.of(System.getProperty("java.home")).toRealPath();
        try (Stream<Path> beside = Files.list(running.getParent())) {
            return beside
                    .flatMap(home -> jdk(home).stream())
                    .filter(jdk -> jdk.release() >= 17)
                    .collect(Collectors.toMap(Jdk::release, jdk -> jdk, (first, second) -> first))
                    .values()
                    .stream()
                    .sorted(Comparator.comparingInt(Jdk::release))
                    .toList();
        }
    }

    private static Optional<Jdk> jdk(Path home) {
        File java = home.resolve("bin").resolve("java").toFile();
        Path release = home.resolve("release");
        if (!java.canExecute() || !Files.isRegularFile(release)) {
            return Optional.empty();
        }
        try (Stream<String> lines = Files.lines(release)) {
            return lines.map(RELEASE::matcher)
                    .filter(Matcher::matches)
                    .map(found -> new Jdk(home, Integer.parseInt(found.group(1))))
                    .findFirst();
        } catch (IOException e) {
            return Optional.empty();
        }
    }
}
