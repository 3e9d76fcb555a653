package io.github.formulationmath.batch;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.formula.FormulaLine;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.support.RandomFormulas;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import javax.measure.quantity.Mass;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;
import net.jqwik.api.constraints.Size;

/** Laws that hold for every formula and size. */
class BatchPropertiesTest {

    private static Amount<Mass> milligrams(long number) {
        return Amount.grams(Ratio.of(number, 1000));
    }

    private static Batch batch(Formula formula, long milligrams) {
        return Batch.of(formula, BatchSize.ofMass(milligrams(milligrams)));
    }

    private static Ratio sumOf(List<Ratio> numbers) {
        return numbers.stream().reduce(Ratio.ZERO, Ratio::plus);
    }

    @Property
    void shares_add_up_to_one_and_masses_to_the_batch(
            @ForAll @Size(min = 1, max = 12) List<@IntRange(min = 1, max = 99_999) Integer> parts,
            @ForAll @LongRange(min = 1, max = 10_000_000) long mass) {
        Formula formula = RandomFormulas.formula(parts);
        assertThat(sumOf(formula.lines().stream().map(FormulaLine::fraction).toList()))
                .isEqualTo(Ratio.ONE);
        assertThat(sumOf(batch(formula, mass).lines().stream()
                        .map(line -> line.mass().canonical())
                        .toList()))
                .isEqualTo(Ratio.of(mass, 1000));
    }

    @Property
    void scaling_is_linear(
            @ForAll @Size(min = 1, max = 12) List<@IntRange(min = 1, max = 99_999) Integer> parts,
            @ForAll @LongRange(min = 1, max = 10_000_000) long mass,
            @ForAll @IntRange(min = 2, max = 50) int factor) {
        Formula formula = RandomFormulas.formula(parts);
        Batch once = batch(formula, mass);
        Batch often = batch(formula, mass * factor);
        for (int i = 0; i < parts.size(); i++) {
            assertThat(often.lines().get(i).mass().canonical())
                    .isEqualTo(once.lines().get(i).mass().canonical().times(factor));
        }
    }

    @Property
    void a_batch_written_down_in_masses_keeps_its_shares(
            @ForAll @Size(min = 1, max = 12) List<@IntRange(min = 1, max = 99_999) Integer> parts,
            @ForAll @LongRange(min = 1, max = 10_000_000) long mass) {
        Formula formula = RandomFormulas.formula(parts);
        Map<String, Ratio> before = byName(formula);
        assertThat(byName(batch(formula, mass).asMasses())).isEqualTo(before);
    }

    private static Map<String, Ratio> byName(Formula formula) {
        return formula.lines().stream().collect(Collectors.toMap(FormulaLine::name, FormulaLine::fraction));
    }
}
