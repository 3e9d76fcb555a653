package io.github.formulationmath.exercise;

import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.reckoning.Step;
import io.github.formulationmath.reckoning.Working;
import java.util.ArrayList;
import java.util.Collection;
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

    private static final int FEWEST_CHOICES = 3;

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

    /** A blank among others of the same working: what goes wrong in one of them is carried on into this one. */
    static Blank of(Step step, Working working, Collection<Step> blanks, Random random) {
        List<Distractor> kept = new WrongAnswers(step, working).of(blanks, random);
        List<Ratio> choices =
                new ArrayList<>(kept.stream().map(Distractor::value).toList());
        choices.add(step.value());
        Collections.shuffle(choices, random);
        Blank blank = new Blank(step, kept, choices);
        return choices.size() < FEWEST_CHOICES ? blank.withoutChoices() : blank;
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
