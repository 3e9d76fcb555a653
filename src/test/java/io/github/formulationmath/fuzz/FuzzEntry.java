package io.github.formulationmath.fuzz;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** What the fuzzer calls: one target in each process, named by the first argument. */
public final class FuzzEntry {

    private static FuzzTarget target = FuzzTarget.RATIO;

    private FuzzEntry() {}

    /** Chooses the target and reads the kept corpus once, so that no text is blamed for the time it takes to load classes. */
    public static void fuzzerInitialize(String[] arguments) throws IOException {
        target = FuzzTarget.valueOf(arguments[0]);
        for (Path file : Corpus.filesOf(target)) {
            target.read(Corpus.text(Files.readAllBytes(file)));
        }
    }

    /** Tries one text. */
    public static void fuzzerTestOneInput(byte[] input) {
        target.read(Corpus.text(input));
    }
}
