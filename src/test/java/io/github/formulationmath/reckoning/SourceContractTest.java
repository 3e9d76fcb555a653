package io.github.formulationmath.reckoning;

import io.github.formulationmath.support.ValueContract;
import java.util.List;

/** Two sources are equal if publication, place and text are. */
class SourceContractTest implements ValueContract<Source> {

    private static List<Source> sources() {
        return List.of(
                Source.user(),
                Source.written("2.50 %"),
                Source.written("2.5 %"),
                Source.published("JCGM 100:2008", "F.2.2.1"),
                Source.published("JCGM 100:2008", "4.3.7"),
                Source.published("JCGM 101:2008", ""));
    }

    @Override
    public List<Source> different() {
        return sources();
    }

    @Override
    public List<Source> same() {
        return sources();
    }
}
