package io.github.formulationmath.record;

import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.MassFraction;
import java.util.ArrayList;
import java.util.List;

/**
 * Caps that cannot all be kept, each raised as little as can be. What counts is the excess relative to the cap; the worst is
 * made as small as it can be, then the worst of the others, and so on, so that a cap that can be kept is kept. Caps of 0
 * come first, by their shares: nothing is relative to 0.
 *
 * <p>Each step is a linear program. Its multipliers prove which caps hold its worst up: those can be no lower, whatever
 * becomes of the others, and are fixed there.
 */
final class CapExcess {

    private final MadeBatch made;
    private final List<PotCondition> bench;
    private final List<Cap> raised = new ArrayList<>();

    private CapExcess(MadeBatch made, List<PotCondition> bench) {
        this.made = made;
        this.bench = bench;
    }

    /** The caps as far as they can be kept, in their order. */
    static List<Cap> least(MadeBatch made, CorrectionRules rules) {
        CapExcess excess = new CapExcess(made, PotConditions.ofBench(made, rules));
        List<Cap> caps = rules.numberedCaps();
        excess.settle(caps.stream().filter(Cap::isBan).toList());
        excess.settle(caps.stream().filter(cap -> !cap.isBan()).toList());
        excess.raised.sort(java.util.Comparator.comparingInt(Cap::number));
        return List.copyOf(excess.raised);
    }

    private void settle(List<Cap> caps) {
        List<Cap> open = new ArrayList<>(caps);
        while (!open.isEmpty()) {
            List<PotCondition> firm = new ArrayList<>(bench);
            firm.addAll(PotConditions.ofCaps(made, raised));
            List<Condition> all = ShareCondition.of(made, firm, PotConditions.ofCaps(made, open));
            var worst = CorrectionPlan.solved(all, made);
            int first = all.size() - open.size();
            List<Cap> settled = new ArrayList<>();
            for (int k = 0; k < open.size(); k++) {
                if (worst.cost().isZero() || !worst.multipliers().get(first + k).isZero()) {
                    settled.add(open.get(k));
                }
            }
            settled.forEach(cap -> raised.add(raised(cap, worst.cost())));
            open.removeAll(settled);
        }
    }

    private static Cap raised(Cap cap, Ratio excess) {
        if (excess.isZero()) {
            return cap;
        }
        Ratio most = cap.most().fraction();
        Ratio unit = cap.isBan() ? Ratio.ONE : most;
        return new Cap(cap.number(), cap.substance(), MassFraction.of(most.plus(unit.times(excess))));
    }
}
