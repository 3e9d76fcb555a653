package io.github.formulationmath.oracle;

import java.util.ArrayList;
import java.util.List;

/**
 * The arithmetic found on a printed page, still as text.
 *
 * @param givens lines {@code label = value}, perhaps with {@code ≈ value}
 * @param steps for each step its lines joined: {@code label = symbols = numbers = result}, then the remark, if any
 * @param comparisons for each comparison its lines: symbols, numbers, values with the outcome
 * @param answer the lines of the answer joined
 */
record PrintedWorking(List<String> givens, List<Step> steps, List<List<String>> comparisons, String answer) {

    /**
     * A step as printed.
     *
     * @param chain its lines joined
     * @param remark the words after it; may be empty
     */
    record Step(String chain, String remark) {}

    /** Reads the plain text of a working in English. */
    static PrintedWorking fromText(String page) {
        return new TextReader().read(page);
    }

    /** Collects while a page is read. */
    static final class Builder {

        final List<String> givens = new ArrayList<>();
        final List<Step> steps = new ArrayList<>();
        final List<List<String>> comparisons = new ArrayList<>();
        String answer = "";

        /** Lines of one block: a comparison if the last one tells its outcome, a step otherwise. */
        void block(List<String> lines, String remark) {
            if (PrintedArithmetic.isOutcome(lines.get(lines.size() - 1))) {
                comparisons.add(List.copyOf(lines));
            } else {
                steps.add(new Step(String.join(" ", lines), remark));
            }
        }

        PrintedWorking build() {
            return new PrintedWorking(List.copyOf(givens), List.copyOf(steps), List.copyOf(comparisons), answer);
        }
    }
}
