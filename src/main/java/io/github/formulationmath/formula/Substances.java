package io.github.formulationmath.formula;

import io.github.formulationmath.number.Excerpt;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/**
 * The substances of one formula, each once, whatever spellings its lines use. Substances are the same if they share a name
 * ({@link SubstanceName}), a synonym or a CAS number, directly or through others: where one line has {@code
 * Phenoxyethanol (CAS 122-99-6)}, {@code PHENOXYETHANOL} and {@code PE 90 (CAS 122-99-6)} on other lines are it as well.
 * What is counted, capped, limited or listed is counted by these groups.
 *
 * <p>Sameness is worked out for the formula as a whole, from what its lines say; no list of substances is consulted.
 * Immutable and thread-safe.
 */
public final class Substances {

    private final String whole;
    private final List<OneSubstance> all;
    private final Map<String, OneSubstance> byKey = new HashMap<>();

    private Substances(String whole, List<OneSubstance> all) {
        this.whole = whole;
        this.all = List.copyOf(all);
        for (OneSubstance one : all) {
            one.keys().forEach(key -> byKey.put(key, one));
        }
    }

    /** The substances of the lines, and of a material that may come to them. */
    static Substances of(String formulaName, List<FormulaLine> lines, Ingredient... more) {
        Sameness sameness = new Sameness("\"" + formulaName + "\"");
        for (FormulaLine line : lines) {
            line.ingredient().parts().keySet().forEach(s -> sameness.add(new Sameness.Mention(s, line, "")));
        }
        for (Ingredient material : more) {
            String place = "\"" + material.name() + "\"";
            material.parts().keySet().forEach(s -> sameness.add(new Sameness.Mention(s, null, place)));
        }
        return grouped("\"" + formulaName + "\"", sameness);
    }

    /** The substances of a material by itself. */
    static Substances of(Ingredient material) {
        String whole = "\"" + material.name() + "\"";
        Sameness sameness = new Sameness(whole);
        material.parts().keySet().forEach(s -> sameness.add(new Sameness.Mention(s, null, "the material")));
        return grouped(whole, sameness);
    }

    private static Substances grouped(String whole, Sameness sameness) {
        return new Substances(
                whole, sameness.groups().stream().map(OneSubstance::new).toList());
    }

    /**
     * Each substance once.
     *
     * @return an unmodifiable list in the order in which the formula first names them
     */
    public List<OneSubstance> all() {
        return all;
    }

    /**
     * The substance that is meant, with everything that is the same. What is asked for may itself join lines that nothing
     * else joins: a name with a CAS number finds both the lines with the name and those with the number.
     *
     * @param asked the substance, in any spelling
     * @return what the formula has of it; empty if no line brings it in
     * @throws IllegalArgumentException if that would be one substance with two CAS numbers
     */
    public Optional<OneSubstance> find(Substance asked) {
        List<OneSubstance> found = new ArrayList<>(1);
        for (String key : Objects.requireNonNull(asked, "asked").keys()) {
            OneSubstance one = byKey.get(key);
            if (one != null && !found.contains(one)) {
                found.add(one);
            }
        }
        if (found.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(
                found.size() == 1 && hasOneNumber(found.get(0), asked) ? found.get(0) : joined(found, asked));
    }

    private static boolean hasOneNumber(OneSubstance found, Substance asked) {
        return found.cas().isEmpty()
                || asked.keys().stream().filter(CasNumbers::isNumber).allMatch(found.keys()::contains);
    }

    /** Several as one, in the order of the formula; or why they cannot be one. */
    private OneSubstance joined(List<OneSubstance> found, Substance asked) {
        Sameness sameness = new Sameness(whole);
        List<Sameness.Mention> mentions = found.stream()
                .flatMap(one -> one.mentions().stream())
                .sorted(Comparator.comparing(
                        mention -> mention.line() == null ? 0 : mention.line().position()))
                .toList();
        mentions.forEach(sameness::add);
        sameness.add(new Sameness.Mention(asked, null, "the question"));
        sameness.groups();
        return new OneSubstance(mentions);
    }

    /**
     * The substance that a line names.
     *
     * @param part one of the declared parts of a line's material
     * @return the substance
     * @throws IllegalArgumentException if no line names it
     */
    public OneSubstance of(Substance part) {
        OneSubstance one = byKey.get(Objects.requireNonNull(part, "part").normalName());
        if (one == null) {
            throw new IllegalArgumentException(
                    Excerpt.of(part) + " is on no line of " + whole + ": ask for it with find");
        }
        return one;
    }

    @Override
    public String toString() {
        return all.toString();
    }
}
