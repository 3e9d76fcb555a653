package io.github.formulationmath.solution;

import static io.github.formulationmath.solution.Acids.ACETATE;
import static io.github.formulationmath.solution.Acids.ACETIC;
import static io.github.formulationmath.solution.Acids.NAOH;
import static io.github.formulationmath.solution.Acids.acid;
import static io.github.formulationmath.solution.Acids.both;
import static io.github.formulationmath.solution.Acids.mass;
import static io.github.formulationmath.solution.Acids.moles;
import static io.github.formulationmath.solution.Acids.water;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.formulationmath.chemistry.MolarMass;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.number.Rounding;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.Interval;
import io.github.formulationmath.quantity.MassConcentration;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Worked examples of OpenStax Chemistry 2e (CC BY 4.0), modules m68807 to m68809, with the constants that they use, and of other texts
 * named beside them. Where a text prints another figure than the model has, the test says why.
 */
class PublishedPhTest {

    /** K 1.8e-5, 1.1e-3, 3.9e-6, 4.3e-7, 4.7e-11 as negative logarithms, to fifteen places. */
    private static final AcidConstants ACETIC_ACID = acid("4.744727494896694");

    private static final AcidConstants PHTHALIC = acid("2.958607314841775", "5.408935392973501");
    private static final AcidConstants CARBONIC = acid("6.366531544420413", "10.327902142064283");
    private static final AcidConstants CITRIC = acid("3.128", "4.761", "6.396");

    private static ChargeBalance buffer(AcidConstants acid, String acidMoles, String saltMoles) {
        return water("14")
                .with(acid, ACETIC, moles(acidMoles, ACETIC), 0)
                .with(acid, ACETATE, moles(saltMoles, ACETATE), 1);
    }

    /** P1, m68808: printed 4.74. */
    @Test
    void buffer() {
        assertThat(both(buffer(ACETIC_ACID, "0.10", "0.10").ph(), 4)).isEqualTo("4.7449");
        assertThat(both(buffer(ACETIC_ACID, "0.10", "0.10").ph(), 2)).isEqualTo("4.74");
    }

    /** P2, m68808: 1.0 mL of 0.10 M NaOH in 100 mL; printed 4.75. */
    @Test
    void buffer_with_base() {
        ChargeBalance mixed = water("14")
                .with(ACETIC_ACID, ACETIC, moles(Ratio.of(10, 101), ACETIC), 0)
                .with(ACETIC_ACID, ACETATE, moles(Ratio.of(10, 101), ACETATE), 1)
                .withStrong(NAOH, moles(Ratio.of(1, 1010), NAOH), 1);
        assertThat(both(mixed.ph(), 4)).isEqualTo("4.7536");
    }

    /** P3, m68808: printed 1.5e-4 M of hydrogen ions. */
    @Test
    void hydrogen_ions() {
        assertThat(hydrogen(buffer(ACETIC_ACID, "0.25", "0.030"))).isEqualTo("0.00014917");
    }

    /** P4, m68808: sodium acetate trihydrate to 0.300 L of 0.50 M acid for pH 5.00; printed 0.27 mol, 37 g. */
    @Test
    void salt_for_a_target() {
        MolarMass trihydrate = mass("C2H3NaO2·3H2O");
        Interval<MassConcentration> needed = water("14")
                .with(ACETIC_ACID, ACETIC, moles("0.50", ACETIC), 0)
                .toReach("5.00", ACETIC_ACID, trihydrate, 1);
        assertThat(grams(needed, "300", 2)).isEqualTo("36.74");
        assertThat(grams(needed, "300", 0)).isEqualTo("37");
    }

    /** P5, m68808: equal volumes of 0.200 M acid and 0.600 M salt; printed 5.222. */
    @Test
    void equal_volumes() {
        assertThat(both(buffer(ACETIC_ACID, "0.100", "0.300").ph(), 4)).isEqualTo("5.2219");
    }

