package io.github.formulationmath.formula;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * The names of a list of substances, found as people write them.
 *
 * <p>What is the same by {@link SubstanceName} is found exactly, and nothing else is. For other names {@link #read} tells what
 * a person who looks through the list would take them for, and how: "Lavandula Angustifolia (Lavender) Oil" for LAVANDULA
 * ANGUSTIFOLIA OIL, the bracket left out. Who uses such a reading says so. {@link #suggest} only suggests.
 *
 * <p>Example: {@code NameBook.of(List.of("ZINC OXIDE (NANO)")).read("[nano] Zinc Oxide")} has the name of the list.
 *
 * <p>Immutable and thread-safe.
 */
public final class NameBook {

    private static final int MOST_KEPT = 4096;

    private static final int MOST_SUGGESTED = 12;

    /** No name holds more than so many others. */
    private static final int MOST_JOINED = 3;

    private final Map<String, String> written = new HashMap<>();
    private final Map<String, Set<String>> loose = new HashMap<>();
    private final Map<String, Set<String>> withoutPart = new HashMap<>();
    private final Set<String> all;
    private volatile @Nullable CloseNames close;
    /** Answers given before; emptied when there are many, so that what others ask for does not pile up. */
    private final Map<String, Optional<Reading>> kept = new ConcurrentHashMap<>();

    private final Map<String, List<String>> suggested = new ConcurrentHashMap<>();

    /** By what a written name was found in a list. */
    public enum How {
        /** Another spelling of the same name: sulphide, a Greek letter, a hyphen, the place of the mark for nanomaterials. */
        SPELLING,
        /** A word that tells no other substance was left out: organic, essential, powder, an asterisk, a prefix for an isomer. */
        QUALIFIER,
        /** A strength was left out: "Hydrogen Peroxide 30 %". It has to be entered as the strength of the material. */
        STRENGTH,
        /** A common name in brackets was left out, or the name in brackets was taken. */
        BRACKET,
        /** The list has the preparation of the plant without its part, or with the part that the written name leaves open. */
        PLANT_PART,
        /** The list has the substance, not its nanomaterial. */
        NANO,
        /**
         * A common name, in English, German or French, an abbreviation, or an older botanical name: "lavender oil", "NaOH". What
         * it stands for is common trade knowledge without a published source.
         */
        COMMON_NAME,
        /** Several names in one: each was looked for by itself, and how much there is of each is not known. */
        BLEND
    }

    /**
     * What a written name was taken for.
     *
     * @param written the name as written
     * @param names names of the list, as the list writes them, at least one
     * @param how by what it was found
     */
    public record Reading(String written, List<String> names, How how) {

        /**
         * Copies.
         *
         * @param written the name as written
         * @param names names of the list
         * @param how by what it was found
         */
        public Reading {
            Objects.requireNonNull(written, "written");
            names = List.copyOf(Objects.requireNonNull(names, "names"));
            Objects.requireNonNull(how, "how");
        }
    }

    private NameBook(Collection<String> names) {
        this.all = Collections.unmodifiableSet(new TreeSet<>(names));
        all.forEach(this::add);
    }

    /**
     * The names of a list.
     *
     * @param names the names as the list writes them; of two spellings of one name the first in alphabetical order is kept
     * @return the book
     */
    public static NameBook of(Collection<String> names) {
        return new NameBook(Objects.requireNonNull(names, "names"));
    }

    private void add(String name) {
        String normal = SubstanceName.normalise(name);
        if (Substance.isCas(normal) || written.putIfAbsent(normal, name) != null) {
            return;
        }
        put(loose, WrittenName.looseKeyOf(normal), normal);
        WrittenName.Preparation made = WrittenName.preparation(normal);
        if (made != null) {
            made.withPart().forEach(one -> put(loose, WrittenName.looseKeyOf(one), normal));
            made.withoutPart().forEach(one -> put(withoutPart, one, normal));
        }
    }

    private static void put(Map<String, Set<String>> map, String key, String normal) {
        map.computeIfAbsent(key, k -> new LinkedHashSet<>(1)).add(normal);
    }

    /**
     * Whether the list has the name itself.
     *
     * @param name a name in any spelling that {@link SubstanceName} forgives
     * @return true if it has
     */
    public boolean has(String name) {
        return written.containsKey(SubstanceName.normalise(name));
    }

    /**
     * What a name is taken for that the list does not have itself.
     *
     * @param name the name as written
     * @return names of the list, all that may be meant by the surest way that leads to any; empty if the list has the name
     *     itself, or nothing that it may stand for; of a blend its parts as written, if the list has any of them
     */
    public Optional<Reading> read(String name) {
        Optional<Reading> known = kept.get(Objects.requireNonNull(name, "name"));
        if (known == null) {
            known = looked(name);
            keep(kept, name, known);
        }
        return known;
    }

    private static <T> void keep(Map<String, T> answers, String name, T answer) {
        if (answers.size() >= MOST_KEPT) {
            answers.clear();
        }
        answers.put(name, answer);
    }

    private Optional<Reading> looked(String name) {
        WrittenName asked = WrittenName.of(name);
        if (written.containsKey(asked.normal()) || Substance.isCas(asked.normal())) {
            return Optional.empty();
        }
        List<String> parts = rejoined(asked.parts());
        if (parts.size() == 1 && has(parts.get(0))) {
            return reading(name, Set.of(SubstanceName.normalise(parts.get(0))), How.SPELLING);
        }
        if (parts.size() > 1) {
            for (Map.Entry<String, How> variant : asked.variants().entrySet()) {
                if (written.containsKey(variant.getKey())) {
                    return reading(name, Set.of(variant.getKey()), variant.getValue());
                }
            }
            return parts.stream().anyMatch(this::isFound)
                    ? Optional.of(new Reading(name, parts, How.BLEND))
                    : Optional.empty();
        }
        for (Map.Entry<String, How> variant : asked.variants().entrySet()) {
            Set<String> found = spelt(variant.getKey());
            if (!found.isEmpty()) {
                return reading(name, found, variant.getValue());
            }
            found = prepared(variant.getKey());
            if (!found.isEmpty()) {
                return reading(name, found, How.PLANT_PART);
            }
        }
        List<String> listed = rejoined(asked.listed());
        if (listed.size() == 1 && has(listed.get(0))) {
            return reading(name, Set.of(SubstanceName.normalise(listed.get(0))), How.SPELLING);
        }
        if (listed.size() > 1 && listed.stream().anyMatch(this::has)) {
            return Optional.of(new Reading(name, listed, How.BLEND));
        }
        return commonly(name, asked);
    }

    /** What is meant by a common name, if it is one thing that the list has. */
    private Optional<Reading> commonly(String name, WrittenName asked) {
        for (String variant : asked.variants().keySet()) {
            Set<String> found = commonly(variant);
            String english = CommonNames.inEnglish(variant);
            if (found.isEmpty() && !english.equals(variant)) {
                found = spelt(english);
                found = found.isEmpty() ? commonly(english) : found;
            }
            String accepted = CommonNames.underAcceptedName(variant);
            if (found.isEmpty() && !accepted.equals(variant)) {
                found = spelt(accepted);
                found = found.isEmpty() ? prepared(accepted) : found;
            }
            if (!found.isEmpty()) {
                return reading(name, found, How.COMMON_NAME);
            }
        }
        return Optional.empty();
    }

    private Set<String> commonly(String variant) {
        List<String> meant =
                CommonNames.meantBy(variant).stream().filter(this::has).toList();
        return meant.size() == 1 ? Set.of(SubstanceName.normalise(meant.get(0))) : Set.of();
    }

    /** Neighbours that are one name of the list together: some names hold an "and" themselves. */
    private List<String> rejoined(List<String> parts) {
        List<String> joined = new ArrayList<>();
        for (int from = 0; from < parts.size(); ) {
            int to = Math.min(parts.size(), from + MOST_JOINED);
            String one = parts.get(from);
            for (; to > from + 1; to--) {
                String together = together(parts.subList(from, to));
                if (!together.isEmpty()) {
                    one = together;
                    break;
                }
            }
            joined.add(one);
            from = to;
        }
        return joined;
    }

    private String together(List<String> parts) {
        return Stream.of("(AND)", " AND ")
                .map(word -> String.join(word, parts))
                .filter(this::has)
                .findFirst()
                .orElse("");
    }

    private boolean isFound(String part) {
        return has(part) || looked(part).isPresent();
    }

    private Optional<Reading> reading(String name, Set<String> normals, How how) {
        return Optional.of(new Reading(
                name,
                normals.stream()
                        .map(normal -> written.getOrDefault(normal, normal))
                        .toList(),
                how));
    }

    private Set<String> spelt(String normal) {
        return written.containsKey(normal)
                ? Set.of(normal)
                : loose.getOrDefault(WrittenName.looseKeyOf(normal), Set.of());
    }

    /** What the list has without the part; or, where the name leaves the part open, with any part. */
    private Set<String> prepared(String normal) {
        WrittenName.Preparation made = WrittenName.preparation(normal);
        if (made == null) {
            return Set.of();
        }
        Set<String> found = new LinkedHashSet<>();
        made.withPart().forEach(one -> found.addAll(spelt(one)));
        for (String one : made.withoutPart()) {
            found.addAll(made.parts().isEmpty() ? withoutPart.getOrDefault(one, Set.of()) : spelt(one));
        }
        return found;
    }

    /**
     * Names that are spelt like another, if one looks for it: at most a third of the letters away.
     *
     * @param text what was written
     * @param most how many at most
     * @return the closest first; none if nothing is close
     */
    public List<String> alike(String text, int most) {
        return close().alike(Objects.requireNonNull(text, "text"), most);
    }

    private CloseNames close() {
        CloseNames made = close;
        if (made == null) {
            made = new CloseNames(all);
            close = made;
        }
        return made;
    }

    /**
     * Names that were probably meant: spelt alike but for one letter or at most one in six, or for two
     * neighbours that changed places, of the same plant, or what a
     * common name in English, German or French stands for. Only a suggestion; a few usual materials whose names are that close to
     * another, sodium chloride to sodium chlorate, are not asked about.
     *
     * @param text what was written
     * @param most how many at most; never more than twelve
     * @return the likeliest first; none if nothing is close
     */
    public List<String> suggest(String text, int most) {
        List<String> known = suggested.get(Objects.requireNonNull(text, "text"));
        if (known == null) {
            known = suggested(text, MOST_SUGGESTED);
            keep(suggested, text, known);
        }
        return known.size() <= most ? known : known.subList(0, most);
    }

    private List<String> suggested(String text, int most) {
        WrittenName asked = WrittenName.of(text);
        if (asked.variants().keySet().stream()
                .anyMatch(name -> UsualNames.isOne(name) || UsualNames.isOne(CommonNames.inEnglish(name)))) {
            return List.of();
        }
        Set<String> found = new LinkedHashSet<>();
        Set<String> tried = new HashSet<>();
        for (String variant : asked.variants().keySet()) {
            if (!tried.add(WrittenName.looseKeyOf(variant))) {
                continue;
            }
            found.addAll(close().slips(variant, most));
            CommonNames.of(variant).stream().filter(this::has).forEach(found::add);
            String english = CommonNames.inEnglish(variant);
            if (!english.equals(variant)) {
                found.addAll(spelt(english).stream().map(written::get).toList());
                found.addAll(close().slips(english, most));
            }
            found.addAll(sameBeginning(variant));
        }
        int comma = asked.normal().indexOf(',');
        if (found.isEmpty() && comma > 0) {
            return suggested(asked.normal().substring(0, comma), most);
        }
        return found.stream().limit(most).toList();
    }

    /** Preparations of the same plant, and names that a longer one begins with: cinnamal for cinnamaldehyde. */
    private List<String> sameBeginning(String normal) {
        List<String> found = new ArrayList<>();
        WrittenName.Preparation made = WrittenName.preparation(normal);
        if (made != null) {
            Set<String> all = new HashSet<>();
            made.withoutPart().forEach(one -> all.addAll(withoutPart.getOrDefault(one, Set.of())));
            all.stream().sorted().map(written::get).forEach(found::add);
        }
        if (normal.endsWith("ALDEHYDE")) {
            String stem = normal.substring(0, normal.length() - "DEHYDE".length());
            found.addAll(spelt(stem).stream().map(written::get).toList());
        }
        return found;
    }

    @Override
    public String toString() {
        return written.size() + " names";
    }
}
