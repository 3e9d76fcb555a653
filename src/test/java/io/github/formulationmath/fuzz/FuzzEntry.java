package io.github.formulationmath.fuzz;

/** What the fuzzer calls: one target in each process, named by the first argument. */
public final class FuzzEntry {

    private static FuzzTarget target = FuzzTarget.RATIO;

    private FuzzEntry() {}

    /** Chooses the target. */
    public static void fuzzerInitialize(String[] arguments) {
        target = FuzzTarget.valueOf(arguments[0]);
    }

    /** Tries one text. */
    public static void fuzzerTestOneInput(byte[] input) {
        target.read(Corpus.text(input));
    }
}
