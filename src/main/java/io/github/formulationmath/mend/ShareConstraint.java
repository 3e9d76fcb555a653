package io.github.formulationmath.mend;

import io.github.formulationmath.pot.MadeBatch;
import io.github.formulationmath.reckoning.Reckoning;
import java.util.ArrayList;
import java.util.List;

/**
 * A condition on the pot to come in shares of it. With S the share that the present pot makes up of the new one and y_j the
 * share that the addition of line j makes up ({@code S + Σy = 1}), a condition {@code Σ a_j·x_j − b ≥ 0} divided by the mass
 * of the new pot reads {@code Σ a_j·y_j − (b/Z)·S + s·t ≥ 0}, and everything is linear again, the slack t included (A.
 * Charnes and W. W. Cooper, Programming with linear fractional functionals, 1962; from memory).
 *
 * <p>Unknowns: 0 is S; 1 … k are the y; k + 1 is t.
 */
record ShareConstraint(MadeBatch made, PotConstraint condition, boolean hasSlack) implements LinearProof.Constraint {

    /** That the shares make up a whole, and conditions of which some have slack. */
    static List<LinearProof.Constraint> of(
            MadeBatch made, List<PotConstraint> firm, List<? extends PotConstraint.OfContents> slack) {
        List<LinearProof.Constraint> all = new ArrayList<>();
        all.add(new Whole(made.lines().size(), 1));
        all.add(new Whole(made.lines().size(), -1));
        firm.forEach(condition -> all.add(new ShareConstraint(made, condition, false)));
        slack.forEach(condition -> all.add(new ShareConstraint(made, condition, true)));
        return all;
    }

    @Override
    public String name() {
        return condition.name();
    }

    @Override
    public <V> V coefficient(Reckoning<V> r, int unknown) {
        if (unknown == 0) {
            return r.product(r.literal(-1), r.quotient(condition.least(r), r.known(made)));
        }
        if (unknown > made.lines().size()) {
            return hasSlack && condition instanceof PotConstraint.OfContents eased ? eased.slack(r) : r.literal(0);
        }
        return condition.coefficient(r, unknown - 1);
    }

    @Override
    public <V> V least(Reckoning<V> r) {
        return r.literal(0);
    }

    /** ±(S + Σy) ≥ ±1. */
    private record Whole(int lines, int sign) implements LinearProof.Constraint {

        @Override
        public <V> V coefficient(Reckoning<V> r, int unknown) {
            return r.literal(unknown <= lines ? sign : 0);
        }

        @Override
        public <V> V least(Reckoning<V> r) {
            return r.literal(sign);
        }
    }
}
