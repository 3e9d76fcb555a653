package io.github.formulationmath.sheet;

import io.github.formulationmath.formula.Phase;
import io.github.formulationmath.number.NumberText;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.number.Rounding;
import io.github.formulationmath.plan.BalanceUnit;
import io.github.formulationmath.pot.UsedLot;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.AmountFormat;
import io.github.formulationmath.quantity.Interval;
import io.github.formulationmath.reckoning.Wording;
import io.github.formulationmath.weighing.Balance;
import java.math.RoundingMode;
import java.util.List;
import java.util.stream.Collectors;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Mass;

/**
 * Numbers as sheets show them, in the digits of their words: what a display shows, errors and guarantees; all others are {@link
 * NumberText}.
 */
final class SheetNumbers {

    private static final Rounding TWO_DIGITS = Rounding.toSignificantDigits(2);

    private SheetNumbers() {}

    static String amount(Wording words, Amount<?> amount) {
        return words.number(amount(amount));
    }

    private static String amount(Amount<?> amount) {
        Amount<?> parts = amount.inSmallerUnit();
        return !amount.exactValue().isInteger() && !isDecimal(amount, parts) && NumberText.isShort(parts.exactValue())
                ? AmountFormat.standard().formatInTwoUnits(amount, Rounding.none())
                : amount.told();
    }

    /** Whether a unit is ten, a hundred, a thousand of its parts, so that a decimal tells them: 1.25 kg, but 1 lb 4 oz. */
    private static boolean isDecimal(Amount<?> amount, Amount<?> parts) {
        return amount.unitSize().dividedBy(parts.unitSize()).toString().matches("10*");
    }

    /** A reading as the display shows it, with the zeros that its step keeps: 1.0 g. */
    static String reading(Wording words, Amount<Mass> reading, Amount<Mass> step) {
        return words.number(BalanceUnit.reading(reading, step));
    }

    /** A sum of readings, with the digits of the finest display where it has no others: steps of 0.2 g and 0.5 g add up to 0.7 g. */
    static String total(Wording words, Amount<Mass> total, Amount<Mass> finest) {
        boolean shown = total.exactValue().dividedBy(finest.exactValue()).isInteger();
        return shown ? reading(words, total, finest) : amount(words, total);
    }

    /** The heading of a phase; a phase that is called one already is not called so twice. */
    static String phase(Wording words, Phase phase) {
        String word = words.say("sheet.phase", "").strip();
        String name = phase.name();
        // "Phase A" begins with the word, "Water phase" ends with it, but for the size of its first letter.
        boolean says = !word.isEmpty() && (name.startsWith(word) || name.endsWith(word.substring(1)));
        return says ? name : words.say("sheet.phase", name);
    }

    /** A balance by its name, or else by its step. */
    static String balance(Wording words, Balance balance) {
        return balance.name().isEmpty()
                ? words.say("sheet.unnamed-balance", amount(words, balance.readability()))
                : balance.name();
    }

    /** An error in percent, to the two digits that say anything. */
    static String error(Wording words, Ratio fraction) {
        return words.number(
                fraction.isZero() ? NumberText.percent(fraction) : NumberText.percent(fraction, TWO_DIGITS));
    }

    /** Lots and how much of each: {@code G-17: 9 g; G-21: 3 g}. */
    static String lots(Wording words, List<UsedLot> lots) {
        return lots.stream()
                .map(lot -> lot.mass()
                        .map(mass -> words.say("sheet.noted", lot.code(), amount(words, mass)))
                        .orElse(lot.code()))
                .collect(Collectors.joining("; "));
    }

    /** A share in percent. */
    static String percent(Wording words, Ratio share) {
        return words.number(NumberText.percent(share));
    }

    /** A guaranteed interval of shares in percent, rounded outwards so that it stays guaranteed. */
    static String interval(Wording words, Interval<Amount<Dimensionless>> shares) {
        Ratio low = shares.least().canonical().times(100);
        Ratio high = shares.greatest().canonical().times(100);
        Ratio step = low.equals(high) ? TWO_DIGITS.stepFor(low) : TWO_DIGITS.stepFor(high.minus(low));
        Rounding grid = Rounding.toMultipleOf(step);
        return words.say(
                "sheet.range",
                grid.with(RoundingMode.FLOOR).format(low),
                grid.with(RoundingMode.CEILING).format(high),
                "%");
    }
}
