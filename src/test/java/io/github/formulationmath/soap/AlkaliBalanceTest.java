package io.github.formulationmath.soap;

import static io.github.formulationmath.support.Bar.EXAMPLE;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.number.Rounding;
import io.github.formulationmath.plan.OverloadException;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.support.Bar;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.weighing.WeighingMethod;
import java.util.Map;
import java.util.Random;
import javax.measure.quantity.Mass;
import org.junit.jupiter.api.Test;

/** A kilo of three fats with masses in boxes of their own; every figure was worked out by hand in fractions beforehand. */
class AlkaliBalanceTest {

    private static Fat fat(String name, String least, String greatest, String inert) {
        return Fat.triglycerides(
                name,
                SaponificationValue.ofStandard(least + " mg KOH/g", greatest + " mg KOH/g", EXAMPLE),
                InertMatter.atMost(inert));
    }

    private static Soap soap(String inert) {
        Formula formula = Formula.inMasses("bar")
                .line("Olea Europaea Fruit Oil", "700 g")
                .line("Cocos Nucifera Oil", "200 g")
                .line("Butyrospermum Parkii Butter", "100 g")
                .line("Sodium Hydroxide", "139.6 g")
                .line("Aqua", "300 g")
                .build();
        return Soap.of(formula)
                .fat("Olea Europaea Fruit Oil", fat("olive", "184", "196", inert))
                .fat("Cocos Nucifera Oil", fat("coconut", "248", "265", inert))
                .fat("Butyrospermum Parkii Butter", fat("shea", "160", "195", inert))
                .alkali("Sodium Hydroxide", Bar.FLAKES)
                .neither("Aqua");
    }

    /** Independent masses, each so much about its target. */
    private record Box(Map<Integer, Ratio> target, Map<Integer, Ratio> error) implements MassRange {

        @Override
        public Amount<Mass> unit() {
            return Amount.grams(Ratio.ONE);
        }

        @Override
        public Ratio sum(Map<Integer, Ratio> weights, boolean largest) {
            Ratio sum = Ratio.ZERO;
            for (Map.Entry<Integer, Ratio> w : weights.entrySet()) {
                boolean up = w.getValue().signum() > 0 == largest;
                Ratio e = error.get(w.getKey());
                sum = sum.plus(w.getValue().times(target.get(w.getKey()).plus(up ? e : e.unaryMinus())));
            }
            return sum;
        }

        @Override
        public Ratio quotient(Map<Integer, Ratio> upper, Map<Integer, Ratio> lower, boolean largest) {
            return sum(upper, largest).dividedBy(sum(lower, !largest));
        }
    }

    private static AlkaliBalance balance(Soap soap, String alkali, String fatError, String alkaliError) {
        Ratio e = Ratio.parse(fatError);
        return new AlkaliBalance(
                soap,
                new Box(
                        Map.of(
                                0,
                                Ratio.of(700),
                                1,
                                Ratio.of(200),
                                2,
                                Ratio.of(100),
                                3,
                                Ratio.parse(alkali),
                                4,
                                Ratio.of(300)),
                        Map.of(0, e, 1, e, 2, e, 3, Ratio.parse(alkaliError), 4, e)),
                false,
                true);
    }

    private static String down(Ratio share) {
        return Rounding.toDecimalPlaces(3).apply(share).toString();
    }

    @Test
    void the_balance_widens_the_shortfall_and_the_last_tenth_of_a_gram_decides() {
        AlkaliBalance made = balance(soap("0 %"), "139.6", "0.2", "0.1");
        assertThat(down(made.shortfall().least().exactValue())).isEqualTo("0.143");
        assertThat(down(made.shortfall().greatest().exactValue())).isEqualTo("9.541");
        assertThat(down(made.excess().greatest().exactValue())).isEqualTo("-0.198");
        assertThat(made.verdict()).isEqualTo(HydroxideVerdict.NO_HYDROXIDE_LEFT);
        assertThat(balance(soap("0 %"), "139.8", "0.2", "0.1").verdict()).isEqualTo(HydroxideVerdict.NO_HYDROXIDE_LEFT);
        assertThat(balance(soap("0 %"), "139.9", "0.2", "0.1").verdict()).isEqualTo(HydroxideVerdict.NOT_SHOWN);
        assertThat(balance(soap("0 %"), "155", "0.2", "0.1").verdict()).isEqualTo(HydroxideVerdict.HYDROXIDE_LEFT);
    }

    @Test
    void a_seventh_of_a_per_cent_of_water_in_the_fats_breaks_it() {
        assertThat(balance(soap("0.143 %"), "139.6", "0.2", "0.1").verdict())
                .isEqualTo(HydroxideVerdict.NO_HYDROXIDE_LEFT);
        AlkaliBalance broken = balance(soap("0.15 %"), "139.6", "0.2", "0.1");
        assertThat(broken.verdict()).isEqualTo(HydroxideVerdict.NOT_SHOWN);
        assertThat(down(broken.excess().greatest().exactValue())).isEqualTo("0.009");
    }

