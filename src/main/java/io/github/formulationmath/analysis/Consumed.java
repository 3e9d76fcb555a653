package io.github.formulationmath.analysis;

import io.github.formulationmath.number.Excerpt;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.reckoning.Kind;
import io.github.formulationmath.reckoning.Reckoning;
import io.github.formulationmath.reckoning.Subject;
import io.github.formulationmath.reckoning.Symbol;
import java.util.ArrayList;
import java.util.List;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Volume;
import org.jspecify.annotations.Nullable;

/**
 * What a titration consumed: {@code n = c · f · (V − V₀)}, and the readings behind it.
 *
 * @param titrant the solution in the burette
 * @param sample what was titrated
 * @param volume the larger reading
 * @param less the reading that is taken off, if there is one
 */
record Consumed(
        Titrant titrant,
        Subject sample,
        Input volume,
        @Nullable Input less) {

    static final Symbol VOLUME = Symbol.of("V", "titrant-volume", Kind.VOLUME);
    private static final Symbol MASS = Symbol.of("m", "sample-mass", Kind.MASS);
    private static final Symbol MOLES = Symbol.of("n", "titrated-substance", Kind.SUBSTANCE);

    static Input volume(Subject subject, Estimate<Volume> reading) {
        Amount.requireNotNegative("volume of titrant for " + subject.name(), reading.value());
        return new Input(VOLUME, subject, reading);
    }

    static Input mass(Subject subject, Estimate<Mass> sample) {
        Amount.requirePositive("mass of " + subject.name(), sample.value());
        return new Input(MASS, subject, sample);
    }

    /** Refuses a difference below nothing, told with what is likely behind it. */
    static void requireNotLess(Input volume, Input less, String remedy) {
        Ratio difference = volume.estimate()
                .value()
                .canonical()
                .minus(less.estimate().value().canonical());
        if (difference.signum() < 0) {
            throw new IllegalArgumentException("volume for " + volume.subject().name() + " is "
                    + Excerpt.of(volume.estimate().value()) + ", below "
                    + Excerpt.of(less.estimate().value()) + " for "
                    + less.subject().name() + ": " + remedy);
        }
    }

    List<Input> inputs() {
        List<Input> inputs = new ArrayList<>(List.of(titrant.factor(), volume));
        if (less != null) {
            inputs.add(less);
        }
        return inputs;
    }

    /** Moles that reacted. */
    <V> V moles(Reckoning<V> r) {
        V used = volume.in(r);
        V net = less == null ? used : r.difference(used, less.in(r));
        return r.named(MOLES, sample, r.product(titrant.strength(r), net));
    }
}
