package io.github.formulationmath.limit;

import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.Interval;
import io.github.formulationmath.reckoning.Entry.Comparison;
import io.github.formulationmath.reckoning.Kind;
import io.github.formulationmath.reckoning.Phrase;
import io.github.formulationmath.reckoning.Reckoning;
import io.github.formulationmath.reckoning.Source;
import io.github.formulationmath.reckoning.Symbol;
import java.io.Serial;
import java.io.Serializable;
import java.util.Objects;
import javax.measure.Quantity;
import org.jspecify.annotations.Nullable;

/**
 * How the uncertainty of the weighing enters a verdict on a limit T and a share y.
 *
 * <table>
 * <caption>A highest share T; for a lowest effective one all is mirrored</caption>
 * <tr><th>rule</th><th>within</th><th>exceeds</th><th>else</th></tr>
 * <tr><td>{@link #simpleAcceptance()}</td><td>y ≤ T</td><td>y &gt; T</td><td></td></tr>
 * <tr><td>{@link #guardBand(Ratio) guardBand(k)}</td><td>y + k·u ≤ T</td><td>y − k·u &gt; T</td><td>not shown to be
 * within</td></tr>
 * <tr><td>{@link #worstCase()}</td><td>upper end ≤ T</td><td>lower end &gt; T</td><td>not shown to be within</td></tr>
 * </table>
 *
 * <p>The guard band is {@code w = k·u}; with k = 2 it is the expanded uncertainty U, and a share that is accepted is above
 * the limit with a probability of at most 2.3 %. A formula without a weighing has no uncertainty: all rules then agree.
 *
 * <p>Example: a cap of 1.0 %, u = 0.02 %: with k = 2 a share of 0.96 % is within, 0.97 % is not shown to be, 1.05 %
 * exceeds. All comparisons are exact; roots are avoided by comparing squares.
 *
 * <p>Sources: JCGM 106:2012, 8.2 and 8.3; ILAC-G8:09/2019, 4.2.
 *
 * <p>Immutable and thread-safe.
 */
public final class DecisionRule implements Serializable {

    @Serial
    private static final long serialVersionUID = 1L;

    private static final Symbol LENGTH = Symbol.of("k_G", "guard-band-factor", Kind.NUMBER);
    private static final DecisionRule SIMPLE = new DecisionRule(Form.SIMPLE, Ratio.ZERO);
    private static final DecisionRule WORST_CASE = new DecisionRule(Form.WORST_CASE, Ratio.ZERO);
    private static final DecisionRule EXPANDED = new DecisionRule(Form.GUARD_BAND, Ratio.of(2));

    private final Form form;
    private final Ratio factor;

    private enum Form {
        SIMPLE,
        GUARD_BAND,
        WORST_CASE
    }

    private DecisionRule(Form form, Ratio factor) {
        this.form = form;
        this.factor = factor;
    }

    /**
     * The share as it is most likely decides, whatever its uncertainty (JCGM 106:2012, 8.2).
     *
     * @return the rule
     */
    public static DecisionRule simpleAcceptance() {
        return SIMPLE;
    }

    /**
     * A guard band of the expanded uncertainty U = 2u (JCGM 106:2012, 8.3.2; ILAC-G8:09/2019, 4.2).
     *
     * @return the rule
     */
    public static DecisionRule guardBand() {
        return EXPANDED;
    }

    /**
     * A guard band of another length.
     *
     * @param standardUncertainties k: its length in standard uncertainties, above 0 and at most 100
     * @return the rule
     * @throws IllegalArgumentException if the length is out of range
     */
    public static DecisionRule guardBand(Ratio standardUncertainties) {
        Objects.requireNonNull(standardUncertainties, "standardUncertainties");
        if (standardUncertainties.signum() <= 0 || standardUncertainties.compareTo(Ratio.of(100)) > 0) {
            throw new IllegalArgumentException("standardUncertainties is " + standardUncertainties
                    + ": it must lie above 0 and not above 100; without a guard band the rule is simpleAcceptance()");
        }
        return new DecisionRule(Form.GUARD_BAND, standardUncertainties);
    }

    /**
     * The end of the guaranteed interval decides.
     *
     * @return the rule
     */
    public static DecisionRule worstCase() {
        return WORST_CASE;
    }

