package io.github.formulationmath.exercise;

import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.reckoning.Step;
import io.github.formulationmath.reckoning.Working;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;

/**
 * A value left blank on a worksheet, with the answers to choose from: three to five, or none.
 *
 * <p>There are none if fewer than two wrong answers are worth offering, and for a given value.
 *
 * <p>Immutable.
 */
public final class Blank {

    private static final int MOST_DISTRACTORS = 4;
    private static final int FEWEST_CHOICES = 3;

    /** In one of so many blanks the decimal point may be moved. */
    private static final int ONE_IN = 3;

    private final Step step;
    private final List<Distractor> distractors;
    private final List<Ratio> choices;

    private Blank(Step step, List<Distractor> distractors, List<Ratio> choices) {
        this.step = step;
        this.distractors = List.copyOf(distractors);
        this.choices = List.copyOf(choices);
    }

    /** What is asked for and the answers to choose from, without saying which is right. */
    @Override
    public String toString() {
        return step.label() + ": one of " + choices;
    }

    static Blank of(Step step, Working working, Random random) {
        List<Distractor> distractors = new ArrayList<>();
        List<Distractor> moved = new ArrayList<>();
        Plausible plausible = new Plausible(step, working);
        for (Mistake mistake : Mistake.values()) {
            outcome(mistake, step, working)
                    .filter(wrong -> plausible.test(wrong.value()))
                    .filter(wrong -> !Plausible.looksLike(wrong.value(), step.value()))
                    .filter(wrong ->
                            distractors.stream().noneMatch(known -> Plausible.looksLike(known.value(), wrong.value())))
                    .ifPresent(wrong -> (Plausible.isMoved(wrong.value(), step.value()) ? moved : distractors).add(wrong));
        }
        Collections.shuffle(distractors, random);
        Collections.shuffle(moved, random);
        List<Distractor> kept = kept(distractors, moved, random);
        List<Ratio> choices =
                new ArrayList<>(kept.stream().map(Distractor::value).toList());
        choices.add(step.value());
        Collections.shuffle(choices, random);
        Blank blank = new Blank(step, kept, choices);
        return choices.size() < FEWEST_CHOICES ? blank.withoutChoices() : blank;
    }

    /**
     * Mistakes of the relation first; a moved decimal point, which the size alone gives away, at most once, seldom, and only
     * beside two others.
     */
    private static List<Distractor> kept(List<Distractor> distractors, List<Distractor> moved, Random random) {
        List<Distractor> kept =
                new ArrayList<>(distractors.subList(0, Math.min(MOST_DISTRACTORS, distractors.size())));
        boolean mayMove = random.nextInt(ONE_IN) == 0 && !moved.isEmpty();
        if (mayMove && kept.size() + 1 >= FEWEST_CHOICES && kept.size() < MOST_DISTRACTORS) {
            kept.add(moved.get(0));
        }
        return kept;
    }

    private static Optional<Distractor> outcome(Mistake mistake, Step step, Working working) {
        try {
            return step.definition().isEmpty() ? Optional.empty() : mistake.make(step, working);
        } catch (ArithmeticException e) {
            // A mistake that cannot even be worked out is no answer anybody comes to.
            return Optional.empty();
        }
    }

    Blank withoutChoices() {
        return new Blank(step, List.of(), List.of());
    }

    /**
     * The step whose value is left blank.
     *
     * @return the step, with the right value
     */
    public Step step() {
        return step;
    }

    /** The wrong answers among the choices. */
    List<Distractor> distractors() {
        return distractors;
    }

    /**
     * The mistake behind one of the answers to choose from.
     *
     * @param choice the answer
     * @return the mistake that leads to it; empty for the right answer
     */
    public Optional<Mistake> mistakeBehind(Ratio choice) {
        return distractors.stream()
                .filter(distractor -> distractor.value().equals(choice))
                .map(Distractor::mistake)
                .findFirst();
    }

    /**
     * The answers to choose from, the right one among them.
     *
     * @return values in the canonical unit, in the order in which they are printed; empty if there are none
     */
    public List<Ratio> choices() {
        return choices;
    }
}
