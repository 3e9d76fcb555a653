package io.github.formulationmath.pot;

import static io.github.formulationmath.support.Made.estimate;
import static io.github.formulationmath.support.Made.massBounds;
import static io.github.formulationmath.support.Made.shareBounds;
import static org.assertj.core.api.Assertions.assertThat;

import io.github.formulationmath.batch.Batch;
import io.github.formulationmath.batch.BatchSize;
import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.number.Bounds;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.plan.Bench;
import io.github.formulationmath.plan.ToleranceVerdict;
import io.github.formulationmath.plan.Tolerances;
import io.github.formulationmath.plan.WeighingPlan;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.weighing.ErrorModel;
import io.github.formulationmath.weighing.MadeMasses;
import io.github.formulationmath.weighing.Vessel;
import io.github.formulationmath.weighing.WeighingMethod;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import javax.measure.quantity.Mass;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * Bounds called sure against what can really happen. A small bench of this test's own, in whole units of 10 ng, plays
 * weighings whose errors lie at their extremes: tare, reading, linearity of both kinds, residue, air; lines that nobody
 * wrote down, later additions, a pot weighed again. No true mass or share may leave its interval, and no estimate either.
 */
class SureBoundsTest {

    private static final long GRAM = 100_000_000L;
    private static final long STEP = GRAM / 10;
    private static final long VESSEL = 200 * GRAM;
    private static final long CAPACITY = 2000 * GRAM;
    private static final long AIR_PARTS = 100_000;
    private static final int LINES = 4;

    private static final Formula FORMULA = Formula.inPercent("Trial")
            .line("A", "70 %")
            .line("B", "20 %")
            .line("C", "8 %")
            .line("D", "2 %")
            .build();

    /** What this bench knows of its balance; all in units, air in parts of 100 000. */
    private record Figures(
            long tare,
            long linearity,
            boolean ofIndication,
            long leastResidue,
            long mostResidue,
            long leastAir,
            long mostAir) {

        static Figures random(SplittableRandom r) {
            long tare = r.nextBoolean() ? STEP : r.nextLong(0, 30) * GRAM / 10;
            long linearity = r.nextInt(3) == 0 ? 0 : r.nextLong(1, 15) * GRAM / 10;
            long least = r.nextLong(0, 10) * GRAM / 10;
            long air = r.nextInt(3) == 0 ? 0 : r.nextLong(0, 150);
            return new Figures(
                    tare,
                    linearity,
                    r.nextBoolean(),
                    least,
                    least + r.nextLong(0, 10) * GRAM / 10,
                    air,
                    air + r.nextLong(0, 60));
        }

        Balance balance() {
            ErrorModel errors = ErrorModel.readabilityOnly()
                    .withTareResolution(mass(tare))
                    .withResidue(mass(leastResidue), mass(mostResidue))
                    .withBuoyancy(Bounds.closed(Ratio.of(leastAir, AIR_PARTS), Ratio.of(mostAir, AIR_PARTS)));
            return Balance.of(mass(STEP), mass(CAPACITY))
                    .withErrors(
                            ofIndication
                                    ? errors.withLinearityOfIndication(mass(linearity))
                                    : errors.withLinearityOfNetReading(mass(linearity)));
        }
    }

    /** The world: errors, each at one of its extremes, or seldom in between. */
    private record World(Figures figures, SplittableRandom random) {

        long between(long low, long high) {
            return switch (random.nextInt(9)) {
                case 0 -> random.nextLong(low, high + 1);
                case 1, 2, 3, 4 -> low;
                default -> high;
            };
        }

        long either(long half) {
            return between(-half, half);
        }

        /** The error of an indication that is read. */
        long reading() {
            return either(STEP / 2) + either(figures.linearity);
        }

        /** The error of the indication that is set to zero. */
        long tare() {
            return either(figures.tare / 2) + (figures.ofIndication ? either(figures.linearity) : 0);
        }

        long air(long shown) {
            return shown / AIR_PARTS * between(figures.leastAir, figures.mostAir);
        }

        /** No pour takes anything out: what asks for that cannot happen. */
        long possible(long mass) {
            if (mass < 0) {
                throw new IllegalStateException("a pour of " + mass);
            }
            return mass;
        }

        /** The mass behind a net reading of its own. */
        long weighed(long shown, WeighingMethod method) {
            long begin = method == WeighingMethod.BY_DIFFERENCE ? reading() : tare();
            long left = method == WeighingMethod.FROM_BOAT ? between(figures.leastResidue, figures.mostResidue) : 0;
            return possible(shown + air(shown) + reading() - begin - left);
        }
    }

    /** What was written down, and what the same events are to the library. */
    private static final class Case {
        private final Figures figures;
        private final WeighingMethod method;
        private final long[] shown = new long[LINES];
        private final boolean[] written = new boolean[LINES];
        private final List<long[]> later = new ArrayList<>();
        private final long content;
        private final List<long[]> last = new ArrayList<>();

