package io.github.formulationmath.mend;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.formula.Substance;
import io.github.formulationmath.number.Excerpt;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.plan.Bench;
import io.github.formulationmath.plan.Tolerances;
import io.github.formulationmath.pot.MadeBatch;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.MassFraction;
import java.io.Serial;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import javax.measure.quantity.Mass;
import org.jspecify.annotations.Nullable;

/**
 * What a correction has to reach and what stands in its way: the tolerance of every line, caps on substances, lines that
 * can no longer be added to, what is left in stock, and the room in the pot. The balance and the vessel of the bench limit
 * the room in any case.
 *
 * <p>What has been weighed out but still stands apart in its own beaker is not in the pot: record its line as left out, and
 * give what is there as its stock.
 *
 * <p>Example: {@code CorrectionRules.within(Tolerances.of("2 %")).freezing(emulsifier).withStock(oil, Amount.mass("12 g"))}.
 *
 * <p>Immutable and thread-safe.
 */
public final class CorrectionRules implements Serializable {

    @Serial
    private static final long serialVersionUID = 2L;

    private final Tolerances tolerances;
    private final Map<Substance, MassFraction> caps;
    private final Set<FormulaLine> frozen;
    private final Map<FormulaLine, Amount<Mass>> stock;
    private final List<Condition> conditions;
    private final @Nullable Amount<Mass> room;

    private CorrectionRules(
            Tolerances tolerances,
            Map<Substance, MassFraction> caps,
            List<Condition> conditions,
            Set<FormulaLine> frozen,
            Map<FormulaLine, Amount<Mass>> stock,
            @Nullable Amount<Mass> room) {
        this.tolerances = tolerances;
        this.caps = new LinkedHashMap<>(caps);
        this.conditions = new ArrayList<>(conditions);
        this.frozen = new LinkedHashSet<>(frozen);
        this.stock = new LinkedHashMap<>(stock);
        this.room = room;
    }

    /**
     * Rules that ask for every line to be within its tolerance and know no obstacle but the bench.
     *
     * @param tolerances how far each line may be off
     * @return the rules
     */
    public static CorrectionRules within(Tolerances tolerances) {
        Objects.requireNonNull(tolerances, "tolerances");
        return new CorrectionRules(tolerances, Map.of(), List.of(), Set.of(), Map.of(), null);
    }

    /**
     * The same rules with a cap that must be kept. Of several caps for one substance, in whatever spellings, the lowest
     * binds; a cap set again in the same spelling replaces the one before.
     *
     * @param substance the substance, whichever lines bring it in and however they spell it
     * @param cap the most it may make up of everything in the pot
     * @return the rules
     */
    public CorrectionRules withCap(Substance substance, MassFraction cap) {
        Map<Substance, MassFraction> all = new LinkedHashMap<>(caps);
        all.put(Objects.requireNonNull(substance, "substance"), Objects.requireNonNull(cap, "cap"));
        return new CorrectionRules(tolerances, all, conditions, frozen, stock, room);
    }

    /**
     * The same rules with one condition more on what is in the pot.
     *
     * @param condition the condition; where no additions keep it, it is kept as far as it can be, before any cap and any
     *     tolerance and before the conditions that are given later, and {@link Correction#brokenConditions()} tells of it
     * @return the rules
     */
    public CorrectionRules keeping(Condition condition) {
        List<Condition> all = new ArrayList<>(conditions);
        all.add(Objects.requireNonNull(condition, "condition"));
        return new CorrectionRules(tolerances, caps, all, frozen, stock, room);
    }

    /**
     * The same rules with a line that nothing can be added to any more, because its phase is emulsified, or cooled down.
     *
     * @param line the line
     * @return the rules
     */
    public CorrectionRules freezing(FormulaLine line) {
        Set<FormulaLine> all = new LinkedHashSet<>(frozen);
        all.add(Objects.requireNonNull(line, "line"));
        return new CorrectionRules(tolerances, caps, conditions, all, stock, room);
    }

    /**
     * The same rules with what is left of an ingredient, for all lines it stands on in whatever phases. A stock that is given
     * again for the same ingredient replaces the one before.
     *
     * @param line a line of the ingredient
     * @param left how much can still be added to all its lines together, at least 0
     * @return the rules
     * @throws IllegalArgumentException if the amount is negative
     */
    public CorrectionRules withStock(FormulaLine line, Amount<Mass> left) {
        Objects.requireNonNull(line, "line");
        if (Objects.requireNonNull(left, "left").signum() < 0) {
            throw new IllegalArgumentException(
                    "left is " + Excerpt.of(left) + " of " + Excerpt.of(line.name()) + ": a stock is at least 0");
        }
        Map<FormulaLine, Amount<Mass>> all = new LinkedHashMap<>(stock);
        all.keySet().removeIf(known -> known.isNamed(line.name()));
        all.put(line, left);
        return new CorrectionRules(tolerances, caps, conditions, frozen, all, room);
    }

