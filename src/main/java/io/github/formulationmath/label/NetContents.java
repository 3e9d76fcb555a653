package io.github.formulationmath.label;

import io.github.formulationmath.number.Excerpt;
import io.github.formulationmath.number.Rounding;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.Density;
import io.github.formulationmath.reckoning.Explained;
import io.github.formulationmath.reckoning.Kind;
import io.github.formulationmath.reckoning.Origin;
import io.github.formulationmath.reckoning.Phrase;
import io.github.formulationmath.reckoning.Reckoning;
import io.github.formulationmath.reckoning.Source;
import io.github.formulationmath.reckoning.Symbol;
import java.math.RoundingMode;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Volume;
import org.jspecify.annotations.Nullable;

/**
 * What a label may state as the contents of a pack: the fill rounded down to a step, so that the statement never promises
 * more than there is: {@code n = step · ⌊fill / step⌋}.
 *
 * <p>Example: a fill of 50.7 g stated in whole grams is 50 g; stated in steps of 0.05 oz it is 1.75 oz.
 *
 * <p>Average filling and permitted deficiencies are a matter of the law in force; nothing is allowed for them here.
 * Immutable and thread-safe.
 *
 * @param <Q> mass or volume
 */
public final class NetContents<Q extends Quantity<Q>> implements Explained {

    private static final Symbol FILL = Symbol.of("f", "fill", Kind.MASS);
    private static final Symbol DENSITY = Symbol.of("ρ", "fill-density", Kind.DENSITY);
    private static final Symbol MASS_STEP = Symbol.of("t", "statement-step", Kind.MASS);
    private static final Symbol VOLUME_STEP = Symbol.of("t", "statement-step", Kind.VOLUME);
    private static final Symbol MASS = Symbol.of("n", "net-contents", Kind.MASS);
    private static final Symbol VOLUME = Symbol.of("n", "net-contents", Kind.VOLUME);

    private final Amount<Mass> fill;
    private final @Nullable Density density;
    private final Amount<Q> step;

    private NetContents(Amount<Mass> fill, @Nullable Density density, Amount<Q> step) {
        this.fill = Objects.requireNonNull(fill, "fill");
        this.density = density;
        this.step = Objects.requireNonNull(step, "step");
        if (fill.signum() <= 0 || step.signum() <= 0) {
            throw new IllegalArgumentException(
                    "fill is " + Excerpt.of(fill) + " and step is " + Excerpt.of(step) + ": both must be above 0");
        }
        if (contents(Reckoning.plain()).isZero()) {
            throw new IllegalArgumentException("fill is " + Excerpt.of(fill) + ", less than one step of "
                    + Excerpt.of(step) + ": state the contents in a finer step");
        }
    }

    /**
     * Contents by mass.
     *
     * @param fill the mass in the pack, above 0
     * @param step what the statement is a multiple of, for example {@code 1 g}, above 0
     * @return the contents in the unit of the step
     * @throws IllegalArgumentException if an amount is not above 0, or the fill is less than one step
     */
    public static NetContents<Mass> byMass(Amount<Mass> fill, Amount<Mass> step) {
        return new NetContents<>(fill, null, step);
    }

    /**
     * Contents by volume.
     *
     * @param fill the mass in the pack, above 0
     * @param density the density of the product at the temperature for which the volume is stated
     * @param step what the statement is a multiple of, for example {@code 1 mL}, above 0
     * @return the contents in the unit of the step
     * @throws IllegalArgumentException if an amount is not above 0, or the fill is less than one step
     */
    public static NetContents<Volume> byVolume(Amount<Mass> fill, Density density, Amount<Volume> step) {
        return new NetContents<>(fill, Objects.requireNonNull(density, "density"), step);
    }

    /**
     * What the label may state.
     *
     * @return a whole multiple of the step, in its unit, not above the fill
     */
    public Amount<Q> declared() {
        return step.times(contents(Reckoning.plain()).dividedBy(step.canonical()))
                .withWorking(stated -> Phrase.of("question.net-contents"), this, NetContents::contents);
    }

    /** The working of what is {@link #declared()}. */
    @Override
    public Origin origin() {
        return declared().origin();
    }

    private <V> V contents(Reckoning<V> r) {
        Density known = density;
        V mass = r.given(FILL, fill, Source.user());
        V filled = known == null ? mass : r.quotient(mass, r.given(DENSITY, known.gramsPerMillilitre(), Source.user()));
        V one = r.given(known == null ? MASS_STEP : VOLUME_STEP, step, Source.user());
        V steps = r.rounded(r.quotient(filled, one), Rounding.toDecimalPlaces(0).with(RoundingMode.FLOOR));
        return r.named(known == null ? MASS : VOLUME, r.product(steps, one));
    }

    @Override
    public String toString() {
        return declared().toString();
    }
}
