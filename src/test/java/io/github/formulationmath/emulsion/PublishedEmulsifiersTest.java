package io.github.formulationmath.emulsion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.formulationmath.emulsion.OilPhase.Emulsion;
import io.github.formulationmath.emulsion.OilPhase.Oil;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.number.Rounding;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.Interval;
import io.github.formulationmath.quantity.MassFraction;
import io.github.formulationmath.reckoning.Source;
import io.github.formulationmath.soap.AlkaliNumber;
import io.github.formulationmath.weighing.Balance;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Figures of emulsifiers that are printed in papers, and the slips in them. */
class PublishedEmulsifiersTest {

    private static final Source SHEET = Source.published("maker's sheet", "table");

    private static Emulsifier grade(String name, String hlb) {
        return Emulsifier.of(name, hlb, "0", SHEET);
    }

    private static String shown(Ratio value, int places) {
        return Rounding.toDecimalPlaces(places).format(value);
    }

    private static Interval<Hlb> point(String hlb) {
        return Hlb.within(hlb, "0");
    }

    /** PMC4137601, table 2: 9:1 and 8:2 of 15.0 and 4.3. */
    @ParameterizedTest
    @CsvSource({"90, 10, 13.93", "80, 20, 12.86"})
    void values_of_blends_are_those_of_the_paper(String high, String low, String printed) {
        Interval<Hlb> value = EmulsifierBlend.valueOf(Map.of(
                grade("polysorbate 80", "15.0"), MassFraction.ofPercent(high),
                grade("sorbitan oleate", "4.3"), MassFraction.ofPercent(low)));
        assertThat(value).isEqualTo(point(printed));
    }

    /**
     * PMC3969497, table 1. The third pair, 6.3/93.2, does not make 100 and is a misprint of 93.8; the last, 11.2/88.9, makes 100.1 and is a
     * misprint of 11.1.
     */
    @ParameterizedTest
    @CsvSource({
        "8, 16.7, 4.3, 29.839, 29.8, 70.2",
        "11, 16.7, 8.6, 29.630, 29.6, 70.4",
        "9, 15, 8.6, 6.250, 6.3, 93.8",
        "9.5, 16.7, 8.6, 11.111, 11.1, 88.9"
    })
    void shares_of_pairs_are_those_of_the_paper_but_for_two_misprints(
            String target, String high, String low, String exact, String printedHigh, String printedLow) {
        EmulsifierBlend blend = EmulsifierBlend.to(Hlb.parse(target), List.of(grade("H", high), grade("L", low)));
        Interval<MassFraction> share = blend.range("H").orElseThrow();
        assertThat(share.least()).isEqualTo(share.greatest());
        assertThat(shown(share.least().percent(), 3)).isEqualTo(exact);
        assertThat(share.least().percent().minus(Ratio.parse(printedHigh)).abs())
                .isLessThanOrEqualTo(Ratio.parse("0.05"));
        assertThat(Ratio.of(100)
                        .minus(share.least().percent())
                        .minus(Ratio.parse(printedLow))
                        .abs())
                .isLessThanOrEqualTo(Ratio.parse("0.05"));
    }

    /** OCL 2022, ocl210096, table 4, F1 to F3: sums of unrounded parts. Glyceryl stearate (3.8) stands among the oils there, which is questionable. */
    @ParameterizedTest
    @CsvSource({"12.5, 10.3309, 10.33", "10.5, 10.0391, 10.04", "8.5, 9.7083, 9.71"})
    void required_values_are_those_of_the_paper(String stearicAcid, String exact, String printed) {
        OilPhase phase = OilPhase.of(
                Emulsion.OIL_IN_WATER,
                List.of(
                        oil("beeswax", "1.5", "12"),
                        oil("isopropyl myristate", "7.5", "11.5"),
                        oil("glyceryl stearate", "7.5", "3.8"),
                        oil("stearic acid", stearicAcid, "15"),
                        oil("fifth oil", "5", "6.2")));
        assertThat(shown(phase.required().value(), 4)).isEqualTo(exact);
        assertThat(shown(phase.required().value(), 2)).isEqualTo(printed);
        phase.required().origin().working().check();
    }

    private static Oil oil(String name, String grams, String required) {
        return new Oil(name, Amount.mass(grams + " g"), Emulsion.OIL_IN_WATER, point(required), SHEET);
    }

