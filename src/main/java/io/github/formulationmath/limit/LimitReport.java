package io.github.formulationmath.limit;

import io.github.formulationmath.amendment.AsOf;
import io.github.formulationmath.amendment.LegalChange;
import io.github.formulationmath.document.Document;
import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.NameBook;
import io.github.formulationmath.formula.Substance;
import io.github.formulationmath.formula.SubstanceName;
import io.github.formulationmath.reckoning.Wording;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Everything one table says of one formula: a verdict for every limit that counts something in it, the binding one first,
 * and what the table does not say. {@link #outcome()} is the worst of it.
 *
 * <p>Every substance of the formula stands in at least one of {@link #verdicts()}, {@link #outOfScope()}, {@link
 * #notTranscribed()}, {@link #amended()} and {@link #withoutLimit()}.
 *
 * <p>A substance in {@link #withoutLimit()} has no limit in this table; that does not mean that it is safe or allowed. It
 * may also be the slip of a pen: a formula with {@code Phenoxyethanoll} is not checked for phenoxyethanol, and
 * {@link #suggestions()} tells that PHENOXYETHANOL may be meant.
 *
 * <p>Immutable and thread-safe.
 */
public final class LimitReport {

    private static final int MOST_SUGGESTIONS = 3;

    private final LimitChecker checker;
    private final Formula formula;
    private final LimitCheck.Found found;
    /** Looked for when first asked for. */
    private volatile @Nullable Map<Substance, List<String>> suggestions;

    LimitReport(LimitChecker checker, Formula formula, LimitCheck.Found found) {
        this.checker = checker;
        this.formula = formula;
        this.found = found;
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
     * All verdicts: what is prohibited first; highest and lowest shares before declarations and warnings, and of each the worst first; of equal ones
     * the one that uses up most of its limit.
     *
     * @return an unmodifiable list; empty if no limit counts anything in the formula
     */
    public List<Verdict> verdicts() {
        return found.verdicts();
    }

    /**
     * The verdict that stands most against the formula, or of the limit that binds first.
     *
     * @return the first verdict on a highest or lowest share, if there is one; one that is prohibited before all others
     */
    public Optional<Verdict> binding() {
        return verdicts().stream()
                .filter(verdict -> verdict.limit().kind().restrictsContents())
                .findFirst();
    }

    /**
     * The verdicts that count a substance, the binding one first.
     *
     * @param inciName the name, or a synonym or CAS number that the formula has for it, in any spelling
     * @return an unmodifiable list
     * @throws IllegalArgumentException if the name is blank
     */
    public List<Verdict> verdictsFor(String inciName) {
        Substance asked = Substance.of(inciName);
        Substance named = formula.composition()
                .shareOf(asked)
                .map(one -> one.as(one.substance()))
                .orElse(asked);
        return verdicts().stream()
                .filter(verdict -> verdict.substances().stream()
                        .anyMatch(substance -> named.keys().contains(SubstanceName.normalise(substance.name()))))
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
        return verdicts().stream()
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
        return verdicts().stream()
                .filter(verdict -> verdict.limit().kind() == kind)
                .filter(verdict -> verdict.conformity() != Conformity.WITHIN)
                .toList();
    }

    /**
     * The substances that acts later than the table name, or whose entries they touch, each with those acts: its figures
     * here may be out of date, and there may be figures where the table has none.
     *
     * @return an unmodifiable map in the order of the formula
     */
    public Map<Substance, Set<LegalChange>> amended() {
        return found.amended();
    }

    /**
     * The verdicts by figures of later acts that are only told: no day was given, or the act does not bind on it. Those
     * that bind are among {@link #verdicts()}.
     *
     * @return an unmodifiable list, the worst first
     */
    public List<Verdict> laterVerdicts() {
        return found.later();
    }

    /**
     * The day as of which was checked.
     *
     * @return the day and the question, if they were given
     */
    public Optional<AsOf> asOf() {
        return checker.asOf();
    }

    /**
     * What all of it comes to: the worst that was found.
     *
     * @return the outcome
     */
    public LimitOutcome outcome() {
        return LimitOutcome.of(this);
    }

    /** All of what a table speaks without counting it. */
    List<Uncounted> uncounted() {
        return found.uncounted();
    }

    /**
     * The substances that this table does not speak of.
     *
     * @return an unmodifiable list in the order of the formula
     */
    public List<Substance> withoutLimit() {
        return found.withoutLimit();
    }

    /**
     * The substances without a limit whose names are so close to names of the table, or of Annex II if it is asked, that
     * those are probably meant: one letter is wrong, or at most one in six, or two neighbours changed places. Nothing was counted under them. Correct the name and check again, or leave
     * it if the substance is another.
     *
     * @return an unmodifiable map in the order of the formula, from the substance to at most three names as the table
     *     writes them, the closest first, or, where it has none, names of Annex II that are one letter away; substances that no name is close to are not in it
     */
    public Map<Substance, List<String>> suggestions() {
        Map<Substance, List<String>> known = suggestions;
        if (known == null) {
            known = closestNames();
            suggestions = known;
        }
        return known;
    }

    private Map<Substance, List<String>> closestNames() {
        Map<Substance, List<String>> close = new LinkedHashMap<>();
        for (Substance substance : withoutLimit()) {
            List<String> names = table().index().suggest(substance.name(), MOST_SUGGESTIONS, table().asksEuAnnexes());
            if (!names.isEmpty()) {
                close.put(substance, names);
            }
        }
        return Collections.unmodifiableMap(close);
    }

    /**
     * The names that are not names of the table and were taken for some of it, each with how: a common name in brackets left
     * out, a part of the plant, sulphide for sulfide. Everything was counted under what they were taken for; where that is not
     * meant, write the name that is. A blend written as one name was taken apart, and of each part it is not known how much
     * there is: enter the material as {@link io.github.formulationmath.formula.Ingredient#blend}.
     *
     * @return an unmodifiable map in the order of the formula
     */
    public Map<Substance, NameBook.Reading> readings() {
        return found.readings();
    }

    /**
     * Perfumes, volatile oils and other aromatic materials that are entered as one substance, so that nothing is known of the
     * constituents that are to be declared or limited. Take the breakdown from the supplier's documents and enter them as
     * {@link io.github.formulationmath.formula.Ingredient#blend}.
     *
     * @return an unmodifiable list, each once; empty if the table has nothing to be declared
     */
    public List<Substance> withoutBreakdown() {
        return found.toBreakDown();
    }

    /**
     * The substances whose entries cover other products or purposes only, and do not forbid the rest.
     *
     * @return an unmodifiable list
     */
    public List<Uncounted> outOfScope() {
        return because(Uncounted.Why.OTHER_PRODUCTS, Uncounted.Why.OTHER_PURPOSE);
    }

    /**
     * The substances, and materials under their own name, of which entries speak that the table does not transcribe.
     *
     * @return an unmodifiable list in the order of the formula
     */
    public List<Uncounted> notTranscribed() {
        return because(Uncounted.Why.NOT_TRANSCRIBED);
    }

    /**
     * The substances that entries of the table name without counting them, for example to say that they are not allowed, and
     * salts that an entry on "X and its salts" does not name and may mean.
     * Those entries have to be read.
     *
     * @return an unmodifiable list
     */
    public List<Uncounted> mentioned() {
        return because(Uncounted.Why.MENTIONED, Uncounted.Why.MAY_BE_MEANT);
    }

    /**
     * The substances that may be prohibited: Annex II names a group that they may belong to, or names them with words that
     * let something through. Those entries have to be read. What it names outright is a verdict, {@link
     * Conformity#PROHIBITED}.
     *
     * @return an unmodifiable list in the order of the formula
     */
    public List<Uncounted> mayBeProhibited() {
        return because(Uncounted.Why.MAY_BE_PROHIBITED, Uncounted.Why.PROHIBITED_UNLESS);
    }

    /**
     * The colorants that Annex IV lists and allows in such a product, and the colour index numbers that it does not list. A
     * colorant that it lists for other products only is a verdict, {@link Conformity#PROHIBITED}.
     *
     * @return an unmodifiable list in the order of the formula
     */
    public List<Uncounted> colorants() {
        return because(Uncounted.Why.COLORANT, Uncounted.Why.COLORANT_CONDITIONS, Uncounted.Why.COLORANT_UNLISTED);
    }

    private List<Uncounted> because(Uncounted.Why... reasons) {
        List<Uncounted.Why> wanted = List.of(reasons);
        return found.uncounted().stream()
                .filter(finding -> wanted.contains(finding.why()))
                .toList();
    }

    /**
     * The names for which the product states a purpose that was used for nothing: the formula has no such substance, or
     * different purposes are stated under two names of one. Every limit counts what they were meant for, which is the
     * stricter reading.
     *
     * @return an unmodifiable set of names in capital letters
     */
    public Set<String> unusedPurposes() {
        return found.unusedPurposes();
    }

    /**
     * The substances whose CAS number is not one that the table has for their name; they were taken by name.
     *
     * @return an unmodifiable list
     */
    public List<Substance> casConflicts() {
        return found.conflicts();
    }

    /**
     * Words by which the product was described and that no limit of the table knows, each with the words of the table that
     * may be meant: perhaps slips of the pen, perhaps only of no interest to the table. Where no limit asks at all, be it
     * for an area, a kind or a form, no word is unknown.
     *
     * @return an unmodifiable map in alphabetical order; a word that none is close to has an empty list
     */
    public Map<String, List<String>> closestWords() {
        return Collections.unmodifiableMap(checker.product().unknownWords(table().words()));
    }

    /**
     * The report in words, short: what the table does not hold, the outcome; one line to each verdict on a highest or lowest
     * share, with the room that is left and the conditions it depends on, what is prohibited first; all declarations that are
     * due in one line; the other findings; and at the end, once, the cautions. {@link #describeInFull} has everything.
     *
     * @param wording the words
     * @return the lines
     */
    public List<String> describe(Wording wording) {
        return new ReportText(this, Objects.requireNonNull(wording, "wording")).shortLines();
    }

    /**
     * The same with all that the entries say: several lines to a verdict, with its basis, the products it is for, the wording
     * that is required, and remarks.
     *
     * @param wording the words
     * @return the lines
     */
    public List<String> describeInFull(Wording wording) {
        return new ReportText(this, Objects.requireNonNull(wording, "wording")).lines();
    }

    /**
     * The report as a document: the words of {@link #describeInFull} in paragraphs, the cautions last.
     *
     * @param wording the words
     * @return the document, to be printed in any format
     */
    public Document document(Wording wording) {
        return new ReportText(this, Objects.requireNonNull(wording, "wording")).document();
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof LimitReport that
                && checker.equals(that.checker)
                && formula.equals(that.formula)
                && found.equals(that.found);
    }

    @Override
    public int hashCode() {
        return Objects.hash(formula, verdicts());
    }

    @Override
    public String toString() {
        return ReportText.inOneLine(this);
    }

    /**
     * A substance of which a table speaks without counting it. If an entry allows a substance in other products only, that is
     * no finding like this one but a verdict, {@link Conformity#PROHIBITED}.
     *
     * @param substance the substance, or the material under its own name
     * @param why why it is not counted
     * @param limits the limits, for something else or of entries that only mention it; empty if the entries are not transcribed
     * @param entries the entries that are not transcribed, or of Annexes II and IV; empty if there are limits
     */
    public record Uncounted(Substance substance, Why why, List<UsageLimit> limits, List<OmittedEntry> entries) {

        /** Why a substance of which a table speaks is not counted. */
        public enum Why {
            /** The table does not transcribe the entries that speak of it. */
            NOT_TRANSCRIBED,
            /** Entries name it without counting it, for example to say that it is not meant, or not allowed. */
            MENTIONED,
            /** Entries on somebody's salts or sulphites do not name it, but its name reads like one of them. */
            MAY_BE_MEANT,
            /** Annex II names a group that it may belong to. */
            MAY_BE_PROHIBITED,
            /** Annex II names it with words that let something through. */
            PROHIBITED_UNLESS,
            /** Annex IV allows the colorant in such a product. */
            COLORANT,
            /** Annex IV allows the colorant, on conditions, or in products of which this may be one. */
            COLORANT_CONDITIONS,
            /** Its name has a colour index number that Annex IV does not list. */
            COLORANT_UNLISTED,
            /** No limit of its entry covers the product. */
            OTHER_PRODUCTS,
            /** No limit of its entry covers the purpose that was stated for it. */
            OTHER_PURPOSE
        }

        /**
         * Copies.
         *
         * @param substance the substance
         * @param why why it is not counted
         * @param limits the limits
         * @param entries the entries
         */
        public Uncounted {
            Objects.requireNonNull(substance, "substance");
            Objects.requireNonNull(why, "why");
            limits = List.copyOf(Objects.requireNonNull(limits, "limits"));
            entries = List.copyOf(Objects.requireNonNull(entries, "entries"));
        }

        /** Cheap, and telling enough. */
        @Override
        public int hashCode() {
            return substance.hashCode() * 31 + why.name().hashCode();
        }

        /**
         * Whether the limits were left out because of the purpose that was stated.
         *
         * @return false if it was for anything else
         */
        public boolean otherPurpose() {
            return why == Why.OTHER_PURPOSE;
        }

        /**
         * Whether the printed entry has to be read.
         *
         * @return false if it is for other products and has nothing to say of such a product
         */
        public boolean mustBeRead() {
            return why != Why.COLORANT
                    && (why != Why.OTHER_PRODUCTS
                            || limits.stream().anyMatch(limit -> limit.outside() != OutsideScope.NONE));
        }
    }
}
