package io.github.formulationmath.size;

import io.github.formulationmath.batch.Batch;
import io.github.formulationmath.formula.Substance;
import io.github.formulationmath.number.Bounds;
import io.github.formulationmath.number.Excerpt;
import io.github.formulationmath.number.NumberText;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.MassFraction;
import io.github.formulationmath.reckoning.Explained;
import io.github.formulationmath.reckoning.Origin;
import io.github.formulationmath.reckoning.Phrase;
import io.github.formulationmath.reckoning.Reckoning;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.weighing.WeighingMethod;
import java.util.Objects;
import java.util.Optional;

/**
 * The largest share of a substance that a batch may aim at and still be sure to stay at or below its cap: {@code y = C −
 * Σ|c_i − C|·E / M}, with the strengths c of the lines and the worst error E of an addition.
 *
 * <p>Example: a preservative capped at 1 % in 200 g of three lines on a display of 0.1 g, E = 0.15 g: 0.99 · 0.15 + 2 ·
 * 0.01 · 0.15 = 0.1515 g of error against the cap, so aim at no more than 1 % − 0.1515/200 = 0.92425 %.
 *
 * <p>The strengths are those of the formula's materials, whose shares may then be changed; exact where air buoyancy is not
 * modelled. Immutable and thread-safe.
 */
public final class CapTarget implements Explained {

    private final Batch batch;
    private final Balance balance;
    private final Substance substance;
    private final CapKept criterion;
    private final Ratio share;

    private CapTarget(Batch batch, Balance balance, Substance substance, CapKept criterion) {
        this.batch = batch;
        this.balance = balance;
        this.substance = substance;
        this.criterion = criterion;
        this.share = share(Reckoning.plain());
    }

    /**
     * The largest target under a cap.
     *
     * @param batch the batch, its formula with the substance
     * @param balance the balance
     * @param substance the substance
     * @param cap the largest share permitted
     * @param method how it is weighed
     * @return the target
     * @throws IllegalArgumentException if the formula does not contain the substance, or the balance has a correction for
     *     buoyancy
     */
    public static CapTarget of(
            Batch batch, Balance balance, Substance substance, MassFraction cap, WeighingMethod method) {
        CapKept criterion = CapKept.of(substance, cap, method);
        criterion.share().check(Objects.requireNonNull(batch, "batch").formula());
        var air = Objects.requireNonNull(balance, "balance").errors().buoyancy();
        if (!air.equals(Bounds.point(Ratio.ZERO))) {
            throw new IllegalArgumentException("balance corrects for air buoyancy by " + Excerpt.of(air)
                    + ", in proportion to masses that are not chosen yet: leave the correction out here");
        }
        return new CapTarget(batch, balance, substance, criterion);
    }

    /**
     * The largest share to aim at.
     *
     * @return the share; empty if the errors alone pass the cap, so that not even a trace is sure to stay below
     */
    public Optional<MassFraction> share() {
        return share.signum() < 0
                ? Optional.empty()
                : Optional.of(MassFraction.of(share).withWorking(CapTarget::question, this, CapTarget::share));
    }

    /** As {@link #share()}; also of what is below 0, where the errors alone pass the cap. */
    @Override
    public Origin origin() {
        return Origin.of(CapTarget::question, share, this, CapTarget::share);
    }

    private Phrase question() {
        return Phrase.of("question.largest-target", substance.name());
    }

    private <V> V share(Reckoning<V> r) {
        return criterion.largestTarget(r, batch.formula(), balance, r.known(batch));
    }

    @Override
    public String toString() {
        return substance + " at most " + NumberText.greatestPercent(share, less -> true);
    }
}
