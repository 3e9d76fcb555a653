package io.github.formulationmath.weighing;

import static io.github.formulationmath.support.Made.covariance;
import static io.github.formulationmath.support.Made.massBounds;
import static io.github.formulationmath.support.Made.shareBounds;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.formulationmath.number.Bounds;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.support.CpuTime;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** The extremes of shares against all corners, one by one, in exact arithmetic. */
class ShareExtremesTest {

    private final Random random = new Random(20081031);

    @Test
    void independent_masses_against_all_corners() {
        for (int round = 0; round < 400; round++) {
            int k = 1 + random.nextInt(8);
            List<Ratio> readings = readings(k, 1);
            MadeMasses made = make(readings, WeighingMethod.TARE_EACH, "0");
            List<Ratio> low = readings.stream()
                    .map(r -> r.minus(Ratio.parse("0.1")).max(Ratio.ZERO))
                    .toList();
            List<Ratio> high =
                    readings.stream().map(r -> r.plus(Ratio.parse("0.1"))).toList();
            List<Ratio> strengths = strengths(k);
            Extremes seen = new Extremes();
            for (int corner = 0; corner < 1 << k; corner++) {
                List<Ratio> masses = new ArrayList<>();
                for (int i = 0; i < k; i++) {
                    masses.add((corner >> i & 1) == 0 ? low.get(i) : high.get(i));
                }
                seen.add(masses, strengths);
            }
            seen.assertEqualTo(made, strengths);
        }
    }

    /** All corners of the k + 1 indications: the first hides d/2, each later one d/2 and the linearity. */
    @Tag("long")
    @Test
    void cumulative_masses_against_all_corners() {
        for (int round = 0; round < 300; round++) {
            int k = 2 + random.nextInt(7);
            List<Ratio> readings = readings(k, 5);
            MadeMasses made = make(readings, WeighingMethod.CUMULATIVE, "0.07");
            List<Ratio> strengths = strengths(k);
            Extremes seen = new Extremes();
            for (int corner = 0; corner < 1 << (k + 1); corner++) {
                List<Ratio> masses = new ArrayList<>();
                for (int i = 0; i < k; i++) {
                    masses.add(readings.get(i).plus(indication(corner, i + 1)).minus(indication(corner, i)));
                }
                seen.add(masses, strengths);
            }
            seen.assertEqualTo(made, strengths);
        }
    }

    /** A part of a cumulative sequence, its lines in any choice and order, by all corners of all indications. */
    @Test
    void part_of_a_cumulative_sequence_against_all_corners() {
        for (int round = 0; round < 300; round++) {
            int k = 3 + random.nextInt(5);
            List<Ratio> readings = readings(k, 5);
            MadeMasses whole = make(readings, WeighingMethod.CUMULATIVE, "0.07");
            List<Integer> lines = new ArrayList<>(IntStream.range(0, k).boxed().toList());
            Collections.shuffle(lines, random);
            lines = lines.subList(0, 1 + random.nextInt(k));
            List<Ratio> strengths = strengths(lines.size());
            Extremes seen = new Extremes();
            for (int corner = 0; corner < 1 << (k + 1); corner++) {
                List<Ratio> masses = new ArrayList<>();
                for (int i : lines) {
                    masses.add(readings.get(i).plus(indication(corner, i + 1)).minus(indication(corner, i)));
                }
                seen.add(masses, strengths);
            }
            MadeMasses part = whole.part(lines);
            seen.assertEqualTo(part, strengths);
            for (int i = 0; i < lines.size(); i++) {
                assertThat(massBounds(part, i)).isEqualTo(massBounds(whole, lines.get(i)));
                for (int j = 0; j < lines.size(); j++) {
                    assertThat(covariance(part, i, j)).isEqualTo(covariance(whole, lines.get(i), lines.get(j)));
                }
            }
        }
    }

