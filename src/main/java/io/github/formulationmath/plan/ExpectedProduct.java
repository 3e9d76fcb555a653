package io.github.formulationmath.plan;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.Lines;
import io.github.formulationmath.simulation.CoverageFactor;
import io.github.formulationmath.weighing.Addition;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.weighing.MadeMasses;
import io.github.formulationmath.weighing.Weighed;
import io.github.formulationmath.weighing.WeighingMethod;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * What will really have been made: the formula that a weighing plan leads to, given the errors of the balance and the way
 * of weighing, when every display reads what the plan asks for.
 *
 * <p>The intervals are guaranteed as far as the errors have bounds: display, tare, linearity, residue, air. Repeatability
 * and calibration have none; they enter the uncertainties, and the intervals only through {@link
 * #covering(CoverageFactor)}. Losses on the way, evaporation above all, are not counted.
 *
 * <p>Example: {@code ExpectedProduct.of(plan, WeighingMethod.TARE_EACH).line("Glycerin").bounds()}.
 *
 * <p>Immutable and thread-safe.
 */
public final class ExpectedProduct implements Weighed, Lines<ExpectedLine> {

    private final WeighingPlan plan;
    private final MadeMasses masses;
    /** Made when somebody first asks; most only want to know the masses. */
    private volatile @Nullable List<ExpectedLine> lines;

    private ExpectedProduct(WeighingPlan plan, MadeMasses masses) {
        this.plan = plan;
        this.masses = masses;
    }

    /**
     * What a plan leads to, each line weighed on its balance in the order of the formula.
     *
     * @param plan the plan; the errors are those of the balance of each line, {@link Balance#errors()}
     * @param method how the additions on the balance of the bench are weighed; lines at another place are weighed as there
     * @return the product
     * @throws IllegalArgumentException if every reading of the plan is 0
     */
    public static ExpectedProduct of(WeighingPlan plan, WeighingMethod method) {
        Objects.requireNonNull(plan, "plan");
        Objects.requireNonNull(method, "method");
        List<Addition> additions = new ArrayList<>(plan.lines().size());
        for (PlannedLine line : plan.lines()) {
            additions.add(new Addition(
                    line.line(),
                    line.target().mass(),
                    line.reading(),
                    line.balance(),
                    line.method(method),
                    line.balance().errors().buoyancy()));
        }
        return new ExpectedProduct(plan, MadeMasses.of(additions));
    }

    /**
     * The same product with the unbounded errors of the balance taken into the intervals, each to k times its standard
     * deviation; see {@link MadeMasses#covering(CoverageFactor)}.
     *
     * @param factor the coverage factor k
     * @return the product with wider intervals
     */
    public ExpectedProduct covering(CoverageFactor factor) {
        return new ExpectedProduct(plan, masses.covering(factor));
    }

    /**
     * The plan.
     *
     * @return what the displays read
     */
    public WeighingPlan plan() {
        return plan;
    }

    /**
     * The formula of the plan.
     *
     * @return the formula
     */
    @Override
    public Formula formula() {
        return plan.batch().formula();
    }

    /**
     * The masses behind the shares, for the share of a substance that several lines contain.
     *
     * @return the masses in the order of the formula
     */
    @Override
    public MadeMasses masses() {
        return masses;
    }

    @Override
    public List<ExpectedLine> lines() {
        List<ExpectedLine> known = lines;
        if (known == null) {
            known = plan.lines().stream()
                    .map(line -> new ExpectedLine(line, masses))
                    .toList();
            lines = known;
        }
        return known;
    }

    /**
     * The lines that are not sure to keep their tolerance.
     *
     * @param tolerances how far each line may be off
     * @return those whose verdict is not {@link ToleranceVerdict#WITHIN}, in the order of the formula
     * @throws IllegalArgumentException if a tolerance names what is not in the formula
     */
    public List<ExpectedLine> notShownWithin(Tolerances tolerances) {
        Tolerances checked = Objects.requireNonNull(tolerances, "tolerances").checkedFor(formula());
        return lines().stream()
                .filter(line -> line.verdict(checked) != ToleranceVerdict.WITHIN)
                .toList();
    }

    @Override
    public String toString() {
        return plan.batch() + " as made: " + lines();
    }
}
