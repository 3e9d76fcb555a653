package io.github.formulationmath.solution;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.formulationmath.chemistry.MolarMass;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.Interval;
import io.github.formulationmath.quantity.MassConcentration;
import io.github.formulationmath.reckoning.Source;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/**
 * Random solutions, made from whole numbers, against a charge balance of our own: decimals of sixty digits, another way to powers of
 * ten, plain halving. Nothing of the library is used but what is judged.
 */
class ChargeBalanceOracleTest {

    private static final int FACTOR = Math.max(1, Integer.getInteger("formulationmath.cases", 1));
    private static final MathContext SIXTY = new MathContext(60);
    private static final BigDecimal LN10 =
            new BigDecimal("2.302585092994045684017991454684364207601101488628772976033327900967572609677352");
    private static final MolarMass ANY = Acids.mass("C");

    /** Millionths of mol/L, thousandths of pK, the charge of the whole acid, cations of one unit; no pK: strong. */
    private record Part(int least, int greatest, List<Integer> pks, int off, int charge, int cations) {}

    private record Case(int pkw, int off, List<Part> parts) {}

    @Test
    void the_charge_changes_its_sign_within_the_enclosure() {
        SplittableRandom random = new SplittableRandom(4_711);
        int told = 0;
        for (int i = 0; i < (FACTOR > 1 ? 100_000 : 1000); i++) {
            Case one = random(random, false);
            Interval<Ph> ph = ph(one);
            if (ph == null) {
                assertThat(f(one, BigDecimal.ZERO).signum() <= 0
                                || f(one, BigDecimal.valueOf(14)).signum() >= 0)
                        .as("refused %s", one)
                        .isTrue();
                continue;
            }
            told++;
            assertThat(f(one, decimal(ph.least()))).as("%s of %s", ph, one).isNotNegative();
            assertThat(f(one, decimal(ph.greatest()))).as("%s of %s", ph, one).isNotPositive();
            assertThat(decimal(ph.greatest()).subtract(decimal(ph.least())))
                    .isLessThanOrEqualTo(new BigDecimal("2e-9"));
        }
        assertThat(told).isGreaterThan(400);
    }

    @Test
    void the_root_found_by_halving_lies_within() {
        SplittableRandom random = new SplittableRandom(815);
        for (int i = 0; i < 30 * FACTOR; i++) {
            Case one = random(random, false);
            Interval<Ph> ph = ph(one);
            if (ph != null) {
                BigDecimal root = root(one);
                assertThat(root)
                        .isBetween(
                                decimal(ph.least()).subtract(new BigDecimal("1e-12")),
                                decimal(ph.greatest()).add(new BigDecimal("1e-12")));
            }
        }
    }

    /** Whatever is picked inside of the ranges has its root inside; and the worst corner comes as near as the enclosure is wide. */
    @Test
    void ranges_hold_every_choice_and_no_more() {
        SplittableRandom random = new SplittableRandom(99);
        int told = 0;
        for (int i = 0; i < 150 * FACTOR; i++) {
            Case one = random(random, true);
            Interval<Ph> ph = ph(one);
            if (ph == null) {
                continue;
            }
            told++;
            for (int k = 0; k < 4; k++) {
                Case chosen = chosen(one, random);
                assertThat(f(chosen, decimal(ph.least())))
                        .as("%s of %s", ph, chosen)
                        .isNotNegative();
                assertThat(f(chosen, decimal(ph.greatest())))
                        .as("%s of %s", ph, chosen)
                        .isNotPositive();
            }
            BigDecimal near = new BigDecimal("3e-9");
            assertThat(extreme(one, decimal(ph.least()).add(near), false)).isNotPositive();
            assertThat(extreme(one, decimal(ph.greatest()).subtract(near), true))
                    .isNotNegative();
        }
        assertThat(told).isGreaterThan(40);
    }

