package io.github.formulationmath.solution;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.Interval;
import io.github.formulationmath.quantity.MassFraction;
import io.github.formulationmath.solution.StrengthBlend.Blended;
import io.github.formulationmath.solution.StrengthBlend.NotForEveryLot;
import io.github.formulationmath.solution.StrengthBlend.OutOfReach;
import io.github.formulationmath.weighing.Balance;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class StrengthBlendTest {

    private static final int CASES = 200 * Integer.getInteger("formulationmath.cases", 1);
    private static final Balance GRAM = Balance.of("1 g", "1000 g");

    private static MassFraction percent(long number) {
        return MassFraction.ofPercent(Ratio.of(number));
    }

    /** Stocks in whole per cents, prices and limits in whole numbers, and every blend of whole grams tried with integers alone. */
    @Test
    void answers_hold_against_every_blend_of_whole_grams() {
        Random random = new Random(1613);
        for (int run = 0; run < CASES; run++) {
            int whole = 4 + random.nextInt(9);
            int[] low = new int[3];
            int[] high = new int[3];
            int[] price = new int[3];
            int[] most = new int[3];
            List<Stock> stocks = new ArrayList<>();
            for (int i = 0; i < 3; i++) {
                low[i] = random.nextInt(95);
                high[i] = low[i] + (random.nextBoolean() ? 0 : random.nextInt(5));
                price[i] = random.nextInt(9);
                most[i] = random.nextInt(whole + 1);
                stocks.add(Stock.between("stock " + i, low[i] + " %", high[i] + " %")
                        .ofWhichThereIs(most[i] + " g")
                        .costing(price[i] + " EUR", "1 g"));
            }
            int least = random.nextInt(90);
            int greatest = least + random.nextInt(8);
            StrengthBlend blend =
                    StrengthBlend.between(percent(least), percent(greatest), Amount.mass(whole + " g"), stocks);
            int cheapest = Integer.MAX_VALUE;
            for (int a = 0; a <= most[0]; a++) {
                for (int b = 0; b <= most[1]; b++) {
                    int c = whole - a - b;
                    if (c < 0 || c > most[2]) {
                        continue;
                    }
                    boolean kept = a * low[0] + b * low[1] + c * low[2] >= least * whole
                            && a * high[0] + b * high[1] + c * high[2] <= greatest * whole;
                    if (kept) {
                        cheapest = Math.min(cheapest, a * price[0] + b * price[1] + c * price[2]);
                    }
                }
            }
            judge(blend, cheapest, low, high, new int[] {least, greatest, whole});
        }
    }

    private static void judge(StrengthBlend blend, int cheapest, int[] low, int[] high, int[] asked) {
        StrengthBlend.Answer answer = blend.cheapest();
        StrengthBlend.InSteps steps = blend.inSteps(GRAM);
        boolean some = cheapest < Integer.MAX_VALUE;
        if (some) {
            assertThat(answer).isInstanceOf(Blended.class);
            assertThat(((Blended) answer).cost().orElseThrow().number()).isLessThanOrEqualTo(Ratio.of(cheapest));
        }
        if (answer instanceof NotForEveryLot not) {
            assertThat(not.wouldDo()).isNotEqualTo(Interval.of(percent(asked[0]), percent(asked[1])));
        }
        if (steps.isCertain()) {
            assertThat(steps.blend().isPresent()).isEqualTo(some);
        }
        steps.blend().ifPresent(found -> {
            long least = 0;
            long most = 0;
            long all = 0;
            int i = 0;
            for (Amount<?> mass : found.masses().values()) {
                long grams = mass.canonical().toLongExact();
                least += grams * low[i];
                most += grams * high[i];
                all += grams;
                i++;
            }
            assertThat(all).isEqualTo(asked[2]);
            assertThat(least).isGreaterThanOrEqualTo((long) asked[0] * asked[2]);
            assertThat(most).isLessThanOrEqualTo((long) asked[1] * asked[2]);
        });
    }

    @Test
    void what_stands_in_the_way_is_told_with_what_would_open_it() {
        OutOfReach weak = (OutOfReach) StrengthBlend.to(
                        "60 %", Amount.mass("100 g"), List.of(Stock.of("50", "50 %"), Stock.diluent("Aqua")))
                .cheapest();
        assertThat(weak.reachable().orElseThrow()).isEqualTo(Interval.of(percent(0), percent(50)));
        assertThat(weak.wouldHelp().key()).isEqualTo("solution.needs-stronger");
        assertThat(weak.wouldHelp().arguments()).containsExactly("50 %", "10 %", "60 %");
        OutOfReach strong = (OutOfReach) StrengthBlend.to(
                        "10 %", Amount.mass("100 g"), List.of(Stock.of("50", "50 %"), Stock.of("20", "20 %")))
                .cheapest();
        assertThat(strong.wouldHelp().arguments()).containsExactly("20 %", "10 %", "10 %");
        OutOfReach little = (OutOfReach) StrengthBlend.to(
                        "50 %",
                        Amount.mass("100 g"), List.of(Stock.of("50", "50 %").ofWhichThereIs("99 g")))
                .cheapest();
        assertThat(little.reachable()).isEmpty();
    }

    @Test
    void a_target_that_would_do_for_every_lot_is_kept_when_it_is_asked_for() {
        List<Stock> stocks = List.of(Stock.between("H", "48 %", "52 %"), Stock.diluent("Aqua"));
        NotForEveryLot not = (NotForEveryLot)
                StrengthBlend.to("20 %", Amount.mass("100 g"), stocks).cheapest();
        assertThat(not.wouldDo()).isEqualTo(Interval.of(MassFraction.parse("19.2 %"), MassFraction.parse("20.8 %")));
        Blended blended = (Blended)
                StrengthBlend.between(not.wouldDo().least(), not.wouldDo().greatest(), Amount.mass("100 g"), stocks)
                        .cheapest();
        assertThat(blended.strength()).isEqualTo(not.wouldDo());
    }

    @Test
    void a_display_that_cannot_show_the_mass_is_refused() {
        StrengthBlend blend = StrengthBlend.to("50 %", Amount.mass("1.5 g"), List.of(Stock.of("50", "50 %")));
        assertThatThrownBy(() -> blend.inSteps(GRAM)).hasMessageContaining("no whole number of steps of 1 g");
        StrengthBlend much = StrengthBlend.to("50 %", Amount.mass("2 kg"), List.of(Stock.of("50", "50 %")));
        assertThatThrownBy(() -> much.inSteps(GRAM)).hasMessageContaining("the balance carries 1000 g");
    }
}
