package io.github.formulationmath.limit;

import static io.github.formulationmath.limit.SnapshotTable.field;
import static org.assertj.core.api.Assertions.assertThat;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.FormulaBuilder;
import io.github.formulationmath.support.Checkers;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;

/**
 * Two hundred rows and forty products judged from the raw text of the annexes, before the coded rows were looked at
 * (Regulation (EC) No 1223/2009, Annexes III, V and VI, state of 25 February 2024). What the library says otherwise is counted
 * by how much it can hurt.
 */
class SecondReadingTest {

    /** What stands against a formula. */
    private static final Set<String> AGAINST = Set.of("prohibited", "exceeds");

    private static final Set<String> VAGUE = Set.of("open", "unsure");

    /** Findings of a kind, each with its line. */
    private record Tally(List<String> falselyFine, List<String> gone, List<String> falseAlarms, List<String> vague) {

        Tally() {
            this(new ArrayList<>(), new ArrayList<>(), new ArrayList<>(), new ArrayList<>());
        }

        void add(Map<String, String> row, String found, LimitReport report) {
            String expected = field(row, "finding");
            if (found.equals(expected)) {
                return;
            }
            String line = found + " instead of " + expected + ": " + row + "\n    " + report + "\n";
            if (found.equals("silent") || found.equals("none")) {
                gone.add(line);
            } else if (AGAINST.contains(found) && !AGAINST.contains(expected)) {
                falseAlarms.add(line);
            } else if (VAGUE.contains(found)) {
                vague.add(line);
            } else {
                falselyFine.add(line);
            }
        }

        void assertGood(int findings) {
            assertThat(falselyFine).as("falsely fine, of " + findings).isEmpty();
            assertThat(gone).as("vanished").isEmpty();
            assertThat(falseAlarms).as("false alarms").hasSizeLessThanOrEqualTo(findings * 2 / 100);
            assertThat(vague).as("vague").hasSizeLessThanOrEqualTo(findings * 5 / 100);
        }
    }

    @Test
    void every_row_is_found_as_its_printed_text_has_it() {
        Tally tally = new Tally();
        List<Map<String, String>> rows = ReadCase.in("rows-read-again.csv");
        for (Map<String, String> row : rows) {
            FormulaBuilder formula = Formula.inPercent("F").quantitySufficient("Aqua");
            LimitReport report = check(ReadCase.using(ReadCase.product(row), row), ReadCase.line(formula, row));
            tally.add(row, ReadCase.ofEntry(report, field(row, "entry")), report);
        }
        tally.assertGood(rows.size());
    }

    @Test
    void every_ingredient_of_a_product_is_found_as_its_printed_text_has_it() {
        Map<String, List<Map<String, String>>> products = new LinkedHashMap<>();
        List<Map<String, String>> all = ReadCase.in("products-read.csv");
        all.forEach(row -> products.computeIfAbsent(field(row, "product"), name -> new ArrayList<>())
                .add(row));
        Tally tally = new Tally();
        products.forEach((name, rows) -> {
            FormulaBuilder formula = Formula.inPercent(name).quantitySufficient("Aqua");
            Product product = ReadCase.product(rows.get(0));
            for (Map<String, String> row : rows) {
                product = ReadCase.using(product, row);
                ReadCase.line(formula, row);
            }
            LimitReport report = check(product, formula);
            rows.forEach(row -> tally.add(row, ReadCase.ofSubstance(report, field(row, "ingredient")), report));
        });
        assertThat(products).hasSizeGreaterThanOrEqualTo(30);
        tally.assertGood(all.size());
    }

    @Test
    void half_of_the_products_give_no_number() {
        Map<String, Boolean> numbered = new LinkedHashMap<>();
        ReadCase.in("products-read.csv")
                .forEach(row -> numbered.merge(
                        field(row, "product"), !field(row, "cas").isEmpty(), (one, other) -> one || other));
        assertThat(numbered.values().stream().filter(one -> !one).count())
                .isBetween(numbered.size() / 2L, numbered.size() / 2L + 1);
    }

    private static LimitReport check(Product product, FormulaBuilder formula) {
        return Checkers.of(product).check(formula.build());
    }
}
