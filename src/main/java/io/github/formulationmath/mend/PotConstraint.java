package io.github.formulationmath.mend;

import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.formula.Substance;
import io.github.formulationmath.number.LinearProgram;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.pot.MadeBatch;
import io.github.formulationmath.pot.MadeLine;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.MassFraction;
import io.github.formulationmath.reckoning.Kind;
import io.github.formulationmath.reckoning.Reckoning;
import io.github.formulationmath.reckoning.Source;
import io.github.formulationmath.reckoning.Subject;
import io.github.formulationmath.reckoning.Symbol;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javax.measure.quantity.Mass;

/**
 * A condition on the additions {@code x_j} to a pot of mass Z, written so that it stays true when pot and additions are
 * made larger together: {@code Σ a_j · x_j − b ≥ 0}, where {@code −b} is what the pot itself brings. So the same condition
 * serves for masses added to this pot and for shares of a pot to come ({@link ShareConstraint}).
 *
 * <p>What the additions have to keep, with z in the pot and Z = Σ z: every share {@code (z_i + x_i)/(Z + Σx)} within its
 * tolerance, every cap, every further condition, every stock, the room. Multiplied by Z + Σx, all of it is linear in x.
 */
interface PotConstraint extends LinearProof.Constraint {

    /** The lines, from 0, whose additions have coefficients of their own; those of all other lines are the same. */
    List<Integer> own();

    /** What the condition is about, should it stand in the way. */
    Obstacle.Kind kind();

    /** Its numbers, for a pot of so many lines. */
    default Row row(int lines) {
        Reckoning<Ratio> plain = Reckoning.plain();
        Map<Integer, Ratio> own = new TreeMap<>();
        own().forEach(line -> own.put(line, coefficient(plain, line)));
        Ratio common = IntStream.range(0, lines)
                .filter(line -> !own.containsKey(line))
                .mapToObj(line -> coefficient(plain, line))
                .findFirst()
                .orElse(Ratio.ZERO);
        return new Row(common, Collections.unmodifiableMap(own), least(plain));
    }

    /**
     * A condition {@code Σ a_j·x_j ≥ b} of a pot in numbers, of which most coefficients are the same: it is held against additions
     * in as many steps as it has others, whatever the number of lines.
     *
     * @param common the coefficient of all lines that have none of their own
     * @param own the coefficients of the others, by line, from 0
     * @param least the right side b
     */
    record Row(Ratio common, Map<Integer, Ratio> own, Ratio least) {

        public Row {
            own = Collections.unmodifiableMap(own);
        }

        Ratio coefficient(int line) {
            return own.getOrDefault(line, common);
        }

        /** The lines that matter to it. */
        IntStream lines(int all) {
            return common.isZero()
                    ? own.keySet().stream().mapToInt(line -> line)
                    : IntStream.range(0, all).filter(line -> !coefficient(line).isZero());
        }

        /** How much of b is passed by additions with that total: not below 0 if the condition is kept. */
        Ratio slack(List<Ratio> x, Ratio total) {
            Ratio sum = common.times(total).minus(least);
            for (Map.Entry<Integer, Ratio> each : own.entrySet()) {
                sum = sum.plus(each.getValue().minus(common).times(x.get(each.getKey())));
            }
            return sum;
        }

        /** The same as a row of a linear program. */
        LinearProgram.Row dense(int lines) {
            return new LinearProgram.Row(
                    IntStream.range(0, lines).mapToObj(this::coefficient).toList(), least);
        }
    }

    /** A condition of the contents, which can be eased if it cannot be kept; the bench gives nothing. */
    interface OfContents extends PotConstraint {

        /**
         * What one unit of slack is worth, for each gram in the new pot: the share asked for of a line, the cap of a substance.
         *
         * @param r the arithmetic to use
         * @param <V> what a value is
         * @return the worth
         */
        <V> V slack(Reckoning<V> r);
    }

    /** A condition that is eased as little as can be, before anything is asked of the lines. */
    interface Yielding extends OfContents {

