package io.github.formulationmath.soap;

import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.number.Excerpt;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.pot.LineAddition;
import io.github.formulationmath.pot.MadeBatch;
import io.github.formulationmath.pot.MadeLine;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.weighing.Addition;
import io.github.formulationmath.weighing.AdditionError;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.weighing.MadeMasses;
import io.github.formulationmath.weighing.Weighed;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Predicate;
import javax.measure.quantity.Mass;

/**
 * The largest reading of the alkali for which, whatever the other inputs are, at least a wanted shortfall is left.
 *
 * <p>The display shows multiples of its step. More alkali never leaves less hydroxide, so that halving finds the step at which the
 * answer turns; the reading and the next step, which fails, have both been tried when the answer is given.
 *
 * <p>With two alkalis there is no largest reading of the pair: this is that of the one named, for the reading of the other as it
 * is, with its error.
 */
final class LargestReading {

    private final Soap soap;
    private final Weighed weighed;
    private final FormulaLine line;
    private final Ratio kept;
    private final Balance balance;

    LargestReading(Soap soap, Weighed weighed, FormulaLine line, Unsaponified atLeast) {
        this.soap = soap;
        this.weighed = weighed;
        this.line = requireAlkali(soap, line);
        this.kept = keeping(atLeast);
        // In a pot that was added to, a mass stands for several weighings and has no display of its own.
        this.balance = weighed instanceof MadeBatch pot
                ? pot.line(line).balance()
                : weighed.masses().additions().get(line.index()).addition().balance();
    }

    private static FormulaLine requireAlkali(Soap soap, FormulaLine line) {
        if (soap.role(line.index()).filter(SoapRole.Gives.class::isInstance).isEmpty()) {
            throw new IllegalArgumentException(
                    Excerpt.of(line.name()) + " is not declared as an alkali: name the line of the alkali");
        }
        return line;
    }

    private static Ratio keeping(Unsaponified atLeast) {
        return Ratio.ONE.minus(
                Objects.requireNonNull(atLeast, "atLeast").shortfall().fraction());
    }

    /** What may be poured into a pot besides what is in it. */
    static Optional<Amount<Mass>> ofAddition(Soap soap, MadeBatch pot, FormulaLine line, Unsaponified atLeast) {
        MadeLine there = pot.line(requireAlkali(soap, line));
        Ratio kept = keeping(atLeast);
        return largest(there.balance(), reading -> {
            MadeBatch after = reading.isZero() ? pot : pot.plus(List.of(LineAddition.of(there, reading)));
            return AlkaliBalance.of(soap, after).leavesNone(kept);
        });
    }

    /** Empty if not even a reading of 0 is safe, which another alkali can bring about. */
    Optional<Amount<Mass>> reading() {
        return largest(balance, this::isSafe);
    }

    private static Optional<Amount<Mass>> largest(Balance balance, Predicate<Amount<Mass>> isSafe) {
        Amount<Mass> step = balance.readability();
        BigInteger high = balance.capacity()
                .canonical()
                .dividedBy(step.canonical())
                .floor()
                .numerator();
        if (!isSafe.test(step.times(Ratio.ZERO))) {
            return Optional.empty();
        }
        if (isSafe.test(step.times(Ratio.of(high)))) {
            return Optional.of(step.times(Ratio.of(high)));
        }
        BigInteger low = BigInteger.ZERO;
        while (high.subtract(low).compareTo(BigInteger.ONE) > 0) {
            BigInteger middle = low.add(high).shiftRight(1);
            if (isSafe.test(step.times(Ratio.of(middle)))) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return Optional.of(step.times(Ratio.of(low)));
    }

    private boolean isSafe(Amount<Mass> reading) {
        List<Addition> additions = new ArrayList<>();
        for (AdditionError error : weighed.masses().additions()) {
            additions.add(error.addition());
        }
        Addition old = additions.get(line.index());
        additions.set(
                line.index(),
                Addition.of(old.subject(), old.target(), reading, balance).by(old.method()));
        MadeMasses masses = MadeMasses.of(additions);
        MadeMasses covered = weighed.masses().coverage().map(masses::covering).orElse(masses);
        return new AlkaliBalance(soap, new WeighedRange(covered), false, true).leavesNone(kept);
    }
}
