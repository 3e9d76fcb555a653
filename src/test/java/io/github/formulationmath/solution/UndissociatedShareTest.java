package io.github.formulationmath.solution;

import static io.github.formulationmath.solution.Acids.acid;
import static io.github.formulationmath.solution.Acids.ammonium;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.formulationmath.document.Format;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.number.Rounding;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.Interval;
import io.github.formulationmath.quantity.MassConcentration;
import io.github.formulationmath.quantity.MassFraction;
import io.github.formulationmath.reckoning.Phrase;
import io.github.formulationmath.reckoning.Source;
import io.github.formulationmath.reckoning.Wording;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The share of an acid that has kept its protons. */
class UndissociatedShareTest {

    private static final IonicStrength TENTH = IonicStrength.parse("0.1 mol/L");
    private static final Source KING = Source.published("King and Prue, J. Chem. Soc. 1961", "275");

    /**
     * By hand from 1/(1 + 10^(pH − pK)); the constants are those of docs/acids.md and, for levulinic, sorbic and dehydroacetic acid,
     * values that the library does not ship. Ethylparaben has 8.50 at ionic strength 0; 8.34, often quoted, is of 0.1 mol/L.
     */
    @ParameterizedTest
    @CsvSource({
        "2.97, 8.536, 2.867, 0.925, 0.294, 0.093, 0.009",
        "4.204, 61.532, 33.591, 13.790, 4.815, 1.574, 0.160",
        "4.496, 75.806, 49.770, 23.858, 9.015, 3.038, 0.312",
        "4.60, 79.924, 55.731, 28.475, 11.182, 3.829, 0.397",
        "4.762, 85.253, 64.641, 36.633, 15.456, 5.465, 0.575",
        "4.875, 88.234, 70.339, 42.854, 19.168, 6.976, 0.744",
        "5.27, 94.903, 85.483, 65.060, 37.061, 15.698, 1.828",
        "8.34, 99.995, 99.986, 99.954, 99.856, 99.545, 95.629",
        "8.50, 99.997, 99.990, 99.968, 99.900, 99.685, 96.935"
    })
    void shares_by_hand(String pk, String at4, String at45, String at5, String at55, String at6, String at7) {
        assertThat(List.of("4", "4.5", "5", "5.5", "6", "7").stream()
                        .map(ph ->
                                share(UndissociatedShare.of(acid(pk), ph, "0").ideal()))
                        .toList())
                .containsExactly(at4, at45, at5, at55, at6, at7);
    }

    private static String share(Interval<MassFraction> share) {
        Rounding three = Rounding.toDecimalPlaces(3);
        String least = three.format(share.least().percent());
        assertThat(three.format(share.greatest().percent())).isEqualTo(least);
        return least;
    }

    /** Benzoic acid at pH 5: 13.79 %, 11.11 % with the mixed constant at 0.1 mol/L; 11.2 to 16.8 % for a pH off by 0.1. */
    @Test
    void both_lines_for_benzoic_acid() {
        UndissociatedShare exact = UndissociatedShare.of(acid("4.204"), "5.0", "0");
        assertThat(outward(exact.upToIonicStrength(TENTH), 2)).isEqualTo("11.11 to 13.79");
        assertThat(outward(UndissociatedShare.of(acid("4.204"), "5.0", "0.1").ideal(), 1))
                .isEqualTo("11.2 to 16.8");
    }

    private static String outward(Interval<MassFraction> share, int places) {
        Rounding rounding = Rounding.toDecimalPlaces(places);
        return rounding.with(RoundingMode.FLOOR).format(share.least().percent()) + " to "
                + rounding.with(RoundingMode.CEILING).format(share.greatest().percent());
    }

    /** At 0.1 mol/L: −0.107, −0.321 and −0.535 for the steps of an uncharged acid, +0.107 for an ammonium ion. */
    @Test
    void steps_move_as_their_charges_say() {
        Ratio shift = Davies.mostShift(TENTH);
        assertThat(Rounding.toDecimalPlaces(3).format(shift)).isEqualTo("0.107");
        assertThat(Rounding.toDecimalPlaces(4).format(Davies.mostShift(IonicStrength.parse("0.39 mol/L"))))
                .isEqualTo("0.1361");
        // The cation's acid form gains from salt, so that the upper end moves and the lower stays.
        UndissociatedShare amine = UndissociatedShare.of(ammonium("9.5"), "9.5", "0");
        assertThat(outward(amine.upToIonicStrength(TENTH), 1)).isEqualTo("50.0 to 56.2");
        UndissociatedShare citric = UndissociatedShare.of(acid("3.128", "4.761", "6.396"), "4.761", "0");
        MassFraction least = citric.upToIonicStrength(TENTH).least();
        AcidConstants moved = acid(
                Ratio.parse("3.128").minus(shift).toString(),
                Ratio.parse("4.761").minus(shift.times(3)).toString(),
                Ratio.parse("6.396").minus(shift.times(5)).toString());
        assertThat(least)
                .isEqualTo(UndissociatedShare.of(moved, "4.761", "0").ideal().least());
    }

