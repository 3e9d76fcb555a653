package io.github.formulationmath.soap;

import io.github.formulationmath.number.Excerpt;
import java.io.Serializable;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/**
 * What the salts of fats and acids are called: for olive oil "Olivate", which with the alkali makes Sodium Olivate or Potassium Olivate.
 * None comes with the library; the glossary of ingredient names of the place of sale has them (common practice, no published source for
 * the rule).
 *
 * <p>Example: {@code SaltNames.none().naming("Olea Europaea Fruit Oil", "Olivate")}.
 *
 * @param byName the name of the salt without its metal, by the name of the fat or acid
 */
public record SaltNames(Map<String, String> byName) implements Serializable {

    /**
     * Copies.
     *
     * @param byName the name of the salt without its metal, by the name of the fat or acid
     */
    public SaltNames {
        byName = Collections.unmodifiableMap(new LinkedHashMap<>(Objects.requireNonNull(byName, "byName")));
    }

    /**
     * No names yet.
     *
     * @return the names, to be added to
     */
    public static SaltNames none() {
        return new SaltNames(Map.of());
    }

    /**
     * The same names with one more, or another one.
     *
     * @param name the name of the fat or acid as its line in the formula
     * @param salt what its salt is called without the metal: {@code "Olivate"}
     * @return the names
     * @throws IllegalArgumentException if a name is blank, or the salt is given with its metal
     */
    public SaltNames naming(String name, String salt) {
        String plain = Objects.requireNonNull(salt, "salt").strip();
        if (plain.isEmpty() || Objects.requireNonNull(name, "name").isBlank()) {
            throw new IllegalArgumentException("name is \"" + Excerpt.of(name) + "\", salt is \"" + Excerpt.of(salt)
                    + "\": neither may be blank, as in \"Olivate\"");
        }
        for (Alkali alkali : Alkali.values()) {
            if (plain.startsWith(metal(alkali))) {
                throw new IllegalArgumentException("salt is \"" + Excerpt.of(salt)
                        + "\": leave the metal out, the alkalis of the soap say it, as in \"Olivate\"");
            }
        }
        Map<String, String> all = new LinkedHashMap<>(byName);
        all.put(name, plain);
        return new SaltNames(all);
    }

    Optional<String> of(String name) {
        return Optional.ofNullable(byName.get(name));
    }

    static String metal(Alkali alkali) {
        return alkali == Alkali.SODIUM_HYDROXIDE ? "Sodium " : "Potassium ";
    }
}
