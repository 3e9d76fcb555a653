package io.github.formulationmath.record;

import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.number.Excerpt;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.FormulationUnits;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.weighing.WeighingMethod;
import io.github.formulationmath.working.Explained;
import io.github.formulationmath.working.Phrase;
import io.github.formulationmath.working.Reckoning;
import io.github.formulationmath.working.Subject;
import java.io.Serial;
import java.io.Serializable;
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
 */
public final class Evaporation implements Explained, Serializable {

    @Serial
    private static final long serialVersionUID = 2L;

    private final MadeBatch made;
    private final Amount<Mass> contentNow;
    private final FormulaLine line;
    private final Balance balance;
    private final Ratio grams;

    private Evaporation(MadeBatch made, Amount<Mass> contentNow, FormulaLine line, Balance balance) {
        this.made = made;
        this.contentNow = contentNow;
        this.line = line;
        this.balance = balance;
        this.grams = derive(Reckoning.plain());
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
        return of(
                made,
                contentNow,
                from,
                Objects.requireNonNull(made, "made").plan().bench().balance());
    }

    static Evaporation of(MadeBatch made, Amount<Mass> contentNow, FormulaLine from, Balance balance) {
        made.formula().indexOf(Objects.requireNonNull(from, "from"));
        Amount.requirePositive("contentNow", contentNow);
        return new Evaporation(made, contentNow, from, balance).checked();
    }

    private Evaporation checked() {
        if (grams.signum() < 0) {
            throw new IllegalArgumentException("contentNow is " + Excerpt.of(contentNow) + ", more than the "
                    + Excerpt.of(made.mass()) + " that were put in: was the vessel weighed with it?");
        }
        Amount<Mass> there = made.line(line).mass();
        if (loss().compareTo(there) > 0) {
            throw new IllegalArgumentException(
                    "contentNow is " + Excerpt.of(contentNow) + ", so that " + Excerpt.of(loss())
                            + " are missing, more than the " + Excerpt.of(there) + " of " + Excerpt.of(line.name())
                            + " that were put in: something else was lost; weigh again");
        }
        return this;
    }

    /**
     * The same loss, the pot weighed again on another balance than that of the bench, with the errors of that balance.
     *
     * @param other the balance
     * @return the loss found on that balance
     * @throws IllegalArgumentException as {@link #of}, if what that balance is known to show wrongly makes the difference
     */
    public Evaporation on(Balance other) {
        return of(made, contentNow, line, Objects.requireNonNull(other, "other"));
    }

    /**
     * What went off, and what has to be added back.
     *
     * @return the mass in grams, at least 0
     */
    public Amount<Mass> loss() {
        return Amount.grams(grams);
    }

    /**
     * The line that went off.
     *
     * @return the line
     */
    public FormulaLine from() {
        return line;
    }

    /**
     * What was in the pot when it was weighed again.
     *
     * @return the content as given
     */
    public Amount<Mass> contentNow() {
        return contentNow;
    }

    /**
     * The balance on which the pot was weighed again.
     *
     * @return the balance of the bench, if no other was said
     */
    public Balance balance() {
        return balance;
    }

    /**
     * What is in the pot if nothing is added back: less of the one line, and larger shares of all others.
     *
     * @return the concentrated batch
     */
    public MadeBatch notAddedBack() {
        return made.after(
                each -> each.line().position() == line.position()
                        ? new PotMass.Less(each, this)
                        : new PotMass.Same(each),
                weighedAgain());
    }

    private PotErrors weighedAgain() {
        Ratio shown = contentNow.in(FormulationUnits.GRAM);
        return made.errors()
                .weighedAgain(
                        line.index(),
                        SureMass.bounds(pot(), shown, balance, WeighingMethod.TARE_EACH),
                        SureMass.spread(pot(), shown, balance, WeighingMethod.TARE_EACH));
    }

    /**
     * What is in the pot after adding back.
     *
     * @param read what was added, as the display of the bench read it
     * @return the batch made up again
     */
    public MadeBatch addedBack(Amount<Mass> read) {
        return notAddedBack().plus(List.of(LineAddition.of(line, read)));
    }

    @Override
    public Phrase question() {
        return Phrase.of("question.evaporated-mass", line.name());
    }

    @Override
    public Ratio result() {
        return grams;
    }

    @Override
    public <V> V derive(Reckoning<V> r) {
        PotMass.Content content = new PotMass.Content(contentNow, made.symbols().contentNow());
        V now = SureMass.estimate(r, pot(), content, balance, WeighingMethod.TARE_EACH);
        return r.named(made.symbols().evaporated(), r.difference(r.known(made), now));
    }

    private Subject pot() {
        return Subject.of("", made.plan().batch().formula().name());
    }

    @Override
    public String toString() {
        return loss() + " of " + line.name() + " went off";
    }
}
