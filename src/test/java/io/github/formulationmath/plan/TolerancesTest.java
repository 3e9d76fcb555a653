package io.github.formulationmath.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatNullPointerException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.entry;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.Interval;
import io.github.formulationmath.quantity.MassFraction;
import io.github.formulationmath.reckoning.Wording;
import io.github.formulationmath.support.Formulas;
import io.github.formulationmath.support.ValueContract;
import java.util.Collections;
import java.util.List;
import javax.measure.quantity.Dimensionless;
import org.junit.jupiter.api.Test;

class TolerancesTest implements ValueContract<Tolerances> {

    @Override
    public List<Tolerances> different() {
        Tolerances five = Tolerances.of("5 %");
        return List.of(
                five,
                Tolerances.of("4 %"),
                five.withPhase("A", "3 %"),
                five.withPhase("A", "2 %"),
                five.withPhase("B", "3 %"),
                five.withLine("Wax", "3 %"),
                five.withLine("Wax", "2 %"),
                five.withPhase("A", "3 %").withLine("Wax", "2 %"));
    }

    @Override
    public List<Tolerances> same() {
        return different();
    }

    @Test
    void what_was_set_can_be_read() {
        Tolerances set = Tolerances.of("5 %")
                .withPhase("A", "3 %")
                .withLine("Wax", "2 %")
                .withLine("Oil", "1 %");
        assertThat(set.general()).isEqualTo(MassFraction.parse("5 %"));
        assertThat(set.byPhase()).containsExactly(entry("A", MassFraction.parse("3 %")));
        assertThat(set.byIngredient())
                .containsExactly(entry("Wax", MassFraction.parse("2 %")), entry("Oil", MassFraction.parse("1 %")));
        assertThat(set).hasToString("± 5 %, phase A ± 3 %, Wax ± 2 %, Oil ± 1 %");
    }

    @Test
    void a_tolerance_of_everything_is_refused() {
        assertThatThrownBy(() -> Tolerances.of("100 %"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("below 100 %");
        assertThatThrownBy(() -> Tolerances.of("5 %").withPhase("A", "120 %"))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void a_tolerance_set_again_in_another_spelling_replaces_the_one_before() {
        Tolerances set = Tolerances.of("5 %")
                .withPhase("Oil phase", "3 %")
                .withPhase("Water", "2 %")
                .withPhase("OIL  PHASE", "1 %")
                .withLine("Wax", "3 %")
                .withLine("Oil", "2 %")
                .withLine(" wax", "1 %");
        assertThat(set.byPhase().keySet()).containsExactly("Water", "OIL  PHASE");
        assertThat(set.byIngredient())
                .containsExactly(entry("Oil", MassFraction.parse("2 %")), entry(" wax", MassFraction.parse("1 %")));
    }

    @Test
    void a_line_has_its_own_tolerance_before_that_of_its_phase_and_that_before_the_general_one() {
        Formula lotion = Formulas.lotion("lotion");
        Tolerances set = Tolerances.of("5 %").withPhase("OIL", "3 %").withLine("glyceryl stearate se", "1 %");
        assertThat(lotion.lines().stream().map(set::forLine).map(Object::toString))
                .containsExactly("5 %", "5 %", "3 %", "1 %");
        assertThat(set.fraction(lotion.lines().get(2))).isEqualTo(Ratio.of(3, 100));
    }

    @Test
    void every_name_must_be_one_of_some_formula() {
        Formula lotion = Formulas.lotion("lotion");
        List<Formula> both = List.of(lotion, Formulas.oilAndWax("balm"), lotion);
        Tolerances known = Tolerances.of("5 %").withPhase("OIL", "3 %").withLine("wax", "1 %");
        assertThat(known.checkedFor(both)).isSameAs(known);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> known.checkedFor(lotion))
                .withMessage(
                        "a tolerance is set for wax, which is no line of \"lotion\": name it as the formula does, or"
                                + " leave the tolerance out");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> known.withPhase("cool", "2 %").checkedFor(both))
                .withMessageContaining("phase cool, which is no phase of \"lotion\", \"balm\": name it");
    }

    @Test
    void tolerances_that_name_nothing_fit_every_formula_but_none_that_is_missing() {
        Tolerances five = Tolerances.of("5 %");
        assertThat(five.checkedFor(List.of())).isSameAs(five);
        assertThatNullPointerException().isThrownBy(() -> five.checkedFor(Collections.<Formula>singletonList(null)));
    }

    /** 20 % ± 5 % of itself is 19 % to 21 %. */
    @Test
    void a_share_keeps_its_tolerance_if_all_of_its_interval_does_and_misses_it_if_none_does() {
        FormulaLine wax = Formula.inPercent("balm")
                .line("Oil", "80 %")
                .line("Wax", "20 %")
                .build()
                .line("Wax");
        Tolerances five = Tolerances.of("50 %").withLine("wax", "5 %");
        assertThat(five.verdict(wax, percent("19", "21"))).isEqualTo(ToleranceVerdict.WITHIN);
        assertThat(five.verdict(wax, percent("18.999", "21"))).isEqualTo(ToleranceVerdict.NOT_SHOWN_WITHIN);
        assertThat(five.verdict(wax, percent("19", "21.001"))).isEqualTo(ToleranceVerdict.NOT_SHOWN_WITHIN);
        assertThat(five.verdict(wax, percent("21", "22"))).isEqualTo(ToleranceVerdict.NOT_SHOWN_WITHIN);
        assertThat(five.verdict(wax, percent("18", "19"))).isEqualTo(ToleranceVerdict.NOT_SHOWN_WITHIN);
        assertThat(five.verdict(wax, percent("21.001", "22"))).isEqualTo(ToleranceVerdict.OUTSIDE);
        assertThat(five.verdict(wax, percent("18", "18.999"))).isEqualTo(ToleranceVerdict.OUTSIDE);
        assertThatNullPointerException().isThrownBy(() -> five.verdict(wax, null));
        assertThatNullPointerException().isThrownBy(() -> five.verdict(null, percent("19", "21")));
    }

    private static Interval<Amount<Dimensionless>> percent(String least, String greatest) {
        return Interval.of(Amount.percent(Ratio.parse(least)), Amount.percent(Ratio.parse(greatest)));
    }

    @Test
    void a_made_line_is_mended_unless_it_is_within_as_far_as_one_can_read() {
        assertThat(ToleranceVerdict.values())
                .filteredOn(verdict -> !verdict.asksForCorrection())
                .containsExactly(ToleranceVerdict.WITHIN, ToleranceVerdict.WITHIN_AS_READ);
    }

    @Test
    void tolerances_are_told_in_the_words_of_a_language() {
        Tolerances set = Tolerances.of("5 %").withPhase("A", "3 %").withLine("Wax", "1 %");
        assertThat(set.text(Wording.english())).isEqualTo("± 5 %, phase A ± 3 %, Wax ± 1 %");
        assertThat(set.text(Wording.german())).isEqualTo("± 5 %, Phase A ± 3 %, Wax ± 1 %");
    }
}
