package io.github.formulationmath.scaling;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.number.Excerpt;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.FormulationUnits;
import io.github.formulationmath.working.Kind;
import io.github.formulationmath.working.Reckoning;
import io.github.formulationmath.working.Source;
import io.github.formulationmath.working.Symbol;
import java.io.Serial;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import javax.measure.quantity.Mass;
import org.jspecify.annotations.Nullable;

/**
 * A batch that uses up one ingredient: {@code M = m / Σw} over all lines of the ingredient. Made by {@link
 * BatchSize#ofStock}.
 *
 * <p>Immutable and thread-safe.
 */
public final class StockSize extends BatchSize {

    @Serial
    private static final long serialVersionUID = 1L;

    private static final Symbol STOCK = Symbol.of("q", "stock", Kind.MASS);

    private final FormulaLine line;
    private final Amount<Mass> stock;

    StockSize(FormulaLine line, Amount<Mass> stock) {
        this.line = line;
        this.stock = stock;
    }

    @Override
    <V> V mass(Reckoning<V> r, Formula formula) {
        if (!formula.lines().contains(line)) {
            throw new IllegalArgumentException(Excerpt.of(line) + " is not a line of \"" + Excerpt.of(formula.name())
                    + "\": take the line from this formula");
        }
        V inStock = r.given(STOCK, line, stock.in(FormulationUnits.GRAM), Source.user());
        List<V> shares = new ArrayList<>(1);
        for (FormulaLine each : formula.lines()) {
            if (each.isNamed(line.name())) {
                shares.add(r.known(each));
            }
        }
        return r.named(BATCH_MASS, r.quotient(inStock, shares.size() == 1 ? shares.get(0) : r.sum(shares)));
    }

    /**
     * A line whose ingredient is in stock; the other lines of the ingredient need it as well.
     *
     * @return the line
     */
    public FormulaLine line() {
        return line;
    }

    /**
     * How much of it there is.
     *
     * @return the mass as given, above 0
     */
    public Amount<Mass> stock() {
        return stock;
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof StockSize that && line.equals(that.line) && stock.equals(that.stock);
    }

    @Override
    public int hashCode() {
        return Objects.hash(line, stock);
    }

    @Override
    public String toString() {
        return "all of " + stock + " " + line.name();
    }
}
