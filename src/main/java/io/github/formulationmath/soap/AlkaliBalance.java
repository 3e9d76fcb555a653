package io.github.formulationmath.soap;

import io.github.formulationmath.document.Document;
import io.github.formulationmath.document.Format;
import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.limit.LimitTable;
import io.github.formulationmath.number.Excerpt;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.pot.MadeBatch;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.Interval;
import io.github.formulationmath.reckoning.Phrase;
import io.github.formulationmath.reckoning.Wording;
import io.github.formulationmath.simulation.CoverageFactor;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.weighing.MadeMasses;
import io.github.formulationmath.weighing.Weighed;
import io.github.formulationmath.weighing.WeighingMethod;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Mass;
import org.jspecify.annotations.Nullable;

/**
 * What is left of the hydroxide in a soap as weighed, whatever its inputs are inside their bounds.
 *
 * <p>With A the masses of the alkalis, w their share of hydroxide, m those of the fats and acids, and S what a gram of them takes,
 * the hydroxide left is {@code E = Σ w·A/M − Σ S·m}. It is linear in the masses and rises or falls with every other input, so that
 * its exact ends are corners: most is left with the strongest alkali, the least of fat and the lowest saponification values. The
 * ends over the masses are those of the whole error model, with what the weighings have in common.
 *
 * <p>The shortfall of alkali, {@code d = 1 − (Σ w·A/M − acids)/fats}, falls with every input that E rises with as long as the acids
 * cannot take all of the hydroxide; where they can, it is not given.
 *
 * <p>Necessary is not enough: {@link #notCovered()} tells what the judgement does not cover, and it is to be printed with it.
 *
 * <p>Immutable and thread-safe.
 */
public final class AlkaliBalance {

    private final Declared lines;
    private final MassRange masses;
    private final boolean withLateFat;
    private final boolean coverage;
    /** Worked out when somebody first asks; every sum takes them. */
    private volatile @Nullable List<Contribution> contributions;

    /** A line that gives or takes, and what a gram of it brings in grams of potassium hydroxide, at the two ends. */
    private record Contribution(int line, SoapRole role, Ratio most, Ratio least) {

        Ratio end(boolean isMost) {
            return isMost ? most : least;
        }
    }

    AlkaliBalance(Soap soap, MassRange masses, boolean coverage, boolean withLateFat) {
        this(new Declared.Whole(soap), masses, coverage, withLateFat);
    }

    private AlkaliBalance(Declared lines, MassRange masses, boolean coverage, boolean withLateFat) {
        this.lines = lines;
        this.masses = masses;
        this.coverage = coverage;
        this.withLateFat = withLateFat;
    }

    /**
     * Judges what was weighed, or is going to be.
     *
     * @param soap the formula with its lines declared
     * @param weighed the masses of that formula, with their errors
     * @return the balance of alkali
     * @throws IllegalArgumentException if the masses are of another formula, or have errors without a bound that nobody covers
     */
    public static AlkaliBalance of(Soap soap, Weighed weighed) {
        return of(soap, weighed, Objects.requireNonNull(weighed, "weighed").masses());
    }

    /**
     * As {@link #of(Soap, Weighed)}, with k times the errors without a bound taken in; it then holds within that coverage and not for
     * certain.
     *
     * @param soap the formula with its lines declared
     * @param weighed the masses of that formula, with their errors
     * @param factor the coverage factor k
     * @return the balance of alkali
     * @throws IllegalArgumentException if the masses are of another formula
     */
    public static AlkaliBalance of(Soap soap, Weighed weighed, CoverageFactor factor) {
        MadeMasses masses = Objects.requireNonNull(weighed, "weighed").masses();
        return of(soap, weighed, masses.covering(Objects.requireNonNull(factor, "factor")));
    }

    private static AlkaliBalance of(Soap soap, Weighed weighed, MadeMasses masses) {
        Objects.requireNonNull(soap, "soap");
        if (!soap.formula().equals(Objects.requireNonNull(weighed, "weighed").formula())) {
            throw new IllegalArgumentException("what was weighed is "
                    + Excerpt.of(weighed.formula().name()) + ", the soap is "
                    + Excerpt.of(soap.formula().name())
                    + ": the two are not the same formula; declare the formula that was weighed");
        }
        return of(new Declared.Whole(soap), masses);
    }

    private static AlkaliBalance of(Declared lines, MadeMasses masses) {
        if (masses.leavesErrorsOut()) {
            throw new IllegalArgumentException(
                    "the balance has an error without a bound, such as its repeatability, so that"
                            + " nothing is sure: take it in with covering(CoverageFactor.of(2)) or more");
        }
        return new AlkaliBalance(
                lines, new WeighedRange(masses), masses.coverage().isPresent(), true);
    }

