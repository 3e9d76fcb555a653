package io.github.formulationmath.mend;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.formulationmath.batch.Batch;
import io.github.formulationmath.batch.BatchSize;
import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.FormulaBuilder;
import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.plan.Tolerances;
import io.github.formulationmath.plan.WeighingPlan;
import io.github.formulationmath.pot.LineAddition;
import io.github.formulationmath.pot.MadeBatch;
import io.github.formulationmath.pot.Reading;
import io.github.formulationmath.pot.Readings;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.weighing.WeighingMethod;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToIntFunction;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/** A stock is of an ingredient, not of a line: nothing that was worked out from it needs more of it over all phases. */
final class StockOverAllLinesTest {

    /** Three spellings of one name, and another ingredient. */
    private static final List<String> NAMES = List.of("Glycerin", "GLYCERIN", "glycerin", "Aqua");

    /** A line in a phase of its own: which name, its parts, and the grams that were read of it. */
    record Line(int name, int parts, int read) {

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

        int sum(ToIntFunction<Line> number) {
            return lines.stream().filter(Line::isStocked).mapToInt(number).sum();
        }

        MadeBatch made() {
            WeighingPlan plan =
                    WeighingPlan.of(Batch.of(formula(), BatchSize.ofMass("100 g")), Balance.of("1 g", "1000 kg"));
            List<Reading> readings = new ArrayList<>();
            for (int i = 0; i < lines.size(); i++) {
                readings.add(
                        Reading.of(plan.batch().formula().lines().get(i), Amount.grams(Ratio.of(lines.get(i).read))));
            }
            return MadeBatch.of(Readings.of(plan, WeighingMethod.TARE_EACH, readings));
        }

        Ratio stockedGrams(List<LineAddition> additions) {
            return additions.stream()
                    .filter(addition -> lines.get(addition.line().index()).isStocked())
                    .map(addition -> addition.mass().exactValue())
                    .reduce(Ratio.ZERO, Ratio::plus);
        }
    }

    @Provide
    Arbitrary<Case> cases() {
        Arbitrary<Line> line = Combinators.combine(
                        Arbitraries.integers().between(0, 3),
                        Arbitraries.integers().between(1, 20),
                        Arbitraries.integers().between(1, 60))
                .as(Line::new);
        Arbitrary<Line> first = line.map(l -> new Line(0, l.parts, l.read));
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
    void no_addition_takes_more_than_the_stock(@ForAll("cases") Case one) {
        MadeBatch made = one.made();
        Ratio stock = Ratio.of(one.stock);
        CorrectionRules rules = CorrectionRules.within(Tolerances.of("5 %"))
                .withStock(one.stocked(made.plan().batch().formula()), Amount.grams(stock));
        Correction correction = Correction.smallest(made, rules);
        assertThat(one.stockedGrams(correction.additions())).isLessThanOrEqualTo(stock);
        DisplayedAdditions displayed = correction.onDisplay();
        assertThat(!displayed.isWithin()
                        || one.stockedGrams(displayed.additions()).compareTo(stock) <= 0)
                .isTrue();
    }

    /** Restoring is possible if and only if the stock suffices: the grams needed are worked out in integers, times the parts. */
    @Property(tries = 300)
    void restoring_is_possible_if_the_stock_suffices_for_all_lines(@ForAll("cases") Case one) {
        MadeBatch made = one.made();
        Line most = one.lines.stream()
                .max((a, b) -> Integer.compare(a.read * b.parts, b.read * a.parts))
                .orElseThrow();
        // Each line is to have its parts times most.read / most.parts.
        long neededTimesParts = (long) one.sum(Line::parts) * most.read - (long) one.sum(Line::read) * most.parts;
        CorrectionRules rules = CorrectionRules.within(Tolerances.of("5 %"))
                .withStock(one.stocked(made.plan().batch().formula()), Amount.grams(Ratio.of(one.stock)));
        assertThat(Correction.restoring(made, rules).obstacles().isEmpty())
                .isEqualTo(neededTimesParts <= (long) one.stock * most.parts);
    }

    @Property(tries = 50)
    void a_stock_given_again_replaces_the_one_before(@ForAll("cases") Case one) {
        List<FormulaLine> lines = one.formula().lines();
        CorrectionRules rules = CorrectionRules.within(Tolerances.of("5 %"))
                .withStock(lines.get(0), Amount.mass("1 g"))
                .withStock(one.stocked(one.formula()), Amount.mass("2 g"));
        assertThat(rules.stock()).hasSize(1).containsValue(Amount.mass("2 g"));
    }
}
