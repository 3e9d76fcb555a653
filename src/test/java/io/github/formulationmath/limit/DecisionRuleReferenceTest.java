package io.github.formulationmath.limit;

import static io.github.formulationmath.support.WorkingAssertions.assertSelfChecking;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import io.github.formulationmath.document.Format;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.number.Rounding;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.FormulationUnits;
import io.github.formulationmath.quantity.Interval;
import io.github.formulationmath.reference.ReferenceTable;
import java.util.List;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Speed;
import javax.measure.quantity.Temperature;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import tech.units.indriya.unit.Units;

/** The examples of JCGM 106:2012 and the rules of ILAC-G8:09/2019; figures in shared/reference/jcgm106-*.csv. */
class DecisionRuleReferenceTest {

    static List<ReferenceTable.Row> conformance() {
        return ReferenceTable.read("shared/reference/jcgm106-conformance.csv").rows();
    }

    /** JCGM 106:2012, 7.3.3 example 1 and 7.4 example. */
    @ParameterizedTest
    @MethodSource("conformance")
    void conformance_probabilities_are_those_printed(ReferenceTable.Row row) {
        Amount<Mass> upper = grams(row.text("upper"));
        Amount<Mass> value = grams(row.text("value"));
        Amount<Mass> u = grams(row.text("uncertainty"));
        Conformance<Mass> conformance = row.text("lower").isEmpty()
                ? Conformance.atMost(upper, value, u)
                : Conformance.within(Interval.of(grams(row.text("lower")), upper), value, u);
        assertPrinted(conformance.probability().canonical(), row.text("printed"));
        assertPrinted(conformance.probability().canonical(), row.text("unrounded"));
        assertSelfChecking(conformance);
    }

    static List<ReferenceTable.Row> quantiles() {
        return ReferenceTable.read("shared/reference/jcgm106-quantiles.csv").rows();
    }

    /** JCGM 106:2012, 7.3, table 1: z to two decimals; the probability of the printed z is that of the row within its rounding. */
    @ParameterizedTest
    @MethodSource("quantiles")
    void the_printed_quantiles_enclose_their_probability(ReferenceTable.Row row) {
        Ratio z = Ratio.parse(row.text("z"));
        Ratio half = Ratio.parse("0.005");
        Ratio p = Ratio.parse(row.text("probability"));
        assertThat(below(z.minus(half))).isLessThanOrEqualTo(p);
        assertThat(below(z.plus(half))).isGreaterThanOrEqualTo(p);
    }

    private static Ratio below(Ratio z) {
        return Conformance.atMost(Amount.grams(z), grams("0"), grams("1"))
                .probability()
                .canonical();
    }

    /** JCGM 106:2012, 8.3.2.3 example; ILAC-G8:09/2019, 4.2: w = U = 2u leaves at most 2.3 % (2.5 %) at the limit. */
    @Test
    void a_guard_band_of_two_u_leaves_at_most_the_printed_probability_of_false_acceptance() {
        Amount<Mass> limit = grams("10");
        Amount<Mass> u = grams("0.5");
        Amount<Mass> accepted = limit.minus(u.times(2));
        assertThat(guarded(accepted, limit, u)).isEqualTo(Conformity.WITHIN);
        assertThat(guarded(accepted.plus(grams("1e-30")), limit, u)).isEqualTo(Conformity.NOT_SHOWN_WITHIN);
        double wrong = 1
                - Conformance.atMost(limit, accepted, u)
                        .probability()
                        .canonical()
                        .doubleValue();
        assertThat(wrong).isEqualTo(0.02275, within(5e-6)).isLessThan(0.025);
    }

    /** ILAC-G8:09/2019, 4.2: with simple acceptance the probability of false acceptance stays below 50 %. */
    @Test
    void simple_acceptance_leaves_half() {
        double wrong = 1
                - Conformance.atMost(grams("10"), grams("10"), grams("1"))
                        .probability()
                        .canonical()
                        .doubleValue();
        assertThat(wrong).isEqualTo(0.5, within(1e-12));
    }

