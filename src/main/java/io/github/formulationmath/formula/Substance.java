package io.github.formulationmath.formula;

import java.io.Serial;
import java.io.Serializable;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * A chemical substance or botanical preparation by its INCI name, with its CAS registry number where one is known. Holds
 * no amount.
 *
 * <p>Example: {@code Substance.of("Glycerin").withCas("56-81-5")}.
 *
 * <p>Equal means the same name, letter by letter, and the same number; matching names that are merely alike is the
 * business of limit tables. Immutable and thread-safe.
 */
public final class Substance implements Serializable {

    @Serial
    private static final long serialVersionUID = 1L;

    private final String name;
    private final @Nullable String cas;

    private Substance(String name, @Nullable String cas) {
        this.name = name;
        this.cas = cas;
    }

    /**
     * A substance.
     *
     * @param inciName the INCI name
     * @return the substance, without a CAS number
     * @throws IllegalArgumentException if the name is blank
     */
    public static Substance of(String inciName) {
        return new Substance(Names.require("inciName", inciName), null);
    }

    /**
     * The same substance with a CAS registry number.
     *
     * @param number the number, like {@code 56-81-5}
     * @return the substance with the number
     * @throws IllegalArgumentException if the form or the check digit is wrong
     */
    public Substance withCas(String number) {
        return new Substance(name, CasNumbers.require(number));
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

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Substance that && name.equals(that.name) && Objects.equals(cas, that.cas);
    }

    @Override
    public int hashCode() {
        return Objects.hash(name, cas);
    }

    @Override
    public String toString() {
        return cas == null ? name : name + " (CAS " + cas + ")";
    }
}
