package io.github.formulationmath.soap;

import io.github.formulationmath.chemistry.MolarMass;
import io.github.formulationmath.chemistry.MolecularFormula;
import io.github.formulationmath.number.Excerpt;
import io.github.formulationmath.number.LinearProgram;
import io.github.formulationmath.number.NumberText;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Interval;
import io.github.formulationmath.quantity.MassFraction;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * How much of each fatty acid is in a fat, as ranges, and what that tells of its saponification and iodine value.
 *
 * <p>With mass shares w and molar masses M of the acids, S = Σ w/M moles of acid are in a gram of acids. Neutral triglycerides of them
 * take {@code 3 M(KOH) / (3/S + M(glycerol) − 3 M(H2O))} grams of KOH a gram, and add {@code 300 M(I2) Σ n w/M / (3 +
 * 38.048 S)} grams of iodine to 100 g, n being the double bonds. The mean molar mass is the harmonic one, for the shares are
 * of mass.
 *
 * <p>Over ranges of the shares that together make 100 % both ends are found by a linear program, in exact arithmetic and with its
 * proof: Σ w/M is linear, and the iodine value is a quotient of linear forms, made linear by scaling its denominator to 1
 * (A. Charnes, W. W. Cooper, Programming with linear fractional functionals, 1962; title from memory).
 *
 * <p>Relation for the saponification value: ISO 3657:2023, Annex B, and AOCS Cd 3a; for iodine AOCS Cd 1c-85, whose printed
 * factors are those of simple triglycerides. Standards warn that figures from a profile do not hold for fats with much
 * unsaponifiable matter, free acids or partial glycerides: {@link Escapes} has to be given.
 *
 * <p>Immutable and thread-safe.
 */
public final class FattyAcidProfile implements Serializable {

    private static final long serialVersionUID = 1L;

    private static final Ratio GLYCEROL = mass("C3H8O3");
    private static final Ratio WATER = mass("H2O");
    private static final Ratio IODINE = mass("I2");
    private static final Ratio KOH = Alkali.POTASSIUM_HYDROXIDE.gramsPerMole();

    private final TreeMap<FattyAcid, Interval<MassFraction>> shares;
    private final boolean methylEsters;

    private FattyAcidProfile(SortedMap<FattyAcid, Interval<MassFraction>> shares, boolean methylEsters) {
        this.shares = new TreeMap<>(shares);
        this.methylEsters = methylEsters;
    }

    private static Ratio mass(String formula) {
        return MolarMass.of(MolecularFormula.parse(formula)).gramsPerMole();
    }

    /**
     * A profile in per cent of the fatty acids.
     *
     * @param ranges for each acid its least and greatest share, such as {@code "7.5 % to 20 %"} as an interval
     * @return the profile
     * @throws IllegalArgumentException if no shares inside the ranges make 100 % together
     */
    public static FattyAcidProfile ofAcids(Map<FattyAcid, Interval<MassFraction>> ranges) {
        return checked(ranges, false);
    }

    /**
     * A profile in per cent of the methyl esters, as gas chromatography gives it before it is turned into acids.
     *
     * @param ranges for each acid the least and greatest share of its methyl ester
     * @return the profile
     * @throws IllegalArgumentException if no shares inside the ranges make 100 % together
     */
    public static FattyAcidProfile ofMethylEsters(Map<FattyAcid, Interval<MassFraction>> ranges) {
        return checked(ranges, true);
    }

    private static FattyAcidProfile checked(Map<FattyAcid, Interval<MassFraction>> ranges, boolean methylEsters) {
        SortedMap<FattyAcid, Interval<MassFraction>> copy = new TreeMap<>(Objects.requireNonNull(ranges, "ranges"));
        Ratio least = Ratio.ZERO;
        Ratio most = Ratio.ZERO;
        for (Interval<MassFraction> range : copy.values()) {
            least = least.plus(range.least().fraction());
            most = most.plus(range.greatest().fraction());
        }
        if (least.compareTo(Ratio.ONE) > 0 || most.compareTo(Ratio.ONE) < 0) {
            throw new IllegalArgumentException("the shares make " + Excerpt.of(least.times(100)) + " to "
                    + Excerpt.of(NumberText.percentExactly(most))
                    + " together, which never is 100 %: give the acids that are missing, or wider ranges");
        }
        return new FattyAcidProfile(copy, methylEsters);
    }

    /**
     * Where the saponification value lies.
     *
     * @param escapes what the profile does not see
     * @return the exact ends over all shares in the ranges
     */
    public Interval<AlkaliNumber> saponificationValue(Escapes escapes) {
        Objects.requireNonNull(escapes, "escapes");
        return Interval.of(
                AlkaliNumber.ofGramsPerGram(value(molesOfAcid(false), escapes, false)),
                AlkaliNumber.ofGramsPerGram(value(molesOfAcid(true), escapes, true)));
    }

    /** Grams of KOH per gram of fat. More acid, more free acid: more; what is no triglyceride or acid: less. */
    private static Ratio value(Ratio moles, Escapes escapes, boolean most) {
        Ratio f = end(escapes.freeAcids(), most);
        Ratio mono = end(escapes.monoglycerides(), !most);
        Ratio di = end(escapes.diglycerides(), !most);
        Ratio none = end(escapes.unsaponifiable(), !most);
        Ratio tri = Ratio.ONE.minus(f).minus(mono).minus(di).minus(none);
        return KOH.times(f.times(moles)
                .plus(mono.times(perGram(1, moles)))
                .plus(di.times(perGram(2, moles)))
                .plus(tri.times(perGram(3, moles))));
    }

