package io.github.formulationmath.record;

import static io.github.formulationmath.pot.Lotion.g;
import static io.github.formulationmath.pot.Lotion.line;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.formulationmath.number.Ratio;
import io.github.formulationmath.plan.Tolerances;
import io.github.formulationmath.pot.Evaporation;
import io.github.formulationmath.pot.LineAddition;
import io.github.formulationmath.pot.Lotion;
import io.github.formulationmath.pot.MadeBatch;
import io.github.formulationmath.quantity.Amount;
import io.github.formulationmath.quantity.Interval;
import io.github.formulationmath.weighing.Balance;
import javax.measure.quantity.Mass;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

/** What is added later, or weighed again, is weighed on the balance that is said. */
public final class SeveralBalancesRecordTest {

    static final Balance POCKET = Balance.of("0.01 g", "100 g").named("pocket");
    static final Balance FINE = Balance.of("0.05 g", "1 kg");

    static BatchRecord opened() {
        return BatchRecord.of(
                BatchRecordTest.CODE, Lotion.tared("316.0", "12.3", "48.0", "20.0", "4.0"), Tolerances.of("5 %"));
    }

    public static BatchRecord record() {
        return opened().with(BenchEntry.addition(
                        LineAddition.of(line("Preservative blend"), g("0.04")).on(POCKET)))
                .with(BenchEntry.weighedAgain(g("391.25"), line("Aqua")).on(FINE));
    }

    /** Whatever a display of the bench refuses, the balance that the message asks for can be said, and is taken. */
    @Property(tries = 200)
    void what_the_bench_cannot_have_shown_is_taken_on_the_balance_that_is_said(
            @ForAll("entries") BenchEntry entry, @ForAll("steps") String step) {
        Balance balance = Balance.of(step, "3 kg");
        boolean shown =
                entry.mass().orElseThrow().ratioTo(balance.readability()).isInteger();
        BenchEntry said = entry.on(balance);
        assertThat(said.balance()).contains(balance);
        if (shown) {
            BatchRecord record = opened().with(said);
            assertThat(record.entries()).containsExactly(said);
        } else {
            assertThatThrownBy(() -> opened().with(said))
                    .isInstanceOf(IllegalArgumentException.class)
                    .hasMessageContaining("on(balance)")
                    .hasMessageContaining(entry.kind() == BenchEntry.Kind.WEIGHED_AGAIN ? "the pot" : "Aqua");
        }
    }

    @Provide
    Arbitrary<BenchEntry> entries() {
        return Arbitraries.integers()
                .between(1, 4000)
                .flatMap(cents -> Arbitraries.of(
                        BenchEntry.addition(LineAddition.of(
                                line("Aqua"), g(Ratio.of(cents, 100).toString()))),
                        BenchEntry.weighedAgain(g(Ratio.of(40_000 - cents, 100).toString()), line("Aqua"))));
    }

    @Provide
    Arbitrary<String> steps() {
        return Arbitraries.of("0.01 g", "0.02 g", "0.05 g", "0.1 g", "1 g");
    }

    /** The step that counts is that of the balance: what was there, and a step either way of what was added. */
    @Property(tries = 100)
    void an_addition_hides_what_its_own_display_hides(@ForAll @IntRange(min = 1, max = 5000) int cents) {
        Ratio grams = Ratio.of(cents, 100);
        Interval<Amount<Mass>> before =
                opened().made().line("Preservative blend").massBounds();
        LineAddition addition = LineAddition.of(line("Preservative blend"), g(grams.toString()));
        Interval<Amount<Mass>> after = opened().with(BenchEntry.addition(addition.on(POCKET)))
                .made()
                .line("Preservative blend")
                .massBounds();
        Ratio step = Ratio.of(1, 100);
        assertThat(after)
                .isEqualTo(Interval.of(
                        before.least().plus(Amount.grams(grams.minus(step))),
                        before.greatest().plus(Amount.grams(grams.plus(step)))));
    }

    @Test
    void the_pot_weighed_again_is_known_as_well_as_that_balance_tells() {
        Evaporation loss = Evaporation.of(opened().made(), g("391.25"), line("Aqua"));
        assertThat(loss.balance()).isEqualTo(Lotion.BALANCE);
        assertThat(loss.on(FINE).balance()).isEqualTo(FINE);
        assertThat(width(loss.on(FINE).notAddedBack())).isLessThan(width(loss.notAddedBack()));
        assertThat(record().made().mass()).isEqualTo(g("391.25"));
        assertThat(record().made().line("Aqua").massBounds())
                .isEqualTo(opened().with(record().entries()).made().line("Aqua").massBounds());
    }

    private static Ratio width(MadeBatch made) {
        Interval<Amount<Mass>> bounds = made.line("Aqua").massBounds();
        return bounds.greatest().minus(bounds.least()).canonical();
    }

    @Test
    void the_message_says_what_was_weighed() {
        assertThatThrownBy(() -> opened().with(BenchEntry.weighedAgain(g("391.25"), line("Aqua"))))
                .hasMessageContaining("391.25 g for the pot")
                .hasMessageContaining("on(balance)");
        assertThatThrownBy(() -> opened().with(BenchEntry.addition(
                        LineAddition.of(line("Aqua"), g("100.01")).on(POCKET))))
                .hasMessageContaining("100.01 g for Aqua, more than the balance carries (100 g)");
        assertThatThrownBy(() -> opened().with(BenchEntry.weighedAgain(g("391.25"), line("Aqua"))
                        .on(Balance.of("0.05 g", "600 g"))))
                .hasMessageContaining("391.25 g for the pot, more than the balance carries (386 g besides the vessel)");
        assertThatThrownBy(() -> BenchEntry.observation("smooth").on(POCKET))
                .isInstanceOf(IllegalStateException.class)
                .hasMessageContaining("on no balance");
    }
}
