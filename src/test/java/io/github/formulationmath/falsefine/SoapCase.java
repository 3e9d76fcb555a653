package io.github.formulationmath.falsefine;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.function.UnaryOperator;

/**
 * A soap as weighed, every figure a whole number, with what is left of its hydroxide worked out here.
 *
 * @param lines what was weighed, in the order of weighing
 * @param readings what the display read for each, in steps
 * @param places how many decimal places of a gram the display shows
 * @param linearity how far each net reading may be off besides, in tenths of a step
 * @param cumulative whether the balance was tared once, before the first
 */
record SoapCase(List<SoapLine> lines, long[] readings, int places, int linearity, boolean cumulative) {

    /** How far rounding and linearity may be off at the end of a weighing, in steps. */
    private Exact reach() {
        return Exact.of(5L + linearity, 10);
    }

    private static Exact half() {
        return Exact.of(1, 2);
    }

    /** The most that Σ weight · mass may be, over the errors of the balance; in grams. */
    Exact largest(Function<SoapLine, Exact> weight) {
        Exact sum = Exact.ZERO;
        for (int i = 0; i < readings.length; i++) {
            Exact own = weight.apply(lines.get(i));
            sum = sum.plus(own.times(readings[i]));
            if (cumulative) {
                Exact next = i + 1 < readings.length ? weight.apply(lines.get(i + 1)) : Exact.ZERO;
                sum = sum.plus(own.minus(next).abs().times(reach()));
                sum = i == 0 ? sum.plus(own.abs().times(half())) : sum;
            } else {
                Exact off = half().plus(reach());
                Exact low = off.isAbove(Exact.of(readings[i])) ? Exact.of(readings[i]) : off;
                sum = sum.plus(own.abs().times(own.isAbove(Exact.ZERO) ? off : low));
            }
        }
        return sum.over(Exact.of(pow(places)));
    }

    private static long pow(int places) {
        return BigInteger.TEN.pow(places).longValueExact();
    }

    /** Moles of hydroxide left at most. */
    Exact most() {
        return largest(SoapLine::most);
    }

    /** Moles left at least; below 0 is what the fats could still take. */
    Exact least() {
        return largest(line -> line.least().times(-1)).times(-1);
    }

    /** Whether a shortfall, in per cent, is left of the fats for certain. */
    boolean leaves(int percent) {
        return !largest(line -> line.isFat() ? line.most().times(100L - percent).over(Exact.of(100)) : line.most())
                .isAbove(Exact.ZERO);
    }

    /** Moles of hydroxide left in one pot that may have been made. */
    Exact pot(Dice dice) {
        Exact sum = Exact.ZERO;
        Exact before = SoapLine.inside(dice, half().times(-1), half());
        for (int i = 0; i < readings.length; i++) {
            Exact end = SoapLine.inside(dice, reach().times(-1), reach());
            Exact mass = Exact.of(readings[i]).plus(end).minus(before);
            sum = sum.plus(lines.get(i).lot(dice).times(mass.max(Exact.ZERO)));
            before = cumulative ? end : SoapLine.inside(dice, half().times(-1), half());
        }
        return sum.over(Exact.of(pow(places)));
    }

    /** The line of the alkali that is weighed last. */
    int alkali() {
        int last = -1;
        for (int i = 0; i < lines.size(); i++) {
            last = lines.get(i) instanceof SoapLine.Gives ? i : last;
        }
        return last;
    }

    /** The same with another reading of that alkali. */
    SoapCase reading(long steps) {
        long[] other = readings.clone();
        other[alkali()] = steps;
        return new SoapCase(lines, other, places, linearity, cumulative);
    }

    /** Whether the exact targets leave no hydroxide, for every lot, before anything is weighed. */
    boolean leavesNoneAsWritten() {
        Exact sum = Exact.ZERO;
        for (int i = 0; i < readings.length; i++) {
            sum = sum.plus(lines.get(i).most().times(readings[i]));
        }
        return sum.isBelow(Exact.ZERO);
    }

