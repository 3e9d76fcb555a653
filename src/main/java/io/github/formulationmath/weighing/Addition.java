package io.github.formulationmath.weighing;

import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.number.Bounds;
import io.github.formulationmath.number.Excerpt;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.working.Explained;
import io.github.formulationmath.working.Subject;
import java.util.Objects;
import javax.measure.quantity.Mass;

/**
 * One addition: what should have been added, what the display read, and on which balance by which method.
 *
 * <p>Example: {@code Addition.of("Glycerin", Amount.mass("12.34 g"), Amount.mass("12.3 g"), balance)}.
 *
 * <p>Immutable and thread-safe.
 */
public final class Addition {

    private final Subject subject;
    private final Explained target;
    private final Explained reading;
    private final Balance balance;
    private final WeighingMethod method;
    private final Bounds buoyancy;

    private Addition(
            Subject subject,
            Explained target,
            Explained reading,
            Balance balance,
            WeighingMethod method,
            Bounds buoyancy) {
        this.subject = subject;
        this.target = target;
        this.reading = reading;
        this.balance = balance;
        this.method = method;
        this.buoyancy = buoyancy;
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
        return given(Subject.of(name, name), target, reading, balance);
    }

    /**
     * An addition to a tared vessel of a line of a formula, to which it then belongs; see {@link Weighed}.
     *
     * @param line the line
     * @param target the exact mass that should have been added, at least 0
     * @param reading what the display read, at least 0
     * @param balance the balance
     * @return the addition, by {@link WeighingMethod#TARE_EACH}
     * @throws IllegalArgumentException if an amount is negative
     */
    public static Addition of(FormulaLine line, Amount<Mass> target, Amount<Mass> reading, Balance balance) {
        return given(Objects.requireNonNull(line, "line"), target, reading, balance);
    }

    private static Addition given(Subject subject, Amount<Mass> target, Amount<Mass> reading, Balance balance) {
        return of(
                subject,
                GivenMass.target(subject, Objects.requireNonNull(target, "target")),
                GivenMass.reading(subject, Objects.requireNonNull(reading, "reading")),
                balance);
    }

    /**
     * An addition to a tared vessel, its target and its reading results of their own.
     *
     * @param subject what was added; its subscript is the index of the symbols in a working
     * @param target the exact mass that should have been added, in grams, at least 0
     * @param reading what the display read, in grams, at least 0
     * @param balance the balance
     * @return the addition, by {@link WeighingMethod#TARE_EACH}
     * @throws IllegalArgumentException if a mass is negative
     */
    public static Addition of(Subject subject, Explained target, Explained reading, Balance balance) {
        Objects.requireNonNull(subject, "subject");
        requireNotNegative("target", subject, target);
        requireNotNegative("reading", subject, reading);
        return new Addition(
                subject,
                target,
                reading,
                Objects.requireNonNull(balance, "balance"),
                WeighingMethod.TARE_EACH,
                balance.errors().buoyancy());
    }

    private static void requireNotNegative(String what, Subject subject, Explained mass) {
        Ratio grams = Objects.requireNonNull(mass, what).result();
        if (grams.signum() < 0) {
            throw new IllegalArgumentException(what + " of " + Excerpt.of(subject.name()) + " is " + Excerpt.of(grams)
                    + " g: an addition is at least 0");
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
        Bounds checked = balance.errors().withBuoyancy(relativeCorrection).buoyancy();
        return new Addition(subject, target, reading, balance, method, checked);
    }

    /**
     * What was added.
     *
     * @return the subject
     */
    public Subject subject() {
        return subject;
    }

    /**
     * What should have been added.
     *
     * @return the exact mass in grams
     */
    public Explained target() {
        return target;
    }

    /**
     * What the display read.
     *
     * @return the reading in grams
     */
    public Explained reading() {
        return reading;
    }

    /**
     * The balance.
     *
     * @return the balance with its errors
     */
    public Balance balance() {
        return balance;
    }

    /**
     * How it was weighed.
     *
     * @return the method
     */
    public WeighingMethod method() {
        return method;
    }

    /**
     * The relative correction for the buoyancy of air.
     *
     * @return b in mass = reading · (1 + b), a plain number; both ends are there
     */
    public Bounds buoyancy() {
        return buoyancy;
    }

    boolean sharesIndicationsWith(Addition next) {
        return method == WeighingMethod.CUMULATIVE
                && next.method == WeighingMethod.CUMULATIVE
                && balance.equals(next.balance);
    }

    @Override
    public String toString() {
        return subject.name() + " " + reading.result() + " g on " + balance + ", " + method;
    }
}
