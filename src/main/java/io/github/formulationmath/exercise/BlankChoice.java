package io.github.formulationmath.exercise;

import io.github.formulationmath.reckoning.Step;
import io.github.formulationmath.reckoning.Working;
import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;

/**
 * Chooses steps at random so that no step left over gives one of them away: a step may be chosen once all its followers are.
 * Steps of the line that was asked about come first, then those that have to go with them.
 */
final class BlankChoice {

    private static final int RANKS = 3;

    private final Followers followers;
    private final Random random;
    private final Map<Step, Integer> ranks = new IdentityHashMap<>();
    private final Map<Step, Integer> waitingFor = new IdentityHashMap<>();
    private final List<List<Step>> open = new ArrayList<>();

    private BlankChoice(Working working, List<Step> computed, Random random) {
        this.followers = new Followers(working);
        this.random = random;
        for (int rank = 0; rank < RANKS; rank++) {
            open.add(new ArrayList<>());
        }
        List<Step> asked =
                computed.stream().filter(step -> isAskedAbout(step, working)).toList();
        followers.closed(asked).forEach(step -> ranks.put(step, 1));
        asked.forEach(step -> ranks.put(step, 0));
        for (Step step : computed) {
            waitingFor.put(step, followers.of(step).size());
            openIfFree(step);
        }
    }

    static Set<Step> of(Working working, List<Step> computed, int count, Random random) {
        BlankChoice choice = new BlankChoice(working, computed, random);
        Set<Step> chosen = Collections.newSetFromMap(new IdentityHashMap<>());
        while (chosen.size() < count) {
            chosen.add(choice.next());
        }
        return chosen;
    }

    private static boolean isAskedAbout(Step step, Working working) {
        return working.answer() instanceof Step answer
                && step.subject().subscript().equals(answer.subject().subscript());
    }

    private Step next() {
        List<Step> first =
                open.stream().filter(steps -> !steps.isEmpty()).findFirst().orElseThrow();
        Collections.swap(first, random.nextInt(first.size()), first.size() - 1);
        Step step = first.remove(first.size() - 1);
        for (Step earlier : followers.before(step)) {
            if (waitingFor.computeIfPresent(earlier, (key, waiting) -> waiting - 1) != null) {
                openIfFree(earlier);
            }
        }
        return step;
    }

    private void openIfFree(Step step) {
        if (waitingFor.getOrDefault(step, 0) == 0) {
            open.get(ranks.getOrDefault(step, RANKS - 1)).add(step);
        }
    }
}
