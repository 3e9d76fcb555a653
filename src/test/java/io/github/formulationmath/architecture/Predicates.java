package io.github.formulationmath.architecture;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;

/** Groups of classes that the architecture test speaks about. */
final class Predicates {

    private Predicates() {}

    /** A class of {@code json} whose top-level name begins with "Json": the only ones that may need Jackson. */
    static DescribedPredicate<JavaClass> theJsonClass() {
        return DescribedPredicate.describe("the JSON class of the package json", type -> {
            String name = type.getName();
            String prefix = Ladder.ROOT + ".json.Json";
            return name.startsWith(prefix);
        });
    }
}
