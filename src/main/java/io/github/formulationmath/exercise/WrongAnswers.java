package io.github.formulationmath.exercise;

import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.reckoning.Step;
import io.github.formulationmath.reckoning.Term;
import io.github.formulationmath.reckoning.Working;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;

/**
 * The wrong answers offered for a blank: mistakes made in its own relation first, then those made in an earlier blank and
 * carried on; a moved decimal point, which the size alone gives away, last, seldom, at most once and beside two others.
 */
final class WrongAnswers {

    private static final int MOST = 4;
    private static final int FAR = 30;
    private static final int FEWEST_BESIDE_MOVED = 2;

    /** In one of so many blanks the decimal point may be moved. */
    private static final int ONE_IN = 3;

    private final Step step;
    private final Working working;
    private final Plausible plausible;
    private final List<Distractor> found = new ArrayList<>();
    private final List<Distractor> moved = new ArrayList<>();

    WrongAnswers(Step step, Working working) {
        this.step = step;
        this.working = working;
        this.plausible = new Plausible(step, working);
    }

    List<Distractor> of(Collection<Step> blanks, Random random) {
        made(step).forEach(this::offer);
        Collections.shuffle(found, random);
        found.sort(Comparator.comparing(this::isFarOff));
        List<Distractor> carried = new ArrayList<>();
        for (Step earlier : blanks) {
            if (earlier != step) {
                made(earlier).forEach(wrong -> carriedOn(earlier, wrong).ifPresent(carried::add));
            }
        }
        Collections.shuffle(carried, random);
        carried.forEach(this::offer);
        List<Distractor> kept = new ArrayList<>(found.subList(0, Math.min(MOST, found.size())));
        boolean move = random.nextInt(ONE_IN) == 0 && !moved.isEmpty();
        if (move && kept.size() >= FEWEST_BESIDE_MOVED && kept.size() < MOST) {
            kept.add(moved.get(random.nextInt(moved.size())));
        }
        return kept;
    }

    /** What is off by a factor of more than thirty is seen to be wrong; it is offered where nothing nearer is. */
    private boolean isFarOff(Distractor wrong) {
        Ratio right = step.value().abs();
        Ratio size = wrong.value().abs();
        return size.compareTo(right.times(FAR)) > 0 || size.times(FAR).compareTo(right) < 0;
    }

    private void offer(Distractor wrong) {
        boolean isNew = found.stream().noneMatch(known -> Plausible.looksLike(known.value(), wrong.value()));
        if (plausible.test(wrong.value()) && !Plausible.looksLike(wrong.value(), step.value()) && isNew) {
            (Plausible.isMoved(wrong.value(), step.value()) ? moved : found).add(wrong);
        }
    }

    private List<Distractor> made(Step where) {
        List<Distractor> all = new ArrayList<>();
        for (Mistake mistake : Mistake.values()) {
            outcome(mistake, where).ifPresent(all::add);
        }
        return all;
    }

    private Optional<Distractor> outcome(Mistake mistake, Step where) {
        try {
            return where.definition().isEmpty() ? Optional.empty() : mistake.make(where, working);
        } catch (ArithmeticException e) {
            // A mistake that cannot even be worked out is no answer anybody comes to.
            return Optional.empty();
        }
    }

    private Optional<Distractor> carriedOn(Step earlier, Distractor wrong) {
        if (!new Plausible(earlier, working).test(wrong.value()) || Plausible.isMoved(wrong.value(), earlier.value())) {
            return Optional.empty();
        }
        try {
            Map<Term, Ratio> known = new IdentityHashMap<>();
            known.put(earlier, wrong.value());
            Ratio outcome = again(step, known);
            return outcome.isZero() ? Optional.empty() : Optional.of(wrong.carriedFrom(earlier, outcome));
        } catch (ArithmeticException e) {
            return Optional.empty();
        }
    }

    /** The value of a term, worked out anew from values that are known. */
    private static Ratio again(Term term, Map<Term, Ratio> known) {
        Ratio value = known.get(term);
        if (value == null) {
            value = worked(term, known);
            known.put(term, value);
        }
        return value;
    }

    private static Ratio worked(Term term, Map<Term, Ratio> known) {
        if (term instanceof Step named) {
            return named.definition()
                    .map(definition -> again(definition, known))
                    .orElse(named.value());
        }
        if (term instanceof Term.Applied applied) {
            List<Ratio> inputs = new ArrayList<>();
            applied.inputs().forEach(input -> inputs.add(again(input, known)));
            return applied.operation().apply(inputs);
        }
        return term.value();
    }
}