    /** The amount found is put in, and the pH is the one that was wanted. */
    @Test
    void an_amount_to_reach_a_ph_reaches_it() {
        SplittableRandom random = new SplittableRandom(7);
        int reached = 0;
        for (int i = 0; i < 150 * FACTOR; i++) {
            Case one = random(random, false);
            Ratio target = Ratio.of(random.nextInt(2_000, 12_000), 1000);
            int steps = random.nextInt(1, 4);
            int charge = random.nextInt(0, 2);
            AcidConstants added = constants(new Part(0, 0, pks(random, steps, 0), 0, charge, 0), 0);
            int cations = random.nextInt(-charge, steps - charge + 1);
            Interval<MassConcentration> needed;
            try {
                needed = balance(one).toReach(target.toString(), added, ANY, cations);
            } catch (IllegalArgumentException notReached) {
                continue;
            }
            reached++;
            for (MassConcentration each : List.of(needed.least(), needed.greatest())) {
                Interval<Ph> ph = balance(one).with(added, ANY, each, cations).ph();
                assertThat(ph.least().value().minus(target).abs()).isLessThan(Ratio.parse("3e-9"));
                assertThat(ph.greatest().value().minus(target).abs()).isLessThan(Ratio.parse("3e-9"));
            }
        }
        assertThat(reached).isGreaterThan(20);
    }

    @Test
    void a_root_on_a_grid_point_is_found() {
        assertThat(Acids.water("14").ph()).hasToString("[7, 7]");
        assertThat(Acids.water("13").ph()).hasToString("[6.499999999, 6.500000001]");
    }

    @Test
    void what_the_model_does_not_hold_for_is_refused() {
        ChargeBalance strong = Acids.water("14").withStrong(ANY, Acids.moles("1.5", ANY), 1);
        assertThatThrownBy(strong::ph).hasMessageContaining("outside 0 to 14");
        assertThatThrownBy(() -> Acids.water("14").toReach("14.5", Acids.acid("4.2"), ANY, 0))
                .hasMessageContaining("between 0 and 14");
        ChargeBalance sour = Acids.water("14").withStrong(ANY, Acids.moles("0.1", ANY), -1);
        assertThatThrownBy(() -> sour.toReach("5", Acids.acid("4.2"), ANY, 0))
                .hasMessageContaining("add a base instead of an acid");
        AcidConstants cold = new AcidConstants(
                "azelaic acid",
                List.of(Interval.of(Ph.parse("4.55"), Ph.parse("4.55"))),
                0,
                Amount.temperature("20 °C"),
                IonicStrength.ZERO,
                Source.published("test", ""));
        assertThatThrownBy(() -> Acids.water("14").with(cold, ANY, Acids.moles("0.1", ANY), 0))
                .hasMessageContaining("hold at 20 °C")
                .hasMessageContaining("measured at the same");
    }

    // What is judged.

    private static ChargeBalance balance(Case one) {
        ChargeBalance balance = ChargeBalance.of(constants(new Part(0, 0, List.of(one.pkw), one.off, 0, 0), one.off));
        for (Part part : one.parts) {
            Interval<MassConcentration> range = Interval.of(
                    Acids.moles(Ratio.of(part.least, 1_000_000), ANY),
                    Acids.moles(Ratio.of(part.greatest, 1_000_000), ANY));
            balance = part.pks.isEmpty()
                    ? balance.withStrong(ANY, range, part.cations)
                    : balance.with(constants(part, part.off), ANY, range, part.cations);
        }
        return balance;
    }

    private static Interval<Ph> ph(Case one) {
        try {
            return balance(one).ph();
        } catch (IllegalArgumentException outside) {
            assertThat(outside).hasMessageContaining("outside 0 to 14");
            return null;
        }
    }

    private static AcidConstants constants(Part part, int off) {
        return new AcidConstants(
                "acid",
                part.pks.stream()
                        .map(pk -> Interval.of(Ph.of(Ratio.of(pk - off, 1000)), Ph.of(Ratio.of(pk + off, 1000))))
                        .toList(),
                part.charge,
                Amount.temperature("25 °C"),
                IonicStrength.ZERO,
                Source.published("test", ""));
    }

    // Chance.

    private static Case random(SplittableRandom random, boolean ranges) {
        List<Part> parts = new ArrayList<>();
        int count = random.nextInt(1, 4);
        for (int i = 0; i < count; i++) {
            int steps = random.nextInt(0, 4);
            int most = (int) Math.pow(10, 6 * random.nextDouble());
            int least = ranges ? random.nextInt(0, most + 1) : most;
            int off = ranges ? random.nextInt(0, 80) : 0;
            int charge = random.nextInt(0, 2);
            int cations = steps == 0 ? random.nextInt(-1, 2) : random.nextInt(-charge, steps - charge + 1);
            parts.add(new Part(least, most, pks(random, steps, off), off, charge, cations));
        }
        return new Case(random.nextInt(13_500, 14_500), ranges ? random.nextInt(0, 20) : 0, parts);
    }