        Case(SplittableRandom r, WeighingMethod method) {
            this.figures = Figures.random(r);
            this.method = method;
            long sum = 0;
            for (int i = 0; i < LINES; i++) {
                shown[i] = r.nextLong(i == 0 ? 30 : 0, i == 0 ? 900 : 200) * STEP;
                written[i] = i == 0 || r.nextInt(4) > 0;
                sum += shown[i];
            }
            if (r.nextBoolean()) {
                later.add(new long[] {r.nextInt(LINES), r.nextLong(1, 60) * STEP});
                sum += later.get(0)[1];
            }
            boolean allWritten = written[1] && written[2] && written[3];
            this.content = allWritten && r.nextBoolean() ? sum - r.nextLong(0, shown[0] / STEP / 2 + 1) * STEP : 0;
            if (content > 0 && r.nextBoolean()) {
                last.add(new long[] {r.nextInt(LINES), r.nextLong(1, 60) * STEP});
            }
        }

        Readings readings() {
            Bench bench = Bench.of(figures.balance()).with(Vessel.of("beaker", mass(VESSEL)));
            WeighingPlan plan = WeighingPlan.of(Batch.of(FORMULA, BatchSize.ofMass("100 g")), bench);
            List<Reading> readings = new ArrayList<>();
            long sum = 0;
            for (int i = 0; i < LINES; i++) {
                sum = method == WeighingMethod.CUMULATIVE ? sum + shown[i] : shown[i];
                readings.add(
                        written[i]
                                ? Reading.of(FORMULA.lines().get(i), mass(sum))
                                : Reading.notWrittenDown(FORMULA.lines().get(i)));
            }
            return Readings.of(plan, method, readings);
        }

        MadeBatch made() {
            MadeBatch made = plus(MadeBatch.of(readings()), later);
            return content == 0
                    ? made
                    : plus(
                            Evaporation.of(made, mass(content), FORMULA.lines().get(0))
                                    .notAddedBack(),
                            last);
        }

        private static MadeBatch plus(MadeBatch made, List<long[]> additions) {
            return made.plus(additions.stream()
                    .map(a -> LineAddition.of(FORMULA.lines().get((int) a[0]), mass(a[1])))
                    .toList());
        }

        /** One course of events that shows all this; nothing if it asks for what cannot happen. */
        long[] truth(SplittableRandom random) {
            try {
                return course(random);
            } catch (IllegalStateException impossible) {
                return new long[0];
            }
        }

        private long[] course(SplittableRandom random) {
            World world = new World(figures, random);
            long[] masses = new long[LINES];
            long before = world.tare();
            for (int i = 0; i < LINES; i++) {
                if (method == WeighingMethod.CUMULATIVE) {
                    long after = world.reading();
                    masses[i] = world.possible(shown[i] + world.air(shown[i]) + after - before);
                    before = after;
                } else {
                    masses[i] = world.weighed(shown[i], method);
                }
            }
            add(world, masses, later);
            if (content > 0) {
                long now = world.weighed(content, WeighingMethod.TARE_EACH);
                masses[0] = world.possible(now - masses[1] - masses[2] - masses[3]);
                add(world, masses, last);
            }
            return masses;
        }

        private static void add(World world, long[] masses, List<long[]> additions) {
            additions.forEach(a -> masses[(int) a[0]] += world.weighed(a[1], WeighingMethod.TARE_EACH));
        }

        @Override
        public String toString() {
            return method + " " + figures + " shown " + java.util.Arrays.toString(shown) + " written "
                    + java.util.Arrays.toString(written) + " later "
                    + later.stream().map(java.util.Arrays::toString).toList() + " content " + content + " last "
                    + last.stream().map(java.util.Arrays::toString).toList();
        }
    }

    @ParameterizedTest
    @EnumSource(WeighingMethod.class)
    void nothing_that_can_happen_leaves_its_bounds(WeighingMethod method) {
        hold(method, 120, 30, 11);
    }

    @Tag("many")
    @ParameterizedTest
    @EnumSource(WeighingMethod.class)
    void nothing_that_can_happen_leaves_its_bounds_often(WeighingMethod method) {
        hold(method, 10_000, 60, 12);
    }

    private static void hold(WeighingMethod method, int cases, int courses, long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        int tried = 0;
        for (int i = 0; i < cases; i++) {
            Case it = new Case(random, method);
            MadeBatch made;
            try {
                made = it.made();
            } catch (IllegalArgumentException refused) {
                // More missing than there was, or nothing left after the boats: no bounds are given at all.
                continue;
            }
            List<Bounds> masses = made.lines().stream().map(MadeLine::bounds).toList();
            List<Bounds> shares =
                    made.lines().stream().map(MadeLine::possibleShares).toList();
            MadeMasses together = made.masses();
            for (int line = 0; line < LINES; line++) {
                assertEstimateInside(it, made.lines().get(line), together, line);
            }
            for (int course = 0; course < courses; course++) {
                long[] truth = it.truth(random);
                tried += truth.length;
                for (int line = 0; line < truth.length; line++) {
                    assertInside(it, "mass " + line, truth[line], GRAM, masses.get(line));
                    assertInside(it, "mass together " + line, truth[line], GRAM, massBounds(together, line));
                    long whole = truth[0] + truth[1] + truth[2] + truth[3];
                    if (whole > 0) {
                        assertInside(it, "share " + line, truth[line], whole, shares.get(line));
                        assertInside(it, "share together " + line, truth[line], whole, shareBounds(together, line));
                    }
                }
            }
        }
        assertThat(tried).as("courses that could be played").isGreaterThan(cases * courses);
    }

