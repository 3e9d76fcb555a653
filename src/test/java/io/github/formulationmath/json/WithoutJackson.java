package io.github.formulationmath.json;

import io.github.formulationmath.mend.Correction;
import io.github.formulationmath.mend.CorrectionRules;
import io.github.formulationmath.plan.Tolerances;
import io.github.formulationmath.pot.Lotion;
import io.github.formulationmath.pot.MadeBatch;
import io.github.formulationmath.record.BatchRecordTest;
import java.io.StringReader;
import java.io.StringWriter;
import java.util.List;
import java.util.concurrent.Callable;

/** Run in a JVM of its own without Jackson on the class path; says what works there. */
public final class WithoutJackson {

    private WithoutJackson() {}

    public static void main(String[] args) throws Exception {
        MadeBatch made = BatchRecordTest.record().made();
        Correction correction = Correction.smallest(
                Lotion.made("316.0", "13.5", "48.0", "20.0", "4.0"), CorrectionRules.within(Tolerances.of("2 %")));
        RecordDocument.write(BatchRecordTest.record());
        System.out.println("made " + made.mass() + ", " + correction.outcome());
        List<Callable<?>> entries = List.of(
                () -> Json.records().write(BatchRecordTest.record()),
                () -> {
                    Json.records().write(BatchRecordTest.record(), new StringWriter());
                    return "written";
                },
                () -> Json.records().read("{}"),
                () -> Json.records().read(new StringReader("{}")),
                () -> Json.formulas().write(BatchRecordTest.record().formula()),
                () -> {
                    Json.formulas().write(BatchRecordTest.record().formula(), new StringWriter());
                    return "written";
                },
                () -> Json.formulas().read("{}"),
                () -> Json.formulas().read(new StringReader("{}")),
                () -> Json.ofWorking(made.lines().get(0).share().working()));
        // Each of them as the first and as a later use.
        int first = args.length == 0 ? 0 : Integer.parseInt(args[0]);
        for (int i = 0; i < entries.size(); i++) {
            try {
                System.out.println(
                        "worked: " + entries.get((first + i) % entries.size()).call());
            } catch (IllegalStateException e) {
                System.out.println("refused: " + e.getMessage());
            }
        }
    }
}