        /**
         * Those that are yielded first are kept first.
         *
         * @return the place in the order
         */
        int rank();

        /**
         * The same with so many units of slack.
         *
         * @param slack how many
         * @return the eased condition
         */
        Yielding eased(Ratio slack);
    }

    /** Everything that rules ask for. */
    static List<PotConstraint> of(MadeBatch made, CorrectionRules rules) {
        List<PotConstraint> all = new ArrayList<>();
        for (MadeLine line : made.lines()) {
            MassFraction tolerance = rules.tolerances().forLine(line.line());
            all.addAll(ofLine(made, line, tolerance.fraction(), tolerance.source()));
        }
        all.addAll(yielding(made, rules));
        all.addAll(ofBench(made, rules));
        return all;
    }

    /** That every line is off by a share of its own at most. */
    static List<OfLine> ofLines(MadeBatch made, Ratio deviation) {
        return made.lines().stream()
                .flatMap(line -> ofLine(made, line, deviation, Source.user()).stream())
                .toList();
    }

    private static List<OfLine> ofLine(MadeBatch made, MadeLine line, Ratio tolerance, Source source) {
        return List.of(
                new OfLine(made, line, tolerance, source, false), new OfLine(made, line, tolerance, source, true));
    }

    /** Every cap, and every condition that comes from elsewhere. */
    static List<Yielding> yielding(MadeBatch made, CorrectionRules rules) {
        List<Yielding> all = new ArrayList<>();
        rules.caps().forEach((substance, most) -> all.add(new Capped(made, all.size() + 1, substance, most)));
        for (Condition condition : rules.conditions()) {
            all.add(new Kept(made, condition, all.size(), Ratio.ZERO));
        }
        return all;
    }

    /** What is there to add, and room for it. */
    static List<PotConstraint> ofBench(MadeBatch made, CorrectionRules rules) {
        List<PotConstraint> all = new ArrayList<>(stocks(made, rules));
        all.add(new Room(made, Amount.grams(rules.roomFor(made)).inUnitOf(made.mass())));
        return all;
    }

    /**
     * How much can be added of some lines together: nothing of a line that is frozen, and of all lines of one ingredient, in
     * whatever phases they stand, what is left of it; in the order in which their first lines stand in the formula.
     */
    private static List<PotConstraint> stocks(MadeBatch made, CorrectionRules rules) {
        Map<String, Amount<Mass>> left = new LinkedHashMap<>();
        Amount<Mass> nothing = made.mass().times(0);
        rules.stock().forEach((line, amount) -> left.put(line.ingredient().normalName(), amount));
        Map<String, List<FormulaLine>> open = new LinkedHashMap<>();
        List<Stock> all = new ArrayList<>();
        for (FormulaLine line : made.formula().lines()) {
            String name = line.ingredient().normalName();
            if (rules.frozen().contains(line)) {
                all.add(new Stock(Obstacle.Kind.LINE_FROZEN, List.of(line), nothing));
            } else if (left.containsKey(name)) {
                open.computeIfAbsent(name, n -> new ArrayList<>()).add(line);
            }
        }
        open.forEach((name, lines) ->
                all.add(new Stock(Obstacle.Kind.STOCK_OUT, List.copyOf(lines), left.getOrDefault(name, nothing))));
        all.sort(Comparator.comparingInt(stock -> stock.first().index()));
        return List.copyOf(all);
    }

    /** Whether it is about what displays show, as what is taken of a stock, and not about what is in the pot. */
    static boolean isOfShown(PotConstraint constraint) {
        return constraint instanceof Stock;
    }

    /** What every line that is weighed in one go on a balance of its own must not pass: what that balance carries. */
    static Stream<PotConstraint> carried(MadeBatch made) {
        return made.lines().stream()
                .filter(line -> !line.isOnBench())
                .map(line -> new Stock(Obstacle.Kind.VESSEL_FULL, List.of(line.line()), line.carried()));
    }

