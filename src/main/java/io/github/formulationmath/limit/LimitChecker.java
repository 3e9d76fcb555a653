package io.github.formulationmath.limit;

import io.github.formulationmath.amendment.AsOf;
import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.SubstanceName;
import io.github.formulationmath.number.Excerpt;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.reckoning.Source;
import io.github.formulationmath.weighing.Weighed;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * A table of limits made ready for one product and one decision rule. Make it once, check many formulas with it.
 *
 * <p>Example: a preservative at 1.0 % under a cap of 1.0 % keeps it on paper. Weighed as 5.00 g in 500 g on a display of
 * 0.1 g it may be 5.1 g, and the worst case is {@link Conformity#NOT_SHOWN_WITHIN}:
 *
 * <pre>{@code
 * LimitChecker checker = LimitChecker.of(LimitTable.eu2024February(), Product.leaveOn().on("face"), DecisionRule.worstCase());
 * checker.check(formula).binding().orElseThrow().conformity();     // WITHIN
 * checker.check(ExpectedProduct.of(plan, WeighingMethod.TARE_EACH))
 *         .binding().orElseThrow().conformity();     // NOT_SHOWN_WITHIN
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 */
public final class LimitChecker {

    private final LimitTable table;
    private final Product product;
    private final DecisionRule rule;
    private final Map<CheckIndex.Content, Conversion> stated;
    private final @Nullable AsOf asOf;
    private final CheckIndex index;
    private final @Nullable LimitChecker later;

    private LimitChecker(
            LimitTable table,
            Product product,
            DecisionRule rule,
            Map<CheckIndex.Content, Conversion> stated,
            @Nullable AsOf asOf) {
        this.table = table;
        this.product = product;
        this.rule = rule;
        this.stated = Map.copyOf(stated);
        this.asOf = asOf;
        this.index = new CheckIndex(table, product, this.stated);
        LimitTable acts = table.later().orElse(null);
        this.later = acts == null ? null : new LimitChecker(acts, product, rule, stated, asOf);
    }

    /**
     * Makes a table ready.
     *
     * @param table the limits
     * @param product what the product is
     * @param rule how uncertainty enters the verdicts
     * @return the checker
     * @throws IllegalArgumentException if the product states a purpose that the table does not know, see {@link
     *     LimitTable#words()}; a table that asks for no purpose takes any
     */
    public static LimitChecker of(LimitTable table, Product product, DecisionRule rule) {
        Objects.requireNonNull(product, "product");
        requirePurposes(Objects.requireNonNull(table, "table"), product);
        return new LimitChecker(table, product, Objects.requireNonNull(rule, "rule"), Map.of(), null);
    }

    private static void requirePurposes(LimitTable table, Product product) {
        if (product.purposes().isEmpty()) {
            return;
        }
        Set<String> known = table.words().purposes();
        product.purposes().forEach((substance, purpose) -> {
            if (!known.isEmpty() && !known.contains(purpose)) {
                throw new IllegalArgumentException("purpose of " + Excerpt.of(substance) + " is \""
                        + Excerpt.of(purpose) + "\", which " + Excerpt.of(table.name())
                        + " does not know: state one of "
                        + Excerpt.ofAll(known) + ", or none, and the strictest counts");
            }
        });
    }

    /**
     * The same checker, told what a substance holds of a reference substance where no molecular formula says so, or
     * instead of it.
     *
     * @param inciName the substance
     * @param referenceName the reference substance, named as the basis of the limit names it
     * @param content grams of the reference per gram of the substance, above 0
     * @param source the supplier's document
     * @return the checker
     * @throws IllegalArgumentException if the content is not above 0, or no limit of the table counts a member of that
     *     name, synonym or CAS number as that reference
     */
    public LimitChecker withContent(String inciName, String referenceName, Ratio content, Source source) {
        if (Objects.requireNonNull(content, "content").signum() <= 0) {
            throw new IllegalArgumentException("content is " + Excerpt.of(content) + ": it must be above 0");
        }
        String name = SubstanceName.normalise(Objects.requireNonNull(inciName, "inciName"));
        String reference = SubstanceName.normalise(Objects.requireNonNull(referenceName, "referenceName"));
        Conversion statement = new Conversion.Stated(content, Objects.requireNonNull(source, "source"));
        Map<CheckIndex.Content, Conversion> more = new HashMap<>(stated);
        List<CheckIndex.Content> meant = meant(name, reference);
        if (meant.isEmpty()) {
            throw new IllegalArgumentException("no limit of " + table.name() + " counts \"" + Excerpt.of(inciName)
                    + "\" as \"" + Excerpt.of(referenceName)
                    + "\": name both as the table does, see LimitTable.limits()");
        }
        meant.forEach(key -> more.put(key, statement));
        return new LimitChecker(table, product, rule, more, asOf);
    }

    /**
     * The same checker as of a day: which later acts bind on it is told of every entry and substance that they touch, and
     * their figures decide as far as they were seen. There is no day by default: without one the report says so, and later
     * figures are only told.
     *
     * @param day the day, and whether the product is to be placed on the market or made available
     * @return the checker
     */
    public LimitChecker asOf(AsOf day) {
        return new LimitChecker(table, product, rule, stated, Objects.requireNonNull(day, "day"));
    }

    /**
     * The day as of which it checks.
     *
     * @return the day and the question, if they were given
     */
    public Optional<AsOf> asOf() {
        return Optional.ofNullable(asOf);
    }

    /** The same for the figures of later acts, if the table has any. */
    Optional<LimitChecker> later() {
        return Optional.ofNullable(later);
    }

    /** The members that the table counts as a reference and knows under a name or number, each by its own name. */
    private List<CheckIndex.Content> meant(String key, String reference) {
        return table.limits().stream()
                .filter(limit -> limit.basis().isReference())
                .filter(limit ->
                        SubstanceName.normalise(limit.basis().referenceName()).equals(reference))
                .flatMap(limit -> limit.group().members().stream())
                .map(GroupMember::substance)
                .filter(substance -> substance.keys().contains(key))
                .map(substance -> CheckIndex.Content.of(substance, reference))
                .distinct()
                .toList();
    }

    /**
     * Checks a formula as it is written, which has no uncertainty.
     *
     * @param formula the formula
     * @return the report
     */
    public LimitReport check(Formula formula) {
        return new LimitCheck(this, new Wholes(Objects.requireNonNull(formula, "formula"), null, null)).report();
    }

    /**
     * Checks a formula as it is planned to be weighed, or as it was weighed: an {@code ExpectedProduct}, a {@code
     * BalanceAssignment}, a {@code MadeBatch}, a trial of a series.
     *
     * @param weighed what was weighed, with the formula it is of
     * @return the report on that formula
     * @throws IllegalArgumentException if the masses are not those of the lines of the formula
     */
    public LimitReport check(Weighed weighed) {
        WeighedLines own = WeighedLines.of(weighed);
        return new LimitCheck(this, new Wholes(own.formula(), own.masses(), weighed)).report();
    }

    /**
     * The limits.
     *
     * @return the table
     */
    public LimitTable table() {
        return table;
    }

    /**
     * The product.
     *
     * @return what the limits are asked for
     */
    public Product product() {
        return product;
    }

    /**
     * The decision rule.
     *
     * @return how uncertainty enters the verdicts
     */
    public DecisionRule rule() {
        return rule;
    }

    CheckIndex index() {
        return index;
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof LimitChecker that
                && table.equals(that.table)
                && product.equals(that.product)
                && rule.equals(that.rule)
                && stated.equals(that.stated)
                && Objects.equals(asOf, that.asOf);
    }

    @Override
    public int hashCode() {
        return Objects.hash(table, product, rule);
    }

    @Override
    public String toString() {
        return table.name() + "; " + product + "; " + rule + (asOf == null ? "" : "; " + asOf);
    }
}
