package io.github.formulationmath.plan;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.measure.quantity.Mass;
import org.jspecify.annotations.Nullable;

/**
 * What {@link Closure#WITHIN_TOLERANCE} measures deviations against.
 *
 * @param tolerances of each line; without any, all lines count alike
 * @param readingError the half-width of the error of one addition
 */
record ClosingGoal(@Nullable Tolerances tolerances, Amount<Mass> readingError) implements Serializable {

    /** All lines alike, the readings taken as true. */
    static final ClosingGoal EVEN = new ClosingGoal(null, Amount.grams(Ratio.ZERO));

    Optional<Tolerances> given() {
        return Optional.ofNullable(tolerances);
    }

    /** The readings of a formula that add up to a whole number of divisions. */
    List<Ratio> readings(Formula formula, Ratio total, Ratio gramsPerDivision) {
        return new TolerantReadings(deviations(formula, total, gramsPerDivision)).closing(total);
    }

    List<LineDeviation> deviations(Formula formula, Ratio total, Ratio gramsPerDivision) {
        given().ifPresent(some -> some.checkedFor(formula));
        Ratio error = readingError.canonical().dividedBy(gramsPerDivision);
        int lines = formula.lines().size();
        List<LineDeviation> all = new ArrayList<>(lines);
        for (FormulaLine line : formula.lines()) {
            Ratio tolerance = given().map(some -> some.fraction(line)).orElse(Ratio.ONE);
            all.add(LineDeviation.of(line.fraction(), total, tolerance, error, lines));
        }
        return all;
    }
}
