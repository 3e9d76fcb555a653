package io.github.formulationmath.weighing;

import static io.github.formulationmath.support.Made.shareBounds;
import static io.github.formulationmath.support.Made.shareVariance;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.formulationmath.number.Bounds;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.support.CpuTime;
import java.time.Duration;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Absurd input gets an answer in bounded time. The limits are generous: the machine may be busy. */
class HostileWeighingTest {

    private static final Balance BALANCE = Balance.of("0.01 g", "500 kg")
            .withErrors(ErrorModel.readabilityOnly()
                    .withLinearityOfNetReading("0.01 g")
                    .withRepeatability("0.01 g")
                    .withCalibration(Ratio.of(1, 10_000)));

    /** Ten thousand lines: interval, variance and budget of every one, and of a mixture of all. */
    @Tag("long")
    @ParameterizedTest
    @EnumSource(WeighingMethod.class)
    void ten_thousand_lines(WeighingMethod method) {
        int lines = 10_000;
        CpuTime.assertWithin(Duration.ofSeconds(300), () -> {
            MadeMasses made = MadeMasses.of(IntStream.range(0, lines)
                    .mapToObj(i -> addition("L" + i, Ratio.of(1 + i % 97, 7)).by(method))
                    .toList());
            Ratio shares = Ratio.ZERO;
            for (int i = 0; i < lines; i++) {
                MadeShare share = made.madeShare(i);
                shares = shares.plus(share.share().canonical());
                assertThat(share.bounds().contains(share.share())).isTrue();
                assertThat(share.variance().origin().number())
                        .isEqualTo(share.budget().total().exactValue());
            }
            assertThat(shares).isEqualTo(Ratio.ONE);
            List<Ratio> strengths =
                    IntStream.range(0, lines).mapToObj(i -> Ratio.of(i % 5, 5)).toList();
            assertThat(shareBounds(made, strengths).lower().orElseThrow())
                    .isLessThan(shareBounds(made, strengths).upper().orElseThrow());
            assertThat(shareVariance(made, strengths).signum()).isPositive();
        });
    }

    /** A trace of a trace, beside tonnes: exact, and cut off at 0 and 1 where the display hides everything. */
    @ParameterizedTest
    @EnumSource(WeighingMethod.class)
    void line_below_everything_the_display_shows(WeighingMethod method) {
        MadeMasses made = MadeMasses.of(List.of(
                addition("trace", Ratio.parse("1e-300")).by(method),
                addition("bulk", Ratio.parse("1e5")).by(method),
                addition("none", Ratio.ZERO).by(method)));
        Bounds trace = shareBounds(made, 0);
        assertThat(trace.lower()).contains(Ratio.ZERO);
        assertThat(trace.contains(made.madeShare(0).share().canonical())).isTrue();
        assertThat(shareBounds(made, 2).lower()).contains(Ratio.ZERO);
        assertThat(shareBounds(made, 1).upper().orElseThrow()).isLessThanOrEqualTo(Ratio.ONE);
        assertThat(made.madeShare(0).uncertainty().canonical().doubleValue()).isPositive();
    }

    /** A batch that the display hides whole: nothing is guaranteed, and that is what the interval says. */
    @ParameterizedTest
    @EnumSource(WeighingMethod.class)
    void batch_below_everything_the_display_shows(WeighingMethod method) {
        MadeMasses made = MadeMasses.of(List.of(
                addition("a", Ratio.parse("0.001")).by(method),
                addition("b", Ratio.parse("0.002")).by(method)));
        assertThat(shareBounds(made, 0)).isEqualTo(Bounds.closed(Ratio.ZERO, Ratio.ONE));
    }

    private static Addition addition(String name, Ratio grams) {
        Amount<javax.measure.quantity.Mass> mass = Amount.grams(grams);
        return Addition.of(name, mass, mass, BALANCE);
    }

    /** A number of hundreds of digits is quoted in part, with its length. */
    @Test
    void a_figure_of_hundreds_of_digits_does_not_fill_the_message() {
        Amount<javax.measure.quantity.Mass> below =
                Amount.grams(Ratio.parse("1e900").plus(Ratio.of(1, 3)).unaryMinus());
        assertThatThrownBy(() -> Balance.of(below, below))
                .isInstanceOf(IllegalArgumentException.class)
                .satisfies(e -> assertThat(e.getMessage())
                        .hasSizeLessThan(400)
                        .containsPattern("\\.\\.\\..{0,25} \\([0-9]+ characters\\)"));
    }
}
