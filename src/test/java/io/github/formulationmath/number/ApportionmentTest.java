package io.github.formulationmath.number;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.formulationmath.oracle.Rational;
import io.github.formulationmath.oracle.Shares;
import io.github.formulationmath.reference.ReferenceTable;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

class ApportionmentTest {

    private static List<Ratio> ratios(String... values) {
        return Stream.of(values).map(Ratio::parse).toList();
    }

    @Test
    void the_census_of_1790_gives_the_published_seats() {
        // Hamilton's method, 60 seats: shared/reference/largest-remainder-census-1790.csv (electowiki, Hamilton
        // method).
        List<ReferenceTable.Row> rows = ReferenceTable.read("shared/reference/largest-remainder-census-1790.csv")
                .rows();
        Ratio total = rows.stream().map(r -> Ratio.parse(r.text("population"))).reduce(Ratio.ZERO, Ratio::plus);
        List<Ratio> quotas = rows.stream()
                .map(r -> Ratio.parse(r.text("population")).times(60).dividedBy(total))
                .toList();
        assertThat(total).isEqualTo(Ratio.of(3_615_920));
        assertThat(Apportionment.largestRemainder(quotas))
                .isEqualTo(rows.stream().map(r -> Ratio.parse(r.text("seats"))).toList());
    }

    @Test
    void three_percentages_close_at_a_hundred() {
        // shared/reference/largest-remainder-simple.csv (a teachers' mailing list; closed column computed).
        List<ReferenceTable.Row> rows = ReferenceTable.read("shared/reference/largest-remainder-simple.csv")
                .rows();
        assertThat(Apportionment.largestRemainder(
                        rows.stream().map(r -> Ratio.parse(r.text("percent"))).toList()))
                .isEqualTo(rows.stream().map(r -> Ratio.parse(r.text("closed"))).toList());
    }

    @Test
    void ties_go_to_the_earlier_part_and_nothing_else_moves() {
        assertThat(Apportionment.largestRemainder(ratios("1/3", "1/3", "1/3"))).isEqualTo(ratios("1", "0", "0"));
        assertThat(Apportionment.largestRemainder(ratios("0.5", "2", "0.5"))).isEqualTo(ratios("1", "2", "0"));
        assertThat(Apportionment.largestRemainder(ratios("-0.5", "1.5"))).isEqualTo(ratios("0", "1"));
        assertThat(Apportionment.largestRemainder(List.of())).isEmpty();
    }

    @Test
    void the_order_of_the_remainders_is_that_in_which_units_are_given() {
        assertThat(Apportionment.byRemainder(ratios("0.2", "0.7", "0", "0.7"))).containsExactly(1, 3, 0, 2);
        assertThatThrownBy(() -> Apportionment.byRemainder(null)).hasMessage("remainders");
    }

    @Tag("long")
    @Test
    void random_quotas_agree_with_the_hand_method() {
        Hard hard = new Hard(29);
        for (int round = 0; round < 20_000; round++) {
            List<Rational> quotas = new ArrayList<>();
            Rational sum = Rational.of(0, 1);
            long parts = 1 + hard.below(6);
            for (int i = hard.below(12); i > 0; i--) {
                quotas.add(Rational.of(hard.number() % 1000, parts));
                sum = sum.add(quotas.get(quotas.size() - 1));
            }
            quotas.add(Rational.whole(sum.floor()).add(Rational.of(1, 1)).subtract(sum));
            List<BigInteger> expected = Shares.largestRemainder(quotas);
            assertThat(Apportionment.largestRemainder(
                            quotas.stream().map(Hard::ratio).toList()))
                    .isEqualTo(expected.stream().map(Ratio::of).toList());
        }
    }

    @Test
    void quotas_that_make_no_whole_total_are_refused_with_their_sum() {
        assertThatThrownBy(() -> Apportionment.largestRemainder(ratios("0.5", "0.7")))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("add up to 1.2");
        assertThatThrownBy(() -> Apportionment.largestRemainder(null)).hasMessage("quotas");
    }
}
