package io.github.formulationmath.pot;

import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.number.Excerpt;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.reckoning.Explained;
import io.github.formulationmath.reckoning.Origin;
import io.github.formulationmath.reckoning.Phrase;
import io.github.formulationmath.reckoning.Reckoning;
import io.github.formulationmath.reckoning.Subject;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.weighing.WeighingMethod;
import java.util.List;
import java.util.Objects;
import javax.measure.quantity.Mass;

/**
 * What went off from the pot, found by weighing it again: {@code E = Z − Z_now}, taken to be all from one line, usually the
 * water. The vessel was tared before, and the pot is weighed net, with all the errors of the balance that weighs it. It is
 * also what has to be added back.
 *
 * <p>Example: 400 g went in, the pot now holds 391.2 g: 8.8 g of water are to be added back. If they are not, a line that
 * was 3 % is 12/391.2 = 3.07 % of what is left.
 *
 * <p>Oils, alcohol and perfume go off as well when they are hot; weigh covered, and weigh again when it is cool.
 *
 * <p>Immutable and thread-safe.
 *
 * @param made what had been put in
 * @param contentNow what was in the pot when it was weighed again, as given
 * @param from the line that went off
 * @param balance the balance on which the pot was weighed again
 */
public record Evaporation(MadeBatch made, Amount<Mass> contentNow, FormulaLine from, Balance balance)
        implements Explained {

    /**
     * Checks that what is missing can have gone off.
     *
     * @param made what had been put in
     * @param contentNow what the balance shows of the pot now, without the vessel, above 0
     * @param from the line that went off
     * @param balance the balance
     * @throws IllegalArgumentException if the content is not above 0, more than what was put in, or if more is missing
     *     than there was of the line
     */
    public Evaporation {
        MadeLine line = made.line(Objects.requireNonNull(from, "from"));
        Amount.requirePositive("contentNow", contentNow);
        Objects.requireNonNull(balance, "balance");
        Amount<Mass> loss =
                Amount.grams(loss(Reckoning.plain(), made, contentNow, balance)).inUnitOf(balance.readability());
        if (loss.signum() < 0) {
            throw new IllegalArgumentException("contentNow is " + Excerpt.of(contentNow) + ", more than the "
                    + Excerpt.of(made.mass()) + " that were put in: was the vessel weighed with it?");
        }
        if (loss.compareTo(line.mass()) > 0) {
            throw new IllegalArgumentException(
                    "contentNow is " + Excerpt.of(contentNow) + ", so that " + Excerpt.of(loss)
                            + " are missing, more than the " + Excerpt.of(line.mass()) + " of "
                            + Excerpt.of(line.name())
                            + " that were put in: something else was lost; weigh again");
        }
    }

    /**
     * The loss of a pot that was weighed again.
     *
     * @param made what had been put in
     * @param contentNow what the balance of the bench shows of the pot now, without the vessel, above 0
     * @param from the line that went off, usually the water
     * @return the loss, at least 0
     * @throws IllegalArgumentException if the content is not above 0, more than what was put in, or if more is missing
     *     than there was of the line
     */
    public static Evaporation of(MadeBatch made, Amount<Mass> contentNow, FormulaLine from) {
        Balance bench = Objects.requireNonNull(made, "made").plan().bench().balance();
        return new Evaporation(made, contentNow, from, bench);
    }

    /**
     * The same loss, the pot weighed again on another balance than that of the bench, with the errors of that balance.
     *
     * @param other the balance
     * @return the loss found on that balance
     * @throws IllegalArgumentException as {@link #of}, if what that balance is known to show wrongly makes the difference
     */
    public Evaporation on(Balance other) {
        return new Evaporation(made, contentNow, from, Objects.requireNonNull(other, "other"));
    }

    /**
     * What went off, and what has to be added back.
     *
     * @return the mass in the unit of the display, at least 0, with its working
     */
    public Amount<Mass> loss() {
        return Amount.grams(loss(Reckoning.plain()))
                .withWorking(loss -> Phrase.of("question.evaporated-mass", loss.from.name()), this, Evaporation::loss)
                .inUnitOf(balance.readability());
    }

    /**
     * What is in the pot if nothing is added back: less of the one line, and larger shares of all others.
     *
     * @return the concentrated batch
     */
    public MadeBatch notAddedBack() {
        return made.after(
                each -> each.index() == from.index() ? new PotMass.Less(each, this) : new PotMass.Same(each),
                weighedAgain());
    }

    private PotErrors weighedAgain() {
        Ratio shown = contentNow.canonical();
        return made.errors()
                .weighedAgain(
                        from.index(),
                        SureMass.bounds(pot(made), shown, balance, WeighingMethod.TARE_EACH),
                        SureMass.spread(pot(made), shown, balance, WeighingMethod.TARE_EACH));
    }

    /**
     * What is in the pot after adding back.
     *
     * @param read what was added, as the display of the bench read it
     * @return the batch made up again
     */
    public MadeBatch addedBack(Amount<Mass> read) {
        return notAddedBack().plus(List.of(LineAddition.of(from, read)));
    }

    /** Where the {@link #loss()} comes from. */
    @Override
    public Origin origin() {
        return loss().origin();
    }

    private <V> V loss(Reckoning<V> r) {
        return loss(r, made, contentNow, balance);
    }

    private static <V> V loss(Reckoning<V> r, MadeBatch made, Amount<Mass> contentNow, Balance balance) {
        PotMass content = PotMass.Shown.of(made.contentNow(), Subject.none(), contentNow);
        V now = SureMass.estimate(r, pot(made), content, balance, WeighingMethod.TARE_EACH);
        return r.named(made.evaporated(), r.difference(r.known(made), now));
    }

    private static Subject pot(MadeBatch made) {
        return Subject.of("", made.formula().name());
    }

    @Override
    public String toString() {
        return loss().told() + " of " + from.name() + " went off";
    }
}
