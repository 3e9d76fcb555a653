package io.github.formulationmath.formula;

import io.github.formulationmath.number.NumberText;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.MassFraction;
import io.github.formulationmath.reckoning.Explained;
import io.github.formulationmath.reckoning.Kind;
import io.github.formulationmath.reckoning.Origin;
import io.github.formulationmath.reckoning.Phrase;
import io.github.formulationmath.reckoning.Reckoning;
import io.github.formulationmath.reckoning.Source;
import io.github.formulationmath.reckoning.Subject;
import io.github.formulationmath.reckoning.Symbol;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * One substance of a formula, in all the spellings that its lines use ({@link Composition}), and how much of the whole it
 * makes up: {@code s = Σ w_i · c_i} over the lines that bring it in, with {@code c_i} its strength in the material of the
 * line.
 *
 * <p>Immutable and thread-safe.
 */
public final class SubstanceShare implements Subject, Explained {

    private static final Symbol STRENGTH = Symbol.of("c", "strength", Kind.SHARE);
    private static final Symbol TOTAL = Symbol.of("s", "substance-share", Kind.SHARE);

    private final List<Sameness.Mention> mentions;
    /** Each once, in the order in which they are first said. */
    private final Set<String> keys;

    private final List<FormulaLine> lines;
    private final @Nullable String cas;
    private final Substance substance;
    /** Worked out when first asked for. */
    private volatile @Nullable Substance inAllNames;

    /** @param mentions in the order of the formula, at least one */
    SubstanceShare(List<Sameness.Mention> mentions) {
        this.mentions = List.copyOf(mentions);
        Substance first = mentions.get(0).substance();
        boolean isOne = mentions.size() == 1 && first.keys().size() == 1;
        this.keys = isOne ? Set.of(first.normalName()) : keysOf(mentions);
        this.lines = linesOf(mentions);
        this.cas = numberIn(keys);
        this.substance = numbered(first);
    }

    private static Set<String> keysOf(List<Sameness.Mention> mentions) {
        Set<String> keys = new LinkedHashSet<>();
        mentions.forEach(mention -> keys.addAll(mention.substance().keys()));
        return keys;
    }

    private static List<FormulaLine> linesOf(List<Sameness.Mention> mentions) {
        FormulaLine only = mentions.get(0).line();
        if (mentions.size() == 1 && only != null) {
            return List.of(only);
        }
        List<FormulaLine> found = new ArrayList<>();
        int last = -1;
        for (Sameness.Mention mention : mentions) {
            FormulaLine line = mention.line();
            if (line != null && line.index() > last) {
                found.add(line);
                last = line.index();
            }
        }
        return List.copyOf(found);
    }

    private static @Nullable String numberIn(Set<String> keys) {
        for (String key : keys) {
            if (Substance.isCas(key)) {
                return key;
            }
        }
        return null;
    }

    private Substance numbered(Substance as) {
        return cas == null || as.cas().isPresent() ? as : as.withCas(cas);
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
                .filter(key -> !Substance.isCas(key) && !asked.keys().contains(key))
                .toArray(String[]::new);
        return numbered(names.length == 0 ? asked : asked.withSynonyms(names));
    }

    /**
     * The substance as the formula first names it, with all other names and the number that the formula has for it, worked out once.
     *
     * @return the substance
     */
    public Substance inAllNames() {
        Substance known = inAllNames;
        if (known == null) {
            known = as(substance);
            inAllNames = known;
        }
        return known;
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
     * @return an unmodifiable list in the order of the formula, of at least one line
     */
    public List<FormulaLine> lines() {
        return lines;
    }

    /**
     * The share of the whole.
     *
     * @return the mass fraction, above 0, exact, with its working
     */
    public MassFraction share() {
        return MassFraction.of(shareIn(Reckoning.plain()))
                .withWorking(
                        share -> Phrase.of("question.substance-share", share.name()), this, SubstanceShare::shareIn);
    }

    /**
     * How much of a material is this substance, all its parts that are this substance taken together.
     *
     * @param material the material
     * @return its mass fraction of the material as supplied; 0 if the material does not contain it
     */
    public MassFraction strengthIn(Ingredient material) {
        Ratio sum = Ratio.ZERO;
        for (var part : Objects.requireNonNull(material, "material").parts().entrySet()) {
            if (includes(part.getKey())) {
                sum = sum.plus(part.getValue().fraction());
            }
        }
        return MassFraction.of(sum);
    }

    /** Whether a substance as written shares a name, a synonym or the CAS number with this one. */
    private boolean includes(Substance written) {
        return written.keys().stream().anyMatch(keys::contains);
    }

    /** Whether a question adds no other CAS number to the one that lines give. */
    boolean allowsNumberOf(Substance asked) {
        return cas == null || asked.keys().stream().filter(Substance::isCas).allMatch(cas::equals);
    }

    List<Sameness.Mention> mentions() {
        return mentions;
    }

    /** The share of the whole. */
    @Override
    public Origin origin() {
        return share().origin();
    }

    private <V> V shareIn(Reckoning<V> r) {
        List<V> contributions = new ArrayList<>(lines.size());
        lines.forEach(line -> addContributions(r, line, contributions));
        V total = r.sum(contributions);
        return r.named(TOTAL, this, total);
    }

    /** What each part of a line's material that is this substance brings in. */
    private <V> void addContributions(Reckoning<V> r, FormulaLine line, List<V> contributions) {
        int place = 0;
        for (var part : line.ingredient().parts().entrySet()) {
            if (includes(part.getKey())) {
                Ratio strength = part.getValue().fraction();
                V share = r.known(line);
                contributions.add(
                        strength.equals(Ratio.ONE)
                                ? share
                                : r.product(
                                        share,
                                        r.given(
                                                STRENGTH,
                                                subject(line, part.getKey(), place),
                                                strength,
                                                Source.user())));
                place++;
            }
        }
    }

    private static Subject subject(FormulaLine line, Substance part, int place) {
        return place == 0 ? line : Subject.of(line.subscript() + "." + place, part.name() + " in " + line.name());
    }

    @Override
    public String subscript() {
        return "";
    }

    @Override
    public String name() {
        return substance.name();
    }

    /** Equal if substance and lines are. */
    @Override
    public boolean equals(@Nullable Object other) {
        return other == this
                || other instanceof SubstanceShare that && substance.equals(that.substance) && lines.equals(that.lines);
    }

    @Override
    public int hashCode() {
        return substance.hashCode();
    }

    @Override
    public String toString() {
        return substance + " " + NumberText.percentExactly(share().fraction());
    }
}
