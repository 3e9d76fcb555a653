package io.github.formulationmath.limit;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.Substance;
import io.github.formulationmath.working.Phrase;
import io.github.formulationmath.working.Wording;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/**
 * Everything one table says of one formula: a verdict for every limit that counts something in it, the binding one first,
 * and what the table does not say.
 *
 * <p>A substance in {@link #withoutLimit()} has no limit in this table; that does not mean that it is safe or allowed. It
 * may also be the slip of a pen: a formula with {@code Phenoxyethanoll} is not checked for phenoxyethanol, and
 * {@link #suggestions()} tells that PHENOXYETHANOL may be meant.
 *
 * <p>Immutable and thread-safe.
 */
public final class LimitReport {

    private static final Comparator<Verdict> BINDING_FIRST = Comparator.comparing(
                    (Verdict verdict) -> !verdict.limit().kind().restrictsContents())
            .thenComparing(Verdict::conformity, Comparator.reverseOrder())
            .thenComparing(Verdict::applicability)
            .thenComparing(Verdict::used, Comparator.reverseOrder())
            .thenComparing(verdict -> verdict.limit().id())
            .thenComparing(Verdict::counted);

    private static final int MOST_SUGGESTIONS = 3;

    private final LimitChecker checker;
    private final Formula formula;
    private final List<Verdict> verdicts;
    private final Findings findings;

    LimitReport(LimitChecker checker, Formula formula, List<Verdict> verdicts, Findings findings) {
        this.checker = checker;
        this.formula = formula;
        List<Verdict> sorted = new ArrayList<>(verdicts);
        sorted.sort(BINDING_FIRST);
        this.verdicts = List.copyOf(sorted);
        this.findings = findings;
    }

    /**
     * The formula.
     *
     * @return the formula that was checked
     */
    public Formula formula() {
        return formula;
    }

    /**
     * The table.
     *
     * @return the limits that were asked
     */
    public LimitTable table() {
        return checker.table();
    }

    /**
     * All verdicts: highest and lowest shares before declarations and warnings, and of each the worst first; of equal ones
     * the one that uses up most of its limit.
     *
     * @return an unmodifiable list; empty if no limit counts anything in the formula
     */
    public List<Verdict> verdicts() {
        return verdicts;
    }

    /**
     * The verdict of the limit that binds first.
     *
     * @return the first verdict on a highest or lowest share, if there is one
     */
    public Optional<Verdict> binding() {
        return verdicts.stream()
                .filter(verdict -> verdict.limit().kind().restrictsContents())
                .findFirst();
    }

    /**
     * The verdicts that count a substance, the binding one first.
     *
     * @param inciName the name, letter case and spacing forgiven
     * @return an unmodifiable list
     */
    public List<Verdict> verdictsFor(String inciName) {
        String name = LimitNames.normalise(Objects.requireNonNull(inciName, "inciName"));
        return verdicts.stream()
                .filter(verdict -> verdict.substances().stream()
                        .anyMatch(substance ->
                                LimitNames.normalise(substance.name()).equals(name)))
                .toList();
    }

    /**
     * The verdict of a limit.
     *
     * @param limitId the key of the limit
     * @return the verdict, the worst if the limit counts several substances alone; empty if it counts nothing here
     */
    public Optional<Verdict> verdict(String limitId) {
        Objects.requireNonNull(limitId, "limitId");
        return verdicts.stream()
                .filter(verdict -> verdict.limit().id().equals(limitId))
                .findFirst();
    }

    /**
     * The verdicts by which something has to be declared in the ingredient list, or may have to be: the share from which
     * it is due is exceeded, or is not shown to be kept.
     *
     * @return an unmodifiable list
     */
    public List<Verdict> declarations() {
        return due(LimitKind.DECLARE_ABOVE);
    }

    /**
     * The verdicts by which a warning is due, or may be.
     *
     * @return an unmodifiable list
     */
    public List<Verdict> warnings() {
        return due(LimitKind.WARN_ABOVE);
    }

    private List<Verdict> due(LimitKind kind) {
        return verdicts.stream()
                .filter(verdict -> verdict.limit().kind() == kind)
                .filter(verdict -> verdict.conformity() != Conformity.WITHIN)
                .toList();
    }