    /** Moles of ester in a gram of glycerides with so many acids each. */
    private static Ratio perGram(int acids, Ratio moles) {
        Ratio glyceride = moles.reciprocal().times(acids).plus(GLYCEROL).minus(WATER.times(acids));
        return Ratio.of(acids).dividedBy(glyceride);
    }

    private static Ratio end(Interval<MassFraction> interval, boolean greatest) {
        return (greatest ? interval.greatest() : interval.least()).fraction();
    }

    /**
     * Where the iodine value of neutral triglycerides lies.
     *
     * @return the exact ends over all shares in the ranges
     */
    public Interval<IodineValue> iodineValue() {
        return Interval.of(IodineValue.of(iodine(false)), IodineValue.of(iodine(true)));
    }

    private Ratio gramsPerMole(FattyAcid acid) {
        return acid.gramsPerMole(methylEsters);
    }

    /**
     * Moles of acid in a gram of acids, S = Σ w/M, at one end. With shares of methyl esters, whose mass is not that of the acids,
     * S is a quotient: moles over the mass of the acids.
     */
    private Ratio molesOfAcid(boolean most) {
        List<Ratio> moles = new ArrayList<>();
        List<Ratio> grams = new ArrayList<>();
        shares.keySet().forEach(acid -> {
            Ratio perGram = gramsPerMole(acid).reciprocal();
            moles.add(perGram);
            grams.add(perGram.times(acid.molarMass().gramsPerMole()));
        });
        return quotient(moles, grams, Ratio.ZERO, most);
    }

    private Ratio iodine(boolean most) {
        List<Ratio> bonds = new ArrayList<>();
        List<Ratio> mass = new ArrayList<>();
        Ratio excess = GLYCEROL.minus(WATER.times(3));
        shares.keySet().forEach(acid -> {
            Ratio moles = gramsPerMole(acid).reciprocal();
            bonds.add(moles.times(acid.doubleBonds()));
            // Three acids and what glycerol adds, for each mole of acid a third.
            mass.add(moles.times(acid.molarMass().gramsPerMole().times(3).plus(excess)));
        });
        return quotient(bonds, mass, Ratio.ZERO, most).times(IODINE).times(300);
    }

    /**
     * One end of Σ p·w / (fixed + Σ q·w) over the shares, p and q not negative. With the unknowns w·t and t, and the denominator
     * scaled to 1, it is a linear program; the largest is C minus the smallest of C·denominator − numerator, C chosen so that
     * no cost is negative.
     */
    private Ratio quotient(List<Ratio> numerator, List<Ratio> denominator, Ratio fixed, boolean most) {
        int n = numerator.size();
        Ratio c = Ratio.ZERO;
        for (int j = 0; j < n; j++) {
            Ratio needed = numerator.get(j).dividedBy(denominator.get(j));
            c = needed.compareTo(c) > 0 ? needed : c;
        }
        List<Ratio> costs = new ArrayList<>();
        for (int j = 0; j < n; j++) {
            costs.add(most ? c.times(denominator.get(j)).minus(numerator.get(j)) : numerator.get(j));
        }
        costs.add(most ? c.times(fixed) : Ratio.ZERO);
        List<LinearProgram.Row> rows = new ArrayList<>();
        equal(rows, with(denominator, fixed), Ratio.ONE);
        equal(rows, with(Collections.nCopies(n, Ratio.ONE), Ratio.ONE.unaryMinus()), Ratio.ZERO);
        int j = 0;
        for (Interval<MassFraction> range : shares.values()) {
            rows.add(new LinearProgram.Row(
                    unit(n, j, Ratio.ONE, range.least().fraction().unaryMinus()), Ratio.ZERO));
            rows.add(new LinearProgram.Row(
                    unit(n, j, Ratio.ONE.unaryMinus(), range.greatest().fraction()), Ratio.ZERO));
            j++;
        }
        LinearProgram.Answer answer = new LinearProgram(costs, rows).solve();
        if (!(answer instanceof LinearProgram.Answer.Optimal optimal)) {
            throw new IllegalStateException("no shares keep the ranges " + shares);
        }
        return most ? c.minus(optimal.cost()) : optimal.cost();
    }

    private static void equal(List<LinearProgram.Row> rows, List<Ratio> coefficients, Ratio value) {
        rows.add(new LinearProgram.Row(coefficients, value));
        rows.add(new LinearProgram.Row(
                coefficients.stream().map(Ratio::unaryMinus).toList(), value.unaryMinus()));
    }

    private static List<Ratio> with(List<Ratio> coefficients, Ratio last) {
        List<Ratio> all = new ArrayList<>(coefficients);
        all.add(last);
        return all;
    }

    private static List<Ratio> unit(int n, int j, Ratio at, Ratio last) {
        List<Ratio> row = new ArrayList<>(Collections.nCopies(n, Ratio.ZERO));
        row.set(j, at);
        row.add(last);
        return row;
    }

    /** The acids with their ranges. */
    @Override
    public String toString() {
        return shares.toString();
    }
}
