package io.github.formulationmath.limit;

import io.github.formulationmath.formula.Substance;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/** What a report says of one substance, in the words of a reader. */
final class Heard {

    /** Ordered from what stands most against it. */
    enum Word {
        PROHIBITED,
        EXCEEDS,
        READ,
        WITHIN,
        /** Within, and the entry has conditions that are told beside it. */
        CONDITIONS,
        DECLARE,
        NOTHING,
        SUGGESTED,
        UNKNOWN
    }

    private final LimitReport report;
    private final Substance substance;

    private Heard(LimitReport report, Substance substance) {
        this.report = report;
        this.substance = substance;
    }

    /** Everything that is said; never empty, unless the substance has vanished. */
    static Set<Word> of(LimitReport report, Substance substance) {
        return new Heard(report, substance).words();
    }

    private Set<Word> words() {
        Set<Word> words = EnumSet.noneOf(Word.class);
        report.verdicts().stream()
                .filter(verdict -> verdict.substances().stream().anyMatch(this::isIt))
                .forEach(verdict -> {
                    words.add(word(verdict));
                    if (verdict.conformity() == Conformity.WITHIN && verdict.leavesOpen()) {
                        words.add(Word.CONDITIONS);
                    }
                });
        Stream.of(
                        report.outOfScope(),
                        report.notTranscribed(),
                        report.mentioned(),
                        report.mayBeProhibited(),
                        report.colorants())
                .flatMap(List::stream)
                .filter(finding -> isIt(finding.substance()))
                .forEach(finding -> words.add(word(finding)));
        if (report.amended().keySet().stream().anyMatch(this::isIt)) {
            words.add(Word.NOTHING);
        }
        if (report.withoutLimit().stream().anyMatch(this::isIt)) {
            boolean close = report.suggestions().keySet().stream().anyMatch(this::isIt);
            words.add(close ? Word.SUGGESTED : Word.UNKNOWN);
        }
        return words;
    }

    private boolean isIt(Substance other) {
        return other.keys().stream().anyMatch(substance.keys()::contains);
    }

    private static Word word(Verdict verdict) {
        boolean kept = verdict.conformity() == Conformity.WITHIN;
        if (!verdict.limit().kind().restrictsContents()) {
            return kept ? Word.NOTHING : Word.DECLARE;
        }
        return switch (verdict.conformity()) {
            case PROHIBITED -> Word.PROHIBITED;
            case EXCEEDS, FALLS_SHORT -> Word.EXCEEDS;
            case NOT_ASSESSABLE, NOT_SHOWN_WITHIN -> Word.READ;
            case WITHIN -> verdict.applicability() == Applicability.APPLIES ? Word.WITHIN : Word.READ;
        };
    }

    private static Word word(LimitReport.Uncounted finding) {
        if (finding.why() == LimitReport.Uncounted.Why.COLORANT) {
            return Word.WITHIN;
        }
        return finding.mustBeRead() && !finding.otherPurpose() ? Word.READ : Word.NOTHING;
    }
}
