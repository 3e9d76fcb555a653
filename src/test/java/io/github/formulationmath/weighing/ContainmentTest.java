package io.github.formulationmath.weighing;

import static io.github.formulationmath.support.Made.shareBounds;
import static org.assertj.core.api.Assertions.assertThat;

import io.github.formulationmath.number.Bounds;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * A million weighings at the bench, played by a program that knows nothing of the library's relations: a balance that
 * rounds, a tare that may be off, a maker who pours until the display reads what it should. No made share may leave its
 * interval, and some must come near both ends.
 */
class ContainmentTest {

    private static final int TRIALS = 1_000_000;
    private static final double STEP = 0.1;
    private static final double LINEARITY = 0.08;
    private static final double RESIDUE = 0.15;
    private static final double[] READINGS = {0.7, 3.2, 20.0, 1.5};

    private final SplittableRandom random = new SplittableRandom(1012008);

    @Tag("long")
    @ParameterizedTest
    @EnumSource(WeighingMethod.class)
    void no_share_leaves_its_interval(WeighingMethod method) {
        MadeMasses made = masses(method);
        int lines = READINGS.length;
        double[] low = new double[lines];
        double[] high = new double[lines];
        for (int i = 0; i < lines; i++) {
            Bounds bounds = shareBounds(made, i);
            low[i] = bounds.lower().orElseThrow().doubleValue();
            high[i] = bounds.upper().orElseThrow().doubleValue();
        }
        double[] least = new double[lines];
        double[] most = new double[lines];
        java.util.Arrays.fill(least, 1);
        for (int trial = 0; trial < TRIALS; trial++) {
            int favoured = random.nextInt(lines);
            // Half of the makers are honest; the others have all the bad luck there is for one line, nearly or wholly.
            double luck = trial % 2 == 0 ? 0 : trial % 4 == 1 ? 1 : -1;
            double[] masses = pour(method, favoured, luck);
            double total = 0;
            for (double mass : masses) {
                total += mass;
            }
            for (int i = 0; i < lines; i++) {
                double share = masses[i] / total;
                least[i] = Math.min(least[i], share);
                most[i] = Math.max(most[i], share);
            }
        }
        for (int i = 0; i < lines; i++) {
            double hundredth = (high[i] - low[i]) / 2 / 100;
            assertThat(least[i]).isBetween(low[i] - 1e-13, low[i] + hundredth);
            assertThat(most[i]).isBetween(high[i] - hundredth, high[i] + 1e-13);
        }
    }

    /** Pours all lines; the mass of each is what is in the vessel afterwards. */
    private double[] pour(WeighingMethod method, int favoured, double luck) {
        double[] masses = new double[READINGS.length];
        double shown = 0;
        double before = 0;
        double zero = error(STEP / 2, -luckOf(0, favoured, luck));
        for (int i = 0; i < masses.length; i++) {
            double wish = luckOf(i, favoured, luck);
            if (method != WeighingMethod.CUMULATIVE) {
                shown = 0;
                before = 0;
                zero = error(STEP / 2, -wish);
            }
            if (method == WeighingMethod.BY_DIFFERENCE) {
                // The boat before pouring is a reading too, and not a tare.
                zero += error(LINEARITY, -wish);
            }
            shown += READINGS[i];
            double content = pourUntilShown(shown, zero, wish);
            masses[i] = content - before;
            before = content;
            if (method == WeighingMethod.FROM_BOAT) {
                masses[i] -= RESIDUE / 2 + error(RESIDUE / 2, -wish);
            }
        }
        return masses;
    }

    private static double luckOf(int line, int favoured, double luck) {
        return line == favoured ? luck : -luck;
    }

    /** Tries contents of the vessel until the display shows the reading; the balance is off by its linearity. */
    private double pourUntilShown(double reading, double zero, double wish) {
        double off = error(LINEARITY, -wish);
        while (true) {
            double content = reading + error(STEP + LINEARITY, 0);
            if (wish != 0) {
                // Just so much that the display does not jump to the next step.
                content = reading - zero - off + wish * STEP / 2 * (1 - random.nextDouble() * 0.01);
            }
            if (Math.round((content + zero + off) / STEP) == Math.round(reading / STEP)) {
                return content;
            }
        }
    }

    /** An error within its bounds: anywhere, or as good as at one end. */
    private double error(double half, double wish) {
        return wish == 0 ? half * (2 * random.nextDouble() - 1) : half * wish * (1 - random.nextDouble() * 0.01);
    }

    private static MadeMasses masses(WeighingMethod method) {
        Balance balance = Balance.of("0.1 g", "2 kg")
                .withErrors(ErrorModel.readabilityOnly()
                        .withLinearityOfNetReading("0.08 g")
                        .withResidue(Amount.mass("0 g"), Amount.mass("0.15 g")));
        List<Addition> additions = new ArrayList<>();
        for (double reading : READINGS) {
            Amount<javax.measure.quantity.Mass> mass = Amount.grams(Ratio.from(reading));
            additions.add(
                    Addition.of("L" + additions.size(), mass, mass, balance).by(method));
        }
        return MadeMasses.of(additions);
    }
}
