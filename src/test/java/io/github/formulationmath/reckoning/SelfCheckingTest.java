package io.github.formulationmath.reckoning;

import static io.github.formulationmath.support.WorkingAssertions.assertSelfChecking;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowable;

import io.github.formulationmath.document.Format;
import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.oracle.OracleException;
import io.github.formulationmath.oracle.PrintedArithmetic;
import io.github.formulationmath.reckoning.Operation.StatisticalFunction;
import io.github.formulationmath.support.RandomWorkings;
import io.github.formulationmath.support.WorkingAssertions;
import io.github.formulationmath.support.Workings;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.UnaryOperator;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Every printed line of arithmetic is true, and the check that says so would notice if it were not. */
class SelfCheckingTest {

    @Test
    void workings_of_every_kind_are_true() {
        assertSelfChecking(Workings.lineMass());
        assertSelfChecking(Workings.everything());
        assertSelfChecking(Workings.total(100));
        assertSelfChecking(Workings.hostile());
    }

    @Property(tries = 400)
    void random_relations_are_true_in_every_format(@ForAll long seed) {
        assertSelfChecking(RandomWorkings.of(seed));
    }

    /** A renderer that prints one wrong digit anywhere is found out. */
    @Test
    void every_wrong_digit_is_noticed() {
        String page = page(Workings.everything());
        int working = page.indexOf("\nWorking\n");
        int changed = 0;
        for (int i = working; i < page.length(); i++) {
            int lineStart = page.lastIndexOf('\n', i) + 1;
            if (Character.isDigit(page.charAt(i)) && page.startsWith("    ", lineStart)) {
                int digit = (page.charAt(i) - '0' + 1) % 10;
                String broken = page.substring(0, i) + digit + page.substring(i + 1);
                assertThat(catchThrowable(() -> verify(broken, Workings.everything())))
                        .as(page.substring(lineStart, i) + "^" + page.substring(i, page.indexOf('\n', i)))
                        .isInstanceOf(AssertionError.class);
                changed++;
            }
        }
        assertThat(changed).isGreaterThan(150);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '~',
            value = {
                "' · '~' / '",
                "' − '~' + '",
                "' + '~' − '",
                "'min('~'max('",
                "'does not hold'~'holds'",
                "'ties to even'~'upwards'",
                "'took away'~'added'",
                "' % '~' '",
                "' g'~' kg'",
                "'m_3'~'r_3'",
                "'√'~''",
                "' ≤ '~' ≥ '",
                "' to a multiple of '~' to '"
            })
    void every_wrong_sign_is_noticed(String right, String wrong) {
        String page = page(Workings.everything());
        int at = page.indexOf(right, page.indexOf("\nWorking\n"));
        assertThat(at).isPositive();
        String broken = page.substring(0, at) + wrong + page.substring(at + right.length());
        assertThatThrownBy(() -> verify(broken, Workings.everything())).isInstanceOf(AssertionError.class);
    }

    @Test
    void a_line_left_out_is_noticed() {
        String page = page(Workings.everything());
        UnaryOperator<String> without = text -> page.replaceFirst("(?m)^ +" + text + ".*\n", "");
        for (String line : List.of("V = 106", "m_3 = ", "= 2.63 % ·", "v > V", "1/150 g ≤", "Rounding added")) {
            String broken = without.apply(line);
            assertThat(broken).isNotEqualTo(page);
            if (!line.startsWith("=") && !line.startsWith("Rounding")) {
                assertThatThrownBy(() -> verify(broken, Workings.everything())).isInstanceOf(AssertionError.class);
            }
        }
    }

    /** An ounce of 28 g prints numbers that are not true, though the working is. */
    @Test
    void a_wrong_unit_is_noticed() {
        String page = Workings.lineMass()
                .document(Style.everything().in(Kind.MASS, "oz", Ratio.of(28)))
                .print(Format.TEXT);
        assertThatThrownBy(() -> verify(page, Workings.lineMass())).isInstanceOf(OracleException.class);
    }

    @Test
    void a_function_that_changes_its_mind_is_noticed() {
        AtomicInteger calls = new AtomicInteger();
        StatisticalFunction moody = new StatisticalFunction() {
            @Override
            public String symbol() {
                return "Φ";
            }

            @Override
            public double applyAsDouble(double... arguments) {
                return calls.incrementAndGet();
            }
        };
        Working working = Working.of(
                Phrase.of("question.readings-total"),
                r -> r.named(Workings.FACTOR, r.function(moody, List.of(r.literal(1)))));
        assertThatIllegalStateException().isThrownBy(working::check).withMessageContaining("computed again");
        assertThatThrownBy(() -> WorkingAssertions.assertSelfChecking(working)).isInstanceOf(Exception.class);
    }

    @Test
    void a_right_function_is_right() {
        StatisticalFunction half = new StatisticalFunction() {
            @Override
            public String symbol() {
                return "Φ";
            }

            @Override
            public double applyAsDouble(double... arguments) {
                return 0.5;
            }
        };
        assertThatCode(() -> assertSelfChecking(Working.of(
                        Phrase.of("question.readings-total"),
                        r -> r.named(
                                Workings.FACTOR, r.product(r.literal(2), r.function(half, List.of(r.literal(0))))))))
                .doesNotThrowAnyException();
    }

    private static String page(Working working) {
        return working.document(Style.everything()).print(Format.TEXT);
    }

    private static void verify(String page, Working working) {
        PrintedArithmetic.verifyText(page, WorkingAssertions.values(working), WorkingAssertions.comparisons(working));
    }
}