    @Test
    void carbonate_counts_as_free_alkali_and_not_as_hydroxide() {
        AlkaliBalance made = balance(soap("0 %"), "139.6", "0.2", "0.1");
        // 2 % of 139.7 g are 2.794 g Na2CO3, with 0.75474 g NaOH a gram.
        assertThat(down(made.carbonate().greatest().exactValue())).isEqualTo("2.109");
        assertThat(made.totalFreeAlkali().greatest()).isEqualTo(made.carbonate().greatest());
        assertThat(made.widths().get(0).line()).isEqualTo("Olea Europaea Fruit Oil");
    }

    @Test
    void nothing_is_shown_while_a_line_is_undeclared() {
        Formula formula = Formula.inMasses("bar")
                .line("Olea Europaea Fruit Oil", "700 g")
                .line("Sodium Silicate", "1 g")
                .build();
        Soap open = Soap.of(formula).fat("Olea Europaea Fruit Oil", fat("olive", "184", "196", "0 %"));
        AlkaliBalance made = new AlkaliBalance(
                open,
                new Box(Map.of(0, Ratio.of(700), 1, Ratio.ONE), Map.of(0, Ratio.ZERO, 1, Ratio.ZERO)),
                false,
                true);
        assertThat(made.verdict()).isEqualTo(HydroxideVerdict.NOT_SHOWN);
        assertThat(made.undeclared()).hasSize(1);
    }

    /** The short way from a calculation to its judgement leads to the same as the long one over formula, batch and plan. */
    @Test
    void a_calculation_is_judged_as_its_plan_is() {
        Random random = new Random(7);
        for (int i = 0; i < 60; i++) {
            LyeBuilder builder = LyeCalculation.named("bar " + i);
            for (int fat = 0; fat <= random.nextInt(8); fat++) {
                int least = 180 + random.nextInt(60);
                builder.fat(
                        Bar.fat("Fat " + fat, String.valueOf(least), String.valueOf(least + random.nextInt(12))),
                        10 + random.nextInt(9000) / 10.0 + " g");
            }
            if (random.nextBoolean()) {
                builder.acid(Acid.of("Citric Acid", "C6H8O7·H2O", 3, "99 %", "100 %"), 1 + random.nextInt(9) + " g");
            }
            if (random.nextBoolean()) {
                builder.neither("Parfum", "0.3 g");
            }
            LyeCalculation lye = builder.alkali(
                            Bar.SOAP.alkaliOf("Sodium Hydroxide").orElseThrow())
                    .leaving(Unsaponified.alkaliShortfall(random.nextInt(9) + " %"), Reckoned.WITH_THE_MIDDLES)
                    .water("Aqua", LyeWater.perAlkali("2", LyeWater.Of.PURE_HYDROXIDE))
                    .build();
            Balance balance = Balance.of(i % 2 == 0 ? "0.1 g" : "1 g", "20 kg");
            WeighingMethod method = WeighingMethod.values()[i % WeighingMethod.values().length];
            AlkaliBalance short1 = AlkaliBalance.of(lye, balance, method);
            AlkaliBalance long1 = AlkaliBalance.of(lye.soap(), lye.expectedOn(balance, method));
            assertThat(short1.excess()).isEqualTo(long1.excess());
            assertThat(short1.shortfall()).isEqualTo(long1.shortfall());
            assertThat(short1.carbonate()).isEqualTo(long1.carbonate());
            assertThat(short1.widths()).isEqualTo(long1.widths());
            assertThat(short1).hasToString(long1.toString());
        }
    }

    @Test
    void what_cannot_be_weighed_is_refused_on_the_short_way_too() {
        LyeCalculation lye = LyeCalculation.named("bar")
                .fat(Bar.fat("Olive", "184", "196"), "1000 g")
                .alkali(Bar.SOAP.alkaliOf("Sodium Hydroxide").orElseThrow())
                .leaving(Unsaponified.alkaliShortfall("2 %"), Reckoned.FOR_EVERY_LOT)
                .water("Aqua", LyeWater.ofFats("33 %"))
                .build();
        assertThatThrownBy(() -> AlkaliBalance.of(lye, Balance.of("0.1 g", "1 kg"), WeighingMethod.TARE_EACH))
                .isInstanceOf(OverloadException.class)
                .hasMessageContaining("make less");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> AlkaliBalance.of(lye, Balance.of("500 g", "5 kg"), WeighingMethod.TARE_EACH))
                .withMessageContaining("Sodium Hydroxide is ≈ 129.847 g")
                .withMessageContaining("shows nothing of it");
    }
}
