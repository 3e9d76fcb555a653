package io.github.formulationmath.label;

import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.MassFraction;
import io.github.formulationmath.reckoning.Source;
import java.io.Serializable;
import java.util.Objects;

/**
 * From which share on a jurisdiction wants ingredients in descending order, and whether that share itself is free.
 *
 * <table>
 * <caption>An ingredient of exactly 1 %</caption>
 * <tr><th>rule</th><th>free order</th><th>exactly 1 %</th></tr>
 * <tr><td>{@link #eu()}</td><td>below 1 %</td><td>in its place</td></tr>
 * <tr><td>{@link #us()}</td><td>1 % or less</td><td>anywhere after those above 1 %</td></tr>
 * </table>
 *
 * <p>A rule of cosmetics; food has others. It defers to the law in force. Immutable and thread-safe.
 *
 * @param jurisdiction where it holds
 * @param threshold the share from which on the order is descending
 * @param thresholdIsFree whether an ingredient of exactly this share is free
 * @param source where it stands
 */
public record LabelRule(String jurisdiction, MassFraction threshold, boolean thresholdIsFree, Source source)
        implements Serializable {

    private static final MassFraction ONE_PERCENT = MassFraction.of(Ratio.of(1, 100));

    /**
     * Checks.
     *
     * @param jurisdiction where it holds
     * @param threshold the share from which on the order is descending
     * @param thresholdIsFree whether an ingredient of exactly this share is free
     * @param source where it stands
     */
    public LabelRule {
        Objects.requireNonNull(jurisdiction, "jurisdiction");
        Objects.requireNonNull(threshold, "threshold");
        Objects.requireNonNull(source, "source");
    }

    /**
     * European Union: ingredients below 1 % in any order after those of 1 % or more; colorants in any order at the end.
     *
     * @return Regulation (EC) No 1223/2009, Article 19(1)(g)
     */
    public static LabelRule eu() {
        return new LabelRule(
                "EU", ONE_PERCENT, false, Source.published("Regulation (EC) No 1223/2009", "Article 19(1)(g)"));
    }

    /**
     * United States: ingredients of 1 % or less in any order after those above 1 %; colour additives in any order at the
     * end.
     *
     * @return 21 CFR 701.3(f); from memory
     */
    public static LabelRule us() {
        return new LabelRule("US", ONE_PERCENT, true, Source.published("21 CFR 701.3", "(f)"));
    }

    /**
     * Another rule.
     *
     * @param jurisdiction where it holds
     * @param threshold the share from which on the order is descending
     * @param thresholdIsFree whether an ingredient of exactly this share is free
     * @param source where it stands
     * @return the rule
     */
    public static LabelRule of(String jurisdiction, MassFraction threshold, boolean thresholdIsFree, Source source) {
        return new LabelRule(jurisdiction, threshold, thresholdIsFree, source);
    }

    /**
     * Whether an ingredient may stand in any order.
     *
     * @param share its share
     * @return true if it is below the threshold, or at it where that is free
     */
    public boolean isFree(MassFraction share) {
        int order = Objects.requireNonNull(share, "share").compareTo(threshold);
        return order < 0 || order == 0 && thresholdIsFree;
    }

    @Override
    public String toString() {
        return jurisdiction + ": any order " + (thresholdIsFree ? "at or below " : "below ") + threshold;
    }
}
