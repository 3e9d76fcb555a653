package io.github.formulationmath.analysis;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.formulationmath.number.Ratio;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.Random;
import java.util.function.Function;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/**
 * Random titrations against an arithmetic of their own: decimals of sixty digits, derivatives by differences, molar masses as printed
 * constants.
 */
@DisplayName("Values and budgets against differences of decimals")
class SensitivityOracleTest {

    private static final MathContext SIXTY = new MathContext(60);
    private static final BigDecimal STEP = new BigDecimal("1e-15");
    private static final BigDecimal CLOSE = new BigDecimal("1e-12");
    private static final BigDecimal KOH = new BigDecimal("56.10564");
    private static final BigDecimal IODINE = new BigDecimal("126.90447");
    private static final BigDecimal CARBONATE = new BigDecimal("138.2055");
    private static final int CASES = 200 * Math.max(1, Integer.getInteger("formulationmath.cases", 1));

    /** A function of factor, first and second reading and mass, in the unit of the budget. */
    private interface Formula extends Function<BigDecimal[], BigDecimal> {}

    /** The inputs of one case: value and standard uncertainty of f, V₀ or V₁, V or V₂, and m. */
    private record Case(String[] values, String[] uncertainties, String normality) {

        static Case of(Random random) {
            int first = 2000 + random.nextInt(2000);
            int second = first - 1 - random.nextInt(900);
            return new Case(
                    new String[] {
                        "0." + (9500 + random.nextInt(400)),
                        BigDecimal.valueOf(first, 2).toPlainString(),
                        BigDecimal.valueOf(second, 2).toPlainString(),
                        BigDecimal.valueOf(10_000 + random.nextInt(30_000), 4).toPlainString()
                    },
                    new String[] {
                        BigDecimal.valueOf(1 + random.nextInt(20), 4).toPlainString(),
                        BigDecimal.valueOf(1 + random.nextInt(50), 3).toPlainString(),
                        BigDecimal.valueOf(1 + random.nextInt(50), 3).toPlainString(),
                        BigDecimal.valueOf(1 + random.nextInt(9), 4).toPlainString()
                    },
                    BigDecimal.valueOf(1 + random.nextInt(10), 1).toPlainString());
        }

        Titrant titrant() {
            return Titrant.of("titrant", normality + " N", values[0]).standard(uncertainties[0], "7");
        }

        Estimate<javax.measure.quantity.Volume> volume(int i) {
            return Estimate.volume(values[i] + " mL").standard(uncertainties[i] + " mL", "9");
        }

        Estimate<javax.measure.quantity.Mass> mass() {
            return Estimate.mass(values[3] + " g").standard(uncertainties[3] + " g");
        }

        BigDecimal[] decimals(String... texts) {
            BigDecimal[] x = new BigDecimal[texts.length];
            for (int i = 0; i < texts.length; i++) {
                x[i] = new BigDecimal(texts[i]);
            }
            return x;
        }

        void demand(Determination<?> found, Formula formula, Ratio unit) {
            BigDecimal[] x = decimals(values);
            BigDecimal[] u = decimals(uncertainties);
            assertClose(found.origin().number().dividedBy(unit), formula.apply(x));
            BigDecimal variance = BigDecimal.ZERO;
            BigDecimal fourths = BigDecimal.ZERO;
            for (int i = 0; i < x.length; i++) {
                BigDecimal[] up = x.clone();
                BigDecimal[] down = x.clone();
                up[i] = x[i].add(STEP);
                down[i] = x[i].subtract(STEP);
                BigDecimal slope =
                        formula.apply(up).subtract(formula.apply(down)).divide(STEP.add(STEP), SIXTY);
                BigDecimal own = slope.multiply(u[i], SIXTY).pow(2, SIXTY);
                variance = variance.add(own);
                if (i < 3) {
                    BigDecimal degrees = BigDecimal.valueOf(i == 0 ? 7 : 9);
                    fourths = fourths.add(own.pow(2, SIXTY).divide(degrees, SIXTY));
                }
            }
            assertClose(found.budget().variance(), variance);
            assertClose(
                    found.budget().effectiveDegreesOfFreedom().orElseThrow(),
                    variance.pow(2, SIXTY).divide(fourths, SIXTY));
        }
    }

