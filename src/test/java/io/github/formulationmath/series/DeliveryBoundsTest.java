package io.github.formulationmath.series;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.FormulaBuilder;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.plan.Bench;
import io.github.formulationmath.plan.PlannedLine;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.Interval;
import io.github.formulationmath.support.Trials;
import io.github.formulationmath.weighing.Balance;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.SplittableRandom;
import javax.measure.quantity.Dimensionless;
import org.junit.jupiter.api.Test;

/** What a series guarantees against every corner of what its weighings may be, and against a million draws (long profile). */
final class DeliveryBoundsTest {

    private static final int FACTOR = Math.max(1, Integer.getInteger("formulationmath.cases", 1));

    private static TrialSeries series(Random random) {
        int lines = 3 + random.nextInt(2);
        int[] common = {1 + random.nextInt(9), 1 + random.nextInt(9)};
        List<Formula> versions = new ArrayList<>();
        for (int j = 0; j < 2; j++) {
            FormulaBuilder builder = Formula.inPercent("version " + j).quantitySufficient("rest");
            builder.line("one", common[0] + " %").line("two", common[1] + " %");
            for (int i = 3; i < lines + 1; i++) {
                builder.line("own " + i, 1 + random.nextInt(20) + " %");
            }
            versions.add(builder.build());
        }
        return TrialSeries.of(versions, Bench.of(Balance.of("1 g", "600 g")), 20 + random.nextInt(30) + " g", "30 %");
    }

    private static int divisions(PlannedLine line) {
        return line.divisions().numerator().intValueExact();
    }

    private static double end(Amount<Dimensionless> share) {
        return share.canonical().doubleValue();
    }

    /** A fraction, compared by cross products; the denominator is above 0. */
    private record Fraction(BigInteger top, BigInteger bottom) implements Comparable<Fraction> {

        static Fraction of(long top, long bottom) {
            return new Fraction(BigInteger.valueOf(top), BigInteger.valueOf(bottom));
        }

        Fraction minus(Fraction other) {
            return new Fraction(
                    top.multiply(other.bottom).subtract(other.top.multiply(bottom)), bottom.multiply(other.bottom));
        }

        @Override
        public int compareTo(Fraction other) {
            return top.multiply(other.bottom).compareTo(other.top.multiply(bottom));
        }

        Ratio ratio() {
            return Ratio.of(top, bottom);
        }
    }

    /** All masses of some divisions, each one more or one less, but not below nothing; a bit each. */
    private static long[] corner(int[] readings, int bits) {
        long[] masses = new long[readings.length];
        for (int i = 0; i < readings.length; i++) {
            masses[i] = Math.max(0, readings[i] + ((bits >> i & 1) == 0 ? -1 : 1));
        }
        return masses;
    }

    private static long sum(long[] masses) {
        long sum = 0;
        for (long each : masses) {
            sum += each;
        }
        return sum;
    }

    /** (φ·P + a)/T with φ = base[c]/Σ base; own[0] is P. */
    private static Fraction share(long[] base, int inBase, long[] own, int beside) {
        long whole = sum(base);
        long there = (inBase < 0 ? 0 : base[inBase] * own[0]) + (beside < 0 ? 0 : own[beside] * whole);
        return Fraction.of(there, whole * sum(own));
    }

    private static int place(List<PlannedLine> lines, String name) {
        for (int i = 0; i < lines.size(); i++) {
            if (lines.get(i).name().equals(name)) {
                return i;
            }
        }
        return -1;
    }

    private static int[] readings(List<PlannedLine> lines) {
        return lines.stream().mapToInt(DeliveryBoundsTest::divisions).toArray();
    }

    private static SeriesPlan fromBase(TrialSeries series) {
        return Trials.wayIfAny(series, SeriesPlan.Way.FROM_BASE).orElse(null);
    }

