package io.github.formulationmath.size;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.plan.Bench;
import io.github.formulationmath.plan.Tolerances;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.MassFraction;
import io.github.formulationmath.reckoning.Phrase;
import io.github.formulationmath.reckoning.Wording;
import io.github.formulationmath.simulation.CoverageFactor;
import io.github.formulationmath.support.Formulas;
import io.github.formulationmath.weighing.Balance;
import io.github.formulationmath.weighing.WeighingMethod;
import java.util.List;
import org.junit.jupiter.api.Test;

/** How a window and criteria read at a prompt: one balm on a display of 0.1 g, by hand. */
class SizeAnswersTest {

    private static final Formula BALM = Formulas.balm("balm");
    private static final Balance TENTH = Balance.of("0.1 g", "2 kg");

    private static String english(Phrase phrase) {
        return Wording.english().text(phrase);
    }

    @Test
    void a_window_end_says_what_binds_it() {
        BatchWindow.Feasible window = (BatchWindow.Feasible) BatchWindow.of(
                BALM,
                Bench.of(TENTH),
                BatchConstraints.of(Criterion.oneDivision()).withStock("Wax", "100 g"));
        assertThat(window.constraints().criteria()).containsExactly(Criterion.oneDivision());
        assertThat(window.lowerEnd().toString()).isEqualTo("20 g (every line at least one division)");
        assertThat(window.lowerEnd().bindingLine()).contains(BALM.line("Tocopherol"));
        assertThat(window.upperEnd().toString()).startsWith("500 g (").contains("Wax");
        assertThat(english(window.lowerEnd().origin().question()))
                .isNotEqualTo(english(window.upperEnd().origin().question()));
        assertThat(window.contains(Amount.mass("20 g"))).isTrue();
        assertThat(window.contains(Amount.mass("500 g"))).isTrue();
        assertThat(window.contains(Amount.mass("500.1 g"))).isFalse();
        assertThat(window.contains(Amount.mass("19.9 g"))).isFalse();
    }

    @Test
    void criteria_are_told_apart_by_name_and_text() {
        List<Criterion> criteria = List.of(
                Criterion.oneDivision(),
                Criterion.exactReadings(),
                Criterion.minimumWeight(),
                Criterion.leastNetMass(Amount.mass("1 g")),
                Criterion.roundingWithin(Tolerances.of("5 %")),
                Criterion.madeWithin(Tolerances.of("5 %")),
                Criterion.madeWithin(Tolerances.of("5 %"), Amount.mass("0.1 g")),
                Criterion.errorBound(Tolerances.of("5 %"), WeighingMethod.TARE_EACH),
                Criterion.errorBound(Tolerances.of("5 %"), WeighingMethod.TARE_EACH, CoverageFactor.of(2)),
                Criterion.capKept(
                        BALM.lines()
                                .get(1)
                                .ingredient()
                                .parts()
                                .keySet()
                                .iterator()
                                .next(),
                        MassFraction.parse("25 %"),
                        WeighingMethod.TARE_EACH));
        assertThat(criteria)
                .extracting(Object::toString)
                .doesNotHaveDuplicates()
                .doesNotContain("");
        assertThat(criteria)
                .extracting(criterion ->
                        english(criterion.on(BALM, Bench.of(TENTH)).asked().get(0)))
                .doesNotContain("");
        assertThat(criteria).doesNotHaveDuplicates();
    }

    /** Oil twice, 30 % in all: 60 g of it make 200 g. */
    @Test
    void a_stock_serves_all_lines_of_its_name() {
        Formula twice = Formula.inPercent("twice")
                .phase("hot")
                .quantitySufficient("Aqua")
                .line("Oil", "10 %")
                .phase("cool")
                .line("Oil", "20 %")
                .build();
        BatchConstraints stock = BatchConstraints.of(Criterion.oneDivision()).withStock("Oil", "60 g");
        BatchWindow.Feasible window = (BatchWindow.Feasible) BatchWindow.of(twice, Bench.of(TENTH), stock);
        assertThat(window.constraints()).isEqualTo(stock);
        assertThat(window.upperEnd().mass()).isEqualTo(Amount.mass("200 g"));
        assertThat(window.upperEnd().boundBy().key()).isEqualTo("ceiling.stock");
        assertThat(window.upperEnd().boundBy().arguments()).contains("Oil", "60 g");
    }
}
