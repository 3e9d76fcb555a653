package io.github.formulationmath.planning;

import java.util.List;
import java.util.Objects;

/** Lists that are refused, each by the name of the argument. */
final class Arguments {

    private Arguments() {}

    /** An unmodifiable copy of a list that must hold something. */
    static <T> List<T> atLeastOne(String name, List<T> list) {
        List<T> copy = List.copyOf(Objects.requireNonNull(list, name));
        if (copy.isEmpty()) {
            throw new IllegalArgumentException(name + " is empty: at least one is needed");
        }
        return copy;
    }
}
