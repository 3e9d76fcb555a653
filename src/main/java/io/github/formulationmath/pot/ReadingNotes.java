package io.github.formulationmath.pot;

import io.github.formulationmath.number.Excerpt;
import java.io.Serial;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * What is noted beside a reading: who took it, from which lots, and whatever else the house keeps, in the order noted.
 *
 * @param person who took it
 * @param lots the lots of the material, each once
 * @param fields own fields by their names
 */
record ReadingNotes(@Nullable String person, List<UsedLot> lots, Map<String, String> fields) implements Serializable {

    @Serial
    private static final long serialVersionUID = 2L;

    static final ReadingNotes NONE = new ReadingNotes(null, List.of(), Map.of());

    /** The longest name of a field, person or lot, and the longest text of a field, in characters. */
    static final int LONGEST_NAME = 500;

    private static final int LONGEST_TEXT = 10_000;

    ReadingNotes {
        lots = new ArrayList<>(lots);
        fields = new LinkedHashMap<>(fields);
    }

    /** A copy, as {@link #fields()}. */
    @Override
    public List<UsedLot> lots() {
        return new ArrayList<>(lots);
    }

    /** A copy: serializers that set fields do not see into the views of the JDK. */
    @Override
    public Map<String, String> fields() {
        return new LinkedHashMap<>(fields);
    }

    ReadingNotes by(String who) {
        return new ReadingNotes(required("who", who, LONGEST_NAME), lots, fields);
    }

    ReadingNotes fromLot(UsedLot lot) {
        if (lots.stream().anyMatch(each -> each.code().equals(lot.code()))) {
            throw new IllegalArgumentException("lot is " + Excerpt.of(lot.code())
                    + ", which is noted with this reading already: note each lot once, with all that was taken of it");
        }
        List<UsedLot> all = new ArrayList<>(lots);
        all.add(lot);
        return new ReadingNotes(person, all, fields);
    }

    ReadingNotes with(String name, String text) {
        Map<String, String> all = new LinkedHashMap<>(fields);
        all.put(required("name", name, LONGEST_NAME), required("text", text, LONGEST_TEXT));
        return new ReadingNotes(person, lots, all);
    }

    static String required(String argument, String text, int most) {
        if (Objects.requireNonNull(text, argument).isBlank()) {
            throw new IllegalArgumentException(argument + " is blank: write something, or leave it out");
        }
        if (text.length() > most) {
            throw new IllegalArgumentException(argument + " has " + text.length() + " characters (" + Excerpt.of(text)
                    + "): at most " + most + " are kept, shorten it");
        }
        return text;
    }
}
