package io.github.formulationmath.weighing;

import static io.github.formulationmath.support.Made.covariance;
import static io.github.formulationmath.support.Made.estimate;
import static io.github.formulationmath.support.Made.madeShare;
import static io.github.formulationmath.support.Made.shareVariance;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.formulationmath.number.Bounds;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.Interval;
import io.github.formulationmath.reckoning.Subject;
import io.github.formulationmath.simulation.CoverageFactor;
import io.github.formulationmath.simulation.InputQuantity.Law;
import io.github.formulationmath.simulation.MonteCarlo;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javax.measure.quantity.Dimensionless;
import org.apache.commons.math3.analysis.differentiation.DerivativeStructure;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The variances of shares against automatic differentiation, against drawing, and against a published example. */
class UncertaintyTest {

    private static final Balance TENTH = Balance.of("0.1 g", "2 kg");

    /** A case with its name, so that a failure says which. */
    private record Case(String name, MadeMasses made) {

        @Override
        public String toString() {
            return name;
        }
    }

    static Stream<Case> cases() {
        ErrorModel none = ErrorModel.readabilityOnly();
        ErrorModel noisy = none.withRepeatability("0.2 g");
        ErrorModel crooked = none.withLinearityOfNetReading(Amount.mass("0.9 g"), Law.TRIANGULAR)
                .withRepeatability("0.01 g")
                .withCalibration(Ratio.of(1, 100));
        ErrorModel messy = none.withResidue(Amount.mass("0 g"), Amount.mass("2 g"))
                .withBuoyancy(Bounds.closed(Ratio.parse("0.0009"), Ratio.parse("0.0013")));
        return Stream.of(
                new Case("readability only", make(none, WeighingMethod.TARE_EACH, "12.3", "40", "3.1")),
                new Case("strongly correlated", make(noisy, WeighingMethod.CUMULATIVE, "12", "30", "11", "25", "9")),
                new Case("crooked and off scale", make(crooked, WeighingMethod.CUMULATIVE, "40", "60", "50")),
                new Case("two lines, one large", make(none, WeighingMethod.CUMULATIVE, "2", "300")),
                new Case("dominated by one rectangular term", make(messy, WeighingMethod.FROM_BOAT, "30", "50", "40")),
                new Case("one residue among exact lines", oneResidue()),
                new Case("two balances", twoBalances()));
    }

    /** The linear formula agrees with drawing to two significant digits, for every line and for a mixture. */
    @Tag("long")
    @ParameterizedTest
    @MethodSource("cases")
    void analytic_agrees_with_monte_carlo(Case it) throws InterruptedException {
        List<MadeShare> shares = new ArrayList<>();
        for (int i = 0; i < it.made().size(); i++) {
            shares.add(it.made().madeShare(i));
        }
        shares.add(madeShare(it.made(), Subject.of("Y", "mixture"), strengths(it.made())));
        for (MadeShare share : shares) {
            double analytic = share.uncertainty().canonical().doubleValue();
            MonteCarlo.Result<Dimensionless> drawn = share.simulation()
                    .withSignificantDigits(4)
                    .withMostTrials(300_000)
                    .run();
            double twoDigits =
                    new BigDecimal(analytic).round(new MathContext(2)).ulp().doubleValue() / 2;
            assertThat(fraction(drawn.standardUncertainty())).isCloseTo(analytic, within(twoDigits));
            assertThat(fraction(drawn.estimate()))
                    .isCloseTo(share.share().canonical().doubleValue(), within(twoDigits));
        }
    }

    /** A single rectangular term makes the normal coverage factor wrong: k = 1.96 claims more than 100 %. */
    @Test
    void a_dominated_law_is_not_normal() throws InterruptedException {
        MadeShare share = oneResidue().madeShare(1);
        MonteCarlo.Result<Dimensionless> drawn = share.simulation().run();
        Amount<Dimensionless> u = share.uncertainty();
        Amount<Dimensionless> expanded =
                u.times(CoverageFactor.normal(Ratio.parse("0.95")).factor());
        assertThat(drawn.validates(
                        Interval.of(share.share().minus(expanded), share.share().plus(expanded))))
                .isFalse();
        // JCGM 100:2008, G.1.3: the 95 % interval of a rectangular law has k = 1.65.
        Interval<Amount<Dimensionless>> interval = drawn.symmetricInterval();
        assertThat(interval.greatest().minus(interval.least()).ratioTo(u).doubleValue() / 2)
                .isCloseTo(1.65, within(0.02));
        assertThat(drawn.estimate().symbol()).isEqualTo("%");
    }

