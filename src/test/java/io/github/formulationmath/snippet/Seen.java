package io.github.formulationmath.snippet;

import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.Callable;

/** What the statements of a snippet gave, by their number. The compiled snippets write into it. */
public final class Seen {

    private final Map<Integer, Object> values = new TreeMap<>();

    /** A statement without a value. */
    @FunctionalInterface
    public interface Action {
        /** Runs it. */
        void run() throws Exception;
    }

    /** Keeps the value of a statement. */
    public void take(int statement, Callable<?> expression) throws Exception {
        Object value = expression.call();
        values.put(
                statement,
                value instanceof Optional<?> some ? some.map(Object.class::cast).orElse("nothing") : value);
    }

    /** Runs a statement that gives nothing. */
    public void take(int statement, Action action) throws Exception {
        action.run();
    }

    /** The value of a statement, what an Optional holds, or null. */
    public Object valueOf(int statement) {
        return values.get(statement);
    }

    /** The value of the last statement that had one, or null. */
    public Object last() {
        return values.isEmpty()
                ? null
                : ((TreeMap<Integer, Object>) values).lastEntry().getValue();
    }
}
