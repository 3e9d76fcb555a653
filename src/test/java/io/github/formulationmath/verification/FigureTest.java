package io.github.formulationmath.verification;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import io.github.formulationmath.batch.BatchSize;
import io.github.formulationmath.formula.Formula;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.verification.FigureCheck.Agreement;
import io.github.formulationmath.verification.Verification.Outcome;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** A figure is the number that is written, to the last character, and as fine as it was written. */
class FigureTest {

    @ParameterizedTest
    @CsvSource({
        "3 3/4 oz, 15/4, 1/4",
        "½ oz, 1/2, 1/2",
        "3½ oz, 7/2, 1/2",
        "3 ¾ oz, 15/4, 1/4",
        "1⁄8 oz, 1/8, 1/8",
        "5/4 oz, 5/4, 1/4",
        "0 2/4 oz, 1/2, 1/4",
        "16 1/2 oz, 33/2, 1/2",
        "2 1/3 US fl oz, 7/3, 1/3",
        "12.50 g, 25/2, 1/100"
    })
    void number_and_step(String written, String number, String step) {
        Figure figure = Figure.parse(written);
        assertThat(figure.number()).isEqualTo(Ratio.parse(number));
        assertThat(figure.digit()).isEqualTo(Ratio.parse(step));
        assertThat(figure.written()).isEqualTo(written);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "3 5/4 oz",
                "3 4/4 oz",
                "1/0 oz",
                "3 3 oz",
                "3 3/4/5 oz",
                "3/4",
                "3.5 1/2 oz",
                "½½ oz",
                "1 lb 30 oz",
                "-1/2 oz",
                "3 /4 oz",
                "3 3/ 4 oz",
                "² oz",
                "3 1/2  oz"
            })
    void what_is_no_figure_is_refused_and_never_cut(String written) {
        assertThatIllegalArgumentException().isThrownBy(() -> Figure.parse(written));
    }

    /** Whatever is read as a mass is read as the same number as a figure. */
    @Property(tries = 300)
    void figures_and_amounts_read_the_same_number(
            @ForAll @IntRange(max = 40) int whole,
            @ForAll @IntRange(min = 1, max = 64) int below,
            @ForAll @IntRange(min = 1, max = 64) int above) {
        String text = whole + " " + (above % below) + "/" + below + " oz";
        assertThat(Figure.parse(text).number()).isEqualTo(Amount.mass(text).exactValue());
    }

    /** Of quarters of an ounce, only the nearest agrees: a quarter more or less is another claim. */
    @Property(tries = 200)
    void quarters_are_held_to_a_quarter(@ForAll @IntRange(min = 4, max = 400) int eighths) {
        Formula half =
                Formula.inPercent("Half").line("A", "50 %").line("B", "50 %").build();
        String size = Ratio.of(eighths, 4) + " oz";
        int quarters = eighths / 2;
        Claim right = Claim.about(half, BatchSize.ofMass(Amount.mass(size)))
                .withFigure("A", quarters / 4 + " " + quarters % 4 + "/4 oz");
        assertThat(Verification.of(right).outcome()).isEqualTo(Outcome.INCOMPLETE);
        Claim wrong = Claim.about(half, BatchSize.ofMass(Amount.mass(size)))
                .withFigure("A", (quarters + 2) / 4 + " " + (quarters + 2) % 4 + "/4 oz");
        assertThat(Verification.of(wrong).outcome()).isEqualTo(Outcome.DOES_NOT_HOLD);
    }

    /** 3 oz is 3/4 oz short of 3 3/4 oz, and the total shown is 3/4 oz too much. */
    @Test
    void a_fraction_is_not_cut_off() {
        Formula half =
                Formula.inPercent("Half").line("A", "50 %").line("B", "50 %").build();
        Claim claim = Claim.about(half, BatchSize.ofMass("6 oz"))
                .withFigure("A", "3 3/4 oz")
                .withFigure("B", "3 3/4 oz")
                .withTotal("6 3/4 oz");
        Verification verification = Verification.of(claim);
        assertThat(verification.outcome()).isEqualTo(Outcome.DOES_NOT_HOLD);
        assertThat(verification.figures())
                .allSatisfy(check -> assertThat(check.agreement()).isEqualTo(Agreement.DISAGREES));
        assertThat(verification.totalAgreement()).contains(Agreement.DISAGREES);
    }

    /** IEEE 754 binary64: whatever arithmetic order the double took, its print is held as the double that it is. */
    @Property(tries = 300)
    void a_binary_number_is_not_accused(
            @ForAll @IntRange(min = 1, max = 999) int tenths, @ForAll @IntRange(min = 1, max = 100_000) int grams) {
        double shown = tenths * 0.1 / 100 * grams;
        Formula two = Formula.inPercent("two")
                .quantitySufficient("Aqua")
                .line("A", Ratio.of(tenths, 10) + " %")
                .build();
        Figure figure = Figure.parse(new java.math.BigDecimal(Double.toString(shown)).toPlainString() + " g");
        Claim claim = Claim.about(two, BatchSize.ofMass(grams + " g")).withFigure(two.line("A"), figure);
        assertThat(Verification.of(claim).figures().get(0).agreement())
                .isIn(Agreement.AGREES, Agreement.AGREES_AS_ROUNDED, Agreement.AGREES_AS_BINARY);
        if (figure.isBinary()) {
            Figure off =
                    Figure.parse(new java.math.BigDecimal(Double.toString(shown * (1 + 1e-10))).toPlainString() + " g");
            Claim wrong = Claim.about(two, BatchSize.ofMass(grams + " g")).withFigure(two.line("A"), off);
            assertThat(off.isBinary() ? Verification.of(wrong).outcome() : Outcome.DOES_NOT_HOLD)
                    .isEqualTo(Outcome.DOES_NOT_HOLD);
        }
    }

    @Test
    void more_than_fifteen_digits_are_a_double() {
        assertThat(Figure.parse("56.00000000000001 g").isBinary()).isTrue();
        assertThat(Figure.parse("0.00056000000000000 g").isBinary()).isFalse();
        assertThat(Figure.parse("123456789012345 g").isBinary()).isFalse();
        assertThat(Figure.parse("0.0000000000000000000 g").isBinary()).isFalse();
    }
}
