package io.github.formulationmath.limit;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** How many letters have to be put in, left out or exchanged to make one name of another (Levenshtein distance). */
final class SpellingDistance {

    /** A name longer than any of a table is close to none. */
    private static final int MAX_LENGTH = 200;

    private SpellingDistance() {}

    /** The closest names, at most a third of the letters away. */
    static List<String> closest(String text, Collection<String> names, int most) {
        String wanted = LimitNames.normalise(text);
        if (wanted.isEmpty() || wanted.length() > MAX_LENGTH) {
            return List.of();
        }
        Map<String, Integer> distances = new TreeMap<>();
        for (String name : names) {
            int distance = between(wanted, LimitNames.normalise(name));
            if (3 * distance <= wanted.length()) {
                distances.put(name, distance);
            }
        }
        return distances.entrySet().stream()
                .sorted(Map.Entry.<String, Integer>comparingByValue(Comparator.naturalOrder()))
                .limit(most)
                .map(Map.Entry::getKey)
                .toList();
    }

    static int between(String a, String b) {
        int[] above = new int[b.length() + 1];
        for (int j = 0; j <= b.length(); j++) {
            above[j] = j;
        }
        for (int i = 1; i <= a.length(); i++) {
            int diagonal = above[0];
            above[0] = i;
            for (int j = 1; j <= b.length(); j++) {
                int exchanged = diagonal + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
                diagonal = above[j];
                above[j] = Math.min(exchanged, 1 + Math.min(above[j], above[j - 1]));
            }
        }
        return above[b.length()];
    }
}
