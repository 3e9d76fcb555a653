package io.github.formulationmath.formula;

import java.io.Serializable;
import java.util.List;
import java.util.Objects;

/**
 * Lines that are made together, in order: the water phase, the oil phase, the cool-down. Got from {@link Formula#phases()}.
 *
 * @param name the name, unique in its formula
 * @param lines the lines in order, at least one; unmodifiable
 */
public record Phase(String name, List<FormulaLine> lines) implements Serializable {

    /**
     * Keeps its own copy of the list.
     *
     * @param name the name
     * @param lines the lines
     * @throws IllegalArgumentException if the name is blank
     */
    public Phase {
        SubstanceName.require("name", name);
        lines = List.copyOf(Objects.requireNonNull(lines, "lines"));
    }

    @Override
    public String toString() {
        return name + " " + lines;
    }
}