    /**
     * A formulator's page of 2011: 1 % of 11.5 and 3 % of 15.5 require 14.5, which 3.8 and 18.8 reach with 28.67 and 71.33 %. The page adds that "two
     * values must add up to well over 15"; that is no rule: the target has to lie between them.
     */
    @Test
    void a_page_has_the_right_shares_and_a_wrong_rule() {
        OilPhase phase =
                OilPhase.of(Emulsion.OIL_IN_WATER, List.of(oil("palmitate", "1", "11.5"), oil("alcohol", "3", "15.5")));
        assertThat(phase.required()).isEqualTo(Hlb.parse("14.5"));
        EmulsifierBlend blend = EmulsifierBlend.to(
                phase.required(), List.of(grade("glyceryl stearate", "3.8"), grade("PEG-100 stearate", "18.8")));
        assertThat(shown(blend.range("PEG-100 stearate").orElseThrow().least().percent(), 3))
                .isEqualTo("71.333");
        assertThat(shown(blend.range("glyceryl stearate").orElseThrow().least().percent(), 3))
                .isEqualTo("28.667");
        // 4.3 + 8.6 is below 15 and reaches 6; 18.8 + 16.7 is far above it and does not reach 14.5.
        assertThat(EmulsifierBlend.to(Hlb.parse("6"), List.of(grade("a", "4.3"), grade("b", "8.6")))
                        .cheapest())
                .isInstanceOf(EmulsifierBlend.Blended.class);
        EmulsifierBlend.OutOfReach none = (EmulsifierBlend.OutOfReach)
                EmulsifierBlend.to(Hlb.parse("14.5"), List.of(grade("a", "18.8"), grade("b", "16.7")))
                        .cheapest();
        assertThat(none.wouldHelp().key()).isEqualTo("emulsion.needs-lower");
        assertThat(none.wouldHelp().arguments()).containsExactly("16.7", "2.2", "14.5");
    }

    /** IUPAC Gold Book 15196: sodium lauryl sulfate has 40; Davies gives it exactly, with 38.7 and not with the 38.6 of one copy. */
    @Test
    void sodium_lauryl_sulfate_has_forty() {
        assertThat(Hlb.byDavies(Map.of(DaviesGroup.SULFATE_SODIUM, 1), 12)).isEqualTo(Hlb.parse("40"));
        assertThatThrownBy(() -> Hlb.byDavies(Map.of(), 20)).hasMessageContaining("groups is empty");
        assertThatThrownBy(() -> Hlb.byDavies(Map.of(DaviesGroup.SULFATE_SODIUM, 1), -1))
                .hasMessageContaining("lipophilic is -1");
    }

    /** Laureth-4: 176.21 of 362.54 g/mol are oxyethylene, a fifth of that per cent is 9.72; printed 9.7 (a formulator's page). */
    @Test
    void an_ethoxylate_has_a_fifth_of_its_oxyethylene() {
        Hlb value = Hlb.ofOxyethylene(MassFraction.of(Ratio.parse("176.21").dividedBy(Ratio.parse("362.54"))));
        assertThat(shown(value.value(), 3)).isEqualTo("9.721");
        assertThat(Hlb.ofOxyethyleneAndPolyol(MassFraction.parse("30 %"), MassFraction.parse("20 %")))
                .isEqualTo(Hlb.parse("10"));
        assertThatThrownBy(() -> Hlb.ofOxyethyleneAndPolyol(MassFraction.parse("60 %"), MassFraction.parse("50 %")))
                .hasMessageContaining("more than the emulsifier");
    }

    /** Griffin's glyceryl stearate, S 161 and A 198: 3.74 by his formula; the printed 3.8 is from memory and not the formula's. */
    @Test
    void an_ester_has_what_its_saponification_value_tells() {
        AlkaliNumber s = AlkaliNumber.parse("161 mg KOH/g");
        AlkaliNumber a = AlkaliNumber.parse("198 mg KOH/g");
        Hlb value = Hlb.ofEster(s, a);
        assertThat(shown(value.value(), 3)).isEqualTo("3.737");
        assertThat(value.value().minus(Ratio.parse("3.8")).abs()).isLessThan(Ratio.parse("0.1"));
        assertThatThrownBy(() -> Hlb.ofEster(a, s)).hasMessageContaining("were the two exchanged");
        assertThatThrownBy(() -> Hlb.ofEster(s, AlkaliNumber.ZERO)).hasMessageContaining("multiple");
    }