    @Test
    void bounds_of_shares_and_differences_are_attained_at_corners_and_never_passed() {
        int tried = 0;
        int tighter = 0;
        for (int seed = 0; seed < 12 * FACTOR; seed++) {
            SeriesPlan plan = fromBase(series(new Random(seed)));
            if (plan == null) {
                continue;
            }
            List<PlannedLine> base = plan.base().orElseThrow().lines();
            List<PlannedLine> first = plan.trials().get(0).plan().lines();
            List<PlannedLine> second = plan.trials().get(1).plan().lines();
            if (base.size() + first.size() + second.size() > 13) {
                continue;
            }
            tried++;
            for (SeriesComparison.Difference difference :
                    SeriesComparison.of(plan).between("version 0", "version 1")) {
                String about = "seed " + seed + ", " + difference.name() + ": " + plan;
                Fraction[] ends = new Fraction[6];
                int inBase = place(base, difference.name());
                int inFirst = place(first, difference.name());
                int inSecond = place(second, difference.name());
                for (int b = 0; b < 1 << base.size(); b++) {
                    long[] common = corner(readings(base), b);
                    for (int f = 0; f < 1 << first.size(); f++) {
                        Fraction one = share(common, inBase, corner(readings(first), f), inFirst);
                        widen(ends, 0, one);
                        for (int s = 0; s < 1 << second.size(); s++) {
                            Fraction two = share(common, inBase, corner(readings(second), s), inSecond);
                            widen(ends, 2, two);
                            widen(ends, 4, two.minus(one));
                        }
                    }
                }
                Interval<Amount<Dimensionless>> one =
                        plan.trials().get(0).line(difference.name()).bounds();
                Interval<Amount<Dimensionless>> two =
                        plan.trials().get(1).line(difference.name()).bounds();
                assertSame(about, one, ends, 0);
                assertSame(about, two, ends, 2);
                assertSame(about, difference.bounds(), ends, 4);
                Amount<Dimensionless> low = two.least().minus(one.greatest());
                Amount<Dimensionless> high = two.greatest().minus(one.least());
                assertThat(difference.bounds().least()).as(about).isGreaterThanOrEqualTo(low);
                assertThat(difference.bounds().greatest()).as(about).isLessThanOrEqualTo(high);
                tighter += difference.bounds().least().compareTo(low) > 0 ? 1 : 0;
                assertThat(one.contains(
                                plan.trials().get(0).line(difference.name()).share()))
                        .as(about)
                        .isTrue();
                assertThat(difference.bounds().contains(difference.made()))
                        .as(about)
                        .isTrue();
            }
        }
        assertThat(tried).isPositive();
        assertThat(tighter)
                .as("differences whose base is common are surer than two shares")
                .isPositive();
    }

    private static void widen(Fraction[] ends, int at, Fraction value) {
        ends[at] = ends[at] == null || value.compareTo(ends[at]) < 0 ? value : ends[at];
        ends[at + 1] = ends[at + 1] == null || value.compareTo(ends[at + 1]) > 0 ? value : ends[at + 1];
    }

    private static void assertSame(String about, Interval<Amount<Dimensionless>> bounds, Fraction[] ends, int at) {
        assertThat(bounds.least().canonical()).as(about).isEqualTo(ends[at].ratio());
        assertThat(bounds.greatest().canonical()).as(about).isEqualTo(ends[at + 1].ratio());
    }

    @Test
    void a_million_weighings_stay_between_the_bounds() {
        SplittableRandom random = new SplittableRandom(11);
        SeriesPlan plan = null;
        for (int seed = 0; plan == null; seed++) {
            plan = fromBase(series(new Random(seed)));
        }
        List<PlannedLine> base = plan.base().orElseThrow().lines();
        List<PlannedLine> first = plan.trials().get(0).plan().lines();
        List<PlannedLine> second = plan.trials().get(1).plan().lines();
        List<SeriesComparison.Difference> lines = SeriesComparison.of(plan).between("version 0", "version 1");
        double[][] ends = new double[lines.size()][6];
        for (int i = 0; i < lines.size(); i++) {
            Interval<Amount<Dimensionless>> one =
                    plan.trials().get(0).line(lines.get(i).name()).bounds();
            Interval<Amount<Dimensionless>> two =
                    plan.trials().get(1).line(lines.get(i).name()).bounds();
            Interval<Amount<Dimensionless>> difference = lines.get(i).bounds();
            ends[i] = new double[] {
                end(one.least()),
                end(one.greatest()),
                end(two.least()),
                end(two.greatest()),
                end(difference.least()),
                end(difference.greatest())
            };
        }
        int outside = 0;
        for (int draw = 0; draw < 10_000 * FACTOR; draw++) {
            double[] common = drawn(base, random);
            double[] one = drawn(first, random);
            double[] two = drawn(second, random);
            for (int i = 0; i < lines.size(); i++) {
                String name = lines.get(i).name();
                double inFirst = drawnShare(common, place(base, name), one, place(first, name));
                double inSecond = drawnShare(common, place(base, name), two, place(second, name));
                outside += isOutside(ends[i], 0, inFirst)
                                || isOutside(ends[i], 2, inSecond)
                                || isOutside(ends[i], 4, inSecond - inFirst)
                        ? 1
                        : 0;
            }
        }
        assertThat(outside).isZero();
    }

    private static boolean isOutside(double[] ends, int at, double value) {
        return value < ends[at] - 1e-12 || value > ends[at + 1] + 1e-12;
    }

    /** What is there if the display hides half a division when it is tared and half a division when it is read. */
    private static double[] drawn(List<PlannedLine> lines, SplittableRandom random) {
        double[] masses = new double[lines.size()];
        for (int i = 0; i < masses.length; i++) {
            masses[i] = Math.max(0, divisions(lines.get(i)) + random.nextDouble() - 0.5 + random.nextDouble() - 0.5);
        }
        return masses;
    }

    private static double drawnShare(double[] base, int inBase, double[] own, int beside) {
        double whole = 0;
        for (double each : base) {
            whole += each;
        }
        double all = 0;
        for (double each : own) {
            all += each;
        }
        return ((inBase < 0 ? 0 : base[inBase] / whole * own[0]) + (beside < 0 ? 0 : own[beside])) / all;
    }
}
