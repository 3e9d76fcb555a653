package io.github.formulationmath.limit;

import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.working.Source;
import java.io.Serial;
import java.io.Serializable;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

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
 */
public final class LabelRule implements Serializable {

    @Serial
    private static final long serialVersionUID = 1L;

    private static final Ratio ONE_PERCENT = Ratio.of(1, 100);
    private static final LabelRule EU = new LabelRule(
            "EU", ONE_PERCENT, false, Source.published("Regulation (EC) No 1223/2009", "Article 19(1)(g)"));
    private static final LabelRule US = new LabelRule("US", ONE_PERCENT, true, Source.published("21 CFR 701.3", "(f)"));

    private final String jurisdiction;
    private final Ratio threshold;
    private final boolean thresholdIsFree;
    private final Source source;

    private LabelRule(String jurisdiction, Ratio threshold, boolean thresholdIsFree, Source source) {
        this.jurisdiction = jurisdiction;
        this.threshold = threshold;
        this.thresholdIsFree = thresholdIsFree;
        this.source = source;
    }

    /**
     * European Union: ingredients below 1 % in any order after those of 1 % or more; colorants in any order at the end.
     *
     * @return Regulation (EC) No 1223/2009, Article 19(1)(g)
     */
    public static LabelRule eu() {
        return EU;
    }

    /**
     * United States: ingredients of 1 % or less in any order after those above 1 %; colour additives in any order at the
     * end.
     *
     * @return 21 CFR 701.3(f); from memory
     */
    public static LabelRule us() {
        return US;
    }

    /**
     * Another rule.
     *
     * @param jurisdiction where it holds
     * @param threshold the share from which on the order is descending, from 0 to 1
     * @param thresholdIsFree whether an ingredient of exactly this share is free
     * @param source where it stands
     * @return the rule
     * @throws IllegalArgumentException if the threshold is no share
     */
    public static LabelRule of(String jurisdiction, Ratio threshold, boolean thresholdIsFree, Source source) {
        Objects.requireNonNull(jurisdiction, "jurisdiction");
        Objects.requireNonNull(source, "source");
        if (Objects.requireNonNull(threshold, "threshold").signum() < 0 || threshold.compareTo(Ratio.ONE) > 0) {
            throw new IllegalArgumentException("threshold is " + threshold + ": it must lie between 0 and 1");
        }
        return new LabelRule(jurisdiction, threshold, thresholdIsFree, source);
    }

    /**
     * The threshold.
     *
     * @return a fraction
     */
    public Ratio threshold() {
        return threshold;
    }

    /**
     * Where the rule stands.
     *
     * @return the source
     */
    public Source source() {
        return source;
    }

    /**
     * Whether an ingredient may stand in any order.
     *
     * @param share its share
     * @return true if it is below the threshold, or at it where that is free
     */
    public boolean isFree(Ratio share) {
        int order = Objects.requireNonNull(share, "share").compareTo(threshold);
        return order < 0 || order == 0 && thresholdIsFree;
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof LabelRule that
                && jurisdiction.equals(that.jurisdiction)
                && threshold.equals(that.threshold)
                && thresholdIsFree == that.thresholdIsFree
                && source.equals(that.source);
    }

    @Override
    public int hashCode() {
        return Objects.hash(jurisdiction, threshold, thresholdIsFree, source);
    }

    @Override
    public String toString() {
        return jurisdiction + ": any order " + (thresholdIsFree ? "at or below " : "below ") + threshold.times(100)
                + " %";
    }
}