    /**
     * What one line has to keep: {@code x_i − lo·Σx ≥ lo·Z − z_i} with {@code lo = w(1 − τ)}, or {@code hi·Σx − x_i ≥ z_i −
     * hi·Z} with {@code hi = w(1 + τ)}. Its slack counts by the share asked for.
     */
    record OfLine(MadeBatch made, MadeLine line, Ratio tolerance, Source source, boolean isMost) implements OfContents {

        private static final Symbol TOLERANCE = Symbol.of("τ", "line-tolerance", Kind.SHARE);
        private static final Symbol LEAST = Symbol.of("lo", "least-share", Kind.SHARE);
        private static final Symbol MOST = Symbol.of("hi", "largest-share", Kind.SHARE);

        @Override
        public List<Integer> own() {
            return List.of(line.index());
        }

        @Override
        public Obstacle.Kind kind() {
            return isMost ? Obstacle.Kind.LINE_TOO_MUCH : Obstacle.Kind.LINE_TOO_LITTLE;
        }

        @Override
        public String name() {
            return line.name();
        }

        @Override
        public <V> V coefficient(Reckoning<V> r, int unknown) {
            boolean own = unknown == line.index();
            if (isMost) {
                return own ? r.difference(end(r), r.literal(1)) : end(r);
            }
            return r.difference(r.literal(own ? 1 : 0), end(r));
        }

        @Override
        public <V> V least(Reckoning<V> r) {
            return isMost
                    ? r.difference(r.known(line), r.product(end(r), r.known(made)))
                    : r.difference(r.product(end(r), r.known(made)), r.known(line));
        }

        @Override
        public <V> V slack(Reckoning<V> r) {
            return r.known(line.line());
        }

        private <V> V end(Reckoning<V> r) {
            V share = r.known(line.line());
            V one = r.literal(1);
            V off = r.given(TOLERANCE, line.line(), tolerance, source);
            return isMost
                    ? r.named(MOST, line.line(), r.product(share, r.sum(one, off)))
                    : r.named(LEAST, line.line(), r.product(share, r.difference(one, off)));
        }
    }

    /** The most g that a substance may make up, by the strengths c of the lines: {@code Σ (g − c_j)·x_j ≥ Σ c_j·z_j − g·Z}. */
    record Capped(MadeBatch made, int number, Substance substance, MassFraction most) implements Yielding, Subject {

        private static final Symbol CAP = Symbol.of("cap", "cap", Kind.SHARE);
        private static final Symbol STRENGTH = Symbol.of("c", "strength", Kind.SHARE);

        @Override
        public List<Integer> own() {
            return IntStream.range(0, made.lines().size())
                    .filter(i -> isIn(made.lines().get(i).line()))
                    .boxed()
                    .toList();
        }

        @Override
        public Obstacle.Kind kind() {
            return Obstacle.Kind.CAP;
        }

        @Override
        public String name() {
            return substance.name();
        }

        @Override
        public String subscript() {
            return Integer.toString(number);
        }

        @Override
        public <V> V coefficient(Reckoning<V> r, int unknown) {
            FormulaLine line = made.lines().get(unknown).line();
            return isIn(line) ? r.difference(cap(r), strength(r, line)) : cap(r);
        }

        @Override
        public <V> V least(Reckoning<V> r) {
            List<V> there = new ArrayList<>();
            for (MadeLine line : made.lines()) {
                if (isIn(line.line())) {
                    there.add(r.product(strength(r, line.line()), r.known(line)));
                }
            }
            V allowed = r.product(cap(r), r.known(made));
            return there.isEmpty() ? r.product(r.literal(-1), allowed) : r.difference(r.sum(there), allowed);
        }

        /** The excess counts by the cap: half of a small cap is no less than half of a large one. Of a cap of 0 it is a share. */
        @Override
        public <V> V slack(Reckoning<V> r) {
            return isBan() ? r.literal(1) : cap(r);
        }