    private static double fraction(Amount<Dimensionless> share) {
        return share.canonical().doubleValue();
    }

    /** ∂y/∂m = (c − y)/S by automatic differentiation (Commons Math), with the covariance matrix in full. */
    @ParameterizedTest
    @MethodSource("cases")
    void analytic_agrees_with_automatic_differentiation(Case it) {
        MadeMasses made = it.made();
        for (int line = 0; line < made.size(); line++) {
            List<Ratio> one = new ArrayList<>();
            for (int j = 0; j < made.size(); j++) {
                one.add(j == line ? Ratio.ONE : Ratio.ZERO);
            }
            double expected = varianceByDifferentiation(made, one);
            assertThat(shareVariance(made, line).doubleValue()).isCloseTo(expected, within(1e-12 * expected));
            assertThat(shareVariance(made, one)).isEqualTo(shareVariance(made, line));
        }
        double expected = varianceByDifferentiation(made, strengths(made));
        assertThat(shareVariance(made, strengths(made)).doubleValue()).isCloseTo(expected, within(1e-12 * expected));
    }

    private static double varianceByDifferentiation(MadeMasses made, List<Ratio> strengths) {
        int k = made.size();
        DerivativeStructure part = new DerivativeStructure(k, 1, 0);
        DerivativeStructure total = new DerivativeStructure(k, 1, 0);
        for (int j = 0; j < k; j++) {
            DerivativeStructure mass =
                    new DerivativeStructure(k, 1, j, estimate(made, j).doubleValue());
            part = part.add(mass.multiply(strengths.get(j).doubleValue()));
            total = total.add(mass);
        }
        double[] derivatives = part.divide(total).getAllDerivatives();
        double variance = 0;
        for (int i = 0; i < k; i++) {
            for (int j = 0; j < k; j++) {
                variance += derivatives[1 + i]
                        * derivatives[1 + j]
                        * covariance(made, i, j).doubleValue();
            }
        }
        return variance;
    }

    private static List<Ratio> strengths(MadeMasses made) {
        return IntStream.range(0, made.size())
                .mapToObj(i -> Ratio.of(1 + (i * 7) % 5, 10))
                .toList();
    }

    private static MadeMasses make(ErrorModel errors, WeighingMethod method, String... grams) {
        return MadeMasses.of(IntStream.range(0, grams.length)
                .mapToObj(i ->
                        addition("L" + i, grams[i], TENTH.withErrors(errors)).by(method))
                .toList());
    }

    private static MadeMasses oneResidue() {
        Balance exact = Balance.of("0.001 g", "2 kg");
        Balance boat = exact.withErrors(
                        ErrorModel.readabilityOnly().withResidue(Amount.mass("0.1 g"), Amount.mass("3 g")))
                .named("boat");
        return MadeMasses.of(List.of(
                addition("A", "100", exact),
                addition("B", "30", boat).by(WeighingMethod.FROM_BOAT),
                addition("C", "70", exact)));
    }

    private static MadeMasses twoBalances() {
        Balance fine = Balance.of("0.01 g", "200 g")
                .withErrors(ErrorModel.readabilityOnly().withCalibration(Ratio.of(1, 500)))
                .named("fine");
        Balance coarse = Balance.of("1 g", "5 kg")
                .withErrors(ErrorModel.readabilityOnly().withCalibration(Ratio.of(1, 300)))
                .named("coarse");
        return MadeMasses.of(List.of(
                addition("A", "500", coarse),
                addition("B", "12.34", fine),
                addition("C", "250", coarse).by(WeighingMethod.CUMULATIVE),
                addition("D", "120", coarse).by(WeighingMethod.CUMULATIVE)));
    }

    private static Addition addition(String name, String grams, Balance balance) {
        Amount<javax.measure.quantity.Mass> mass = Amount.mass(grams + " g");
        return Addition.of(name, mass, mass, balance);
    }
}
