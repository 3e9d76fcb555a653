package io.github.formulationmath.limit;

import io.github.formulationmath.amendment.AsOf;
import io.github.formulationmath.amendment.LegalChange;
import io.github.formulationmath.document.Document;
import io.github.formulationmath.formula.NameBook;
import io.github.formulationmath.formula.Substance;
import io.github.formulationmath.reckoning.Phrase;
import io.github.formulationmath.reckoning.Wording;
import java.time.LocalDate;
import java.time.Period;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
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
        lines.addAll(later());
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
        lines.addAll(later());
        lines.addAll(texts(findings()));
        return lines;
    }

    /** What acts later than the table say. */
    private List<String> later() {
        List<String> lines = new ArrayList<>(texts(amendments()));
        report.laterVerdicts().forEach(verdict -> lines.add(wording.say("limit.later", VerdictText.brief(verdict))));
        return lines;
    }

    private List<String> head() {
        List<String> lines = new ArrayList<>();
        age().map(wording::text).ifPresent(lines::add);
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

    /** How old the table is, and how many acts are known to be later: first, and once. */
    private Optional<Phrase> age() {
        List<String> acts = report.table().amendments().laterActs();
        LocalDate made = report.table().snapshot().orElse(null);
        if (acts.isEmpty() || made == null) {
            return Optional.empty();
        }
        AsOf asOf = report.asOf().orElse(null);
        if (asOf == null) {
            return Optional.of(Phrase.of(
                    "limit.age-no-date", made.toString(), String.valueOf(acts.size()), String.join(", ", acts)));
        }
        Period age = Period.between(made, asOf.day());
        return Optional.of(Phrase.of(
                "limit.age",
                age.isNegative() ? "0" : String.valueOf(age.getYears()),
                age.isNegative() ? "0" : String.valueOf(age.getMonths()),
                asOf.toString(),
                String.valueOf(acts.size()),
                String.valueOf(report.table().amendments().laterActs(asOf).size()),
                String.valueOf(
                        report.table().amendments().endedTransitions(made, asOf).size()),
                made.toString()));
    }

    private List<Phrase> amendments() {
        List<Phrase> phrases = new ArrayList<>();
        report.amended()
                .forEach((substance, changes) -> changes.forEach(change -> phrases.add(Phrase.of(
                        key(report.asOf(), change),
                        substance.toString(),
                        change.toString(),
                        change.placedUntil().toString(),
                        change.availableUntil().toString(),
                        report.asOf().map(AsOf::toString).orElse("")))));
        return phrases;
    }

    private static String key(Optional<AsOf> asOf, LegalChange change) {
        return asOf.map(day -> day.isBoundBy(change) ? "remark.amended-binds" : "remark.amended-not-yet")
                .orElse("remark.amended");
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

    private static String mentioned(LimitReport.Uncounted finding) {
        return finding.why() == LimitReport.Uncounted.Why.MAY_BE_MEANT ? "remark.may-be-meant" : "remark.mentioned";
    }

    private List<Phrase> findings() {
        List<Phrase> phrases = new ArrayList<>();
        report.mayBeProhibited().forEach(finding -> phrases.add(AnnexText.prohibited(finding)));
        report.colorants().forEach(finding -> phrases.add(AnnexText.colorant(finding)));
        for (LimitReport.Uncounted finding : report.notTranscribed()) {
            finding.entries().forEach(entry -> phrases.add(notTranscribed(finding, entry)));
        }
        for (LimitReport.Uncounted finding : report.mentioned()) {
            finding.limits().stream()
                    .map(limit -> limit.citation().toString())
                    .distinct()
                    .forEach(citation -> phrases.add(
                            Phrase.of(mentioned(finding), finding.substance().toString(), citation)));
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

    private static Phrase notTranscribed(LimitReport.Uncounted finding, OmittedEntry entry) {
        String key = entry.said().isEmpty() ? "remark.not-transcribed" : "remark.not-transcribed-text";
        return Phrase.of(key, finding.substance().toString(), entry.toString(), entry.reason(), entry.said());
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

    /** Everything in one line, for a log or a shell; not translated. */
    static String inOneLine(LimitReport report) {
        StringBuilder text = new StringBuilder(report.formula().name()).append(": ");
        if (!report.table().notHeld().isEmpty()) {
            text.append("not checked ")
                    .append(String.join(", ", report.table().notHeld()))
                    .append("; ");
        }
        text.append(report.outcome()).append(' ').append(report.verdicts());
        append(text, "may be prohibited, to read", substances(report.mayBeProhibited()));
        append(text, "colorants to read", substances(toRead(report.colorants())));
        append(text, "to read", substances(toRead(report.outOfScope())));
        append(text, "not transcribed", substances(report.notTranscribed()));
        append(text, "to read, named there", substances(report.mentioned()));
        report.readings()
                .forEach((substance, reading) -> text.append(", ")
                        .append(substance)
                        .append(" taken for ")
                        .append(String.join(" and ", reading.names())));
        append(text, "breakdown to be asked for", report.withoutBreakdown());
        append(text, "changed since the table", List.copyOf(report.amended().keySet()));
        append(text, "no limit in this table", report.withoutLimit());
        report.suggestions()
                .forEach((substance, names) -> text.append(", ")
                        .append(substance)
                        .append(" is close to ")
                        .append(String.join(" or ", names)));
        append(
                text,
                "words unknown to this table",
                List.copyOf(report.closestWords().keySet()));
        append(text, "purposes stated and not used", List.copyOf(report.unusedPurposes()));
        return text.toString();
    }

    private static List<LimitReport.Uncounted> toRead(List<LimitReport.Uncounted> findings) {
        return findings.stream().filter(LimitReport.Uncounted::mustBeRead).toList();
    }

    private static List<Substance> substances(List<LimitReport.Uncounted> findings) {
        return findings.stream().map(LimitReport.Uncounted::substance).toList();
    }

    private static void append(StringBuilder text, String what, List<?> found) {
        if (!found.isEmpty()) {
            text.append(", ").append(what).append(": ").append(found);
        }
    }
}
