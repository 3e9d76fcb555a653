package io.github.formulationmath.snippet;

/** What became of a snippet. */
public sealed interface Outcome {

    /**
     * It ran to its end.
     *
     * @param seen the values of its statements
     */
    record Ran(Seen seen) implements Outcome {}

    /**
     * It ran and threw.
     *
     * @param thrown what it threw
     */
    record Threw(Throwable thrown) implements Outcome {}

    /**
     * It does not compile.
     *
     * @param why what the compiler says
     */
    record NotJava(String why) implements Outcome {}
}
