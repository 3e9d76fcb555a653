package io.github.formulationmath.limit;

import io.github.formulationmath.formula.SubstanceName;
import java.util.Locale;

/** How limits read names, which is by the one rule of formulas, and the words of scopes. */
final class LimitNames {

    private LimitNames() {}

    /** The one rule by which names are the same. */
    static String normalise(String name) {
        return SubstanceName.normalise(name);
    }

    /** The form of a word of a scope: {@code Face cream} and {@code face-cream} are {@code face_cream}. */
    static String term(String word) {
        return word.strip().toLowerCase(Locale.ROOT).replaceAll("[\\s_-]+", "_");
    }
}