    @Test
    void a_part_names_each_line_once() {
        MadeMasses whole = make(readings(3, 5), WeighingMethod.CUMULATIVE, "0");
        assertThatThrownBy(() -> whole.part(List.of(1, 2, 1)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("[1, 2, 1]");
    }

    /** Errors as large as the masses, down to totals that could be 0: an answer that holds every honest corner, no hang. */
    @Test
    void errors_as_large_as_the_masses_end_and_contain() {
        for (int round = 0; round < 300; round++) {
            int k = 2 + random.nextInt(4);
            List<Ratio> readings = readings(k, 1);
            int tenths = random.nextInt(20);
            MadeMasses made = make(readings, WeighingMethod.CUMULATIVE, "0." + tenths);
            Ratio later = Ratio.parse("0." + tenths).plus(Ratio.parse("0.05"));
            List<Ratio> strengths = strengths(k);
            Bounds mixture = CpuTime.assertWithin(Duration.ofSeconds(10), () -> shareBounds(made, strengths));
            for (int corner = 0; corner < 1 << (k + 1); corner++) {
                Ratio sum = Ratio.ZERO;
                Ratio total = Ratio.ZERO;
                boolean possible = true;
                for (int i = 0; i < k; i++) {
                    Ratio begin = i == 0 ? Ratio.parse("0.05") : later;
                    Ratio mass = readings.get(i)
                            .plus((corner >> i + 1 & 1) == 0 ? later.unaryMinus() : later)
                            .minus((corner >> i & 1) == 0 ? begin.unaryMinus() : begin);
                    possible &= mass.signum() >= 0;
                    total = total.plus(mass);
                    sum = sum.plus(mass.times(strengths.get(i)));
                }
                if (possible && !total.isZero()) {
                    assertThat(mixture.contains(sum.dividedBy(total))).isTrue();
                }
            }
        }
    }

    @Test
    void what_stays_behind_must_leave_something() {
        Balance balance = Balance.of("0.1 g", "2 kg")
                .withErrors(ErrorModel.readabilityOnly().withResidue(Amount.mass("1 g"), Amount.mass("2 g")));
        Addition little = Addition.of("Dye", Amount.mass("0.5 g"), Amount.mass("0.5 g"), balance)
                .by(WeighingMethod.FROM_BOAT);
        assertThatThrownBy(() -> MadeMasses.of(List.of(little)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("residue");
    }

    private static Ratio indication(int corner, int index) {
        Ratio size = Ratio.parse(index == 0 ? "0.05" : "0.12");
        return (corner >> index & 1) == 0 ? size.unaryMinus() : size;
    }

    private static MadeMasses make(List<Ratio> readings, WeighingMethod method, String linearity) {
        Balance balance = Balance.of("0.1 g", "2 kg")
                .withErrors(ErrorModel.readabilityOnly().withLinearityOfNetReading(linearity + " g"));
        List<Addition> additions = new ArrayList<>();
        for (int i = 0; i < readings.size(); i++) {
            Amount<javax.measure.quantity.Mass> mass = Amount.grams(readings.get(i));
            additions.add(Addition.of("L" + i, mass, mass, balance).by(method));
        }
        return MadeMasses.of(additions);
    }

    private List<Ratio> readings(int k, int least) {
        List<Ratio> readings = new ArrayList<>();
        for (int i = 0; i < k; i++) {
            readings.add(Ratio.of(least + random.nextInt(random.nextBoolean() ? 5 : 400), 10));
        }
        return readings;
    }

    private List<Ratio> strengths(int k) {
        List<Ratio> strengths = new ArrayList<>();
        for (int i = 0; i < k; i++) {
            strengths.add(Ratio.of(random.nextInt(4), 3));
        }
        return strengths;
    }

    /** What brute force has seen. */
    private static final class Extremes {
        private final List<Bounds> lines = new ArrayList<>();
        private Bounds mixture = Bounds.all();
        private boolean any;

        void add(List<Ratio> masses, List<Ratio> strengths) {
            Ratio total = masses.stream().reduce(Ratio.ZERO, Ratio::plus);
            if (total.isZero()) {
                return;
            }
            Ratio sum = Ratio.ZERO;
            for (int i = 0; i < masses.size(); i++) {
                Ratio share = masses.get(i).dividedBy(total);
                sum = sum.plus(share.times(strengths.get(i)));
                if (any) {
                    lines.set(i, widened(lines.get(i), share));
                } else {
                    lines.add(Bounds.point(share));
                }
            }
            mixture = any ? widened(mixture, sum) : Bounds.point(sum);
            any = true;
        }

        private static Bounds widened(Bounds seen, Ratio share) {
            return Bounds.closed(
                    seen.lower().orElseThrow().min(share),
                    seen.upper().orElseThrow().max(share));
        }

        void assertEqualTo(MadeMasses made, List<Ratio> strengths) {
            for (int i = 0; i < lines.size(); i++) {
                assertThat(shareBounds(made, i)).isEqualTo(lines.get(i));
            }
            assertThat(shareBounds(made, strengths)).isEqualTo(mixture);
        }
    }
}
