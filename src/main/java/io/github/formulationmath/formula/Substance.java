package io.github.formulationmath.formula;

import java.io.Serial;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * A chemical substance or botanical preparation by its INCI name, with its CAS registry number where one is known, and
 * other names under which it is written. Holds no amount.
 *
 * <p>Example: {@code Substance.of("Glycerin").withCas("56-81-5").withSynonyms("Glycerol")}.
 *
 * <p>Equal means written alike: the same name, letter by letter, the same number and the same synonyms. Which spellings
 * mean one substance is for the whole formula to say, see {@link Composition}. Immutable and thread-safe.
 */
public final class Substance implements Serializable {

    @Serial
    private static final long serialVersionUID = 1L;

    /** Two digits and one of a CAS number, each behind a hyphen. */
    private static final int CAS_TAIL = "-00-0".length();

    private final String name;
    private final @Nullable String cas;
    private final List<String> synonyms;
    /** Brought into normal form when first asked for. */
    private transient volatile @Nullable List<String> keys;
    /** 0 until asked for: substances are looked up often. */
    private transient int hash;

    private Substance(String name, @Nullable String cas, List<String> synonyms) {
        this.name = name;
        this.cas = cas;
        this.synonyms = synonyms;
    }

    private static List<String> keysOf(String name, List<String> synonyms, @Nullable String cas) {
        if (synonyms.isEmpty()) {
            String normal = SubstanceName.normalise(name);
            return cas == null ? List.of(normal) : List.of(normal, cas);
        }
        Set<String> keys = new LinkedHashSet<>();
        keys.add(SubstanceName.normalise(name));
        for (String synonym : synonyms) {
            keys.add(SubstanceName.normalise(synonym));
        }
        if (cas != null) {
            keys.add(cas);
        }
        return List.copyOf(keys);
    }

    /**
     * A substance.
     *
     * @param inciName the INCI name
     * @return the substance, without a CAS number
     * @throws IllegalArgumentException if the name is blank, or has a line break
     */
    public static Substance of(String inciName) {
        return new Substance(SubstanceName.require("inciName", inciName), null, List.of());
    }

    /**
     * The same substance with a CAS registry number.
     *
     * @param number the number, like {@code 56-81-5}
     * @return the substance with the number
     * @throws IllegalArgumentException if the form or the check digit is wrong
     */
    public Substance withCas(String number) {
        return new Substance(name, requireCas(number), synonyms);
    }

    /**
     * The same substance with other names under which it is written, besides those it has. Where one of them stands in the
     * same formula, it is the same substance.
     *
     * @param names for example the name in another language, or the one on the supplier's data sheet
     * @return the substance with the synonyms
     * @throws IllegalArgumentException if a name is blank, or has a line break
     */
    public Substance withSynonyms(String... names) {
        List<String> all = new ArrayList<>(synonyms);
        for (String synonym : Objects.requireNonNull(names, "names")) {
            all.add(SubstanceName.require("names", synonym));
        }
        return new Substance(name, cas, List.copyOf(all));
    }

    /**
     * The INCI name.
     *
     * @return the name as given
     */
    public String name() {
        return name;
    }

    /**
     * The CAS registry number.
     *
     * @return the number, if one was given
     */
    public Optional<String> cas() {
        return Optional.ofNullable(cas);
    }

    /**
     * The other names.
     *
     * @return an unmodifiable list, as given
     */
    public List<String> synonyms() {
        return synonyms;
    }

    /**
     * By what this is recognised as the same substance as another: its name and synonyms in normal form ({@link
     * SubstanceName#normalise}) and its CAS number. A name that is a CAS number counts as that number.
     *
     * @return an unmodifiable list, the name first, nothing twice
     */
    public List<String> keys() {
        List<String> known = keys;
        if (known == null) {
            known = keysOf(name, synonyms, cas);
            keys = known;
        }
        return known;
    }

    /** A number in the form of CAS registry numbers: two to seven digits, two digits, and a check digit (common practice). */
    private static String requireCas(String number) {
        Objects.requireNonNull(number, "number");
        if (!isCasFormed(number)) {
            throw new IllegalArgumentException("number is \"" + number + "\": a CAS number looks like 56-81-5");
        }
        int check = number.charAt(number.length() - 1) - '0';
        if (checkDigit(number) != check) {
            throw new IllegalArgumentException("number is \"" + number + "\": the check digit should be "
                    + checkDigit(number) + "; look for a slip of the pen");
        }
        return number;
    }

    /** Whether a text is a number that could have been given out. */
    static boolean isCas(String text) {
        return isCasFormed(text) && checkDigit(text) == text.charAt(text.length() - 1) - '0';
    }

    /** Looked at without a pattern: it is asked of every name of a table. */
    private static boolean isCasFormed(String text) {
        int first = text.length() - CAS_TAIL;
        if (first < 2 || first > 7 || text.charAt(0) < '1') {
            return false;
        }
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            boolean hyphen = i == first || i == first + 3;
            if (hyphen ? c != '-' : c < '0' || c > '9') {
                return false;
            }
        }
        return true;
    }

    /** The sum of the digits before the last, each times its place counted from the right, modulo 10. */
    private static int checkDigit(String number) {
        int sum = 0;
        int place = 1;
        for (int i = number.length() - 2; i >= 0; i--) {
            if (number.charAt(i) != '-') {
                sum += (number.charAt(i) - '0') * place++;
            }
        }
        return sum % 10;
    }

    /** The name in normal form. */
    String normalName() {
        return keys().get(0);
    }

    @Serial
    @SuppressWarnings({"ConstantConditions", "NullAway"}) // synonyms are missing in what earlier versions wrote
    private Object readResolve() {
        return new Substance(name, cas, synonyms == null ? List.of() : synonyms);
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other == this
                || other instanceof Substance that
                        && hashCode() == that.hashCode()
                        && name.equals(that.name)
                        && Objects.equals(cas, that.cas)
                        && synonyms.equals(that.synonyms);
    }

    @Override
    public int hashCode() {
        int known = hash;
        if (known == 0) {
            known = Objects.hash(name, cas, synonyms);
            hash = known;
        }
        return known;
    }

    @Override
    public String toString() {
        return cas == null ? name : name + " (CAS " + cas + ")";
    }
}
