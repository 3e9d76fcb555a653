package io.github.formulationmath.quantity;

import io.github.formulationmath.number.NumberTextException;
import java.util.List;
import java.util.Objects;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * Reads a text strictly and, if it is refused, says what to write instead. Nothing is proposed that the same reader has not
 * just taken.
 *
 * @param strict reads or refuses
 * @param proposals what a text may have meant; it need not be readable
 * @param examples readable texts, for one that does not show what was meant
 * @param <T> what is read
 */
record TextReader<T>(Function<String, T> strict, Function<String, Stream<String>> proposals, List<String> examples) {

    /** Longer texts are slips of a program, not of a person, and would fill the message. */
    private static final int LONGEST_REPAIRED = 60;

    private static final int MOST_REMEDIES = 3;

    /** Examples that are written with a decimal point, as they are read where the mark is another. */
    static List<String> withMark(List<String> examples, char decimalMark) {
        return decimalMark == '.'
                ? examples
                : examples.stream()
                        .map(example -> example.replace('.', decimalMark))
                        .toList();
    }

    T read(String text) {
        try {
            return strict.apply(text);
        } catch (NumberTextException e) {
            List<String> remedies = text.length() > LONGEST_REPAIRED
                    ? List.of()
                    : proposals
                            .apply(text)
                            .distinct()
                            .filter(this::takes)
                            .limit(MOST_REMEDIES)
                            .toList();
            throw remedies.isEmpty()
                    ? NumberTextException.withExamples(text, e.reason(), examples)
                    : new NumberTextException(text, e.reason(), remedies);
        }
    }

    private boolean takes(String text) {
        try {
            return Objects.nonNull(strict.apply(text));
        } catch (IllegalArgumentException e) {
            return false;
        }
    }
}
