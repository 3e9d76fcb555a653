package io.github.formulationmath.formula;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.List;
import java.util.NavigableMap;
import java.util.TreeMap;

/** The names of a list, sorted by length so that only those which can be close are looked at. */
final class CloseNames {

    /** A name longer than any of a table is close to none. */
    private static final int MAX_LENGTH = 200;

    private final NavigableMap<Integer, List<Name>> byLength = new TreeMap<>();

    CloseNames(Collection<String> names) {
        for (String name : names) {
            String plain = WrittenName.looseKey(name);
            byLength.computeIfAbsent(plain.length(), length -> new ArrayList<>())
                    .add(new Name(name, plain, letters(plain)));
        }
    }

    /** What may have been meant, if one looks for it: names at most a third of the letters away. */
    List<String> alike(String text, int most) {
        return within(text, 3, 0, most);
    }

    /**
     * What was probably meant: one letter is wrong, or at most one in six, or two neighbours changed places. Of 177 usual materials, all spelt right, a
     * third of the letters finds one alike for 35, a sixth for 5, whose names are truly close.
     */
    List<String> slips(String text, int most) {
        return within(text, 6, 1, most);
    }

    private List<String> within(String text, int letters, int atLeast, int most) {
        String wanted = text.length() > MAX_LENGTH ? "" : WrittenName.looseKey(text);
        int furthest = Math.max(atLeast, wanted.length() / letters);
        if (wanted.length() <= furthest) {
            return List.of();
        }
        int bits = letters(wanted);
        List<Near> near = new ArrayList<>();
        for (List<Name> names : byLength.subMap(wanted.length() - furthest, true, wanted.length() + furthest, true)
                .values()) {
            for (Name name : names) {
                int distance = name.mayBeWithin(furthest, bits) ? steps(wanted, name.plain(), furthest) : furthest + 1;
                if (distance <= furthest) {
                    near.add(new Near(distance, name.written()));
                }
            }
        }
        Collections.sort(near);
        List<String> closest = new ArrayList<>(Math.min(most, near.size()));
        for (int i = 0; i < Math.min(most, near.size()); i++) {
            closest.add(near.get(i).name());
        }
        return Collections.unmodifiableList(closest);
    }

    /** Which letters occur, one bit each; letters that share a bit make the sieve coarser, not wrong. */
    private static int letters(String plain) {
        int bits = 0;
        for (int i = 0; i < plain.length(); i++) {
            bits |= 1 << (plain.charAt(i) & 31);
        }
        return bits;
    }

    /** The distance; two neighbours that changed places are one step, if there is no other. */
    private static int steps(String a, String b, int most) {
        return areSwapped(a, b) ? 1 : distance(a, b, most);
    }

    /** Whether two texts differ by two neighbours that changed places, and by nothing else. */
    static boolean areSwapped(String a, String b) {
        int at = 0;
        while (at < a.length() && at < b.length() && a.charAt(at) == b.charAt(at)) {
            at++;
        }
        return a.length() == b.length()
                && at + 1 < a.length()
                && a.charAt(at) == b.charAt(at + 1)
                && a.charAt(at + 1) == b.charAt(at)
                && a.substring(at + 2).equals(b.substring(at + 2));
    }

    /**
     * The number of letters to be put in, taken out or exchanged to make one text of another (Levenshtein distance), or any
     * number above {@code most} as soon as it is known to be above it.
     */
    static int distance(String a, String b, int most) {
        if (Math.abs(a.length() - b.length()) > most) {
            return most + 1;
        }
        int[] above = new int[b.length() + 1];
        for (int j = 0; j <= b.length(); j++) {
            above[j] = j;
        }
        int least = 0;
        for (int i = 0; i < a.length() && least <= most; i++) {
            least = nextRow(above, a.charAt(i), b, i + 1);
        }
        return least > most ? least : above[b.length()];
    }

    /** Puts the next row in place of the one above, and tells its least number: rows never go below it again. */
    private static int nextRow(int[] above, char letter, String b, int first) {
        int diagonal = above[0];
        above[0] = first;
        int least = first;
        for (int j = 1; j <= b.length(); j++) {
            int exchanged = diagonal + (letter == b.charAt(j - 1) ? 0 : 1);
            diagonal = above[j];
            above[j] = Math.min(exchanged, 1 + Math.min(above[j], above[j - 1]));
            least = Math.min(least, above[j]);
        }
        return least;
    }

    private record Name(String written, String plain, int letters) {

        /** Every letter that the other has not takes a step of its own. */
        boolean mayBeWithin(int steps, int others) {
            return Integer.bitCount(letters & ~others) <= steps && Integer.bitCount(others & ~letters) <= steps;
        }
    }

    /** The nearest first. */
    private record Near(int distance, String name) implements Comparable<Near> {

        @Override
        public int compareTo(Near other) {
            return distance == other.distance ? name.compareTo(other.name) : Integer.compare(distance, other.distance);
        }
    }
}
