package io.github.formulationmath.record;

import io.github.formulationmath.weighing.Balance;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What is in a pot after one entry of a record after another. Additions that follow each other on different lines are put in
 * together, so that many of them cost little more than one; a weighing of the pot begins anew.
 */
final class PotHistory {

    /** What was in the pot right after so many entries. */
    record Stage(MadeBatch made, int entries) {}

    private final Map<Integer, LineAddition> waiting = new LinkedHashMap<>();
    private Stage weighed;
    private MadeBatch made;
    private int entries;

    PotHistory(Stage from) {
        this.weighed = from;
        this.made = from.made();
        this.entries = from.entries();
    }

    /** Adds an entry; a loss is checked at once. */
    void add(BenchEntry entry) {
        entries++;
        if (entry.kind() == BenchEntry.Kind.ADDITION) {
            add(entry.toAddition(bench()));
        } else if (entry.kind() == BenchEntry.Kind.WEIGHED_AGAIN) {
            made = entry.toEvaporation(now(), bench()).notAddedBack();
            weighed = new Stage(made, entries);
        }
    }

    private void add(LineAddition addition) {
        int line = made.indexOf(addition.line());
        if (waiting.containsKey(line)) {
            now();
        }
        waiting.put(line, addition);
    }

    private Balance bench() {
        return made.plan().bench().balance();
    }

    /** What is in the pot after everything so far. */
    MadeBatch now() {
        if (!waiting.isEmpty()) {
            made = made.plus(List.copyOf(waiting.values()));
            waiting.clear();
        }
        return made;
    }

    /** The pot when it was last weighed; how it got there does not matter to what follows. */
    Stage lastWeighed() {
        return weighed;
    }
}
