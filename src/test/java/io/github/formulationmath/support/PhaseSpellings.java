package io.github.formulationmath.support;

import java.text.Normalizer;
import java.util.Locale;
import java.util.Random;

/** Spellings of the name of a phase, all of them one name. */
public final class PhaseSpellings {

    private static final String OIL = "Ph\u00e9-oil phase";

    private PhaseSpellings() {}

    /** Letter case, Unicode form, what is not seen, and the kind of space: drawn here, forgiven there. */
    public static String next(Random random) {
        String text = random.nextBoolean() ? OIL : Normalizer.normalize(OIL, Normalizer.Form.NFD);
        text = random.nextBoolean() ? text.toUpperCase(Locale.ROOT) : text;
        text = text.replace(" ", random.nextBoolean() ? " " : "\u00a0 ");
        text = text.replace("-", random.nextBoolean() ? "-" : "\u2011");
        return (random.nextBoolean() ? "" : "\u200b") + text + (random.nextBoolean() ? "" : " ");
    }
}
