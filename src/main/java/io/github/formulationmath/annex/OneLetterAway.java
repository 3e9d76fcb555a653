package io.github.formulationmath.annex;

import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;

/**
 * Names one letter away from a written one: one too many, one missing, one for another, or two exchanged. All of them are asked
 * for in the {@link KeyFile}, by their hashes, so that the lists themselves are not needed where nothing is close.
 */
final class OneLetterAway {

    /** Shorter names are close to too much, longer ones are formulas. */
    private static final int SHORTEST = 6;

    private static final int LONGEST = 60;

    /** What a slip of the pen puts in or leaves out. A digit tells one colorant from another. */
    private static final String LETTERS = "ABCDEFGHIJKLMNOPQRSTUVWXYZ -,";

    private static final String[] SINGLE = LETTERS.split("");

    private final KeyFile all = KeyFile.bundled();
    private final String name;
    private final Predicate<String> isKey;
    private final Set<String> found = new TreeSet<>();

    private OneLetterAway(String name, Predicate<String> isKey) {
        this.name = name;
        this.isKey = isKey;
    }

    /** Those keys of a list that are one letter away from a name in the form of {@link Spelling}. */
    static Set<String> keys(char list, String name, Predicate<String> isKey) {
        OneLetterAway near = new OneLetterAway(name, isKey);
        if (name.length() >= SHORTEST && name.length() <= LONGEST) {
            near.look(list);
        }
        near.found.remove(name);
        return near.found;
    }

    private void look(char list) {
        long before = KeyFile.hash(list, "", 0);
        for (int i = 0; i <= name.length(); i++) {
            boolean letter = i < name.length() && isLetter(name.charAt(i));
            for (int k = 0; k < LETTERS.length(); k++) {
                long with = KeyFile.hash(before, LETTERS.charAt(k));
                String instead = SINGLE[k];
                add(with, i, instead, i);
                if (letter) {
                    add(with, i, instead, i + 1);
                }
            }
            if (letter) {
                add(before, i, "", i + 1);
                exchanged(before, i);
            }
            before = i < name.length() ? KeyFile.hash(before, name.charAt(i)) : before;
        }
    }

    private void exchanged(long before, int i) {
        if (i + 1 < name.length() && isLetter(name.charAt(i + 1))) {
            long with = KeyFile.hash(KeyFile.hash(before, name.charAt(i + 1)), name.charAt(i));
            add(with, i, "" + name.charAt(i + 1) + name.charAt(i), i + 2);
        }
    }

    /** What the name is with some letters instead of those between two places, if the list has it. */
    private void add(long hash, int from, String instead, int to) {
        if (all.mayHave(KeyFile.hash(hash, name, to, name.length()))) {
            String key = name.substring(0, from) + instead + name.substring(to);
            if (isKey.test(key)) {
                found.add(key);
            }
        }
    }

    private static boolean isLetter(char c) {
        return LETTERS.indexOf(c) >= 0;
    }
}
