package io.github.formulationmath.limit;

import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.working.Source;
import java.io.Serializable;
import java.util.List;

/** What the supplier says one gram of a substance holds of a reference substance. */
record StatedContent(Ratio content, Source source) implements Serializable {

    /** Which substance, as which reference; both normalised. */
    record Key(String substance, String reference) implements Serializable {

        static Key of(String substance, String reference) {
            return new Key(LimitNames.normalise(substance), LimitNames.normalise(reference));
        }

        /** The members that a table counts as a reference and knows under a key, each by its own name. */
        static List<Key> meant(LimitTable table, String key, String reference) {
            return table.limits().stream()
                    .filter(limit -> limit.basis().isReference())
                    .filter(limit ->
                            LimitNames.normalise(limit.basis().referenceName()).equals(reference))
                    .flatMap(limit -> limit.group().members().stream())
                    .map(GroupMember::substance)
                    .filter(substance -> substance.keys().contains(key))
                    .map(substance -> of(substance.name(), reference))
                    .distinct()
                    .toList();
        }
    }

    Conversion conversion() {
        return new Conversion.Stated(content, source);
    }
}