    /** Any ionic strength up to the one given, any constants in their ranges: all inside, by plain doubles. */
    @Test
    void ends_hold_whatever_lies_between() {
        SplittableRandom random = new SplittableRandom(31);
        for (int i = 0; i < 300; i++) {
            int charge = random.nextInt(0, 3);
            int steps = random.nextInt(Math.max(1, charge), 4);
            double[] pks = random.doubles(steps, 2, 11).sorted().toArray();
            AcidConstants acid = new AcidConstants(
                    "acid",
                    java.util.Arrays.stream(pks)
                            .mapToObj(pk -> Interval.of(
                                    Ph.parse(String.valueOf(pk - 0.05)), Ph.parse(String.valueOf(pk + 0.05))))
                            .toList(),
                    charge,
                    Amount.temperature("25 °C"),
                    IonicStrength.ZERO,
                    KING);
            double reading = random.nextInt(20, 110) / 10.0;
            Interval<MassFraction> told = UndissociatedShare.of(acid, String.valueOf(reading), "0.1")
                    .upToIonicStrength(IonicStrength.parse("0.3 mol/L"));
            for (int k = 0; k < 20; k++) {
                double strength = random.nextDouble(0.3);
                double root = Math.sqrt(strength);
                double log = 0.509 * (root / (1 + root) - 0.3 * strength);
                double ph = reading + random.nextDouble(-0.1, 0.1);
                double sum = 1;
                double exponent = 0;
                for (int j = 0; j < steps; j++) {
                    int z = charge - j;
                    double here = pks[j] + random.nextDouble(-0.05, 0.05) + ((z - 1) * (z - 1) - z * z) * -log;
                    exponent += ph - here;
                    sum += Math.pow(10, exponent);
                }
                assertThat(1 / sum)
                        .isBetween(
                                told.least().fraction().doubleValue() - 1e-12,
                                told.greatest().fraction().doubleValue() + 1e-12);
            }
        }
    }

    @Test
    void window_of_ph_for_a_share() {
        assertThat(UndissociatedShare.highestPh(acid("4.204"), "50 %")).hasToString("4.204");
        assertThat(UndissociatedShare.highestPh(acid("4.204"), "10 %")).hasToString("5.158");
        assertThat(UndissociatedShare.lowestPh(ammonium("9.498"), "50 %")).hasToString("9.498");
        assertThat(UndissociatedShare.lowestPh(ammonium("9.498"), "90 %")).hasToString("10.453");
        AcidConstants wide = AcidConstants.at25Celsius("acid", KING, "4.205", "0.005");
        assertThat(UndissociatedShare.highestPh(wide, "50 %"))
                .as("the strongest")
                .hasToString("4.2");
        AcidConstants citric = acid("3.128", "4.761", "6.396");
        Ph highest = UndissociatedShare.highestPh(citric, "25 %");
        Ratio beyond = highest.value().plus(Ratio.of(1, 1000));
        assertThat(UndissociatedShare.of(citric, highest.toString(), "0")
                        .ideal()
                        .least())
                .isGreaterThanOrEqualTo(MassFraction.parse("25 %"));
        assertThat(UndissociatedShare.of(citric, beyond.toString(), "0").ideal().greatest())
                .isLessThan(MassFraction.parse("25 %"));
    }

    /** A pK of −1 leaves less than half at every pH from 0: there is no such pH, and 0 would be a wrong answer. */
    @Test
    void windows_that_are_not_there_are_refused() {
        assertThatThrownBy(() -> UndissociatedShare.highestPh(acid("-1"), "50 %"))
                .hasMessageContaining("at no pH from 0 to 14");
        assertThatThrownBy(() -> UndissociatedShare.lowestPh(ammonium("15"), "50 %"))
                .hasMessageContaining("at no pH from 0 to 14");
        assertThatThrownBy(() -> UndissociatedShare.lowestPh(acid("4"), "50 %")).hasMessageContaining("highestPh");
        assertThatThrownBy(() -> UndissociatedShare.highestPh(acid("4"), "100 %"))
                .hasMessageContaining("no pH has exactly that");
    }