    /** JCGM 106:2012, 8.3.3 example 1: u is 2 % of the speed, z = 3.09, 100 km/h: 107 (106.587 unrounded). */
    @Test
    void a_speed_is_shown_to_exceed_its_limit_from_the_printed_value_on() {
        DecisionRule rule = DecisionRule.guardBand(Ratio.parse("3.09"));
        assertThat(speed(rule, "106.58")).isEqualTo(Conformity.NOT_SHOWN_WITHIN);
        assertThat(speed(rule, "106.59")).isEqualTo(Conformity.EXCEEDS);
        assertThat(speed(rule, "107")).isEqualTo(Conformity.EXCEEDS);
        Amount<Speed> found = speed("106.587");
        Conformance<Speed> over = Conformance.atLeast(speed("100"), found, found.times(Ratio.parse("0.02")));
        assertThat(over)
                .asString()
                .startsWith("probability ≈ 99.8999 % of lying in [100 ")
                .endsWith(", ∞)");
        assertSelfChecking(over);
        assertThat(over.probability().canonical().doubleValue()).isEqualTo(0.999, within(5e-5));
    }

    private static Conformity speed(DecisionRule rule, String value) {
        Amount<Speed> v = speed(value);
        Amount<Speed> u = v.times(Ratio.parse("0.02"));
        return rule.decide(LimitKind.MAXIMUM, speed("100"), v, Interval.of(v, v), u);
    }

    private static Amount<Speed> speed(String number) {
        return Amount.of(number, Units.KILOMETRE_PER_HOUR);
    }

    /** JCGM 106:2012, 8.3.3 example 2: T = 2.00, s = 0.20, t = 1.83: g = 0.37, exceeding from 2.37 (2.366) on. */
    @Test
    void a_doping_threshold_is_exceeded_from_the_printed_value_on() {
        DecisionRule rule = DecisionRule.guardBand(Ratio.parse("1.83"));
        Amount<Mass> s = grams("0.20");
        assertThat(dose(rule, "2.366", s)).isEqualTo(Conformity.NOT_SHOWN_WITHIN);
        assertThat(dose(rule, "2.37", s)).isEqualTo(Conformity.EXCEEDS);
    }

    private static Conformity dose(DecisionRule rule, String value, Amount<Mass> s) {
        Amount<Mass> v = grams(value);
        return rule.decide(LimitKind.MAXIMUM, grams("2"), v, Interval.of(v, v), s);
    }

    /** From the rule: a cap of 1.0 %, u = 0.02 %: 0.96 % and no more. */
    @Test
    void the_example_of_the_class_holds() {
        Amount<Dimensionless> u = percent("0.02");
        assertThat(guarded(percent("0.96"), percent("1.0"), u)).isEqualTo(Conformity.WITHIN);
        assertThat(guarded(percent("0.97"), percent("1.0"), u)).isEqualTo(Conformity.NOT_SHOWN_WITHIN);
        assertThat(guarded(percent("1.05"), percent("1.0"), u)).isEqualTo(Conformity.EXCEEDS);
        // The same cap in other units.
        assertThat(guarded(Amount.of("0.0096", FormulationUnits.ONE), Amount.of(10, FormulationUnits.PER_MILLE), u))
                .isEqualTo(Conformity.WITHIN);
    }

    private static <Q extends Quantity<Q>> Conformity guarded(Amount<Q> value, Amount<Q> limit, Amount<Q> u) {
        return DecisionRule.guardBand().decide(LimitKind.MAXIMUM, limit, value, Interval.of(value, value), u);
    }

    private static Amount<Dimensionless> percent(String number) {
        return Amount.percent(Ratio.parse(number));
    }

    private static Amount<Mass> grams(String number) {
        return Amount.mass(number + " g");
    }

