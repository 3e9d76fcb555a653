package io.github.formulationmath.limit;

import io.github.formulationmath.amendment.LegalChange;
import io.github.formulationmath.number.NumberText;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.reckoning.Phrase;
import io.github.formulationmath.reckoning.Wording;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/** A verdict in words. */
record VerdictText(Verdict verdict, Wording wording) {

    List<String> lines() {
        List<Phrase> phrases = new ArrayList<>();
        phrases.add(head());
        phrases.add(Phrase.of(
                "limit.basis",
                wording.text(verdict.limit().basis().phrase()),
                verdict.limit().isOfProduct()
                        ? wording.say("limit.whole.product")
                        : verdict.limit().whole(),
                verdict.limit().citation().toString()));
        interval().ifPresent(phrases::add);
        phrases.addAll(entryTexts(verdict.limit().text()));
        phrases.addAll(verdict.remarks());
        return phrases.stream().map(wording::text).toList();
    }

    /** Verdict, room, conditions and remarks beside each other, so that none is read without the others. */
    String inOneLine() {
        List<Phrase> phrases = new ArrayList<>();
        String source = verdict.limit().citation().text();
        int annex = source.indexOf("Annex ");
        phrases.add(Phrase.of(
                "limit.line",
                wording.text(head()),
                room().map(wording::text).orElse(""),
                annex < 0 ? source : source.substring(annex)));
        if (verdict.isMade()) {
            interval().ifPresent(phrases::add);
        }
        add(phrases, "limit.conditions", verdict.limit().text().conditions());
        if (!verdict.limit().text().warnings().isEmpty()) {
            phrases.add(Phrase.of("limit.warnings-there"));
        }
        verdict.remarks().stream()
                .filter(remark -> !remark.key().equals(Conversion.Unstated.PROBLEM))
                .forEach(phrases::add);
        return phrases.stream().map(wording::text).map(VerdictText::sentence).collect(Collectors.joining(" "));
    }

    /** Some texts of the source end without a full stop. */
    private static String sentence(String text) {
        String end = text.stripTrailing();
        return end.endsWith(".") || end.endsWith(":") || end.endsWith(";") ? end : end + ".";
    }

    /** What is left of a highest share that is kept, in percentage points, never more than there is, and, of what is weighed, as a mass. */
    private Optional<Phrase> room() {
        if (verdict.conformity() != Conformity.WITHIN
                || verdict.limit().kind() != LimitKind.MAXIMUM
                || verdict.applicability() == Applicability.OUT_OF_SCOPE) {
            return Optional.empty();
        }
        Ratio room = verdict.headroom().canonical().times(100);
        String left = NumberText.greatest(room, "", shown -> shown.compareTo(room) <= 0);
        LimitBasis basis = verdict.limit().basis();
        String grams = verdict.headroomMass().map(Object::toString).orElse("");
        if (basis.isReference()) {
            return Optional.of(
                    grams.isEmpty()
                            ? Phrase.of("limit.room-as", left, basis.referenceName())
                            : Phrase.of("limit.room-as-in-grams", left, basis.referenceName(), grams));
        }
        return Optional.of(
                grams.isEmpty() ? Phrase.of("limit.room", left) : Phrase.of("limit.room-in-grams", left, grams));
    }

    /** What is declared or warned of, with its share. */
    String named() {
        return wording.say("limit.due-one", verdict.shortName(), share());
    }

    /** The answer to whether it is due. */
    String answer() {
        String answer = wording.say(
                verdict.conformity().key() + "." + verdict.limit().kind().code().replace('_', '-'));
        return Character.toTitleCase(answer.charAt(0)) + answer.substring(1);
    }

    /** What is counted, its share, the limit, and the verdict. */
    static String brief(Verdict verdict) {
        UsageLimit limit = verdict.limit();
        String share =
                verdict.shortName() + " " + NumberText.percent(verdict.share().canonical(), verdict.bounds());
        if (AnnexFindings.isOfNamed(limit)) {
            return share + " (" + limit.id() + "): " + verdict.conformity();
        }
        if (verdict.applicability() == Applicability.OUT_OF_SCOPE) {
            return share + " (not allowed in such a product, " + limit.id() + "): " + verdict.conformity();
        }
        boolean due = !limit.kind().restrictsContents() && verdict.conformity() == Conformity.EXCEEDS;
        return share + " (" + limit.kind().code() + " "
                + NumberText.percent(limit.share().fraction()) + ", " + limit.id() + "): "
                + (due ? "DUE" : verdict.conformity()) + (verdict.isTie() ? ", a tie" : "");
    }

