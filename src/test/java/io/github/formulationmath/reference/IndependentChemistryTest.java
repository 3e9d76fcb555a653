package io.github.formulationmath.reference;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.reference.ReferenceTable.Row;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/**
 * Figures of soap, titrations, profiles, strengths, acids and emulsifiers, each held against one that another program reckoned from
 * the relation alone. The traps among them: an acid that is forgotten, a wax taken for a fat, inert matter, weighing with one tare,
 * a free base beside its hydrochloride, a strong acid thinner than water's own ions, volumes of alcohol that shrink.
 */
class IndependentChemistryTest {

    private static final Ratio ENCLOSED = Ratio.parse("1e-8");
    private static final Ratio PRINTED = Ratio.parse("1e-15");

    private static Map<String, Figures.Range> found() {
        Figures figures = new Figures();
        IndependentSoaps.addTo(figures);
        IndependentAnalyses.addTo(figures);
        IndependentSolutions.addTo(figures);
        return figures.all();
    }

    private static Map<String, Row> rows() {
        Map<String, Row> rows = new LinkedHashMap<>();
        ReferenceTable.read("shared/reference/independent-chemistry.csv")
                .rows()
                .forEach(row -> rows.put(row.text("case") + " " + row.text("figure"), row));
        return rows;
    }

    @Test
    void every_row_is_asked_and_every_figure_has_a_row() {
        assertThat(found().keySet()).isEqualTo(rows().keySet());
    }

    @TestFactory
    Stream<DynamicTest> every_figure_is_the_one_reckoned_elsewhere() {
        Map<String, Figures.Range> found = found();
        return rows().entrySet().stream()
                .map(row -> DynamicTest.dynamicTest(
                        row.getKey(), () -> holds(row.getKey(), row.getValue(), found.get(row.getKey()))));
    }

    private static void holds(String key, Row row, Figures.Range range) {
        assertThat(range).as("figure %s", key).isNotNull();
        Ratio least = Ratio.parse(row.text("least"));
        Ratio greatest = Ratio.parse(row.text("greatest"));
        near(key, least.minus(range.least()), least);
        near(key, range.greatest().minus(greatest), greatest);
    }

    /** At least 0, but for the digits that the table does not print; and not much above. */
    private static void near(String key, Ratio outside, Ratio figure) {
        Ratio size = figure.abs().max(Ratio.ONE);
        assertThat(outside).as("end of %s", key).isBetween(PRINTED.times(size).unaryMinus(), ENCLOSED.times(size));
    }
}
