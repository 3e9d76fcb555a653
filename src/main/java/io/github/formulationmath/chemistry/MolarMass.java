package io.github.formulationmath.chemistry;

import io.github.formulationmath.number.Bounds;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.reckoning.Explained;
import io.github.formulationmath.reckoning.Kind;
import io.github.formulationmath.reckoning.Origin;
import io.github.formulationmath.reckoning.Phrase;
import io.github.formulationmath.reckoning.Reckoning;
import io.github.formulationmath.reckoning.Subject;
import io.github.formulationmath.reckoning.Symbol;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * The mass of one mole of a substance: {@code M = Σ n · A} over its elements, with n the count of atoms and A the atomic
 * mass.
 *
 * <p>Example: benzoic acid, C7H6O2, has 7 · 12.0107 + 6 · 1.00794 + 2 · 15.9994 = 122.12134 g/mol.
 *
 * <p>Immutable and thread-safe.
 *
 * @param formula the molecular formula of the substance
 * @param atoms the atomic masses, of every element in it
 */
public record MolarMass(MolecularFormula formula, AtomicMasses atoms) implements Explained, Serializable {

    private static final Symbol ATOMIC_MASS = Symbol.of("A", "atomic-mass", Kind.MOLAR_MASS);
    private static final Symbol MOLAR_MASS = Symbol.of("M", "molar-mass", Kind.MOLAR_MASS);

    /**
     * Looks every element up.
     *
     * @param formula the molecular formula of the substance
     * @param atoms the atomic masses
     * @throws IllegalArgumentException if an element has no atomic mass
     */
    public MolarMass {
        Objects.requireNonNull(formula, "formula");
        Objects.requireNonNull(atoms, "atoms");
        formula.counts().keySet().forEach(atoms::massOf);
    }

    /**
     * The molar mass of a substance, from the atomic masses that come with the library.
     *
     * @param formula its molecular formula
     * @return the molar mass
     * @throws IllegalArgumentException if an element has no atomic mass
     */
    public static MolarMass of(MolecularFormula formula) {
        return of(formula, AtomicMasses.iupac2007());
    }

    /**
     * The molar mass of a substance, from atomic masses of one's choice.
     *
     * @param formula its molecular formula
     * @param atoms the atomic masses
     * @return the molar mass
     * @throws IllegalArgumentException if an element has no atomic mass
     */
    public static MolarMass of(MolecularFormula formula, AtomicMasses atoms) {
        return new MolarMass(formula, atoms);
    }

    /** The same formula and the same atomic masses. */
    @Override
    public boolean equals(@Nullable Object other) {
        return other == this
                || other instanceof MolarMass that && formula.equals(that.formula) && atoms.equals(that.atoms);
    }

    @Override
    public int hashCode() {
        return formula.hashCode();
    }

    /**
     * The molar mass as a bare number.
     *
     * @return grams per mole, exact for the atomic masses used, above 0
     */
    public Ratio gramsPerMole() {
        return gramsPerMoleIn(Reckoning.plain());
    }

    /**
     * Where the molar mass lies, every atomic mass as far off as its uncertainty allows.
     *
     * @return grams per mole
     */
    public Bounds bounds() {
        Ratio least = Ratio.ZERO;
        Ratio greatest = Ratio.ZERO;
        for (Map.Entry<String, Ratio> part : formula.counts().entrySet()) {
            Bounds atom = atoms.boundsOf(part.getKey());
            least = least.plus(part.getValue().times(atom.lower().orElseThrow()));
            greatest = greatest.plus(part.getValue().times(atom.upper().orElseThrow()));
        }
        return Bounds.closed(least, greatest);
    }

    /** The molar mass. */
    @Override
    public Origin origin() {
        return Origin.of(
                mass -> Phrase.of("question.molar-mass", mass.formula.toString()),
                gramsPerMole(),
                this,
                MolarMass::gramsPerMoleIn);
    }

    private <V> V gramsPerMoleIn(Reckoning<V> r) {
        List<V> parts = new ArrayList<>(formula.counts().size());
        formula.counts().forEach((element, count) -> parts.add(part(r, element, count)));
        return r.named(MOLAR_MASS, formula, r.sum(parts));
    }

    private <V> V part(Reckoning<V> r, String element, Ratio count) {
        V mass = r.given(ATOMIC_MASS, Subject.of(element, element), atoms.massOf(element), atoms.source());
        return count.equals(Ratio.ONE) ? mass : r.product(r.literal(count), mass);
    }

    @Override
    public String toString() {
        return formula + ": " + gramsPerMole() + " g/mol";
    }
}
