package io.github.formulationmath.soap;

import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.number.Excerpt;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.weighing.Addition;
import io.github.formulationmath.weighing.AdditionError;
import io.github.formulationmath.weighing.MadeMasses;
import io.github.formulationmath.weighing.Weighed;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
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
    private final Ratio step;
    private final Amount<Mass> readability;

    LargestReading(Soap soap, Weighed weighed, FormulaLine line, Unsaponified atLeast) {
        this.soap = soap;
        this.weighed = weighed;
        this.line = line;
        this.kept = Ratio.ONE.minus(
                Objects.requireNonNull(atLeast, "atLeast").shortfall().fraction());
        if (soap.role(line.index()).filter(SoapRole.Gives.class::isInstance).isEmpty()) {
            throw new IllegalArgumentException(
                    Excerpt.of(line.name()) + " is not declared as an alkali: name the line of the alkali");
        }
        this.readability = addition(line.index()).balance().readability();
        this.step = readability.canonical();
    }

    private Addition addition(int index) {
        return weighed.masses().additions().get(index).addition();
    }

    /** Empty if not even a reading of 0 is safe, which another alkali can bring about. */
    Optional<Amount<Mass>> reading() {
        BigInteger high = addition(line.index())
                .balance()
                .capacity()
                .canonical()
                .dividedBy(step)
                .floor()
                .numerator();
        if (!isSafe(BigInteger.ZERO)) {
            return Optional.empty();
        }
        if (isSafe(high)) {
            return Optional.of(at(high));
        }
        BigInteger low = BigInteger.ZERO;
        while (high.subtract(low).compareTo(BigInteger.ONE) > 0) {
            BigInteger middle = low.add(high).shiftRight(1);
            if (isSafe(middle)) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return Optional.of(at(low));
    }

    private Amount<Mass> at(BigInteger steps) {
        return readability.times(Ratio.of(steps));
    }

    private boolean isSafe(BigInteger steps) {
        List<Addition> additions = new ArrayList<>();
        for (AdditionError error : weighed.masses().additions()) {
            additions.add(error.addition());
        }
        Addition old = additions.get(line.index());
        additions.set(
                line.index(),
                Addition.of(old.subject(), old.target(), at(steps), old.balance())
                        .by(old.method()));
        MadeMasses masses = MadeMasses.of(additions);
        MadeMasses covered = weighed.masses().coverage().map(masses::covering).orElse(masses);
        return new AlkaliBalance(soap, new WeighedRange(covered), false, true).leavesNone(kept);
    }
}
