package io.github.formulationmath.quantity;

import static io.github.formulationmath.quantity.FormulationUnits.GRAM;
import static io.github.formulationmath.quantity.FormulationUnits.KELVIN;
import static io.github.formulationmath.quantity.FormulationUnits.KILOGRAM;
import static io.github.formulationmath.quantity.FormulationUnits.MILLILITRE;
import static io.github.formulationmath.quantity.FormulationUnits.OUNCE;
import static javax.measure.MetricPrefix.KILO;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.number.Rounding;
import io.github.formulationmath.reckoning.Wording;
import io.github.formulationmath.support.NullTester;
import io.github.formulationmath.support.ValueContract;
import java.io.NotSerializableException;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import javax.measure.Quantity;
import javax.measure.UnconvertibleException;
import javax.measure.Unit;
import javax.measure.quantity.Mass;
import org.junit.jupiter.api.Test;
import tech.units.indriya.unit.Units;

class AmountTest implements ValueContract<Amount<Mass>> {

    @Override
    public List<Amount<Mass>> different() {
        return List.of(
                Amount.mass("1 kg"),
                Amount.mass("1000 g"),
                Amount.mass("1/3 oz"),
                Amount.mass("-2.5 mg"),
                Amount.mass("0 g"),
                Amount.mass("1e30 grain"));
    }

    @Override
    public List<Amount<Mass>> same() {
        return List.of(
                Amount.of(1, KILO(Units.GRAM)),
                Amount.mass("1 kg").to(GRAM),
                Amount.of("1", OUNCE).dividedBy(Ratio.of(3)),
                Amount.of(new BigDecimalRatio("-2.50").value(), FormulationUnits.MILLIGRAM),
                Amount.mass("5 g").minus(Amount.mass("0.005 kg")),
                Amount.of("1e15", FormulationUnits.GRAIN).times(Ratio.parse("1e15")));
    }

    private record BigDecimalRatio(String text) {
        Ratio value() {
            return Ratio.of(new BigDecimal(text));
        }
    }

    @Test
    void the_example_of_the_class_holds() {
        Amount<Mass> three = Amount.mass("12.5 g").times(3);
        assertThat(three).hasToString("37.5 g");
        assertThat(three.in(OUNCE)).isEqualTo(Ratio.parse("37.5").dividedBy(Ratio.parse("28.349523125")));
        assertThat(three.to(OUNCE).rounded(Rounding.toDecimalPlaces(2))).hasToString("1.32 oz");
    }

    @Test
    void arithmetic_keeps_the_unit_of_the_left_side() {
        Amount<Mass> sum = Amount.mass("1 kg").plus(Amount.mass("250 g"));
        assertThat(sum).hasToString("1.25 kg");
        assertThat(sum.minus(Amount.mass("1/3 g")).in(GRAM)).isEqualTo(Ratio.of(3749, 3));
        assertThat(Amount.mass("1 lb").ratioTo(Amount.mass("1 oz"))).isEqualTo(Ratio.of(16));
        assertThat(Amount.mass("3 g").ratioTo(Amount.mass("2 g"))).isEqualTo(Ratio.of(3, 2));
        assertThat(Amount.mass("3 g").unaryMinus().abs().signum()).isEqualTo(1);
        assertThat(Amount.mass("3 g").abs()).hasToString("3 g");
        assertThat(Amount.mass("3 g").div(Ratio.of(2))).hasToString("1.5 g");
        assertThat(Amount.mass("0 g").isZero()).isTrue();
        assertThat(Amount.grams(Ratio.ONE).getUnit()).isEqualTo(GRAM);
        assertThat(Amount.millilitres(Ratio.ONE)).isEqualTo(Amount.volume("1 mL"));
        assertThat(Amount.percent(Ratio.of(25)).in(FormulationUnits.ONE)).isEqualTo(Ratio.of(1, 4));
        assertThat(Amount.mass("1 lb").inUnitOf(Amount.mass("3 oz"))).hasToString("16 oz");
        assertThatThrownBy(() -> Amount.mass("3 g").dividedBy(Ratio.ZERO)).isInstanceOf(ArithmeticException.class);
        assertThatThrownBy(() -> Amount.mass("3 g").ratioTo(Amount.mass("0 kg")))
                .isInstanceOf(ArithmeticException.class);
    }

    @Test
    void size_looks_through_units_where_equality_does_not() {
        Amount<Mass> kilo = Amount.mass("1 kg");
        Amount<Mass> grams = Amount.mass("1000 g");
        assertThat(kilo).isNotEqualTo(grams).isEqualByComparingTo(grams);
        assertThat(kilo.isEquivalentTo(grams)).isTrue();
        assertThat(kilo.isEquivalentTo(Amount.mass("1001 g"))).isFalse();
        assertThat(Amount.mass("16 oz")).isEqualByComparingTo(Amount.mass("1 lb"));
        assertThat(Amount.mass("1 g")).isLessThan(Amount.mass("1 oz"));
        assertThat(Amount.volume("1 cm³")).isNotEqualTo(Amount.volume("1 mL"));
        assertThat(Amount.volume("1 cm³").isEquivalentTo(Amount.volume("1 mL"))).isTrue();
    }

    @Test
    void people_read_a_decimal_where_data_have_a_fraction() {
        assertThat(Amount.mass("2/3 g").told()).isEqualTo("≈ 0.666667 g");
        assertThat(Amount.mass("2/3 g").toldExactly()).isEqualTo("2/3 g ≈ 0.666667 g");
        assertThat(Amount.mass("1.025 g").told()).isEqualTo("1.025 g");
        assertThat(Amount.mass("1.025 g").toldExactly()).isEqualTo("1.025 g");
    }

