package io.github.formulationmath.record;

import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.working.Kind;
import io.github.formulationmath.working.Reckoning;
import io.github.formulationmath.working.Source;
import io.github.formulationmath.working.Symbol;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.stream.IntStream;

/**
 * What the additions x have to keep, with z in the pot and Z = Σ z: every share {@code (z_i + x_i)/(Z + Σx)} within its
 * allowance, every cap, every stock, the room. Multiplied by Z + Σx, all of it is linear in x.
 */
final class PotConditions {

    private static final Symbol STOCK = Symbol.of("s", "stock-left", Kind.MASS);
    private static final Symbol ROOM = Symbol.of("C", "room-in-pot", Kind.MASS);

    private PotConditions() {}

    /** All conditions, with an allowance per line and caps of one's own. */
    static List<PotCondition> of(
            MadeBatch made, CorrectionRules rules, Function<FormulaLine, Allowance> allowances, List<Cap> caps) {
        List<PotCondition> all = new ArrayList<>(ofLines(made, allowances));
        all.addAll(ofCaps(made, caps));
        all.addAll(ofBench(made, rules));
        return all;
    }

    /** What every line has to keep. */
    static List<PotCondition> ofLines(MadeBatch made, Function<FormulaLine, Allowance> allowances) {
        List<PotCondition> all = new ArrayList<>();
        for (MadeLine line : made.lines()) {
            Allowance allowance = allowances.apply(line.line());
            all.add(new TooLittle(made, line, allowance));
            all.add(new TooMuch(made, line, allowance));
        }
        return all;
    }

    /** What every cap asks for. */
    static List<PotCondition> ofCaps(MadeBatch made, List<Cap> caps) {
        List<PotCondition> all = new ArrayList<>();
        caps.forEach(cap -> all.add(new Capped(made, cap)));
        return all;
    }

    /** What is there to add, and room for it. */
    static List<PotCondition> ofBench(MadeBatch made, CorrectionRules rules) {
        List<PotCondition> all = new ArrayList<>();
        rules.limits(made.plan().batch().formula()).forEach(limit -> all.add(new Stock(limit)));
        all.add(new Room(made, rules.roomFor(made)));
        return all;
    }

    /** What one line has to keep; its slack counts by the share asked for. */
    private interface OfLine extends PotCondition {

        MadeLine line();

        @Override
        default List<Integer> own() {
            return List.of(line().index());
        }

        @Override
        default String name() {
            return line().name();
        }

        @Override
        default <V> V slack(Reckoning<V> r) {
            return r.known(line().line());
        }
    }

    /** x_i − lo·Σx ≥ lo·Z − z_i. */
    private record TooLittle(MadeBatch made, MadeLine line, Allowance allowance) implements OfLine {
        @Override
        public Obstacle.Kind kind() {
            return Obstacle.Kind.LINE_TOO_LITTLE;
        }

        @Override
        public <V> V coefficient(Reckoning<V> r, int unknown) {
            boolean own = unknown == line.index();
            return r.difference(r.literal(own ? 1 : 0), allowance.least(r));
        }

        @Override
        public <V> V least(Reckoning<V> r) {
            return r.difference(r.product(allowance.least(r), r.known(made)), r.known(line));
        }
    }

    /** hi·Σx − x_i ≥ z_i − hi·Z. */
    private record TooMuch(MadeBatch made, MadeLine line, Allowance allowance) implements OfLine {
        @Override
        public Obstacle.Kind kind() {
            return Obstacle.Kind.LINE_TOO_MUCH;
        }

        @Override
        public <V> V coefficient(Reckoning<V> r, int unknown) {
            boolean own = unknown == line.index();
            return own ? r.difference(allowance.most(r), r.literal(1)) : allowance.most(r);
        }

        @Override
        public <V> V least(Reckoning<V> r) {
            return r.difference(r.known(line), r.product(allowance.most(r), r.known(made)));
        }
    }

    /** Σ (g − c_j)·x_j ≥ Σ c_j·z_j − g·Z. */
    private record Capped(MadeBatch made, Cap cap) implements PotCondition {
        @Override
        public List<Integer> own() {
            return IntStream.range(0, made.lines().size())
                    .filter(i -> cap.isIn(made.lines().get(i).line()))
                    .boxed()
                    .toList();
        }

        @Override
        public Obstacle.Kind kind() {
            return Obstacle.Kind.CAP;
        }

        @Override
        public String name() {
            return cap.name();
        }

        @Override
        public <V> V coefficient(Reckoning<V> r, int unknown) {
            FormulaLine line = made.lines().get(unknown).line();
            return cap.isIn(line) ? r.difference(cap.cap(r), cap.strength(r, line)) : cap.cap(r);
        }

        @Override
        public <V> V least(Reckoning<V> r) {
            List<V> there = cap.parts(r, made.lines(), r::known);
            V allowed = r.product(cap.cap(r), r.known(made));
            return there.isEmpty() ? r.product(r.literal(-1), allowed) : r.difference(r.sum(there), allowed);
        }

        /** The excess counts by the cap: half of a small cap is no less than half of a large one. Of a cap of 0 it is a share. */
        @Override
        public <V> V slack(Reckoning<V> r) {
            return cap.isBan() ? r.literal(1) : cap.cap(r);
        }
    }

    /** −Σx_i ≥ −s over the lines of one ingredient. */
    private record Stock(AdditionLimit limit) implements PotCondition {
        @Override
        public List<Integer> own() {
            return limit.lines().stream().map(FormulaLine::index).toList();
        }

        @Override
        public Obstacle.Kind kind() {
            return limit.kind();
        }

        @Override
        public String name() {
            return limit.first().name();
        }

        @Override
        public <V> V coefficient(Reckoning<V> r, int unknown) {
            return r.literal(limit.contains(unknown) ? -1 : 0);
        }

        @Override
        public <V> V least(Reckoning<V> r) {
            return r.product(r.literal(-1), r.given(STOCK, limit.first(), limit.grams(), Source.user()));
        }
    }

    /** −Σx ≥ Z − C. */
    private record Room(MadeBatch made, Ratio grams) implements PotCondition {
        @Override
        public List<Integer> own() {
            return List.of();
        }

        @Override
        public Obstacle.Kind kind() {
            return Obstacle.Kind.VESSEL_FULL;
        }

        @Override
        public <V> V coefficient(Reckoning<V> r, int unknown) {
            return r.literal(-1);
        }

        @Override
        public <V> V least(Reckoning<V> r) {
            return r.difference(r.known(made), r.given(ROOM, grams, Source.user()));
        }
    }
}
