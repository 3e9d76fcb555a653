package io.github.formulationmath.classroom;

import io.github.formulationmath.reckoning.Style;
import java.util.ArrayList;
import java.util.List;

/**
 * Words of an exercise with the names and numbers put in.
 *
 * @param key the key into the wording
 * @param parts what stands for {0}, {1}, …
 */
record Said(String key, List<Inset> parts) {

    Said {
        parts = List.copyOf(parts);
    }

    static Said of(String key, Inset... parts) {
        return new Said(key, List.of(parts));
    }

    /** The same words with one thing more to put in. */
    Said with(Inset last) {
        List<Inset> more = new ArrayList<>(parts);
        more.add(last);
        return new Said(key, more);
    }

    String in(Style style) {
        return style.wording()
                .say(key, parts.stream().map(part -> part.in(style)).toArray(String[]::new));
    }
}