    /** One pour has one estimate, whoever is asked, and it lies in its own interval. */
    private static void assertEstimateInside(Case it, MadeLine line, MadeMasses together, int place) {
        assertThat(line.bounds().contains(line.grams()))
                .as("%s mass of %s", it, line)
                .isTrue();
        assertThat(line.possibleShares().contains(line.share().fraction()))
                .as("%s share of %s", it, line)
                .isTrue();
        LineCheck check = line.check(Tolerances.of("0.1 %"));
        if (check.allowed().greatest().compareTo(line.shareBounds().least()) < 0
                || check.allowed().least().compareTo(line.shareBounds().greatest()) > 0) {
            assertThat(check.verdict())
                    .as("%s %s", it, line)
                    .isEqualTo(line.isAssumed() ? ToleranceVerdict.NOT_KNOWN : ToleranceVerdict.OUTSIDE);
        }
        assertThat(estimate(together, place)).as("%s", it).isEqualTo(line.grams());
    }

    private static void assertInside(Case it, String what, long part, long whole, Bounds bounds) {
        Ratio low = bounds.lower().orElseThrow();
        Ratio high = bounds.upper().orElseThrow();
        boolean inside = compare(low, part, whole) <= 0 && compare(high, part, whole) >= 0;
        assertThat(inside)
                .as("%s: %s is %s/%s, outside %s", it, what, part, whole, bounds)
                .isTrue();
    }

    private static int compare(Ratio bound, long part, long whole) {
        return bound.numerator()
                .multiply(BigInteger.valueOf(whole))
                .compareTo(bound.denominator().multiply(BigInteger.valueOf(part)));
    }

    private static Amount<Mass> mass(long units) {
        return Amount.grams(Ratio.of(units, GRAM));
    }

    private static MadeBatch crooked(WeighingMethod method, String... shown) {
        Balance balance = Balance.of("0.1 g", "2 kg")
                .withErrors(ErrorModel.readabilityOnly().withLinearityOfNetReading("1 g"));
        Formula formula = Formula.inPercent("Trial")
                .line("Aqua", "70 %")
                .line("Glycerin", "20 %")
                .line("Active", "10 %")
                .build();
        WeighingPlan plan = WeighingPlan.of(Batch.of(formula, BatchSize.ofMass("100 g")), Bench.of(balance));
        List<Reading> readings = new ArrayList<>();
        for (int i = 0; i < shown.length; i++) {
            readings.add(
                    shown[i].isEmpty()
                            ? Reading.notWrittenDown(formula.lines().get(i))
                            : Reading.of(formula.lines().get(i), shown[i]));
        }
        return MadeBatch.of(Readings.of(plan, method, readings));
    }

    /** By hand: each tared weighing is good to 0.1 g of display and 1 g of linearity, before and after a loss alike. */
    @Test
    void the_same_pour_is_known_as_well_before_a_loss_as_after_it() {
        MadeBatch made = crooked(WeighingMethod.TARE_EACH, "70 g", "20 g", "10 g");
        LineAddition five = LineAddition.of(made.line("Active").line(), Amount.mass("5 g"));
        Bounds bounds = Bounds.closed(Ratio.parse("12.8"), Ratio.parse("17.2"));
        assertThat(made.plus(List.of(five)).line("Active").bounds()).isEqualTo(bounds);
        Evaporation loss =
                Evaporation.of(made, Amount.mass("95 g"), made.line("Aqua").line());
        MadeBatch after = loss.notAddedBack().plus(List.of(five));
        assertThat(after.line("Active").bounds()).isEqualTo(bounds);
        // 95 ± 1.1 less 20 ± 1.1 and 10 ± 1.1
        assertThat(after.line("Aqua").bounds()).isEqualTo(Bounds.closed(Ratio.parse("61.7"), Ratio.parse("68.3")));
    }

    /** By hand: 100 − 70 g between two readings, each good to 0.05 g and 1 g, are at most 32.1 g of either line. */
    @Test
    void lines_not_written_down_are_bounded_by_the_readings_around_them() {
        MadeBatch made = crooked(WeighingMethod.CUMULATIVE, "70 g", "", "100 g");
        Bounds bounds = Bounds.closed(Ratio.ZERO, Ratio.parse("32.1"));
        assertThat(made.line("Glycerin").bounds()).isEqualTo(bounds);
        assertThat(made.line("Active").bounds()).isEqualTo(bounds);
    }
}