    @Test
    void what_cannot_be_told_is_refused() {
        assertThatThrownBy(() -> UndissociatedShare.of(acid("4.2"), "14.05", "0.1"))
                .hasMessageContaining("between 0 and 14");
        assertThatThrownBy(() -> IonicStrength.parse("0.1")).hasMessageContaining("needs its unit");
        assertThatThrownBy(() -> IonicStrength.parse("-0.1 mol/L")).hasMessageContaining("0 mol/L or more");
        UndissociatedShare share = UndissociatedShare.of(acid("4.2"), "5", "0.1");
        assertThatThrownBy(() -> share.upToIonicStrength(IonicStrength.parse("0.4 mol/L")))
                .hasMessageContaining("0.39 mol/L");
        AcidConstants mixed = new AcidConstants(
                "ethyl 4-hydroxybenzoate",
                List.of(Interval.of(Ph.parse("8.34"), Ph.parse("8.34"))),
                0,
                Amount.temperature("25 °C"),
                TENTH,
                KING);
        assertThatThrownBy(() -> UndissociatedShare.of(mixed, "7", "0").upToIonicStrength(TENTH))
                .hasMessageContaining("ionic strength 0.1 mol/L")
                .hasMessageContaining("can be moved");
        assertThatThrownBy(() -> AcidConstants.at25Celsius("acid", Source.user(), "4.2", "0"))
                .hasMessageContaining("no source");
        assertThatThrownBy(() -> acid("14.285", "11.157", "6.396"))
                .as("cumulative constants")
                .hasMessageContaining("not as cumulative constants");
    }

    /** Sorbic acid, of which water at 20 °C dissolves 0.15 %, a figure that the user brings. */
    @Test
    void acid_beyond_its_solubility_is_warned_of() {
        MassConcentration dissolves = MassConcentration.parse("0.15 % w/v");
        UndissociatedShare sour = UndissociatedShare.of(acid("4.762"), "4.0", "0.1");
        UndissociatedShare mild = UndissociatedShare.of(acid("4.762"), "5.5", "0.1");
        assertThat(sour.crystallises(concentration("0.3", "0.3"), dissolves).map(Phrase::key))
                .contains("solution.crystallises");
        assertThat(sour.crystallises(concentration("0.16", "0.19"), dissolves).map(Phrase::key))
                .contains("solution.may-crystallise");
        assertThat(mild.crystallises(concentration("0.3", "0.3"), dissolves)).isEmpty();
    }

    private static Interval<MassConcentration> concentration(String least, String greatest) {
        return Interval.of(MassConcentration.ofPercent(least), MassConcentration.ofPercent(greatest));
    }

    @Test
    void both_lines_are_printed_with_what_they_do_not_tell() {
        AcidConstants benzoic = AcidConstants.at25Celsius("benzoic acid", KING, "4.205", "0.005");
        assertThat(UndissociatedShare.of(benzoic, "5.0", "0.1")
                        .document(TENTH, Wording.english())
                        .toString())
                .contains("4.2 – 4.21, at 25 °C and ionic strength 0 mol/L")
                .contains("11.18 – 16.96 %")
                .contains("8.95 – 16.96 %")
                .contains("with ionic strength up to 0.1 mol/L")
                .contains("is not efficacy")
                .contains("King and Prue")
                .doesNotContainIgnoringCase("safe");
    }

    /**
     * J. Smith and L. Hong-Shum, Food Additives Data Book, Blackwell 2003, p. 750, benzoic acid: undissociated 93.5, 59.3, 12.8, 1.44 and 0.144 %
     * at pH 3 to 7, with "pK 4.19" printed below. With 4.19 they are more; the column is that of a constant of about 4.16.
     */
    @ParameterizedTest
    @CsvSource({
        "3, 93.5, 93.94, 93.53",
        "4, 59.3, 60.77, 59.11",
        "5, 12.8, 13.41, 12.63",
        "6, 1.44, 1.53, 1.42",
        "7, 0.144, 0.15, 0.14"
    })
    void a_printed_column_is_not_of_the_constant_printed_below(
            String ph, String printed, String with419, String with416) {
        assertThat(percent("4.19", ph)).isEqualTo(with419);
        assertThat(percent("4.16", ph)).isEqualTo(with416);
        Ratio column = Ratio.parse(printed);
        Ratio from416 = column.minus(Ratio.parse(with416)).abs();
        Ratio from419 = column.minus(Ratio.parse(with419)).abs();
        assertThat(from416).isLessThanOrEqualTo(from419);
    }

    private static String percent(String pk, String ph) {
        Ratio share = UndissociatedShare.of(acid(pk), ph, "0").ideal().least().percent();
        return Rounding.toDecimalPlaces(2).format(share);
    }

    /** 1/(1 + 10^(pH − pK)) in decimals of our own: pH 5.5 and pK 5 stand a square root of ten apart. */
    @Test
    void an_undissociated_share_is_that_of_the_relation() {
        BigDecimal root = BigDecimal.TEN.sqrt(new MathContext(60));
        var acid = AcidConstants.at25Celsius("acid", Source.published("test", ""), "5", "0");
        var share = UndissociatedShare.of(acid, "5.5", "0").atTheMiddles();
        BigDecimal expected = BigDecimal.ONE.divide(BigDecimal.ONE.add(root), new MathContext(40));
        assertThat(share.fraction().minus(Ratio.of(expected)).abs()).isLessThan(Ratio.parse("1e-16"));
        assertThat(share.origin().working().document().print(Format.TEXT)).contains("antilog(u)");
    }
}