    /** P6, m68808: then 3.00 mL of 0.034 M HCl to 0.200 L; printed 5.220, of which the third decimal is off by one. */
    @Test
    void buffer_with_acid() {
        ChargeBalance mixed = water("14")
                .with(ACETIC_ACID, ACETIC, moles(Ratio.of(20, 203), ACETIC), 0)
                .with(ACETIC_ACID, ACETATE, moles(Ratio.of(60, 203), ACETATE), 1)
                .withStrong(mass("HCl"), moles(Ratio.parse("0.102").dividedBy(203), mass("HCl")), -1);
        assertThat(both(mixed.ph(), 4)).isEqualTo("5.2189");
    }

    /**
     * P7, m68809: 25.00 mL of 0.100 M acid and NaOH of the same strength; printed 2.87, 4.74, 8.72, 12.30. The first takes x to be
     * small beside 0.100: the exact root is 2.8753, which rounds to 2.88.
     */
    @ParameterizedTest
    @CsvSource({"0, 2.8753", "12.5, 4.7452", "25, 8.7219", "37.5, 12.3010"})
    void titration_of_a_weak_acid(String millilitres, String expected) {
        Ratio base = Ratio.parse(millilitres);
        Ratio volume = base.plus(Ratio.of(25));
        ChargeBalance mixed = water("14")
                .with(ACETIC_ACID, ACETIC, moles(Ratio.parse("2.5").dividedBy(volume), ACETIC), 0)
                .withStrong(NAOH, moles(base.dividedBy(10).dividedBy(volume), NAOH), 1);
        assertThat(both(mixed.ph(), 4)).isEqualTo(expected);
    }

    /** P8, m68809: 50.0 mL of 0.100 M HNO3 and 0.200 M NaOH; printed 1.000, 1.5111 (a misprint), 7, 12.523. */
    @ParameterizedTest
    @CsvSource({"0, 1.0000", "15, 1.5119", "25, 7.0000", "40, 12.5229"})
    void titration_of_a_strong_acid(String millilitres, String expected) {
        Ratio base = Ratio.parse(millilitres);
        Ratio volume = base.plus(Ratio.of(50));
        ChargeBalance mixed = water("14")
                .withStrong(mass("HNO3"), moles(Ratio.of(5).dividedBy(volume), mass("HNO3")), -1)
                .withStrong(NAOH, moles(base.dividedBy(5).dividedBy(volume), NAOH), 1);
        assertThat(both(mixed.ph(), 4)).isEqualTo(expected);
    }

    /** P9 and P10, m68807: printed 2.8e-3 and 1.2e-4. */
    @Test
    void acids_of_two_steps() {
        MolarMass any = mass("C8H6O4");
        assertThat(hydrogen(water("14").with(PHTHALIC, any, moles("0.010", any), 0)))
                .isEqualTo("0.0028158");
        assertThat(hydrogen(water("14").with(CARBONIC, any, moles("0.033", any), 0)))
                .isEqualTo("0.00011891");
    }

    /**
     * P11, Florence and Attwood, Physicochemical Principles of Pharmacy, an example on an acetate buffer of pH 5.2 from 100 cm³ of
     * 0.1 M acid, pK 4.76: printed 2.258 g; the exact amount is 2.259 g. The volume of the salt is ignored there, and here.
     */
    @Test
    void salt_for_a_target_of_a_textbook() {
        AcidConstants acid = acid("4.76");
        Interval<MassConcentration> needed =
                water("14").with(acid, ACETIC, moles("0.1", ACETIC), 0).toReach("5.2", acid, ACETATE, 1);
        assertThat(grams(needed, "100", 3)).isEqualTo("2.259");
    }

    /**
     * P12, a question page for examinees: 10 mL of 0.10 M acid and 20 mL of 1 M salt, pK 4.74, published as 5.04. That is 4.74 + lg
     * (20/10), the ratio of the volumes; the ratio of the amounts is 20 and the pH 6.04.
     */
    @Test
    void published_wrong() {
        AcidConstants acid = acid("4.74");
        ChargeBalance mixed = water("14")
                .with(acid, ACETIC, moles(Ratio.of(1, 30), ACETIC), 0)
                .with(acid, ACETATE, moles(Ratio.of(20, 30), ACETATE), 1);
        assertThat(both(mixed.ph(), 3)).isEqualTo("6.041");
        assertThat(both(buffer(acid, "0.1", "0.2").ph(), 2))
                .as("volumes for amounts")
                .isEqualTo("5.04");
    }

