package io.github.formulationmath.formula;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;

/**
 * Many names as one text, in the form of {@link WrittenName#looseKey}: tells quickly whether another name is a spelling of one
 * of them, or the slip of a pen for one, so that a {@link NameBook} of them has to be made only then.
 *
 * <p>Example: {@code LooseNames.read(LooseNames.text(List.of("Tretinoin"))).haveCloseTo("Tretinion")}.
 *
 * <p>Immutable and thread-safe.
 */
public final class LooseNames {

    /** So many letters may be wrong, however long the name. */
    private static final int MOST_WRONG = 2;

    private final String text;

    /** Where the names of each length begin; at the end, where the text ends. */
    private final int[] begins;

    /** The letters of each name, as {@link PenSlip} sifts by them, in the order of the text. */
    private final int[] letters;

    private LooseNames(String text, int[] begins) {
        this.text = text;
        this.begins = begins;
        this.letters = new int[count(begins)];
        int name = 0;
        for (int length = 0; length + 1 < begins.length; length++) {
            for (int at = begins[length]; at < begins[length + 1]; at += length + 1) {
                letters[name++] = PenSlip.letters(text, at, at + length);
            }
        }
    }

    private static int count(int[] begins) {
        int names = 0;
        for (int length = 0; length + 1 < begins.length; length++) {
            names += (begins[length + 1] - begins[length]) / (length + 1);
        }
        return names;
    }

    /**
     * The names as a text.
     *
     * @param names the names, in any spelling
     * @return their loose keys, each once and on a line, the shorter before the longer, those as long in alphabetical order
     */
    public static String text(Collection<String> names) {
        Set<String> keys = new LinkedHashSet<>();
        for (String name : Objects.requireNonNull(names, "names")) {
            keys.add(WrittenName.looseKey(name));
        }
        List<String> sorted = new ArrayList<>(keys);
        sorted.sort((one, other) ->
                one.length() == other.length() ? one.compareTo(other) : Integer.compare(one.length(), other.length()));
        StringBuilder text = new StringBuilder();
        for (String key : sorted) {
            text.append(key).append('\n');
        }
        return text.toString();
    }

    /**
     * Reads names from a text.
     *
     * @param text what {@link #text} made
     * @return the names
     * @throws IllegalArgumentException if a line is shorter than the one before, longer than a name, or has no end
     */
    public static LooseNames read(String text) {
        int[] begins = new int[SubstanceName.MAX_LENGTH + 2];
        int length = 0;
        for (int at = 0; at < Objects.requireNonNull(text, "text").length(); ) {
            int end = text.indexOf('\n', at);
            if (end - at < length || end - at > SubstanceName.MAX_LENGTH) {
                throw new IllegalArgumentException("text is no list of loose names from its character " + (at + 1)
                        + " on: make it by LooseNames.text");
            }
            while (length < end - at) {
                length++;
                begins[length] = at;
            }
            at = end + 1;
        }
        while (length <= SubstanceName.MAX_LENGTH) {
            length++;
            begins[length] = text.length();
        }
        return new LooseNames(text, begins);
    }

    /**
     * Whether one of the names is another spelling of a name, or of what it may stand for.
     *
     * @param name a name as written
     * @return true if one is
     */
    public boolean have(String name) {
        for (String loose : readings(name)) {
            if (isOneOf(loose)) {
                return true;
            }
        }
        return false;
    }

    /**
     * Whether a name, or what it may stand for, is the slip of a pen for one of the names: one letter is wrong, or two of a
     * name of twelve letters and more; two neighbours that changed places are one step, and a
     * digit that is another, or changed places with another, is no slip.
     *
     * @param name a name as written
     * @return true if it is
     */
    public boolean haveCloseTo(String name) {
        for (String loose : readings(name)) {
            int furthest = Math.min(PenSlip.allowed(loose.length()), MOST_WRONG);
            if (loose.length() > furthest && isWithin(loose, furthest)) {
                return true;
            }
        }
        return false;
    }

    private boolean isOneOf(String loose) {
        int length = loose.length();
        for (int at = begin(length); at < begin(length + 1); at += length + 1) {
            if (text.startsWith(loose, at)) {
                return true;
            }
        }
        return false;
    }

    private boolean isWithin(String loose, int furthest) {
        PenSlip slip = new PenSlip(furthest, true);
        int bits = PenSlip.letters(loose, 0, loose.length());
        int shortest = Math.max(1, loose.length() - furthest);
        int longest = Math.min(SubstanceName.MAX_LENGTH, loose.length() + furthest);
        int name = count(Arrays.copyOf(begins, Math.min(shortest + 1, begins.length)));
        for (int length = shortest; length <= longest; length++) {
            for (int at = begins[length]; at < begins[length + 1]; at += length + 1) {
                if (slip.mayBeNear(bits, letters[name++]) && slip.between(loose, text, at, at + length) <= furthest) {
                    return true;
                }
            }
        }
        return false;
    }

    /** Where the names of a length begin; none are longer than a name may be. */
    private int begin(int length) {
        return length < begins.length ? begins[length] : text.length();
    }

    private static Set<String> readings(String name) {
        Set<String> readings = new LinkedHashSet<>();
        readings.add(WrittenName.looseKey(Objects.requireNonNull(name, "name")));
        for (String reading : WrittenName.of(name).readings().keySet()) {
            readings.add(WrittenName.looseKey(reading));
            for (String meant : CommonNames.meantBy(reading)) {
                readings.add(WrittenName.looseKey(meant));
            }
        }
        for (String meant : CommonNames.meantBy(SubstanceName.normalise(name))) {
            readings.add(WrittenName.looseKey(meant));
        }
        return readings;
    }

    @Override
    public String toString() {
        return text.lines().count() + " names";
    }
}
