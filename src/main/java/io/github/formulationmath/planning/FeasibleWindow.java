package io.github.formulationmath.planning;

import io.github.formulationmath.number.Excerpt;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.FormulationUnits;
import io.github.formulationmath.scaling.Batch;
import io.github.formulationmath.scaling.BatchSize;
import java.io.Serial;
import java.util.Objects;
import java.util.Optional;
import javax.measure.quantity.Mass;

/**
 * A window with something in it: its smallest and largest batch, both of which pass.
 *
 * <p>Immutable and thread-safe.
 */
public final class FeasibleWindow extends WindowAnswer implements BatchWindow {

    @Serial
    private static final long serialVersionUID = 1L;

    private final WindowEnd smallest;
    private final WindowEnd largest;

    FeasibleWindow(WindowQuestion question, WindowEnd smallest, WindowEnd largest) {
        super(question);
        this.smallest = smallest;
        this.largest = largest;
    }

    /**
     * The smallest batch and what forbids less.
     *
     * @return the lower end; never empty here
     */
    @Override
    public Optional<WindowEnd> smallest() {
        return Optional.of(smallest);
    }

    /**
     * The smallest batch and what forbids less.
     *
     * @return the lower end
     */
    public WindowEnd lowerEnd() {
        return smallest;
    }

    /**
     * The largest batch and what forbids more. The batch and the readings of its plan, which may add up to more, fit the
     * bench.
     *
     * @return the upper end; never empty here
     */
    @Override
    public Optional<WindowEnd> largest() {
        return Optional.of(largest);
    }

    /**
     * The largest batch and what forbids more, as {@link #largest()}.
     *
     * @return the upper end
     */
    public WindowEnd upperEnd() {
        return largest;
    }

    /**
     * The smallest size from which on every size up to the largest passes; below it there are gaps, unless it is the
     * smallest batch. Where the sizes stand apart, in steps for example, it is the largest.
     *
     * @return the mass in the unit of the balance, exact
     */
    public Amount<Mass> everySizeFrom() {
        Ratio start = question().requirements().unbrokenFrom(largest.result()).max(smallest.result());
        return BalanceUnit.amount(bench().balance(), start);
    }

    /**
     * The plan of a batch in the window, under the closure that shows what the criteria ask for: the readings that {@link
     * BatchCriterion#madeWithin(Tolerances)} speaks of are within its tolerances, those of {@link
     * BatchCriterion#roundingWithin} within its own, if both are asked the former. Without either it is the closure of the
     * bench, under which every size of the window can be planned in any case.
     *
     * @param size a batch mass
     * @return its plan
     * @throws IllegalArgumentException if {@link #contains(Amount)} is false of the size
     */
    public WeighingPlan plan(Amount<Mass> size) {
        if (!contains(size)) {
            throw new IllegalArgumentException(
                    "size is " + Excerpt.of(size) + ", which cannot be made: take one that the window" + " contains, "
                            + Excerpt.of(nearest(size).orElseThrow()) + " for example");
        }
        return WeighingPlan.of(
                Batch.of(formula(), BatchSize.ofMass(size)), constraints().showing(bench()));
    }

    /**
     * The plan of a batch in the window, its size as text.
     *
     * @param size a batch mass, for example {@code "120 g"}
     * @return its plan
     * @throws IllegalArgumentException if the text is no mass, or {@link #contains(Amount)} is false of the size
     */
    public WeighingPlan plan(String size) {
        return plan(Amount.mass(size));
    }

    /**
     * Whether a size lies in the window and meets every constraint.
     *
     * @param size a batch mass
     * @return true if it can be made
     */
    @Override
    public boolean contains(Amount<Mass> size) {
        Ratio grams = Objects.requireNonNull(size, "size").in(FormulationUnits.GRAM);
        if (grams.compareTo(smallest.result()) < 0 || grams.compareTo(largest.result()) > 0) {
            return false;
        }
        return rest(grams).map(rest -> rest.landing().at().equals(grams)).orElse(false);
    }

    /**
     * The size in the window nearest to a wish; of two at the same distance, the smaller.
     *
     * @param wish the batch mass wished for
     * @return a size that can be made, in the unit of the balance; never empty here
     * @throws SearchLimitException if the search reaches its limit
     */
    @Override
    public Optional<Amount<Mass>> nearest(Amount<Mass> wish) {
        Ratio grams = Objects.requireNonNull(wish, "wish").in(FormulationUnits.GRAM);
        Ratio inside = grams.max(smallest.result()).min(largest.result());
        Ratio above = rest(inside).orElseThrow().landing().at();
        Ratio below = question()
                .requirements()
                .atMost(inside, new SearchMeter(SearchEffort.standard()))
                .orElseThrow()
                .landing()
                .at();
        boolean down = inside.minus(below).compareTo(above.minus(inside)) <= 0;
        return Optional.of(BalanceUnit.amount(bench().balance(), down ? below : above));
    }

    private Optional<JointRequirement.Rest> rest(Ratio from) {
        return question().requirements().atLeast(from, new SearchMeter(SearchEffort.standard()), largest.result());
    }

    /** Both ends, where the gaps between them end, and what was not considered. */
    @Override
    public String toString() {
        return formula().name() + ": from " + BalanceUnit.text(smallest.mass()) + " to "
                + BalanceUnit.text(largest.mass()) + gaps() + unconsidered();
    }

    private String gaps() {
        Amount<Mass> start = everySizeFrom();
        if (start.compareTo(smallest.mass()) == 0) {
            return "";
        }
        return start.compareTo(largest.mass()) == 0
                ? ", with gaps between"
                : ", with gaps below " + BalanceUnit.text(start);
    }
}
