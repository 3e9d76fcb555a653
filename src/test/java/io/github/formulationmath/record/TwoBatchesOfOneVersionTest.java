package io.github.formulationmath.record;

import static io.github.formulationmath.support.TwoBalances.CREAM;
import static io.github.formulationmath.support.TwoBalances.record;
import static org.assertj.core.api.Assertions.assertThat;

import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.oracle.Rational;
import io.github.formulationmath.record.VersionComparison.LineDifference;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** One version made twice on two balances: what differs surely, and what the errors of weighing may explain. */
class TwoBatchesOfOneVersionTest {

    @Test
    void a_difference_is_sure_only_where_no_errors_explain_it() {
        VersionComparison comparison =
                VersionComparison.of(record(1, "94.0 g", "5.0 g", "0.98 g"), record(2, "94.0 g", "5.1 g", "1.01 g"));
        assertThat(comparison.lines()).extracting(LineDifference::isSure).containsExactly(false, false, true);
        assertThat(comparison.lines().get(1))
                .asString()
                .isEqualTo("Glycerin ≈ 5.09440 % instead of ≈ 5.00100 %, which the errors of weighing may explain");
        assertThat(comparison.lines().get(2)).asString().doesNotContain("errors");
        assertThat(VersionComparison.of(CREAM, CREAM).changes()).isEmpty();
    }

    /** In hundredths: every corner of the errors of both batches stays inside the bounds of the difference. */
    @Test
    void no_errors_of_either_batch_leave_the_bounds_of_the_difference() {
        SplittableRandom r = new SplittableRandom(86);
        int cases = 40 * Math.max(1, Integer.getInteger("formulationmath.cases", 1));
        long[] error = {10, 10, 1};
        for (int k = 0; k < cases; k++) {
            long[][] read = {
                {10 * r.nextLong(930, 950), 10 * r.nextLong(45, 55), r.nextLong(90, 106)},
                {10 * r.nextLong(930, 950), 10 * r.nextLong(45, 55), r.nextLong(90, 106)}
            };
            VersionComparison comparison = VersionComparison.of(record(1, texts(read[0])), record(2, texts(read[1])));
            for (int corner = 0; corner < 64; corner++) {
                long[][] true_ = new long[2][3];
                for (int bit = 0; bit < 6; bit++) {
                    true_[bit / 3][bit % 3] =
                            read[bit / 3][bit % 3] + ((corner >> bit & 1) == 1 ? error[bit % 3] : -error[bit % 3]);
                }
                for (int i = 0; i < 3; i++) {
                    Rational percent =
                            share(true_[1], i).subtract(share(true_[0], i)).multiply(Rational.of(100, 1));
                    var bounds = comparison.lines().get(i).bounds().orElseThrow();
                    assertThat(percent.compare(rational(bounds.least().exactValue())))
                            .isGreaterThanOrEqualTo(0);
                    assertThat(percent.compare(rational(bounds.greatest().exactValue())))
                            .isLessThanOrEqualTo(0);
                }
            }
        }
    }

    private static String[] texts(long[] hundredths) {
        String[] texts = new String[hundredths.length];
        for (int i = 0; i < texts.length; i++) {
            texts[i] = hundredths[i] / 100 + "." + hundredths[i] / 10 % 10 + hundredths[i] % 10 + " g";
        }
        return texts;
    }

    private static Rational share(long[] masses, int line) {
        return Rational.of(masses[line], masses[0] + masses[1] + masses[2]);
    }

    private static Rational rational(Ratio value) {
        return new Rational(value.numerator(), value.denominator());
    }
}
