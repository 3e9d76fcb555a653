package io.github.formulationmath.formula;

import io.github.formulationmath.number.Excerpt;
import io.github.formulationmath.number.NumberText;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.AmountFormat;
import io.github.formulationmath.quantity.MassFraction;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;

/**
 * The parts of a supplied material being declared, one after the other. Not thread-safe; every call returns this object.
 */
public final class BlendBuilder {

    private final String name;
    private final Map<Substance, MassFraction> parts = new LinkedHashMap<>();
    private final Map<String, Substance> byKey = new HashMap<>();
    private Ratio total = Ratio.ZERO;
    private AmountFormat format = AmountFormat.standard();

    BlendBuilder(String name) {
        this.name = name;
    }

    /**
     * Has the strengths that follow read as the people of a locale write them, 90,5 % in German.
     *
     * @param locale the locale
     * @return this
     */
    public BlendBuilder inLocale(Locale locale) {
        format = AmountFormat.forLocale(Objects.requireNonNull(locale, "locale"));
        return this;
    }

    /**
     * Declares a part.
     *
     * @param substance the substance, not declared before in any spelling
     * @param strength its mass fraction of the material as supplied, above 0
     * @return this
     * @throws IllegalArgumentException if the substance was declared before, the strength is 0, or the parts pass 100 %
     */
    public BlendBuilder part(Substance substance, MassFraction strength) {
        Objects.requireNonNull(substance, "substance");
        Objects.requireNonNull(strength, "strength");
        if (strength.fraction().isZero()) {
            throw new IllegalArgumentException(Excerpt.of(name) + ": " + Excerpt.of(substance)
                    + " is declared with 0 %: leave it out or give its strength");
        }
        requireNew(substance);
        parts.put(substance, strength);
        total = total.plus(strength.fraction());
        if (total.compareTo(Ratio.ONE) > 0) {
            throw new IllegalArgumentException(
                    Excerpt.of(name) + ": with " + Excerpt.of(substance) + " the parts add up to "
                            + Excerpt.of(NumberText.percentExactly(total)) + ", which is more than 100 %");
        }
        return this;
    }

    private void requireNew(Substance substance) {
        for (String key : substance.keys()) {
            Substance before = byKey.get(key);
            if (before != null) {
                throw new IllegalArgumentException(
                        Excerpt.of(name) + ": " + Excerpt.of(substance) + " is declared twice"
                                + (before.toString().equals(substance.toString())
                                        ? ""
                                        : ", the first time as " + Excerpt.of(before))
                                + ": add the two up, or correct the name, synonym or CAS number that they share");
            }
        }
        substance.keys().forEach(key -> byKey.put(key, substance));
    }

    /**
     * Declares a part by name.
     *
     * @param inciName the INCI name of the substance
     * @param percent its strength as text, for example {@code "30 %"}
     * @return this
     * @throws IllegalArgumentException as {@link #part(Substance, MassFraction)}, or if the text is no mass fraction
     */
    public BlendBuilder part(String inciName, String percent) {
        Substance substance = Substance.of(inciName);
        return part(substance, FormulaBuilder.read(inciName + " in " + name, percent, format::parseMassFraction));
    }

    /**
     * Declares that all the rest is one substance, and ends the declaration.
     *
     * @param substance the carrier, often water
     * @return the ingredient
     * @throws IllegalArgumentException if nothing is left for it, or it was declared before
     */
    public Ingredient rest(Substance substance) {
        Ratio left = Ratio.ONE.minus(total);
        if (left.isZero()) {
            throw new IllegalArgumentException(Excerpt.of(name)
                    + ": the parts already make up 100 %: call build() instead of rest(" + Excerpt.of(substance) + ")");
        }
        return part(substance, MassFraction.of(left)).build();
    }

    /**
     * Declares by name that all the rest is one substance, and ends the declaration.
     *
     * @param inciName the INCI name of the carrier
     * @return the ingredient
     * @throws IllegalArgumentException as {@link #rest(Substance)}
     */
    public Ingredient rest(String inciName) {
        return rest(Substance.of(inciName));
    }

    /**
     * Ends the declaration.
     *
     * @return the ingredient
     * @throws IllegalArgumentException if the parts do not make up 100 %
     */
    public Ingredient build() {
        if (!total.equals(Ratio.ONE)) {
            throw new IllegalArgumentException(
                    Excerpt.of(name) + ": the parts add up to " + Excerpt.of(NumberText.percentExactly(total)) + ", "
                            + Excerpt.of(NumberText.percentExactly(Ratio.ONE.minus(total)))
                            + " short of 100 %: declare the rest");
        }
        return Ingredient.ofParts(name, new LinkedHashMap<>(parts));
    }

    /** The name and the parts so far; not the ingredient itself, which {@link #build()} makes. */
    @Override
    public String toString() {
        return name + ", not built yet: " + parts;
    }
}
