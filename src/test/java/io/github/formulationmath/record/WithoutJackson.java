package io.github.formulationmath.record;

import io.github.formulationmath.planning.Tolerances;

/** Run in a JVM of its own without Jackson on the class path; says what works there. */
final class WithoutJackson {

    private WithoutJackson() {}

    public static void main(String[] args) {
        MadeBatch made = BatchRecordTest.record().made();
        Correction correction = Correction.smallest(
                Lotion.made("316.0", "13.5", "48.0", "20.0", "4.0"), CorrectionRules.within(Tolerances.of("2 %")));
        RecordDocument.write(BatchRecordTest.record());
        System.out.println("made " + made.mass() + ", " + correction.outcome());
        try {
            JsonBatchRecords.write(BatchRecordTest.record());
        } catch (NoClassDefFoundError e) {
            System.out.println("no JSON");
        }
    }
}
