package io.github.formulationmath.record;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.FormulationUnits;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import javax.measure.quantity.Mass;

/**
 * How much can be added, in grams, of some lines together, and why no more: nothing of a line that is frozen, and of all
 * lines of one ingredient, in whatever phases they stand, what is left of it.
 */
record AdditionLimit(Obstacle.Kind kind, List<FormulaLine> lines, Ratio grams) implements Serializable {

    /** All limits, in the order in which their first lines stand in the formula. */
    static List<AdditionLimit> of(Formula formula, Set<FormulaLine> frozen, Map<FormulaLine, Amount<Mass>> stock) {
        Map<String, Amount<Mass>> left = new LinkedHashMap<>();
        stock.forEach((line, amount) -> left.put(line.ingredient().normalName(), amount));
        Map<String, List<FormulaLine>> open = new LinkedHashMap<>();
        List<AdditionLimit> all = new ArrayList<>();
        for (FormulaLine line : formula.lines()) {
            if (frozen.contains(line)) {
                all.add(new AdditionLimit(Obstacle.Kind.LINE_FROZEN, List.of(line), Ratio.ZERO));
            } else if (left.containsKey(line.ingredient().normalName())) {
                open.computeIfAbsent(line.ingredient().normalName(), name -> new ArrayList<>())
                        .add(line);
            }
        }
        open.forEach((name, lines) -> all.add(new AdditionLimit(
                Obstacle.Kind.STOCK_OUT,
                List.copyOf(lines),
                grams(left.getOrDefault(name, Amount.grams(Ratio.ZERO))))));
        all.sort((a, b) -> Integer.compare(a.first().position(), b.first().position()));
        return all;
    }

    private static Ratio grams(Amount<Mass> amount) {
        return amount.in(FormulationUnits.GRAM);
    }

    /** The line whose name it goes by. */
    FormulaLine first() {
        return lines.get(0);
    }

    boolean contains(int line) {
        return lines.stream().anyMatch(each -> each.index() == line);
    }
}