    /** Whether the exact targets leave, for every lot, a thousandth of what the fats take after the acids had theirs. */
    boolean leavesTheFatsSomeAsWritten() {
        Exact sum = Exact.ZERO;
        for (int i = 0; i < readings.length; i++) {
            Exact least = lines.get(i).least().times(readings[i]);
            sum = sum.plus(lines.get(i).isFat() ? least.over(Exact.of(1000)) : least);
        }
        return sum.isAbove(Exact.ZERO);
    }

    /** The same soap made in a batch of so many grams, every target rounded to the display. */
    SoapCase sized(Exact grams) {
        Exact times = grams.times(pow(places)).over(Exact.of(total()));
        long[] rounded = new long[readings.length];
        for (int i = 0; i < rounded.length; i++) {
            rounded[i] = times.times(readings[i]).nearest().longValueExact();
        }
        return new SoapCase(lines, rounded, places, linearity, cumulative);
    }

    /** The same pot, of which somebody takes another figure for the truth. */
    SoapCase taken(UnaryOperator<SoapLine> figure) {
        return new SoapCase(lines.stream().map(figure).toList(), readings, places, linearity, cumulative);
    }

    String grams(long steps) {
        return BigDecimal.valueOf(steps, places).toPlainString() + " g";
    }

    long total() {
        long total = 0;
        for (long reading : readings) {
            total += reading;
        }
        return total;
    }

    /** A soap about as strong as it may just be, by some figures or by others. */
    static SoapCase any(Dice dice) {
        List<SoapLine> lines = new ArrayList<>();
        int fats = dice.between(1, 5);
        for (int i = 0; i < fats; i++) {
            lines.add(fat(dice, "fat " + (i + 1), i > 0 && dice.oneIn(5)));
        }
        boolean sodium = dice.oneIn(2);
        lines.add(grade(dice, sodium));
        if (dice.oneIn(3)) {
            lines.add(grade(dice, !sodium));
        }
        if (dice.oneIn(3)) {
            int low = dice.between(850, 1000);
            int high = dice.between(low, 1000);
            lines.add(
                    dice.oneIn(3)
                            ? SoapLine.TakesFirst.lactic(low, high)
                            : SoapLine.TakesFirst.citric(dice.oneIn(2), low, high));
        }
        lines.add(new SoapLine.Neither("Aqua"));
        List<SoapLine> order = dice.shuffled(lines);
        long[] readings = new long[order.size()];
        for (int i = 0; i < readings.length; i++) {
            readings[i] = order.get(i).isFat() || dice.oneIn(12) ? dice.between(200L, 8000L) : dice.between(8L, 60L);
        }
        SoapCase drawn = new SoapCase(order, readings, dice.between(0, 2), dice.of(0, 0, 5, 10), dice.oneIn(2));
        return drawn.reading(drawn.nearlyEnough(dice));
    }

    private static SoapLine fat(Dice dice, String name, boolean wax) {
        int low = wax ? dice.between(850, 1050) : dice.between(1750, 2550);
        int high = low + dice.of(0, 4, 40, 120, 150);
        int acid = wax && !dice.oneIn(3) ? dice.between(100, 240) : -1;
        return new SoapLine.Takes(name, low, high, wax, acid, acid + dice.between(0, 60), dice.of(-1, 0, 15, 20, 200));
    }

    private static SoapLine grade(Dice dice, boolean sodium) {
        int low = sodium ? dice.between(950, 1000) : dice.between(840, 920);
        int carbonate = dice.of(0, 0, 5);
        return new SoapLine.Gives(
                sodium, low, low + dice.between(0, 10), carbonate, carbonate + dice.between(0, 20), dice.oneIn(2));
    }

    /** What the alkali should read for most to be just nothing, for least to be, or for the middle; a few steps more or less. */
    private long nearlyEnough(Dice dice) {
        int lean = dice.between(0, 2);
        SoapCase without = reading(0);
        Exact wanted = Exact.ZERO;
        for (int i = 0; i < without.readings.length; i++) {
            wanted = wanted.minus(mix(lines.get(i), lean).times(without.readings[i]));
        }
        Exact steps = wanted.over(mix(lines.get(alkali()), lean));
        long near = steps.floor().longValueExact() + dice.between(-6L, 6L);
        return Math.max(8, near);
    }

    private static Exact mix(SoapLine line, int lean) {
        return line.most().times(2L - lean).plus(line.least().times(lean)).over(Exact.of(2));
    }
}