    /** Three emulsifiers a < b < c, T ≥ b: the share z of c lies in [(T − b)/(c − b), (T − a)/(c − a)], and y = (T − a − z(c − a))/(b − a). */
    @Test
    void three_emulsifiers_are_a_family_of_one_parameter() {
        Random random = new Random(3);
        for (int i = 0; i < 200; i++) {
            int a = random.nextInt(6);
            int b = a + 1 + random.nextInt(6);
            int c = b + 1 + random.nextInt(6);
            int target = b + random.nextInt(c - b + 1);
            EmulsifierBlend blend = EmulsifierBlend.to(
                    Hlb.parse(String.valueOf(target)),
                    List.of(grade("a", "" + a), grade("b", "" + b), grade("c", "" + c)));
            Interval<MassFraction> z = blend.range("c").orElseThrow();
            assertThat(z.least().fraction()).isEqualTo(Ratio.of(target - b, c - b));
            assertThat(z.greatest().fraction()).isEqualTo(Ratio.of(target - a, c - a));
            MassFraction middle = MassFraction.of(
                    z.least().fraction().plus(z.greatest().fraction()).dividedBy(2));
            EmulsifierBlend.Blended member =
                    (EmulsifierBlend.Blended) blend.with("c", middle, middle).cheapest();
            Ratio y = Ratio.of(target - a).minus(middle.fraction().times(c - a)).dividedBy(b - a);
            assertThat(member.shares().get("b").fraction()).isEqualTo(y);
            assertThat(member.value()).isEqualTo(point(String.valueOf(target)));
        }
    }

    @Test
    void bounds_of_shares_that_make_no_whole_say_so() {
        MassFraction none = MassFraction.ZERO;
        EmulsifierBlend.Answer answer = EmulsifierBlend.to(Hlb.parse("5"), List.of(grade("a", "5")))
                .with("a", none, none)
                .cheapest();
        assertThat(((EmulsifierBlend.OutOfReach) answer).reachable()).isEmpty();
    }

    /** A22: half a unit on each grade. */
    @Test
    void shares_over_ranges_are_corners_or_not_reachable_for_every_value() {
        Emulsifier low = Emulsifier.of("L", "4.3", "0.5", SHEET);
        Emulsifier high = Emulsifier.of("H", "15", "0.5", SHEET);
        assertThat(EmulsifierBlend.shareOfHigher(low, high, point("10")).orElseThrow())
                .isEqualTo(Interval.of(MassFraction.of(Ratio.of(52, 107)), MassFraction.of(Ratio.of(62, 107))));
        assertThat(EmulsifierBlend.shareOfHigher(low, high, point("4.5"))).isEqualTo(Optional.empty());
    }

    @Test
    void a_ladder_is_weighed_in_steps_of_the_display() {
        List<EmulsifierBlend.Trial> ladder = EmulsifierBlend.ladder(
                grade("L", "4.3"), grade("H", "15"), 7, Amount.mass("5 g"), Balance.of("0.1 g", "200 g"));
        assertThat(ladder).hasSize(7);
        assertThat(ladder.get(1).high()).isEqualTo(Amount.mass("0.8 g"));
        assertThat(ladder.get(1).low()).isEqualTo(Amount.mass("4.2 g"));
        assertThat(ladder.get(1).value()).isEqualTo(point("6.012"));
        assertThat(ladder.get(6).value()).isEqualTo(point("15"));
        assertThatThrownBy(() -> EmulsifierBlend.ladder(
                        grade("L", "4.3"), grade("H", "15"), 7, Amount.mass("0.5 g"), Balance.of("0.1 g", "200 g")))
                .hasMessageContaining("at least 0.6 g");
    }

    @Test
    void slips_of_kind_and_whole_are_refused() {
        assertThatThrownBy(() -> OilPhase.of(Emulsion.WATER_IN_OIL, List.of(oil("beeswax", "1", "12"))))
                .hasMessageContaining("is for oil in water and the cream is water in oil");
        assertThatThrownBy(() -> EmulsifierBlend.valueOf(Map.of(grade("a", "5"), MassFraction.parse("3 %"))))
                .hasMessageContaining("together 100 %, not of the cream");
        assertThatThrownBy(() -> new Oil("oil", Amount.mass("1 g"), Emulsion.OIL_IN_WATER, point("7"), Source.user()))
                .hasMessageContaining("has no source");
    }
}
