package io.github.formulationmath.size;

import io.github.formulationmath.batch.Batch;
import io.github.formulationmath.batch.BatchLine;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.plan.BalanceUnit;
import io.github.formulationmath.plan.Tolerances;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.reckoning.Entry.Comparison;
import io.github.formulationmath.reckoning.Kind;
import io.github.formulationmath.reckoning.Phrase;
import io.github.formulationmath.reckoning.Reckoning;
import io.github.formulationmath.reckoning.Subject;
import io.github.formulationmath.reckoning.Symbol;
import java.util.List;
import java.util.Optional;
import javax.measure.quantity.Mass;

/**
 * The coarsest display that weighs given batches within tolerance, counting rounding alone: the largest step d at which
 * every line of every batch has a whole number n with {@code |n − m/d| ≤ τ·m/d}.
 *
 * <p>It is the mirror image of the smallest batch. With u = 1/d a line takes m·u divisions, so the smallest passing u, found
 * by the same jumps over the masses of all lines, is one over the coarsest step. Finer steps may fail in between; {@link
 * #everyFinerFrom} says from where on none does.
 *
 * <p>Example: 200 g with a smallest line of 0.5 %, 1 g, within 5 %: the smallest line alone would allow d = 1.05 g, which
 * shows it as one division, 5 % too much.
 *
 * <p>Rounding is the least of what a balance does: its other errors may well ask for a finer display.
 *
 * <p>Immutable and thread-safe.
 */
final class CoarsestReadability {

    private static final Symbol STEP = Symbol.of("d", "coarsest-readability", Kind.MASS);
    private static final Symbol DIVISIONS = Symbol.of("x", "divisions-at-coarsest", Kind.NUMBER);

    private final List<Batch> batches;
    private final List<BatchLine> lines;
    private final Tolerances tolerances;
    private final Bands bands;
    private final Landing smallest;

    /** A step in the unit of the balance that is asked for. */
    private final Amount<Mass> unit;

    private CoarsestReadability(List<Batch> batches, Tolerances tolerances, SearchEffort effort, Amount<Mass> unit) {
        this.unit = unit;
        this.batches = batches;
        this.lines = batches.stream().flatMap(batch -> batch.lines().stream()).toList();
        this.tolerances = tolerances;
        this.bands = Bands.of(
                lines.stream().map(line -> line.mass().canonical()).toList(),
                lines.stream().map(line -> tolerances.fraction(line.line())).toList());
        this.smallest = bands.smallest(new SearchMeter(effort));
    }

    /** One display for all of the batches, of which there is at least one. */
    static CoarsestReadability of(List<Batch> batches, Tolerances tolerances, SearchEffort effort, Amount<Mass> unit) {
        tolerances.checkedFor(batches.stream().map(Batch::formula).toList());
        return new CoarsestReadability(batches, tolerances, effort, unit);
    }

    /** The coarsest step; every coarser one fails. */
    Amount<Mass> step() {
        return Amount.grams(smallest.at().reciprocal())
                .withWorking(asked -> Phrase.of("question.coarsest-readability"), this, CoarsestReadability::step)
                .inUnitOf(unit);
    }

    /** The step from which on every finer one passes; empty if some tolerance is 0. */
    Optional<Amount<Mass>> everyFinerFrom() {
        return bands.allFrom().map(u -> Amount.grams(u.reciprocal()).inUnitOf(unit));
    }

    /** Whether a step rounds every line of every batch within tolerance. */
    boolean serves(Amount<Mass> step) {
        return bands.passes(step.canonical().reciprocal());
    }

    private int binding() {
        return smallest.line().orElseThrow();
    }

    /** The line that forbids a coarser display. */
    BatchLine bindingLine() {
        return lines.get(binding());
    }

    /** d = m·(1 + τ)/n for the line that binds; and that every line has a whole number in its band. */
    private <V> V step(Reckoning<V> r) {
        BatchLine binding = bindingLine();
        Ratio share = Ratio.ONE.plus(tolerances.fraction(binding.line()));
        Ratio n = binding.mass().canonical().times(smallest.at()).times(share).floor();
        V reach = r.product(mass(r, binding, binding()), tolerances.most(r, binding.line()));
        V step = r.named(STEP, Subject.of("max", ""), r.quotient(reach, r.literal(n)));
        for (int i = 0; i < lines.size(); i++) {
            confirm(r, lines.get(i), i, step);
        }
        return step;
    }

    private <V> void confirm(Reckoning<V> r, BatchLine line, int index, V step) {
        Subject subject = subject(line, index);
        V under = tolerances.least(r, line.line());
        V over = tolerances.most(r, line.line());
        V x = r.named(DIVISIONS, subject, r.quotient(mass(r, line, index), step));
        V low = r.named(RoundingWithin.LEAST_DIVISIONS, subject, r.rounded(r.product(under, x), RoundingWithin.UP));
        V high = r.named(RoundingWithin.MOST_DIVISIONS, subject, r.rounded(r.product(over, x), RoundingWithin.DOWN));
        r.holds(low, Comparison.AT_MOST, high);
    }

    /** One batch explains its masses; those of several would share their symbols, and are given. */
    private <V> V mass(Reckoning<V> r, BatchLine line, int index) {
        return batches.size() == 1 ? r.known(line) : line.givenMass(r, subject(line, index));
    }

    private static Subject subject(BatchLine line, int index) {
        return Subject.of(Integer.toString(index + 1), line.name());
    }

    @Override
    public String toString() {
        String finer = everyFinerFrom()
                .map(from -> "; every d of at most " + greatest(from) + " passes, some in between may fail")
                .orElse("");
        return "d at most " + greatest(step().withoutWorking()) + ", counting the rounding of the display alone"
                + finer;
    }

    /** In the unit in which parts of the first batch are weighed. */
    private String greatest(Amount<Mass> step) {
        return BalanceUnit.greatest(step.inUnitOf(batches.get(0).mass().inSmallerUnit()), this::serves);
    }
}