        /** Nothing is relative to a cap of 0, so that these come before the others. */
        @Override
        public int rank() {
            return isBan() ? Integer.MAX_VALUE - 1 : Integer.MAX_VALUE;
        }

        @Override
        public Capped eased(Ratio slack) {
            Ratio share = slack(Reckoning.plain()).times(slack);
            return new Capped(
                    made, number, substance, MassFraction.of(most.fraction().plus(share)));
        }

        private boolean isBan() {
            return most.fraction().isZero();
        }

        private boolean isIn(FormulaLine line) {
            return line.ingredient().strengthOf(substance).isPresent();
        }

        private <V> V cap(Reckoning<V> r) {
            return r.given(CAP, this, most.fraction(), most.source());
        }

        private <V> V strength(Reckoning<V> r, FormulaLine line) {
            Ratio strength =
                    line.ingredient().strengthOf(substance).orElseThrow().fraction();
            return r.given(STRENGTH, Subject.of(number + "," + line.subscript(), line.name()), strength, Source.user());
        }
    }

    /** A condition from elsewhere, {@code Σ (a_j + t)·x_j ≥ b − Σ a_j·z_j − t·Z}, t being how far it is eased. */
    record Kept(MadeBatch made, Condition condition, int rank, Ratio easing) implements Yielding {

        private static final Symbol RESERVE = Symbol.of("β", "condition-reserve", Kind.MASS);

        @Override
        public List<Integer> own() {
            return IntStream.range(0, made.lines().size()).boxed().toList();
        }

        @Override
        public Obstacle.Kind kind() {
            return Obstacle.Kind.CONDITION;
        }

        @Override
        public String name() {
            return condition.name();
        }

        @Override
        public <V> V coefficient(Reckoning<V> r, int unknown) {
            V own = condition.coefficient(r, made.lines().get(unknown).line());
            return easing.isZero() ? own : r.sum(own, r.literal(easing));
        }

        @Override
        public <V> V least(Reckoning<V> r) {
            List<V> there = new ArrayList<>();
            for (MadeLine line : made.lines()) {
                V coefficient = coefficient(r, line.index());
                if (!r.number(coefficient).isZero()) {
                    there.add(r.product(coefficient, r.known(line)));
                }
            }
            V lacking = there.isEmpty() ? r.literal(0) : r.product(r.literal(-1), r.sum(there));
            Ratio reserve = condition.reserve().canonical();
            return reserve.isZero() ? lacking : r.sum(lacking, r.given(RESERVE, reserve, Source.user()));
        }

        @Override
        public <V> V slack(Reckoning<V> r) {
            return r.literal(1);
        }

        @Override
        public Kept eased(Ratio slack) {
            return new Kept(made, condition, rank, easing.plus(slack));
        }
    }

    /** −Σx_i ≥ −s over some lines. */
    record Stock(Obstacle.Kind kind, List<FormulaLine> lines, Amount<Mass> most) implements PotConstraint {

        public Stock {
            lines = List.copyOf(lines);
        }

        private static final Symbol STOCK = Symbol.of("s", "stock-left", Kind.MASS);

        /** The line whose name it goes by. */
        FormulaLine first() {
            return lines.get(0);
        }

        @Override
        public List<Integer> own() {
            return lines.stream().map(FormulaLine::index).toList();
        }

        @Override
        public String name() {
            return first().name();
        }

        @Override
        public <V> V coefficient(Reckoning<V> r, int unknown) {
            return r.literal(own().contains(unknown) ? -1 : 0);
        }

        @Override
        public <V> V least(Reckoning<V> r) {
            return r.product(r.literal(-1), r.given(STOCK, first(), most, Source.user()));
        }
    }

    /** −Σx ≥ Z − C. */
    record Room(MadeBatch made, Amount<Mass> room) implements PotConstraint {

        private static final Symbol ROOM = Symbol.of("C", "room-in-pot", Kind.MASS);

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
            return r.difference(r.known(made), r.given(ROOM, room, Source.user()));
        }
    }
}
