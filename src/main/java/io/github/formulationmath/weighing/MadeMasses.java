package io.github.formulationmath.weighing;

import io.github.formulationmath.number.Bounds;
import io.github.formulationmath.number.Excerpt;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.working.RootOperation;
import io.github.formulationmath.working.Subject;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * Several additions together, with everything their errors have in common: where each mass and each share of the whole is
 * sure to lie, and how uncertain it is. Lines are counted from 0; which formula they are of, {@link Weighed} tells.
 *
 * <p>What the errors have in common depends on the method. Weighed cumulatively, one reading ends one addition and begins
 * the next, so that neighbours are anti-correlated and the errors in between cancel from the total. The scale of a
 * balance is common to all that is weighed on it, and cancels from the shares. See {@link WeighingMethod}.
 *
 * <p>Example: 10.0 g and 30.0 g, each tared, on a display of 0.1 g, lie within 0.1 g. The share of the first is at most
 * 10.1/(10.1 + 29.9) = 25.25 % and at least 9.9/(9.9 + 30.1) = 24.75 %.
 *
 * <p>Immutable and thread-safe.
 */
public final class MadeMasses {

    private final MassRelations relations;
    private final Whole whole;

    private MadeMasses(List<Addition> additions, CommonErrors common, @Nullable CoverageFactor coverage) {
        this.relations = new MassRelations(additions, common, coverage);
        this.whole = new Whole(
                relations,
                IntStream.range(0, additions.size())
                        .mapToObj(i -> new AdditionError(relations, i))
                        .toList());
        if (whole.total().result().signum() <= 0) {
            throw new IllegalArgumentException(
                    "additions are " + Excerpt.of(additions) + ": after what stays behind in boats "
                            + Excerpt.of(whole.total().result())
                            + " g are left, no whole to take shares of; is the residue in the right"
                            + " unit?");
        }
    }

    /**
     * Additions in the order in which they are made.
     *
     * @param additions the additions, at least one; balances of different figures need different names
     * @return the masses together
     * @throws IllegalArgumentException if there is no addition, if all readings are 0 or less than what stays behind, or
     *     if two balances that differ have the same name
     */
    public static MadeMasses of(List<Addition> additions) {
        List<Addition> copy = List.copyOf(Objects.requireNonNull(additions, "additions"));
        requireSomething(copy);
        requireNames(copy);
        return new MadeMasses(copy, new CommonErrors(copy.size(), ErrorTerms.of(copy)), null);
    }

    private static void requireSomething(List<Addition> additions) {
        if (additions.stream().allMatch(a -> a.reading().result().isZero())) {
            throw new IllegalArgumentException("additions are " + Excerpt.of(additions)
                    + ": no display reads anything, so that there is no whole to take shares of");
        }
    }

    private static void requireNames(List<Addition> additions) {
        Set<Balance> balances = new HashSet<>();
        Set<String> names = new HashSet<>();
        for (Addition addition : additions) {
            Balance balance = addition.balance();
            if (balances.add(balance) && !names.add(balance.name())) {
                throw new IllegalArgumentException(
                        "two different balances are both called \"" + Excerpt.of(balance.name())
                                + "\": name them with Balance.named, so that their figures can be told apart");
            }
        }
    }

    /**
     * The same masses with their unbounded errors, repeatability and calibration, taken into the bounds: each as far as k
     * times its standard deviation. What was guaranteed then holds with the coverage that k has for each of them.
     *
     * @param factor the coverage factor k
     * @return the masses with wider bounds; variances do not change
     */
    public MadeMasses covering(CoverageFactor factor) {
        return new MadeMasses(relations.additions(), relations.errors(), Objects.requireNonNull(factor, "factor"));
    }

    /**
     * Some of the masses by themselves, for example those of one phase, so that shares are shares of them alone. Their
     * errors stay what they are in the whole sequence: a line weighed on top of another that is not named here still begins
     * at the reading of that one. Bounds cover the same factor.
     *
     * @param lines the lines, from 0, each once
     * @return the masses of these lines, counted from 0 again
     * @throws IndexOutOfBoundsException if there is no such line
     * @throws IllegalArgumentException if no line is named, a line is named twice, or all their readings are 0
     */
    public MadeMasses part(List<Integer> lines) {
        List<Integer> copy = List.copyOf(Objects.requireNonNull(lines, "lines"));
        if (new HashSet<>(copy).size() < copy.size()) {
            throw new IllegalArgumentException("lines are " + Excerpt.of(copy) + ": name each line once");
        }
        List<Addition> additions =
                copy.stream().map(line -> at(line).addition()).toList();
        requireSomething(additions);
        return new MadeMasses(additions, relations.errors().part(copy), relations.coverage());
    }

    /**
     * How many additions there are.
     *
     * @return at least 1
     */
    public int size() {
        return whole.errors().size();
    }

    /**
     * The errors of the masses, line by line, each as it is in this sequence.
     *
     * @return an unmodifiable list
     */
    public List<AdditionError> additions() {
        return whole.errors();
    }

    /**
     * The mass that is most likely there.
     *
     * @param line the line, from 0
     * @return the estimate in grams
     */
    public Ratio estimate(int line) {
        return at(line).estimate().result();
    }

    /**
     * Where the mass of a line is sure to lie.
     *
     * @param line the line, from 0
     * @return an interval in grams
     */
    public Bounds massBounds(int line) {
        return at(line).bounds();
    }

