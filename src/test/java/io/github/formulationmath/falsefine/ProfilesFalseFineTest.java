package io.github.formulationmath.falsefine;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.formulationmath.quantity.Interval;
import io.github.formulationmath.quantity.MassFraction;
import io.github.formulationmath.soap.Escapes;
import io.github.formulationmath.soap.FattyAcid;
import io.github.formulationmath.soap.FattyAcidProfile;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/**
 * Profiles of fatty acids with ranges. Of a quotient N/D over shares that make a whole, λ is the largest exactly if the largest N − λ·D is 0, and
 * that is found by filling the shares where they are worth most; so an answer of the library is neither too wide nor too narrow
 * by anything at all.
 */
class ProfilesFalseFineTest {

    /** In 10⁻⁵ g/mol: carbon, hydrogen, oxygen, iodine, potassium; IUPAC 2007. */
    private static final int C = 1_201_070;

    private static final int H = 100_794;
    private static final int O = 1_599_940;
    private static final int I = 12_690_447;
    private static final int K = 3_909_830;
    private static final long KOH = K + O + H;
    private static final long GLYCEROL_LESS_WATER = 3L * C + 8L * H + 3L * O - 3L * (2L * H + O);

    /** A range of shares in ten thousandths. */
    private record Range(FattyAcid acid, int least, int greatest) {

        long acidMass() {
            return (long) C * acid.carbons() + 2L * H * (acid.carbons() - acid.doubleBonds()) + 2L * O;
        }

        long mass(boolean methyl) {
            return acidMass() + (methyl ? C + 2L * H : 0);
        }
    }

    private record Drawn(List<Range> ranges, boolean methyl) {

        FattyAcidProfile profile() {
            Map<FattyAcid, Interval<MassFraction>> shares = new LinkedHashMap<>();
            for (Range range : ranges) {
                shares.put(range.acid(), Interval.of(share(range.least()), share(range.greatest())));
            }
            return methyl ? FattyAcidProfile.ofMethylEsters(shares) : FattyAcidProfile.ofAcids(shares);
        }

        /** The largest Σ w·(p − λ·q), or the least: the rest goes where it is worth most, or least. */
        Exact best(List<Exact> worth, boolean most) {
            List<Integer> order = new ArrayList<>();
            long left = 10_000;
            Exact sum = Exact.ZERO;
            for (int j = 0; j < ranges.size(); j++) {
                order.add(j);
                left -= ranges.get(j).least();
                sum = sum.plus(worth.get(j).times(ranges.get(j).least()));
            }
            Comparator<Integer> byWorth = Comparator.comparing(worth::get);
            order.sort(most ? byWorth.reversed() : byWorth);
            for (int j : order) {
                long put =
                        Math.min(left, ranges.get(j).greatest() - ranges.get(j).least());
                sum = sum.plus(worth.get(j).times(put));
                left -= put;
            }
            return sum;
        }
    }

    private static MassFraction share(int tenThousandths) {
        return MassFraction.parse(BigDecimal.valueOf(tenThousandths, 2).toPlainString() + " %");
    }

    private static Drawn any(Dice dice) {
        TreeSet<FattyAcid> acids = new TreeSet<>();
        int count = dice.between(1, 9);
        while (acids.size() < count) {
            int carbons = dice.oneIn(8) ? dice.between(5, 25) : 2 * dice.between(3, 12);
            acids.add(new FattyAcid(carbons, carbons < 14 ? 0 : dice.between(0, 3)));
        }
        int left = 10_000;
        List<Range> ranges = new ArrayList<>();
        for (FattyAcid acid : acids) {
            boolean last = ranges.size() == count - 1;
            int part = last ? left : dice.between(0, left);
            left -= part;
            int down = dice.oneIn(3) ? 0 : dice.between(0, part);
            int up = dice.oneIn(3) ? 0 : dice.between(0, 10_000 - part);
            ranges.add(new Range(acid, part - down, part + up));
        }
        return new Drawn(ranges, dice.oneIn(3));
    }

    /** Of each acid the numerator less λ times the denominator, for a share of 1. */
    private interface Worth {
        Exact of(Range range);
    }

    private static void assertEnd(Drawn drawn, Worth worth, boolean most, long seed) {
        Exact best = drawn.best(drawn.ranges().stream().map(worth::of).toList(), most);
        assertThat(best.top().signum())
                .as("seed %s, most %s: %s", seed, most, drawn)
                .isZero();
    }

    private static Exact over(Exact number, long mass) {
        return number.over(Exact.of(mass));
    }

    @Test
    void no_bound_from_a_profile_is_too_wide_or_too_narrow() {
        for (int seed = 0; seed < Cases.of(200, 100_000); seed++) {
            Drawn drawn = any(new Dice(seed));
            FattyAcidProfile profile = drawn.profile();
            var value = profile.saponificationValue(Escapes.none());
            var iodine = profile.iodineValue();
            for (boolean most : new boolean[] {false, true}) {
                Exact v = number(most ? value.greatest() : value.least()).over(Exact.of(1000));
                // v = 3 KOH / (3/S + c), so that S = 3v / (3 KOH − c·v): moles of acid in a gram of acids.
                Exact s = lowest(v.times(3).over(Exact.of(3 * KOH).minus(v.times(GLYCEROL_LESS_WATER))));
                assertEnd(
                        drawn,
                        range -> over(Exact.of(1).minus(s.times(range.acidMass())), range.mass(drawn.methyl())),
                        most,
                        seed);
                Exact i = number(most ? iodine.greatest() : iodine.least());
                assertEnd(
                        drawn,
                        range -> over(
                                Exact.of(300L * 2 * I * range.acid().doubleBonds())
                                        .minus(i.times(3 * range.acidMass() + GLYCEROL_LESS_WATER)),
                                range.mass(drawn.methyl())),
                        most,
                        seed);
            }
        }
    }

    /** The number before the unit. */
    private static Exact number(Object answer) {
        String text = answer.toString();
        return Exact.read(text.substring(0, text.indexOf(' ')));
    }

    private static Exact lowest(Exact number) {
        BigInteger common = number.top().gcd(number.bottom());
        return new Exact(number.top().divide(common), number.bottom().divide(common));
    }

    /** The middle of a single range for the truth makes the ends of the whole narrower than they are. */
    @Test
    void the_middle_of_a_range_for_the_truth_is_found_out() {
        int narrower = 0;
        for (int seed = 0; seed < 200; seed++) {
            Drawn drawn = any(new Dice(seed));
            List<Range> other = new ArrayList<>(drawn.ranges());
            Range first = other.get(0);
            int middle = (first.least() + first.greatest()) / 2;
            other.set(0, new Range(first.acid(), middle, middle));
            if (other.stream().mapToInt(Range::least).sum() <= 10_000
                    && other.stream().mapToInt(Range::greatest).sum() >= 10_000) {
                var all = drawn.profile().saponificationValue(Escapes.none());
                var one = new Drawn(other, drawn.methyl()).profile().saponificationValue(Escapes.none());
                assertThat(all.contains(one.least()) && all.contains(one.greatest()))
                        .isTrue();
                narrower += one.equals(all) ? 0 : 1;
            }
        }
        assertThat(narrower).isGreaterThan(50);
    }
}
