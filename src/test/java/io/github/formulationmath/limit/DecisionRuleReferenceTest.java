package io.github.formulationmath.limit;

import static io.github.formulationmath.support.WorkingAssertions.assertSelfChecking;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import io.github.formulationmath.number.Bounds;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.number.Rounding;
import io.github.formulationmath.reference.ReferenceTable;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The examples of JCGM 106:2012 and the rules of ILAC-G8:09/2019; figures in shared/reference/jcgm106-*.csv. */
class DecisionRuleReferenceTest {

    static List<ReferenceTable.Row> conformance() {
        return ReferenceTable.read("shared/reference/jcgm106-conformance.csv").rows();
    }

    /** JCGM 106:2012, 7.3.3 example 1 and 7.4 example. */
    @ParameterizedTest
    @MethodSource("conformance")
    void conformance_probabilities_are_those_printed(ReferenceTable.Row row) {
        Ratio upper = Ratio.parse(row.text("upper"));
        Bounds tolerance = row.text("lower").isEmpty()
                ? Bounds.atMost(upper)
                : Bounds.closed(Ratio.parse(row.text("lower")), upper);
        Conformance conformance =
                Conformance.of(tolerance, Ratio.parse(row.text("value")), Ratio.parse(row.text("uncertainty")));
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
        return Conformance.of(Bounds.atMost(z), Ratio.ZERO, Ratio.ONE)
                .probability()
                .canonical();
    }

    /** JCGM 106:2012, 8.3.2.3 example; ILAC-G8:09/2019, 4.2: w = U = 2u leaves at most 2.3 % (2.5 %) at the limit. */
    @Test
    void a_guard_band_of_two_u_leaves_at_most_the_printed_probability_of_false_acceptance() {
        Ratio limit = Ratio.of(10);
        Ratio u = Ratio.parse("0.5");
        Ratio accepted = limit.minus(u.times(2));
        assertThat(guarded(accepted, limit, u)).isEqualTo(Conformity.WITHIN);
        assertThat(guarded(accepted.plus(Ratio.parse("1e-30")), limit, u)).isEqualTo(Conformity.NOT_SHOWN_WITHIN);
        double wrong = 1
                - Conformance.of(Bounds.atMost(limit), accepted, u)
                        .probability()
                        .canonical()
                        .doubleValue();
        assertThat(wrong).isEqualTo(0.02275, within(5e-6)).isLessThan(0.025);
    }

    /** ILAC-G8:09/2019, 4.2: with simple acceptance the probability of false acceptance stays below 50 %. */
    @Test
    void simple_acceptance_leaves_half() {
        double wrong = 1
                - Conformance.of(Bounds.atMost(Ratio.of(10)), Ratio.of(10), Ratio.ONE)
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
        Ratio found = Ratio.parse("106.587");
        assertThat(Conformance.of(Bounds.atLeast(Ratio.of(100)), found, found.times(Ratio.parse("0.02")))
                        .probability()
                        .canonical()
                        .doubleValue())
                .isEqualTo(0.999, within(5e-5));
    }

    private static Conformity speed(DecisionRule rule, String value) {
        Ratio v = Ratio.parse(value);
        Ratio u = v.times(Ratio.parse("0.02"));
        return rule.decide(LimitKind.MAXIMUM, Ratio.of(100), v, Bounds.point(v), u.times(u));
    }

    /** JCGM 106:2012, 8.3.3 example 2: T = 2.00, s = 0.20, t = 1.83: g = 0.37, exceeding from 2.37 (2.366) on. */
    @Test
    void a_doping_threshold_is_exceeded_from_the_printed_value_on() {
        DecisionRule rule = DecisionRule.guardBand(Ratio.parse("1.83"));
        Ratio s = Ratio.parse("0.20");
        assertThat(dose(rule, "2.366", s)).isEqualTo(Conformity.NOT_SHOWN_WITHIN);
        assertThat(dose(rule, "2.37", s)).isEqualTo(Conformity.EXCEEDS);
    }

    private static Conformity dose(DecisionRule rule, String value, Ratio s) {
        Ratio v = Ratio.parse(value);
        return rule.decide(LimitKind.MAXIMUM, Ratio.of(2), v, Bounds.point(v), s.times(s));
    }