    private Phrase head() {
        if (AnnexFindings.isOfNamed(verdict.limit())) {
            return AnnexText.head(verdict, wording);
        }
        if (verdict.applicability() == Applicability.OUT_OF_SCOPE) {
            return Phrase.of(
                    "limit.head.prohibited",
                    verdict.shortName(),
                    share(),
                    wording.say(verdict.conformity().key()));
        }
        String kind = verdict.limit().kind().code().replace('_', '-');
        String words = verdict.conformity().key();
        if (!verdict.limit().kind().restrictsContents()) {
            words += "." + kind;
        }
        return Phrase.of(
                "limit.head." + kind,
                verdict.shortName(),
                share(),
                NumberText.percent(verdict.limit().share().fraction()),
                wording.say(words));
    }

    /** The share; where contents are unknown, all that it may be. */
    private String share() {
        if (verdict.tally().isAssessable()) {
            return NumberText.percentBeside(
                    verdict.share().canonical(), verdict.limit().share().fraction());
        }
        return verdict.bounds()
                .upper()
                .map(most -> wording.say(
                        "limit.between",
                        outwards(verdict.bounds().lower().orElse(Ratio.ZERO), false),
                        outwards(most, true)))
                .orElseGet(() -> NumberText.percent(verdict.share().canonical(), verdict.bounds()));
    }

    private Optional<Phrase> interval() {
        Ratio lower = verdict.bounds().lower().orElseThrow();
        Optional<Ratio> upper = verdict.bounds().upper();
        if (upper.isEmpty() || !verdict.isMade() && upper.get().equals(lower)) {
            return Optional.empty();
        }
        return Optional.of(Phrase.of(
                "limit.interval",
                outwards(lower, false),
                outwards(upper.get(), true),
                wording.text(verdict.rule().phrase())));
    }

    /** An end of what the share surely lies between, rounded outwards, on the side of the limit where it truly lies. */
    private String outwards(Ratio end, boolean up) {
        Ratio limit = verdict.limit().share().fraction();
        int side = end.compareTo(limit);
        Predicate<Ratio> passes = shown -> shown.compareTo(limit) == side;
        return up ? NumberText.leastPercent(end, passes) : NumberText.greatestPercent(end, passes);
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

    static List<Phrase> remarks(Verdict verdict) {
        List<Phrase> remarks = new ArrayList<>();
        Tally tally = verdict.tally();
        UsageLimit limit = tally.limit();
        if (tally.applicability() == Applicability.MAY_APPLY) {
            remarks.add(Phrase.of("remark.may-apply", limit.scope().toString()));
            if (limit.outside() == OutsideScope.NOT_ALLOWED) {
                remarks.add(Phrase.of("remark.allowed-only-there", verdict.shortName()));
            }
        }
        for (LegalChange change : verdict.amendments()) {
            remarks.add(Phrase.of(
                    change.later() ? "remark.entry-amended" : "remark.entry-transition",
                    change.toString(),
                    change.placedUntil().toString(),
                    change.availableUntil().toString()));
        }
        if (verdict.isTie()) {
            remarks.add(Phrase.of(
                    "remark.tie",
                    verdict.shortName(),
                    limit.basis().referenceName(),
                    NumberText.percent(limit.share().fraction())));
        }
        if (limit.sumRule() == SumRule.PERHAPS_SUM) {
            remarks.add(Phrase.of("remark.perhaps-sum", limit.group().name()));
        }
        remarks.addAll(purposeRemarks(verdict));
        tally.problem()
                .ifPresent(key -> remarks.add(Phrase.of(
                        key,
                        tally.withoutConversion()
                                .map(contribution -> contribution.substance().name())
                                .orElse(limit.whole()),
                        limit.basis().toString())));
        tally.outsideWhole()
                .forEach(line -> remarks.add(Phrase.of("remark.outside-phase", line.name(), limit.whole())));
        tally.contributions().stream()
                .filter(contribution -> contribution.counting().formGuessed())
                .map(contribution -> Phrase.of(
                        "remark.form-guessed",
                        contribution.substance().name(),
                        contribution.counting().member().form()))
                .distinct()
                .forEach(remarks::add);
        return List.copyOf(remarks);
    }

    /** Whether a purpose, had one been stated, would lift what stands against the formula. */
    private static List<Phrase> purposeRemarks(Verdict verdict) {
        UsageLimit limit = verdict.limit();
        if (verdict.conformity() == Conformity.WITHIN
                || !limit.kind().restrictsContents()
                || limit.scope().purpose().equals(Scope.ANY)) {
            return List.of();
        }
        return verdict.substances().stream()
                .filter(substance -> verdict.checker()
                        .product()
                        .purposeOf(verdict.checker()
                                .table()
                                .index()
                                .known(verdict.tally()
                                        .formula()
                                        .composition()
                                        .shareOf(substance)
                                        .map(one -> one.as(substance))
                                        .orElse(substance)))
                        .isEmpty())
                .map(substance -> Phrase.of(
                        "remark.purpose-not-stated",
                        substance.name(),
                        limit.scope().purpose(),
                        limit.scope().otherPurpose()))
                .toList();
    }
}
