package io.github.formulationmath.chemistry;

import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.reckoning.Subject;
import java.io.Serial;
import java.io.Serializable;
import java.util.Collections;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * How many atoms of which elements make up one unit of a substance: {@code C7H5NaO2}, {@code Ca(C7H5O2)2}, or with water
 * of crystallisation {@code CuSO4·5H2O}.
 *
 * <p>Written with element symbols, whole counts, round brackets, and parts joined by a middle dot (U+00B7) or a full
 * stop. A part may begin with its own count, which may be broken: {@code CaSO4·0.5H2O}.
 *
 * <p>Example: {@code MolecularFormula.parse("CuSO4.5H2O").count("H")} is 10.
 *
 * <p>Charges, isotopes and structures are not read. {@code equals} means the same atoms, however written. Immutable and
 * thread-safe.
 */
public final class MolecularFormula implements Subject, Serializable {

    @Serial
    private static final long serialVersionUID = 1L;

    private final String text;
    private final Map<String, Ratio> counts;

    MolecularFormula(String text, Map<String, Ratio> counts) {
        this.text = text;
        this.counts = new TreeMap<>(counts);
    }

    /**
     * Reads a formula.
     *
     * @param text the formula; all of it must be understood
     * @return the formula, kept as written
     * @throws IllegalArgumentException if the text is no such formula; the message says where
     */
    public static MolecularFormula parse(String text) {
        Objects.requireNonNull(text, "text");
        String stripped = text.strip();
        return new MolecularFormula(stripped, new MolecularFormulaText(stripped).read());
    }

    /**
     * The elements with their counts, in alphabetical order of their symbols.
     *
     * @return an unmodifiable map from symbol to count, every count above 0
     */
    public Map<String, Ratio> counts() {
        return Collections.unmodifiableMap(counts);
    }

    /**
     * How many atoms of one element there are.
     *
     * @param element the symbol of the element, for example {@code Na}
     * @return the count; empty if the element does not occur
     */
    public Optional<Ratio> count(String element) {
        return Optional.ofNullable(counts.get(Objects.requireNonNull(element, "element")));
    }

    /** The atoms without brackets and dots, which mean something else beside a symbol: {@code CuH10O9S}. */
    @Override
    public String subscript() {
        StringBuilder atoms = new StringBuilder();
        counts.forEach((element, count) -> atoms.append(element).append(count.equals(Ratio.ONE) ? "" : count));
        return atoms.toString();
    }

    @Override
    public String name() {
        return text;
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof MolecularFormula that && counts.equals(that.counts);
    }

    @Override
    public int hashCode() {
        return counts.hashCode();
    }

    /** The formula as written; {@link #parse(String)} reads it again. */
    @Override
    public String toString() {
        return text;
    }
}
