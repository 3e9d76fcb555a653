package io.github.formulationmath.analysis;

import io.github.formulationmath.analysis.Estimate.Spread;
import io.github.formulationmath.number.Excerpt;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.number.Rounding;
import io.github.formulationmath.quantity.Amount;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * The uncertainty of a determination, source by source: {@code u² = Σ (c · u)²} (JCGM 100:2008, 5.1.2), with the effective degrees of
 * freedom {@code ν = u⁴ / Σ ((c · u)⁴ / ν)} (Welch and Satterthwaite; the same, G.4.1). Both are exact; sources are independent, and an
 * input that acts in two places counts once, with the sum of its effects.
 *
 * <p>Sources without a line, such as an end point seen too late or a method that counts something else, are not in it.
 *
 * <p>{@code equals} compares unit and lines. Immutable.
 */
public final class Budget {

    /** Significant digits of a root, enough that rounding it once more shows nothing of it. */
    static final int DIGITS = 30;

    private final String unit;
    private final List<BudgetLine> lines;

    Budget(String unit, List<BudgetLine> lines) {
        this.unit = unit;
        this.lines = List.copyOf(lines);
    }

    /** The budget of a relation whose result is shown in a unit of some size. */
    static Budget of(Relation relation, String unit, Ratio size) {
        Set<Input> inputs = new LinkedHashSet<>(relation.inputs());
        Set<Sensitivities.Key> keys = new LinkedHashSet<>();
        for (Input input : inputs) {
            if (!keys.add(input.key())) {
                throw new IllegalArgumentException(input + " is " + Excerpt.of(input.estimate())
                        + " and, with the same value, of another uncertainty: it is one solution or two; give one of them"
                        + " another name");
            }
        }
        Sensitivities.Slope slope = relation.in(new Sensitivities(keys));
        List<BudgetLine> lines = new ArrayList<>();
        for (Input input : inputs) {
            Ratio shown = slope.by(input.key()).dividedBy(size);
            Ratio perUnit = shown.times(one(input.estimate().value()));
            for (Spread spread : input.estimate().spreads()) {
                Ratio variance = shown.times(shown).times(spread.variance());
                lines.add(new BudgetLine(
                        input.toString(), spread.stated(), perUnit, variance, spread.degreesOfFreedom()));
            }
        }
        return new Budget(unit, lines);
    }

    /** The counting units in one unit of an amount. */
    private static Ratio one(Amount<?> value) {
        return Amount.of(Ratio.ONE, value.getUnit()).canonical();
    }

    /**
     * The unit of the result.
     *
     * @return for example {@code mg KOH/g}
     */
    public String unit() {
        return unit;
    }

    /**
     * The sources in the order of the formula.
     *
     * @return the lines; empty if every input was given as exact
     */
    public List<BudgetLine> lines() {
        return lines;
    }

    /**
     * The variance of the result.
     *
     * @return u², exact, in the square of the unit
     */
    public Ratio variance() {
        return lines.stream().map(BudgetLine::variance).reduce(Ratio.ZERO, Ratio::plus);
    }

    /**
     * The effective degrees of freedom.
     *
     * @return how many, exact; none means infinitely many
     */
    public Optional<Ratio> effectiveDegreesOfFreedom() {
        Ratio sum = Ratio.ZERO;
        for (BudgetLine line : lines) {
            @Nullable Ratio own = line.degreesOfFreedom().orElse(null);
            if (own != null) {
                sum = sum.plus(line.variance().times(line.variance()).dividedBy(own));
            }
        }
        Ratio variance = variance();
        return sum.isZero()
                ? Optional.empty()
                : Optional.of(variance.times(variance).dividedBy(sum));
    }

    /** A standard uncertainty as it is printed: three digits. */
    static String root(Ratio variance) {
        return Rounding.toSignificantDigits(3).format(variance.sqrt(DIGITS));
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Budget that && unit.equals(that.unit) && lines.equals(that.lines);
    }

    @Override
    public int hashCode() {
        return 31 * unit.hashCode() + lines.hashCode();
    }

    /** The standard uncertainty, and below it what each source brings, in the same unit. */
    @Override
    public String toString() {
        return lines.stream()
                .map(BudgetLine::toString)
                .collect(Collectors.joining("\n  ", "u = " + root(variance()) + " " + unit + "\n  ", ""))
                .strip();
    }
}
