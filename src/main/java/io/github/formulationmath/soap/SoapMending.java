package io.github.formulationmath.soap;

import io.github.formulationmath.document.Document;
import io.github.formulationmath.document.Document.Column;
import io.github.formulationmath.mend.Correction;
import io.github.formulationmath.mend.CorrectionRules;
import io.github.formulationmath.mend.DisplayedAdditions;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.plan.BalanceUnit;
import io.github.formulationmath.pot.LineAddition;
import io.github.formulationmath.pot.MadeBatch;
import io.github.formulationmath.pot.MadeLine;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.reckoning.Wording;
import io.github.formulationmath.simulation.CoverageFactor;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import javax.measure.quantity.Mass;

/**
 * A pot of soap after a wrong pour of alkali or of fat: what to add so that a wanted shortfall is left for every lot, whatever the
 * balances did and will do.
 *
 * <p>The condition {@code Σ (1 − d)·S·m + acids − Σ w·A ≥ b} goes to the smallest additions, with b what the weighings may hide. That
 * depends on what is weighed in addition, so that it is worked out again for the pot that comes of it, until the pot keeps it; then the
 * pot as the display will show it is judged, and {@link #isSure()} is that judgement. Without errors of a balance b is 0 and the
 * additions are the smallest there are; with them they are the smallest for that b.
 *
 * <p>Fat that is added late is judged twice: it stays unsaponified only if the cook alone keeps the condition, so that both are asked
 * for.
 *
 * <p>Numbers are not a test of the soap: it is mixed well, given its time, and titrated. Adding alkali to a pot that is being made is
 * for somebody with gloves and goggles, dissolved and never dry.
 *
 * <p>Immutable and thread-safe.
 */
public final class SoapMending {

    /** More weighings hide more, and there are no more than lines; this is far beyond. */
    private static final int MOST_ROUNDS = 30;

    private final Soap soap;
    private final MadeBatch before;
    private final Optional<CoverageFactor> coverage;
    private final Unsaponified atLeast;
    private final Correction correction;
    private final DisplayedAdditions displayed;
    private final boolean sure;

    private SoapMending(
            Soap soap,
            MadeBatch before,
            CorrectionRules rules,
            Unsaponified atLeast,
            Optional<CoverageFactor> coverage) {
        this.soap = soap;
        this.before = before;
        this.coverage = coverage;
        this.atLeast = atLeast;
        Ratio kept = Ratio.ONE.minus(atLeast.shortfall().fraction());
        List<Ratio> hidden = hidden(before, kept);
        for (int round = 0; ; round++) {
            Correction found = Correction.smallest(before, withConditions(rules, hidden));
            DisplayedAdditions shown = found.onDisplay();
            boolean isSure = judgements(shown.after()).stream().allMatch(judged -> judged.leavesNone(kept));
            List<Ratio> now = hidden(shown.after(), kept);
            if (isSure || round == MOST_ROUNDS || !isMore(now, hidden)) {
                this.correction = found;
                this.displayed = shown;
                this.sure = isSure;
                return;
            }
            hidden = now;
        }
    }

    /**
     * What to add to a pot.
     *
     * @param soap the formula with its lines declared, all of them
     * @param made what is in the pot
     * @param rules the tolerances, caps, stocks and the room; a soap far off needs wide tolerances
     * @param atLeast the shortfall to be left; 0 % for no hydroxide left
     * @return the additions
     * @throws IllegalArgumentException if a line is undeclared, if the rules do not fit the formula, and as {@link AlkaliBalance#of(Soap,
     *     io.github.formulationmath.weighing.Weighed)}
     */
    public static SoapMending of(Soap soap, MadeBatch made, CorrectionRules rules, Unsaponified atLeast) {
        return of(soap, made, rules, atLeast, Optional.empty());
    }

    /**
     * As {@link #of(Soap, MadeBatch, CorrectionRules, Unsaponified)}, with k times the errors without a bound taken in; it then holds
     * within that coverage and not for certain.
     *
     * @param soap the formula with its lines declared, all of them
     * @param made what is in the pot
     * @param rules the tolerances, caps, stocks and the room
     * @param atLeast the shortfall to be left; 0 % for no hydroxide left
     * @param factor the coverage factor k
     * @return the additions
     * @throws IllegalArgumentException if a line is undeclared, or the rules do not fit the formula
     */
    public static SoapMending of(
            Soap soap, MadeBatch made, CorrectionRules rules, Unsaponified atLeast, CoverageFactor factor) {
        return of(soap, made, rules, atLeast, Optional.of(Objects.requireNonNull(factor, "factor")));
    }

