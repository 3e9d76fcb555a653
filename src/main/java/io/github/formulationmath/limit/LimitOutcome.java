package io.github.formulationmath.limit;

import io.github.formulationmath.formula.NameBook;
import java.util.Locale;
import java.util.Set;

/**
 * What all that a report found comes to: the worst of it. Ordered from the best to the worst.
 *
 * <p>Substances that the table does not speak of neither help nor harm; they are listed beside the outcome, in
 * {@link LimitReport#withoutLimit()}. No outcome says that a product is safe or lawful.
 */
public enum LimitOutcome {
    /**
     * Every highest and lowest share that counts anything is shown to be kept, and the table leaves nothing to read. It
     * says nothing of parts of the law that the table does not hold, see {@link LimitTable#notHeld()}.
     */
    NO_COUNTED_LIMIT_PASSED,
    /**
     * No counted limit is passed, but something is left that no number settles: an entry with conditions, wording or a
     * remark, one that may apply, one that must be read, one that is not transcribed, a declaration or warning that is
     * due, an entry that names a substance without counting it, a word that the table does not know, a name that is close to one of the table, a CAS number that contradicts
     * the name.
     */
    CONDITIONS_OPEN,
    /** For a highest or lowest share a figure is missing, or the weighing is too uncertain to show that it is kept. */
    CANNOT_BE_ASSESSED,
    /**
     * A highest share is exceeded, or a lowest effective one is not reached, by a limit that applies or may apply.
     */
    EXCEEDS,
    /** An entry of the table allows a substance in other products only. */
    PROHIBITED;

    LimitOutcome or(LimitOutcome other) {
        return compareTo(other) >= 0 ? this : other;
    }

    /** The key of the words for it. */
    String key() {
        return "limit.outcome." + name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** What one verdict comes to. */
    static LimitOutcome of(Verdict verdict) {
        if (!verdict.limit().kind().restrictsContents()) {
            boolean silent = verdict.conformity() == Conformity.WITHIN && !verdict.leavesOpen();
            return silent ? NO_COUNTED_LIMIT_PASSED : CONDITIONS_OPEN;
        }
        return switch (verdict.conformity()) {
            case WITHIN -> verdict.leavesOpen() ? CONDITIONS_OPEN : NO_COUNTED_LIMIT_PASSED;
            case NOT_ASSESSABLE, NOT_SHOWN_WITHIN -> CANNOT_BE_ASSESSED;
            case FALLS_SHORT, EXCEEDS -> EXCEEDS;
            case PROHIBITED -> PROHIBITED;
        };
    }

    /** What a report comes to: the worst of its verdicts, and what is open besides. */
    static LimitOutcome of(LimitReport report) {
        LimitOutcome worst = leavesOpen(report) ? CONDITIONS_OPEN : NO_COUNTED_LIMIT_PASSED;
        for (Verdict verdict : report.verdicts()) {
            worst = worst.or(of(verdict));
        }
        return worst;
    }

    /** Whether anything beside the verdicts is to be read. A substance with a CAS number of its own is not the slip of a pen. */
    private static boolean leavesOpen(LimitReport report) {
        return !report.casConflicts().isEmpty()
                || report.amended().values().stream()
                        .flatMap(Set::stream)
                        .anyMatch(change ->
                                report.asOf().map(day -> day.isBoundBy(change)).orElse(true))
                || !report.closestWords().isEmpty()
                || report.uncounted().stream().anyMatch(finding -> isOpen(finding, report))
                || !report.withoutBreakdown().isEmpty()
                || report.readings().values().stream().anyMatch(reading -> reading.how() != NameBook.How.SPELLING)
                || report.suggestions().keySet().stream()
                        .anyMatch(substance -> substance.cas().isEmpty());
    }

    /** What a stated purpose lifted is told; it is open only as far as no other limit on contents counts the substance. */
    private static boolean isOpen(LimitReport.Uncounted finding, LimitReport report) {
        return finding.otherPurpose()
                ? report.verdicts().stream()
                        .filter(verdict -> verdict.limit().kind().restrictsContents())
                        .noneMatch(verdict -> verdict.substances().contains(finding.substance()))
                : finding.mustBeRead();
    }
}