    /**
     * Judges what a lye calculation leads to when it is weighed on a balance, every line by itself.
     *
     * @param lye the calculation
     * @param balance the balance
     * @param method how it is weighed
     * @return the balance of alkali of the masses as that display shows them
     * @throws IllegalArgumentException if the balance has errors without a bound, and as {@link LyeCalculation#expectedOn}
     */
    public static AlkaliBalance of(LyeCalculation lye, Balance balance, WeighingMethod method) {
        LyeCalculation calculated = Objects.requireNonNull(lye, "lye");
        return of(new Declared.Calculated(calculated, calculated.roles()), calculated.weighed(balance, method));
    }

    /**
     * The judgement.
     *
     * @return what is shown of hydroxide that is left; {@link HydroxideVerdict#NOT_SHOWN} while a line is undeclared
     */
    public HydroxideVerdict verdict() {
        if (!lines.undeclared().isEmpty()) {
            return HydroxideVerdict.NOT_SHOWN;
        }
        if (excess(true).signum() <= 0) {
            return HydroxideVerdict.NO_HYDROXIDE_LEFT;
        }
        return excess(false).signum() > 0 ? HydroxideVerdict.HYDROXIDE_LEFT : HydroxideVerdict.NOT_SHOWN;
    }

    /**
     * Lines of which nothing is said, for whose sake nothing is shown.
     *
     * @return the lines, empty if all are declared
     */
    public List<FormulaLine> undeclared() {
        return lines.undeclared();
    }

    private List<FormulaLine> formulaLines() {
        return lines.soap().formula().lines();
    }

    /**
     * Whether the judgement holds only within a stated coverage, since an input is an interval of coverage and no bound.
     *
     * @return true if it is not for certain
     */
    public boolean isWithinCoverage() {
        return coverage || roles().anyMatch(role -> !role.isBounded());
    }

    /**
     * The lines whose figures are intervals of coverage.
     *
     * @return the lines in the order of the formula
     */
    public List<FormulaLine> coverageInputs() {
        return formulaLines().stream()
                .filter(line -> lines.role(line.index())
                        .filter(role -> !role.isBounded())
                        .isPresent())
                .toList();
    }

    /**
     * The hydroxide that is left, reckoned as sodium hydroxide if any is used and else as potassium hydroxide; below 0, what the
     * fats could still take.
     *
     * @return the least and the most that may be left
     */
    public Interval<Amount<Mass>> excess() {
        Ratio grams = reference().gramsPerGramOfPotassiumHydroxide();
        return Interval.of(
                Amount.grams(excess(false).times(grams)),
                Amount.grams(excess(true).times(grams)));
    }

    /** The alkali that amounts of hydroxide are stated as. */
    Alkali reference() {
        return grades().values().stream().anyMatch(grade -> grade.alkali() == Alkali.SODIUM_HYDROXIDE)
                ? Alkali.SODIUM_HYDROXIDE
                : Alkali.POTASSIUM_HYDROXIDE;
    }

    private Stream<SoapRole> roles() {
        return IntStream.range(0, lines.size()).mapToObj(lines::role).flatMap(Optional::stream);
    }

    private Map<Integer, AlkaliGrade> grades() {
        Map<Integer, AlkaliGrade> grades = new LinkedHashMap<>();
        for (int i = 0; i < lines.size(); i++) {
            int line = i;
            lines.role(i).ifPresent(role -> {
                if (role instanceof SoapRole.Gives gives) {
                    grades.put(line, gives.grade());
                }
            });
        }
        return grades;
    }

    /** The hydroxide left in grams of potassium hydroxide, at the end where most or least is left. */
    private Ratio excess(boolean most) {
        return masses.sum(weights(role -> true, most, Ratio.ONE), most);
    }

    /** By how much the masses may have more hydroxide left than they show, in grams of potassium hydroxide, with so much of the fats counted. */
    Ratio hidden(Ratio shareForTheFats, List<Ratio> shown) {
        Map<Integer, Ratio> weights = kept(shareForTheFats);
        Ratio asShown = Ratio.ZERO;
        for (Map.Entry<Integer, Ratio> each : weights.entrySet()) {
            asShown = asShown.plus(each.getValue().times(shown.get(each.getKey())));
        }
        return masses.sum(weights, true).minus(asShown);
    }

    /** Whether no hydroxide is left even if the fats are to get only a share of what they could take; acids are paid in full. */
    boolean leavesNone(Ratio shareForTheFats) {
        return masses.sum(kept(shareForTheFats), true).signum() <= 0;
    }

