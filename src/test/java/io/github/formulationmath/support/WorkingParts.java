package io.github.formulationmath.support;

import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.reckoning.Entry;
import io.github.formulationmath.reckoning.Explained;
import io.github.formulationmath.reckoning.Step;
import io.github.formulationmath.reckoning.Working;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** What a working is made of, for tests that ask it. */
public final class WorkingParts {

    private WorkingParts() {}

    public static Map<String, Ratio> steps(Explained explained) {
        return steps(explained.working());
    }

    public static Map<String, Ratio> steps(Working working) {
        return working.steps().stream().collect(Collectors.toMap(Step::label, Step::value, (first, second) -> first));
    }

    public static List<Entry.Decision> decisions(Explained explained) {
        return decisions(explained.working());
    }

    public static List<Entry.Decision> decisions(Working working) {
        return working.entries().stream()
                .filter(Entry.Decision.class::isInstance)
                .map(Entry.Decision.class::cast)
                .toList();
    }

    public static List<String> notes(Working working) {
        return working.entries().stream()
                .filter(Entry.Note.class::isInstance)
                .map(note -> ((Entry.Note) note).phrase().key())
                .toList();
    }
}
