package io.github.formulationmath.plan;

import java.util.List;
import java.util.Objects;

/** Lists that are refused, each by the name of the argument. */
public final class Arguments {

    private Arguments() {}

    /**
     * A copy of a list that must hold something.
     *
     * @param name the name of the argument
     * @param list the list
     * @param <T> what is in it
     * @return an unmodifiable copy
     * @throws IllegalArgumentException if the list is empty
     */
    public static <T> List<T> atLeastOne(String name, List<T> list) {
        List<T> copy = List.copyOf(Objects.requireNonNull(list, name));
        if (copy.isEmpty()) {
            throw new IllegalArgumentException(name + " is empty: at least one is needed");
        }
        return copy;
    }
}
