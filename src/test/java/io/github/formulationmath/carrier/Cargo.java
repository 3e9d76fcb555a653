package io.github.formulationmath.carrier;

import io.github.formulationmath.snippet.Outcome;
import io.github.formulationmath.snippet.Snippet;
import io.github.formulationmath.snippet.SnippetCompiler;
import io.github.formulationmath.support.TextTable;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * A value to be carried.
 *
 * @param name what it is
 * @param outcome what became of making it
 */
record Cargo(String name, Outcome outcome) {

    private static final Path VALUES = Path.of("src", "test", "resources", "carriers", "values.txt");

    /** Every value of the table. */
    static List<Cargo> all() {
        List<String> names = new ArrayList<>();
        List<Snippet> snippets = new ArrayList<>();
        for (String line : TextTable.rows(VALUES)) {
            int colon = line.indexOf(": ");
            names.add(line.substring(0, colon));
            snippets.add(Snippet.of(line, List.of(), line.substring(colon + 2)));
        }
        List<Outcome> outcomes = SnippetCompiler.outcomes(snippets);
        return IntStream.range(0, names.size())
                .mapToObj(i -> new Cargo(names.get(i), outcomes.get(i)))
                .toList();
    }

    Object value() {
        if (outcome instanceof Outcome.Ran ran) {
            return ran.seen().last();
        }
        throw new AssertionError(VALUES + ": " + name + ": " + outcome);
    }
}