    /** P13: our own figures with the constants of NIST SRD 46. */
    @Test
    void citric_acid() {
        MolarMass citric = mass("C6H8O7");
        assertThat(both(
                        water("13.997")
                                .with(CITRIC, citric, moles("0.1", citric), 0)
                                .ph(),
                        4))
                .isEqualTo("2.0818");
        assertThat(both(
                        water("13.997")
                                .with(CITRIC, citric, moles("0.01", citric), 0)
                                .ph(),
                        4))
                .isEqualTo("2.6200");
    }

    /** P14: 3 g/L of potassium sorbate and citric acid to pH 5.0, by hand 0.8478 g/L anhydrous and 0.9273 g/L as monohydrate. */
    @Test
    void citric_acid_for_a_sorbate() {
        ChargeBalance sorbate =
                water("13.997").with(acid("4.762"), mass("C6H7KO2"), MassConcentration.parse("0.3 % w/v"), 1);
        assertThat(grams(sorbate.toReach("5.0", CITRIC, mass("C6H8O7"), 0), "1000", 4))
                .isEqualTo("0.8478");
        assertThat(grams(sorbate.toReach("5.0", CITRIC, mass("C6H8O7·H2O"), 0), "1000", 4))
                .isEqualTo("0.9273");
    }

    /** More of an acid salt moves the pH either way: our own figures, with the constants of NIST SRD 46. */
    @Test
    void range_of_an_acid_salt() {
        AcidConstants phosphoric = acid("2.148", "7.198", "12.375");
        MolarMass salt = mass("NaH2PO4");
        Interval<MassConcentration> range = Interval.of(moles("0.01", salt), moles("0.1", salt));
        Interval<Ph> withBase = water("13.997")
                .with(phosphoric, salt, range, 1)
                .withStrong(NAOH, moles("0.001", NAOH), 1)
                .ph();
        assertThat(Rounding.toDecimalPlaces(3).format(withBase.least().value())).isEqualTo("5.239");
        assertThat(Rounding.toDecimalPlaces(3).format(withBase.greatest().value()))
                .isEqualTo("6.244");
        Interval<Ph> withAcid = water("13.997")
                .with(phosphoric, salt, range, 1)
                .withStrong(mass("HCl"), moles("0.001", mass("HCl")), -1)
                .ph();
        assertThat(Rounding.toDecimalPlaces(3).format(withAcid.least().value())).isEqualTo("3.366");
        assertThat(Rounding.toDecimalPlaces(3).format(withAcid.greatest().value()))
                .isEqualTo("4.138");
    }

    private static String hydrogen(ChargeBalance solution) {
        Interval<Ph> ph = solution.ph();
        Rounding five = Rounding.toSignificantDigits(5);
        String most =
                five.format(Enclosure.tenTo(ph.least().value().unaryMinus()).greatest());
        assertThat(five.format(
                        Enclosure.tenTo(ph.greatest().value().unaryMinus()).least()))
                .isEqualTo(most);
        return most;
    }

    private static String grams(Interval<MassConcentration> needed, String millilitres, int places) {
        Rounding rounding = Rounding.toDecimalPlaces(places);
        Amount<javax.measure.quantity.Volume> volume = Amount.volume(millilitres + " mL");
        String least = rounding.format(needed.least().amountIn(volume).canonical());
        assertThat(rounding.format(needed.greatest().amountIn(volume).canonical()))
                .isEqualTo(least);
        return least;
    }

