package io.github.formulationmath.promise;

import static io.github.formulationmath.pot.Lotion.g;
import static io.github.formulationmath.pot.Lotion.line;
import static org.assertj.core.api.Assertions.assertThat;

import io.github.formulationmath.mend.Correction;
import io.github.formulationmath.mend.CorrectionRules;
import io.github.formulationmath.plan.Tolerances;
import io.github.formulationmath.pot.LineAddition;
import io.github.formulationmath.pot.Lotion;
import io.github.formulationmath.record.BatchRecord;
import io.github.formulationmath.record.BatchRecordTest;
import io.github.formulationmath.record.BenchEntry;
import io.github.formulationmath.weighing.Balance;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Corrections are proposed and taken on the balances of the lines. */
public final class CorrectionsInTheNotebookTest {

    static final Balance POCKET = Balance.of("0.01 g", "100 g").named("pocket");

    static BatchRecord opened() {
        return BatchRecord.of(
                BatchRecordTest.CODE, Lotion.tared("316.0", "12.3", "48.0", "20.0", "4.0"), Tolerances.of("5 %"));
    }

    @Test
    void corrections_are_proposed_and_taken_on_the_balances_of_the_lines() {
        BatchRecord record = opened().with(BenchEntry.addition(
                LineAddition.of(line("Glycerin"), g("0.33")).on(POCKET)));
        Correction correction = Correction.smallest(record.made(), CorrectionRules.within(Tolerances.of("1 %")));
        List<LineAddition> additions = correction.onDisplay().additions();
        assertThat(additions).isNotEmpty();
        BatchRecord mended =
                record.with(additions.stream().map(BenchEntry::addition).toList());
        assertThat(mended.made()).isEqualTo(correction.onDisplay().after());
    }
}