    /** From the rule: a cap of 1.0 %, u = 0.02 %: 0.96 % and no more. */
    @Test
    void the_example_of_the_class_holds() {
        Ratio u = Ratio.parse("0.0002");
        assertThat(guarded(Ratio.parse("0.0096"), Ratio.parse("0.01"), u)).isEqualTo(Conformity.WITHIN);
        assertThat(guarded(Ratio.parse("0.0097"), Ratio.parse("0.01"), u)).isEqualTo(Conformity.NOT_SHOWN_WITHIN);
        assertThat(guarded(Ratio.parse("0.0105"), Ratio.parse("0.01"), u)).isEqualTo(Conformity.EXCEEDS);
    }

    private static Conformity guarded(Ratio value, Ratio limit, Ratio u) {
        return DecisionRule.guardBand().decide(LimitKind.MAXIMUM, limit, value, Bounds.point(value), u.times(u));
    }

    @Test
    void the_worst_case_looks_at_the_ends_and_a_lowest_share_mirrors_all() {
        DecisionRule rule = DecisionRule.worstCase();
        Ratio one = Ratio.ONE;
        Bounds across = Bounds.closed(Ratio.parse("0.9"), Ratio.parse("1.1"));
        Bounds under = Bounds.closed(Ratio.parse("0.8"), one);
        Bounds over = Bounds.closed(Ratio.parse("1.01"), Ratio.parse("1.2"));
        assertThat(rule.decide(LimitKind.MAXIMUM, one, one, across, Ratio.ZERO)).isEqualTo(Conformity.NOT_SHOWN_WITHIN);
        assertThat(rule.decide(LimitKind.MAXIMUM, one, one, under, Ratio.ZERO)).isEqualTo(Conformity.WITHIN);
        assertThat(rule.decide(LimitKind.MAXIMUM, one, one, over, Ratio.ZERO)).isEqualTo(Conformity.EXCEEDS);
        assertThat(rule.decide(LimitKind.MINIMUM, one, one, across, Ratio.ZERO)).isEqualTo(Conformity.NOT_SHOWN_WITHIN);
        assertThat(rule.decide(LimitKind.MINIMUM, one, one, over, Ratio.ZERO)).isEqualTo(Conformity.WITHIN);
        assertThat(rule.decide(
                        LimitKind.MINIMUM, one, one, Bounds.closed(Ratio.parse("0.8"), Ratio.parse("0.9")), Ratio.ZERO))
                .isEqualTo(Conformity.FALLS_SHORT);
        assertThat(DecisionRule.guardBand()
                        .decide(LimitKind.MINIMUM, one, Ratio.parse("1.1"), across, Ratio.parse("0.01")))
                .isEqualTo(Conformity.NOT_SHOWN_WITHIN);
        assertThat(DecisionRule.guardBand()
                        .decide(LimitKind.MINIMUM, one, Ratio.parse("0.5"), across, Ratio.parse("0.01")))
                .isEqualTo(Conformity.FALLS_SHORT);
        assertThat(DecisionRule.simpleAcceptance().decide(LimitKind.MINIMUM, one, Ratio.parse("0.9"), across, one))
                .isEqualTo(Conformity.FALLS_SHORT);
    }

    @Test
    void nonsense_is_refused() {
        assertThatIllegalArgumentException().isThrownBy(() -> DecisionRule.guardBand(Ratio.ZERO));
        assertThatIllegalArgumentException().isThrownBy(() -> DecisionRule.guardBand(Ratio.of(101)));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> DecisionRule.worstCase()
                        .decide(LimitKind.MAXIMUM, Ratio.ONE, Ratio.ONE, Bounds.atMost(Ratio.ONE), Ratio.ZERO))
                .withMessageContaining("both ends");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> DecisionRule.worstCase()
                        .decide(LimitKind.MAXIMUM, Ratio.ONE, Ratio.ONE, Bounds.point(Ratio.ONE), Ratio.of(-1)));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Conformance.of(Bounds.all(), Ratio.ONE, Ratio.ZERO))
                .withMessageContaining("standardUncertainty");
        assertThat(DecisionRule.guardBand())
                .isEqualTo(DecisionRule.guardBand(Ratio.of(2)))
                .hasToString("guard band of 2 u");
        assertThat(DecisionRule.worstCase()).hasToString("worst case").isNotEqualTo(DecisionRule.simpleAcceptance());
    }

    private static void assertPrinted(Ratio value, String printed) {
        int places = printed.length() - printed.indexOf('.') - 1;
        assertThat(Rounding.toDecimalPlaces(places).format(value)).isEqualTo(printed);
    }
}
