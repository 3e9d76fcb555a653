package io.github.formulationmath.plan;

import io.github.formulationmath.batch.Batch;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.Density;
import io.github.formulationmath.reckoning.Kind;
import io.github.formulationmath.reckoning.Phrase;
import io.github.formulationmath.reckoning.Reckoning;
import io.github.formulationmath.reckoning.Source;
import io.github.formulationmath.reckoning.Subject;
import io.github.formulationmath.reckoning.Symbol;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.weighing.Vessel;
import io.github.formulationmath.weighing.WeighingStation;
import java.io.Serial;
import java.io.Serializable;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import javax.measure.quantity.Mass;
import org.jspecify.annotations.Nullable;

/**
 * Where and how a batch is weighed: the balance, the vessel on it, how the rounded lines are closed to a total, and the
 * density of the product, if the volume in the vessel is to be watched.
 *
 * <p>Example: {@code Bench.of(balance).with(beaker).closing(Closure.CLOSED).withProductDensity("0.96 g/mL")}.
 *
 * <p>Immutable and thread-safe.
 */
public final class Bench implements Serializable {

    @Serial
    private static final long serialVersionUID = 3L;

    private static final Symbol CAPACITY = Symbol.of("C", "least-capacity", Kind.MASS);
    private static final Symbol VESSEL = Symbol.of("V", "vessel-mass", Kind.MASS);

    private final Balance balance;
    private final Vessel vessel;
    private final Closure closure;
    private final @Nullable Density density;
    /** Without any, all lines count alike. */
    private final @Nullable Tolerances closingTolerances;
    /** The half-width of the error of one addition; none, and the readings are taken as true. */
    private final @Nullable Amount<Mass> closingError;

    private Bench(
            Balance balance,
            Vessel vessel,
            Closure closure,
            @Nullable Density density,
            @Nullable Tolerances closingTolerances,
            @Nullable Amount<Mass> closingError) {
        this.balance = balance;
        this.vessel = vessel;
        this.closure = closure;
        this.density = density;
        this.closingTolerances = closingTolerances;
        this.closingError = closingError;
    }

    /**
     * A bench with a balance, no vessel worth counting, and lines rounded each by itself.
     *
     * @param balance the balance
     * @return the bench
     */
    public static Bench of(Balance balance) {
        return new Bench(
                Objects.requireNonNull(balance, "balance"), Vessel.none(), Closure.INDEPENDENT, null, null, null);
    }

    /**
     * The same bench with a vessel.
     *
     * @param newVessel the vessel that stands on the pan
     * @return the bench
     * @throws IllegalArgumentException if the vessel alone overloads the balance
     */
    public Bench with(Vessel newVessel) {
        balance.capacityUnder(Objects.requireNonNull(newVessel, "newVessel"));
        return new Bench(balance, newVessel, closure, density, closingTolerances, closingError);
    }

    /**
     * The same bench with another way to close the total.
     *
     * @param newClosure what becomes of the rounding difference
     * @return the bench
     */
    public Bench closing(Closure newClosure) {
        return new Bench(balance, vessel, Objects.requireNonNull(newClosure, "newClosure"), density, null, null);
    }

    /**
     * The same bench, closing {@link Closure#WITHIN_TOLERANCE} with the deviation of each line measured against the
     * tolerance of the line: the readings of a size at which whole readings can be are within
     * it.
     *
     * @param tolerances how far each share may be off; those of lines or phases must be of the formula that is planned
     * @return the bench
     */
    public Bench closingWithin(Tolerances tolerances) {
        return closingWithin(tolerances, Amount.grams(Ratio.ZERO));
    }

    /**
     * As {@link #closingWithin(Tolerances)}, when what lies in the vessel may differ from each reading: the deviation of a
     * line is then the worst that the errors of all lines can make of it, as in {@code
     * Criterion.madeWithin}.
     *
     * @param tolerances how far each share may be off
     * @param readingError the half-width of the error of one addition, at least 0
     * @return the bench
     * @throws IllegalArgumentException if the reading error is negative
     */
    public Bench closingWithin(Tolerances tolerances, Amount<Mass> readingError) {
        return new Bench(
                balance,
                vessel,
                Closure.WITHIN_TOLERANCE,
                density,
                Objects.requireNonNull(tolerances, "tolerances"),
                Amount.requireNotNegative("readingError", readingError));
    }

    /**
     * The same bench for a product of known density, so that a batch too large for the vessel is noticed: a
     * vessel's volume limits nothing without it.
     *
     * @param productDensity the density of the finished product
     * @return the bench
     */
    public Bench withProductDensity(Density productDensity) {
        return new Bench(
                balance,
                vessel,
                closure,
                Objects.requireNonNull(productDensity, "productDensity"),
                closingTolerances,
                closingError);
    }

