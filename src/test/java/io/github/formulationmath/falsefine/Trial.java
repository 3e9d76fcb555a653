package io.github.formulationmath.falsefine;

import java.util.Optional;
import java.util.function.Function;

/**
 * Cases made from seeds, each proved first and judged then.
 *
 * @param <C> the cases
 */
final class Trial<C extends Proven> {

    private final String name;
    private final long seed;
    private final int plain;
    private final boolean fine;
    private final Function<Dice, C> generator;
    private final Judge<C> library;

    private Trial(String name, long seed, int plain, boolean fine, Function<Dice, C> generator, Judge<C> library) {
        this.name = name;
        this.seed = seed;
        this.plain = plain;
        this.fine = fine;
        this.generator = generator;
        this.library = library;
    }

    /** Wrong cases, none of which may be called fine. */
    static <C extends Proven> Trial<C> ofWrong(
            String name, long seed, int plain, Function<Dice, C> generator, Judge<C> library) {
        return new Trial<>(name, seed, plain, false, generator, library);
    }

    /** Right cases, all of which must be called fine. */
    static <C extends Proven> Trial<C> ofRight(
            String name, long seed, int plain, Function<Dice, C> generator, Judge<C> library) {
        return new Trial<>(name, seed, plain, true, generator, library);
    }

    /** How many cases the plain build tries. */
    int plain() {
        return plain;
    }

    boolean isOfWrong() {
        return !fine;
    }

    /** Tries the library on all cases, and fails if a single one is judged falsely or most are not judged at all. */
    void demand() {
        Result result = told();
        if (result.failures() > 0 || 2 * result.refused() > result.cases()) {
            throw new AssertionError(result.toString());
        }
    }

    /** Tries the library on all cases, and fails if a single one is judged falsely; refusing is an answer. */
    void demandNoneTaken() {
        Result result = told();
        if (result.failures() > 0) {
            throw new AssertionError(result.toString());
        }
    }

    /** Tries the library on all cases, and fails if a single one is not refused. */
    void demandRefusal() {
        Result result = told();
        if (result.failures() > 0 || result.refused() < result.cases()) {
            throw new AssertionError(result.toString());
        }
    }

    private Result told() {
        Result result = run(library, Cases.of(plain));
        if (Boolean.getBoolean(Cases.PROPERTY + ".print")) {
            System.out.println(result);
        }
        return result;
    }

    /** Tries another judge on the cases of the plain build. */
    Result run(Judge<C> judge) {
        return run(judge, plain);
    }

    private Result run(Judge<C> judge, int cases) {
        int refused = 0;
        int failures = 0;
        Optional<String> first = Optional.empty();
        for (int i = 0; i < cases; i++) {
            C made = generator.apply(new Dice(seed + i));
            if (!made.holds()) {
                throw new AssertionError(name + ", seed " + (seed + i) + ": not proved: " + made);
            }
            boolean called;
            try {
                called = judge.callsFine(made);
            } catch (IllegalArgumentException e) {
                called = false;
                refused++;
                if (fine) {
                    first = first.or(() -> Optional.of("refused, " + e.getMessage() + ": " + made));
                }
            }
            if (called != fine) {
                failures++;
                if (first.isEmpty()) {
                    first = Optional.of("seed " + (seed + i) + ": " + made);
                }
            }
        }
        return new Result(name, cases, refused, failures, first);
    }

    @Override
    public String toString() {
        return name;
    }

    /** What came of a trial. */
    record Result(String name, int cases, int refused, int failures, Optional<String> first) {

        @Override
        public String toString() {
            return name + ": " + failures + " of " + cases + " judged falsely, " + refused + " refused"
                    + first.map(it -> "; the first: " + it).orElse("");
        }
    }
}
