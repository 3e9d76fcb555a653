package io.github.formulationmath.limit;

import io.github.formulationmath.working.Phrase;
import io.github.formulationmath.working.Wording;
import java.util.ArrayList;
import java.util.List;

/** A verdict in words. */
record VerdictText(Verdict verdict, Wording wording) {

    List<String> lines() {
        List<Phrase> phrases = new ArrayList<>();
        phrases.add(head());
        phrases.add(Phrase.of(
                "limit.basis",
                verdict.limit().basis().toString(),
                verdict.limit().whole(),
                verdict.limit().citation().toString()));
        verdict.made()
                .ifPresent(share -> phrases.add(Phrase.of(
                        "limit.interval",
                        PercentText.of(verdict.bounds().lower().orElseThrow()),
                        PercentText.of(verdict.bounds().upper().orElseThrow()),
                        verdict.rule().toString())));
        phrases.addAll(entryTexts(verdict.limit().text()));
        phrases.addAll(verdict.remarks());
        phrases.addAll(verdict.cautions());
        return phrases.stream().map(wording::text).toList();
    }

    private Phrase head() {
        return Phrase.of(
                "limit.head." + verdict.limit().kind().code().replace('_', '-'),
                verdict.counted(),
                PercentText.of(verdict.share()),
                verdict.limit().share().percent() + " %",
                wording.text(Phrase.of(verdict.conformity().key())));
    }

    private static List<Phrase> entryTexts(EntryText text) {
        List<Phrase> phrases = new ArrayList<>();
        add(phrases, "limit.scope", text.scope());
        add(phrases, "limit.conditions", text.conditions());
        add(phrases, "limit.warnings", text.warnings());
        add(phrases, "limit.note", text.note());
        return phrases;
    }

    private static void add(List<Phrase> phrases, String key, String text) {
        if (!text.isEmpty()) {
            phrases.add(Phrase.of(key, text));
        }
    }

    static List<Phrase> remarks(Tally tally) {
        List<Phrase> remarks = new ArrayList<>();
        UsageLimit limit = tally.slot().limit();
        if (tally.slot().applicability() == Applicability.MAY_APPLY) {
            remarks.add(Phrase.of("remark.may-apply", limit.scope().toString()));
        }
        tally.problem()
                .ifPresent(key -> remarks.add(Phrase.of(
                        key,
                        tally.withoutConversion()
                                .map(contribution -> contribution.substance().name())
                                .orElse(limit.whole()),
                        limit.basis().toString())));
        tally.contributions().stream()
                .filter(contribution -> contribution.hit().formGuessed())
                .map(contribution -> Phrase.of(
                        "remark.form-guessed",
                        contribution.substance().name(),
                        contribution.hit().member().form()))
                .distinct()
                .forEach(remarks::add);
        return List.copyOf(remarks);
    }
}
