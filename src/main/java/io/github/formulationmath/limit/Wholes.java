package io.github.formulationmath.limit;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.formula.Phase;
import io.github.formulationmath.formula.SubstanceName;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.Interval;
import io.github.formulationmath.reckoning.Explained;
import io.github.formulationmath.reckoning.Kind;
import io.github.formulationmath.reckoning.Origin;
import io.github.formulationmath.reckoning.Phrase;
import io.github.formulationmath.reckoning.Reckoning;
import io.github.formulationmath.reckoning.Symbol;
import io.github.formulationmath.weighing.MadeMasses;
import io.github.formulationmath.weighing.Weighed;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.measure.quantity.Dimensionless;
import org.jspecify.annotations.Nullable;

/** What limits are shares of in one formula, the product or a phase: each found once for all the limits of a check. */
final class Wholes {

    private final Formula formula;
    private final @Nullable MadeMasses masses;
    private final Whole product;
    private final Map<String, Whole> phases = new HashMap<>();

    /**
     * @param masses of all lines in their order, if anything was weighed
     * @param weighed what they are of: it may know more of a share
     */
    Wholes(Formula formula, @Nullable MadeMasses masses, @Nullable Weighed weighed) {
        this.formula = formula;
        this.masses = masses;
        this.product = new Whole(formula.lines(), masses, weighed);
    }

    Formula formula() {
        return formula;
    }

    Whole product() {
        return product;
    }

    Whole of(UsageLimit limit) {
        return limit.isOfProduct() ? product : phases.computeIfAbsent(phaseName(limit.whole()), this::phase);
    }

    private Whole phase(String wanted) {
        List<FormulaLine> lines = linesOf(wanted);
        MadeMasses all = masses;
        if (all == null || lines.isEmpty() || lines.size() == formula.lines().size()) {
            return new Whole(lines, all, null);
        }
        return new Whole(lines, all.part(lines.stream().map(FormulaLine::index).toList()), null);
    }

    private List<FormulaLine> linesOf(String wanted) {
        List<FormulaLine> lines = new ArrayList<>();
        for (Phase phase : formula.phases()) {
            if (phaseName(phase.name()).equals(wanted)) {
                lines.addAll(phase.lines());
            }
        }
        return lines;
    }

    /** {@code Oil phase} and {@code oil} are the same phase. */
    private static String phaseName(String name) {
        String term = ProductWords.term(SubstanceName.normalise(name));
        return term.endsWith("_phase") ? term.substring(0, term.length() - "_phase".length()) : term;
    }

    /** Lines of a formula in its order, and what share of it they are together; none if it does not have the phase. */
    static final class Whole implements Explained {

        private static final Symbol SHARE = Symbol.of("W", "phase-share", Kind.SHARE);

        private final List<FormulaLine> lines;
        /** Worked out when first asked for. */
        private volatile @Nullable Map<Integer, Integer> places;

        /** Worked out when first asked for. */
        private volatile @Nullable Ratio share;

        private final @Nullable MadeMasses masses;
        private final @Nullable Weighed weighed;

        private Whole(List<FormulaLine> lines, @Nullable MadeMasses masses, @Nullable Weighed weighed) {
            this.lines = List.copyOf(lines);
            this.masses = masses;
            this.weighed = weighed;
        }

        /** What is known of a share of the product beside its masses, if anything is. */
        Optional<Interval<Amount<Dimensionless>>> sureShare(Map<Integer, Ratio> strengths) {
            return weighed == null ? Optional.empty() : weighed.sureShare(strengths);
        }

        private Map<Integer, Integer> places() {
            Map<Integer, Integer> known = places;
            if (known == null) {
                known = new HashMap<>();
                for (FormulaLine line : lines) {
                    known.put(line.position(), known.size());
                }
                places = known;
            }
            return known;
        }

        List<FormulaLine> lines() {
            return lines;
        }

        /** The masses of the lines, if anything was weighed; of all lines if the formula does not have the phase. */
        Optional<MadeMasses> masses() {
            return Optional.ofNullable(masses);
        }

        boolean isEmpty() {
            return lines.isEmpty();
        }

        boolean contains(FormulaLine line) {
            return places().containsKey(line.position());
        }

        /** Weights by the position of a line as weights by its place among these lines, from 0. */
        Map<Integer, Ratio> byPlace(Map<Integer, Ratio> byPosition) {
            Map<Integer, Ratio> all = new HashMap<>();
            Map<Integer, Integer> own = places();
            byPosition.forEach((position, weight) -> {
                Integer place = own.get(position);
                if (place != null) {
                    all.put(place, weight);
                }
            });
            return all;
        }

        /** The share of all of them together. */
        @Override
        public Origin origin() {
            return Origin.of(whole -> Phrase.of("question.phase-share"), share(), this, Whole::shareIn);
        }

        Ratio share() {
            Ratio known = share;
            if (known == null) {
                known = Ratio.ZERO;
                for (FormulaLine line : lines) {
                    known = known.plus(line.fraction());
                }
                share = known;
            }
            return known;
        }

        private <V> V shareIn(Reckoning<V> r) {
            List<V> parts = new ArrayList<>(lines.size());
            for (FormulaLine line : lines) {
                parts.add(r.known(line));
            }
            return r.named(SHARE, r.sum(parts));
        }
    }
}
