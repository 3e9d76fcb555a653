package io.github.formulationmath.limit;

import io.github.formulationmath.number.NumberText;
import io.github.formulationmath.reckoning.Phrase;
import io.github.formulationmath.reckoning.Wording;

/** What Annexes II and IV say, in words. */
final class AnnexText {

    private AnnexText() {}

    /** The first line of a verdict on a substance that Annex II names. */
    static Phrase head(Verdict verdict, Wording wording) {
        return Phrase.of(
                "limit.head.named",
                verdict.shortName(),
                NumberText.percent(verdict.share().canonical()),
                verdict.limit().id().substring(AnnexFindings.PROHIBITED.length()),
                verdict.limit().group().name(),
                wording.say(verdict.conformity().key()));
    }

    static Phrase prohibited(LimitReport.Uncounted finding) {
        OmittedEntry entry = finding.entries().get(0);
        return finding.why() == LimitReport.Uncounted.Why.MAY_BE_PROHIBITED
                ? Phrase.of("remark.may-be-prohibited", finding.substance().toString(), entry.number(), entry.name())
                : Phrase.of("remark.prohibited-unless", finding.substance().toString(), entry.number(), entry.name());
    }

    static Phrase colorant(LimitReport.Uncounted finding) {
        if (finding.why() == LimitReport.Uncounted.Why.COLORANT_UNLISTED) {
            return Phrase.of(
                    "remark.colorant-unlisted",
                    finding.substance().toString(),
                    finding.entries().get(0).name());
        }
        UsageLimit limit = finding.limits().get(0);
        String field = limit.text().scope();
        String conditions = limit.text().conditions();
        String key = field.isEmpty() ? "remark.colorant-everywhere" : "remark.colorant-field";
        Phrase listed =
                Phrase.of(key, finding.substance().toString(), limit.citation().toString(), field);
        return conditions.isEmpty()
                ? listed
                : Phrase.of(
                        key + "-conditions",
                        finding.substance().toString(),
                        limit.citation().toString(),
                        field,
                        withoutStop(conditions));
    }

    /** As printed, but for the full stop at the end, for the sentence goes on. */
    private static String withoutStop(String printed) {
        return printed.endsWith(".") ? printed.substring(0, printed.length() - 1) : printed;
    }
}