    private static void assertClose(Ratio found, BigDecimal expected) {
        BigDecimal decimal = new BigDecimal(found.numerator()).divide(new BigDecimal(found.denominator()), SIXTY);
        assertThat(decimal.subtract(expected).abs())
                .as(decimal + " against " + expected)
                .isLessThan(CLOSE.multiply(expected.abs().max(BigDecimal.ONE)));
    }

    /** M · c · f · (V₀ − V) / m. */
    private static Formula perMass(BigDecimal molar, String normality) {
        BigDecimal c = new BigDecimal(normality);
        return x ->
                molar.multiply(c).multiply(x[0]).multiply(x[1].subtract(x[2])).divide(x[3], SIXTY);
    }

    @Test
    void random_back_titrations() {
        Random random = new Random(20_261_126);
        for (int i = 0; i < CASES; i++) {
            Case given = Case.of(random);
            BackTitration titration = BackTitration.of(given.titrant(), given.volume(1), given.volume(2));
            given.demand(
                    titration.saponificationValue(given.mass()), perMass(KOH, given.normality()), Ratio.of(1, 1000));
            Formula iodine = perMass(IODINE, given.normality());
            given.demand(
                    titration.iodineValue(given.mass()), x -> iodine.apply(x).movePointLeft(1), Ratio.of(1, 100));
            Formula moles = perMass(BigDecimal.ONE, given.normality());
            given.demand(
                    titration.saponificationEquivalent(given.mass()),
                    x -> BigDecimal.valueOf(1000).divide(moles.apply(x), SIXTY),
                    Ratio.ONE);
        }
    }

    @Test
    void random_direct_titrations() {
        Random random = new Random(20_261_127);
        for (int i = 0; i < CASES; i++) {
            Case given = Case.of(random);
            Titration titration = Titration.of(given.titrant(), given.volume(1), given.volume(2));
            given.demand(titration.acidValue(given.mass()), perMass(KOH, given.normality()), Ratio.of(1, 1000));
        }
    }

    /** The shares of a lye: 2 V₁ − V₂ for the hydroxide. The mass is made large enough that no share exceeds the whole. */
    @Test
    void random_assays() {
        Random random = new Random(20_261_128);
        for (int i = 0; i < CASES; i++) {
            Case drawn = Case.of(random);
            String heavy =
                    new BigDecimal(drawn.values()[3]).multiply(BigDecimal.TEN).toPlainString();
            Case given = new Case(
                    new String[] {drawn.values()[0], drawn.values()[2], drawn.values()[1], heavy},
                    drawn.uncertainties(),
                    "0.5");
            LyeAssay assay = LyeAssay.of(
                    io.github.formulationmath.soap.Alkali.POTASSIUM_HYDROXIDE,
                    given.titrant(),
                    given.volume(1),
                    given.volume(2),
                    given.mass());
            BigDecimal c = new BigDecimal("0.05");
            given.demand(
                    assay.hydroxide(),
                    x -> KOH.multiply(c)
                            .multiply(x[0])
                            .multiply(x[1].add(x[1]).subtract(x[2]))
                            .divide(x[3], SIXTY),
                    Ratio.of(1, 100));
            given.demand(
                    assay.carbonate(),
                    x -> CARBONATE
                            .multiply(c)
                            .multiply(x[0])
                            .multiply(x[2].subtract(x[1]))
                            .divide(x[3], SIXTY),
                    Ratio.of(1, 100));
        }
    }

    /** Some coefficient that is wrong shows: the oracle is no formality. */
    @Test
    void the_oracle_notices_a_wrong_formula() {
        Case given = Case.of(new Random(1));
        Determination<?> found = BackTitration.of(given.titrant(), given.volume(1), given.volume(2))
                .saponificationValue(given.mass());
        List<BigDecimal> wrong = List.of(new BigDecimal("56.1"), new BigDecimal("39.99711"));
        assertThat(wrong)
                .allSatisfy(molar -> org.assertj.core.api.Assertions.assertThatThrownBy(
                                () -> given.demand(found, perMass(molar, given.normality()), Ratio.of(1, 1000)))
                        .isInstanceOf(AssertionError.class));
    }
}