    private Map<Integer, Ratio> kept(Ratio shareForTheFats) {
        Map<Integer, Ratio> weights = weights(role -> !(role instanceof SoapRole.Takes), true, Ratio.ONE);
        weights.putAll(weights(SoapRole.Takes.class::isInstance, true, shareForTheFats));
        return weights;
    }

    /** What a gram of each line brings, in grams of potassium hydroxide, at one end; lines that bring nothing are left out. */
    private Map<Integer, Ratio> weights(Predicate<SoapRole> wanted, boolean most, Ratio times) {
        Map<Integer, Ratio> weights = new LinkedHashMap<>();
        for (Contribution part : contributions()) {
            Ratio weight = part.end(most);
            if (!weight.isZero() && wanted.test(part.role())) {
                weights.put(part.line(), weight.times(times));
            }
        }
        return weights;
    }

    private List<Contribution> contributions() {
        List<Contribution> known = contributions;
        if (known == null) {
            known = new ArrayList<>(lines.size());
            for (int line = 0; line < lines.size(); line++) {
                SoapRole role = lines.role(line).orElse(null);
                if (role != null && takesPart(role)) {
                    known.add(new Contribution(line, role, role.most(), role.least()));
                }
            }
            contributions = known;
        }
        return known;
    }

    private boolean takesPart(SoapRole role) {
        return withLateFat || !(role instanceof SoapRole.Takes takes && takes.late());
    }

    /**
     * The shortfall of alkali: the share of what the fats could take that they do not get. Makers call it unsaponified fat; it is a
     * share of the equivalents.
     *
     * @return the least and the greatest shortfall in per cent; below 0 is an excess of alkali
     * @throws IllegalStateException if the acids may take all of the hydroxide, or no fat is sure to take any
     */
    public Interval<Amount<Dimensionless>> shortfall() {
        Map<Integer, Ratio> leastOfFats = fats(true);
        Map<Integer, Ratio> leastOfLye = lye(false);
        requireShortfall(leastOfFats, leastOfLye);
        // 1 − (hydroxide − acids)/fats, with the hydroxide most and least.
        Ratio least = Ratio.ONE.minus(masses.quotient(lye(true), leastOfFats, true));
        Ratio most = Ratio.ONE.minus(masses.quotient(leastOfLye, fats(false), false));
        return Interval.of(percent(least), percent(most));
    }

    private static Amount<Dimensionless> percent(Ratio share) {
        return Amount.percent(share.times(100));
    }

    /** Whether there is a shortfall to state: some fat is sure to take alkali, and the acids leave some. */
    boolean hasShortfall() {
        return fatsTakeSome(fats(true)) && acidsLeaveSome(lye(false));
    }

    private boolean fatsTakeSome(Map<Integer, Ratio> leastOfFats) {
        return !leastOfFats.isEmpty() && masses.sum(leastOfFats, false).signum() > 0;
    }

    private boolean acidsLeaveSome(Map<Integer, Ratio> leastOfLye) {
        return masses.sum(leastOfLye, false).signum() >= 0;
    }

    private Map<Integer, Ratio> lye(boolean most) {
        return weights(role -> !(role instanceof SoapRole.Takes), most, Ratio.ONE);
    }

    private Map<Integer, Ratio> fats(boolean most) {
        return weights(SoapRole.Takes.class::isInstance, most, Ratio.ONE.unaryMinus());
    }

    private void requireShortfall(Map<Integer, Ratio> leastOfFats, Map<Integer, Ratio> leastOfLye) {
        if (!fatsTakeSome(leastOfFats)) {
            throw new IllegalStateException(
                    "no fat is sure to take up any alkali, so that there is no shortfall to state:"
                            + " for a wax give its acid value, or state that its esters react");
        }
        if (!acidsLeaveSome(leastOfLye)) {
            throw new IllegalStateException(
                    "the acids may take all of the hydroxide, so that there is no shortfall of the"
                            + " fats to state: ask for excess()");
        }
    }

    /**
     * The carbonate that the alkali brings, reckoned as hydroxide. It takes no part, is not counted as hydroxide above, and is
     * free alkali in the sense of ISO 684.
     *
     * @return the least and the most
     */
    public Interval<Amount<Mass>> carbonate() {
        Ratio grams = reference().gramsPerMole();
        return Interval.of(
                Amount.grams(carbonate(false).times(grams)),
                Amount.grams(carbonate(true).times(grams)));
    }