    @Test
    void the_worst_case_looks_at_the_ends_and_a_lowest_share_mirrors_all() {
        DecisionRule rule = DecisionRule.worstCase();
        Amount<Mass> one = grams("1");
        Amount<Mass> none = grams("0");
        Interval<Amount<Mass>> across = Interval.of(grams("0.9"), grams("1.1"));
        Interval<Amount<Mass>> under = Interval.of(grams("0.8"), one);
        Interval<Amount<Mass>> over = Interval.of(grams("1.01"), grams("1.2"));
        assertThat(rule.decide(LimitKind.MAXIMUM, one, one, across, none)).isEqualTo(Conformity.NOT_SHOWN_WITHIN);
        assertThat(rule.decide(LimitKind.MAXIMUM, one, one, under, none)).isEqualTo(Conformity.WITHIN);
        assertThat(rule.decide(LimitKind.MAXIMUM, one, one, over, none)).isEqualTo(Conformity.EXCEEDS);
        assertThat(rule.decide(LimitKind.MINIMUM, one, one, across, none)).isEqualTo(Conformity.NOT_SHOWN_WITHIN);
        assertThat(rule.decide(LimitKind.MINIMUM, one, one, over, none)).isEqualTo(Conformity.WITHIN);
        assertThat(rule.decide(LimitKind.MINIMUM, one, one, Interval.of(grams("0.8"), grams("0.9")), none))
                .isEqualTo(Conformity.FALLS_SHORT);
        assertThat(DecisionRule.guardBand().decide(LimitKind.MINIMUM, one, grams("1.1"), across, grams("0.1")))
                .isEqualTo(Conformity.NOT_SHOWN_WITHIN);
        assertThat(DecisionRule.guardBand().decide(LimitKind.MINIMUM, one, grams("0.5"), across, grams("0.1")))
                .isEqualTo(Conformity.FALLS_SHORT);
        assertThat(DecisionRule.simpleAcceptance().decide(LimitKind.MINIMUM, one, grams("0.9"), across, one))
                .isEqualTo(Conformity.FALLS_SHORT);
    }

    @Test
    void nonsense_is_refused() {
        assertThatIllegalArgumentException().isThrownBy(() -> DecisionRule.guardBand(Ratio.ZERO));
        assertThatIllegalArgumentException().isThrownBy(() -> DecisionRule.guardBand(Ratio.of(101)));
        Amount<Mass> one = grams("1");
        Interval<Amount<Mass>> point = Interval.of(one, one);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> DecisionRule.worstCase().decide(LimitKind.MAXIMUM, one, one, point, grams("-1")))
                .withMessage("standardUncertainty is -1 g: it must be at least 0");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Conformance.atMost(one, one, grams("0")))
                .withMessageContaining("standardUncertainty is 0 g");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Conformance<>(Optional.empty(), Optional.empty(), one, one))
                .withMessageContaining("one end at least");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Conformance<>(Optional.of(one), Optional.of(grams("0.9")), one, one))
                .withMessageContaining("exchanged");
        assertThat(DecisionRule.guardBand())
                .isEqualTo(DecisionRule.guardBand(Ratio.of(2)))
                .hasToString("guard band of 2 u");
        assertThat(DecisionRule.worstCase()).hasToString("worst case").isNotEqualTo(DecisionRule.simpleAcceptance());
    }

    /** A limit in °F, a value in °C: 77 °F are 25 °C, two uncertainties above; u is a difference. */
    @Test
    void a_temperature_has_its_uncertainty_in_kelvin() {
        Amount<Temperature> limit = Amount.temperature("77 °F");
        Amount<Temperature> value = Amount.temperature("24 °C");
        Amount<Temperature> u = Amount.of("0.5", FormulationUnits.KELVIN);
        Conformance<Temperature> kept = Conformance.atMost(limit, value, u);
        assertThat(kept).hasToString("probability ≈ 97.7250 % of lying in (−∞, 77 °F]");
        assertThat(kept.probability().working().document().print(Format.TEXT))
                .contains("in °C, the unit of the value found", "((25 − 24) / 0.5)");
        assertSelfChecking(kept);
        Interval<Amount<Temperature>> sure = Interval.of(value, value);
        assertThat(DecisionRule.guardBand().decide(LimitKind.MAXIMUM, limit, value, sure, u))
                .isEqualTo(Conformity.WITHIN);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> DecisionRule.guardBand().decide(LimitKind.MAXIMUM, limit, value, sure, value))
                .withMessageContaining("give the difference in K");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Conformance.atLeast(limit, value, value))
                .withMessageContaining("give the difference in K");
    }

    private static void assertPrinted(Ratio value, String printed) {
        int places = printed.length() - printed.indexOf('.') - 1;
        assertThat(Rounding.toDecimalPlaces(places).format(value)).isEqualTo(printed);
    }
}
