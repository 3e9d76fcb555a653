package io.github.formulationmath.record;

import io.github.formulationmath.formula.Formula;
import java.util.List;

/**
 * A formula as it was read, and the fields of the document that this version of the library does not know. They are not
 * part of the formula: writing it again would lose them.
 *
 * <p>Example: {@code JsonFormulas.read(json).formula()}.
 *
 * <p>Immutable and thread-safe.
 */
public final class ReadFormula {

    private final Formula formula;
    private final List<String> unknownFields;

    ReadFormula(Formula formula, List<String> unknownFields) {
        this.formula = formula;
        this.unknownFields = List.copyOf(unknownFields);
    }

    /**
     * The formula.
     *
     * @return the formula
     */
    public Formula formula() {
        return formula;
    }

    /**
     * Fields that were not understood.
     *
     * @return their JSON Pointers (RFC 6901) in the order of the document; empty if everything was understood
     */
    public List<String> unknownFields() {
        return unknownFields;
    }

    @Override
    public String toString() {
        return formula + (unknownFields.isEmpty() ? "" : ", not understood: " + unknownFields);
    }
}
