package io.github.formulationmath.mend;

import io.github.formulationmath.pot.MadeBatch;
import java.util.ArrayList;
import java.util.List;

/**
 * Caps and conditions that cannot all be kept, each eased as little as can be. Conditions come first, one after another in
 * their order, for their sums have nothing in common. Then the caps: what counts is the excess relative to the cap; the worst
 * is made as small as it can be, then the worst of the others, and so on, so that a cap that can be kept is kept. Caps of 0
 * come before the others, by their shares: nothing is relative to 0.
 *
 * <p>Each step is a linear program. Its multipliers prove which conditions hold its worst up: those can be no better, whatever
 * becomes of the others, and are fixed there.
 */
final class Concessions {

    private final MadeBatch made;
    private final List<PotConstraint> bench;
    private final List<PotConstraint.Yielding> eased;

    private Concessions(MadeBatch made, CorrectionRules rules) {
        this.made = made;
        this.bench = PotConstraint.ofBench(made, rules);
        this.eased = new ArrayList<>(PotConstraint.yielding(made, rules));
    }

    /** The caps and conditions as far as they can be kept, in their order. */
    static List<PotConstraint.Yielding> least(MadeBatch made, CorrectionRules rules) {
        Concessions all = new Concessions(made, rules);
        List<Integer> settled = new ArrayList<>();
        all.eased.stream()
                .mapToInt(PotConstraint.Yielding::rank)
                .distinct()
                .sorted()
                .forEach(rank -> {
                    List<Integer> open = new ArrayList<>();
                    for (int i = 0; i < all.eased.size(); i++) {
                        if (all.eased.get(i).rank() == rank && !settled.contains(i)) {
                            open.add(i);
                        }
                    }
                    all.settle(open, settled);
                });
        return List.copyOf(all.eased);
    }

    private void settle(List<Integer> open, List<Integer> settled) {
        while (!open.isEmpty()) {
            List<PotConstraint> firm = new ArrayList<>(bench);
            settled.forEach(i -> firm.add(eased.get(i)));
            List<LinearProof.Constraint> all =
                    ShareConstraint.of(made, firm, open.stream().map(eased::get).toList());
            var worst = SmallestCorrection.solved(all, made);
            int first = all.size() - open.size();
            List<Integer> now = new ArrayList<>();
            for (int k = 0; k < open.size(); k++) {
                if (worst.cost().isZero() || !worst.multipliers().get(first + k).isZero()) {
                    now.add(open.get(k));
                }
            }
            now.forEach(i -> eased.set(i, eased.get(i).eased(worst.cost())));
            settled.addAll(now);
            open.removeAll(now);
        }
    }
}