    /**
     * Decides on amounts of any kind: shares in percent, masses, temperatures.
     *
     * @param kind what the limit is
     * @param limit the limit T
     * @param value what was found, y
     * @param bounds where it is sure to lie
     * @param standardUncertainty u, at least 0; of a temperature a difference, in kelvin
     * @param <Q> what is measured
     * @return the verdict
     * @throws IllegalArgumentException if the uncertainty is negative, or a temperature in °C or °F
     */
    public <Q extends Quantity<Q>> Conformity decide(
            LimitKind kind,
            Amount<Q> limit,
            Amount<Q> value,
            Interval<Amount<Q>> bounds,
            Amount<Q> standardUncertainty) {
        Objects.requireNonNull(kind, "kind");
        Objects.requireNonNull(limit, "limit");
        Objects.requireNonNull(value, "value");
        Objects.requireNonNull(bounds, "bounds");
        Amount.requireNotNegative("standardUncertainty", standardUncertainty);
        Conformance.requireDifference(value, standardUncertainty);
        Ratio u = standardUncertainty.canonical();
        KnownShare evidence = new KnownShare.Numbers(
                value.canonical(), bounds.least().canonical(), bounds.greatest().canonical(), u.times(u));
        return decide(Reckoning.plain(), kind, limit.canonical(), evidence);
    }

    <V> Conformity decide(Reckoning<V> r, LimitKind kind, V limit, KnownShare evidence) {
        return switch (form) {
            case SIMPLE ->
                r.holds(evidence.value(r), kind.isUpper() ? Comparison.AT_MOST : Comparison.AT_LEAST, limit)
                        ? Conformity.WITHIN
                        : beyond(kind);
            case GUARD_BAND -> guarded(r, kind, limit, evidence);
            case WORST_CASE -> worst(r, kind, limit, evidence);
        };
    }

    private <V> Conformity worst(Reckoning<V> r, LimitKind kind, V limit, KnownShare evidence) {
        boolean upper = kind.isUpper();
        V farEnd = upper ? evidence.highest(r) : evidence.lowest(r);
        if (r.holds(farEnd, upper ? Comparison.AT_MOST : Comparison.AT_LEAST, limit)) {
            return Conformity.WITHIN;
        }
        V nearEnd = upper ? evidence.lowest(r) : evidence.highest(r);
        return r.holds(nearEnd, upper ? Comparison.GREATER : Comparison.LESS, limit)
                ? beyond(kind)
                : Conformity.NOT_SHOWN_WITHIN;
    }

    /** y + k·u ≤ T means T − y ≥ 0 and (k·u)² ≤ (T − y)². */
    private <V> Conformity guarded(Reckoning<V> r, LimitKind kind, V limit, KnownShare evidence) {
        V value = evidence.value(r);
        V room = kind.isUpper() ? r.difference(limit, value) : r.difference(value, limit);
        V k = r.given(LENGTH, factor, Source.user());
        V band = r.product(r.product(k, k), evidence.variance(r));
        V square = r.product(room, room);
        boolean keeps = r.holds(room, Comparison.AT_LEAST, r.literal(0));
        boolean decided = keeps ? r.holds(band, Comparison.AT_MOST, square) : r.holds(band, Comparison.LESS, square);
        return !decided ? Conformity.NOT_SHOWN_WITHIN : keeps ? Conformity.WITHIN : beyond(kind);
    }

    /** How far inside the limit the share is, the guard band taken off; negative if it is not within. */
    <V> V headroom(Reckoning<V> r, LimitKind kind, V limit, KnownShare evidence) {
        boolean upper = kind.isUpper();
        V end = form != Form.WORST_CASE ? evidence.value(r) : upper ? evidence.highest(r) : evidence.lowest(r);
        V room = upper ? r.difference(limit, end) : r.difference(end, limit);
        return form == Form.GUARD_BAND
                ? r.difference(room, r.product(r.given(LENGTH, factor, Source.user()), r.root(evidence.variance(r))))
                : room;
    }

    private static Conformity beyond(LimitKind kind) {
        return kind.isUpper() ? Conformity.EXCEEDS : Conformity.FALLS_SHORT;
    }

    boolean isSimple() {
        return form == Form.SIMPLE;
    }

    boolean isWorstCase() {
        return form == Form.WORST_CASE;
    }

    boolean isGuardBand() {
        return form == Form.GUARD_BAND;
    }

    /** The length of the guard band in standard uncertainties; 0 for the other rules. */
    Ratio factor() {
        return factor;
    }

    /** The key of the words for the rule. */
    String key() {
        return "rule." + form.name().toLowerCase(java.util.Locale.ROOT).replace('_', '-');
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof DecisionRule that && form == that.form && factor.equals(that.factor);
    }

    @Override
    public int hashCode() {
        return Objects.hash(form, factor);
    }

    /** The rule in words. */
    Phrase phrase() {
        return switch (form) {
            case SIMPLE -> Phrase.of("limit.rule.simple");
            case GUARD_BAND -> Phrase.of("limit.rule.guard-band", factor.toString());
            case WORST_CASE -> Phrase.of("limit.rule.worst-case");
        };
    }

    @Override
    public String toString() {
        return form == Form.GUARD_BAND
                ? "guard band of " + factor + " u"
                : form == Form.SIMPLE ? "simple acceptance" : "worst case";
    }
}