    @Test
    void amounts_in_one_unit_are_spread_over_the_buckets_of_a_map() {
        assertThat(IntStream.rangeClosed(1, 100)
                        .mapToObj(tenths -> Amount.grams(Ratio.of(tenths, 10)).hashCode())
                        .distinct())
                .hasSizeGreaterThan(90);
    }

    /** Through raw types Java lets anything pass; the units do not. */
    @Test
    @SuppressWarnings({"unchecked", "rawtypes"})
    void mass_and_volume_cannot_meet() {
        Amount mass = Amount.mass("1 g");
        Amount volume = Amount.volume("1 mL");
        assertThatThrownBy(() -> mass.plus(volume))
                .isInstanceOf(UnitMismatchException.class)
                .isInstanceOf(UnconvertibleException.class)
                .hasMessageContaining("unit g cannot be converted to mL")
                .hasMessageContaining("Density")
                .satisfies(e -> assertThat(Wording.german().text((UnitMismatchException) e))
                        .startsWith("die Einheit g lässt sich nicht in mL umrechnen"))
                .satisfies(e -> assertThat(((UnitMismatchException) e).from()).contains(GRAM))
                .satisfies(e -> assertThat(((UnitMismatchException) e).to()).contains(MILLILITRE));
        assertThatThrownBy(() -> mass.to(MILLILITRE)).isInstanceOf(UnitMismatchException.class);
        assertThatThrownBy(() -> mass.minus(volume)).isInstanceOf(UnitMismatchException.class);
        assertThatThrownBy(() -> mass.compareTo(volume)).isInstanceOf(UnitMismatchException.class);
        assertThatThrownBy(() -> mass.ratioTo(volume)).isInstanceOf(UnitMismatchException.class);
        assertThatThrownBy(() -> mass.in(FormulationUnits.ONE)).hasMessageContaining("a pure number");
        assertThat(mass.isEquivalentTo(volume)).isFalse();
        assertThat(mass.equals(volume)).isFalse();
        Amount length = Amount.of(1, Units.METRE);
        assertThatThrownBy(() -> length.plus(Amount.of(1, Units.SECOND))).isInstanceOf(UnitMismatchException.class);
        assertThat(length.plus(Amount.of(1, KILO(Units.METRE)))).hasToString("1001 m");
        assertThat(length).isEqualTo(Amount.of(1, Units.METRE)).isNotEqualTo(mass);
    }

    @Test
    void the_mismatch_travels_without_its_units() throws Exception {
        UnitMismatchException copy = ValueContract.copy(new UnitMismatchException(GRAM, MILLILITRE));
        assertThat(copy).hasMessageContaining("unit g");
        assertThat(copy.from()).isEmpty();
        assertThat(copy.to()).isEmpty();
    }

    @Test
    void an_amount_in_a_foreign_unit_says_how_to_serialize_it() {
        assertThatThrownBy(() -> ValueContract.bytes(Amount.of(2, Units.GRAM.divide(3))))
                .isInstanceOf(NotSerializableException.class)
                .hasMessageContaining("convert it");
        assertThatThrownBy(() -> ValueContract.read(ValueContract.bytes(new SerializedAmount(Ratio.ONE, "stone"))))
                .isInstanceOf(java.io.InvalidObjectException.class)
                .hasMessageContaining("stone");
        assertThatThrownBy(() -> ValueContract.read(ValueContract.bytes(new SerializedAmount(null, "g"))))
                .isInstanceOf(java.io.InvalidObjectException.class);
    }

    @Test
    @SuppressWarnings("NullAway")
    void a_check_of_an_argument_names_it() {
        Amount<Mass> none = Amount.mass("0 g");
        assertThat(Amount.requireNotNegative("loss", none)).isSameAs(none);
        Amount<Mass> some = Amount.mass("0.001 g");
        assertThat(Amount.requirePositive("loss", some)).isSameAs(some);
        assertThatThrownBy(() -> Amount.requirePositive("loss", none))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("loss is 0 g: it must be above 0");
        assertThatThrownBy(() -> Amount.requireNotNegative("loss", none.minus(Amount.mass("1 g"))))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("loss is -1 g: it must be at least 0");
        Amount<Mass> missing = null;
        assertThatThrownBy(() -> Amount.requirePositive("loss", missing))
                .isInstanceOf(NullPointerException.class)
                .hasMessage("loss");
        assertThatThrownBy(() -> Amount.requireNotNegative(null, none))
                .isInstanceOf(NullPointerException.class)
                .hasMessage("name");
    }

    @Test
    void null_is_refused_by_name() throws IllegalAccessException {
        NullTester tester = new NullTester(Map.of(
                Ratio.class,
                Ratio.ONE,
                String.class,
                "1",
                Unit.class,
                GRAM,
                long.class,
                1L,
                Number.class,
                1,
                Class.class,
                Mass.class,
                Rounding.class,
                Rounding.none(),
                Amount.class,
                Amount.mass("1 g"),
                Quantity.class,
                Amount.mass("1 g")));
        assertThat(tester.test(Amount.class, Amount.mass("1 g"))).isGreaterThan(25);
    }

    @Test
    void kilogram_and_gram_of_the_reference_implementation_are_ours() {
        assertThat(Amount.of(1, Units.KILOGRAM).getUnit()).isSameAs(KILOGRAM);
        assertThat(Amount.of(1, KILO(Units.GRAM)).getUnit()).isSameAs(KILOGRAM);
        assertThat(Amount.of(1, Units.KELVIN).getUnit()).isSameAs(KELVIN);
    }
}
