package io.github.formulationmath.exercise;

import io.github.formulationmath.reckoning.Operation;
import io.github.formulationmath.reckoning.Operation.Arithmetic;
import io.github.formulationmath.reckoning.Step;
import io.github.formulationmath.reckoning.Term;
import io.github.formulationmath.reckoning.Working;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.Deque;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Which later steps give a value away: those from whose result it can be worked back in one go. {@code x = m / d} gives
 * {@code m} away; {@code n = round(x)} does not give {@code x} away, unless the rounding changed nothing.
 */
final class Followers {

    private final Map<Step, List<Step>> followers = new IdentityHashMap<>();
    private final Map<Step, List<Step>> leaders = new IdentityHashMap<>();

    Followers(Working working) {
        for (Step step : working.steps()) {
            List<Step> shown = givenAwayBy(step);
            leaders.put(step, shown);
            shown.forEach(earlier ->
                    followers.computeIfAbsent(earlier, key -> new ArrayList<>()).add(step));
        }
    }

    /** The steps that give a value away. */
    List<Step> of(Step step) {
        return followers.getOrDefault(step, List.of());
    }

    /** The steps that a value gives away. */
    List<Step> before(Step step) {
        return leaders.getOrDefault(step, List.of());
    }

    /** Steps, and for the computed ones whatever would give them away. */
    Set<Step> closed(Collection<Step> steps) {
        Set<Step> all = Collections.newSetFromMap(new IdentityHashMap<>());
        Deque<Step> open = new ArrayDeque<>(steps);
        while (!open.isEmpty()) {
            Step step = open.pop();
            if (all.add(step) && step.definition().isPresent()) {
                open.addAll(of(step));
            }
        }
        return all;
    }

    private static List<Step> givenAwayBy(Step whole) {
        List<Step> found = new ArrayList<>();
        Deque<Term> open = new ArrayDeque<>();
        whole.definition().ifPresent(open::push);
        while (!open.isEmpty()) {
            Term term = open.pop();
            if (term instanceof Step step && !found.contains(step)) {
                found.add(step);
            } else if (term instanceof Term.Applied applied) {
                applied.inputs().stream()
                        .filter(input -> isGivenAway(input, applied))
                        .forEach(open::push);
            }
        }
        return found;
    }

    private static boolean isGivenAway(Term input, Term.Applied applied) {
        if (applied.operation() instanceof Operation.Statistic) {
            return false;
        }
        boolean selects = applied.operation() instanceof Operation.Rounded
                || applied.operation() == Arithmetic.MINIMUM
                || applied.operation() == Arithmetic.MAXIMUM;
        return !selects || input.value().equals(applied.value());
    }
}