    /**
     * The covariance of the masses of two lines.
     *
     * @param line a line, from 0
     * @param other a line, from 0; the same one for its variance
     * @return the covariance in g², exact
     */
    public Ratio covariance(int line, int other) {
        Objects.checkIndex(line, size());
        Objects.checkIndex(other, size());
        return relations.errors().covariance(line, other);
    }

    /**
     * The covariance of two weighted sums of the masses, Σ Σ a_i·b_j·cov(m_i, m_j).
     *
     * @param weights the weights a by line, from 0; lines that are not in it have none
     * @param others the weights b, likewise; the same ones for the variance of the sum
     * @return the covariance in g², exact
     * @throws IndexOutOfBoundsException if there is no such line
     */
    public Ratio covariance(Map<Integer, Ratio> weights, Map<Integer, Ratio> others) {
        return relations.errors().bySource(perLine("weights", weights), perLine("others", others)).values().stream()
                .reduce(Ratio.ZERO, Ratio::plus);
    }

    private Weights.PerLine perLine(String name, Map<Integer, Ratio> weights) {
        SortedMap<Integer, Ratio> copy = new TreeMap<>(Objects.requireNonNull(weights, name));
        copy.forEach((line, weight) -> {
            Objects.checkIndex(line, size());
            Objects.requireNonNull(weight, name);
        });
        return new Weights.PerLine(copy);
    }

    /**
     * A share of the whole, with its bounds, its uncertainty and their workings.
     *
     * @param line the line, from 0
     * @return the share of the line
     */
    public MadeShare madeShare(int line) {
        Subject subject = at(line).addition().subject();
        return new MadeShare(whole, new Weights.OneLine(line), subject);
    }

    /**
     * The share in the whole of something that the lines contain in different strengths, y = Σ c·m / Σ m.
     *
     * @param subject what it is; its subscript is the index of the symbols in a working
     * @param strengths the mass fraction c in each line, one per line
     * @return the share
     * @throws IllegalArgumentException if there are not as many strengths as lines
     */
    public MadeShare madeShare(Subject subject, List<Ratio> strengths) {
        Objects.requireNonNull(subject, "subject");
        List<Ratio> copy = List.copyOf(Objects.requireNonNull(strengths, "strengths"));
        if (copy.size() != size()) {
            throw new IllegalArgumentException(
                    "strengths are " + copy.size() + ": one is needed for each of the " + size() + " lines");
        }
        return new MadeShare(whole, new Weights.PerLine(copy), subject);
    }

    /**
     * The share in the whole of something that a few of the lines contain. It costs as much as these lines, however many
     * there are in all.
     *
     * @param subject what it is; its subscript is the index of the symbols in a working
     * @param strengths the mass fraction c in the lines that contain it, by line, from 0
     * @return the share
     * @throws IndexOutOfBoundsException if there is no such line
     */
    public MadeShare madeShare(Subject subject, Map<Integer, Ratio> strengths) {
        Objects.requireNonNull(subject, "subject");
        return new MadeShare(whole, perLine("strengths", strengths), subject);
    }

    /**
     * The share of a line in the whole.
     *
     * @param line the line, from 0
     * @return the share, every error at its middle
     */
    public Ratio share(int line) {
        return madeShare(line).result();
    }

    /**
     * Where the share of a line is sure to lie.
     *
     * @param line the line, from 0
     * @return the true extremes as fractions of one, see {@link MadeShare#bounds()}
     */
    public Bounds shareBounds(int line) {
        return madeShare(line).bounds();
    }

    /**
     * Where a share of different strengths is sure to lie.
     *
     * @param strengths the mass fraction in each line, one per line
     * @return the true extremes as fractions of one, see {@link MadeShare#bounds()}
     * @throws IllegalArgumentException if there are not as many strengths as lines
     */
    public Bounds shareBounds(List<Ratio> strengths) {
        return madeShare(Subject.of("", ""), strengths).bounds();
    }

    /**
     * The variance of the share of a line.
     *
     * @param line the line, from 0
     * @return u², exact within the linear approximation of the GUM
     */
    public Ratio shareVariance(int line) {
        return madeShare(line).variance().result();
    }

    /**
     * The variance of a share of different strengths.
     *
     * @param strengths the mass fraction in each line, one per line
     * @return u², exact within the linear approximation of the GUM
     * @throws IllegalArgumentException if there are not as many strengths as lines
     */
    public Ratio shareVariance(List<Ratio> strengths) {
        return madeShare(Subject.of("", ""), strengths).variance().result();
    }

    /**
     * The standard uncertainty of the share of a line.
     *
     * @param line the line, from 0
     * @return the root of the variance
     */
    public double standardUncertainty(int line) {
        return shareVariance(line).sqrt(RootOperation.DIGITS).doubleValue();
    }

    private AdditionError at(int line) {
        return whole.errors().get(Objects.checkIndex(line, size()));
    }

    /** The covariance matrix of the masses, for those who need it whole; k² numbers. */
    List<List<Ratio>> covariances() {
        List<List<Ratio>> rows = new ArrayList<>();
        for (int i = 0; i < size(); i++) {
            int row = i;
            rows.add(
                    IntStream.range(0, size()).mapToObj(j -> covariance(row, j)).toList());
        }
        return rows;
    }

    @Override
    public String toString() {
        return whole.errors().toString();
    }
}
