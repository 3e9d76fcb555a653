package io.github.formulationmath.fuzz;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * Fuzzes every target in turn, each in a process of its own that stops at the first text on which a reader crashes, hangs,
 * fills the memory, or throws what it does not document.
 *
 * <p>New texts that reach new code go to {@code target/fuzz/…/corpus}, a text that breaks a reader to {@code
 * target/fuzz/…/broken-…}: it belongs into the kept corpus, beside its correction.
 */
public final class FuzzRun {

    private static final Path OUTPUT = Path.of("target/fuzz").toAbsolutePath();

    private FuzzRun() {}

    /** Arguments: the seconds for all targets together, and the names of targets if not all. */
    public static void main(String[] arguments) throws IOException, InterruptedException {
        List<FuzzTarget> targets = new ArrayList<>();
        for (int i = 1; i < arguments.length; i++) {
            targets.add(FuzzTarget.valueOf(arguments[i]));
        }
        if (targets.isEmpty()) {
            targets.addAll(List.of(FuzzTarget.values()));
        }
        long secondsEach = Math.max(1, Long.parseLong(arguments[0]) / targets.size() + 1);
        List<FuzzTarget> broken = new ArrayList<>();
        for (FuzzTarget target : targets) {
            System.out.println("== " + target + " for " + secondsEach + " s");
            if (fuzz(target, secondsEach) != 0) {
                broken.add(target);
            }
        }
        System.out.println(broken.isEmpty() ? "== nothing broke" : "== broken: " + broken + ", see " + OUTPUT);
        if (!broken.isEmpty()) {
            System.exit(1);
        }
    }

    private static int fuzz(FuzzTarget target, long seconds) throws IOException, InterruptedException {
        Path folder = OUTPUT.resolve(target.folder());
        Path corpus = Files.createDirectories(folder.resolve("corpus"));
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Xmx900m",
                "-cp",
                System.getProperty("java.class.path"),
                "com.code_intelligence.jazzer.Jazzer",
                "--target_class=" + FuzzEntry.class.getName(),
                "--target_args=" + target.name(),
                "--instrumentation_includes=io.github.formulationmath.**",
                "--custom_hook_includes=io.github.formulationmath.**",
                "--reproducer_path=" + folder,
                "-artifact_prefix=" + folder + File.separator + "broken-",
                "-max_total_time=" + seconds,
                "-timeout=10",
                "-rss_limit_mb=3000",
                "-max_len=4096",
                "-seed=1",
                "-print_final_stats=1",
                corpus.toString(),
                Corpus.ROOT.resolve(target.folder()).toAbsolutePath().toString()));
        return new ProcessBuilder(command).inheritIO().start().waitFor();
    }
}
