package io.github.formulationmath.limit;

import io.github.formulationmath.document.Document;
import io.github.formulationmath.formula.NameBook;
import io.github.formulationmath.formula.Substance;
import io.github.formulationmath.reckoning.Phrase;
import io.github.formulationmath.reckoning.Wording;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/** A report in words. */
record ReportText(LimitReport report, Wording wording) {

    /** Everything, several lines to a verdict. */
    List<String> lines() {
        List<String> lines = new ArrayList<>(found());
        lines.addAll(cautions());
        return List.copyOf(lines);
    }

    /** One line to a verdict on contents, one to all declarations that are due, and so on. */
    List<String> shortLines() {
        Set<String> lines = new LinkedHashSet<>(head());
        for (Verdict verdict : report.verdicts()) {
            if (verdict.limit().kind().restrictsContents()) {
                lines.add(new VerdictText(verdict, wording).inOneLine());
            }
        }
        lines.addAll(grouped());
        lines.addAll(texts(findings()));
        lines.addAll(cautions());
        return List.copyOf(lines);
    }

    /** Declarations and warnings with the same answer in one line; where their entries say more, that is told once. */
    private List<String> grouped() {
        Map<String, List<String>> named = new LinkedHashMap<>();
        Set<String> remarks = new LinkedHashSet<>();
        boolean conditions = false;
        for (Verdict verdict : report.verdicts()) {
            if (!verdict.limit().kind().restrictsContents()) {
                VerdictText text = new VerdictText(verdict, wording);
                List<String> names = named.computeIfAbsent(text.answer(), key -> new ArrayList<>());
                if (!names.contains(text.named())) {
                    names.add(text.named());
                }
                if (verdict.conformity() != Conformity.WITHIN) {
                    conditions |= !verdict.limit().text().conditions().isEmpty();
                    remarks.addAll(texts(verdict.remarks().stream()
                            .filter(remark -> !remark.key().equals(Conversion.Unstated.PROBLEM))
                            .toList()));
                }
            }
        }
        List<String> lines = new ArrayList<>();
        named.forEach((answer, names) -> lines.add(wording.say("limit.grouped", answer, String.join("; ", names))));
        lines.addAll(remarks);
        if (conditions) {
            lines.add(wording.say("limit.grouped-conditions"));
        }
        return lines;
    }

    Document document() {
        Document document = Document.titled(report.formula().name(), wording.say("language"));
        for (String line : found()) {
            document = document.paragraph(line);
        }
        for (String caution : cautions()) {
            document = document.caution(caution);
        }
        return document;
    }

    private List<String> found() {
        List<String> lines = new ArrayList<>(head());
        report.verdicts().forEach(verdict -> lines.addAll(verdict.describeAlone(wording)));
        lines.addAll(texts(findings()));
        return lines;
    }

    private List<String> head() {
        List<String> lines = new ArrayList<>();
        if (!report.table().notHeld().isEmpty()) {
            lines.add(wording.say(
                    "limit.not-held", String.join("; ", report.table().notHeld())));
        }
        lines.add(wording.say(outcome()));
        return lines;
    }

    private List<String> cautions() {
        return texts(List.of(Phrase.of("caution.limit"), report.table().caution()));
    }

    /** Where nothing was compared, nothing was passed either, and that must not read like a result. */
    private String outcome() {
        boolean nothing = report.outcome() == LimitOutcome.NO_COUNTED_LIMIT_PASSED
                && report.binding().isEmpty();
        return nothing ? "limit.outcome.nothing-counted" : report.outcome().key();
    }

    private List<String> texts(List<Phrase> phrases) {
        return phrases.stream().map(wording::text).toList();
    }

    private List<Phrase> findings() {
        List<Phrase> phrases = new ArrayList<>();
        report.mayBeProhibited().forEach(finding -> phrases.add(AnnexText.prohibited(finding)));
        report.colorants().forEach(finding -> phrases.add(AnnexText.colorant(finding)));
        for (LimitReport.Uncounted finding : report.notTranscribed()) {
            finding.entries()
                    .forEach(entry -> phrases.add(Phrase.of(
                            "remark.not-transcribed",
                            finding.substance().toString(),
                            entry.toString(),
                            entry.reason())));
        }
        for (LimitReport.Uncounted finding : report.mentioned()) {
            finding.limits().stream()
                    .map(limit -> limit.citation().toString())
                    .distinct()
                    .forEach(citation -> phrases.add(
                            Phrase.of("remark.mentioned", finding.substance().toString(), citation)));
        }
        report.outOfScope().forEach(finding -> phrases.add(outOfScope(finding)));
        report.readings().forEach((substance, reading) -> phrases.add(reading(substance, reading)));
        if (!report.withoutBreakdown().isEmpty()) {
            phrases.add(Phrase.of("remark.breakdown", names(report.withoutBreakdown())));
        }
        List<Substance> unknown = report.withoutLimit().stream()
                .filter(substance -> !report.suggestions().containsKey(substance))
                .filter(substance -> !report.withoutBreakdown().contains(substance))
                .toList();
        if (!unknown.isEmpty()) {
            phrases.add(Phrase.of("remark.no-limit", names(unknown)));
        }
        report.suggestions()
                .forEach((substance, names) ->
                        phrases.add(Phrase.of("remark.close-name", substance.toString(), String.join("; ", names))));
        report.casConflicts().forEach(substance -> phrases.add(Phrase.of("remark.cas-conflict", substance.toString())));
        report.closestWords()
                .forEach((word, close) -> phrases.add(
                        close.isEmpty()
                                ? Phrase.of("remark.unknown-word", word)
                                : Phrase.of("remark.unknown-word-close", word, String.join(", ", close))));
        report.unusedPurposes().forEach(name -> phrases.add(Phrase.of("remark.unused-purpose", name)));
        return phrases;
    }

    private static String names(List<Substance> substances) {
        return substances.stream().map(Substance::toString).collect(Collectors.joining("; "));
    }

    private Phrase reading(Substance substance, NameBook.Reading reading) {
        String key = switch (reading.how()) {
            case SPELLING -> "remark.reading.spelling";
            case QUALIFIER -> "remark.reading.qualifier";
            case STRENGTH -> "remark.reading.strength";
            case COMMON_NAME -> "remark.reading.common-name";
            case BRACKET -> "remark.reading.bracket";
            case PLANT_PART -> "remark.reading.plant-part";
            case NANO -> "remark.reading.nano";
            case BLEND -> "remark.reading.blend";
        };
        return Phrase.of(key, substance.toString(), String.join("; ", reading.names()));
    }

    private static Phrase outOfScope(LimitReport.Uncounted finding) {
        String key = finding.otherPurpose()
                ? "remark.other-purpose"
                : finding.mustBeRead() ? "remark.read-entry" : "remark.other-products";
        return Phrase.of(
                key,
                finding.substance().toString(),
                finding.limits().get(0).citation().toString());
    }
}
