package io.github.formulationmath.planning;

import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.FormulationUnits;
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
     * @return the lower end
     */
    public WindowEnd smallest() {
        return smallest;
    }

    /**
     * The largest batch and what forbids more. It is a bound for the exact mass: readings rounded each by itself may add up
     * to a few divisions more, and a plan of the very largest batch is then refused for them; {@link Closure} says how to
     * close the total.
     *
     * @return the upper end
     */
    public WindowEnd largest() {
        return largest;
    }

    /**
     * Whether a size lies in the window and meets every constraint.
     *
     * @param size a batch mass
     * @return true if it can be made
     */
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
     * @return a size that can be made, in the unit of the balance
     * @throws SearchLimitException if the search reaches its limit
     */
    public Amount<Mass> nearest(Amount<Mass> wish) {
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
        return BalanceUnit.amount(bench().balance(), down ? below : above);
    }

    private Optional<JointRequirement.Rest> rest(Ratio from) {
        return question().requirements().atLeast(from, new SearchMeter(SearchEffort.standard()), largest.result());
    }

    @Override
    public String toString() {
        return formula().name() + ": from " + smallest.mass() + " to " + largest.mass();
    }
}