    /**
     * The same rules with the most that the pot can hold.
     *
     * @param content the largest mass of everything together, above 0
     * @return the rules
     * @throws IllegalArgumentException if the mass is not above 0
     */
    public CorrectionRules withRoomFor(Amount<Mass> content) {
        return new CorrectionRules(
                tolerances, caps, conditions, frozen, stock, Amount.requirePositive("content", content));
    }

    /**
     * How far each line may be off.
     *
     * @return the tolerances
     */
    public Tolerances tolerances() {
        return tolerances;
    }

    /**
     * The caps.
     *
     * @return an unmodifiable map from substance to the most it may make up
     */
    public Map<Substance, MassFraction> caps() {
        return Collections.unmodifiableMap(caps);
    }

    /**
     * The further conditions.
     *
     * @return an unmodifiable list in the order given
     */
    public List<Condition> conditions() {
        return Collections.unmodifiableList(conditions);
    }

    /**
     * The lines that nothing can be added to.
     *
     * @return an unmodifiable set
     */
    public Set<FormulaLine> frozen() {
        return Collections.unmodifiableSet(frozen);
    }

    /**
     * What is left of the ingredients whose stock is known.
     *
     * @return an unmodifiable map from one line of each ingredient to what is left for all its lines
     */
    public Map<FormulaLine, Amount<Mass>> stock() {
        return Collections.unmodifiableMap(stock);
    }

    /**
     * The most that the pot can hold, if that was said.
     *
     * @return the largest content
     */
    public Optional<Amount<Mass>> room() {
        return Optional.ofNullable(room);
    }

    /** The largest content in grams that these rules and a bench allow. */
    private Ratio roomOn(Bench bench) {
        Ratio carried = bench.balance().capacityUnder(bench.vessel()).canonical();
        Ratio held = bench.vessel()
                .workingVolume()
                .flatMap(volume -> bench.productDensity().map(density -> density.massOf(volume)))
                .map(mass -> mass.canonical())
                .orElse(carried);
        Ratio said = room == null ? carried : room.canonical();
        return carried.min(held).min(said);
    }

    /** The room in grams for a batch; a pot that holds more than it can hold is simply full. */
    Ratio roomFor(MadeBatch made) {
        return roomOn(made.plan().bench()).max(made.mass().canonical());
    }

    /**
     * The same rules, once it is sure that every line in them is one of the formula, with the capped substances in all
     * spellings that the formula uses.
     */
    CorrectionRules checkedFor(MadeBatch made) {
        Formula formula = made.formula();
        Stream.concat(frozen.stream(), stock.keySet().stream())
                .filter(line -> !formula.has(line))
                .findFirst()
                .ifPresent(line -> {
                    throw new IllegalArgumentException(Excerpt.of(line) + " is in the rules, and no line of \""
                            + Excerpt.of(made.formula().name()) + "\"");
                });
        Map<Substance, MassFraction> counted = new LinkedHashMap<>();
        caps.forEach((substance, most) -> counted.merge(counted(formula, substance), most, CorrectionRules::lower));
        return new CorrectionRules(tolerances, counted, conditions, frozen, stock, room);
    }

    private static Substance counted(Formula formula, Substance capped) {
        return formula.composition()
                .shareOf(capped)
                .map(one -> one.as(capped))
                .orElseThrow(() -> new IllegalArgumentException(
                        "a cap is set for " + Excerpt.of(capped) + ", which \"" + Excerpt.of(formula.name())
                                + "\" does not contain: name it as the formula does, or leave the cap out"));
    }

    private static MassFraction lower(MassFraction one, MassFraction other) {
        return one.fraction().compareTo(other.fraction()) <= 0 ? one : other;
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof CorrectionRules that
                && tolerances.equals(that.tolerances)
                && caps.equals(that.caps)
                && conditions.equals(that.conditions)
                && frozen.equals(that.frozen)
                && stock.equals(that.stock)
                && Objects.equals(room, that.room);
    }

    @Override
    public int hashCode() {
        return Objects.hash(tolerances, caps, conditions, frozen, stock, room);
    }

    @Override
    public String toString() {
        return tolerances
                + (caps.isEmpty() ? "" : ", caps " + caps)
                + (conditions.isEmpty() ? "" : ", keeping " + conditions)
                + (frozen.isEmpty() ? "" : ", frozen " + frozen)
                + (stock.isEmpty() ? "" : ", stock " + stock)
                + (room == null ? "" : ", room for " + room);
    }
}
