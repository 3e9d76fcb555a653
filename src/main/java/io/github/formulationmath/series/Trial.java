package io.github.formulationmath.series;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.formula.Line;
import io.github.formulationmath.formula.Lines;
import io.github.formulationmath.number.Bounds;
import io.github.formulationmath.number.Excerpt;
import io.github.formulationmath.number.NumberText;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.plan.PlannedLine;
import io.github.formulationmath.plan.ToleranceVerdict;
import io.github.formulationmath.plan.Tolerances;
import io.github.formulationmath.plan.WeighingPlan;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.Interval;
import io.github.formulationmath.reckoning.Explained;
import io.github.formulationmath.reckoning.Origin;
import io.github.formulationmath.reckoning.Phrase;
import io.github.formulationmath.reckoning.Reckoning;
import io.github.formulationmath.weighing.MadeMasses;
import io.github.formulationmath.weighing.Weighed;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Mass;
import org.jspecify.annotations.Nullable;

/**
 * One version of a series as it is weighed, by itself or with a portion of base, and what will be in it.
 *
 * <p>Example: {@code seriesPlan.trial("Oat lotion").line("Glycerin").bounds()}.
 *
 * <p>Immutable and thread-safe.
 */
public final class Trial implements Weighed, Lines<Trial.Share> {

    private final Portion portion;
    private final WeighingPlan plan;
    private final Delivery delivery;
    private final List<Share> lines;

    Trial(Portion portion, WeighingPlan plan, Delivery delivery) {
        this.portion = portion;
        this.plan = plan;
        this.delivery = delivery;
        this.lines = Collections.unmodifiableList(portion.version().lines().stream()
                .map(line -> new Share(line, delivery, portion.tolerances()))
                .toList());
    }

    /** The version: what is wanted. */
    @Override
    public Formula formula() {
        return portion.version();
    }

    /**
     * How it is weighed. If it is made from a base, the first line is the portion of base and the others are what is weighed beside
     * it; its formula then says what it is made of in these lines.
     *
     * @return the plan
     */
    public WeighingPlan plan() {
        return plan;
    }

    /**
     * The portion of base.
     *
     * @return the line of the plan; empty if the version is weighed by itself
     */
    public Optional<PlannedLine> portionOfBase() {
        return portion.hasBase() ? Optional.of(plan.lines().get(0)) : Optional.empty();
    }

    /**
     * How much of the version is made.
     *
     * @return the size of its batch
     */
    public Amount<Mass> size() {
        return plan.batch().mass();
    }

    /** The share of every line of the version as it is delivered, whether it comes from the base or not. */
    @Override
    public List<Share> lines() {
        return lines;
    }

    /**
     * The mass of each line of the version one by one, what comes with the base among them. Lines from one portion of base are off together,
     * which these masses do not say; {@link #sureShare} does.
     */
    @Override
    public MadeMasses masses() {
        return delivery.masses();
    }

    @Override
    public Optional<Interval<Amount<Dimensionless>>> sureShare(Map<Integer, Ratio> strengths) {
        Objects.requireNonNull(strengths, "strengths").forEach((line, strength) -> {
            Objects.checkIndex(line, lines.size());
            if (strength.signum() < 0) {
                throw new IllegalArgumentException("strengths has " + Excerpt.of(strength) + " for line "
                        + Excerpt.of(lines.get(line).name()) + ": a line contains nothing or something, 0 or more");
            }
        });
        return Optional.of(delivery.sureShare(strengths));
    }

    /** The same trial as it was made. */
    Trial made(MadeMasses own, Optional<MadeMasses> base) {
        return new Trial(portion, plan, new Delivery(portion, own, base));
    }

    Portion portion() {
        return portion;
    }

    Delivery delivery() {
        return delivery;
    }

    /** What is weighed into it. */
    @Override
    public String toString() {
        return formula().name() + " " + size().toldExactly()
                + portionOfBase()
                        .map(line -> " with " + line.reading().toldExactly() + " of base")
                        .orElse("");
    }

    /**
     * One line of a version as it is delivered.
     *
     * <p>Immutable and thread-safe.
     */
    public static final class Share implements Line, Explained {

        private final FormulaLine line;
        private final Delivery delivery;
        private final Tolerances tolerances;

        Share(FormulaLine line, Delivery delivery, Tolerances tolerances) {
            this.line = line;
            this.delivery = delivery;
            this.tolerances = tolerances;
        }

        @Override
        public FormulaLine line() {
            return line;
        }

        /**
         * The share if every display reads what is planned, and every error is at its middle.
         *
         * @return the share of the whole in percent, exact, with its working
         */
        public Amount<Dimensionless> share() {
            return delivery.share(line)
                    .withWorking(share -> Phrase.of("question.delivered-share", share.name()), this, Share::share);
        }

        private <V> V share(Reckoning<V> r) {
            return delivery.share(r, line);
        }

        /** As {@link #share()}. */
        @Override
        public Origin origin() {
            return share().origin();
        }

        /**
         * Where the share is sure to lie, whatever the bounded errors of base and portion do.
         *
         * @return the least and the greatest share of the whole, in percent; both can happen
         */
        public Interval<Amount<Dimensionless>> bounds() {
            return delivery.bounds(line);
        }

        /**
         * Whether the errors of weighing leave the share within its tolerance.
         *
         * @return within if both ends are, outside if the share cannot be within
         */
        public ToleranceVerdict verdict() {
            return tolerances.verdict(line, bounds());
        }

        @Override
        public boolean equals(@Nullable Object other) {
            return other instanceof Share that
                    && line.equals(that.line)
                    && share().equals(that.share())
                    && bounds().equals(that.bounds());
        }

        @Override
        public int hashCode() {
            return Objects.hash(line, share());
        }

        @Override
        public String toString() {
            Interval<Amount<Dimensionless>> bounds = bounds();
            return name() + " "
                    + NumberText.percent(
                            share().canonical(),
                            Bounds.closed(
                                    bounds.least().canonical(),
                                    bounds.greatest().canonical()));
        }
    }
}