    /**
     * Whether every highest and lowest share that applies, or may apply, is shown to be kept, and no substance is used
     * outside what its entry allows. It says nothing of substances without a limit in this table, nor of conditions that
     * are not numbers.
     *
     * @return true if nothing stands against the formula in this table
     */
    public boolean allShownWithin() {
        boolean kept = verdicts.stream()
                .filter(verdict -> verdict.limit().kind().restrictsContents())
                .allMatch(verdict -> verdict.conformity() == Conformity.WITHIN);
        return kept && findings.outOfScope().isEmpty();
    }

    /**
     * The substances that have no limit in this table.
     *
     * @return an unmodifiable list in the order of the formula
     */
    public List<Substance> withoutLimit() {
        return findings.distinctWithoutLimit();
    }

    /**
     * The substances without a limit whose names are so close to names of the table that those are probably meant: one
     * letter is wrong, or at most one in six. Nothing was counted under them. Correct the name and check again, or leave
     * it if the substance is another: sodium chloride is close to sodium chlorate.
     *
     * @return an unmodifiable map in the order of the formula, from the substance to at most three names as the table
     *     writes them, the closest first; substances that no name is close to are not in it
     */
    public Map<Substance, List<String>> suggestions() {
        Map<Substance, List<String>> close = new LinkedHashMap<>();
        for (Substance substance : withoutLimit()) {
            List<String> names = table().index().names().slips(substance.name(), MOST_SUGGESTIONS);
            if (!names.isEmpty()) {
                close.put(substance, names);
            }
        }
        return Collections.unmodifiableMap(close);
    }

    /**
     * The substances whose entries cover other products only.
     *
     * @return an unmodifiable list
     */
    public List<OutOfScope> outOfScope() {
        return findings.outOfScope();
    }

    /**
     * The substances whose CAS number is not one that the table has for their name; they were taken by name.
     *
     * @return an unmodifiable list
     */
    public List<Substance> casConflicts() {
        return findings.conflicts();
    }

    /**
     * Words by which the product was described and that no limit of the table knows: perhaps slips of the pen, perhaps
     * only of no interest to the table.
     *
     * @return the words in alphabetical order
     */
    public Set<String> unknownWords() {
        Set<String> known = table().limits().stream()
                .flatMap(limit -> limit.scope().words())
                .collect(Collectors.toSet());
        return checker.product()
                .words()
                .filter(word -> !known.contains(word))
                .collect(Collectors.toCollection(TreeSet::new));
    }

    /**
     * The report in words, cautions included.
     *
     * @param wording the words
     * @return the lines
     */
    public List<String> describe(Wording wording) {
        Objects.requireNonNull(wording, "wording");
        List<String> lines = new ArrayList<>();
        verdicts.forEach(verdict -> lines.addAll(verdict.describe(wording)));
        withoutLimit()
                .forEach(substance -> lines.add(wording.text(Phrase.of("remark.no-limit", substance.toString()))));
        suggestions()
                .forEach((substance, names) -> lines.add(
                        wording.text(Phrase.of("remark.close-name", substance.toString(), String.join("; ", names)))));
        outOfScope()
                .forEach(finding -> lines.add(wording.text(Phrase.of(
                        finding.isNotAllowed() ? "remark.not-allowed" : "remark.read-entry",
                        finding.substance().toString(),
                        finding.limits().get(0).citation().toString()))));
        casConflicts()
                .forEach(substance -> lines.add(wording.text(Phrase.of("remark.cas-conflict", substance.toString()))));
        unknownWords().forEach(word -> lines.add(wording.text(Phrase.of("remark.unknown-word", word))));
        lines.add(wording.text(Phrase.of("caution.limit")));
        lines.add(wording.text(table().caution()));
        return List.copyOf(lines);
    }

    @Override
    public String toString() {
        StringBuilder text = new StringBuilder(formula.name())
                .append(": ")
                .append(verdicts)
                .append(", no limit in this table: ")
                .append(withoutLimit());
        suggestions()
                .forEach((substance, names) -> text.append(", ")
                        .append(substance)
                        .append(" is close to ")
                        .append(String.join(" or ", names)));
        Set<String> words = unknownWords();
        if (!words.isEmpty()) {
            text.append(", words unknown to this table: ").append(words);
        }
        return text.toString();
    }
}