    private static List<Integer> pks(SplittableRandom random, int steps, int off) {
        return random.ints(steps, 1_000 + off, 13_000).sorted().boxed().toList();
    }

    private static Case chosen(Case one, SplittableRandom random) {
        List<Part> parts = new ArrayList<>();
        for (Part part : one.parts) {
            int amount = random.nextBoolean()
                    ? random.nextInt(part.least, part.greatest + 1)
                    : random.nextBoolean() ? part.least : part.greatest;
            List<Integer> pks = part.pks.stream()
                    .map(pk -> pk + random.nextInt(-part.off, part.off + 1))
                    .toList();
            parts.add(new Part(amount, amount, pks, 0, part.charge, part.cations));
        }
        return new Case(one.pkw + random.nextInt(-one.off, one.off + 1), 0, parts);
    }

    /** F at a pH over all corners of concentration, constants at one end. */
    private static BigDecimal extreme(Case one, BigDecimal ph, boolean greatest) {
        int sign = greatest ? 1 : -1;
        BigDecimal worst = null;
        for (int corner = 0; corner < 1 << one.parts.size(); corner++) {
            List<Part> parts = new ArrayList<>();
            for (int i = 0; i < one.parts.size(); i++) {
                Part part = one.parts.get(i);
                int amount = (corner >> i & 1) == 0 ? part.least : part.greatest;
                List<Integer> pks =
                        part.pks.stream().map(pk -> pk + sign * part.off).toList();
                parts.add(new Part(amount, amount, pks, 0, part.charge, part.cations));
            }
            BigDecimal f = f(new Case(one.pkw + sign * one.off, 0, parts), ph);
            worst = worst == null ? f : greatest ? worst.max(f) : worst.min(f);
        }
        return worst;
    }

    // The other charge balance.

    private static BigDecimal root(Case one) {
        BigDecimal low = BigDecimal.ZERO;
        BigDecimal high = BigDecimal.valueOf(14);
        for (int i = 0; i < 50; i++) {
            BigDecimal middle = low.add(high).divide(BigDecimal.valueOf(2));
            if (f(one, middle).signum() > 0) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low;
    }

    private static BigDecimal f(Case one, BigDecimal ph) {
        BigDecimal sum = ten(ph.negate()).subtract(ten(ph.subtract(thousandths(one.pkw))));
        for (Part part : one.parts) {
            BigDecimal above = BigDecimal.ZERO;
            BigDecimal below = BigDecimal.ONE;
            BigDecimal exponent = BigDecimal.ZERO;
            for (int j = 1; j <= part.pks.size(); j++) {
                exponent = exponent.add(ph).subtract(thousandths(part.pks.get(j - 1)));
                BigDecimal ratio = ten(exponent);
                above = above.add(ratio.multiply(BigDecimal.valueOf(j)));
                below = below.add(ratio);
            }
            int charge = part.cations + (part.pks.isEmpty() ? 0 : part.charge);
            sum = sum.add(BigDecimal.valueOf(part.least, 6)
                    .multiply(BigDecimal.valueOf(charge).subtract(above.divide(below, SIXTY))));
        }
        return sum;
    }

    private static BigDecimal thousandths(int value) {
        return BigDecimal.valueOf(value, 3);
    }

    private static BigDecimal decimal(Ph ph) {
        return ph.value().toBigDecimal();
    }

    /** e^(x ln 10 / 16) by its series around the nearest whole exponent, to the sixteenth power. */
    private static BigDecimal ten(BigDecimal exponent) {
        int whole = exponent.setScale(0, java.math.RoundingMode.HALF_EVEN).intValueExact();
        BigDecimal x =
                exponent.subtract(BigDecimal.valueOf(whole)).multiply(LN10).divide(BigDecimal.valueOf(16));
        BigDecimal term = BigDecimal.ONE;
        BigDecimal sum = BigDecimal.ONE;
        for (int k = 1; k < 34; k++) {
            term = term.multiply(x, SIXTY).divide(BigDecimal.valueOf(k), SIXTY);
            sum = sum.add(term, SIXTY);
        }
        return sum.pow(16, SIXTY).scaleByPowerOfTen(whole);
    }
}
