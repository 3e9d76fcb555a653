package io.github.formulationmath.weighing;

import io.github.formulationmath.number.Bounds;
import io.github.formulationmath.number.Excerpt;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.reckoning.Kind;
import io.github.formulationmath.reckoning.Phrase;
import io.github.formulationmath.reckoning.Reckoning;
import io.github.formulationmath.reckoning.Source;
import io.github.formulationmath.reckoning.Subject;
import io.github.formulationmath.reckoning.Symbol;
import java.util.Objects;
import javax.measure.quantity.Mass;

/**
 * One addition: what should have been added, what the display read, and on which balance by which method.
 *
 * <p>Example: {@code Addition.of("Glycerin", Amount.mass("12.34 g"), Amount.mass("12.3 g"), balance)}.
 *
 * <p>Immutable and thread-safe.
 *
 * @param subject what was added; its subscript is the index of the symbols in a working
 * @param target the exact mass that should have been added, at least 0
 * @param reading what the display read, at least 0
 * @param balance the balance with its errors
 * @param method how it was weighed
 * @param buoyancy the relative correction for the buoyancy of air: b in mass = reading · (1 + b), a plain number; both ends
 *     are there
 */
public record Addition(
        Subject subject,
        Amount<Mass> target,
        Amount<Mass> reading,
        Balance balance,
        WeighingMethod method,
        Bounds buoyancy) {

    private static final Ratio MICROGRAM = Ratio.parse("1e-6");
    private static final Ratio TEN = Ratio.of(10);
    private static final Symbol TARGET = Symbol.of("m", "target-mass", Kind.MASS);
    private static final Symbol READING = Symbol.of("r", "reading", Kind.MASS);

    /**
     * Checks the masses and the correction.
     *
     * @param subject what was added
     * @param target the exact mass that should have been added, at least 0
     * @param reading what the display read, at least 0
     * @param balance the balance with its errors
     * @param method how it was weighed
     * @param buoyancy b in mass = reading · (1 + b), as {@link ErrorModel#withBuoyancy(Bounds)} takes it
     * @throws IllegalArgumentException if a mass is negative, or an end of the correction is missing or not above -1
     */
    public Addition {
        Objects.requireNonNull(subject, "subject");
        target = named(TARGET, subject, requireNotNegative("target", subject, target));
        reading = named(READING, subject, requireNotNegative("reading", subject, reading));
        Objects.requireNonNull(balance, "balance");
        Objects.requireNonNull(method, "method");
        ErrorModel.requireCorrection(buoyancy);
    }

    /**
     * An addition to a tared vessel.
     *
     * @param name what was added
     * @param target the exact mass that should have been added, at least 0
     * @param reading what the display read, at least 0
     * @param balance the balance
     * @return the addition, by {@link WeighingMethod#TARE_EACH}
     * @throws IllegalArgumentException if the name is blank or an amount negative
     */
    public static Addition of(String name, Amount<Mass> target, Amount<Mass> reading, Balance balance) {
        if (Objects.requireNonNull(name, "name").isBlank()) {
            throw new IllegalArgumentException("name is blank: say what was added");
        }
        return of(Subject.of(name, name), target, reading, balance);
    }

    /**
     * An addition to a tared vessel of anything that a working can name: a line of a formula, to which it then belongs (see
     * {@link Weighed}), or another subject. Target and reading keep the workings that they have.
     *
     * @param subject what was added; its subscript is the index of the symbols in a working
     * @param target the exact mass that should have been added, at least 0
     * @param reading what the display read, at least 0
     * @param balance the balance
     * @return the addition, by {@link WeighingMethod#TARE_EACH}
     * @throws IllegalArgumentException if an amount is negative
     */
    public static Addition of(Subject subject, Amount<Mass> target, Amount<Mass> reading, Balance balance) {
        Bounds buoyancy = Objects.requireNonNull(balance, "balance").errors().buoyancy();
        return new Addition(subject, target, reading, balance, WeighingMethod.TARE_EACH, buoyancy);
    }

    /**
     * A mass that stands by itself and is known to lie within bounds, however it came about: an addition on a display so fine
     * that it adds nothing worth counting (a microgram at most), whose linearity reaches to the further bound.
     *
     * @param subject what was added
     * @param index what tells its balance from others in a working
     * @param mass what is most likely there, at least 0
     * @param error how far the mass may be off either way, at least 0
     * @param repeatability a standard deviation of it beyond that, at least 0
     * @return the addition
     * @throws IllegalArgumentException if an amount is negative
     */
    public static Addition within(
            Subject subject, String index, Amount<Mass> mass, Amount<Mass> error, Amount<Mass> repeatability) {
        Amount<Mass> one = Amount.grams(mass.unitSize()).inUnitOf(mass);
        Balance balance = Balance.of(hardlyAnything(one), mass.plus(error).plus(one))
                .named("line " + index)
                .withErrors(ErrorModel.readabilityOnly()
                        .withLinearityOfNetReading(error)
                        .withRepeatability(repeatability));
        return of(subject, mass, mass, balance);
    }

    private static Amount<Mass> requireNotNegative(String what, Subject subject, Amount<Mass> mass) {
        if (Objects.requireNonNull(mass, what).signum() < 0) {
            throw new IllegalArgumentException(what + " of " + Excerpt.of(subject.name()) + " is " + Excerpt.of(mass)
                    + ": an addition is at least 0");
        }
        return mass;
    }

    /** The largest power of ten of a unit that is a microgram at most. */
    private static Amount<Mass> hardlyAnything(Amount<Mass> one) {
        Amount<Mass> step = one;
        while (step.canonical().compareTo(MICROGRAM) > 0) {
            step = step.dividedBy(TEN);
        }
        return step;
    }

    /** A mass that nothing explains has a symbol of its own in workings. */
    private static Amount<Mass> named(Symbol symbol, Subject subject, Amount<Mass> mass) {
        return mass.isGiven() ? mass.withWorking(Given::question, new Given(symbol, subject, mass), Given::in) : mass;
    }

    private record Given(Symbol symbol, Subject subject, Amount<Mass> mass) {

        Phrase question() {
            return Phrase.of("question.given-mass", subject.name());
        }

        <V> V in(Reckoning<V> r) {
            return r.given(symbol, subject, mass, Source.user());
        }
    }

    /**
     * The same addition by another method.
     *
     * @param newMethod how it was weighed
     * @return the addition
     */
    public Addition by(WeighingMethod newMethod) {
        Objects.requireNonNull(newMethod, "newMethod");
        return new Addition(subject, target, reading, balance, newMethod, buoyancy);
    }

    /**
     * The same addition with a buoyancy correction of its own, because its density is known.
     *
     * @param relativeCorrection b in mass = reading · (1 + b), as {@link ErrorModel#withBuoyancy(Bounds)} takes it
     * @return the addition
     * @throws IllegalArgumentException if an end is missing or not above -1
     */
    public Addition withBuoyancy(Bounds relativeCorrection) {
        Objects.requireNonNull(relativeCorrection, "relativeCorrection");
        return new Addition(subject, target, reading, balance, method, relativeCorrection);
    }

    boolean sharesIndicationsWith(Addition next) {
        return method == WeighingMethod.CUMULATIVE
                && next.method == WeighingMethod.CUMULATIVE
                && balance.equals(next.balance);
    }

    @Override
    public String toString() {
        Amount<Mass> shown = reading.inUnitOf(balance.readability());
        return subject.name() + " " + shown.toldExactly() + " on " + balance + ", " + method;
    }
}
