package io.github.formulationmath.limit;

import io.github.formulationmath.formula.Substance;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** What a check found besides verdicts, each finding once, in the order of the formula; filled by one check, then read. */
final class Findings {

    private final Set<Substance> withoutLimit = new LinkedHashSet<>();
    private final Set<OutOfScope> outOfScope = new LinkedHashSet<>();
    private final Set<Substance> conflicts = new LinkedHashSet<>();
    private final Map<Substance, NotTranscribed> notTranscribed = new LinkedHashMap<>();
    private final Set<Mentioned> mentioned = new LinkedHashSet<>();
    private Set<String> unusedPurposes = Set.of();

    void addWithoutLimit(Substance substance) {
        withoutLimit.add(substance);
    }

    void add(OutOfScope finding) {
        outOfScope.add(finding);
    }

    void addConflict(Substance substance) {
        conflicts.add(substance);
    }

    void add(NotTranscribed finding) {
        notTranscribed.put(finding.substance(), finding);
    }

    void add(Mentioned finding) {
        mentioned.add(finding);
    }

    void setUnusedPurposes(Set<String> names) {
        unusedPurposes = Collections.unmodifiableSet(names);
    }

    List<Mentioned> mentioned() {
        return List.copyOf(mentioned);
    }

    Set<String> unusedPurposes() {
        return unusedPurposes;
    }

    List<Substance> withoutLimit() {
        return List.copyOf(withoutLimit);
    }

    List<OutOfScope> outOfScope() {
        return List.copyOf(outOfScope);
    }

    List<Substance> conflicts() {
        return List.copyOf(conflicts);
    }

    List<NotTranscribed> notTranscribed() {
        return List.copyOf(notTranscribed.values());
    }
}