    private static SoapMending of(
            Soap soap, MadeBatch made, CorrectionRules rules, Unsaponified atLeast, Optional<CoverageFactor> coverage) {
        Objects.requireNonNull(soap, "soap");
        Objects.requireNonNull(made, "made");
        Objects.requireNonNull(rules, "rules");
        return new SoapMending(soap, made, rules, Objects.requireNonNull(atLeast, "atLeast"), coverage);
    }

    private AlkaliBalance judged(MadeBatch pot) {
        return coverage.map(factor -> AlkaliBalance.of(soap, pot, factor)).orElseGet(() -> AlkaliBalance.of(soap, pot));
    }

    /** The pot, and the cook alone if some fat is late. */
    private List<AlkaliBalance> judgements(MadeBatch pot) {
        AlkaliBalance all = judged(pot);
        return all.cookAlone().map(cook -> List.of(all, cook)).orElseGet(() -> List.of(all));
    }

    private List<Ratio> hidden(MadeBatch pot, Ratio kept) {
        List<Ratio> shown =
                pot.lines().stream().map(line -> line.mass().canonical()).toList();
        return judgements(pot).stream()
                .map(judged -> judged.hidden(kept, shown))
                .toList();
    }

    private static boolean isMore(List<Ratio> now, List<Ratio> before) {
        for (int i = 0; i < now.size(); i++) {
            if (now.get(i).compareTo(before.get(i)) > 0) {
                return true;
            }
        }
        return false;
    }

    private CorrectionRules withConditions(CorrectionRules rules, List<Ratio> hidden) {
        CorrectionRules all = rules;
        for (int i = 0; i < hidden.size(); i++) {
            all = all.keeping(new ShortfallEnd(soap, atLeast.shortfall(), true, i == 0, hidden.get(i)));
        }
        return all;
    }

    /**
     * The exact additions, with their proof.
     *
     * @return the correction, its conditions among the rules
     */
    public Correction correction() {
        return correction;
    }

    /**
     * The additions as the display has to read them.
     *
     * @return whole steps of the display
     */
    public DisplayedAdditions additions() {
        return displayed;
    }

    /**
     * Whether the pot with those additions leaves the wanted shortfall whatever lots and balances do, the cook alone too if fat is
     * added late.
     *
     * @return false if it is not shown, because no additions do, or stock, room or tolerances stand in the way
     */
    public boolean isSure() {
        return sure;
    }

    /**
     * The judgement on the pot as it is.
     *
     * @return the balance of alkali before anything is added
     */
    public AlkaliBalance before() {
        return judged(before);
    }

    /**
     * The judgement on the pot with the additions as displayed; {@link AlkaliBalance#cookAlone()} tells of it without late fat.
     *
     * @return the balance of alkali after them
     */
    public AlkaliBalance after() {
        return judged(displayed.after());
    }

    /**
     * What to add, in words, with the judgement on the pot afterwards and the caution.
     *
     * @param wording the words
     * @return the document, to be printed in any format
     */
    public Document document(Wording wording) {
        Objects.requireNonNull(wording, "wording");
        AlkaliBalance after = after();
        Document document =
                Document.titled(after.name(), wording.say("language")).heading(wording.say("soap.mending.heading"));
        if (displayed.additions().isEmpty()) {
            document = document.paragraph(wording.say("soap.mending.nothing"));
        } else {
            List<Column> columns = List.of(
                    Column.name(wording.say("soap.mending.what")), Column.number(wording.say("soap.mending.reading")));
            document = document.table(
                    columns, displayed.additions().stream().map(this::row).toList());
        }
        String wanted = atLeast.shortfall().percent().toString();
        return document.paragraph(wording.say(sure ? "soap.mending.sure" : "soap.mending.not-sure", wanted))
                .followedBy(after.document(wording));
    }

    private List<String> row(LineAddition addition) {
        MadeLine there = before.line(addition.line());
        Amount<Mass> step = there.balance().readability();
        return List.of(addition.line().name(), BalanceUnit.reading(addition.mass(), step));
    }

    /** What to add and whether it is sure, for reading at a prompt. */
    @Override
    public String toString() {
        return displayed + (sure ? ", sure" : ", not shown");
    }
}
