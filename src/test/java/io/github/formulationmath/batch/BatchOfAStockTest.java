package io.github.formulationmath.batch;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.FormulaBuilder;
import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/** The batch that uses up a stock needs just that. */
final class BatchOfAStockTest {

    /** Three spellings of one name, and another ingredient. */
    private static final List<String> NAMES = List.of("Glycerin", "GLYCERIN", "glycerin", "Aqua");

    /** A line in a phase of its own: which name, and its parts. */
    record Line(int name, int parts) {

        boolean isStocked() {
            return name < 3;
        }
    }

    record Case(List<Line> lines, int stock) {

        Formula formula() {
            FormulaBuilder parts = Formula.inParts("random");
            for (int i = 0; i < lines.size(); i++) {
                parts.phase("phase " + i).line(NAMES.get(lines.get(i).name), Integer.toString(lines.get(i).parts));
            }
            return parts.build();
        }

        /** A line of the stocked ingredient: not always the first. */
        FormulaLine stocked(Formula formula) {
            FormulaLine found = formula.lines().get(0);
            for (int i = 1; i < lines.size(); i++) {
                found = lines.get(i).isStocked() ? formula.lines().get(i) : found;
            }
            return found;
        }
    }

    @Provide
    Arbitrary<Case> cases() {
        Arbitrary<Line> line = Combinators.combine(
                        Arbitraries.integers().between(0, 3),
                        Arbitraries.integers().between(1, 20))
                .as(Line::new);
        Arbitrary<Line> first = line.map(l -> new Line(0, l.parts));
        return Combinators.combine(
                        first,
                        line.list().ofMinSize(1).ofMaxSize(5),
                        Arbitraries.integers().between(1, 120))
                .as((one, others, stock) -> {
                    List<Line> all = new ArrayList<>(others);
                    all.add(0, one);
                    return new Case(all, stock);
                });
    }

    @Property(tries = 300)
    void the_batch_that_uses_up_a_stock_needs_just_that(@ForAll("cases") Case one) {
        Formula formula = one.formula();
        Batch batch = Batch.of(formula, BatchSize.ofStock(one.stocked(formula), Amount.grams(Ratio.of(one.stock))));
        Ratio needed = Ratio.ZERO;
        for (BatchLine line : batch.lines()) {
            needed = one.lines.get(line.line().index()).isStocked()
                    ? needed.plus(line.mass().canonical())
                    : needed;
        }
        assertThat(needed).isEqualTo(Ratio.of(one.stock));
    }
}
