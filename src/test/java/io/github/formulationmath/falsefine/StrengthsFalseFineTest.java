package io.github.formulationmath.falsefine;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.formulationmath.quantity.Interval;
import io.github.formulationmath.quantity.MassFraction;
import io.github.formulationmath.quantity.VolumeFraction;
import io.github.formulationmath.solution.EthanolWater;
import io.github.formulationmath.solution.EthanolWater.Reference;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Strengths of alcohol by volume, of which the strength by mass is enclosed. Whether an end is too low or too high is decided here, with the
 * coefficients typed anew from Council Directive 76/766/EEC, in whole numbers alone.
 */
class StrengthsFalseFineTest {

    private static final List<String> A = List.of(
            "998.2012300",
            "-192.9769495",
            "389.1238958",
            "-1668.103923",
            "13522.15441",
            "-88292.78388",
            "306287.4042",
            "-613838.1234",
            "747017.2998",
            "-547846.1354",
            "223446.0334",
            "-39032.85426");
    private static final List<String> B = List.of(
            "-2.0618513e-1", "-5.2682542e-3", "3.6130013e-5", "-3.8957702e-7", "7.1693540e-9", "-9.9739231e-11");
    private static final List<List<String>> C = List.of(
            List.of(
                    "1.693443461530087e-1",
                    "-1.046914743455169e1",
                    "7.196353469546523e1",
                    "-7.047478054272792e2",
                    "3.924090430035045e3",
                    "-1.210164659068747e4",
                    "2.248646550400788e4",
                    "-2.605562982188164e4",
                    "1.852373922069467e4",
                    "-7.420201433430137e3",
                    "1.285617841998974e3"),
            List.of(
                    "-1.193013005057010e-2",
                    "2.517399633803461e-1",
                    "-2.170575700536993",
                    "1.353034988843029e1",
                    "-5.029988758547014e1",
                    "1.096355666577570e2",
                    "-1.422753946421155e2",
                    "1.080435942856230e2",
                    "-4.414153236817392e1",
                    "7.442971530188783"),
            List.of(
                    "-6.802995733503803e-4",
                    "1.876837790289664e-2",
                    "-2.002561813734156e-1",
                    "1.022992966719220",
                    "-2.895696483903638",
                    "4.810060584300675",
                    "-4.672147440794683",
                    "2.458043105903461",
                    "-5.411227621436812e-1"),
            List.of("4.075376675622027e-6", "-8.763058573471110e-6", "6.515031360099368e-6", "-1.515784836987210e-6"),
            List.of("-2.788074354782409e-8", "1.345612883493354e-8"));
    private static final int PLACES = 30;

    /** What the density at a temperature is a polynomial of, each coefficient as a whole number of one small unit. */
    private static final List<BigInteger> AT_20 = coefficients(0, 1);

    /** 60 °F are 140/9 °C, 40/9 degrees below 20 °C. */
    private static final List<BigInteger> AT_60_F = coefficients(-40, 9);

    private static List<BigInteger> coefficients(int top, int bottom) {
        List<BigInteger> all = new ArrayList<>();
        for (int k = 0; k < A.size(); k++) {
            BigInteger sum = whole(A.get(k), 0, top, bottom);
            for (int i = 1; i <= B.size(); i++) {
                if (k == 0) {
                    sum = sum.add(whole(B.get(i - 1), i, top, bottom));
                } else if (i <= C.size() && k <= C.get(i - 1).size()) {
                    sum = sum.add(whole(C.get(i - 1).get(k - 1), i, top, bottom));
                }
            }
            all.add(sum);
        }
        return List.copyOf(all);
    }

    /** Number times (top/bottom)^power, in units of 10⁻³⁰/bottom⁶. */
    private static BigInteger whole(String number, int power, int top, int bottom) {
        return new BigDecimal(number)
                .movePointRight(PLACES)
                .toBigIntegerExact()
                .multiply(BigInteger.valueOf(top).pow(power))
                .multiply(BigInteger.valueOf(bottom).pow(6 - power));
    }

    /** p·ρ(p) − q·ρ(1), its sign: below 0 where p is too weak for q. */
    private static int side(List<BigInteger> density, Exact p, Exact q) {
        BigInteger sum = BigInteger.ZERO;
        BigInteger all = BigInteger.ZERO;
        for (int k = 0; k < density.size(); k++) {
            sum = sum.add(density.get(k)
                    .multiply(p.top().pow(k + 1))
                    .multiply(p.bottom().pow(density.size() - k - 1)));
            all = all.add(density.get(k));
        }
        return sum.multiply(q.bottom())
                .compareTo(all.multiply(q.top()).multiply(p.bottom().pow(density.size())));
    }

    @Test
    void no_enclosure_of_a_strength_by_mass_misses_it() {
        Exact narrow = new Exact(BigInteger.ONE, BigInteger.TEN.pow(12));
        for (int seed = 0; seed < Cases.of(300, 100_000); seed++) {
            Dice dice = new Dice(seed);
            int percent = dice.between(0, 1_000_000);
            Reference reference = dice.of(Reference.AT_20_CELSIUS, Reference.AT_60_FAHRENHEIT);
            Interval<MassFraction> found = EthanolWater.byMass(
                    VolumeFraction.ofPercent(BigDecimal.valueOf(percent, 4).toPlainString()), reference);
            List<BigInteger> density = reference == Reference.AT_20_CELSIUS ? AT_20 : AT_60_F;
            Exact q = Exact.of(percent, 1_000_000);
            Exact least = Exact.read(found.least().fraction());
            Exact most = Exact.read(found.greatest().fraction());
            assertThat(side(density, least, q)).as("seed %s", seed).isNotPositive();
            assertThat(side(density, most, q)).as("seed %s", seed).isNotNegative();
            assertThat(most.minus(least)).isLessThanOrEqualTo(narrow);
        }
    }

    /** The coefficient 13.53… of C2,4 written 13.35… shifts strengths at 60 °F by more than an enclosure is wide. */
    @Test
    void a_damaged_coefficient_is_found_out() {
        List<BigInteger> damaged = new ArrayList<>(AT_60_F);
        damaged.set(4, damaged.get(4).add(whole("-0.18", 2, -40, 9)));
        Exact q = Exact.of(1, 2);
        Interval<MassFraction> found = EthanolWater.byMass(VolumeFraction.ofPercent("50"), Reference.AT_60_FAHRENHEIT);
        assertThat(side(damaged, Exact.read(found.least().fraction()), q)
                        * side(damaged, Exact.read(found.greatest().fraction()), q))
                .isPositive();
    }
}