    private Ratio carbonate(boolean most) {
        Map<Integer, Ratio> weights = new LinkedHashMap<>();
        grades().forEach((line, grade) -> {
            Ratio share =
                    (most ? grade.carbonate().greatest() : grade.carbonate().least()).fraction();
            if (!share.isZero()) {
                weights.put(line, share.times(2).dividedBy(grade.alkali().gramsPerMoleOfCarbonate()));
            }
        });
        return weights.isEmpty() ? Ratio.ZERO : masses.sum(weights, most);
    }

    /**
     * Total free alkali as ISO 684 counts it, hydroxide left and carbonate brought, both at their ends.
     *
     * @return the least, not below 0, and the most
     */
    public Interval<Amount<Mass>> totalFreeAlkali() {
        Interval<Amount<Mass>> left = excess();
        Interval<Amount<Mass>> brought = carbonate();
        return Interval.of(
                notBelowZero(left.least()).plus(brought.least()),
                notBelowZero(left.greatest()).plus(brought.greatest()));
    }

    private static Amount<Mass> notBelowZero(Amount<Mass> mass) {
        return mass.signum() < 0 ? Amount.grams(Ratio.ZERO) : mass;
    }

    /**
     * Which inputs widen the interval of the hydroxide left, the widest first: where a certificate, a better grade or a finer
     * balance would gain most. Where every line is tared for itself they add up to the whole width; weighings that share a
     * reading take some of it back.
     *
     * @return one entry for each input that widens it
     */
    public List<InputWidth> widths() {
        List<InputWidth> widths = new ArrayList<>();
        for (FormulaLine line : formulaLines()) {
            lines.role(line.index()).filter(this::takesPart).ifPresent(role -> {
                Ratio high = role.most();
                Ratio low = role.least();
                // Each at the middle of the other, so that both together are the width of the product.
                Ratio middle = high.plus(low).abs().dividedBy(2);
                add(widths, kind(role), line, high.minus(low).times(middle(line)));
                add(widths, InputWidth.Kind.WEIGHING, line, spread(line).times(middle));
            });
        }
        widths.sort(InputWidth.WIDEST_FIRST);
        return List.copyOf(widths);
    }

    private void add(List<InputWidth> widths, InputWidth.Kind kind, FormulaLine line, Ratio koh) {
        if (koh.signum() > 0) {
            widths.add(new InputWidth(
                    kind, line.name(), Amount.grams(koh.times(reference().gramsPerGramOfPotassiumHydroxide()))));
        }
    }

    private static InputWidth.Kind kind(SoapRole role) {
        if (role instanceof SoapRole.Gives) {
            return InputWidth.Kind.GRADE;
        }
        return role instanceof SoapRole.TakesFirst ? InputWidth.Kind.ACID : InputWidth.Kind.FAT;
    }

    private Ratio middle(FormulaLine line) {
        Map<Integer, Ratio> mass = Map.of(line.index(), Ratio.ONE);
        return masses.sum(mass, true).plus(masses.sum(mass, false)).dividedBy(2);
    }

    private Ratio spread(FormulaLine line) {
        Map<Integer, Ratio> mass = Map.of(line.index(), Ratio.ONE);
        return masses.sum(mass, true).minus(masses.sum(mass, false));
    }

    /**
     * What a supplier's certificate would gain: the same judgement with another saponification value of one fat. How much less
     * hydroxide may then be left is the difference of the two {@link #excess()}.
     *
     * @param line the name of the line of the fat
     * @param value its value by the certificate, or another range that is known of the lot
     * @return the judgement with it
     * @throws IllegalArgumentException if the line is no fat, or no value lies in both ranges
     */
    public AlkaliBalance ifCertified(String line, SaponificationValue value) {
        return new AlkaliBalance(
                lines.soap().certified(line, Objects.requireNonNull(value, "value")), masses, coverage, withLateFat);
    }

    /**
     * The corner at which most hydroxide is left, in words: the figure of every line there, and what the weighings bring. If a
     * judgement is not shown, this is what breaks it.
     *
     * @return one phrase for each line that takes alkali or gives it, and one for the weighings
     */
    public List<Phrase> corner() {
        List<Phrase> corner = new ArrayList<>();
        Ratio inTheMiddle = Ratio.ZERO;
        for (FormulaLine line : formulaLines()) {
            Optional<SoapRole> role = lines.role(line.index()).filter(this::takesPart);
            if (role.isPresent()) {
                role.get().corner(line.name()).ifPresent(corner::add);
                inTheMiddle = inTheMiddle.plus(role.get().most().times(middle(line)));
            }
        }
        Ratio weighings = excess(true).minus(inTheMiddle).times(reference().gramsPerGramOfPotassiumHydroxide());
        corner.add(Phrase.of(
                "soap.corner.weighings", AlkaliReport.up(weighings), reference().toString()));
        return List.copyOf(corner);
    }

