package io.github.formulationmath.formula;

import io.github.formulationmath.number.Ratio;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * One substance of a formula, in all the spellings that its lines use ({@link Substances}).
 *
 * <p>Immutable and thread-safe.
 */
public final class OneSubstance {

    private final List<Sameness.Mention> mentions;
    private final Set<String> keys = new LinkedHashSet<>();
    private final List<FormulaLine> lines;
    private final @Nullable String cas;
    private final Substance substance;

    /** @param mentions in the order of the formula, at least one */
    OneSubstance(List<Sameness.Mention> mentions) {
        this.mentions = List.copyOf(mentions);
        List<FormulaLine> found = new ArrayList<>();
        int last = 0;
        for (Sameness.Mention mention : mentions) {
            keys.addAll(mention.substance().keys());
            FormulaLine line = mention.line();
            if (line != null && line.position() > last) {
                found.add(line);
                last = line.position();
            }
        }
        this.lines = List.copyOf(found);
        this.cas = keys.stream().filter(CasNumbers::isNumber).findFirst().orElse(null);
        Substance first = mentions.get(0).substance();
        this.substance =
                first.cas().isPresent() ? first : cas().map(first::withCas).orElse(first);
    }

    /**
     * The substance as the formula first names it, with the CAS number that any of its lines gives.
     *
     * @return the substance
     */
    public Substance substance() {
        return substance;
    }

    /**
     * A substance as asked for, with all names and the number that this one has, so that it is recognised by any of them
     * also where the formula is not at hand.
     *
     * @param asked the substance in the spelling to be kept
     * @return the same substance with the other names as synonyms
     */
    public Substance as(Substance asked) {
        String[] names = keys.stream()
                .filter(key -> !CasNumbers.isNumber(key) && !asked.keys().contains(key))
                .toArray(String[]::new);
        Substance named = names.length == 0 ? asked : asked.withSynonyms(names);
        return named.cas().isPresent() ? named : cas().map(named::withCas).orElse(named);
    }

    /**
     * The CAS number.
     *
     * @return the one number that lines give, if any does
     */
    public Optional<String> cas() {
        return Optional.ofNullable(cas);
    }

    /**
     * The spellings.
     *
     * @return an unmodifiable list of the substances as written, each spelling once
     */
    public List<Substance> spellings() {
        return mentions.stream().map(Sameness.Mention::substance).distinct().toList();
    }

    /**
     * All names and synonyms in normal form, and the CAS number.
     *
     * @return an unmodifiable set, see {@link Substance#keys()}
     */
    public Set<String> keys() {
        return Collections.unmodifiableSet(keys);
    }

    /**
     * The lines that bring the substance in.
     *
     * @return an unmodifiable list in the order of the formula
     */
    public List<FormulaLine> lines() {
        return lines;
    }

    /**
     * Whether a substance as written is this one.
     *
     * @param written the substance, in any spelling
     * @return true if it shares a name, a synonym or the CAS number
     */
    public boolean includes(Substance written) {
        for (String key : Objects.requireNonNull(written, "written").keys()) {
            if (keys.contains(key)) {
                return true;
            }
        }
        return false;
    }

    /**
     * How much of a material is this substance, all its parts that are this substance taken together.
     *
     * @param material the material
     * @return the fraction of the material as supplied, from 0 to 1
     */
    public Ratio strengthIn(Ingredient material) {
        Ratio sum = Ratio.ZERO;
        for (var part : Objects.requireNonNull(material, "material").parts().entrySet()) {
            if (includes(part.getKey())) {
                sum = sum.plus(part.getValue().fraction());
            }
        }
        return sum;
    }

    List<Sameness.Mention> mentions() {
        return mentions;
    }

    @Override
    public String toString() {
        return substance.toString();
    }
}
