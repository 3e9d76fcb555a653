package io.github.formulationmath.record;

import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.working.Kind;
import io.github.formulationmath.working.Reckoning;
import io.github.formulationmath.working.Source;
import io.github.formulationmath.working.Symbol;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * What the shares after a correction have to keep when no additions bring every line within its tolerance. With S the share
 * that the present pot makes up of the new one and y_j the share that the addition of line j makes up (so {@code S + Σy =
 * 1}), the new share of a line is {@code v_j·S + y_j}, and everything is linear again, the worst deviation t included (A.
 * Charnes and W. W. Cooper, Programming with linear fractional functionals, 1962; from memory).
 *
 * <p>Unknowns: 0 is S; 1 … k are the y; k + 1 is what is to be small: t, or u, the excess over the caps.
 */
final class DeviationConditions {

    private static final Symbol LIMIT = Symbol.of("k", "limit-in-pots", Kind.NUMBER);
    private static final Symbol EXCESS = Symbol.of("u", "least-cap-excess", Kind.SHARE);

    private DeviationConditions() {}

    /** Conditions for the least excess over caps: what can be done at all, whatever becomes of the lines. */
    static List<Condition> forExcess(MadeBatch made, CorrectionRules rules) {
        List<Condition> all = physical(made, rules);
        rules.numberedCaps().forEach(cap -> all.add(new Capped(made, cap, null)));
        return all;
    }

    /** Conditions for the least worst deviation, with caps exceeded no more than they have to be. */
    static List<Condition> forDeviation(MadeBatch made, CorrectionRules rules, Ratio excess) {
        List<Condition> all = physical(made, rules);
        rules.numberedCaps().forEach(cap -> all.add(new Capped(made, cap, excess)));
        for (MadeLine line : made.lines()) {
            all.add(new Off(made, line, 1));
            all.add(new Off(made, line, -1));
        }
        return all;
    }

    private static List<Condition> physical(MadeBatch made, CorrectionRules rules) {
        List<Condition> all = new ArrayList<>();
        all.add(new Whole(made.lines().size(), 1));
        all.add(new Whole(made.lines().size(), -1));
        for (MadeLine line : made.lines()) {
            Map<Obstacle.Kind, Ratio> limit = rules.limitOf(line.line());
            limit.forEach((kind, grams) -> all.add(new Stock(line, kind, grams.dividedBy(made.result()))));
        }
        all.add(new Room(rules.roomFor(made).dividedBy(made.result())));
        return all;
    }

    /** ±(S + Σy) ≥ ±1. */
    private record Whole(int lines, int sign) implements Condition {
        @Override
        public Obstacle.Kind kind() {
            return Obstacle.Kind.WHOLE;
        }

        @Override
        public <V> V coefficient(Reckoning<V> r, int unknown) {
            return r.literal(unknown <= lines ? sign : 0);
        }

        @Override
        public <V> V least(Reckoning<V> r) {
            return r.literal(sign);
        }
    }

    /** ±(v·S + y) + w·t ≥ ±w. */
    private record Off(MadeBatch made, MadeLine line, int sign) implements Condition {
        @Override
        public Obstacle.Kind kind() {
            return sign > 0 ? Obstacle.Kind.LINE_TOO_LITTLE : Obstacle.Kind.LINE_TOO_MUCH;
        }

        @Override
        public String name() {
            return line.name();
        }

        @Override
        public <V> V coefficient(Reckoning<V> r, int unknown) {
            if (unknown == 0) {
                return r.product(r.literal(sign), line.share(r));
            }
            if (unknown == made.lines().size() + 1) {
                return r.known(line.line());
            }
            return r.literal(unknown == line.line().position() ? sign : 0);
        }

        @Override
        public <V> V least(Reckoning<V> r) {
            return r.product(r.literal(sign), r.known(line.line()));
        }
    }

    /** −Σ c_j·v_j·S − Σ c_j·y_j + u ≥ −g, with u an unknown or a number. */
    private record Capped(MadeBatch made, Cap cap, @Nullable Ratio excess) implements Condition {
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
            int count = made.lines().size();
            if (unknown == 0) {
                V there = r.sum(cap.parts(r, made.lines(), line -> line.share(r)));
                return r.product(r.literal(-1), there);
            }
            if (unknown == count + 1) {
                return r.literal(excess == null ? 1 : 0);
            }
            MadeLine line = made.lines().get(unknown - 1);
            return cap.isIn(line.line()) ? r.product(r.literal(-1), cap.strength(r, line.line())) : r.literal(0);
        }

        @Override
        public <V> V least(Reckoning<V> r) {
            V most = excess == null || excess.isZero()
                    ? cap.cap(r)
                    : r.sum(cap.cap(r), r.given(EXCESS, excess, Source.user()));
            return r.product(r.literal(-1), most);
        }
    }

    /** k·S − y ≥ 0, with k the stock in pots. */
    private record Stock(MadeLine line, Obstacle.Kind kind, Ratio pots) implements Condition {
        @Override
        public String name() {
            return line.name();
        }

        @Override
        public <V> V coefficient(Reckoning<V> r, int unknown) {
            if (unknown == 0) {
                return r.given(LIMIT, line.line(), pots, Source.user());
            }
            return r.literal(unknown == line.line().position() ? -1 : 0);
        }

        @Override
        public <V> V least(Reckoning<V> r) {
            return r.literal(0);
        }
    }

    /** k·S ≥ 1, with k the room in pots. */
    private record Room(Ratio pots) implements Condition {
        @Override
        public Obstacle.Kind kind() {
            return Obstacle.Kind.VESSEL_FULL;
        }

        @Override
        public <V> V coefficient(Reckoning<V> r, int unknown) {
            return unknown == 0 ? r.given(LIMIT, pots, Source.user()) : r.literal(0);
        }

        @Override
        public <V> V least(Reckoning<V> r) {
            return r.literal(1);
        }
    }
}