    /**
     * A free base, of which one formula unit brings no cations. A slide (slideserve.com, weak base): 0.005 M ammonia with K_b 1.8e-5 has 2.91e-4
     * M of hydroxide and pH 10.5. A question page (studyzin.com): 0.150 M, pH 11.2. A page on weak bases
     * (phcalculator.blogspot.com): 0.1 M with K_b 1.75e-5, pH 11.12. Taken for its hydrochloride, the first would have 5.78.
     */
    @ParameterizedTest
    @CsvSource({
        "9.255272505103306, 0.005, 10.4641, 10.5, 1, 5.7774",
        "9.255272505103306, 0.150, 11.2133, 11.2, 1, 5.0396",
        "9.243038048686294, 0.1, 11.1186, 11.12, 2, 5.1215"
    })
    void free_bases(String pk, String moles, String exact, String printed, int places, String hydrochloride) {
        AcidConstants ammonium = Acids.ammonium(pk);
        Interval<Ph> free = water("14").with(ammonium, moles + " mol/L", 0).ph();
        assertThat(both(free, 4)).isEqualTo(exact);
        assertThat(both(free, places)).isEqualTo(printed);
        MolarMass ammonia = mass("NH3");
        assertThat(water("14").with(ammonium, ammonia, moles(moles, ammonia), 0).ph())
                .isEqualTo(free);
        assertThat(both(water("14").with(ammonium, moles + " mol/L", -1).ph(), 4))
                .isEqualTo(hydrochloride);
    }

    /** How much sodium hydroxide reaches a pH, and that it does; and hydrochloric acid from the other side. */
    @Test
    void strong_bases_and_acids_reach_a_ph() {
        MolarMass citric = mass("C6H8O7");
        ChargeBalance sour = water("13.997").with(CITRIC, citric, MassConcentration.parse("0.3 % w/v"), 0);
        Interval<MassConcentration> needed = sour.strongToReach("5.5", NAOH, 1);
        assertThat(grams(needed, "1000", 6)).isEqualTo("1.221866");
        assertThat(both(sour.withStrong(NAOH, needed, 1).ph(), 7)).isEqualTo("5.5000000");
        MolarMass hydrochloric = mass("HCl");
        ChargeBalance strong = water("14").withStrong("0.01 mol/L", 1);
        Interval<MassConcentration> acid = strong.strongToReach("7", hydrochloric, -1);
        assertThat(grams(acid, "1000", 4)).isEqualTo("0.3646");
        assertThatThrownBy(() -> strong.strongToReach("7", NAOH, 1))
                .hasMessageContaining("add a base instead of an acid");
        assertThatThrownBy(() -> strong.strongToReach("7", NAOH, 0))
                .hasMessageContaining("neither gives nor takes protons");
        assertThatThrownBy(() -> strong.strongToReach("14.2", NAOH, 1)).hasMessageContaining("between 0 and 14");
    }

    /** What its formula says of a salt is not overruled, and no acid has more protons to give than it has constants. */
    @Test
    void a_salt_is_not_counted_as_its_acid() {
        ChargeBalance water = water("14");
        MolarMass benzoate = mass("C7H5NaO2");
        MassConcentration half = MassConcentration.parse("0.5 % w/v");
        assertThatThrownBy(() -> water.with(acid("4.204"), benzoate, half, 0))
                .hasMessage(
                        "cations is 0, and one formula unit of C7H5NaO2 brings 1: say so, or give the formula of the free"
                                + " acid if that is what is dissolved");
        assertThatThrownBy(() -> water.toReach("5", acid("4.204"), benzoate, 0))
                .hasMessageContaining("brings 1: say so");
        assertThatThrownBy(() -> water.with(CITRIC, "0.1 mol/L", 4))
                .hasMessageContaining("one formula unit brings 0 to 3");
        assertThatThrownBy(() -> water.with(Acids.ammonium("9.5"), "0.1 mol/L", -2))
                .hasMessageContaining("one formula unit brings -1 to 0");
        assertThatThrownBy(() -> water.with(CITRIC, "0.1 M", 0)).hasMessageContaining("needs its unit");
        assertThatThrownBy(() -> water.withStrong("-0.1 mol/L", 1)).hasMessageContaining("write 0 mol/L or more");
        assertThatThrownBy(() -> acid("1.8e-5"))
                .hasMessage(
                        "pK of acid is 1.8e-5: that looks like the constant K itself; pK is its negative decadic logarithm,"
                                + " 4.74 for 1.8e-5");
    }
}
