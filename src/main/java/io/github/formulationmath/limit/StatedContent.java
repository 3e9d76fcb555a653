package io.github.formulationmath.limit;

import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.working.Source;
import java.io.Serializable;

/** What the supplier says one gram of a substance holds of a reference substance. */
record StatedContent(Ratio content, Source source) implements Serializable {

    /** Which substance, as which reference; both normalised. */
    record Key(String substance, String reference) implements Serializable {

        static Key of(String substance, String reference) {
            return new Key(LimitNames.normalise(substance), LimitNames.normalise(reference));
        }
    }

    Conversion conversion() {
        return new Conversion.Stated(content, source);
    }
}