    /**
     * The same bench for a product of known density, as text.
     *
     * @param productDensity the density of the finished product, for example {@code "0.96 g/mL"}
     * @return the bench
     * @throws IllegalArgumentException if the text is no density or not above 0
     */
    public Bench withProductDensity(String productDensity) {
        return withProductDensity(Density.parse(Objects.requireNonNull(productDensity, "productDensity")));
    }

    /**
     * The balance.
     *
     * @return the balance
     */
    public Balance balance() {
        return balance;
    }

    /**
     * The vessel on the pan.
     *
     * @return the vessel; {@link Vessel#none()} if none was given
     */
    public Vessel vessel() {
        return vessel;
    }

    /**
     * How the rounded lines are closed to a total.
     *
     * @return the closure
     */
    public Closure closure() {
        return closure;
    }

    /**
     * What {@link Closure#WITHIN_TOLERANCE} measures the deviation of each line against.
     *
     * @return the tolerances, if any were given; without any all lines count alike
     */
    public Optional<Tolerances> closingTolerances() {
        return Optional.ofNullable(closingTolerances);
    }

    /**
     * The error of one addition that {@link Closure#WITHIN_TOLERANCE} counts.
     *
     * @return the half-width, 0 if none was given
     */
    public Amount<Mass> closingReadingError() {
        return closingError == null ? Amount.grams(Ratio.ZERO).inUnitOf(balance.readability()) : closingError;
    }

    /**
     * The least capacity of the balance on which a batch can be planned here, every other figure of the bench as it is:
     * the vessel and the batch, or what the readings of its plan add up to, where that is more. The capacity that the
     * balance has does not matter.
     *
     * <p>Example: 50 g in a beaker of 214 g need 264 g. 50 g in 19 equal lines on a display of 1 g need 271 g, for each
     * line of 2.63… g reads 3 g.
     *
     * @param batch the batch
     * @return the capacity in the unit of the balance, exact; a plan on any less is refused
     */
    public Amount<Mass> leastCapacity(Batch batch) {
        Load load = new Load(this, Objects.requireNonNull(batch, "batch"));
        return Amount.grams(load.capacity(Reckoning.plain()))
                .inUnitOf(balance.readability())
                .withWorking(asked -> Phrase.of("question.least-capacity"), load, Load::capacity);
    }

    /** A batch on the bench, and what that weighs. */
    private record Load(Bench bench, Batch batch) {

        <V> V capacity(Reckoning<V> r) {
            V load = PlannedLoad.of(batch.formula(), bench).derive(r, r.known(batch), Subject.none());
            V empty = r.given(VESSEL, bench.vessel.mass(), Source.user());
            return r.named(CAPACITY, r.sum(empty, load));
        }
    }

    /**
     * The balance of the bench with the vessel on it, where every line is weighed that has no other place.
     *
     * @return the balance under the vessel
     */
    public WeighingStation station() {
        return WeighingStation.inVessel(balance, vessel);
    }

    /**
     * The same bench with another balance.
     *
     * @param other the balance
     * @return the bench with it
     */
    public Bench on(Balance other) {
        return new Bench(other, vessel, closure, density, closingTolerances, closingError);
    }

    /**
     * The density of the product.
     *
     * @return the density, if it is known
     */
    public Optional<Density> productDensity() {
        return Optional.ofNullable(density);
    }

    /**
     * What is given but limits nothing, because a figure is missing: the volume of the vessel, if the density of the
     * product is not known.
     *
     * @return an unmodifiable list, empty if everything given is considered
     */
    public List<Phrase> notConsidered() {
        boolean blind = vessel.workingVolume().isPresent() && density == null;
        return blind ? List.of(Phrase.of("unconsidered.vessel-volume", vessel.name())) : List.of();
    }

    /**
     * What is not considered, as the end of a text.
     *
     * @return the text; empty if all is considered
     */
    public String unconsideredText() {
        return notConsidered().stream().map(phrase -> "; " + phrase).collect(Collectors.joining());
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Bench that
                && balance.equals(that.balance)
                && vessel.equals(that.vessel)
                && closure == that.closure
                && Objects.equals(closingTolerances, that.closingTolerances)
                && closingReadingError().equals(that.closingReadingError())
                && Objects.equals(density, that.density);
    }

    @Override
    public int hashCode() {
        return Objects.hash(balance, vessel, closure, density, closingTolerances, closingReadingError());
    }

    @Override
    public String toString() {
        return balance + ", " + vessel + ", " + closure
                + closingTolerances().map(some -> " (" + some + ")").orElse("")
                + (density == null ? "" : ", " + density);
    }
}
