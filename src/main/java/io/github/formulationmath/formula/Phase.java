package io.github.formulationmath.formula;

import java.io.Serial;
import java.io.Serializable;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * Lines that are made together, in order: the water phase, the oil phase, the cool-down.
 *
 * <p>Immutable and thread-safe.
 */
public final class Phase implements Serializable {

    @Serial
    private static final long serialVersionUID = 1L;

    private final String name;
    private final List<FormulaLine> lines;

    Phase(String name, List<FormulaLine> lines) {
        this.name = name;
        this.lines = List.copyOf(lines);
    }

    /**
     * The name.
     *
     * @return the name, unique in its formula
     */
    public String name() {
        return name;
    }

    /**
     * The lines in order.
     *
     * @return an unmodifiable list of at least one line
     */
    public List<FormulaLine> lines() {
        return lines;
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Phase that && name.equals(that.name) && lines.equals(that.lines);
    }

    @Override
    public int hashCode() {
        return Objects.hash(name, lines);
    }

    @Override
    public String toString() {
        return name + " " + lines;
    }
}
