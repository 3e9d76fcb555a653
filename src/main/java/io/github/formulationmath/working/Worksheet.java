package io.github.formulationmath.working;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * An exercise made from a working: some of its values are left blank, each with answers to choose from, and there is a key
 * that names the mistake behind each wrong answer.
 *
 * <p>The wrong answers are worked out from the terms of the same step. For {@code m_3 = w_3 · M} with 2.5 % of 400 g, right
 * is 10 g, and the percentage used as a plain number gives 1000 g. The same working and seed give the same sheet.
 *
 * <p>Immutable and thread-safe.
 */
public final class Worksheet {

    private final Working working;
    private final List<Blank> blanks;

    private Worksheet(Working working, List<Step> steps, Random random) {
        this.working = working;
        this.blanks =
                steps.stream().map(step -> Blank.of(step, working, random)).toList();
    }

    /**
     * A sheet with chosen values left blank.
     *
     * @param working the working
     * @param labels the symbols of the values, with their index, for example {@code m_3}
     * @param seed decides which wrong answers are offered, and their order
     * @return the sheet
     * @throws IllegalArgumentException if the working has no such symbol; the message names those it has
     */
    public static Worksheet of(Working working, Set<String> labels, long seed) {
        List<Step> steps = working.steps().stream()
                .filter(step -> labels.contains(step.label()))
                .toList();
        if (steps.size() != labels.size() || labels.isEmpty()) {
            throw new IllegalArgumentException("labels is " + labels + ": choose from "
                    + working.steps().stream().map(Step::label).toList());
        }
        return new Worksheet(working, steps, new Random(seed));
    }

    /**
     * A sheet with some of the computed values left blank.
     *
     * @param working the working
     * @param count how many, from 1 to the number of computed steps
     * @param seed decides which values, which wrong answers, and their order
     * @return the sheet
     * @throws IllegalArgumentException if count lies outside that range
     */
    public static Worksheet of(Working working, int count, long seed) {
        List<Step> computed = new ArrayList<>(working.steps().stream()
                .filter(step -> step.definition().isPresent())
                .toList());
        if (count < 1 || count > computed.size()) {
            throw new IllegalArgumentException("count is " + count + ": it must lie between 1 and " + computed.size()
                    + ", the number of computed steps");
        }
        Random random = new Random(seed);
        Collections.shuffle(computed, random);
        List<Step> chosen = new ArrayList<>(computed.subList(0, count));
        chosen.sort(Comparator.comparing(working.steps()::indexOf));
        return new Worksheet(working, chosen, random);
    }

    /**
     * The working behind the sheet.
     *
     * @return the working, with nothing left blank
     */
    public Working working() {
        return working;
    }

    /**
     * The values left blank.
     *
     * @return an unmodifiable list, in the order of the working
     */
    public List<Blank> blanks() {
        return blanks;
    }

    /**
     * Prints the sheet for the learner: the working with its blanks, and the answers to choose from.
     *
     * @param format the format
     * @return the text
     */
    public String sheet(WorkingFormat format) {
        Set<Step> hidden = blanks.stream().map(Blank::step).collect(Collectors.toSet());
        return Objects.requireNonNull(format, "format").format(this, hidden::contains, false);
    }

    /**
     * Prints the key for the teacher: the whole working, the right answers, and the mistake behind each wrong one.
     *
     * @param format the format
     * @return the text
     */
    public String key(WorkingFormat format) {
        return Objects.requireNonNull(format, "format").format(this, step -> false, true);
    }
}