    /**
     * The judgement in words, with the interval of what stays unsaponified and of what may be left, the corner that breaks it,
     * what widens it, what it does not cover, and the caution, once. Lower ends are printed rounded down and upper ends up.
     *
     * @param wording the words
     * @return the document, to be printed in any format
     */
    public Document document(Wording wording) {
        return new AlkaliReport(this, Objects.requireNonNull(wording, "wording")).document();
    }

    /**
     * The judgement in words as {@link #document(Wording)}, and beside it what a table of limits says of the hydroxides used. The table
     * speaks of a product as it is placed on the market, its hydroxide and its pH, and not of lye that is used up in it; whether the
     * soap keeps it is measured, and nothing of it is concluded here.
     *
     * @param wording the words
     * @param limits the table
     * @return the document, to be printed in any format
     */
    public Document document(Wording wording, LimitTable limits) {
        return new AlkaliReport(this, Objects.requireNonNull(wording, "wording"))
                .document(Objects.requireNonNull(limits, "limits"));
    }

    /** The alkalis that are used, each once. */
    List<Alkali> alkalis() {
        return grades().values().stream()
                .map(AlkaliGrade::alkali)
                .distinct()
                .sorted()
                .toList();
    }

    /** The name of what is judged. */
    String name() {
        return lines.soap().formula().name();
    }

    /**
     * The largest reading of an alkali that leaves at least a wanted shortfall whatever the other inputs are, with what else was
     * weighed as it is.
     *
     * @param soap the formula with its lines declared, all of them
     * @param weighed the masses of that formula, with their errors; the reading of this alkali does not matter
     * @param alkali the name of the line of the alkali
     * @param atLeast the shortfall to be left; 0 % for no hydroxide left
     * @return the largest multiple of the display's step; empty if not even 0 is safe
     * @throws IllegalArgumentException if a line is undeclared, or the line is no alkali, and as {@link #of}
     */
    public static Optional<Amount<Mass>> largestReading(
            Soap soap, Weighed weighed, String alkali, Unsaponified atLeast) {
        of(soap, weighed);
        requireDeclared(soap);
        return new LargestReading(soap, weighed, soap.formula().line(alkali), atLeast).reading();
    }

    /**
     * The largest reading of alkali that may still be poured into a pot, half done or done, for at least a wanted shortfall to be left
     * whatever lots and balances do. Lines that are not in the pot yet are to be recorded as left out: what nobody wrote down may be
     * anything.
     *
     * @param soap the formula with its lines declared, all of them
     * @param pot what is in the pot
     * @param alkali the name of the line of the alkali, weighed on the balance of its line
     * @param atLeast the shortfall to be left; 0 % for no hydroxide left
     * @return the largest multiple of the display's step that may be poured now, 0 included; empty if too much is in the pot already
     * @throws IllegalArgumentException if a line is undeclared, or the line is no alkali, and as {@link #of}
     */
    public static Optional<Amount<Mass>> largestAddition(
            Soap soap, MadeBatch pot, String alkali, Unsaponified atLeast) {
        of(soap, pot);
        requireDeclared(soap);
        return LargestReading.ofAddition(soap, pot, soap.formula().line(alkali), atLeast);
    }

    private static void requireDeclared(Soap soap) {
        if (!soap.undeclared().isEmpty()) {
            throw new IllegalArgumentException("not declared are " + Excerpt.of(soap.undeclared())
                    + ": say of each line whether it takes alkali, gives it or does neither");
        }
    }

    /**
     * The judgement of the cook alone, before late fat is added. Only if it leaves no hydroxide for certain does the late fat
     * stay unsaponified; otherwise that fat is being saponified and needs the same time and mixing.
     *
     * @return the balance without the late fat; empty if no fat is late
     */
    public Optional<AlkaliBalance> cookAlone() {
        boolean late = roles().anyMatch(role -> role instanceof SoapRole.Takes takes && takes.late());
        return withLateFat && late ? Optional.of(new AlkaliBalance(lines, masses, coverage, false)) : Optional.empty();
    }

    /**
     * What the judgement does not cover, to be printed with it.
     *
     * @return the sentences
     */
    public List<Phrase> notCovered() {
        return List.of(Phrase.of("soap.not-covered"), Phrase.of("soap.titrate"));
    }

    /** The judgement as text, for reading at a prompt. */
    @Override
    public String toString() {
        return document(Wording.english()).print(Format.TEXT);
    }
}
