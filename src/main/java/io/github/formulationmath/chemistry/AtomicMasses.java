package io.github.formulationmath.chemistry;

import io.github.formulationmath.csv.CsvFormat;
import io.github.formulationmath.csv.CsvRow;
import io.github.formulationmath.number.Bounds;
import io.github.formulationmath.number.Excerpt;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.reckoning.Source;
import java.io.Serializable;
import java.math.BigInteger;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * The standard atomic weights of one edition, as exact decimal numbers in grams per mole.
 *
 * <p>Which edition is used is always said: later ones give ranges for some elements, and factors "as acid" change by less
 * than one part in ten thousand. An element without a standard atomic weight is not in the table.
 *
 * <p>Example: {@code AtomicMasses.iupac2007().massOf("Na")} is 22.98976928.
 *
 * <p>Immutable and thread-safe.
 *
 * @param source where the values stand: the publication with its edition
 * @param masses the mass of every element in g/mol, by symbol, each above 0
 */
public record AtomicMasses(Source source, Map<String, Ratio> masses) implements Serializable {

    private static final CsvFormat TABLE = CsvFormat.of(List.of(
                    "symbol", "atomic_number", "name", "atomic_mass", "uncertainty_in_last_digits", "source", "tag"))
            .withCommentHead();

    /** What stands in brackets behind each mass of the bundled edition, by symbol. */
    private static final Map<String, Ratio> UNCERTAINTIES = new HashMap<>();

    private static final AtomicMasses IUPAC_2007 = bundled();

    /**
     * Keeps its own copy of the map.
     *
     * @param source where the values stand
     * @param masses the mass of every element in g/mol, by symbol
     * @throws IllegalArgumentException if there is no mass, or one is not above 0
     */
    public AtomicMasses {
        Objects.requireNonNull(source, "source");
        if (Objects.requireNonNull(masses, "masses").isEmpty()) {
            throw new IllegalArgumentException("masses is empty: give at least one element");
        }
        masses.forEach((symbol, mass) -> {
            if (mass.signum() <= 0) {
                throw new IllegalArgumentException(
                        "the mass of " + Excerpt.of(symbol) + " is " + Excerpt.of(mass) + " g/mol: it must be above 0");
            }
        });
        masses = Map.copyOf(masses);
    }

    /**
     * The edition that comes with the library.
     *
     * @return M. E. Wieser, M. Berglund, Atomic weights of the elements 2007 (IUPAC Technical Report), Pure Appl. Chem. 81
     *     (2009) 2131-2156, table 1
     */
    public static AtomicMasses iupac2007() {
        return IUPAC_2007;
    }

    /**
     * Another edition, or values of one's own.
     *
     * @param source where the values stand
     * @param masses the mass of every element in g/mol, by symbol
     * @return the masses
     * @throws IllegalArgumentException if there is none, or one is not above 0
     */
    public static AtomicMasses of(Source source, Map<String, Ratio> masses) {
        return new AtomicMasses(source, masses);
    }

    /**
     * The mass of one element.
     *
     * @param element the symbol, for example {@code Na}
     * @return the standard atomic weight in g/mol
     * @throws IllegalArgumentException if the table has no such element
     */
    public Ratio massOf(String element) {
        Ratio mass = masses.get(Objects.requireNonNull(element, "element"));
        if (mass == null) {
            throw new IllegalArgumentException("element is \"" + Excerpt.of(element) + "\": " + Excerpt.of(source)
                    + " has no atomic mass for it; look for a slip of the pen (Co is cobalt, CO carbon monoxide)");
        }
        return mass;
    }

    /**
     * Where the mass of one element lies: as far on both sides as the uncertainty that the edition prints beside it.
     *
     * @param element the symbol, for example {@code Na}
     * @return the bounds in g/mol; the mass itself for masses of one's own, which state no uncertainty
     * @throws IllegalArgumentException if the table has no such element
     */
    public Bounds boundsOf(String element) {
        Ratio mass = massOf(element);
        Ratio either = equals(IUPAC_2007) ? UNCERTAINTIES.getOrDefault(element, Ratio.ZERO) : Ratio.ZERO;
        return Bounds.closed(mass.minus(either), mass.plus(either));
    }

    /** The figure in brackets counts in the last digit of the mass: 12.0107(8) is 12.0107 ± 0.0008. */
    private static Ratio uncertainty(String mass, String lastDigits) {
        int decimals = mass.indexOf('.') < 0 ? 0 : mass.length() - mass.indexOf('.') - 1;
        return Ratio.parse(lastDigits).dividedBy(Ratio.of(BigInteger.TEN.pow(decimals)));
    }

    /** The same source and the same masses; the bundled edition, which nearly everybody uses, is one object. */
    @Override
    public boolean equals(@Nullable Object other) {
        return other == this
                || other instanceof AtomicMasses that && source.equals(that.source) && masses.equals(that.masses);
    }

    @Override
    public int hashCode() {
        return source.hashCode();
    }

    private static AtomicMasses bundled() {
        List<CsvRow> rows =
                TABLE.shipped(AtomicMasses.class, "atomic-masses.csv").rows();
        rows.forEach(row -> UNCERTAINTIES.put(
                row.required("symbol"),
                uncertainty(row.decimal("atomic_mass"), row.decimal("uncertainty_in_last_digits"))));
        Map<String, Ratio> masses = rows.stream()
                .collect(Collectors.toMap(
                        row -> row.required("symbol"), row -> Ratio.parse(row.decimal("atomic_mass"))));
        return of(
                Source.published(
                        "Atomic weights of the elements 2007 (IUPAC Technical Report),"
                                + " Pure Appl. Chem. 81 (2009) 2131-2156",
                        "table 1"),
                masses);
    }

    @Override
    public String toString() {
        return "atomic masses: " + source;
    }
}
