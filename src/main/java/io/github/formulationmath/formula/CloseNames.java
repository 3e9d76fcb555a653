package io.github.formulationmath.formula;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.List;
import java.util.NavigableMap;
import java.util.TreeMap;
import java.util.function.IntUnaryOperator;

/** The names of a list, sorted by length so that only those which can be close are looked at. */
final class CloseNames {

    /** A name longer than any of a table is close to none. */
    private static final int MAX_LENGTH = 200;

    private final NavigableMap<Integer, List<Name>> byLength = new TreeMap<>();

    CloseNames(Collection<String> names) {
        for (String name : names) {
            String plain = WrittenName.looseKey(name);
            byLength.computeIfAbsent(plain.length(), length -> new ArrayList<>())
                    .add(new Name(name, plain, PenSlip.letters(plain, 0, plain.length())));
        }
    }

    /** What may have been meant, if one looks for it: names at most a third of the letters away. */
    List<String> alike(String text, int most) {
        return within(text, letters -> letters / 3, most);
    }

    /**
     * What was probably meant: one letter is wrong, or at most one in six, or two neighbours changed places. Of 177 usual materials, all spelt right, a
     * third of the letters finds one alike for 35, a sixth for 5, whose names are truly close.
     */
    List<String> slips(String text, int most) {
        return within(text, PenSlip::allowed, most);
    }

    private List<String> within(String text, IntUnaryOperator allowed, int most) {
        String wanted = text.length() > MAX_LENGTH ? "" : WrittenName.looseKey(text);
        int furthest = allowed.applyAsInt(wanted.length());
        if (wanted.length() <= furthest) {
            return List.of();
        }
        int bits = PenSlip.letters(wanted, 0, wanted.length());
        PenSlip slip = new PenSlip(furthest, false);
        List<Near> near = new ArrayList<>();
        for (List<Name> names : byLength.subMap(wanted.length() - furthest, true, wanted.length() + furthest, true)
                .values()) {
            for (Name name : names) {
                int distance = slip.mayBeNear(bits, name.letters())
                        ? slip.between(wanted, name.plain(), 0, name.plain().length())
                        : furthest + 1;
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

    private record Name(String written, String plain, int letters) {}

    /** The nearest first. */
    private record Near(int distance, String name) implements Comparable<Near> {

        @Override
        public int compareTo(Near other) {
            return distance == other.distance ? name.compareTo(other.name) : Integer.compare(distance, other.distance);
        }
    }
}
